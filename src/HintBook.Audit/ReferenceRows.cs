using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Codes that a drawing or a page shows symbol by symbol, by pictures and symbols of which the address or the id ends in one: <c>signal.svg#flag-q</c>,
/// <c>#glyph-T</c>, <c>digits/7.png</c>; and by short texts, in the order of the file and from left to right.
/// </summary>
internal sealed partial class ReferenceRows
{
    private const string Texts = "";
    private readonly Dictionary<string, List<string>> groups = new(StringComparer.Ordinal);
    private readonly List<string> inOrder = [], all = [];
    private readonly List<(double Y, double X, string Symbol)> placed = [];
    private bool hasTexts, hasReferences;

    /// <summary>Takes the address of a picture or a symbol.</summary>
    /// <param name="address">The address.</param>
    /// <param name="x">Where it stands in a drawing; null where that isn't said.</param>
    /// <param name="y">The same from top to bottom.</param>
    public void Add(string address, string? x = null, string? y = null)
    {
        if (End().Match(address) is not { Success: true } match)
            return;
        // Files differ in their whole name, symbols of one file by their ends.
        var hash = address.IndexOf('#', StringComparison.Ordinal);
        var symbol = match.Groups["one"].Value;
        Keep(hash < 0 ? address[..match.Groups["one"].Index] : address[..(hash + 1)], symbol);
        hasReferences = true;
        all.Add(symbol);
        Place(symbol, x, y);
    }

    /// <summary>Takes the id of a symbol.</summary>
    public void AddId(string id)
    {
        if (End().Match(id) is { Success: true } match)
            Keep($"#{id[..match.Groups["one"].Index]}", match.Groups["one"].Value);
    }

    /// <summary>Takes a text of a drawing, if it may be a symbol of a code.</summary>
    public void AddText(string said, string? x, string? y)
    {
        var text = said.Trim();
        if (text.Length is 0 or > 2 || !text.All(letter => char.IsLetterOrDigit(letter) || letter == ':'))
            return;
        hasTexts = true;
        Keep(Texts, text);
        all.Add(text);
        Place(text, x, y);
    }

    /// <summary>What the rows say, and how that is to be taken. Rows that only number something aren't given.</summary>
    public IEnumerable<(string Said, Manner Manner)> Rows
    {
        get
        {
            foreach (var group in inOrder)
            {
                // Texts alone are read as the items of their drawing.
                if (group != Texts && IsRow(groups[group]))
                    yield return (Joined(groups[group]), Manner.Items);
                // "11", ":", "25".
                if (group == Texts && groups[group].Contains(":"))
                    yield return (string.Concat(groups[group]), Manner.Remark);
            }

            if (hasTexts && hasReferences && IsRow(all))
                yield return (Joined(all), Manner.Items);
            string[] read = [.. placed.OrderBy(one => one.Y).ThenBy(one => one.X).Select(one => one.Symbol)];
            if (placed.Count == all.Count && IsRow(read) && !read.SequenceEqual(all))
                yield return (Joined(read), Manner.Items);
        }
    }

    private void Keep(string group, string symbol)
    {
        if (!groups.TryGetValue(group, out var row))
        {
            groups[group] = row = [];
            inOrder.Add(group);
        }

        row.Add(symbol);
    }

    private void Place(string symbol, string? x, string? y)
    {
        if (IsNumber(x, out var across) && (y is null || IsNumber(y, out _)))
            placed.Add((IsNumber(y, out var down) ? down : 0, across, symbol));
    }

    private static bool IsNumber(string? written, out double number) =>
        double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    private static string Joined(IEnumerable<string> row) => string.Join(FoldedText.BetweenItems, row);

    private static bool IsRow(IReadOnlyList<string> row) => row.Count is >= SymbolRows.Fewest and < SymbolRows.Most && !IsNumbering(row);

    // Figures and letters that go up one by one, perhaps from the first again: pictures are numbered like that.
    private static bool IsNumbering(IReadOnlyList<string> row)
    {
        for (var i = 1; i < row.Count; i++)
        {
            var step = row[i].Length == row[i - 1].Length ? row[i][^1] - row[i - 1][^1] : 1;
            if (step is not (0 or 1) && row[i] != row[0])
                return false;
        }

        return true;
    }

    // flag-q, glyphT, d7, digits/7.png, #T
    [GeneratedRegex(
        @"(?<=^|[^A-Za-z0-9]|[a-z](?=[A-Z0-9]))(?<one>[A-Za-z0-9])(?=$|\.[a-z0-9]{3,4}($|\?))", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex End();
}
