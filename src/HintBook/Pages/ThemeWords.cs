using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>Every sentence of a theme in one language. It is complete: what a file leaves out stands here in English, and was a finding.</summary>
/// <param name="Language">The language as a BCP 47 tag.</param>
/// <param name="Entries">The sentences by key; <c>{name}</c> in one is a placeholder.</param>
public sealed partial record ThemeWords(string Language, ImmutableSortedDictionary<string, string> Entries)
{
    /// <summary>The sentence that follows every caution: local rules and licensed people decide.</summary>
    public string LocalRules => this["local_rules"];

    /// <summary>A sentence as it stands.</summary>
    /// <param name="key">A key of the theme's words file.</param>
    public string this[string key] => Entries[key];

    /// <summary>A danger's name in a word or two: “Sharp edge”.</summary>
    public string NameOf(CautionKind kind) => this[$"caution_{Key(kind)}"];

    /// <summary>What to do about a danger, in one to four sentences.</summary>
    /// <param name="kind">Which danger.</param>
    /// <param name="age">The age, in years, below which the box is for no child; null where its maker says none.</param>
    public string TextOf(CautionKind kind, int? age = null) =>
        Say($"caution_{Key(kind)}_text", ("age", (age ?? Cautions.LeastAge).ToString(CultureInfo.InvariantCulture)));

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

    /// <summary>
    /// A sentence with a number in it. Brackets in it hold the forms that the language has for numbers, in the order of <see cref="PluralForms"/>:
    /// <c>[{minutes} minute|{minutes} minutes]</c>. Where there are fewer, the last stands for the rest.
    /// </summary>
    /// <param name="key">A key of the theme's words file.</param>
    /// <param name="name">The number's placeholder.</param>
    /// <param name="number">The number, at least 0.</param>
    public string SayNumber(string key, string name, int number)
    {
        var form = PluralForms.IndexIn(Language, number);
        return Brackets().Replace(this[key], found => found.Groups["forms"].Value.Split('|') is var forms ? forms[Math.Min(form, forms.Length - 1)] : "")
            .Replace($"{{{name}}}", number.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    private static string Key(CautionKind kind) => Cautions.NameOf(kind).Replace('-', '_');

    [GeneratedRegex(@"\[(?<forms>[^\[\]]*)\]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Brackets();
}
