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
    private const int MostStatesBesides = 50_000;
    private const int MostStatesForAll = 500_000;
    private const int MostPlacesForAll = 20_000_000;
    private const int MostToReach = 20_000_000;
    private const int MostPlacesBesides = 1_000_000;
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
        var (plan, bound, why) = Shortest(back, solved, greedy);
        plan = plan is null ? null : ReverseOrder.Arrange(back, plan, solved, opened);
        ImmutableArray<Step> steps = plan is null ? [] : [.. plan.Select(act => back.Acts[act].Step)];
        if (plan is not null)
            Check(opened, steps);
        var possible = plan is not null ? Everywhere(back, greedy, steps)
            : why is not null ? new Claim.NotProved(why)
            : new Claim.Refuted(opened, Stuck(back, solved));
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
        return result with { Findings = Findings.Of(Tell(result)).All };
    }

    private (List<int>? Plan, int Bound, string? Why) Shortest(Machine back, int[] solved, GreedyReset greedy)
    {
        var bound = greedy.Bound(solved);
        var planned = budget.Limits.Reduce && !ReactionConflicts.Any(back) ? greedy.Plan(solved) : null;
        if (planned?.Count == bound)
            return (planned, bound, null);
        if (BreadthFirst.Explore(AsFarAsRead(back, solved), budget, MostToReach, untilSolved: true, Environment.ProcessorCount) is { } reach)
        {
            if (reach.GoalDepth >= 0)
                return (reach.WayToGoal(), reach.GoalDepth, null);
            if (reach.Stopped is null)
                return (null, 0, null);
            budget.Forgive();
            return (planned, Math.Max(bound, reach.Layers), planned is null ? reach.Stopped : null);
        }

        var graph = Exploration.Whole(back, budget, [solved], planned is null ? int.MaxValue : Math.Min(MostStatesBesides, MostPlacesBesides / back.Variables.Length));
        for (var state = 0; state < graph.Count; state++)
        {
            if (graph.Solved[state])
                return (graph.WayTo(state), graph.Depth(state), null);
        }

        if (graph.Stopped is null)
            return (null, 0, null);
        budget.Forgive();
        return (planned, Math.Max(bound, graph.Layers.Count - 2), planned is null ? graph.Stopped : null);
    }

    // The plan of one solved box says nothing of the others: either one plan does for any, or each of them is looked at.
    private Claim Everywhere(Machine back, GreedyReset greedy, ImmutableArray<Step> plan)
    {
        var greedily = budget.Limits.Reduce && !ReactionConflicts.Any(back);
        if (greedily && greedy.PutsBackAnything(Attainable(back), Movable()))
            return new Claim.Proved(plan);
        var forward = explored.Graph ?? Exploration.Whole(machine, budget);
        if (forward.Stopped is not null)
            return new Claim.NotProved($"it can be from where everything has been done; from every other solved state it isn't known: {forward.Stopped}");
        var ends = Ends(forward, back);
        var graph = Exploration.Whole(back, budget, ends.ConvertAll(end => end.State.State), Math.Min(MostStatesForAll, MostPlacesForAll / back.Variables.Length));
        if (graph.Stopped is not null && greedily)
        {
            budget.Forgive();
            var good = new HashSet<Positions>();
            ends = ends.FindAll(end => !greedy.LeadsBack(end.State.State, good));
        }

        if (ends.Count == 0)
            return new Claim.Proved(plan);
        if (graph.Stopped is not null)
        {
            budget.Forgive();
            graph = Exploration.Whole(back, budget, ends.ConvertAll(end => end.State.State));
        }

        if (graph.Stopped is not null)
            return new Claim.NotProved(graph.Stopped);
        var live = WholeGraph.Live(graph);
        for (var i = 0; i < ends.Count; i++)
        {
            if (!live[i])
                return new Claim.Refuted([.. forward.WayTo(ends[i].Number).Select(act => machine.Acts[act].Step)], Stuck(back, ends[i].State.State));
        }

        return new Claim.Proved(plan);
    }

    // Solved states that differ only in what putting back never looks at are one.
    private List<(int Number, Positions State)> Ends(StateGraph forward, Machine back)
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
            if (seen.Add(new Positions(state)))
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
            Variables = [.. back.Variables.Select((variable, v) => read.Contains(v) ? variable : variable with { Positions = [variable.Positions[0]], Gone = -1 })],
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
               let v = act.Effects[0].Variable
               where !others.Contains(v) && !watched.Contains(v)
               where act.When.All(clause => clause.Literals.All(literal => (written[literal.Variable] & ~literal.Accepts) == 0))
               select v,
        ];
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

    private static string Stuck(Machine back, int[] solved)
    {
        var waiting = new WaitingReasons(back with { Start = [.. solved] });
        return waiting.Explain(back.Goal);
    }

    private void Check(ImmutableArray<Step> opened, ImmutableArray<Step> plan)
    {
        var replayer = new Replayer(book);
        var why = replayer.Follow(opened) ?? (replayer.Solved ? null : "the box isn't solved") ?? replayer.Follow(plan) ?? (replayer.Shipped ? null : "the box isn't as shipped");
        if (why is not null)
            throw new InvalidOperationException($"a reset plan does not replay: {why}");
    }

    private IEnumerable<Finding> Tell(ResetPlan plan)
    {
        switch (plan.Possible)
        {
            case Claim.Refuted when !SaysHow():
                yield return MechanismFindings.Of(MechanismFindings.NoReset, book.File.Top,
                    "Nothing says how the box is put back: no stage has an `undo` and no move is `reversible`.",
                    "Write in each stage `undo: { put-back: [ … ], does: { … }, note: … }`, as far as something has to be put back.");
                break;
            case Claim.Refuted refuted:
                yield return MechanismFindings.Of(MechanismFindings.NoReset, book.File.Top,
                    $"The box can't be put back after {SolutionFindings.Say(refuted.Witness)}. {refuted.Why}",
                    "Make the moves `reversible: true`, or say in `undo` what puts them back.");
                break;
            case Claim.NotProved open:
                yield return MechanismFindings.Of(MechanismFindings.ResetNotProved, book.File.Top, $"Whether every solved box can be put back is not proved: {open.Why}.");
                break;
        }

        foreach (var name in plan.Replaces)
            yield return MechanismFindings.Of(MechanismFindings.MustReplace, book.Box.Things.First(t => t.Id.Value == name).Id.At, $"`{name}` is used up and must be replaced at every reset.");
    }

    private ResetPlan Nothing(string why) => new()
    {
        Possible = new Claim.NotProved(why),
        From = [],
        Plan = [],
        Replaces = [],
        Bound = 0,
        States = budget.Stored,
        Findings = [MechanismFindings.Of(MechanismFindings.ResetNotProved, book.File.Top, $"Whether the box can be put back is not proved: {why}.")],
    };
}
