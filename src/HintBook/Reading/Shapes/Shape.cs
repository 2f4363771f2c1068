using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Reading.Shapes;

/// <summary>
/// What may be written at a place of a book's files. The same description checks what was written, makes the JSON Schema
/// that editors complete from, and lists what is allowed when something isn't.
/// </summary>
internal abstract record Shape
{
    /// <summary>What the place wants, as it follows "wanted": <c>a number from 1 to 32</c>.</summary>
    public abstract string Wanted { get; }
}

/// <summary>A text that isn't empty, of a pattern if there is one. Numbers and yes/no words are texts too: nobody should need quotes for them.</summary>
internal sealed record TextShape(string What, Regex? Pattern = null, string? Example = null, Bare Bare = Bare.Anything) : Shape
{
    public override string Wanted => Example is null ? What : $"{What}, such as “{Example}”";
}

/// <summary>What a text may look like without quotes: YAML takes some words for numbers or for yes and no.</summary>
internal enum Bare
{
    Anything,
    WholeNumbers,
    Seconds,
    Never,
}

/// <summary>A number within bounds, both included.</summary>
internal sealed record NumberShape(double Least, double Most, bool Whole) : Shape
{
    public override string Wanted => $"a {(Whole ? "whole " : "")}number from {Least} to {Most}";
}

internal sealed record FlagShape : Shape
{
    public override string Wanted => "true or false";
}

/// <summary>One word of a fixed list.</summary>
internal sealed record ChoiceShape(ImmutableArray<string> Words) : Shape
{
    public override string Wanted => "one of " + Text.Words.List(Words.Select(word => $"“{word}”"), "or");
}

internal sealed record ListShape(Shape Item, string Example, int Least = 0, int Most = int.MaxValue) : Shape
{
    public override string Wanted => $"a list, such as “{Example}”";
}

/// <summary>Names of the author's choice, each with a value.</summary>
internal sealed record NamedShape(TextShape Name, Shape Value, string? Example = null) : Shape
{
    public override string Wanted => Example is null ? $"names, each with {Value.Wanted}" : $"names with their values, such as “{Example}”";
}

/// <summary>Keys of a fixed list.</summary>
internal sealed record FieldsShape(string What, ImmutableArray<Field> Fields) : Shape
{
    public override string Wanted => What;

    public Field? this[string key] => Fields.FirstOrDefault(field => field.Key == key);
}

/// <summary>Keys of one list where a certain key is among them, and of another list elsewhere.</summary>
/// <param name="Key">The key that decides.</param>
/// <param name="With">The keys beside it; it is required there.</param>
/// <param name="Without">The keys where it is absent; it isn't allowed there.</param>
internal sealed record FieldsByKeyShape(string Key, FieldsShape With, FieldsShape Without) : Shape
{
    public override string Wanted => $"{Without.Wanted}, or {With.Wanted}";
}

/// <summary>What is wanted depends on how it is written: as a word, as a list or as keys.</summary>
internal sealed record EitherShape(Shape? Word = null, Shape? List = null, Shape? Keys = null) : Shape
{
    public override string Wanted =>
        Text.Words.List(new[] { Word, List, Keys }.OfType<Shape>().Select(shape => shape.Wanted), "or");
}

/// <summary>Names with the positions they must be in, or <see cref="AnyKey"/> with alternatives.</summary>
internal sealed record ConditionShape(TextShape Name, Shape Positions, Shape Alternatives) : Shape
{
    /// <summary>The one key that is not a name of the author's; so nothing in a book may be called that.</summary>
    public const string AnyKey = "any";

    public override string Wanted => "“{ part: position }” or “{ any: [ … ] }”";
}

/// <summary>A shape that mentions itself: conditions inside <c>any:</c>.</summary>
internal sealed record LaterShape(string Name, Func<Shape> Resolve) : Shape
{
    public override string Wanted => Resolve().Wanted;
}

/// <summary>One key, what it may hold, and a sentence for editors.</summary>
internal sealed record Field(string Key, Shape Shape, string Says, bool Required = false);
