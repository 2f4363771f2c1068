using System.Text;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>All codes by their symbols.</summary>
internal sealed class CodeTable
{
    private readonly Dictionary<string, List<(int Secret, bool Sure)>> codes = [];
    private readonly Dictionary<string, List<(int Secret, bool Sure)>>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly HashSet<string> starts = new(StringComparer.Ordinal);
    private readonly SortedSet<int> lengths = [];
    private readonly Dictionary<string, List<string>> bySymbols = new(StringComparer.Ordinal);
    private readonly FoldedText folded = new(AuditLanguage.Unknown);

    public CodeTable() => lookup = codes.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>How many symbols the longest has; 0 if there are none.</summary>
    public int Longest { get; private set; }

    /// <summary>Adds a code.</summary>
    /// <returns>Whether it has a symbol to look for.</returns>
    public bool Add(int secret, AuditSpelling spelling)
    {
        folded.Read(spelling.Text, isProse: false);
        var symbols = new StringBuilder();
        foreach (var word in folded.Words)
            symbols.Append(folded.Of(word));
        if (symbols.Length == 0)
            return false;
        Longest = Math.Max(Longest, symbols.Length);
        if (!codes.TryGetValue(symbols.ToString(), out var same))
            codes[symbols.ToString()] = same = [];
        var ordered = InOrder(symbols.ToString());
        if (!bySymbols.TryGetValue(ordered, out var alike))
            bySymbols[ordered] = alike = [];
        if (!alike.Contains(symbols.ToString()))
            alike.Add(symbols.ToString());
        same.Add((secret, spelling.Sure));
        for (var i = 1; i <= symbols.Length; i++)
            starts.Add(symbols.ToString(0, i));
        lengths.Add(symbols.Length);
        return true;
    }

    /// <summary>The codes that have the same symbols, in whatever order.</summary>
    public IReadOnlyList<string> WithSymbolsOf(string symbols) => bySymbols.TryGetValue(InOrder(symbols), out var alike) ? alike : [];

    /// <summary>All codes.</summary>
    public IReadOnlyCollection<string> All => codes.Keys;

    /// <summary>Whether some symbols are part of a code.</summary>
    public bool HasWithin(string part) => codes.Keys.Any(code => code.Length > part.Length && code.Contains(part, StringComparison.Ordinal));

    private static string InOrder(string symbols) => string.Concat(symbols.Order());

    /// <summary>Whether a code begins with some symbols.</summary>
    public bool HasStart(string symbols) => starts.Contains(symbols);

    /// <summary>How many symbols the codes have.</summary>
    public IReadOnlyCollection<int> Lengths => lengths;

    /// <summary>The secrets whose code it is, and whether such a code can mean nothing else.</summary>
    public IReadOnlyList<(int Secret, bool Sure)> Of(ReadOnlySpan<char> symbols) => lookup.TryGetValue(symbols, out var same) ? same : [];
}
