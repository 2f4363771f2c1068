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
        else if (solution.Opens is Claim.Refuted)
            yield return MechanismFindings.NeverOpens(at, waiting.OfGoal());
        else if (solution.Opens is Claim.NotProved open && machine.Refused is not null)
            yield return MechanismFindings.CannotExplore.At(at, $"Whether the box opens is not proved: {open.Why}.", Hardness.Help(machine, open.Why));
        else if (solution.Opens is Claim.NotProved unknown)
            yield return MechanismFindings.NotProved.At(at, $"Whether the box opens is not proved: {unknown.Why}.", Hardness.Help(machine, unknown.Why));
        if (solution is { Opens: Claim.Proved, NoDeadEnds: Claim.NotProved stuck })
        {
            yield return MechanismFindings.DeadEndsNotProved.At(
                at, $"Whether nobody gets stuck is not proved: {stuck.Why}.", Hardness.Help(machine, stuck.Why));
        }
    }

    // Stages that wait for the same thing in the end are told together, at the first of them.
    private static IEnumerable<Finding> OutOfReach(Machine machine, WaitingReasons waiting, Solution solution) =>
        from s in Enumerable.Range(0, solution.Stages.Length)
        where solution.Stages[s].Reachable is Claim.Refuted
        let root = waiting.Root(s)
        group s by root is { } known ? (known.Variable, known.Accepts) : (-1 - s, 0UL) into same
        let stages = same.Select(s => machine.Book.Stages[s]).ToArray()
        select MechanismFindings.StageNeverReached(stages[0], waiting.OfStage(same.First()), stages[1..]);

    private static IEnumerable<Finding> Never(Machine machine, WaitingReasons waiting, Solution solution)
    {
        var reached = solution.Stages.Where(stage => stage.Reachable is not Claim.Refuted).Select(stage => stage.Id).ToHashSet();
        var never = solution.NeverPossible.Where(step => step.Stage is null || reached.Contains(step.Stage)).ToHashSet();
        // One finding covers all positions of a free part.
        var acts = machine.Acts.Where(act => never.Contains(act.Step))
            .DistinctBy(act => act.Step.Kind == StepKind.FreeMove ? act.Step.Leaves[0].Name : (object)act);
        foreach (var act in acts)
            yield return Never(PlaceOf(machine.Book, act.Step), Asker.Of(machine.Book, act));
        foreach (var rule in machine.Rules.Where(rule => !waiting.Holds(rule.When)))
            yield return Never(machine.Book.Box.Reactions[rule.Number].At, Asker.Of(machine.Book, rule));

        Finding Never(Span at, Asker asker) => MechanismFindings.NeverPossible(at, asker.Says, waiting.Of(asker));
    }

    private static IEnumerable<Finding> NeverOpen(Machine machine, WaitingReasons waiting)
    {
        foreach (var (variable, when) in machine.Behind.OrderBy(behind => behind.Key))
        {
            if (machine.Variables[variable].Named is { } named && when is not [{ Literals.IsEmpty: true }] && !waiting.Holds(when))
            {
                var cause = waiting.Of(new Asker($"“behind” of “{named.Id}”", when, [], named.Behind ?? []));
                yield return HandlingFindings.NeverOpen(named, cause, OpensByItself(machine.Book, named));
            }
        }
    }

    // A hand takes what the move itself lays open; what a reaction opens comes after it.
    private static bool OpensByItself(Book book, Named named)
    {
        var opened = (named.Behind ?? []).OfType<InPosition>()
            .SelectMany(one => one.Positions.Select(position => (one.Name.Value, position.Value))).ToHashSet();
        var moves = book.Stages.SelectMany(stage => stage.Moves).Concat(book.Box.Moves);
        return moves.Where(move => move.Changes.Any(change => change.Given && change.Name.Value == named.Id.Value))
            .Any(move => book.Box.Reactions.Any(reaction => reaction.Changes.Any(Opens) && reaction.When.OfType<InPosition>().Any(SetOffBy(move))));

        bool Opens(Change change) => opened.Contains((change.Name.Value, change.Position.Value));

        static Func<InPosition, bool> SetOffBy(Move move) => when => move.Changes.Any(change =>
            change.Name.Value == when.Name.Value && when.Positions.Any(position => position.Value == change.Position.Value));
    }

    // What was in the hand on every way to a stage and is never hidden again can be given there only out of a slot that it names.
    private static IEnumerable<Finding> GivesNothing(Machine machine, Solution solution)
    {
        var attained = solution.Stages.ToDictionary(stage => stage.Id, stage => stage.Attained);
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
        var numbers = book.Stages.Index().DistinctBy(each => each.Item.Id.Value).ToDictionary(each => each.Item.Id.Value, each => each.Index);
        var known = new Dictionary<ImmutableArray<Step>, OnTheWay>();
        // A stage that is only drafted changes nothing yet, so everything goes round it.
        foreach (var shortcut in solution.Shortcuts.Where(each => !Draft.IsOpen(book.Stages[numbers[each.Without]].Sign.Value)))
            yield return Shortcut(book, numbers, known, shortcut);

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
    public static string Say(ReadOnlySpan<Step> way) => way.Length <= 12
        ? string.Join("; ", way.ToArray().AsEnumerable())
        : $"{string.Join("; ", way[..5].ToArray().AsEnumerable())}; …; {string.Join("; ", way[^6..].ToArray().AsEnumerable())} ({way.Length} moves)";

    private static Finding Shortcut(Book book, Dictionary<string, int> numbers, Dictionary<ImmutableArray<Step>, OnTheWay> known, Shortcut shortcut)
    {
        var stage = book.Stages[numbers[shortcut.Without]];
        if (!known.TryGetValue(shortcut.Path, out var steps))
            known[shortcut.Path] = steps = OnTheWay.Of(book, numbers, shortcut.Path);
        var number = steps.Round(stage, numbers[shortcut.Without]);
        var round = shortcut.Path[number];
        // The move that goes round the stage stands at the end, where a long way isn't cut.
        var way = number + 1 < shortcut.Path.Length ? $"{Say(shortcut.Path.AsSpan()[..(number + 1)])}; and so on to the goal" : Say(shortcut.Path.AsSpan());
        return MechanismFindings.Shortcut.At(
            stage.Title.At,
            $"The box opens without “{stage.Title.Value}”: “{round.Says}” goes round it ({way}).",
            $"Let “{round.Says}” need what “{stage.Title.Value}” gives or opens, or mark the stage “optional: true” if it may be left out.",
            new Related(MoveOf(book, round, id => book.Stages[numbers[id]])?.Name.At ?? PlaceOf(book, round), "This move goes round it."));
    }

    private static Finding DeadEnd(Book book, ImmutableArray<Step> way)
    {
        var last = way[^1];
        var undone = MoveOf(book, last)?.Undo is not null;
        return (undone ? MechanismFindings.DeadEndWithUndo : MechanismFindings.DeadEnd).At(
            PlaceOf(book, last),
            $"After this the box can't be solved any more ({last.Says}): {Say(way.AsSpan())}.",
            undone
                ? "Let the move need what must come first."
                : "Let the move need what must come first, make it “reversible: true”, or say in “undo” how to put it back.");
    }

    private static Move? MoveOf(Book book, Step step) => MoveOf(book, step, id => book.Stages.First(stage => stage.Id.Value == id));

    internal static Move? MoveOf(Book book, Step step, Func<string, Stage> stageOf) =>
        step.Move < 0 ? null : step.Stage is null ? book.Box.Moves[step.Move] : stageOf(step.Stage).Moves[step.Move];

    /// <summary>Where a step of a way is written.</summary>
    public static Span PlaceOf(Book book, Step step) =>
        MoveOf(book, step)?.Name.At ?? book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Id.At;
}
