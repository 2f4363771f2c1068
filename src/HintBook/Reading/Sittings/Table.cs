using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Reading.Sittings;

/// <summary>
/// A table of comma-separated values (RFC 4180), as table programs of many countries write it: cells between commas, semicolons or tabs, lines ended in
/// any way, quotes where they are needed. Whatever comes, it has rows.
/// </summary>
internal static class Table
{
    private static readonly char[] Separators = [';', ',', '\t'];

    /// <summary>The rows that aren't empty, each with its cells, where they stand without their quotes.</summary>
    /// <param name="file">The file's text.</param>
    public static IEnumerable<ImmutableArray<Located<string>>> RowsOf(SourceFile file)
    {
        var text = file.Text;
        var separator = SeparatorOf(file.LineAt(1));
        var (at, cells) = (0, ImmutableArray.CreateBuilder<Located<string>>());
        while (at < text.Length)
        {
            var cell = CellAt(file, at, separator);
            cells.Add(cell.Value);
            at = cell.End;
            if (at < text.Length && text[at] == separator)
            {
                at++;
                if (at < text.Length)
                    continue;
            }

            at = Lines.Next(text, at);
            if (cells.Any(each => each.Value.Length > 0))
                yield return cells.ToImmutable();
            cells.Clear();
        }
    }

    // What stands most often in the first line, which has the names of the columns.
    private static char SeparatorOf(string line) => Separators.MaxBy(each => line.Count(letter => letter == each));

    private static (Located<string> Value, int End) CellAt(SourceFile file, int start, char separator)
    {
        var text = file.Text;
        if (text[start] != '"')
        {
            var end = text.AsSpan(start).IndexOfAny(separator, '\r', '\n') is >= 0 and var length ? start + length : text.Length;
            return (new(text[start..end].Trim(), new(file, start, end)), end);
        }

        // A quote is written twice; one that is never closed ends with the file.
        var close = start + 1;
        while (close < text.Length && (text[close] != '"' || (close + 1 < text.Length && text[close + 1] == '"')))
            close += text[close] == '"' ? 2 : 1;
        close = Math.Min(close, text.Length);
        var value = text[(start + 1)..close].Replace("\"\"", "\"", StringComparison.Ordinal).Trim();
        var after = Math.Min(close + 1, text.Length);
        var next = text.AsSpan(after).IndexOfAny(separator, '\r', '\n') is >= 0 and var rest ? after + rest : text.Length;
        return (new(value, new(file, start, after)), next);
    }
}
