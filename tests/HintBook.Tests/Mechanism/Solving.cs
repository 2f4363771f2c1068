using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Tests.Mechanism;

/// <summary>The verbs as the tests call them.</summary>
internal static class Solving
{
    // A busy machine must not turn a proof into "not proved".
    private static readonly TimeSpan Patient = TimeSpan.FromMinutes(10);

    public static Solution Of(Book book, bool reduce = true, int plainly = SolveLimits.FewStates) =>
        Solver.Solve(book, SolveLimits.Default with { Reduce = reduce, Plainly = plainly, Time = Patient }, null, TestContext.Current.CancellationToken);

    public static ResetPlan Reset(Book book, bool reduce = true, int plainly = SolveLimits.FewStates) =>
        ResetPlan.Find(book, SolveLimits.Default with { Reduce = reduce, Plainly = plainly, Time = Patient }, null, TestContext.Current.CancellationToken);

    public static Budget Budget(SolveLimits? limits = null) =>
        new(limits ?? SolveLimits.Default with { Time = Patient }, TimeProvider.System, null, TestContext.Current.CancellationToken);

    public static StateGraph GraphOf(Machine machine)
    {
        var graph = Exploration.Whole(machine, Budget());
        Assert.Null(graph.Stopped);
        return graph;
    }
}
