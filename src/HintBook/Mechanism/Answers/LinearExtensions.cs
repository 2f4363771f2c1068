using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Mechanism.Answers;

/// <summary>In how many orders things can come when some must come before others, and how many can stand open at once.</summary>
/// <param name="before">By thing: all things that must come before it, not only the nearest.</param>
internal sealed class LinearExtensions(IReadOnlyList<Bits> before)
{
    private const int MostSets = 300_000;

    /// <summary>
    /// The number of orders, or at least so many. Parts of the order that have nothing to do with each other multiply (with the ways to
    /// interleave them), parts of which one comes wholly before the other multiply plainly, and what is left is counted
    /// set by set, each set being what has come so far.
    /// </summary>
    public (BigInteger Count, bool Exact) Count() => Count([.. Enumerable.Range(0, before.Count)]);

    /// <summary>A largest set in which nothing comes before anything else (Dilworth 1950, by a largest matching).</summary>
    public ImmutableArray<int> Widest()
    {
        var count = before.Count;
        var (above, below) = (new int[count], new int[count]);
        Array.Fill(above, -1);
        Array.Fill(below, -1);
        for (var low = 0; low < count; low++)
            Match(low, new bool[count]);

        // König: what alternating paths from unmatched left ends reach on the left and don't on the right is independent.
        var (left, right) = (new bool[count], new bool[count]);
        for (var low = 0; low < count; low++)
        {
            if (above[low] < 0)
                Visit(low);
        }

        return [.. Enumerable.Range(0, count).Where(i => left[i] && !right[i])];

        bool Match(int low, bool[] tried)
        {
            for (var high = 0; high < count; high++)
            {
                if (!before[high][low] || tried[high])
                    continue;
                tried[high] = true;
                if (below[high] >= 0 && !Match(below[high], tried))
                    continue;
                (above[low], below[high]) = (high, low);
                return true;
            }

            return false;
        }

        void Visit(int low)
        {
            if (left[low])
                return;
            left[low] = true;
            for (var high = 0; high < count; high++)
            {
                if (!before[high][low] || right[high])
                    continue;
                right[high] = true;
                if (below[high] >= 0)
                    Visit(below[high]);
            }
        }
    }

    private (BigInteger Count, bool Exact) Count(ImmutableArray<int> part)
    {
        if (part.Length < 2)
            return (BigInteger.One, true);
        var apart = Split(part, (a, b) => before[a][b] || before[b][a]);
        if (apart.Count > 1)
        {
            var (count, exact, placed) = (BigInteger.One, true, 0);
            foreach (var piece in apart)
            {
                var (inside, whole) = Count(piece);
                (count, exact, placed) = (count * inside * Choose(placed + piece.Length, piece.Length), exact && whole, placed + piece.Length);
            }

            return (count, exact);
        }

        var stacked = Split(part, (a, b) => !before[a][b] && !before[b][a]);
        if (stacked.Count > 1)
        {
            var pieces = stacked.Select(Count).ToList();
            return (pieces.Aggregate(BigInteger.One, (product, piece) => product * piece.Count), pieces.TrueForAll(piece => piece.Exact));
        }

        return SetBySet(part);
    }

    private (BigInteger Count, bool Exact) SetBySet(ImmutableArray<int> part)
    {
        var needs = part.Select(p => Enumerable.Range(0, part.Length).Where(j => before[p][part[j]])
            .Aggregate(BigInteger.Zero, (set, j) => set | (BigInteger.One << j))).ToArray();
        var layer = new Dictionary<BigInteger, BigInteger> { [0] = 1 };
        var sets = 0;
        for (var size = 0; size < part.Length; size++)
        {
            var next = new Dictionary<BigInteger, BigInteger>();
            foreach (var (set, count) in layer)
            {
                for (var i = 0; i < part.Length; i++)
                {
                    var bit = BigInteger.One << i;
                    if ((set & bit).IsZero && (set & needs[i]) == needs[i])
                        next[set | bit] = next.GetValueOrDefault(set | bit) + count;
                }
            }

            sets += next.Count;
            layer = next;

            // Each beginning can be finished in at least one order.
            if (sets > MostSets)
                return (layer.Values.Aggregate(BigInteger.Zero, (sum, count) => sum + count), false);
        }

        return (layer.Values.Single(), true);
    }

    private static List<ImmutableArray<int>> Split(ImmutableArray<int> part, Func<int, int, bool> together)
    {
        var left = part.ToList();
        var pieces = new List<ImmutableArray<int>>();
        while (left.Count > 0)
        {
            var piece = new List<int> { left[0] };
            left.RemoveAt(0);
            for (var i = 0; i < piece.Count; i++)
            {
                var near = left.Where(other => together(piece[i], other)).ToList();
                piece.AddRange(near);
                left.RemoveAll(near.Contains);
            }

            pieces.Add([.. piece.Order()]);
        }

        return pieces;
    }

    private static BigInteger Choose(int n, int k)
    {
        var result = BigInteger.One;
        for (var i = 1; i <= k; i++)
            result = result * (n - k + i) / i;
        return result;
    }
}
