using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Mechanism.Reduced;

namespace HintBook.Mechanism.Tours;

/// <summary>Plans the test walk of a book.</summary>
/// <param name="book">The book.</param>
/// <param name="budget">What may be used.</param>
internal sealed class TourPlanner(Book book, Budget budget)
{
    private const int MostStates = 4_000;
    private const int MostPairs = 400_000;
    private const string Never = "nothing in the book ever makes that possible";
    private const string NeverAlone = "what else the move needs, or what lies before it, is never so without that, so it is never alone in the way";

    /// <summary>The walk.</summary>
    public TestWalk Plan()
    {
        var compiled = Compiler.Compile(book);
        if (compiled.Refused is { } refused)
            return Nothing($"The box can't be looked at: {refused}.");
        if (ReactionConflicts.Any(compiled) && !SettlesAlways(compiled))
            return Nothing("Its reactions may disagree, or never come to rest: see what “hintbook solve” says.");
        if (new Stepper(compiled).Start() is not { } shipped)
            return Nothing("Its reactions never come to rest.");
        var machine = new TourMachine(book, compiled, shipped);
        if (machine.Back.Refused is { } why)
            return Nothing($"Putting back can't be looked at: {why}.");
        var states = new TourStates(machine);
        states.NumberOf(machine.Start);
        var graph = TourGraph.Of(states, MostStates, budget);
        budget.Forgive();
        return graph is null ? OfLarge(machine, states) : OfSmall(machine, states, graph);
    }

    private bool SettlesAlways(Machine compiled)
    {
        var graph = Exploration.Whole(compiled, budget, most: MostStates);
        budget.Forgive();
        return graph is { Stopped: null, Unrest: null };
    }

    private TestWalk OfSmall(TourMachine machine, TourStates states, TourGraph graph)
    {
        var toHome = graph.FewestBesides(s => machine.IsHome(graph[s]) ? 0 : int.MaxValue);
        var (possible, goesHome) = (new bool[machine.Duties.Length], new bool[machine.Duties.Length]);
        foreach (var edge in graph.Edges.SelectMany(edges => edges))
        {
            TourMachine.Mark(edge.Deed, possible);
            if (toHome[edge.To] < int.MaxValue)
                TourMachine.Mark(edge.Deed, goesHome);
        }

        var wanted = Wanted(machine, possible);
        var closed = wanted.All(duty => goesHome[duty]);
        if (wanted.Count <= ExactTour.MostDuties)
        {
            var (walk, bound) = new ExactTour(graph, wanted, closed ? s => machine.IsHome(graph[s]) : null, machine.UsesUp).Find(MostPairs, budget);
            budget.Forgive();
            if (walk is not null)
                return Told(machine, walk, wanted, possible, closed, walk.Count);
            if (bound < int.MaxValue)
                return Greedy(machine, states, wanted, possible, s => toHome[graph.NumberOf(s)] < int.MaxValue, bound);
        }

        return Greedy(machine, states, wanted, possible, s => toHome[graph.NumberOf(s)] < int.MaxValue, 0);
    }

    private TestWalk OfLarge(TourMachine machine, TourStates states)
    {
        var relaxed = new DeleteRelaxation(machine.Back with { Start = [.. machine.Start] });
        var possible = machine.Duties.Select(duty => duty switch
        {
            Duty.Make make => relaxed.Happens(make.Act),
            Duty.Stand stand => machine.Back.Acts.Index().Any(act => relaxed.Happens(act.Index) && act.Item.Puts(stand.Variable, stand.Position)),
            Duty.See see => relaxed.Happens(machine.Back.Acts.Length + see.Rule),
            Duty.Refuse refuse => !refuse.Never
                && refuse.Others.Any(clause => clause.Literals.All(each => (relaxed.Attained[each.Variable] & each.Accepts) != 0))
                && (refuse.Moves.IsEmpty
                    || refuse.Moves.Any(moved => (relaxed.Attained[moved.Variable] & moved.From & ~(1UL << moved.Position)) != 0))
                && refuse.Needs.All(clause => clause.Literals.Any(each => (relaxed.Attained[each.Variable] & ~each.Accepts) != 0)),
            _ => false,
        }).ToArray();
        return Greedy(machine, states, Wanted(machine, possible), possible, GoesHome, 0);

        bool GoesHome(int[] state)
        {
            var from = new DeleteRelaxation(machine.Back with { Start = [.. state] });
            return from.Happens(from.Goal);
        }
    }

    /// <summary>
    /// The duties of a walk, of those that are possible: each need of a move is tried alone, and a move of whose needs none can be is tried with any of them.
    /// </summary>
    internal static List<int> Wanted(TourMachine machine, bool[] possible)
    {
        var alone = machine.Duties.Index()
            .Where(duty => possible[duty.Index] && duty.Item is Duty.Refuse { Lacks: not null }).Select(duty => ((Duty.Refuse)duty.Item).Act).ToHashSet();
        return
        [
            .. from duty in machine.Duties.Index()
               where possible[duty.Index] && !(duty.Item is Duty.Refuse { Lacks: null } any && alone.Contains(any.Act))
               select duty.Index,
        ];
    }

    private TestWalk Greedy(TourMachine machine, TourStates states, List<int> wanted, bool[] possible, Func<int[], bool> mayGoTo, int bound)
    {
        var asked = new bool[machine.Duties.Length];
        List<int> tries = [.. wanted.Where(duty => machine.Duties[duty] is Duty.Refuse)];
        foreach (var duty in wanted.Where(duty => machine.Duties[duty] is not Duty.Refuse refuse || TellsCode(machine, refuse)))
            asked[duty] = true;
        var tour = new GreedyTour(machine, states, asked, mayGoTo, budget);
        tour.Go();
        List<Handling> walk = [.. tour.Walk];
        ImmutableArray<Step> opening = [.. walk.Where(handling => !handling.MustHold).Select(handling => machine.Back.Acts[handling.Act].Step)];
        var reset = new GreedyReset(machine.Back, opening);
        var back = Made(reset.AnyPlan(tour.State, soon: true)) ?? tour.Home()?.Select(deed => deed.Handling) ?? Made(reset.AnyPlan(tour.State, soon: false));
        if (back is not null)
            walk.AddRange(back);
        var editing = new TourEditing(machine, states, walk, Tested(walk), back is not null, budget);
        editing.Shorten();
        editing.Try(tries);
        editing.Shorten();
        editing.Try(tries);
        // What is tested hardly ever changes from here on, so the bound has a core of its own meanwhile.
        var (tested, fork) = (Tested(editing.Walk), budget.Fork());
        var bounding = Task.Run(() => LeastHandlings.Of(machine, tested, back is not null, fork), CancellationToken.None);
        editing.Shorten();
        walk = editing.Walk;
        var early = bounding.GetAwaiter().GetResult();
        List<int> all = Tested(walk);
        var least = all.SequenceEqual(tested) ? early : LeastHandlings.Of(machine, all, back is not null, budget);
        return Told(machine, walk, wanted, possible, back is not null, Math.Max(bound, least));

        List<int> Tested(List<Handling> of)
        {
            var done = machine.Follow(of)!.Value.Done;
            return [.. wanted.Where(duty => done[duty])];
        }

        static IEnumerable<Handling>? Made(List<int>? acts) => acts?.Select(act => new Handling(act));
    }

    // Before a code is told its lock can be tried; other locks and latches are tried later, wherever it takes the fewest handlings more.
    private static bool TellsCode(TourMachine machine, Duty.Refuse refuse) =>
        refuse.Needs.SelectMany(clause => clause.Literals).Any(literal => machine.Back.Variables[literal.Variable].Named is Code);

    private TestWalk Told(TourMachine machine, List<Handling> walk, List<int> wanted, bool[] possible, bool home, int least)
    {
        var done = machine.Follow(walk)!.Value.Done;
        var steps = WalkReplay.Of(book, machine, walk, home);
        return new()
        {
            Steps = steps,
            Length = walk.Count <= least ? new WalkLength.Shortest()
                : new WalkLength.AtMostLonger(least, walk.Count - least),
            EndsOpen = home ? null : "Not everything that is tested can be put back, so the box isn't as it left you at the end.",
            LeftOut = [.. LeftOutOf(machine, wanted, possible, done)],
            Fresh = [.. steps.SelectMany(step => step.UsesUp)],
            Moves = Done<Duty.Make>(),
            Positions = Done<Duty.Stand>(),
            Reactions = Done<Duty.See>(),
        };

        int Done<T>() => machine.Duties.Index().Count(duty => duty.Item is T && done[duty.Index]);
    }

    private IEnumerable<LeftOut> LeftOutOf(TourMachine machine, List<int> wanted, bool[] possible, bool[] done)
    {
        var asked = wanted.ToHashSet();
        foreach (var (number, duty) in machine.Duties.Index().Where(duty => !done[duty.Index]))
        {
            // That one of several needs can't be tried alone is worth no word where the move is tried otherwise.
            if (duty is Duty.Refuse { Lacks: null } any && (possible[number] != asked.Contains(number) || TriedAnyway(any.Act)))
                continue;
            if (duty is Duty.Refuse { Lacks: not null } one && !possible[number] && TriedAnyway(one.Act))
                continue;
            var why = possible[number] ? "no way to it was found that leaves the rest of the walk possible"
                : duty is Duty.Refuse { Never: true } ? NeverAlone : Never;
            yield return Described(machine, duty, why, !possible[number]);
        }

        bool TriedAnyway(int act) => machine.Duties.Index().Any(duty => done[duty.Index] && duty.Item is Duty.Refuse refuse && refuse.Act == act);
    }

    private LeftOut Described(TourMachine machine, Duty duty, string why, bool proved)
    {
        switch (duty)
        {
            case Duty.Make make:
                var step = machine.Back.Acts[make.Act].Step;
                return new(step.Says, step, [], SolutionFindings.PlaceOf(book, step), why, proved);
            case Duty.Stand stand:
                var part = machine.Back.Variables[stand.Variable];
                return new($"{part.Named!.Name}: {part.Positions[stand.Position]}", null, [], part.Named.Id.At, why, proved);
            case Duty.See see:
                var reaction = book.Box.Reactions[see.Rule];
                var gives = reaction.Changes.Select(change => $"{change.Name.Value}: {change.Position.Value}");
                return new($"what happens by itself ({string.Join(", ", gives)})", null, [], reaction.At, why, proved);
            case Duty.Refuse refuse:
                var tried = machine.Back.Acts[refuse.Act].Step;
                return new($"that it holds: {tried.Says}", tried, refuse.Lacks is { } lacks ? [lacks] : [], SolutionFindings.PlaceOf(book, tried), why, proved);
            default:
                throw new InvalidOperationException("a duty is one of these");
        }
    }

    private static TestWalk Nothing(string why) => new()
    {
        Steps = [],
        Length = new WalkLength.NotProved(why),
        EndsOpen = null,
        LeftOut = [],
        Fresh = [],
        Moves = 0,
        Positions = 0,
        Reactions = 0,
    };
}
