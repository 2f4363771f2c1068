using System.Collections.Immutable;
using System.Globalization;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>What is drawn around a card's words.</summary>
internal enum Ornament
{
    /// <summary>One rule under the title.</summary>
    Rule,

    /// <summary>A double frame and a keyhole.</summary>
    Keyhole,

    /// <summary>Squared paper and a title block.</summary>
    Drawing,
}

/// <summary>How a theme's cards look: its <c>cards.yaml</c>.</summary>
public sealed record CardLook
{
    /// <summary>The name of the file in a theme.</summary>
    public const string File = Theme.CardsFile;

    // The ratio that WCAG 2.2 asks of text (1.4.3), and of what isn't text (1.4.11).
    private const double LeastContrast = 4.5;
    private const double LeastContrastOfOrnaments = 3;

    private static readonly ImmutableSortedDictionary<string, Tone> Colours = new Dictionary<string, Tone>
    {
        ["ground"] = Tone.Ground,
        ["panel"] = Tone.Panel,
        ["ink"] = Tone.Ink,
        ["quiet"] = Tone.Quiet,
        ["accent"] = Tone.Accent,
        ["frame"] = Tone.Frame,
        ["faint"] = Tone.Faint,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static readonly ImmutableSortedDictionary<string, (Typeface Title, Typeface Line)> Typefaces = new Dictionary<string, (Typeface, Typeface)>
    {
        ["serif"] = (Typeface.Serif, Typeface.SerifItalic),
        ["narrow"] = (Typeface.Narrow, Typeface.Regular),
        ["plain"] = (Typeface.SemiBold, Typeface.Regular),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static readonly ImmutableSortedDictionary<string, Ornament> Ornaments = new Dictionary<string, Ornament>
    {
        ["rule"] = Ornament.Rule,
        ["keyhole"] = Ornament.Keyhole,
        ["drawing"] = Ornament.Drawing,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    // What stands on what.
    private static readonly (Tone, Tone)[] Meeting =
    [
        (Tone.Ink, Tone.Ground), (Tone.Ink, Tone.Panel), (Tone.Quiet, Tone.Ground), (Tone.Quiet, Tone.Panel), (Tone.Accent, Tone.Panel),
        (Tone.Warning, Tone.Ground),
    ];

    private ImmutableDictionary<Tone, int> colours = ImmutableDictionary<Tone, int>.Empty;

    private CardLook()
    {
    }

    /// <summary>Black on white; what sheets for the maker are printed in.</summary>
    public static CardLook Plain { get; } = new();

    /// <summary>The face of titles.</summary>
    internal Typeface Title { get; private init; } = Typeface.SemiBold;

    /// <summary>The face of the maker's name.</summary>
    internal Typeface Line { get; private init; } = Typeface.Regular;

    /// <summary>What is drawn around the words.</summary>
    internal Ornament Ornament { get; private init; }

    /// <summary>The look of a theme; what its file says that isn't understood is a finding, and stays as in <see cref="Plain"/>.</summary>
    public static (CardLook Look, ImmutableArray<Finding> Findings) Of(Theme theme)
    {
        var (words, unreadable) = theme.CardsLook;
        var findings = unreadable.ToList();
        var look = new CardLook
        {
            Title = Among("typeface", Typefaces)?.Title ?? Typeface.SemiBold,
            Line = Among("typeface", Typefaces)?.Line ?? Typeface.Regular,
            Ornament = Among("ornament", Ornaments) ?? Ornament.Rule,
        };
        foreach (var (key, value) in words.OrderBy(word => word.Key, StringComparer.Ordinal))
        {
            if (Colours.TryGetValue(key, out var tone))
            {
                if (Colour(value.Value) is { } colour)
                    look.colours = look.colours.SetItem(tone, colour);
                else
                    findings.Add(CardFindings.Look(value.At, $"“{value.Value}” is no colour", "#7a3a12"));
            }
            else if (key is not ("typeface" or "ornament"))
            {
                findings.Add(CardFindings.Look(value.At, $"“{key}” is no key of {File}", Words.List([.. Colours.Keys, "typeface", "ornament"], "or")));
            }
        }

        findings.AddRange(TooFaint(look, words));
        return (look, [.. findings.Distinct()]);

        T? Among<T>(string key, ImmutableSortedDictionary<string, T> known)
            where T : struct
        {
            if (!words.TryGetValue(key, out var word))
                return null;
            if (known.TryGetValue(word.Value, out var found))
                return found;
            findings.Add(CardFindings.Look(word.At, $"“{word.Value}” is no {key}", Words.List(known.Keys, "or")));
            return null;
        }
    }

    /// <summary>A colour as 0xRRGGBB.</summary>
    internal int ColourOf(Tone tone) => colours.TryGetValue(tone, out var colour) ? colour : tone switch
    {
        Tone.Quiet => 0x5A5A5A,
        Tone.Rule => 0xCDCDCD,
        Tone.Band => 0x264653,
        Tone.Warning => 0xB24A0C,
        Tone.Ground or Tone.Panel => 0xFFFFFF,
        Tone.Faint => 0xE6E6E6,
        _ => 0x000000,
    };

    private static IEnumerable<Finding> TooFaint(CardLook look, ImmutableDictionary<string, Located<string>> words) =>
        from pair in Meeting
        let least = pair.Item1 is Tone.Accent ? LeastContrastOfOrnaments : LeastContrast
        let contrast = Contrast.Between(look.ColourOf(pair.Item1), look.ColourOf(pair.Item2))
        where contrast < least
        let key = Colours.FirstOrDefault(colour => colour.Value == pair.Item1).Key
            ?? Colours.First(colour => colour.Value == pair.Item2).Key
        let at = words.TryGetValue(key, out var own) ? own : words.Values.FirstOrDefault()
        select CardFindings.Look(
            at.At,
            string.Create(
                CultureInfo.InvariantCulture, $"“{key}” stands out from what is behind it by {contrast:0.0} to 1 only, and {least:0.0} to 1 can be read"),
            "a darker one, or a lighter ground");

    private static int? Colour(string written) =>
        written is ['#', .. { Length: 6 } figures]
        && int.TryParse(figures, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var colour)
            ? colour
            : null;
}
