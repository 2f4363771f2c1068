using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Places;

/// <summary>
/// Reads off a graph of states where a reader may stand. Ways end when the box is solved: what is done to an open box would blur what is certain.
/// Handling, free parts, ways back and moves of stages that are certainly made already cost nothing, other moves of stages one. A stage is next if its
/// move brings the goal nearer, be it after acts that cost nothing: not whether it is open, since handling comes between, and things are undone.
/// </summary>
internal sealed class StandingsOfGraph
{
    /// <summary>Graphs of more states are not read: each state keeps a row of what is certain.</summary>
    public const int MostStates = 200_000;

    private const int Unreached = int.MaxValue;
    private readonly StateGraph graph;
    private readonly ulong[] certain;
    private readonly int words;
    private readonly int[] begins;
    private readonly int[] before;
    private readonly int[] edges;
    private readonly int[] cost;

    private StandingsOfGraph(StateGraph graph, ulong[] certain, int words)
    {
        (this.graph, this.certain, this.words) = (graph, certain, words);
        (begins, before, edges) = Backwards();
        cost = Costs();
    }

    /// <summary>Reads them off, or null where the graph is too large or states in it stand for others.</summary>
    public static Standings? Read(StateGraph graph, Budget budget) =>
        graph is { Alike: null, Stopped: null, Count: <= MostStates } && CertainBefore.Rows(graph, budget, cutAtGoal: true) is var (rows, words)
            ? new StandingsOfGraph(graph, rows, words).All()
            : null;

    private Standings All()
    {
        var machine = graph.Machine;
        var things = new Attainable(machine);
        ImmutableArray<int> asked =
        [
            .. Enumerable.Range(0, machine.Variables.Length)
                .Where(v => machine.Variables[v].Named is Thing or Part { Seen: true, Free: false, Turns: false } || machine.ShowsWhen.ContainsKey(v)),
        ];
        var next = Next();
        var weights = new SeededWalk(graph, cost, StepCost, next).Weights();
        var merged = new Dictionary<Key, double>();
        var order = new List<Key>();
        for (var state = 0; state < graph.Count; state++)
        {
            if (cost[state] == Unreached || graph.Solved[state])
                continue;
            var key = new Key(
                [.. asked.Select(v => Shown(state, v))],
                next[state],
                Bits.Of(things.Count, certain.AsSpan(state * words, words)));
            if (!merged.TryGetValue(key, out var weight))
                order.Add(key);
            merged[key] = weight + weights[state];
        }

        return new(
            things,
            asked,
            [.. order.Select(key => new Standing { Shows = key.Shows, Next = key.Next, Known = key.Known, Weight = merged[key] })],
            Exact: true);
    }

    private int Shown(int state, int v) =>
        !graph.Machine.ShowsWhen.TryGetValue(v, out var when)
            || when.Any(clause => clause.Literals.All(literal => literal.Takes(graph.Position(state, literal.Variable))))
                ? graph.Position(state, v)
                : Standing.OutOfSight;

    private int StepCost(int state, int edge) =>
        graph.Machine.Acts[graph.By[edge]].Stage < 0 || (certain[(state * words) + (graph.By[edge] >> 6)] >> (graph.By[edge] & 63) & 1) != 0 ? 0 : 1;

    // The acts that lead to each state from states on a way to the goal, one after the other.
    private (int[] Begins, int[] Before, int[] Edges) Backwards()
    {
        var reached = new bool[graph.Count];
        var open = new Stack<int>([0]);
        reached[0] = true;
        var counts = new int[graph.Count + 1];
        while (open.TryPop(out var state))
        {
            if (graph.Solved[state])
                continue;
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                counts[graph.To[e] + 1]++;
                if (!reached[graph.To[e]])
                {
                    reached[graph.To[e]] = true;
                    open.Push(graph.To[e]);
                }
            }
        }

        for (var state = 0; state < graph.Count; state++)
            counts[state + 1] += counts[state];
        var (filled, from, by) = (counts.ToArray(), new int[counts[^1]], new int[counts[^1]]);
        for (var state = 0; state < graph.Count; state++)
        {
            if (!reached[state] || graph.Solved[state])
                continue;
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                var place = filled[graph.To[e]]++;
                (from[place], by[place]) = (state, e);
            }
        }

        return (counts, from, by);
    }

    // The least cost to the goal, backwards from solved states; costs are 0 or 1.
    private int[] Costs()
    {
        var least = new int[graph.Count];
        Array.Fill(least, Unreached);
        var open = new LinkedList<int>();
        for (var state = 0; state < graph.Count; state++)
        {
            if (graph.Solved[state])
            {
                least[state] = 0;
                open.AddLast(state);
            }
        }

        while (open.First is { } first)
        {
            open.RemoveFirst();
            for (var i = begins[first.Value]; i < begins[first.Value + 1]; i++)
            {
                var step = StepCost(before[i], edges[i]);
                if (least[first.Value] + step >= least[before[i]])
                    continue;
                least[before[i]] = least[first.Value] + step;
                if (step == 0)
                    open.AddFirst(before[i]);
                else
                    open.AddLast(before[i]);
            }
        }

        return least;
    }

    private Bits[] Next()
    {
        var stages = graph.Machine.StageActs.Length;
        var next = new Bits[graph.Count];
        var open = new Queue<int>();
        for (var state = 0; state < graph.Count; state++)
        {
            next[state] = new Bits(stages);
            if (graph.Solved[state] || cost[state] == Unreached)
                continue;
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (cost[graph.To[e]] < cost[state])
                    next[state][graph.Machine.Acts[graph.By[e]].Stage] = true;
            }

            if (!next[state].IsEmpty)
                open.Enqueue(state);
        }

        while (open.TryDequeue(out var state))
        {
            for (var i = begins[state]; i < begins[state + 1]; i++)
            {
                if (cost[before[i]] != cost[state] || next[state].IsWithin(next[before[i]]) || StepCost(before[i], edges[i]) != 0)
                    continue;
                next[before[i]].Or(next[state]);
                open.Enqueue(before[i]);
            }
        }

        return next;
    }

    private sealed record Key(ImmutableArray<int> Shows, Bits Next, Bits Known)
    {
        public bool Equals(Key? other) => other is not null && Shows.AsSpan().SequenceEqual(other.Shows.AsSpan())
            && Bits.ByContent.Equals(Next, other.Next) && Bits.ByContent.Equals(Known, other.Known);

        public override int GetHashCode()
        {
            var hash = default(HashCode);
            hash.Add(Known, Bits.ByContent);
            hash.Add(Next, Bits.ByContent);
            foreach (var position in Shows)
                hash.Add(position);
            return hash.ToHashCode();
        }
    }
}
