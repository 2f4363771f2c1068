using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Mechanism.Reduced;

namespace HintBook.Mechanism.Answers;

/// <summary>Chooses how a machine is explored.</summary>
internal static class Solving
{
    private const int MostStatesToSettleWhatIsOpen = 500_000;
    private const long MostBytesToSettleWhatIsOpen = 1 << 25;
    private const int ManyStates = 100_000;

    /// <summary>
    /// What can be found out about a machine: by reduction first, and by looking at every state where that leaves something open and there
    /// may be few enough of them.
    /// </summary>
    public static (Outlook Outlook, Unrest? Unrest) Outlook(Machine machine, Budget budget)
    {
        var reduced = budget.Limits.Reduce ? ByReduction.Of(machine, budget) : null;
        if (reduced is { Exact: true } && (reduced.Way is null || reduced.AtLeast == reduced.Way.Count) && reduced.DeadEnds is { Count: 0 })
            return (reduced, null);
        var graph = Exploration.Whole(machine, budget, most: reduced is null ? int.MaxValue : MostToSettle(machine));
        if (graph.Stopped is null)
            return (Read(graph, budget) with { Precedence = reduced?.Precedence }, graph.Unrest);
        budget.Forgive();
        if (budget.Limits.Reduce && budget.Why is null)
            reduced ??= ByReduction.Of(machine, budget, ManyStates);
        if (reduced is null)
            return (Read(graph, budget), graph.Unrest);
        return (Better(reduced, graph), graph.Unrest);
    }

    // Large boxes rarely have few states, and each of theirs is large.
    private static int MostToSettle(Machine machine) =>
        (int)Math.Min(MostStatesToSettleWhatIsOpen, MostBytesToSettleWhatIsOpen / (4 + Math.Max(1, machine.Variables.Length)));

    // Whatever was reached before it stopped was reached by a shortest way.
    private static Outlook Better(Outlook reduced, StateGraph graph)
    {
        var partly = Partly.Of(graph);
        return partly.Way is null
            ? reduced with { AtLeast = Math.Max(reduced.AtLeast, partly.AtLeast) }
            : reduced with { Way = partly.Way, AtLeast = partly.AtLeast };
    }

    /// <summary>The answers of a graph, all there or not.</summary>
    public static Outlook Read(StateGraph graph, Budget budget) => graph.Stopped is null ? Everything.Of(graph, budget) : Partly.Of(graph);
}
