using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>Changes a walk step by step: makes it shorter, as long as it does all that it did, and has it try what must hold.</summary>
internal sealed class TourEditing
{
    private const int LongestPiece = 12;
    private const int MostNearby = 120;
    private const int MostAround = 1_500;
    private const int MostBack = 600;
    private const int MostAttempts = 10;
    private readonly TourMachine machine;
    private readonly List<int> wanted;
    private readonly bool home;
    private readonly Budget budget;
    private List<Handling> walk;
    private List<int[]> states = [];

    // What the handlings before each place do, and those from it on.
    private List<bool[]> before = [];
    private List<bool[]> behind = [];

    /// <summary>Begins with a walk.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="walk">A walk that is possible.</param>
    /// <param name="wanted">The duties that it does and must still do afterwards.</param>
    /// <param name="home">Whether it ends as shipped and must still do so.</param>
    /// <param name="budget">What may be used.</param>
    public TourEditing(TourMachine machine, List<Handling> walk, IReadOnlyList<int> wanted, bool home, Budget budget)
    {
        (this.machine, this.walk, this.wanted, this.home, this.budget) = (machine, walk, [.. wanted], home, budget);
        Keep(walk);
    }

    /// <summary>A walk that is at most as long: no piece of it can be left out, or made shorter by another way between the same states.</summary>
    public List<Handling> Shorten()
    {
        for (var count = int.MaxValue; walk.Count < count && !budget.Spent(0, 0, 0);)
        {
            count = walk.Count;
            LeaveOutPieces();
            TakeShortWays();
        }

        return walk;
    }

    /// <summary>Has the walk try what must hold, wherever that takes the fewest handlings more.</summary>
    /// <param name="duties">What is to be tried; what no short way around leads to stays undone.</param>
    public void Try(IEnumerable<int> duties)
    {
        var left = duties.ToDictionary(duty => duty, _ => MostAttempts);
        do
        {
            TryOnTheWay(left);
        }
        while (left.Count > 0 && !budget.Spent(0, 0, 0) && GoAround(left));
    }

    private void TryOnTheWay(Dictionary<int, int> left)
    {
        var tried = new List<Handling>();
        for (var i = 0; i < states.Count; i++)
        {
            foreach (var deed in machine.Tries(states[i]).Where(deed => left.Remove(deed.Own)))
            {
                tried.Add(deed.Handling);
                wanted.Add(deed.Own);
            }

            if (i < walk.Count)
                tried.Add(walk[i]);
        }

        Keep(tried);
    }

    // From all states of the walk at once to the nearest one in which something can be tried, and back to the walk.
    private bool GoAround(Dictionary<int, int> left)
    {
        var seen = new HashSet<Positions>();
        var open = new Queue<(int[] State, int From, List<Handling> Way)>();
        for (var i = 0; i < states.Count; i++)
        {
            if (seen.Add(new(states[i])))
                open.Enqueue((states[i], i, []));
        }

        for (var most = seen.Count + MostAround; seen.Count < most && open.TryDequeue(out var at);)
        {
            foreach (var deed in machine.Tries(at.State).Where(deed => left.ContainsKey(deed.Own)))
            {
                if (Back(deed.Next, at.From) is (var back, var to) && Instead(at.From, to, [.. at.Way, deed.Handling, .. back]))
                {
                    left.Remove(deed.Own);
                    wanted.Add(deed.Own);
                    return true;
                }

                if (--left[deed.Own] == 0)
                    left.Remove(deed.Own);
            }

            foreach (var deed in machine.Deeds(at.State).Where(deed => !deed.Handling.MustHold && seen.Add(new(deed.Next))))
                open.Enqueue((deed.Next, at.From, [.. at.Way, deed.Handling]));
        }

        return false;
    }

    private (List<Handling> Way, int To)? Back(int[] from, int at)
    {
        var goals = new Dictionary<Positions, int>();
        for (var i = Math.Min(states.Count - 1, at + LongestPiece); i >= at; i--)
            goals[new(states[i])] = i;
        var seen = new HashSet<Positions> { new(from) };
        var open = new Queue<(int[] State, List<Handling> Way)>([(from, [])]);
        while (open.TryDequeue(out var here) && seen.Count < MostBack)
        {
            if (goals.TryGetValue(new(here.State), out var to))
                return (here.Way, to);
            foreach (var deed in machine.Deeds(here.State).Where(deed => !deed.Handling.MustHold && seen.Add(new(deed.Next))))
                open.Enqueue((deed.Next, [.. here.Way, deed.Handling]));
        }

        return null;
    }

    private void LeaveOutPieces()
    {
        for (var length = Math.Min(LongestPiece, walk.Count); length > 0; length--)
        {
            for (var i = 0; i + length <= walk.Count && !budget.Spent(0, 0, 0);)
            {
                if (!Instead(i, i + length, []))
                    i++;
            }
        }
    }

    private void TakeShortWays()
    {
        for (var i = 0; i < walk.Count && !budget.Spent(0, 0, 0); i++)
        {
            var last = new Dictionary<Positions, int>();
            for (var j = i + 2; j < states.Count && j <= i + LongestPiece; j++)
                last[new Positions(states[j])] = j;
            foreach (var (way, to) in Nearby(states[i], last, i))
            {
                if (Instead(i, to, way))
                    break;
            }
        }
    }

    // Whether a piece of the walk can be replaced; then it is.
    private bool Instead(int from, int to, List<Handling> way)
    {
        var (state, done) = (states[from], (bool[])before[from].Clone());
        foreach (var handling in way)
        {
            if (!Do(handling))
                return false;
        }

        // As soon as the box stands as it did on the way before, all that follows is possible.
        var on = to;
        for (; on < walk.Count && !state.AsSpan().SequenceEqual(states[on]); on++)
        {
            if (!Do(walk[on]))
                return false;
        }

        if ((home && on == walk.Count && !machine.IsHome(state)) || wanted.Any(duty => !done[duty] && !behind[on][duty]))
            return false;
        Keep([.. walk[..from], .. way, .. walk[to..]]);
        return true;

        bool Do(Handling handling)
        {
            if (machine.Do(handling, state) is not { } deed)
                return false;
            TourMachine.Mark(deed, done);
            state = deed.Next;
            return true;
        }
    }

    private void Keep(List<Handling> kept)
    {
        walk = kept;
        (states, before, behind) = ([machine.Start], [new bool[machine.Duties.Length]], [new bool[machine.Duties.Length]]);
        var deeds = new List<Deed>();
        foreach (var handling in walk)
        {
            var deed = machine.Do(handling, states[^1]) ?? throw new InvalidOperationException("a walk that was possible isn't any more");
            deeds.Add(deed);
            states.Add(deed.Next);
            before.Add((bool[])before[^1].Clone());
            TourMachine.Mark(deed, before[^1]);
        }

        for (var i = walk.Count - 1; i >= 0; i--)
        {
            behind.Add((bool[])behind[^1].Clone());
            TourMachine.Mark(deeds[i], behind[^1]);
        }

        behind.Reverse();
    }

    private IEnumerable<(List<Handling> Way, int To)> Nearby(int[] from, Dictionary<Positions, int> last, int at)
    {
        var ways = new Dictionary<Positions, List<Handling>> { [new(from)] = [] };
        var open = new Queue<int[]>([from]);
        while (open.TryDequeue(out var state) && ways.Count < MostNearby)
        {
            foreach (var deed in machine.Deeds(state).Where(deed => !deed.Handling.MustHold))
            {
                List<Handling> way = [.. ways[new(state)], deed.Handling];
                if (!ways.TryAdd(new(deed.Next), way))
                    continue;
                open.Enqueue(deed.Next);
                if (last.TryGetValue(new(deed.Next), out var to) && to - at > way.Count)
                    yield return (way, to);
            }
        }
    }
}
