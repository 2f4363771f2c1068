using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>Turns what was found out into findings.</summary>
internal static class SolutionFindings
{
    /// <summary>The findings of a solution.</summary>
    /// <param name="machine">The book's machine.</param>
    /// <param name="waiting">What can be attained in it.</param>
    /// <param name="solution">What was found out.</param>
    public static IEnumerable<Finding> Collect(Machine machine, WaitingReasons waiting, Solution solution)
    {
        var book = machine.Book;
        return
        [
            .. Goal(machine, waiting, solution),
            .. OutOfReach(machine, waiting, solution),
            .. Never(machine, waiting, solution),
            .. NeverOpen(machine, waiting),
            .. GivesNothing(machine, solution),
            .. Ways(book, solution),
        ];
    }

    private static IEnumerable<Finding> Goal(Machine machine, WaitingReasons waiting, Solution solution)
    {
        var goal = machine.Book.Goal;
        if (goal.IsEmpty)
            yield break;
        var at = goal[0].At with { End = goal[^1].At.End };
        if (solution.Opens is Claim.Proved { Way.IsEmpty: true })
            yield return MechanismFindings.SolvedAtStart(at);
        else if (solution.Opens is Claim.Refuted refuted)
            yield return MechanismFindings.NeverOpens(at, refuted.Why);
        else if (solution.Opens is Claim.NotProved open && machine.Refused is not null)
            yield return MechanismFindings.CannotExplore.At(at, $"Whether the box opens is not proved: {open.Why}.");
        else if (solution.Opens is Claim.NotProved unknown)
            yield return MechanismFindings.NotProved.At(at, $"Whether the box opens is not proved: {unknown.Why}.", Hardness.Help(machine));
        if (solution is { Opens: Claim.Proved, NoDeadEnds: Claim.NotProved stuck })
            yield return MechanismFindings.DeadEndsNotProved.At(at, $"Whether nobody gets stuck is not proved: {stuck.Why}.", Hardness.Help(machine));
    }

    // Stages that wait for the same thing in the end are told together, at the first of them.
    private static IEnumerable<Finding> OutOfReach(Machine machine, WaitingReasons waiting, Solution solution) =>
        from s in Enumerable.Range(0, solution.Stages.Length)
        where solution.Stages[s].Reachable is Claim.Refuted
        let root = waiting.Root([.. machine.StageActs[s].SelectMany(act => machine.Acts[act].When)])
        group s by root is { } known ? (known.Variable, known.Accepts) : (-1 - s, 0UL) into same
        let stages = same.Select(s => machine.Book.Stages[s]).ToArray()
        select MechanismFindings.StageNeverReached(stages[0], ((Claim.Refuted)solution.Stages[same.First()].Reachable).Why, stages[1..]);

    private static IEnumerable<Finding> Never(Machine machine, WaitingReasons waiting, Solution solution)
    {
        var reached = solution.Stages.Where(stage => stage.Reachable is not Claim.Refuted).Select(stage => stage.Id).ToHashSet();
        var never = solution.NeverPossible.Where(step => step.Stage is null || reached.Contains(step.Stage)).ToHashSet();
        // One finding covers all positions of a free part.
        var acts = machine.Acts.Where(act => never.Contains(act.Step))
            .DistinctBy(act => act.Step.Kind == StepKind.FreeMove ? act.Step.Leaves[0].Name : (object)act);
        foreach (var act in acts)
            yield return MechanismFindings.NeverPossible(PlaceOf(machine.Book, act.Step), waiting.Described(act.Step), waiting.Explain(act.When));
        foreach (var rule in machine.Rules.Where(rule => !waiting.Holds(rule.When)))
            yield return MechanismFindings.NeverPossible(machine.Book.Box.Reactions[rule.Number].At, "what the box does by itself", waiting.Explain(rule.When));
    }

    private static IEnumerable<Finding> NeverOpen(Machine machine, WaitingReasons waiting) => machine.Behind
        .Where(behind => behind.Value is not [{ Literals.IsEmpty: true }] && !waiting.Holds(behind.Value))
        .OrderBy(behind => behind.Key)
        .Select(behind => HandlingFindings.NeverOpen(machine.Variables[behind.Key].Named!, waiting.Explain(behind.Value)));

    // What was in the hand on every way to a stage and is never hidden again can be given there only out of a slot that it names.
    private static IEnumerable<Finding> GivesNothing(Machine machine, Solution solution)
    {
        var attained = solution.Stages.ToDictionary(stage => stage.Id, stage => stage.Attained.ToHashSet());
        var hiding = machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects))
            .Where(effect => machine.Variables[effect.Variable].Named is Thing && machine.Variables[effect.Variable].Positions[effect.Position] == Thing.Hidden)
            .Select(effect => effect.Variable).ToHashSet();
        foreach (var act in machine.Acts.Where(act => act.Step.Kind is StepKind.StageMove or StepKind.BookMove))
        {
            foreach (var effect in act.Effects.Where(effect => !hiding.Contains(effect.Variable)))
            {
                var variable = machine.Variables[effect.Variable];
                if (variable.Named is not Thing { Fits.IsEmpty: false } thing)
                    continue;
                var unnamed = effect.From == ((1UL << variable.Positions.IndexOf(Thing.Hidden)) | (1UL << variable.Positions.IndexOf(Thing.InHand)));
                if (unnamed && (thing.Starts != Thing.Hidden || WasFound(act, effect)))
                {
                    var given = MoveOf(machine.Book, act.Step)?.Changes.Last(change => change.Name.Value == variable.Id).Name;
                    yield return HandlingFindings.GivesNothing(given ?? thing.Id, thing.Fits);
                }
            }
        }

        bool WasFound(Act act, Effect effect) => act.Step.Stage is { } id
            ? attained[id].Contains(new Placed(machine.Variables[effect.Variable].Id, Thing.InHand))
            : machine.Acts.Any(other => other.Stage >= 0 && other.Effects.Any(each => each.Variable == effect.Variable && each.Position == effect.Position));
    }

    private static IEnumerable<Finding> Ways(Book book, Solution solution)
    {
        // A box that is solved as it stands is told as that, not as a shortcut for every stage.
        if (solution.Opens is Claim.Proved { Way.IsEmpty: true })
            yield break;
        foreach (var way in solution.DeadEnds)
            yield return DeadEnd(book, way);
        foreach (var shortcut in solution.Shortcuts)
        {
            var stage = book.Stages.First(s => s.Id.Value == shortcut.Without);
            yield return MechanismFindings.Shortcut.At(stage.Title.At,
                $"The box opens without “{stage.Title.Value}”: {Say(shortcut.Path)}.",
                "Mark the stage “optional: true”, or let a later one need what it gives.");
        }

        foreach (var trying in solution.ByTrying.Where(trying => !trying.Skips.IsEmpty))
        {
            var code = book.Box.Codes.First(c => c.Id.Value == trying.Lock);
            var minutes = Words.Count((int)Math.Ceiling(trying.Seconds / 60), "minute");
            yield return MechanismFindings.OpensByTrying.At(code.Lock!.At,
                $"All {SolutionText.Thousands(trying.Settings)} settings of {trying.Lock} take {minutes} to try, which skips {Words.List(trying.Skips)}.",
                code.Lock is DialLock
                    ? "Let a setting take longer to try (“seconds-a-try”, if it does), or lower “patience” if nobody would try that long."
                    : "Give the lock another wheel, or lower “patience” if nobody would try that long.");
        }
    }

    /// <summary>A way in one line.</summary>
    public static string Say(IReadOnlyCollection<Step> way) =>
        way.Count <= 12 ? string.Join("; ", way) : $"{string.Join("; ", way.Take(5))}; …; {string.Join("; ", way.TakeLast(6))} ({way.Count} moves)";

    private static Finding DeadEnd(Book book, ImmutableArray<Step> way)
    {
        var last = way[^1];
        var undone = MoveOf(book, last)?.Undo is not null;
        return (undone ? MechanismFindings.DeadEndWithUndo : MechanismFindings.DeadEnd).At(
            PlaceOf(book, last),
            $"After this the box can't be solved any more ({last.Says}): {Say(way)}.",
            undone
                ? "Let the move need what must come first."
                : "Let the move need what must come first, make it “reversible: true”, or say in “undo” how to put it back.");
    }

    private static Move? MoveOf(Book book, Step step) =>
        step.Move < 0 ? null : step.Stage is null ? book.Box.Moves[step.Move] : book.Stages.First(s => s.Id.Value == step.Stage).Moves[step.Move];

    /// <summary>Where a step of a way is written.</summary>
    public static Span PlaceOf(Book book, Step step) =>
        MoveOf(book, step)?.Name.At ?? book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Id.At;
}
