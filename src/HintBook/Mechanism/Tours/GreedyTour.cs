using HintBook.Books;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// A walk that always goes on to the nearest duty that isn't done, and makes no move after which the box couldn't be put back. What tells a code whose lock
/// hasn't been tried yet is put off, and what uses something up longer still.
/// </summary>
/// <param name="machine">The box.</param>
/// <param name="states">Its states.</param>
/// <param name="wanted">By duty: whether it is to be done.</param>
/// <param name="mayGoTo">Whether a state may be gone to.</param>
/// <param name="budget">What may be used.</param>
internal sealed class GreedyTour(TourMachine machine, TourStates states, bool[] wanted, Func<int[], bool> mayGoTo, Budget budget)
{
    private const int MostNearby = 600;
    private const int MostGuided = 1_000;
    private readonly ILookup<int, int> keptBy = Locks(machine);
    private readonly bool[] done = new bool[wanted.Length];
    private readonly List<Handling> walk = [];
    private int[] state = machine.Start;

    // What is put off while something else can be done.
    private enum Patience
    {
        Both,
        UsingUp,
        Nothing,
    }

    /// <summary>The handlings.</summary>
    public List<Handling> Walk => walk;

    /// <summary>By duty: whether it is done.</summary>
    public bool[] Done => done;

    /// <summary>How the box stands.</summary>
    public int[] State => state;

    /// <summary>Goes on until nothing more is found.</summary>
    public void Go()
    {
        while (!budget.Spent(0, 0, 0) && Next() is { } way)
        {
            foreach (var deed in way)
            {
                walk.Add(deed.Handling);
                TourMachine.Mark(deed, done);
                state = deed.Next;
            }
        }
    }

    private List<Deed>? Next() => Nearby(Patience.Both) ?? Nearby(Patience.UsingUp) ?? Nearby(Patience.Nothing) ?? Guided();

    private List<Deed>? Nearby(Patience patience)
    {
        var seen = new HashSet<int> { states.NumberOf(state) };
        var open = new Queue<Node>([new Node(states.NumberOf(state), null, default)]);
        while (open.TryDequeue(out var at) && seen.Count < MostNearby)
        {
            foreach (var edge in states.From(at.State).Where(edge => !IsPutOff(edge.Deed, states[at.State], patience)))
            {
                if (IsWanted(edge.Deed) && mayGoTo(edge.Deed.Next))
                    return at.Then(edge.Deed);
                if (seen.Add(edge.To))
                    open.Enqueue(new Node(edge.To, at, edge.Deed));
            }
        }

        return null;
    }

    // Looks for one duty after the other, the one that seems nearest first, and always goes on from the state that seems nearest to it.
    private List<Deed>? Guided()
    {
        var costs = new RelaxedCosts(machine.Back, state);
        var duties = machine.Duties.Index()
            .Where(duty => wanted[duty.Index] && !done[duty.Index]).Select(duty => (Cost: CostOf(duty.Item, costs), duty.Index))
            .Where(duty => duty.Cost < RelaxedCosts.Never).Order();
        foreach (var (_, duty) in duties)
        {
            if (budget.Spent(0, 0, 0))
                return null;
            if (Guided(duty) is { } way)
                return way;
            wanted[duty] = false;
        }

        return null;
    }

    private List<Deed>? Guided(int duty) => Guided(
        state,
        costs => CostOf(machine.Duties[duty], costs),
        deed => (deed.Own == duty || deed.Seen.Contains(duty)) && mayGoTo(deed.Next));

    /// <summary>The way home, or null if none was found.</summary>
    public List<Deed>? Home() => machine.IsHome(state) ? [] : Guided(state, costs => costs.Of(machine.Back.Goal), deed => machine.IsHome(deed.Next));

    // What a state costs is worked out when its turn has come; until then it counts as the one before it.
    private List<Deed>? Guided(int[] from, Func<RelaxedCosts, int> costOf, Func<Deed, bool> isEnd)
    {
        var seen = new HashSet<int> { states.NumberOf(from) };
        var open = new PriorityQueue<Node, (int, int)>([(new Node(states.NumberOf(from), null, default), (0, 0))]);
        for (var looked = 0; looked < MostGuided && open.TryDequeue(out var at, out _); looked++)
        {
            var cost = costOf(new RelaxedCosts(machine.Back, states[at.State]));
            if (cost >= RelaxedCosts.Never)
                continue;
            foreach (var edge in states.From(at.State).Where(edge => isEnd(edge.Deed) || !edge.Deed.Handling.MustHold))
            {
                if (isEnd(edge.Deed))
                    return at.Then(edge.Deed);
                if (seen.Add(edge.To))
                    open.Enqueue(new Node(edge.To, at, edge.Deed), (cost, seen.Count));
            }
        }

        return null;
    }

    private int CostOf(Duty duty, RelaxedCosts costs) => duty switch
    {
        Duty.Make make => costs.Of(machine.Back.Acts[make.Act].When),
        Duty.Stand stand => costs.Of(stand.Variable, 1UL << stand.Position),
        Duty.See see => costs.Of(machine.Back.Rules[see.Rule].When),
        Duty.Refuse refuse => costs.Of(refuse.Others),
        _ => RelaxedCosts.Never,
    };

    private bool IsWanted(Deed deed)
    {
        if (deed.Own >= 0 && wanted[deed.Own] && !done[deed.Own])
            return true;
        foreach (var seen in deed.Seen)
        {
            if (wanted[seen] && !done[seen])
                return true;
        }

        return false;
    }

    private bool IsPutOff(Deed deed, int[] from, Patience patience)
    {
        if (patience == Patience.Nothing || deed.Handling.MustHold)
            return false;
        foreach (var effect in machine.Back.Acts[deed.Handling.Act].Effects)
        {
            if (deed.Next[effect.Variable] == from[effect.Variable])
                continue;
            if (effect.Position == machine.Back.Variables[effect.Variable].Gone)
                return true;
            if (patience == Patience.Both && keptBy[effect.Variable].Any(duty => wanted[duty] && !done[duty]))
                return true;
        }

        return false;
    }

    // The duties that try a lock, by the code that must not be known then.
    private static ILookup<int, int> Locks(TourMachine machine) =>
        (from duty in machine.Duties.Index()
         where duty.Item is Duty.Refuse
         from literal in ((Duty.Refuse)duty.Item).Needs.SelectMany(clause => clause.Literals)
         where machine.Back.Variables[literal.Variable].Named is Code
         select (literal.Variable, duty.Index)).Distinct().ToLookup(each => each.Variable, each => each.Index);

    private sealed record Node(int State, Node? Before, Deed By)
    {
        public List<Deed> Then(Deed last)
        {
            var way = new List<Deed> { last };
            for (var at = this; at.Before is { } before; at = before)
                way.Add(at.By);
            way.Reverse();
            return way;
        }
    }
}
