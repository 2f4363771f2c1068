using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>The answers from thrifty explorations: one for what can be reached, and one for each thing that may be certain.</summary>
internal sealed class ByReduction
{
    private const int Few = 2_000;
    private const int GoalFixed = -2;
    private readonly Machine machine;
    private readonly Budget budget;
    private readonly int most;
    private readonly Attainable things;
    private readonly RelaxedCertain relaxed;
    private readonly ImmutableArray<ImmutableArray<Clause>> targets;
    private readonly Dictionary<int, (Roaming Roaming, Independence Independence)> reduced = [];

    private ByReduction(Machine machine, Budget budget, int most)
    {
        (this.machine, this.budget, this.most) = (machine, budget, most);
        things = new Attainable(machine);
        relaxed = new RelaxedCertain(machine);
        targets = [.. machine.StageActs.Select(acts => acts.SelectMany(a => machine.Acts[a].When).ToImmutableArray()), machine.Goal];
    }

    /// <summary>The answers, or null where the reductions don't apply or leave too much.</summary>
    /// <param name="machine">What to explore.</param>
    /// <param name="budget">What it may use.</param>
    /// <param name="most">The most states to store for one question.</param>
    public static Outlook? Of(Machine machine, Budget budget, int most = Few) =>
        machine.Refused is not null || Packed.Clashes.Any(machine) ? null : new ByReduction(machine, budget, most).Find();

    private Outlook? Find()
    {
        var (roaming, independence) = On(-1);
        var all = Enumerable.Repeat(true, machine.Acts.Length).ToArray();
        var main = Run(new Question(), all, most);
        if (!main.Complete)
            return null;

        var ways = new List<int>?[targets.Length];
        for (var t = 0; t < machine.StageActs.Length; t++)
            ways[t] = WayToStage(main, roaming, t);
        var solved = main.Goal is null ? null : Shortened.Of(machine, roaming.Real(main.Goal.Acts(), machine.Goal), machine.Goal, thorough: true);
        ways[^1] = solved;
        var (before, exact) = Certain(ways);
        var atLeast = before[^1].Members().TakeWhile(n => n < machine.Acts.Length).Count();
        if (solved is not null && atLeast < solved.Count)
            atLeast = Needed(solved, before[^1], atLeast);
        return new Outlook
        {
            Explored = "reduced",
            Why = null,
            Way = solved,
            AtLeast = atLeast,
            Possible = main.Possible,
            WayToStage = ways[..^1],
            DeadEnds = solved is null ? [] : DeadEnds(main),
            DeadEndsShortest = false,
            WayWithout = WayWithout,
            Before = before[..^1],
            BeforeGoal = before[^1],
            Exact = exact,
            Precedence = exact ? Precedence(main, independence, ways, before) : null,
        };
    }

    private (Roaming Roaming, Independence Independence) On(int variable)
    {
        if (variable >= 0 && machine.Variables[variable].Named is not Part { Free: true })
            variable = -1;
        if (!reduced.TryGetValue(variable, out var found))
        {
            var roaming = new Roaming(machine, variable == GoalFixed ? Asked(machine.Goal) : new HashSet<int> { variable });
            reduced[variable] = found = (roaming, new Independence(roaming.Reduced));
        }

        return found;
    }

    private static HashSet<int> Asked(ImmutableArray<Clause> when) =>
        [.. when.SelectMany(clause => clause.Literals).Select(literal => literal.Variable)];

    private Thrifty Run(Question question, bool[] wanted, int most)
    {
        var moved = question.WithoutAct >= 0 && machine.Acts[question.WithoutAct].Step.Kind == StepKind.FreeMove
            ? machine.Acts[question.WithoutAct].Effects[0].Variable
            : question.CutAtGoal ? GoalFixed
            : question.Variable;
        var (roaming, independence) = On(moved);
        var thrifty = new Thrifty(roaming.Reduced, independence, question, wanted);
        thrifty.Run(budget, most);
        budget.Stored += thrifty.Stored;
        return thrifty;
    }

    private List<int>? WayToStage(Thrifty found, Roaming roaming, int stage)
    {
        foreach (var act in machine.StageActs[stage])
        {
            if (found.WayTo[act] is { } trail)
                return Shortened.Of(machine, roaming.Real(trail.Acts(), machine.Acts[act].When), machine.Acts[act].When, thorough: false);
        }

        return null;
    }

    private List<int>? WayWithout(int act)
    {
        var found = Run(new Question { WithoutAct = act, GoalOnly = true }, new bool[machine.Acts.Length], most);
        return found.Goal is null ? null : Shortened.Of(machine, On(-1).Roaming.Real(found.Goal.Acts(), machine.Goal), machine.Goal, thorough: true);
    }

    // What one way attains bounds what is certain from above, the relaxation from below; what lies between is asked for one by one.
    private (Bits[] Before, bool Exact) Certain(List<int>?[] ways)
    {
        var known = targets.Select(when => relaxed.Of(when) ?? new Bits(things.Count)).ToArray();
        var start = Attained([]);
        foreach (var one in known)
            one.Or(start);
        var open = ways.Select((way, t) => way is null ? new Bits(things.Count) : Attained(way)).ToArray();
        var wanted = machine.Acts.Select(act => act.Stage >= 0).ToArray();
        var exact = true;
        for (var number = 0; number < things.Count; number++)
        {
            var asking = Enumerable.Range(0, targets.Length).Where(t => open[t][number] && !known[t][number]).ToList();
            if (asking.Count == 0 || (number < machine.Acts.Length && machine.Acts[number].Stage < 0))
                continue;
            var question = QuestionOf(number);
            var found = Run(question, wanted, most);
            var roaming = On(question.Variable).Roaming;
            foreach (var t in asking)
            {
                var way = t < machine.StageActs.Length ? WayToStage(found, roaming, t)
                    : found.Goal is null ? null
                    : Shortened.Of(machine, roaming.Real(found.Goal.Acts(), machine.Goal), machine.Goal, thorough: false);
                if (way is not null)
                    open[t].And(Attained(way));
                if (way is null && found.Complete)
                    known[t][number] = true;
                else if (way is null)
                    exact = false;
                open[t][number] = false;
            }
        }

        return (known, exact);
    }

    private Question QuestionOf(int number)
    {
        if (number < machine.Acts.Length)
            return new Question { WithoutAct = number };
        var (variable, position) = things.PlaceOf(number);
        return new Question { Variable = variable, Position = position };
    }

    private Bits Attained(List<int> way)
    {
        var attained = new Bits(things.Count);
        var stepper = new Stepper(machine);
        var state = stepper.Start()!;
        Take(state);
        foreach (var act in way)
        {
            attained[act] = true;
            state = stepper.After(act, state)!;
            Take(state);
        }

        return attained;

        void Take(int[] at)
        {
            for (var v = 0; v < at.Length; v++)
            {
                if (machine.Variables[v].Named is not null)
                    attained[things.Of(v, at[v])] = true;
            }
        }
    }

    // Every act without which there is no way must be made at least once, whatever else is.
    private int Needed(List<int> way, Bits certain, int atLeast)
    {
        foreach (var act in way.Distinct().Where(act => !certain[act]))
        {
            var found = Run(new Question { WithoutAct = act, GoalOnly = true }, new bool[machine.Acts.Length], most);
            if (found.Complete && found.Goal is null)
                atLeast++;
        }

        return atLeast;
    }

    private List<List<int>>? DeadEnds(Thrifty main)
    {
        if (!main.DeadEnds().Any())
            return [];
        var cut = Run(new Question { CutAtGoal = true }, new bool[machine.Acts.Length], most);
        if (!cut.Complete)
            return null;
        var roaming = On(GoalFixed).Roaming;
        var closed = new Dictionary<int, List<int>>();
        foreach (var trail in cut.DeadEnds().Take(Everything.MostDeadEnds * 3))
        {
            var way = UpToTheDoor(roaming.Real(trail.Acts(), Clauses.Always));
            if (way.Count > 0 && closed.Count < Everything.MostDeadEnds)
                closed.TryAdd(way[^1], way);
        }

        return [.. closed.Values.OrderBy(way => way.Count)];
    }

    private List<int> UpToTheDoor(List<int> way)
    {
        var stepper = new Stepper(machine);
        var states = new List<int[]> { stepper.Start()! };
        foreach (var act in way)
            states.Add(stepper.After(act, states[^1])!);
        var (live, dead) = (0, way.Count);
        while (dead - live > 1)
        {
            var middle = (live + dead) / 2;
            if (Of(machine with { Start = [.. states[middle]], StageActs = [] }))
                live = middle;
            else
                dead = middle;
        }

        return way[..dead];

        bool Of(Machine from)
        {
            var roaming = new Roaming(from, new HashSet<int>());
            var thrifty = new Thrifty(roaming.Reduced, new Independence(roaming.Reduced), new Question { GoalOnly = true }, new bool[machine.Acts.Length]);
            thrifty.Run(budget, most);
            return thrifty.Goal is not null;
        }
    }

    // Where nothing gets in anything's way, a stage is open exactly when the stages certain before it are done, if one way to it made no others.
    private ImmutableArray<Bits>? Precedence(Thrifty main, Independence independence, List<int>?[] ways, Bits[] before)
    {
        var possible = Enumerable.Range(0, independence.Conflicts.Length)
            .Where(e => e >= machine.Acts.Length || main.Possible[e]).ToHashSet();
        if (possible.Any(e => independence.Conflicts[e].Any(possible.Contains)) || machine.StageActs.Any(acts => acts.Length != 1))
            return null;
        var order = ImmutableArray.CreateBuilder<Bits>();
        for (var t = 0; t < ways.Length; t++)
        {
            var way = ways[t] ?? [];
            if (way.Exists(act => machine.Acts[act].Stage >= 0 && !before[t][act]))
                way = Shortened.Of(machine, way, targets[t], thorough: true);
            var stages = new Bits(machine.StageActs.Length);
            foreach (var act in way.Where(act => machine.Acts[act].Stage >= 0))
            {
                if (!before[t][act])
                    return null;
                stages[machine.Acts[act].Stage] = true;
            }

            order.Add(stages);
        }

        return order.ToImmutable();
    }
}
