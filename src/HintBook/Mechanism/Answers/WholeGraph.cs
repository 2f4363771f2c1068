using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>The answers that follow from the whole graph of states; all of them exact.</summary>
internal static class WholeGraph
{
    /// <summary>How many ways into dead ends are kept.</summary>
    public const int MostDeadEnds = 20;

    /// <summary>
    /// Reads the answers off a graph that is all there. Where states stand for all that differ from them by exchanges of alike things, dead ends have one
    /// way for all acts that can be exchanged for each other, and there are ways only without acts that no exchange changes.
    /// </summary>
    public static ExplorationResult Answer(StateGraph graph, Budget budget)
    {
        var machine = graph.Machine;
        var firstOpen = Enumerable.Repeat(-1, machine.StageActs.Length).ToArray();
        var goal = -1;
        for (var state = 0; state < graph.Count; state++)
        {
            if (goal < 0 && graph.Solved[state])
                goal = state;
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (machine.Acts[graph.By[e]].Stage is >= 0 and var stage && firstOpen[stage] < 0)
                    firstOpen[stage] = state;
            }
        }

        var (before, beforeGoal) = CertainUpToExchange.On(graph, budget) is { } certain ? certain : (null, null);
        var way = goal >= 0 ? graph.WayTo(goal) : null;
        return new ExplorationResult
        {
            Explored = graph.Alike is null ? "all" : "reduced",
            Why = null,
            Way = way,
            AtLeast = way?.Count ?? 0,
            Possible = graph.Possible,
            WayToStage = [.. firstOpen.Select(state => state < 0 ? null : new Lazy<List<int>>(() => graph.WayTo(state)))],
            DeadEnds = goal >= 0 ? DeadEnds(graph) : [],
            DeadEndsShortest = true,
            WayWithout = act => WayWithout(graph, act),
            Before = before ?? PartialGraph.Before(machine),
            BeforeGoal = beforeGoal ?? PartialGraph.BeforeGoal(machine),
            Exact = before is not null,
        };
    }

    /// <summary>The states from which the box can still be solved.</summary>
    public static System.Collections.BitArray Live(StateGraph graph)
    {
        var live = new System.Collections.BitArray(graph.Solved);
        for (var changed = true; changed;)
        {
            changed = false;
            for (var state = graph.Count - 1; state >= 0; state--)
                changed |= !live[state] && (live[state] = Leads(state));
            for (var state = 0; state < graph.Count; state++)
                changed |= !live[state] && (live[state] = Leads(state));
        }

        return live;

        bool Leads(int state)
        {
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (live[graph.To[e]])
                    return true;
            }

            return false;
        }
    }

    private static List<int>? WayWithout(StateGraph graph, int act)
    {
        if (graph.Alike?.Keeps(act) == false)
            return null;
        var walk = new Walk(graph.Count);
        while (walk.Next() is >= 0 and var state)
        {
            if (graph.Solved[state])
                return graph.Real(walk.WayTo(state));
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (graph.By[e] != act)
                    walk.Meet(graph.To[e], state, graph.By[e]);
            }
        }

        return null;
    }

    // What happens after the box is solved closes no door: ways end there.
    private static List<List<int>> DeadEnds(StateGraph graph)
    {
        var live = Live(graph);
        if (live.HasAllSet())
            return [];

        var walk = new Walk(graph.Count);
        var closed = new Dictionary<int, (int State, int Act)>();
        while (walk.Next() is >= 0 and var state)
        {
            if (graph.Solved[state] || !live[state])
                continue;
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                walk.Meet(graph.To[e], state, graph.By[e]);
                if (!live[graph.To[e]] && closed.Count < MostDeadEnds)
                    closed.TryAdd(graph.Alike?.Images(graph.By[e])[0] ?? graph.By[e], (state, graph.By[e]));
            }
        }

        return [.. closed.Values.Select(last => graph.Real([.. walk.WayTo(last.State), last.Act])).OrderBy(way => way.Count)];
    }

    /// <summary>Breadth first over states that are known already, from the first.</summary>
    private sealed class Walk
    {
        private readonly int[] from;
        private readonly int[] by;
        private readonly Queue<int> open = new([0]);

        public Walk(int count)
        {
            (from, by) = (new int[count], new int[count]);
            Array.Fill(from, -1);
            from[0] = 0;
        }

        public int Next() => open.TryDequeue(out var state) ? state : -1;

        public void Meet(int state, int before, int act)
        {
            if (from[state] >= 0)
                return;
            (from[state], by[state]) = (before, act);
            open.Enqueue(state);
        }

        public List<int> WayTo(int state)
        {
            var way = new List<int>();
            for (; state != 0; state = from[state])
                way.Add(by[state]);
            way.Reverse();
            return way;
        }
    }
}
