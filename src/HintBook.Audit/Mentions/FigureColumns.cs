using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>Codes told column by column: "thousands 4, hundreds 1, tens 9, units 3", 千の位が四. Doubts only.</summary>
internal sealed partial class FigureColumns(CodeTable codes)
{
    private const int Fewest = 3, MostBetween = 24;
    private readonly StringBuilder said = new();

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        var columns = Column().Matches(source);
        if (columns.Count < Fewest)
            return;
        said.Clear();
        var (first, last) = (-1, -1);
        var digits = new SortedDictionary<int, int>();
        foreach (Match column in columns)
        {
            var at = Behind(text, tokens, column.Index + column.Length);
            if (at < 0 || !digits.TryAdd(-PowerOf(column), tokens[at].Value))
                continue;
            (first, last) = (first < 0 ? tokens[at].First : first, tokens[at].Last);
        }

        if (digits.Count < Fewest || -digits.First().Key != digits.Count - 1)
            return;
        foreach (var digit in digits.Values)
            said.Append(CultureInfo.InvariantCulture, $"{digit}");
        foreach (var (secret, _) in codes.Of(said.ToString()))
            found.Add(new(secret, first, last, Sure: false, Words: 2, IsCode: true));
    }

    // The figure that follows a column's name.
    private static int Behind(FoldedText text, ReadOnlySpan<Token> tokens, int end)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            var start = text.Words[tokens[i].First].Start;
            if (start >= end && start - end < MostBetween && tokens[i].Is(Sign.Number) && tokens[i].Value is >= 0 and < 10)
                return i;
        }

        return -1;
    }

    private static int PowerOf(Match column) =>
        column.Groups["units"].Success ? 0 : column.Groups["tens"].Success ? 1 : column.Groups["hundreds"].Success ? 2 : 3;

    [GeneratedRegex(
        @"(?<units>\b(units|ones|einer(stelle)?|unités|unidades|unidad)\b|一の位|1の位|الآحاد)"
        + @"|(?<tens>\b(tens|zehner(stelle)?|dizaines?|decenas?)\b|十の位|10の位|العشرات)"
        + @"|(?<hundreds>\b(hundreds|hunderter(stelle)?|centaines?|centenas?)\b|百の位|المئات)"
        + @"|(?<thousands>\b(thousands|tausender(stelle)?|milliers?|millares|millar)\b|千の位|الآلاف)",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
        10_000)]
    private static partial Regex Column();
}
