using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>Chooses how a machine is explored.</summary>
internal static class Solving
{
    /// <summary>What can be found out about a machine.</summary>
    public static Outlook Outlook(Machine machine, Budget budget) => Read(Exploration.Whole(machine, budget), budget);

    /// <summary>The answers of a graph, all there or not.</summary>
    public static Outlook Read(Graph graph, Budget budget) => graph.Stopped is null ? Everything.Of(graph, budget) : Partly.Of(graph);
}
