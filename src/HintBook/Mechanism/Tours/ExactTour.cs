namespace HintBook.Mechanism.Tours;

/// <summary>
/// The shortest walk that does some duties, by A* over states and the set of duties done. No walk is shorter than its duties that want a handling of their
/// own, and the handlings besides that lead past the farthest of the others and home; that bound never overestimates, so the first walk found is a
/// shortest (Hart, Nilsson, Raphael, "A formal basis for the heuristic determination of minimum cost paths", 1968). Of walks that are as short the one
/// is taken that uses things up when the fewest duties are still to be done.
/// </summary>
/// <param name="graph">Every state.</param>
/// <param name="wanted">The duties, at most 64 of them.</param>
/// <param name="home">The states in which the walk may end; null for any.</param>
/// <param name="usesUp">Whether an act uses something up.</param>
internal sealed class ExactTour(TourGraph graph, IReadOnlyList<int> wanted, Func<int, bool>? home, Func<int, bool> usesUp)
{
    /// <summary>The most duties that a set of them can hold.</summary>
    public const int MostDuties = 64;
    private const int Unreachable = int.MaxValue;

    // One handling weighs more than all that can be said against using things up.
    private const long OneHandling = 1 << 16;
    private readonly Dictionary<int, int> bits = wanted.Index().ToDictionary(each => each.Item, each => each.Index);
    private readonly List<(int State, ulong Done, long Cost, int From, Handling By)> nodes = [];

    /// <summary>The walk, or null; no walk has fewer handlings than the bound, which is <see cref="int.MaxValue"/> where there is none at all.</summary>
    /// <param name="most">How many pairs of a state and a set may be stored.</param>
    /// <param name="budget">What may be used.</param>
    public (List<Handling>? Walk, int Bound) Find(int most, Budget budget)
    {
        var toEnd = graph.FewestBesides(s => home is null || home(s) ? 0 : Unreachable);
        var past = wanted.Select(duty => graph.FewestBesides(s => PastHere(s, duty, toEnd))).ToArray();
        var all = wanted.Count == MostDuties ? ulong.MaxValue : (1UL << wanted.Count) - 1;
        var costly = wanted.Index().Where(each => graph.Edges.Any(at => at.Any(edge => edge.Deed.Own == each.Item)))
            .Aggregate(0UL, (set, each) => set | (1UL << each.Index));
        var best = new Dictionary<(int State, ulong Done), long>();
        var open = new PriorityQueue<int, (long Whole, int Left, int Number)>();
        Store(0, 0, 0, -1, default);
        var bound = 0;
        while (open.TryDequeue(out var number, out var priority))
        {
            bound = Math.Max(bound, (int)(priority.Whole / OneHandling));
            var node = nodes[number];
            if (node.Cost > best[(node.State, node.Done)])
                continue;
            if (node.Done == all && (home is null || home(node.State)))
                return (WayTo(number), bound);
            if (nodes.Count > most || ((number & 4095) == 0 && budget.Spent(nodes.Count, open.Count, 0)))
                return (null, bound);
            foreach (var edge in graph.Edges[node.State])
            {
                var done = node.Done | BitsOf(edge.Deed);
                if (edge.To != node.State || done != node.Done)
                    Store(edge.To, done, node.Cost + OneHandling + Against(edge.Deed, done), number, edge.Deed.Handling);
            }
        }

        return (null, int.MaxValue);

        int Against(Deed deed, ulong done) => !deed.Handling.MustHold && usesUp(deed.Handling.Act) ? System.Numerics.BitOperations.PopCount(all & ~done) : 0;

        void Store(int state, ulong done, long cost, int from, Handling by)
        {
            if (best.TryGetValue((state, done), out var known) && known <= cost)
                return;
            var left = Left(state, done);
            if (left == Unreachable)
                return;
            best[(state, done)] = cost;
            open.Enqueue(nodes.Count, (cost + (left * OneHandling), left, nodes.Count));
            nodes.Add((state, done, cost, from, by));
        }

        int Left(int state, ulong done)
        {
            var besides = toEnd[state];
            for (var d = 0; d < past.Length && besides < Unreachable; d++)
            {
                if ((done >> d & 1) == 0)
                    besides = Math.Max(besides, past[d][state]);
            }

            return besides == Unreachable ? Unreachable : besides + System.Numerics.BitOperations.PopCount(costly & ~done);
        }
    }

    private int PastHere(int state, int duty, int[] toEnd)
    {
        var least = Unreachable;
        foreach (var edge in graph.Edges[state])
        {
            if ((edge.Deed.Own == duty || edge.Deed.Seen.Contains(duty)) && toEnd[edge.To] < Unreachable)
                least = Math.Min(least, toEnd[edge.To] + (edge.Deed.Own >= 0 ? 0 : 1));
        }

        return least;
    }

    private ulong BitsOf(Deed deed)
    {
        var set = deed.Own >= 0 && bits.TryGetValue(deed.Own, out var own) ? 1UL << own : 0;
        foreach (var seen in deed.Seen)
            set |= bits.TryGetValue(seen, out var bit) ? 1UL << bit : 0;
        return set;
    }

    private List<Handling> WayTo(int number)
    {
        var walk = new List<Handling>();
        for (; nodes[number].From >= 0; number = nodes[number].From)
            walk.Add(nodes[number].By);
        walk.Reverse();
        return walk;
    }
}
