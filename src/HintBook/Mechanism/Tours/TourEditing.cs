namespace HintBook.Mechanism.Tours;

/// <summary>
/// Changes a walk step by step: makes it shorter, as long as it does all that it did, and has it come by where something can be tried that must hold. Such
/// tries are left out of it while it is changed: each costs one handling wherever it is made, so it only matters that the walk comes by.
/// </summary>
internal sealed class TourEditing
{
    private const int LongestPiece = 12;
    private const int MovesTried = 2_000;
    private const int LongestMoved = 5;
    private const int FarthestMoved = 40;
    private const int MostAround = 8_000;
    private const int MostBack = 2_000;
    private const int MostAttempts = 10;
    private readonly TourMachine machine;
    private readonly TourStates states;
    private readonly DutySet wanted;
    private readonly bool home;
    private readonly Budget budget;
    private readonly List<DutySet?> tries = [];
    private readonly DutySet wantedMade;
    private readonly DutySet doing;
    private List<Handling> walk;
    private List<int> at = [];

    // What is done until the walk comes to each place, and what from there on; tries at the place belong to both.
    private List<DutySet> before = [];
    private List<DutySet> behind = [];

    /// <summary>Begins with a walk.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="states">Its states.</param>
    /// <param name="walk">A walk that is possible.</param>
    /// <param name="wanted">The duties that it does and must still do afterwards.</param>
    /// <param name="home">Whether it ends as shipped and must still do so.</param>
    /// <param name="budget">What may be used.</param>
    public TourEditing(TourMachine machine, TourStates states, List<Handling> walk, IReadOnlyList<int> wanted, bool home, Budget budget)
    {
        (this.machine, this.states, this.home, this.budget) = (machine, states, home, budget);
        this.walk = [.. walk.Where(handling => !handling.MustHold)];
        this.wanted = DutySet.Of(machine.Duties.Length, wanted);
        wantedMade = DutySet.Of(machine.Duties.Length, wanted.Where(duty => machine.Duties[duty] is not Duty.Refuse));
        doing = this.wanted.Copy();
        Keep(this.walk);
    }

    /// <summary>The walk with its tries, each at the first place where it is possible.</summary>
    public List<Handling> Walk
    {
        get
        {
            var (all, left) = (new List<Handling>(), wanted.Copy());
            for (var i = 0; i < at.Count; i++)
            {
                foreach (var deed in machine.Tries(states[at[i]]).Where(deed => left.Remove(deed.Own)))
                    all.Add(deed.Handling);
                if (i < walk.Count)
                    all.Add(walk[i]);
            }

            return all;
        }
    }

    /// <summary>Makes the walk at most as long: no piece of it can be left out, done at another time, or done by a shorter way.</summary>
    public void Shorten()
    {
        for (var count = int.MaxValue; walk.Count < count && !budget.Spent(0, 0, 0);)
        {
            count = walk.Count;
            LeaveOutPieces();
            MovePieces();
        }
    }

    /// <summary>Has the walk come by where something can be tried that must hold, wherever that takes the fewest handlings more.</summary>
    /// <param name="duties">What is to be tried; what no short way around leads to stays undone.</param>
    public void Try(IEnumerable<int> duties)
    {
        var left = duties.ToDictionary(duty => duty, _ => MostAttempts);
        do
        {
            foreach (var duty in left.Keys.Where(behind[0].Has).ToList())
            {
                left.Remove(duty);
                wanted.Add(duty);
            }
        }
        while (left.Count > 0 && !budget.Spent(0, 0, 0) && GoAround(left));
    }

    // From all states of the walk at once to the nearest ones in which something can be tried, and back to the walk.
    private bool GoAround(Dictionary<int, int> left)
    {
        var (seen, ends) = (new HashSet<int>(), new List<(int Duty, int End)>());
        var open = new List<(int State, int From, Handling By)>();
        foreach (var state in at.Where(seen.Add))
            open.Add((state, -1, default));
        var most = seen.Count + MostAround;
        for (var here = 0; here < open.Count && seen.Count < most && left.Values.Any(attempts => attempts > 0); here++)
        {
            foreach (var duty in left.Keys.Where(duty => left[duty] > 0 && TriesAt(open[here].State).Has(duty)).ToList())
            {
                ends.Add((duty, here));
                left[duty]--;
            }

            foreach (var edge in states.From(open[here].State))
            {
                if (!edge.Deed.Handling.MustHold && seen.Add(edge.To))
                    open.Add((edge.To, here, edge.Deed.Handling));
            }
        }

        var tried = false;
        foreach (var (duty, end) in ends)
        {
            if (!left.ContainsKey(duty) || !Around(duty, end, open))
                continue;
            left.Remove(duty);
            wanted.Add(duty);
            tried = true;
        }

        foreach (var duty in left.Keys.ToList())
            left[duty] = MostAttempts;
        return tried;
    }

    private bool Around(int duty, int end, List<(int State, int From, Handling By)> open)
    {
        if (behind[0].Has(duty))
            return true;
        var (way, first) = (new List<Handling>(), end);
        for (; open[first].From >= 0; first = open[first].From)
            way.Add(open[first].By);
        way.Reverse();
        var place = at.IndexOf(open[first].State);
        return place >= 0 && Back(open[end].State, place) is (var back, var to)
            && Instead(place, to, [.. way, .. back], walk.Count + way.Count + back.Count, duty);
    }

    private (List<Handling> Way, int To)? Back(int from, int place)
    {
        var goals = new Dictionary<int, int>();
        for (var i = Math.Min(at.Count - 1, place + LongestPiece); i >= place; i--)
            goals[at[i]] = i;
        var seen = new HashSet<int> { from };
        var open = new Queue<(int State, List<Handling> Way)>([(from, [])]);
        while (open.TryDequeue(out var here) && seen.Count < MostBack)
        {
            if (goals.TryGetValue(here.State, out var to))
                return (here.Way, to);
            foreach (var edge in states.From(here.State).Where(edge => !edge.Deed.Handling.MustHold && seen.Add(edge.To)))
                open.Enqueue((edge.To, [.. here.Way, edge.Deed.Handling]));
        }

        return null;
    }

    private void LeaveOutPieces()
    {
        for (var length = Math.Min(LongestPiece, walk.Count); length > 0; length--)
        {
            for (var i = 0; i + length <= walk.Count && !budget.Spent(0, 0, 0);)
            {
                if (!Instead(i, i + length, [], walk.Count - 1))
                    i++;
            }
        }
    }

    // Pieces are done earlier or later, here and there, and stay there unless the walk gets longer: sooner or later that makes something needless. Where
    // comes from numbers that are the same each time (a linear congruential generator; its constants as Numerical Recipes has them, from memory).
    private void MovePieces()
    {
        var number = 1u;
        for (var moved = 0; moved < MovesTried && !budget.Spent(0, 0, 0); moved++)
        {
            var length = 1 + Next(LongestMoved);
            var (first, by) = (Next(walk.Count), 1 + Next(FarthestMoved));
            var middle = Next(2) == 0 ? first + length : first + by;
            var end = first + length + by;
            if (end <= walk.Count)
                Instead(first, end, [.. walk[middle..end], .. walk[first..middle]], walk.Count);
        }

        int Next(int below)
        {
            number = unchecked((number * 1_664_525) + 1_013_904_223);
            return (int)((ulong)number * (ulong)below >> 32);
        }
    }

    private bool IsEnd(int state) => !home || machine.IsHome(states[state]);

    // Whether a piece of the walk can be replaced; then it is. What isn't possible any more, there and behind it, is left out.
    private bool Instead(int from, int to, List<Handling> way, int most, int? duty = null)
    {
        var (state, made, met) = (at[from], new List<Handling>(), new List<int>());
        doing.Become(before[from]);
        foreach (var handling in way)
            Do(handling);

        // As soon as the box stands as it did on the way before, all that follows is possible.
        var on = to;
        for (; on < walk.Count && state != at[on]; on++)
        {
            if (!Do(walk[on]) && IsLost(walk[on].Act, on + 1))
                return false;
        }

        var joins = on < walk.Count || state == at[on];
        if (from + made.Count + walk.Count - on > most || !IsEnd(joins ? at[^1] : state))
            return false;
        if (joins)
            doing.Add(behind[on]);

        // What can be tried where takes longest to find out, so it comes last.
        if (!doing.Covers(wantedMade))
            return false;
        foreach (var each in met)
            doing.Add(TriesAt(each));
        if (!doing.Covers(wanted) || (duty is { } also && !doing.Has(also)))
            return false;
        Keep([.. walk[..from], .. made, .. walk[on..]]);
        return true;

        bool Do(Handling handling)
        {
            var number = states.Do(state, handling.Act);
            if (number < 0)
                return false;
            var edge = states.Made(number);
            if (edge.To == state && (edge.Deed.Own < 0 || doing.Has(edge.Deed.Own)))
                return false;
            doing.Add(edge.Deed);
            state = edge.To;
            made.Add(handling);
            met.Add(state);
            return true;
        }
    }

    // Whether a duty that only one act does isn't done and won't be later on, where the walk from some place on had that act no more.
    private bool IsLost(int act, int from) =>
        machine.DutyOf(act) is >= 0 and var duty && wanted.Has(duty) && !doing.Has(duty) && !behind[from].Has(duty);

    private DutySet TriesAt(int state)
    {
        while (tries.Count <= state)
            tries.Add(null);
        return tries[state] ??= DutySet.Of(machine.Duties.Length, machine.Tries(states[state]).Select(deed => deed.Own));
    }

    private void Keep(List<Handling> kept)
    {
        walk = kept;
        at = [states.NumberOf(machine.Start)];
        before = [TriesAt(at[0])];
        var deeds = new List<Deed>();
        foreach (var handling in walk)
        {
            var number = states.Do(at[^1], handling.Act);
            if (number < 0)
                throw new InvalidOperationException("a walk that was possible isn't any more");
            var edge = states.Made(number);
            deeds.Add(edge.Deed);
            at.Add(edge.To);
            before.Add(before[^1].With(edge.Deed, TriesAt(edge.To)));
        }

        behind = [TriesAt(at[^1])];
        for (var i = walk.Count - 1; i >= 0; i--)
            behind.Add(behind[^1].With(deeds[i], TriesAt(at[i])));
        behind.Reverse();
    }
}
