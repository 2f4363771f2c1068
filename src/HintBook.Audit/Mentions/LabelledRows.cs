using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Codes as rows of a label and one figure, from top to bottom: "top 6, mid 4, bottom 2", "needle one to 3". Rows are lines, items, cells by turns, or parted
/// by commas. All rows that follow each other must make the code, and places, numbers of rows or words for what is set must show that it isn't a list of
/// other things. Doubts only. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class LabelledRows(CodeTable codes, CountTalk talk)
{
    private const int Fewest = 3, LongestLabel = 48, MostBefore = 3;
    private static readonly char[] Ends = ['\n', FoldedText.BetweenItems], Marks = ['\n', ',', ';', '/', '|', '·', '、', '،', '؛'];
    private readonly List<Row> rows = [];
    private readonly StringBuilder said = new();

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (codes.Longest < Fewest || tokens.Length < Fewest)
            return;
        if (source.AsSpan().ContainsAny(Ends))
            Look(text, tokens, source, Ends, found);
        if (!source.Contains(FoldedText.BetweenItems, StringComparison.Ordinal))
            Look(text, tokens, source, Marks, found);
    }

    private void Look(FoldedText text, ReadOnlySpan<Token> tokens, string source, char[] ends, List<FoundSecret> found)
    {
        rows.Clear();
        var (token, label) = (0, default(Row?));
        List<int> starts = [];
        for (var start = 0; start < source.Length;)
        {
            var end = source.IndexOfAny(ends, start);
            end = end < 0 ? source.Length : end;
            starts.Add(start);
            var first = token;
            while (token < tokens.Length && text.Words[tokens[token].First].Start < end)
                token++;
            // An empty line is none.
            if (token > first)
            {
                var row = Read(text, tokens[first..token], source, start, end);
                // A cell with a label, and one with its figure.
                if (row is { Figure: >= 0, HasLabel: false })
                {
                    row = label is { } own
                        ? row with { Start = own.Start, LabelEnd = own.LabelEnd, HasLabel = true, Number = own.Number, Letter = own.Letter }
                        : row with { Figure = -1 };
                }

                label = row is { Figure: < 0, HasLabel: true } ? row : null;
                if (row.Figure >= 0)
                    rows.Add(row);
                else if (label is null || rows.Count == 0 || !IsNextAFigure(text, tokens, source, token, end, ends))
                    Tell(text, source, starts, found);
            }

            start = end + 1;
        }

        Tell(text, source, starts, found);
    }

    // Whether the cell behind a label is all figure.
    private static bool IsNextAFigure(FoldedText text, ReadOnlySpan<Token> tokens, string source, int token, int end, char[] ends) =>
        token < tokens.Length && FigureOf(tokens[token]) >= 0 && source.IndexOfAny(ends, end + 1) is var next
        && (token + 1 == tokens.Length || (next >= 0 && text.Words[tokens[token + 1].First].Start > next));

    private static Row Read(FoldedText text, ReadOnlySpan<Token> tokens, string source, int start, int end)
    {
        var last = tokens[^1];
        var from = text.Words[last.First].Start;
        var figure = IsAtEnd(source, text.Words[last.Last].End, end) ? FigureOf(last) : -1;
        var labels = figure < 0 ? tokens : tokens[..^1];
        var labelEnd = figure < 0 ? end : from;
        var (number, letter) = (0, 0);
        foreach (var token in labels)
        {
            // "Bolt A".
            if (token.Is(Sign.Letter) && token.First == token.Last && source[text.Words[token.First].Start] is >= 'A' and <= 'J' and var capital
                && text.Words[token.First].Length == 1)
                letter = capital - 'A' + 1;
            // "Needle one": which row it is. Another number makes it none.
            if (token.Is(Sign.Number) && !token.Is(Sign.Ordinal) && token.Value >= 0 && (token.Value != 1 || number == 0))
                number = number > 0 ? int.MaxValue : token.Value;
        }

        var isShort = labelEnd - start <= LongestLabel;
        return new(start, labelEnd, isShort ? figure : -1, last.First, last.Last, labels.Length > 0 && isShort, number, letter);
    }

    private static int FigureOf(in Token token) =>
        token.Is(Sign.Number) && token.Value is >= 0 and < 10 && token.Symbols.Length < 2 && !token.Is(Sign.Fraction)
            ? token.Value
            : -1;

    private static bool IsAtEnd(string source, int from, int end)
    {
        foreach (var letter in source.AsSpan(from, Math.Max(0, end - from)))
        {
            if (!char.IsWhiteSpace(letter) && letter is not ('.' or ',' or ';' or '。' or '!' or ')' or '“' or '”' or '»'))
                return false;
        }

        return true;
    }

    private void Tell(FoldedText text, string source, List<int> starts, List<FoundSecret> found)
    {
        if (rows.Count >= Fewest && rows.Count <= codes.Longest)
        {
            said.Clear();
            foreach (var row in rows)
                said.Append((char)('0' + row.Figure));
            var all = codes.Of(said.ToString());
            if (all.Count > 0 && AreOfCode(text, source, starts))
            {
                foreach (var (secret, _) in all)
                    found.Add(new(secret, rows[0].First, rows[^1].Last, Sure: false, Words: 1, IsCode: true));
            }
        }

        rows.Clear();
    }

    private bool AreOfCode(FoldedText text, string source, List<int> starts)
    {
        var (places, numbers, heads) = (0, 0, false);
        foreach (var (i, row) in rows.Index())
        {
            places += talk.NamesPlace(text, source, row.Start, row.LabelEnd) ? 1 : 0;
            numbers += row.Number == i + 1 || row.Letter == i + 1 ? 1 : 0;
            // "Needle one" is the first row, in "box 12" nothing is told.
            if (row.Number > 0 && row.Number != i + 1)
                return false;
            heads |= talk.NamesHead(text, source, row.Start, row.LabelEnd);
        }

        var own = starts.FindLastIndex(start => start <= rows[0].Start);
        var before = starts[Math.Max(0, own - MostBefore)];
        var end = text.Words[rows[^1].Last].End;
        if (talk.IsElsewhere(source[before..end]))
            return false;
        return heads || places > 1 || numbers == rows.Count || talk.NamesHead(text, source, before, rows[0].Start);
    }

    /// <summary>A label with its figure.</summary>
    /// <param name="Start">Where the label begins.</param>
    /// <param name="LabelEnd">Where it ends.</param>
    /// <param name="Figure">The figure; -1 for none.</param>
    /// <param name="First">The first word of the figure.</param>
    /// <param name="Last">Its last word.</param>
    /// <param name="HasLabel">Whether there is a label.</param>
    /// <param name="Number">The number in the label; 0 for none.</param>
    /// <param name="Letter">The place in the alphabet of a lone capital in it; 0 for none.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Row(int Start, int LabelEnd, int Figure, int First, int Last, bool HasLabel, int Number, int Letter);
}
