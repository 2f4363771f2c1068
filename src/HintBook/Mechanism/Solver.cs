using System.Collections.Immutable;
using System.Numerics;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Answers every question of <c>solve</c>.</summary>
public sealed class Solver
{
    private const int MostForCounting = 400_000;
    private const int MostForCountingBesides = 8_000;
    private const int MostToCountBesides = 24;
    private readonly Explored explored;
    private readonly Book book;
    private readonly Machine machine;
    private readonly Budget budget;
    private readonly Attainable things;
    private readonly WaitingReasons waiting;
    private readonly Replayer second;
    private readonly bool forPages;
    private readonly ImmutableArray<string> stages;
    private readonly ImmutableArray<string> variables;
    private readonly ImmutableArray<Placed> places;
    private readonly int[][] done;
    private ReactionFault? fault;

    // The acts of one way on which stages were open; it may leave out those that move nothing else than parts which are moved at will.
    private HashSet<int> toured = [];

    private Solver(Explored explored, bool forPages)
    {
        (book, budget, this.explored, this.forPages) = (explored.Book, explored.Continued(), explored, forPages);
        machine = explored.Machine;
        fault = explored.Fault;
        things = new Attainable(machine);
        stages = [.. book.Stages.Select(stage => stage.Id.Value)];
        variables = [.. machine.Variables.Select(variable => variable.Id)];
        places = [.. Enumerable.Range(machine.Acts.Length, things.Count - machine.Acts.Length).Select(PlacedAt)];
        done = [.. machine.StageActs.Select(acts => acts.ToArray())];
        waiting = new WaitingReasons(machine);
        second = new Replayer(book);
    }

    /// <summary>All that can be said of a book within some limits. Never throws for a book's sake: what a limit cuts off is not proved.</summary>
    /// <param name="book">The book.</param>
    /// <param name="limits">What may be used.</param>
    /// <param name="progress">Told after the first second.</param>
    /// <param name="stop">Ends it at once; the rest is then not proved.</param>
    public static Solution Solve(Book book, SolveLimits limits, IProgress<SolveProgress>? progress = null, CancellationToken stop = default) =>
        Solve(Explored.Explore(book, limits, progress, stop: stop));

    /// <summary>All that can be said of a box that has been explored, within what its limits have left.</summary>
    /// <param name="explored">The explored box.</param>
    public static Solution Solve(Explored explored) => new Solver(explored, forPages: false).Solve();

    /// <summary>
    /// What pages and findings need, sooner: <see cref="Solution.Widest"/> and <see cref="Solution.Orders"/> are left at 0 and not exact, and
    /// where one way shows that all the stages can be reached, the claims of single stages come without a way of their own.
    /// </summary>
    /// <param name="explored">The explored box.</param>
    public static Solution ForPages(Explored explored) => new Solver(explored, forPages: true).Solve();

    private Solution Solve()
    {
        var result = explored.Result;
        if (forPages && result.Tour is { } tour)
        {
            Checked(tour.Value, _ => true, "it has ended");
            toured = tour.Value.ToHashSet();
        }

        var way = result.Way is null ? default : Checked(result.Way, replayer => replayer.Solved, "the box is solved");
        var solution = new Solution
        {
            Opens = Opens(result, way),
            Shortest = way.IsDefault ? new Claim.NotProved(result.Why ?? "there is no way")
                : result.AtLeast == way.Length ? new Claim.Proved(way)
                : new Claim.NotProved($"no way has fewer than {result.AtLeast} moves, and this one has {way.Length}"),
            AtLeast = result.AtLeast,
            BoxStates = explored.Graph?.States is { } states && states <= long.MaxValue ? (long)states : null,
            Stages = [.. Enumerable.Range(0, book.Stages.Length).Select(s => StageAnswer(result, s))],
            NeverPossible = NeverPossible(result),
            NoDeadEnds = new Claim.NotProved(result.Why ?? "it wasn't asked"),
            DeadEnds = [],
            Shortcuts = [],
            NoOtherShortcuts = new Claim.NotProved(result.Why ?? "there is no way"),
            ByTrying = [],
            Bottlenecks = [],
            Widest = new Widest(0, [], Exact: false),
            Orders = new Orders(BigInteger.Zero, Exact: false),
            States = 0,
            Explored = result.Explored,
            Seconds = 0,
            Findings = [],
        };
        solution = WithDeadEnds(solution, result);
        if (result.Way is not null)
            solution = WithShortcuts(solution, result);
        solution = solution with { ByTrying = [.. Tried(result)] };
        if (!forPages)
        {
            var (widest, orders) = Counts(result);
            solution = solution with { Widest = widest, Orders = orders };
        }

        solution = solution with { States = budget.Stored, Seconds = budget.Seconds };
        return solution with { Findings = Findings.Of(Unresting().Concat(SolutionFindings.Collect(machine, waiting, solution))).All };
    }

    // Where a limit ended the look, what can't be even if nothing ever stopped being so still never happens.
    private ImmutableArray<Step> NeverPossible(ExplorationResult result) =>
    [
        .. machine.Acts
            .Where((act, a) => !result.Possible[a] && (result.Why is null || !waiting.Holds(act.When)))
            .Where(act => act.Step.Kind != StepKind.WayBack && !StillTurns(act, result))
            .Select(act => act.Step),
    ];

    // A dial that can be turned at all is not reported for a neighbouring position that it never reaches.
    private bool StillTurns(Act act, ExplorationResult result) =>
        act.Step.Kind == StepKind.FreeMove
        && machine.Acts.Index().Any(other =>
            result.Possible[other.Index]
            && other.Item.Step.Kind == StepKind.FreeMove
            && other.Item.Effects[0].Variable == act.Effects[0].Variable);

    private ExplorationResult Explore(Machine other)
    {
        var (result, found, _) = ExplorationStrategy.Explore(other, budget);
        fault ??= found;
        return result;
    }

    private Claim Opens(ExplorationResult result, ImmutableArray<Step> way) =>
        !way.IsDefault ? new Claim.Proved(way)
        : result.Why is not null && MayHold(machine.Goal) ? new Claim.NotProved(result.Why)
        : new Claim.Refuted([], waiting.OfGoal().Why);

    // Of a book that couldn't be compiled nothing is known.
    private bool MayHold(ImmutableArray<Clause> when) => machine.Refused is not null || waiting.Holds(when);

    private StageAnswer StageAnswer(ExplorationResult result, int s)
    {
        var stage = book.Stages[s];
        var id = stage.Id.Value;
        ImmutableArray<Clause> when = [.. machine.StageActs[s].SelectMany(a => machine.Acts[a].When)];
        Claim reachable =
            result.WayToStage[s] is { } way
                ? new Claim.Proved(machine.StageActs[s].Any(toured.Contains) ? [] : Checked(way.Value, replayer => replayer.IsOpen(id), $"{id} is open"))
            : result.Why is not null && MayHold(when) ? new Claim.NotProved(result.Why)
            : new Claim.Refuted([], waiting.OfStage(s).Why);
        var known = reachable is Claim.Refuted ? new Bits(things.Count) : result.Before[s];
        var (gained, attained) = Gains(known);
        return new StageAnswer
        {
            Id = id,
            Reachable = reachable,
            CertainBefore = new(stages, CertainStages(known, s)),
            Facts = gained,
            Attained = attained,
            Exact = result.Exact,
        };
    }

    private Placed PlacedAt(int number)
    {
        var (v, position) = things.PlaceOf(number);
        return new(machine.Variables[v].Id, machine.Variables[v].Positions[position]);
    }

    private (ChosenSet<string> Facts, ChosenSet<Placed> Attained) Gains(Bits known)
    {
        var (gained, placed) = (new Bits(variables.Length), new Bits(places.Length));
        foreach (var number in known.Members().Where(number => number >= machine.Acts.Length))
        {
            var (v, position) = things.PlaceOf(number);
            var variable = machine.Variables[v];
            if (variable.Named!.Attained is { } wanted && variable.Positions[position] == wanted)
                gained[v] = true;
            if (position != 0)
                placed[number - machine.Acts.Length] = true;
        }

        return (new(variables, gained), new(places, placed));
    }

    private Bits CertainStages(Bits known, int but = -1)
    {
        var certain = new Bits(done.Length);
        for (var s = 0; s < done.Length; s++)
        {
            var all = done[s].Length > 0 && s != but;
            for (var i = 0; all && i < done[s].Length; i++)
                all = known[done[s][i]];
            certain[s] = all;
        }

        return certain;
    }

    private Solution WithDeadEnds(Solution solution, ExplorationResult result)
    {
        if (result.DeadEnds is not { } found)
            return solution with { NoDeadEnds = new Claim.NotProved(result.Why ?? "the states were too many to look at each") };
        if (result.Way is null)
        {
            return solution with
            {
                NoDeadEnds = solution.Opens is Claim.Refuted
                    ? new Claim.Refuted([], "the box can't be opened at all")
                    : new Claim.NotProved(result.Why ?? "it isn't known whether the box opens"),
            };
        }

        ImmutableArray<ImmutableArray<Step>> ways = [.. found.Select(way => Checked(way, replayer => !replayer.Solved, "the box isn't solved"))];
        return solution with
        {
            DeadEnds = ways,
            NoDeadEnds = ways.IsEmpty ? new Claim.Proved([]) : new Claim.Refuted(ways[0], "from here the box can't be solved any more"),
        };
    }

    private Solution WithShortcuts(Solution solution, ExplorationResult result)
    {
        var certain = CertainStages(result.BeforeGoal);
        var shortcuts = ImmutableArray.CreateBuilder<Shortcut>();
        var paths = new Dictionary<List<int>, ImmutableArray<Step>>(ReferenceEqualityComparer.Instance);
        var open = new List<string>();
        foreach (var (number, stage) in book.Stages.Index().Where(each => !each.Item.Optional && !each.Item.RedHerring && !certain[each.Index]))
        {
            var (id, acts) = (stage.Id.Value, machine.StageActs[number]);
            var way = acts.Where(act => !result.BeforeGoal[act]).Select(result.WayWithout).OfType<List<int>>().OrderBy(way => way.Count).FirstOrDefault();
            if (way is null)
                open.Add(id);
            else
                shortcuts.Add(new Shortcut(id, Path(way, acts, id)));
        }

        // One way may leave out many stages: it is made again once.
        ImmutableArray<Step> Path(List<int> way, ImmutableArray<int> acts, string id)
        {
            if (!paths.TryGetValue(way, out var path))
                paths[way] = path = Checked(way, replayer => replayer.Solved, "the box is solved");
            return acts.All(way.Contains) ? throw new InvalidOperationException($"a witness makes all of {id}") : path;
        }

        return solution with
        {
            Bottlenecks = [.. new ChosenSet<string>(stages, certain)],
            Shortcuts = shortcuts.ToImmutable(),
            NoOtherShortcuts = open.Count == 0 ? new Claim.Proved([]) : new Claim.NotProved($"of {Words.List(open)} it isn't known"),
        };
    }

    private IEnumerable<Trying> Tried(ExplorationResult result)
    {
        foreach (var code in book.Box.Codes.Where(code => code.Lock is not null))
        {
            var settings = code.Lock!.Settings;
            var seconds = (double)settings * code.Lock.SecondsATry;
            yield return new Trying(code.Id.Value, settings, seconds, seconds <= book.Patience.TotalSeconds ? [.. Skipped(result, code)] : []);
        }
    }

    // Whoever tries all settings knows the code without having been told.
    private ChosenSet<string> Skipped(ExplorationResult result, Code code)
    {
        var variable = Array.FindIndex([.. machine.Variables], v => v.Id == code.Id.Value);
        if (result.Way is null || machine.Refused is not null)
            return [];
        var told = Explore((machine with { Start = machine.Start.SetItem(variable, 1) }).AtRest());
        return told.Exact ? new ChosenSet<string>(stages, CertainStages(result.BeforeGoal).Without(CertainStages(told.BeforeGoal))) : [];
    }

    private (Widest Widest, Orders Orders) Counts(ExplorationResult result)
    {
        if (explored.Graph?.Count <= MostForCountingBesides && Counted(result, MostForCountingBesides) is { Widest.Exact: true, Orders.Exact: true } few)
            return few;
        var ordered = result.Precedence?.Value is { } precedence ? Ordered(result, precedence) : ((Widest Widest, Orders Orders)?)null;
        if (ordered is { Widest.Exact: true, Orders.Exact: true } counts)
            return counts;
        if (ordered is not null && book.Stages.Length > MostToCountBesides)
            return ordered.Value;
        var counted = Counted(result, explored.Graph is null && result.Explored == "reduced" ? MostForCountingBesides : MostForCounting);
        return counted.Widest.Exact || ordered is null ? counted : ordered.Value;
    }

    private (Widest Widest, Orders Orders) Counted(ExplorationResult result, int most)
    {
        var marked = Compiler.Compile(book, _ => true);
        var graph = ExplorationStrategy.UpToExchange(marked, budget, most, budget.Limits.Reduce ? Symmetry.Of(marked) : null);
        var counting = new OrderCounting(graph);
        var (count, stages) = counting.Widest();
        var all = graph.Stopped is null;
        return (
            new Widest(count, [.. stages.Select(s => book.Stages[s].Id.Value)], Exact: all),
            all ? counting.Orders(budget) : new Orders(result.Way is null ? BigInteger.Zero : BigInteger.One, Exact: false));
    }

    // A stage that the goal doesn't need may or may not come before the end; the orders without any of those are then a lower bound.
    private (Widest Widest, Orders Orders) Ordered(ExplorationResult result, ImmutableArray<Bits> precedence)
    {
        var reached = Enumerable.Range(0, book.Stages.Length).Where(s => result.WayToStage[s] is not null).ToList();
        var widest = Among(reached).Widest();
        var together = AtTheSameTime(widest.Select(i => reached[i]));
        var needed = result.Way is null ? [] : precedence[^1].Members().ToList();
        var (count, exact) = result.Way is null ? (BigInteger.Zero, true) : Among(needed).Count();
        return (
            new Widest(together.Count, [.. together.Select(s => book.Stages[s].Id.Value)], together.Count == widest.Length),
            new Orders(count, exact && (result.Way is null || needed.Count == reached.Count)));

        LinearExtensions Among(List<int> stages)
        {
            var number = stages.Select((s, i) => (s, i)).ToDictionary(pair => pair.s, pair => pair.i);
            return new LinearExtensions(stages.ConvertAll(s =>
            {
                var before = new Bits(stages.Count);
                foreach (var earlier in precedence[s].Members())
                    before[number[earlier]] = true;
                return before;
            }));
        }
    }

    // Stages may all be next and yet want one part in different positions.
    private List<int> AtTheSameTime(IEnumerable<int> stages)
    {
        var kept = new List<int>();
        var clause = new Clause([]);
        foreach (var stage in stages)
        {
            if (machine.Acts[machine.StageActs[stage][0]].When is [var needs] && Clauses.Join(clause, needs) is { } both)
            {
                clause = both;
                kept.Add(stage);
            }
        }

        return kept;
    }

    private IEnumerable<Finding> Unresting() => fault is null ? [] : [UnrestFindings.Of(machine, fault)];

    // What the explorer says is said only after a second opinion.
    private ImmutableArray<Step> Checked(List<int> way, Func<Replayer, bool> holds, string what)
    {
        var steps = way.Select(act => machine.Acts[act].Step).ToImmutableArray();
        var replayer = second.Fresh();
        var why = replayer.Follow(steps) ?? (holds(replayer) ? null : $"at its end it isn't so that {what}");
        return why is null ? steps : throw new InvalidOperationException($"a witness does not replay: {why}");
    }
}
