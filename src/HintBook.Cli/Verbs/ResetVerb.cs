using System.CommandLine;
using HintBook.Mechanism;

namespace HintBook.Cli.Verbs;

/// <summary><c>reset BOOK</c>: plans the way back from the solved box, one step a line.</summary>
internal static class ResetVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop) => SolvingVerb.Make(
        "reset",
        "Plan how the solved box is put back.",
        (book, limits, progress) => ResetPlan.Find(book, limits, progress, stop),
        plan => plan.Findings,
        plan => plan.Possible is Claim.Refuted,
        (book, plan, asJson) => asJson ? SolutionJson.Write(plan) : SolutionText.Write(book, plan),
        terminal,
        stop);
}
