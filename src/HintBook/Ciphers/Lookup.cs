using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>A table of words or symbols and what each stands for. Case doesn't matter, nor whether words are parted by a space or a hyphen.</summary>
internal sealed class Lookup
{
    private const int ShortestNamed = 4;

    private readonly Dictionary<string, string> byWords;
    private readonly Dictionary<string, string> bySymbol;
    private readonly int mostWords;

    /// <summary>Makes a table; of two rows with the same word the first holds.</summary>
    public Lookup(IEnumerable<(string Looked, string Gives)> rows)
    {
        var all = rows.ToArray();
        byWords = Table(all.Select(row => (Folded(TextPieces.Words(row.Looked)), row.Gives)));
        bySymbol = Table(all.Select(row => (row.Looked.Trim().ToLowerInvariant(), row.Gives)));
        mostWords = byWords.Keys.Select(key => key.Count(' ') + 1).DefaultIfEmpty(0).Max();
    }

    /// <summary>A table from lines such as <c>black 0, brown 1</c>.</summary>
    public static Lookup Parse(string rows) => new(rows.Split(',', StringSplitOptions.TrimEntries)
        .Select(row => (row[..row.LastIndexOf(' ')], row[(row.LastIndexOf(' ') + 1)..])));

    /// <summary>
    /// Reads a text: every word of it must be in the table or in <paramref name="besides"/>. A text without any word of the table is
    /// read symbol by symbol.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="nothing">Why nothing could be read, where that is so.</param>
    /// <param name="besides">Words that are known and stand for nothing, in small letters.</param>
    public ReadingResult Read(string text, string nothing, IReadOnlySet<string>? besides = null) =>
        Meant(EveryWord.Read(
            text, InWords(text).Rows.Count > 0 ? part => Without(InWords(part), besides) : part => Without(InSymbols(part), besides), nothing));

    // Short words are near to too many others, and in a sentence of prose nobody meant a word of the way.
    private ReadingResult Meant(ReadingResult read) => read is ReadingResult.Unread unread
        ? unread with
        {
            Meant =
            [
                .. from words in unread.Words.Select(each => TextPieces.Words(each).ToArray()).Where(words => words.Length == 1)
                       .DistinctBy(words => words[0].Value, StringComparer.OrdinalIgnoreCase)
                   let word = words[0].Value
                   where word.Length >= ShortestNamed
                   let near = Nearest.To(word, byWords.Keys)
                   where near is not null
                   select new Row(word, near),
            ],
        }
        : read;

    private static (IReadOnlyCollection<Row> Rows, IReadOnlyCollection<string> Unread) Without(
        (List<Row> Rows, List<string> Unread) read, IReadOnlySet<string>? besides) =>
        besides is null ? read : (read.Rows, [.. read.Unread.Where(word => !besides.Contains(word.ToLowerInvariant()))]);

    private (List<Row> Rows, List<string> Unread) InWords(string text)
    {
        var words = TextPieces.Words(text).ToArray();
        var (rows, unread) = (new List<Row>(), new List<string>());
        var end = 0;
        for (var at = 0; at < words.Length;)
        {
            var taken = 0;
            Between(text[end..words[at].Start], rows, unread);
            for (var count = Math.Min(mostWords, words.Length - at); count > 0 && taken == 0; count--)
            {
                if (!byWords.TryGetValue(Folded(words[at..(at + count)]), out var gives))
                    continue;
                rows.Add(new Row(text[words[at].Start..words[at + count - 1].End], gives));
                taken = count;
            }

            if (taken == 0)
                unread.Add(words[at].Value);
            at += Math.Max(1, taken);
            end = words[at - 1].End;
        }

        Between(text[end..], rows, unread);
        return (rows, unread);
    }

    // Signs and pictures that stand between words.
    private void Between(string text, List<Row> rows, List<string> unread)
    {
        foreach (var symbol in TextPieces.Symbols(text))
        {
            if (bySymbol.TryGetValue(symbol, out var gives))
                rows.Add(new Row(symbol, gives));
            else if (TextPieces.IsPicture(symbol))
                unread.Add(symbol);
        }
    }

    private (List<Row> Rows, List<string> Unread) InSymbols(string text)
    {
        var symbols = TextPieces.Symbols(text).ToLookup(symbol => bySymbol.ContainsKey(symbol.ToLowerInvariant()));
        return ([.. symbols[true].Select(symbol => new Row(symbol, bySymbol[symbol.ToLowerInvariant()]))], [.. symbols[false].Where(TextPieces.IsRead)]);
    }

    private static string Folded(IEnumerable<TextPiece> words) => string.Join(' ', words.Select(word => word.Value.ToLowerInvariant()));

    private static Dictionary<string, string> Table(IEnumerable<(string Looked, string Gives)> rows) =>
        rows.Where(row => row.Looked.Length > 0).DistinctBy(row => row.Looked).ToDictionary(row => row.Looked, row => row.Gives);
}
