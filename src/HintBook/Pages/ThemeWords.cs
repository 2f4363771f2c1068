using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>Every sentence of a theme in one language. It is complete: what a file leaves out stands here in English, and was a finding.</summary>
/// <param name="Language">The language as a BCP 47 tag.</param>
/// <param name="Entries">The sentences by key; <c>{name}</c> in one is a placeholder.</param>
public sealed record ThemeWords(string Language, ImmutableSortedDictionary<string, string> Entries)
{
    /// <summary>The sentence that follows every caution: local rules and licensed people decide.</summary>
    public string LocalRules => this["local_rules"];

    /// <summary>A sentence as it stands.</summary>
    /// <param name="key">A key of the theme's words file.</param>
    public string this[string key] => Entries[key];

    /// <summary>A danger's name in a word or two: “Sharp edge”.</summary>
    public string NameOf(CautionKind kind) => this[$"caution_{Key(kind)}"];

    /// <summary>What to do about a danger, in one to three sentences.</summary>
    public string TextOf(CautionKind kind) => this[$"caution_{Key(kind)}_text"];

    /// <summary>What a printed card says about a danger: one short sentence.</summary>
    public string CardTextOf(CautionKind kind) => this[$"card_caution_{Key(kind)}"];

    /// <summary>A sentence with its placeholders filled.</summary>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var sentence = this[key];
        foreach (var (name, value) in values)
            sentence = sentence.Replace($"{{{name}}}", value, StringComparison.Ordinal);
        return sentence;
    }

    private static string Key(CautionKind kind) => kind switch
    {
        CautionKind.Heavy => "heavy",
        CautionKind.Glass => "glass",
        CautionKind.SharpEdge => "sharp_edge",
        CautionKind.Magnets => "magnets",
        CautionKind.ButtonCell => "button_cell",
        CautionKind.SmallParts => "small_parts",
        CautionKind.Mains => "mains",
        CautionKind.Battery => "battery",
        CautionKind.FineDust => "fine_dust",
        CautionKind.Force => "force",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a danger that the words know."),
    };
}
