using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Mechanism.Reduced;

namespace HintBook.Mechanism.Answers;

/// <summary>Chooses how a machine is explored.</summary>
internal static class ExplorationStrategy
{
    private const int MostStatesToSettleWhatIsOpen = 500_000;
    private const long MostBytesToSettleWhatIsOpen = 1 << 25;
    private const int MostToReach = 20_000_000;
    private const int ManyStates = 100_000;
    private const int MostPlacesPlainly = 1_000_000;
    private const int MostPartsPlainly = 100;
    private const int FewUpToExchange = 30_000;
    private const long MostPlacesUpToExchange = 30_000_000;

    /// <summary>
    /// What can be found out about a machine: by looking at every state where there are few, or few that don't differ only by exchanges of alike things;
    /// then by reduction; and by looking at every state where that leaves something open and there may be few enough of them.
    /// </summary>
    public static (ExplorationResult Result, ReactionFault? Fault, StateGraph? Graph) Explore(Machine machine, Budget budget)
    {
        if (budget.Limits.Reduce && Plainly(machine, budget) is { Stopped: null } few)
            return All(few, budget);
        var alike = budget.Limits.Reduce ? Symmetry.Of(machine) : null;
        if (alike is not null
            && Exploration.Whole(machine, budget, most: FewToOrder(machine), alike: alike) is { Stopped: null } fewer
            && All(fewer, budget) is { Result.Exact: true } known)
        {
            return known;
        }

        var reduced = budget.Limits.Reduce ? ByReduction.Explore(machine, budget) : null;
        if (reduced is { Exact: true } && (reduced.Way is null || reduced.AtLeast == reduced.Way.Count) && reduced.DeadEnds is { Count: 0 })
            return (reduced, null, null);
        var graph = UpToExchange(machine, budget, reduced is null ? int.MaxValue : MostToSettle(machine), alike);
        if (graph.Stopped is null)
            return (Read(graph, budget) with { Precedence = reduced?.Precedence }, graph.Unrest, graph);
        budget.Forgive();
        if (budget.Limits.Reduce && budget.Why is null)
            reduced ??= ByReduction.Explore(machine, budget, ManyStates);
        if (reduced is null)
            return (Read(graph, budget), graph.Unrest, null);
        // What was reached of the graph isn't kept while more is looked for.
        var (unrest, (way, atLeast)) = (graph.Unrest, Partly(graph));
        return (Better(reduced, way, atLeast, machine, budget), unrest, null);
    }

    private static (List<int>? Way, int AtLeast) Partly(StateGraph graph)
    {
        var partly = PartialGraph.Answer(graph);
        return (partly.Way, partly.AtLeast);
    }

    /// <summary>
    /// The graph of a machine in which one state stands for all that differ from it by exchanges, if anything can be exchanged; where reactions
    /// don't settle, the graph in which each state stands for itself, since the way there is told.
    /// </summary>
    /// <param name="machine">What to explore.</param>
    /// <param name="budget">What it may use.</param>
    /// <param name="most">How many states may be stored at the most.</param>
    /// <param name="alike">What can be exchanged, or null.</param>
    public static StateGraph UpToExchange(Machine machine, Budget budget, int most, Symmetry? alike) =>
        alike is not null && Exploration.Whole(machine, budget, most: most, alike: alike) is { Unrest: null } graph
            ? graph
            : Exploration.Whole(machine, budget, most: most);

    private static (ExplorationResult Result, ReactionFault? Fault, StateGraph? Graph) All(StateGraph graph, Budget budget) =>
        (Read(graph, budget) with { Precedence = new(() => ByReduction.Explore(graph.Machine, budget)?.Precedence?.Value) }, graph.Unrest, graph);

    // States of a box with many parts are wide, and then even a few take their time.
    private static StateGraph? Plainly(Machine machine, Budget budget) => budget.Limits.Plainly > 0 && machine.Variables.Length is > 0 and <= MostPartsPlainly
        ? Exploration.Whole(machine, budget, most: Math.Min(budget.Limits.Plainly, MostPlacesPlainly / machine.Variables.Length))
        : null;

    // Whatever an act leads to is put in order, place by place.
    private static int FewToOrder(Machine machine) =>
        (int)Math.Min(FewUpToExchange, MostPlacesUpToExchange / Math.Max(1, (long)machine.Variables.Length * machine.Acts.Length));

    // Large boxes rarely have few states, and each of theirs is large.
    private static int MostToSettle(Machine machine) =>
        (int)Math.Min(MostStatesToSettleWhatIsOpen, MostBytesToSettleWhatIsOpen / (4 + Math.Max(1, machine.Variables.Length)));

    // Whatever was reached before it stopped was reached by a shortest way; without the acts between them more states can be reached.
    private static ExplorationResult Better(ExplorationResult reduced, List<int>? known, int atLeast, Machine machine, Budget budget)
    {
        if (known is not null)
            return reduced with { Way = known, AtLeast = atLeast };
        if (reduced.Way is null
            || budget.Why is not null
            || BreadthFirst.Explore(machine, budget, MostToReach, untilSolved: true, Environment.ProcessorCount) is not { } reach)
        {
            return reduced with { AtLeast = Math.Max(reduced.AtLeast, atLeast) };
        }

        return reach.WayToGoal() is { } way
            ? reduced with { Way = way, AtLeast = way.Count }
            : reduced with { AtLeast = Math.Max(reduced.AtLeast, reach.Layers) };
    }

    /// <summary>The answers of a graph, whether it is complete or was stopped early.</summary>
    public static ExplorationResult Read(StateGraph graph, Budget budget) =>
        graph.Stopped is null ? WholeGraph.Answer(graph, budget) : PartialGraph.Answer(graph);
}
