using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Mechanism.Reduced;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>Finds the way back to the shipped box.</summary>
internal sealed class ResetPlanner
{
    private const int MostStatesBesides = 10_000;
    private const int ManyEnds = 1_000;
    private const int MostToReach = 20_000_000;
    private const int MostPlacesBesides = 300_000;
    private readonly Explored explored;
    private readonly Book book;
    private readonly Budget budget;
    private readonly Machine machine;
    private readonly Stepper stepper;

    /// <summary>Prepares it.</summary>
    public ResetPlanner(Explored explored)
    {
        (this.explored, book, budget, machine) = (explored, explored.Book, explored.Continued(), explored.Machine);
        stepper = new Stepper(machine);
    }

    /// <summary>The plan.</summary>
    public ResetPlan Plan()
    {
        if (machine.Refused is not null || stepper.Start() is not { } shipped)
            return Nothing(machine.Refused ?? "its reactions never settle");
        if (explored.Result.Way is not { } opening)
            return Nothing(explored.Result.Why ?? "the box can't be opened");
        var from = Exhausted(opening, shipped);
        var back = ResetMachine.Build(book, machine, shipped);
        if (back.Refused is { } refused)
            return Nothing(refused);
        var solved = ResetMachine.StateOf(back, from.Aggregate(shipped, (state, act) => stepper.After(act, state)!));
        ImmutableArray<Step> opened = [.. from.Select(act => machine.Acts[act].Step)];
        var greedy = new GreedyReset(back, opened);
        // What isn't attained even if nothing stopped being so needs no search.
        var waiting = new WaitingReasons(back with { Start = [.. solved] });
        var (plan, bound, why) = waiting.Holds(back.Goal) ? Shortest(back, solved, greedy) : (null, 0, null);
        plan = plan is null ? null : ReverseOrder.Arrange(back, plan, solved, opened);
        ImmutableArray<Step> steps = plan is null ? [] : [.. plan.Select(act => back.Acts[act].Step)];
        if (plan is not null)
            Check(opened, steps);
        var possible = plan is not null ? Everywhere(back, greedy, steps, solved, plan)
            : why is not null ? new Claim.NotProved(why)
            : new Claim.Refuted(opened, waiting.OfGoal().Why);
        var result = new ResetPlan
        {
            Possible = possible,
            From = opened,
            Plan = steps,
            Replaces = [.. steps.Where(step => step.Kind == StepKind.Replace).Select(step => step.Leaves[0].Name)],
            Bound = bound,
            States = budget.Stored,
            Findings = [],
        };
        return result with { Findings = Findings.Of(Tell(result, back)).All };
    }

    private (List<int>? Plan, int Bound, string? Why) Shortest(Machine back, int[] solved, GreedyReset greedy)
    {
        var bound = greedy.Bound(solved);
        var planned = budget.Limits.Reduce && !ReactionConflicts.Any(back) ? greedy.Plan(solved) : null;
        if (planned?.Count == bound)
            return (planned, bound, null);
        if (UpToExchange(back, solved) is { } fewer && (fewer.Stopped is null || fewer.Solved.HasAnySet()))
            return Nearest(fewer) is { } end ? (fewer.WayTo(end), fewer.Depth(end), null) : (null, 0, null);
        if (BreadthFirst.Explore(AsFarAsRead(back, solved), budget, MostToReach, untilSolved: true, Environment.ProcessorCount) is { } reach)
        {
            if (reach.GoalDepth >= 0)
                return (reach.WayToGoal(), reach.GoalDepth, null);
            if (reach.Stopped is null)
                return (null, 0, null);
            budget.Forgive();
            return (planned, Math.Max(bound, reach.Layers), planned is null ? reach.Stopped : null);
        }

        var graph = Exploration.Whole(back, budget, [solved], planned is null ? int.MaxValue : FewBesides(back));
        if (Nearest(graph) is { } nearest)
            return (graph.WayTo(nearest), graph.Depth(nearest), null);
        if (graph.Stopped is null)
            return (null, 0, null);
        budget.Forgive();
        return (planned, Math.Max(bound, graph.Layers.Count - 2), planned is null ? graph.Stopped : null);
    }

    // Wherever putting back starts from, alike things that stand differently are exchanged together with where they stand.
    private Symmetry? Alike(Machine back) => budget.Limits.Reduce ? Symmetry.Of(back with { Start = [.. new int[back.Variables.Length]] }) : null;

    private StateGraph? UpToExchange(Machine back, int[] solved)
    {
        var trimmed = AsFarAsRead(back, solved);
        return Alike(trimmed) is { } alike && Exploration.Whole(trimmed, budget, most: FewBesides(back), alike: alike) is { Unrest: null } graph ? graph : null;
    }

    private static int FewBesides(Machine back) => Math.Min(MostStatesBesides, MostPlacesBesides / back.Variables.Length);

    private static int? Nearest(StateGraph graph)
    {
        for (var state = 0; state < graph.Count; state++)
        {
            if (graph.Solved[state])
                return state;
        }

        return null;
    }

    // The plan of one solved box says nothing of the others: either one plan does for any, or each of them is looked at.
    private Claim Everywhere(Machine back, GreedyReset greedy, ImmutableArray<Step> plan, int[] solved, List<int> acts)
    {
        var greedily = budget.Limits.Reduce && !ReactionConflicts.Any(back);
        var attainable = Attainable(back);
        if (greedily && (greedy.PutsBackAnything(attainable, Movable()) || new TakenBack(machine, back, attainable).All()))
            return new Claim.Proved(plan);
        var alike = Alike(back);
        var forward = Forward(alike);
        if (forward.Stopped is not null)
            return new Claim.NotProved($"it can be from where everything has been done; from every other solved state it isn't known: {forward.Stopped}");
        var ends = Ends(forward, back, alike);
        if (greedily)
        {
            ends = WithoutWayToGood(back, ends, solved, acts);
            var good = new HashSet<Positions>();
            if (ends.Count > ManyEnds)
                ends = ends.FindAll(end => !greedy.LeadsBack(end.State.State, good));
        }

        if (ends.Count == 0)
            return new Claim.Proved(plan);
        var graph = Exploration.Whole(back, budget, ends.ConvertAll(end => end.State.State), alike: alike);
        if (graph.Stopped is not null)
            return new Claim.NotProved(graph.Stopped);
        var live = WholeGraph.Live(graph);
        for (var i = 0; i < ends.Count; i++)
        {
            if (!live[i])
                return Stuck(back, forward.WayTo(ends[i].Number));
        }

        return new Claim.Proved(plan);
    }

    // Where states stand for all that differ from them by exchanges, putting back must not tell apart what opening doesn't.
    private StateGraph Forward(Symmetry? alike)
    {
        if (explored.Graph is { Alike: null } whole)
            return whole;
        var opening = alike is null ? null : explored.Graph?.Alike ?? Symmetry.Of(machine);
        return opening?.Classes.All(members => members.All(member => alike!.Leader(member) == alike.Leader(members[0]))) != true
            ? Exploration.Whole(machine, budget)
            : explored.Graph ?? ExplorationStrategy.UpToExchange(machine, budget, int.MaxValue, opening);
    }

    // Solved states are mostly a few steps from each other: whichever leads to one that is known to lead back leads back itself.
    private List<(int Number, Positions State)> WithoutWayToGood(Machine back, List<(int Number, Positions State)> ends, int[] solved, List<int> plan)
    {
        var trimmed = AsFarAsRead(back, solved);
        var moves = new Stepper(trimmed);
        int[] state = [.. trimmed.Start];
        var good = new HashSet<Positions> { new(state) };
        foreach (var act in plan)
        {
            if (moves.After(act, state) is not { } next)
                return ends;
            good.Add(new Positions(state = next));
        }

        foreach (var most in new[] { 100, 1_000, 10_000 })
        {
            ends = ends.FindAll(end => !LeadsTo(good, trimmed, moves, end.State, most));
            if (ends.Count is 0 or > ManyEnds || budget.Spent(0, ends.Count, 0))
                break;
        }

        return ends;
    }

    private static bool LeadsTo(HashSet<Positions> good, Machine back, Stepper moves, Positions from, int most)
    {
        var cameFrom = new Dictionary<Positions, Positions?> { [from] = null };
        var open = new Queue<Positions>([from]);
        while (open.TryDequeue(out var at))
        {
            if (good.Contains(at) || Stepper.Holds(back.Goal, at.State))
            {
                for (Positions? on = at; on is { } here; on = cameFrom[here])
                    good.Add(here);
                return true;
            }

            if (cameFrom.Count > most)
                continue;
            for (var act = 0; act < back.Acts.Length; act++)
            {
                if (Stepper.Holds(back.Acts[act].When, at.State) && moves.After(act, at.State) is { } next && cameFrom.TryAdd(new Positions(next), at))
                    open.Enqueue(new Positions(next));
            }
        }

        return false;
    }

    // Solved states that differ only in what putting back never looks at are one, and so are those that differ by exchanges of things alike to it.
    private List<(int Number, Positions State)> Ends(StateGraph forward, Machine back, Symmetry? alike)
    {
        var read = Read(back);
        var seen = new HashSet<Positions>();
        var ends = new List<(int, Positions)>();
        for (var number = 0; number < forward.Count; number++)
        {
            if (!forward.Solved[number])
                continue;
            var state = new int[back.Variables.Length];
            foreach (var v in read.Where(v => v < machine.Variables.Length))
                state[v] = forward.Position(number, v);
            if (seen.Add(new Positions(alike?.Representative(state) ?? state)))
                ends.Add((number, new Positions(state)));
        }

        return ends;
    }

    private ulong[] Attainable(Machine back) =>
        [.. new WaitingReasons(machine).Attainable, .. Enumerable.Repeat(1UL, back.Variables.Length - machine.Variables.Length)];

    private static HashSet<int> Read(Machine back) =>
    [
        .. back.Acts.SelectMany(act => act.When).Concat(back.Rules.SelectMany(rule => rule.When)).Concat(back.Goal)
            .SelectMany(clause => clause.Literals).Select(literal => literal.Variable),
    ];

    // What is never looked at keeps no position, so that it takes no room in a state.
    private static Machine AsFarAsRead(Machine back, int[] solved)
    {
        var read = Read(back);
        return back with
        {
            Variables =
            [
                .. back.Variables.Select((variable, v) =>
                    read.Contains(v) ? variable : variable with { Positions = [variable.Positions[0]], Gone = -1 }),
            ],
            Start = [.. solved.Select((position, v) => read.Contains(v) ? position : 0)],
            Acts = [.. back.Acts.Select(act => act with { Effects = [.. act.Effects.Where(effect => read.Contains(effect.Variable))] })],
            Rules = [.. back.Rules.Select(rule => rule with { Effects = [.. rule.Effects.Where(effect => read.Contains(effect.Variable))] })],
        };
    }

    // A free part that isn't as shipped has been moved, and what let it move then lets it move still.
    private HashSet<int> Movable()
    {
        var written = new ulong[machine.Variables.Length];
        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            written[effect.Variable] |= 1UL << effect.Position;
        var others = machine.Acts.Where(act => act.Step.Kind != StepKind.FreeMove).SelectMany(act => act.Effects)
            .Concat(machine.Rules.SelectMany(rule => rule.Effects)).Select(effect => effect.Variable).ToHashSet();
        var watched = machine.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).ToHashSet();
        return
        [
            .. from act in machine.Acts
               where act.Step.Kind == StepKind.FreeMove
               group act by act.Effects[0].Variable into acts
               where !others.Contains(acts.Key) && !watched.Contains(acts.Key)
               where acts.All(act => !act.When.IsEmpty && act.When.All(Lasts))
               select acts.Key,
        ];

        bool Lasts(Clause clause) => clause.Literals.All(literal => (written[literal.Variable] & ~literal.Accepts) == 0);
    }

    // After the shortest opening, whatever stages are still possible, in the author's order, as long as the box stays solved.
    private List<int> Exhausted(List<int> opening, int[] shipped)
    {
        var way = new List<int>(opening);
        var made = way.ToHashSet();
        var state = way.Aggregate(shipped, (at, act) => stepper.After(act, at)!);
        for (var more = true; more;)
        {
            more = false;
            foreach (var act in machine.StageActs.SelectMany(acts => acts).Where(act => !made.Contains(act)))
            {
                if (!Stepper.Holds(machine.Acts[act].When, state) || stepper.After(act, state) is not { } next || !Stepper.Holds(machine.Goal, next))
                    continue;
                made.Add(act);
                way.Add(act);
                state = next;
                more = true;
            }
        }

        return way;
    }

    private bool SaysHow() =>
        book.Stages.SelectMany(stage => stage.Moves).Concat(book.Box.Moves).Any(move => move.Reversible || move.Undo is not null);

    private Claim.Refuted Stuck(Machine back, List<int> way)
    {
        var solved = ResetMachine.StateOf(back, way.Aggregate(stepper.Start() ?? [.. machine.Start], (state, act) => stepper.After(act, state)!));
        var waiting = new WaitingReasons(back with { Start = [.. solved] });
        return new Claim.Refuted([.. way.Select(act => machine.Acts[act].Step)], waiting.OfGoal().Why);
    }

    private void Check(ImmutableArray<Step> opened, ImmutableArray<Step> plan)
    {
        var replayer = new Replayer(book);
        var why = replayer.Follow(opened)
            ?? (replayer.Solved ? null : "the box isn't solved")
            ?? replayer.Follow(plan)
            ?? (replayer.Shipped ? null : "the box isn't as shipped");
        if (why is not null)
            throw new InvalidOperationException($"a reset plan does not replay: {why}");
    }

    // The move that moved what can't be put back any more, the last of them.
    private Span ClosedBy(ImmutableArray<Step> way, Machine back)
    {
        var numbers = machine.Acts.Index().DistinctBy(act => act.Item.Step, ReferenceEqualityComparer.Instance)
            .ToDictionary(act => (object)act.Item.Step, act => act.Index, ReferenceEqualityComparer.Instance);
        var states = new List<int[]>();
        if (stepper.Start() is not { } state || way.Any(step => !numbers.ContainsKey(step)))
            return Goal;
        foreach (var step in way)
        {
            states.Add(state);
            if (stepper.After(numbers[step], state) is not { } next)
                return Goal;
            state = next;
        }

        states.Add(state);
        var end = ResetMachine.StateOf(back, state);
        var waiting = new WaitingReasons(back with { Start = [.. end] });
        var wrong = back.Goal.SelectMany(clause => clause.Literals)
            .Where(literal => !literal.Takes(end[literal.Variable]) && literal.Variable < state.Length)
            .ToList();
        var stuck = wrong.Where(literal => (waiting.Attainable[literal.Variable] & literal.Accepts) == 0)
            .Concat(wrong)
            .Select(literal => literal.Variable)
            .FirstOrDefault(-1);
        for (var i = way.Length - 1; stuck >= 0 && i >= 0; i--)
        {
            if (states[i][stuck] != states[i + 1][stuck])
                return SolutionFindings.PlaceOf(book, way[i]);
        }

        return Goal;
    }

    // What has no place of its own is told at the goal: from there the box is put back.
    private Span Goal => book.Goal is [var first, ..] ? first.At with { End = book.Goal[^1].At.End } : book.File.Top;

    private IEnumerable<Finding> Tell(ResetPlan plan, Machine back)
    {
        switch (plan.Possible)
        {
            case Claim.Refuted when !SaysHow():
                yield return MechanismFindings.NoReset.At(ClosedBy(plan.From, back),
                    "Nothing says how the box is put back: no stage has an “undo” and no move is “reversible”.",
                    "Write in each stage “undo: { put-back: [ … ], does: { … }, says: … }”, as far as something has to be put back.");
                break;
            case Claim.Refuted refuted:
                yield return MechanismFindings.NoReset.At(ClosedBy(refuted.Witness, back),
                    $"The box can't be put back any more. {refuted.Why} "
                        + $"So it is after {SolutionFindings.Say(refuted.Witness.AsSpan())}.",
                    "Make the move “reversible: true”, or say in “undo” what puts back what it moved; what isn't meant to go back says “undo: { never: … }”.");
                break;
            case Claim.NotProved open:
                yield return MechanismFindings.ResetNotProved.At(
                    Goal,
                    $"Whether every solved box can be put back is not proved: {open.Why}.",
                    Hardness.Help(machine, open.Why));
                break;
        }

        foreach (var name in plan.Replaces)
        {
            yield return MechanismFindings.MustReplace.At(
                book.Box.Things.First(t => t.Id.Value == name).Id.At,
                $"“{name}” is used up and must be replaced at every reset.",
                "Send spares along with the box; if the same one can be made ready again, say so in the “undo” of the stage that uses it up.");
        }
    }

    private ResetPlan Nothing(string why) => new()
    {
        Possible = new Claim.NotProved(why),
        From = [],
        Plan = [],
        Replaces = [],
        Bound = 0,
        States = budget.Stored,
        Findings = [MechanismFindings.ResetNotProved.At(Goal, $"Whether the box can be put back is not proved: {why}.", Hardness.Help(machine, why))],
    };
}
