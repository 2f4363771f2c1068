using System.Collections.Immutable;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>The answers from reduced explorations: one for what can be reached, and one for each thing that may be certain.</summary>
internal sealed class ByReduction
{
    private const int Few = 2_000;
    private readonly Machine machine;
    private readonly Budget budget;
    private readonly int most;
    private readonly Attainable things;
    private readonly RelaxedLandmarks certain;
    private readonly DeleteRelaxation? gained;
    private readonly ImmutableArray<ImmutableArray<Clause>> targets;
    private readonly Moves moves;
    private readonly FreeParts free;
    private readonly Dictionary<string, (FreeParts Free, Lazy<Independence> Independence)> reductions = [];

    private ByReduction(Machine machine, Budget budget, int most, bool monotone)
    {
        (this.machine, this.budget, this.most) = (machine, budget, most);
        things = new Attainable(machine);
        moves = new Moves(machine);
        free = new FreeParts(machine, moves, FreeParts.NoActs, FreeParts.NoActs);
        var relaxed = new DeleteRelaxation(free.Reduced);
        gained = monotone && Monotone.Only(free.Reduced, relaxed) ? relaxed : null;
        certain = new RelaxedLandmarks(machine, gained is not null);
        targets = [.. machine.StageActs.Select(acts => acts.SelectMany(a => machine.Acts[a].When).ToImmutableArray()), machine.Goal];
    }

    /// <summary>The answers, or null where the reductions don't apply or leave too much.</summary>
    /// <param name="machine">What to explore.</param>
    /// <param name="budget">What it may use.</param>
    /// <param name="most">The most states to store for one question.</param>
    /// <param name="monotone">Whether nothing need be explored where the box only gains.</param>
    public static ExplorationResult? Explore(Machine machine, Budget budget, int most = Few, bool monotone = true) =>
        machine.Refused is not null || Packed.ReactionConflicts.Any(machine) ? null : new ByReduction(machine, budget, most, monotone).Find();

    private ExplorationResult? Find()
    {
        var main = gained is null ? Run(new Question(), [.. Enumerable.Repeat(true, machine.Acts.Length)], most) : null;
        if (main is { Complete: false })
            return null;

        // Where nothing is explored there is still the state that the box is shipped in.
        budget.Add(gained is null ? 0 : 1);

        var ways = new Lazy<List<int>>?[targets.Length];
        for (var t = 0; t < machine.StageActs.Length; t++)
            ways[t] = gained is null ? WayToStage(main!, free, t) : Gained(machine.StageActs[t]);
        var solved = gained is null ? main!.Goal?.Acts() : gained.Happens(gained.Goal) ? gained.PlanOf(gained.Goal) : null;
        if (solved is not null)
        {
            solved = gained is null ? free.Real(solved, machine.Goal) : free.Gathered(solved, machine.Goal);
            if (gained is null || certain.Before(machine.Goal) is not { } needed || !solved.TrueForAll(act => needed[act]))
                solved = PlanShortening.Shorten(machine, solved, machine.Goal, thorough: true);
            var way = solved;
            ways[^1] = new Lazy<List<int>>(() => way);
        }

        var (before, exact) = Certain(ways);
        var atLeast = solved is null ? 0 : AtLeast(solved, before[^1]);
        if (atLeast < solved?.Count && new DirectWay(machine, moves).Find(atLeast, budget) is { } shortest)
            solved = shortest;
        return new ExplorationResult
        {
            Explored = "reduced",
            Why = null,
            Way = solved,
            AtLeast = atLeast,
            Possible = main?.Possible ?? [.. Enumerable.Range(0, machine.Acts.Length).Select(gained!.Happens)],
            WayToStage = ways[..^1],
            Tour = gained is null ? null : new Lazy<List<int>>(() => free.Real(gained.Acts, Clauses.Always)),
            DeadEnds = solved is null || gained is not null ? [] : DeadEnds(main!),
            DeadEndsShortest = false,
            WayWithout = act => WayWithout(act, solved),
            Before = before[..^1],
            BeforeGoal = before[^1],
            Exact = exact,
            Precedence = exact && (gained is not null || !Conflicts(main!)) ? new Lazy<ImmutableArray<Bits>?>(() => Precedence(ways, before)) : null,
        };
    }

    // What a question asks about is remembered, and what it leaves out makes nothing free.
    private (FreeParts Free, Lazy<Independence> Independence) For(Question question)
    {
        var (remembered, without) = (RememberedIn(question), LeftOutIn(question));
        var key = $"{string.Join(' ', remembered.Order())}/{string.Join(' ', without.Where(Frees).Order())}";
        if (!reductions.TryGetValue(key, out var found))
        {
            var parts = new FreeParts(machine, moves, remembered, without);
            reductions[key] = found = (parts, new Lazy<Independence>(() => new Independence(parts.Reduced)));
        }

        return found;
    }

    // What is asked about, and whatever decides whether reactions give it; where ways end at the goal, all that the goal speaks of.
    private HashSet<int> RememberedIn(Question question)
    {
        IEnumerable<int> asked = question.CutAtGoal ? Asked(machine.Goal) : question.Variable >= 0 ? [question.Variable] : [];
        var remembered = machine.WithCauses(asked);
        remembered.RemoveWhere(v => moves.Of(v).Count == 0);
        return remembered;
    }

    // Acts that are never made: the one that is left out, or all that give the position that is left out.
    private IReadOnlySet<int> LeftOutIn(Question question) =>
        question.WithoutAct >= 0 ? new HashSet<int> { question.WithoutAct }
        : question.Variable >= 0 ? GiversOf(question.Variable, question.Position)
        : FreeParts.NoActs;

    private bool Frees(int act) => machine.Acts[act].Effects.Any(effect => free.Contains(effect.Variable));

    private HashSet<int> GiversOf(int variable, int position) =>
        [.. moves.Of(variable).Where(edge => edge.To == position).Select(edge => edge.Act)];

    private Lazy<List<int>>? Gained(ImmutableArray<int> acts)
    {
        var open = acts.Where(gained!.Happens).ToList();
        if (open.Count == 0)
            return null;
        var first = open.MinBy(gained.RankOf);
        return new Lazy<List<int>>(() => free.Gathered(gained.PlanOf(first), machine.Acts[first].When));
    }

    private static HashSet<int> Asked(ImmutableArray<Clause> when) =>
        [.. when.SelectMany(clause => clause.Literals).Select(literal => literal.Variable)];

    private PartialOrder Run(Question question, bool[] wanted, int most)
    {
        var (parts, independence) = For(question);
        var exploration = new PartialOrder(parts.Reduced, independence.Value, question, wanted);
        exploration.Run(budget, most);
        budget.Add(exploration.Stored, PartialOrder.EachCounts);
        return exploration;
    }

    private Lazy<List<int>>? WayToStage(PartialOrder found, FreeParts freeParts, int stage)
    {
        foreach (var act in machine.StageActs[stage])
        {
            if (found.WayTo[act] is { } trail)
            {
                var when = machine.Acts[act].When;
                return new Lazy<List<int>>(() => PlanShortening.Shorten(machine, freeParts.Real(trail.Acts(), when), when, thorough: false));
            }
        }

        return null;
    }

    private List<int>? WayWithout(int act, List<int>? known)
    {
        if (known is not null && !known.Contains(act))
            return known;
        var question = new Question { WithoutAct = act, GoalOnly = true };
        var parts = For(question).Free;
        List<int>? way;
        if (gained is not null && parts.Count == free.Count)
        {
            var without = new DeleteRelaxation(free.Reduced, act);
            way = without.Happens(without.Goal) ? without.PlanOf(without.Goal) : null;
        }
        else
        {
            way = Run(question, new bool[machine.Acts.Length], most).Goal?.Acts();
        }

        return way is null ? null : PlanShortening.Shorten(machine, parts.Real(way, machine.Goal), machine.Goal, thorough: true);
    }

    // What one way attains bounds what is certain from above, the relaxation from below; what lies between is asked for one by one.
    private (Bits[] Before, bool Exact) Certain(Lazy<List<int>>?[] ways)
    {
        var start = Attained([], null);
        var known = targets.Select(when => certain.Before(when) ?? new Bits(things.Count)).ToArray();
        foreach (var one in known)
            one.Or(start);
        var open = new Bits(things.Count);
        for (var number = 0; number < things.Count; number++)
            open[number] = IsOpen(number);
        if (open.Count() == 0)
            return (known, true);
        var asked = open.Members().Where(number => number >= machine.Acts.Length).ToArray();
        var attained = ways.Select(way => way is null ? new Bits(things.Count) : Attained(way.Value, asked)).ToArray();
        var wanted = machine.Acts.Select(act => act.Stage >= 0).ToArray();
        var exact = true;
        foreach (var number in open.Members())
        {
            var asking = Enumerable.Range(0, targets.Length).Where(t => attained[t][number] && !known[t][number]).ToList();
            if (asking.Count == 0)
                continue;
            var question = QuestionOf(number);
            var found = Run(question, wanted, most);
            var parts = For(question).Free;
            foreach (var t in asking)
            {
                var way = t < machine.StageActs.Length ? WayToStage(found, parts, t)?.Value
                    : found.Goal is null ? null
                    : PlanShortening.Shorten(machine, parts.Real(found.Goal.Acts(), machine.Goal), machine.Goal, thorough: false);
                if (way is not null)
                    attained[t].And(Attained(way, asked));
                if (way is null && found.Complete)
                    known[t][number] = true;
                else if (way is null)
                    exact = false;
                attained[t][number] = false;
            }
        }

        return (known, exact);
    }

    // Whether the relaxation may not know all that is to be known of something.
    private bool IsOpen(int number)
    {
        if (number < machine.Acts.Length)
            return machine.Acts[number].Stage >= 0 && (gained is null || !free.AreFreeWithout(new HashSet<int> { number }));
        var (variable, position) = things.PlaceOf(number);
        return gained is null
            || !certain.IsExact(variable, position)
            || !free.AreFreeWithout(GiversOf(variable, position))
            || (free.Contains(variable) && !free.AreFreeWithout(variable, position));
    }

    private Question QuestionOf(int number)
    {
        if (number < machine.Acts.Length)
            return new Question { WithoutAct = number };
        var (variable, position) = things.PlaceOf(number);
        return new Question { Variable = variable, Position = position };
    }

    // What a way attains, acts and positions; of the positions only some where not all are asked for.
    private Bits Attained(List<int> way, int[]? asked)
    {
        var numbers = asked ?? Enumerable.Range(machine.Acts.Length, things.Count - machine.Acts.Length);
        var places = numbers.Select(number => (number, Place: things.PlaceOf(number))).ToArray();
        var attained = new Bits(things.Count);
        var stepper = new Stepper(machine);
        var state = stepper.Start()!;
        Take(state);
        foreach (var act in way)
        {
            attained[act] = true;
            stepper.Make(act, state);
            Take(state);
        }

        return attained;

        void Take(int[] at)
        {
            foreach (var (number, place) in places)
            {
                if (at[place.Variable] == place.Position)
                    attained[number] = true;
            }
        }
    }

    // Every act without which there is no way must be made at least once, whatever else is.
    private int AtLeast(List<int> way, Bits before)
    {
        var fewest = new FewestSteps(machine, moves, certain, before);
        if (fewest.Count >= way.Count)
            return fewest.Count;
        var needed = way.Distinct()
            .Where(act => !before[act] && (gained is null || Frees(act)) && fewest.MightBeFewer(act, way))
            .Where(act => Run(new Question { WithoutAct = act, GoalOnly = true }, new bool[machine.Acts.Length], most) is { Complete: true, Goal: null });
        return fewest.CountWith([.. needed]);
    }

    private List<List<int>>? DeadEnds(PartialOrder main)
    {
        if (!main.DeadEnds().Any())
            return [];
        var cut = Run(new Question { CutAtGoal = true }, new bool[machine.Acts.Length], most);
        if (!cut.Complete)
            return null;
        var parts = For(new Question { CutAtGoal = true }).Free;
        var closed = new Dictionary<int, List<int>>();
        foreach (var trail in cut.DeadEnds().Take(WholeGraph.MostDeadEnds * 3))
        {
            // A way that doesn't end where the box can't be solved any more says nothing of whether there are others.
            if (UpToTheDoor(parts.Real(trail.Acts(), Clauses.Always)) is not { Count: > 0 } way)
                return null;
            if (closed.Count < WholeGraph.MostDeadEnds)
                closed.TryAdd(way[^1], way);
        }

        return [.. closed.Values.OrderBy(way => way.Count)];
    }

    private List<int>? UpToTheDoor(List<int> way)
    {
        var stepper = new Stepper(machine);
        var states = new List<int[]> { stepper.Start()! };
        foreach (var act in way)
            states.Add(stepper.After(act, states[^1])!);
        if (CanBeSolved(states[^1]))
            return null;
        var (live, dead) = (0, way.Count);
        while (dead - live > 1)
        {
            var middle = (live + dead) / 2;
            if (CanBeSolved(states[middle]))
                live = middle;
            else
                dead = middle;
        }

        return way[..dead];

        bool CanBeSolved(int[] state)
        {
            var from = machine with { Start = [.. state], StageActs = [] };
            var parts = new FreeParts(from, new Moves(from), FreeParts.NoActs, FreeParts.NoActs);
            var exploration = new PartialOrder(
                parts.Reduced,
                new Independence(parts.Reduced),
                new Question { GoalOnly = true },
                new bool[machine.Acts.Length]);
            exploration.Run(budget, most);
            return exploration.Goal is not null;
        }
    }

    private bool Conflicts(PartialOrder main)
    {
        var independence = For(new Question()).Independence.Value;
        var possible = Enumerable.Range(0, independence.Conflicts.Length)
            .Where(e => e >= machine.Acts.Length || main.Possible[e]).ToHashSet();
        return possible.Any(e => independence.Conflicts[e].Any(possible.Contains));
    }

    // Where nothing gets in anything's way, a stage is open exactly when the stages certain before it are done, if one way to it made no others.
    private ImmutableArray<Bits>? Precedence(Lazy<List<int>>?[] ways, Bits[] before)
    {
        if (machine.StageActs.Any(acts => acts.Length != 1) || free.MayNeedStages)
            return null;
        var order = ImmutableArray.CreateBuilder<Bits>();
        for (var t = 0; t < ways.Length; t++)
        {
            var way = ways[t]?.Value ?? [];
            if (way.Exists(act => machine.Acts[act].Stage >= 0 && !before[t][act]))
                way = PlanShortening.Shorten(machine, way, targets[t], thorough: true);
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
