namespace HintBook.Ciphers;

/// <summary>A table of words or symbols and what each stands for. Case doesn't matter, nor whether words are parted by a space or a hyphen.</summary>
internal sealed class Lookup
{
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

    /// <summary>Every word of the text that is in the table, in order; without any, every symbol that is.</summary>
    public IEnumerable<Row> In(string text)
    {
        var words = InWords(text).ToArray();
        return words.Length > 0
            ? words
            : from symbol in TextPieces.Symbols(text)
              where bySymbol.ContainsKey(symbol.ToLowerInvariant())
              select new Row(symbol, bySymbol[symbol.ToLowerInvariant()]);
    }

    private IEnumerable<Row> InWords(string text)
    {
        var words = TextPieces.Words(text).ToArray();
        for (var at = 0; at < words.Length;)
        {
            var taken = 1;
            for (var count = Math.Min(mostWords, words.Length - at); count > 0; count--)
            {
                if (!byWords.TryGetValue(Folded(words[at..(at + count)]), out var gives))
                    continue;
                yield return new Row(text[words[at].Start..words[at + count - 1].End], gives);
                taken = count;
                break;
            }

            at += taken;
        }
    }

    private static string Folded(IEnumerable<TextPiece> words) => string.Join(' ', words.Select(word => word.Value.ToLowerInvariant()));

    private static Dictionary<string, string> Table(IEnumerable<(string Looked, string Gives)> rows) =>
        rows.Where(row => row.Looked.Length > 0).DistinctBy(row => row.Looked).ToDictionary(row => row.Looked, row => row.Gives);
}
