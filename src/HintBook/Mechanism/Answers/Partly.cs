using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>What a graph that isn't all there still shows: what was reached is reached, by a shortest way; nothing else is said.</summary>
internal static class Partly
{
    /// <summary>Reads what it can.</summary>
    public static Outlook Of(Graph graph)
    {
        var machine = graph.Machine;
        var size = new Attainable(machine).Count;
        var ways = new List<int>?[machine.StageActs.Length];
        var goal = -1;
        for (var state = graph.Count - 1; state >= 0; state--)
        {
            if (graph.Solved[state])
                goal = state;
        }

        for (var state = 0; state < graph.From.Count - 1; state++)
        {
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (machine.Acts[graph.By[e]].Stage is >= 0 and var stage)
                    ways[stage] ??= graph.WayTo(state);
            }
        }

        var relaxed = new RelaxedCertain(machine);
        var way = goal >= 0 ? graph.WayTo(goal) : null;
        return new Outlook
        {
            Explored = "partial",
            Why = graph.Stopped,
            Way = way,
            AtLeast = way?.Count ?? Math.Max(0, graph.Layers.Count - 2),
            Possible = graph.Possible,
            WayToStage = ways,
            DeadEnds = null,
            WayWithout = _ => null,
            Before = [.. machine.StageActs.Select(acts => relaxed.Of(acts.SelectMany(a => machine.Acts[a].When)) ?? new Bits(size))],
            BeforeGoal = relaxed.Of(machine.Goal) ?? new Bits(size),
            Exact = false,
        };
    }
}
