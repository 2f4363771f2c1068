using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>What a graph that isn't all there still shows: what was reached is reached, by a shortest way; nothing else is said.</summary>
internal static class PartialGraph
{
    /// <summary>Reads what it can.</summary>
    public static ExplorationResult Answer(StateGraph graph)
    {
        var machine = graph.Machine;
        var ways = new Lazy<List<int>>?[machine.StageActs.Length];
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
                var from = state;
                if (machine.Acts[graph.By[e]].Stage is >= 0 and var stage)
                    ways[stage] ??= new Lazy<List<int>>(() => graph.WayTo(from));
            }
        }

        var way = goal >= 0 ? graph.WayTo(goal) : null;
        return new ExplorationResult
        {
            Explored = "partial",
            Why = graph.Stopped,
            Way = way,
            AtLeast = way?.Count ?? Math.Max(0, graph.Layers.Count - 2),
            Possible = graph.Possible,
            WayToStage = ways,
            DeadEnds = null,
            WayWithout = _ => null,
            Before = Before(machine),
            BeforeGoal = BeforeGoal(machine),
            Exact = false,
        };
    }

    /// <summary>By stage: what the relaxation proves certain before it; nothing where it can't be reached.</summary>
    public static Bits[] Before(Machine machine)
    {
        var relaxed = new RelaxedLandmarks(machine);
        return [.. machine.StageActs.Select(acts => relaxed.Before(acts.SelectMany(a => machine.Acts[a].When)) ?? new Bits(new Attainable(machine).Count))];
    }

    /// <summary>What the relaxation proves certain when the box is solved.</summary>
    public static Bits BeforeGoal(Machine machine) => new RelaxedLandmarks(machine).Before(machine.Goal) ?? new Bits(new Attainable(machine).Count);
}
