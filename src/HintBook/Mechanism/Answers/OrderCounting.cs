using System.Collections.Immutable;
using System.Numerics;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// The widest moment and the number of orders, from the graph of a machine in which every move of every stage leaves a mark. A stage is done
/// when all its moves have been made; it is open when one of its moves is possible and it isn't done.
/// </summary>
internal sealed class OrderCounting
{
    private const int MostSets = 200_000;
    private readonly StateGraph graph;
    private readonly ImmutableArray<(int Variable, int Stage)> marks;
    private readonly Bits[] done;

    /// <summary>Prepares the counts.</summary>
    /// <param name="graph">The graph, with marks; all there, or else only <see cref="Widest"/> may be asked, which is then a lower bound.</param>
    public OrderCounting(StateGraph graph)
    {
        this.graph = graph;
        var machine = graph.Machine;
        marks =
        [
            .. from s in Enumerable.Range(0, machine.StageActs.Length)
               from a in machine.StageActs[s]
               from effect in machine.Acts[a].Effects
               where machine.Variables[effect.Variable].Named is null
               select (effect.Variable, s),
        ];
        done = [.. Enumerable.Range(0, graph.Count).Select(Done)];
    }

    /// <summary>The most stages open and not done in one state; the first such state counts.</summary>
    public (int Count, ImmutableArray<int> Stages) Widest()
    {
        var (count, stages) = (0, ImmutableArray<int>.Empty);
        var open = new SortedSet<int>();
        for (var state = 0; state < graph.From.Count - 1; state++)
        {
            open.Clear();
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (graph.Machine.Acts[graph.By[e]].Stage is >= 0 and var stage && !done[state][stage])
                    open.Add(stage);
            }

            if (open.Count > count)
                (count, stages) = (open.Count, [.. open]);
        }

        return (count, stages);
    }

    /// <summary>
    /// Counts orders by sets of states: all states that one order of completions can have led to are one node, however they were
    /// reached, so that each order is counted once.
    /// </summary>
    public Orders Orders(Budget budget)
    {
        var live = WholeGraph.Live(graph);
        var total = BigInteger.Zero;
        var layer = new Dictionary<Key, BigInteger>();
        var started = Closed([0]);
        if (started.Solved)
            total++;
        if (started.States.Numbers.Length > 0)
            layer[started.States] = BigInteger.One;
        var (sets, looked) = (1, 0L);
        while (layer.Count > 0)
        {
            var next = new Dictionary<Key, BigInteger>();
            foreach (var (states, count) in layer)
            {
                looked += states.Numbers.Length;
                foreach (var (_, reached) in Completed(states))
                {
                    var (open, solved) = Closed(reached);
                    if (solved)
                        total += count;
                    if (open.Numbers.Any(state => live[state]))
                        next[open] = next.GetValueOrDefault(open) + count;
                }

                if (++sets > MostSets || budget.Spent(looked, next.Count, 0))
                    return new Orders(total + layer.Values.Max(), Exact: false);
            }

            layer = next;
        }

        return new Orders(total, Exact: true);
    }

    private Bits Done(int state)
    {
        var all = Bits.All(graph.Machine.StageActs.Length);
        foreach (var (variable, stage) in marks)
        {
            if (graph.Position(state, variable) == 0)
                all[stage] = false;
        }

        return all;
    }

    private SortedDictionary<int, HashSet<int>> Completed(Key states)
    {
        var reached = new SortedDictionary<int, HashSet<int>>();
        foreach (var state in states.Numbers)
        {
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (Completes(state, e) is >= 0 and var stage)
                {
                    if (!reached.TryGetValue(stage, out var set))
                        reached[stage] = set = [];
                    set.Add(graph.To[e]);
                }
            }
        }

        return reached;
    }

    private (Key States, bool Solved) Closed(IEnumerable<int> from)
    {
        var seen = new HashSet<int>(from);
        var open = new Stack<int>(seen);
        var kept = new List<int>();
        var solved = false;
        while (open.TryPop(out var state))
        {
            if (graph.Solved[state])
            {
                solved = true;
                continue;
            }

            kept.Add(state);
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (Completes(state, e) < 0 && seen.Add(graph.To[e]))
                    open.Push(graph.To[e]);
            }
        }

        kept.Sort();
        return (new Key([.. kept]), solved);
    }

    private int Completes(int state, int edge) =>
        graph.Machine.Acts[graph.By[edge]].Stage is >= 0 and var stage && !done[state][stage] && done[graph.To[edge]][stage] ? stage : -1;

    private readonly record struct Key(ImmutableArray<int> Numbers)
    {
        public bool Equals(Key other) => Numbers.SequenceEqual(other.Numbers);

        public override int GetHashCode()
        {
            var hash = default(HashCode);
            foreach (var number in Numbers)
                hash.Add(number);
            return hash.ToHashCode();
        }
    }
}
