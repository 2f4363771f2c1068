using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Reading.Yaml;

/// <summary>A piece of YAML as it was written, with its place. No tag is resolved: a scalar is its text.</summary>
internal abstract record YamlNode(Span At)
{
    /// <summary>What an author would call it.</summary>
    public abstract string Described { get; }
}

internal sealed record YamlScalar(string Value, bool Quoted, Span At) : YamlNode(At)
{
    /// <summary>Nothing was written after the colon or the dash, or the word that YAML has for nothing.</summary>
    public bool IsEmpty => !Quoted && Value is "" or "~" or "null" or "Null" or "NULL";

    public override string Described => IsEmpty ? "nothing" : string.IsNullOrWhiteSpace(Value) ? "an empty text" : $"“{Shortened}”";

    public Located<string> Located => new(Value, At);

    private string Shortened => Value.Length <= 40 ? Value.ReplaceLineEndings(" ") : Value[..40].ReplaceLineEndings(" ") + "…";
}

/// <summary>Something that was refused and has its finding already: it fits every place and says nothing.</summary>
internal sealed record YamlUnread(Span At) : YamlNode(At)
{
    public override string Described => "something that can't be read";
}

internal sealed record YamlList(ImmutableArray<YamlNode> Items, Span At) : YamlNode(At)
{
    public override string Described => "a list";
}

internal sealed record YamlMap(ImmutableArray<YamlEntry> Entries, Span At) : YamlNode(At)
{
    public override string Described => "a set of “key: value” pairs";

    public YamlNode? this[string key] => Entries.FirstOrDefault(entry => entry.Key.Value == key)?.Value;
}

internal sealed record YamlEntry(YamlScalar Key, YamlNode Value);
