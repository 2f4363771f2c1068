using System.CommandLine;
using HintBook.Mechanism;

namespace HintBook.Cli.Verbs;

/// <summary><c>solve BOOK</c>: says what can happen to the box, each line proved, refuted or not proved.</summary>
internal static class SolveVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop) => SolvingVerb.Make(
        "solve",
        "Prove how the box opens, and what else can happen to it.",
        (book, limits, progress) => Solver.Solve(book, limits, progress, stop),
        solution => solution.Findings,
        solution => solution.AnyRefuted,
        (book, solution, asJson) => asJson ? SolutionJson.Write(solution) : SolutionText.Write(book, solution),
        terminal,
        stop);
}
