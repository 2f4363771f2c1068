using System.Collections.Immutable;

namespace HintBook.Audit.Sealed;

/// <summary>The keys of single stages, tried on pages that aren't theirs.</summary>
/// <param name="Tries">How many were tried, of how many that there are.</param>
/// <param name="Faults">Pages that open.</param>
internal sealed record ForeignPages(KeyTries Tries, ImmutableArray<AuditFault> Faults)
{
    /// <summary>All pairs of a key and a page are tried up to this many: those of 300 stages.</summary>
    public const int Most = 100_000;

    private const int LeastForAKey = 16;

    /// <summary>
    /// Tries every key on all pages; with more than <paramref name="most"/> pairs each on as many, spread over the site, so that the work doesn't grow as the
    /// square of the pages.
    /// </summary>
    /// <param name="keys">The keys that cards of single stages find, by the names of the pages.</param>
    /// <param name="shells">All pages.</param>
    /// <param name="most">How many pairs are tried at most, unless that leaves fewer than 16 for a key.</param>
    public static ForeignPages Of(IEnumerable<KeyValuePair<string, byte[]>> keys, ImmutableArray<SealedShell> shells, int most = Most)
    {
        var inOrder = keys.OrderBy(key => key.Key, StringComparer.Ordinal).ToArray();
        var forAKey = Math.Max(LeastForAKey, most / Math.Max(1, inOrder.Length));
        var tried = inOrder.Select((key, index) => (Key: key, Index: index)).AsParallel().AsOrdered().Select(each =>
        {
            SealedShell[] others = [.. shells.Where(shell => shell.Pieces.Any(piece => shell.KeyNameOf(piece) != each.Key.Key))];
            var chosen = Spread(others, forAKey, each.Index);
            return (All: others.Length, Tried: chosen.Length, Faults: chosen.SelectMany(shell => Opening(each.Key.Key, each.Key.Value, shell)).ToArray());
        }).ToArray();
        return new(new(tried.Sum(key => key.Tried), tried.Sum(key => key.All)), [.. tried.SelectMany(key => key.Faults)]);
    }

    // Each key begins a page further on, so that all pages are tried by some key.
    private static SealedShell[] Spread(SealedShell[] others, int most, int from) => others.Length <= most
        ? others
        : [.. Enumerable.Range(0, most).Select(i => others[(int)((((long)i * others.Length / most) + from) % others.Length)])];

    private static IEnumerable<AuditFault> Opening(string page, byte[] key, SealedShell shell)
    {
        var piece = shell.Pieces.First(piece => shell.KeyNameOf(piece) != page);
        return Unsealing.Open(key, shell.ContextOf(piece), piece.Closed) is null
            ? []
            : [new(shell.Path, 0, 0, $"The piece “{piece.Name}” opens with the cards of the page {page}, which isn't its own.")];
    }
}
