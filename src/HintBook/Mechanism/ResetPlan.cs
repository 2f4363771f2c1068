using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>How a solved box is put back as it left the maker.</summary>
public sealed record ResetPlan
{
    /// <summary>Whether every solved box can be put back; proved with the plan, refuted with a way to a solved state that can't.</summary>
    public required Claim Possible { get; init; }

    /// <summary>The way from the shipped box to the solved one that the plan starts from: everything in it has been done.</summary>
    public required ImmutableArray<Step> From { get; init; }

    /// <summary>One step a line, from there back to the shipped box; empty if there is none or none was found.</summary>
    public required ImmutableArray<Step> Plan { get; init; }

    /// <summary>Things that were used up and that nothing puts back: each time new ones are needed.</summary>
    public required ImmutableArray<string> Replaces { get; init; }

    /// <summary>No plan from there has fewer steps.</summary>
    public required int Bound { get; init; }

    /// <summary>States stored for this.</summary>
    public required long States { get; init; }

    /// <summary>What the author should know.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Finds the plan: shortest where all states could be looked at, otherwise with its lower bound.</summary>
    /// <param name="book">The book.</param>
    /// <param name="limits">What may be used.</param>
    /// <param name="progress">Told after the first second.</param>
    /// <param name="stop">Ends it at once.</param>
    public static ResetPlan Find(Book book, SolveLimits limits, IProgress<SolveProgress>? progress = null, CancellationToken stop = default) =>
        Find(Explored.Explore(book, limits, progress, stop: stop));

    /// <summary>Finds the plan of a box that has been explored, within what its limits have left.</summary>
    /// <param name="explored">The explored box.</param>
    public static ResetPlan Find(Explored explored) => new ResetPlanner(explored).Plan();

    /// <summary>No plan, and nothing to tell the author beside what is told already.</summary>
    /// <param name="why">What stands in the way, as a sentence.</param>
    internal static ResetPlan None(string why) => new()
    {
        Possible = new Claim.NotProved(why),
        From = [],
        Plan = [],
        Replaces = [],
        Bound = 0,
        States = 0,
        Findings = [],
    };
}
