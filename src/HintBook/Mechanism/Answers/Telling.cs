using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>Turns what was found out into findings.</summary>
internal static class Telling
{
    /// <summary>The findings of a solution.</summary>
    /// <param name="book">The book.</param>
    /// <param name="solution">What was found out.</param>
    /// <param name="refused">Whether the book could not be explored at all.</param>
    /// <param name="waits">Says why a step is never possible.</param>
    public static IEnumerable<Finding> Of(Book book, Solution solution, bool refused, Func<Step, string> waits)
    {
        var goal = book.Goal.IsEmpty ? book.File.Top : book.Goal[0].At;
        switch (solution.Opens)
        {
            case Claim.Proved { Way.IsEmpty: true }:
                yield return MechanismFindings.Of(MechanismFindings.SolvedAtStart, goal, "The goal holds before anything has been done.",
                    "Name something in `goal` that only the last stage gives.");
                break;
            case Claim.Refuted refuted:
                yield return MechanismFindings.Of(MechanismFindings.NeverOpens, goal, $"The box can't be opened: {refuted.Why}.");
                break;
            case Claim.NotProved open:
                yield return MechanismFindings.Of(refused ? MechanismFindings.CannotExplore : MechanismFindings.NotProved, goal, $"Whether the box opens is not proved: {open.Why}.");
                break;
        }

        foreach (var (stage, answer) in book.Stages.Zip(solution.Stages))
        {
            if (answer.Reachable is Claim.Refuted refuted)
                yield return MechanismFindings.Of(MechanismFindings.StageNeverReached, stage.Id.At, $"The stage {stage.Id} can't be reached: {refuted.Why}.");
        }

        var reached = solution.Stages.Where(stage => stage.Reachable is not Claim.Refuted).Select(stage => stage.Id).ToHashSet();
        foreach (var step in solution.NeverPossible.Where(step => step.Stage is null || reached.Contains(step.Stage)))
            yield return MechanismFindings.Of(MechanismFindings.MoveNeverPossible, PlaceOf(book, step), $"This can never be done: {waits(step)}.");
        foreach (var way in solution.DeadEnds)
            yield return DeadEnd(book, way);
        foreach (var shortcut in solution.Shortcuts)
        {
            yield return MechanismFindings.Of(MechanismFindings.Shortcut, book.Stages.First(s => s.Id.Value == shortcut.Without).Id.At,
                $"The box opens without the stage {shortcut.Without}: {Say(shortcut.Path)}.",
                "Mark the stage `optional: true`, or let a later one need what it gives.");
        }

        foreach (var trying in solution.ByTrying.Where(trying => !trying.Skips.IsEmpty))
        {
            var code = book.Box.Codes.First(c => c.Id.Value == trying.Lock);
            yield return MechanismFindings.Of(MechanismFindings.OpensByTrying, code.Lock!.At,
                $"All {trying.Settings} settings of {trying.Lock} take {Words.Count((int)Math.Ceiling(trying.Seconds / 60), "minute")} to try, which skips {Words.List(trying.Skips)}.",
                "Give the lock another wheel, or lower `patience` if nobody would try that long.");
        }
    }

    /// <summary>A way in one line.</summary>
    public static string Say(IReadOnlyCollection<Step> way) =>
        way.Count <= 12 ? string.Join("; ", way) : $"{string.Join("; ", way.Take(11))}; … ({way.Count} moves)";

    private static Finding DeadEnd(Book book, ImmutableArray<Step> way)
    {
        var last = way[^1];
        var undone = MoveOf(book, last)?.Undo is not null;
        return MechanismFindings.Of(
            undone ? MechanismFindings.DeadEndWithUndo : MechanismFindings.DeadEnd,
            PlaceOf(book, last),
            $"After this the box can't be solved any more ({last.Says}): {Say(way)}.",
            undone ? "Let the move need what must come first." : "Let the move need what must come first, make it `reversible: true`, or say in `undo` how to put it back.");
    }

    private static Move? MoveOf(Book book, Step step) =>
        step.Move < 0 ? null : step.Stage is null ? book.Box.Moves[step.Move] : book.Stages.First(s => s.Id.Value == step.Stage).Moves[step.Move];

    private static Span PlaceOf(Book book, Step step) =>
        MoveOf(book, step)?.Name.At ?? book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Id.At;
}
