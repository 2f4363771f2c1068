using System.Collections.Immutable;
using HintBook.Ciphers.Making.Frames;

namespace HintBook.Ciphers.Making;

/// <summary>A way of making clues.</summary>
internal sealed record ClueWay
{
    /// <summary>What makers ask for: the name of the way of reading, where there is one that does it all.</summary>
    public required string Name { get; init; }

    /// <summary>What it makes, in a sentence for makers.</summary>
    public required string Says { get; init; }

    /// <summary>Which answers it can carry.</summary>
    public required Carries Carries { get; init; }

    /// <summary>Whether it can be told something, such as a key.</summary>
    public bool IsTold { get; init; }

    /// <summary>Whether it is made of words, so that it can be made in several languages.</summary>
    public bool IsWorded { get; init; }

    /// <summary>Makes a clue. The answer is one that <see cref="Carries"/> takes.</summary>
    public required Func<Wish, Draft> Make { get; init; }
}

/// <summary>What sort of answer a way can carry.</summary>
internal enum Carries
{
    /// <summary>Figures only.</summary>
    Figures,

    /// <summary>The letters A to Z only.</summary>
    Letters,

    /// <summary>Figures and the letters A to Z.</summary>
    Both,
}

/// <summary>What is to be made.</summary>
/// <param name="Answer">Figures and capital letters A to Z without anything between, at least one.</param>
/// <param name="Told">What the maker states, such as a key; empty to let the way choose.</param>
/// <param name="Choices">For what is free.</param>
/// <param name="Language">The language of a clue that is made of words.</param>
internal sealed record Wish(string Answer, ImmutableArray<string> Told, Choices Choices, Language Language)
{
    /// <summary>The figures, for an answer of nothing else.</summary>
    public IEnumerable<int> Figures => Answer.Select(figure => figure - '0');
}

/// <summary>A clue before it is proved, or why there is none.</summary>
internal abstract record Draft
{
    private Draft()
    {
    }

    public sealed record Text(string Clue, ImmutableArray<MadeStep> Reads, ClueLook Look = ClueLook.Lines, Grille? Mask = null) : Draft;

    public sealed record None(string Why) : Draft;

    /// <summary>A clue that is read in one step.</summary>
    public static Draft Of(string clue, string way, params ImmutableArray<string> told) => new Text(clue, [new MadeStep(way, told)]);

    /// <summary>A clue that one way of reading writes and another one reads back.</summary>
    public static Draft By(Way writing, ImmutableArray<string> told, string text, MadeStep reading, ClueLook look = ClueLook.Lines) =>
        writing.Read(text, told) switch
        {
            ReadingResult.Gave gave => new Text(gave.Text, [reading], look),
            ReadingResult.Stuck stuck => new None($"{char.ToUpperInvariant(stuck.Why[0])}{stuck.Why[1..]}."),
            ReadingResult.BadArgument wrong => new None($"“{writing.Name}” can't be told that: {wrong.Why}."),
            _ => throw new InvalidOperationException("A way of reading has no other outcome."),
        };
}
