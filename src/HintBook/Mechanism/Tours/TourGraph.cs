namespace HintBook.Mechanism.Tours;

/// <summary>Every state of a small box that a test walk can come to, with all that can be done there.</summary>
internal sealed class TourGraph
{
    private readonly TourStates states;
    private readonly List<TourStates.Edge[]> edges = [];
    private List<(int From, bool Own)>[]? backwards;

    private TourGraph(TourStates states) => this.states = states;

    /// <summary>How many states there are.</summary>
    public int Count => states.Count;

    /// <summary>What can be done in each state, by its number; 0 is the box as shipped.</summary>
    public IReadOnlyList<TourStates.Edge[]> Edges => edges;

    /// <summary>A state.</summary>
    public int[] this[int number] => states[number];

    /// <summary>The number of a state.</summary>
    public int NumberOf(int[] state) => states.NumberOf(state);

    /// <summary>Looks at every state; null where there are more than some number, or no time is left.</summary>
    /// <param name="states">Those of the box, none of which but the one as shipped has been met yet.</param>
    /// <param name="most">The most states.</param>
    /// <param name="budget">What may be used.</param>
    public static TourGraph? Of(TourStates states, int most, Budget budget)
    {
        var graph = new TourGraph(states);
        for (var i = 0; i < states.Count; i++)
        {
            if (states.Count > most || budget.Spent(states.Count, 0, 0))
                return null;
            graph.edges.Add(states.From(i));
        }

        budget.Add(graph.Count);
        return graph;
    }

    /// <summary>
    /// For each state the fewest of some steps on a way to one of some states, or <see cref="int.MaxValue"/>: steps that do a duty of their own cost nothing,
    /// since whoever counts duties has counted them.
    /// </summary>
    /// <param name="ends">What a way costs from a state on where it ends there; <see cref="int.MaxValue"/> where it doesn't end.</param>
    public int[] FewestBesides(Func<int, int> ends)
    {
        var cost = new int[Count];
        var open = new PriorityQueue<int, int>();
        for (var s = 0; s < Count; s++)
        {
            cost[s] = ends(s);
            if (cost[s] < int.MaxValue)
                open.Enqueue(s, cost[s]);
        }

        var into = Into();
        while (open.TryDequeue(out var at, out var known))
        {
            if (known > cost[at])
                continue;
            foreach (var (from, own) in into[at])
            {
                var through = known + (own ? 0 : 1);
                if (through >= cost[from])
                    continue;
                cost[from] = through;
                open.Enqueue(from, through);
            }
        }

        return cost;
    }

    private List<(int From, bool Own)>[] Into()
    {
        if (backwards is not null)
            return backwards;
        backwards = [.. Enumerable.Range(0, Count).Select(_ => new List<(int, bool)>())];
        for (var s = 0; s < Count; s++)
        {
            foreach (var edge in edges[s].Where(edge => edge.To != s))
                backwards[edge.To].Add((s, edge.Deed.Own >= 0));
        }

        return backwards;
    }
}
