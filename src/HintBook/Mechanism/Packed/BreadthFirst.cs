using System.Runtime.CompilerServices;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// All states that can be reached, without the acts between them: each is a number of at most <see cref="VisitedSet.MostBits"/> bits, kept once in
/// the order of its distance, and in the set of those seen. A shortest way is found back layer by layer. Which way that is depends on
/// nothing but the box, however many cores there were: of all states that lead on it takes the one with the least number.
/// </summary>
internal sealed class BreadthFirst
{
    private const int Block = 4096;
    private const int ManyForOneCore = 4096;
    private const int BlockOfACore = 32768;
    private const long LikelySuccessors = 1;
    private const int FewToExpand = 64;
    private readonly Machine machine;
    private readonly Layout layout;
    private readonly Budget budget;
    private readonly VisitedSet seen;
    private readonly PackedNumberList states;
    private readonly ChunkedList<int> layers = new();
    private readonly Expander[] expanders;

    private BreadthFirst(Machine machine, Layout layout, Budget budget, int cores)
    {
        (this.machine, this.layout, this.budget) = (machine, layout, budget);
        seen = new VisitedSet(layout.Bits);
        states = new PackedNumberList(layout.Bits);
        expanders = [.. Enumerable.Range(0, cores).Select(_ => new Expander(machine, layout))];
    }

    /// <summary>How many states there are.</summary>
    public int Count => states.Count;

    /// <summary>How many layers: the greatest distance, and one.</summary>
    public int Layers => layers.Count - 1;

    /// <summary>Bytes held for states, layers and what has been seen.</summary>
    public long Bytes => states.Bytes + layers.Bytes + seen.Bytes;

    /// <summary>Why it isn't all there, or null if it is.</summary>
    public string? Stopped { get; private set; }

    /// <summary>The distance of the nearest solved state, or -1.</summary>
    public int GoalDepth { get; private set; } = -1;

    /// <summary>Explores; null where states are too wide for it, or the box has reactions that can disagree.</summary>
    /// <param name="machine">What to explore.</param>
    /// <param name="budget">What it may use.</param>
    /// <param name="most">How many states may be stored at the most.</param>
    /// <param name="untilSolved">Whether to end with the first layer that has a solved state.</param>
    /// <param name="cores">How many threads may work at wide layers.</param>
    public static BreadthFirst? Explore(Machine machine, Budget budget, int most = int.MaxValue, bool untilSolved = false, int cores = 1)
    {
        if (machine.Refused is not null
            || ReactionConflicts.Any(machine)
            || Layout.Build(machine.Variables, Word64.WordBits) is not { } layout
            || layout.Bits > VisitedSet.MostBits)
        {
            return null;
        }

        var reach = new BreadthFirst(machine, layout, budget, cores);
        reach.Run(most, untilSolved);
        budget.Add(reach.Count);
        return reach;
    }

    /// <summary>How many states have a distance.</summary>
    public int CountAt(int depth) => layers[depth + 1] - layers[depth];

    /// <summary>A shortest way to the goal, or null if none was reached.</summary>
    public List<int>? WayToGoal()
    {
        if (GoalDepth < 0)
            return null;
        var target = ulong.MaxValue;
        for (var i = layers[GoalDepth]; i < layers[GoalDepth + 1]; i++)
        {
            if (states[i] < target && layout.Holds(new Word64(states[i]), machine.Goal))
                target = states[i];
        }

        var way = new List<int>();
        var origins = new Predecessors(machine, layout);
        for (var depth = GoalDepth; depth > 0; depth--)
        {
            var (before, act) = Before(origins, target, layers[depth - 1], layers[depth]);
            way.Add(act);
            target = before;
        }

        way.Reverse();
        return way;
    }

    private void Run(int most, bool untilSolved)
    {
        var start = layout.Pack<Word64>([.. machine.Start]);
        if (!expanders[0].Settle(ref start))
        {
            Stopped = Expander.NoRest;
            return;
        }

        seen.Add(start.Word);
        states.Add(start.Word);
        layers.Add(0);
        for (var (first, end) = (0, 1); first < end; (first, end) = (end, states.Count))
        {
            layers.Add(end);
            if (GoalDepth < 0 && Solved(first, end))
                GoalDepth = layers.Count - 2;
            if (untilSolved && GoalDepth >= 0)
                return;
            if (!Expand(first, end, most))
                return;
        }
    }

    private bool Solved(int first, int end)
    {
        for (var i = first; i < end; i++)
        {
            if (layout.Holds(new Word64(states[i]), machine.Goal))
                return true;
        }

        return false;
    }

    private bool Expand(int first, int end, int most)
    {
        for (var at = first; at < end;)
        {
            if ((layers.Count & 1023) == 0 || end - first > Block)
            {
                Stopped = states.Count > most ? $"it has more than {most} states" : budget.Spent(states.Count, end - first, Bytes) ? budget.Why : null;
                if (Stopped is not null)
                    return false;
            }

            var stop = Math.Min(end, at + (expanders.Length > 1 && end - at > ManyForOneCore ? BlockOfACore * expanders.Length : Block));
            if (stop - at > ManyForOneCore && expanders.Length > 1)
                at = Together(at, stop);
            else
                at = Alone(at, stop);
            if (at < 0)
            {
                Stopped = Expander.NoRest;
                return false;
            }
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Alone(int from, int stop)
    {
        var expander = expanders[0];
        var room = seen.Room - states.Count;
        for (var i = from; i < stop; i++)
        {
            var count = expander.Of(states[i]);
            if (count < 0)
                return -1;
            for (var s = 0; s < count; s++)
            {
                var next = expander.Next[s].Word;
                var met = room <= 0 ? VisitedSet.Met.NoRoom : seen.Add(next);
                while (met == VisitedSet.Met.NoRoom)
                {
                    seen.Grow();
                    room = seen.Room - states.Count;
                    met = seen.Add(next);
                }

                if (met != VisitedSet.Met.First)
                    continue;
                states.Add(next);
                room--;
            }
        }

        return stop;
    }

    // Each core takes a part. There is mostly room enough; a state whose successors found no room is expanded again after the set has grown.
    private int Together(int from, int stop)
    {
        var cores = expanders.Length;
        while (seen.Room - states.Count < LikelySuccessors * (stop - from))
            seen.Grow();
        var room = Math.Max(0, (seen.Room - states.Count) / cores);
        var size = (stop - from + cores - 1) / cores;
        var others = Enumerable.Range(1, cores - 1).Select(core => Task.Run(() => Part(core))).ToArray();
        Part(0);
        Task.WaitAll(others);
        foreach (var expander in expanders)
        {
            foreach (var found in expander.Found)
                states.Add(found);
        }

        if (Array.Exists(expanders, expander => expander.Restless))
            return -1;
        if (expanders.All(expander => expander.Left.Count == 0))
            return stop;
        seen.Grow();
        foreach (var i in expanders.SelectMany(expander => expander.Left).ToList())
        {
            if (Alone(i, i + 1) < 0)
                return -1;
        }

        return stop;

        void Part(int core) => expanders[core].Part(states, from + (core * size), Math.Min(stop, from + ((core + 1) * size)), seen, room);
    }

    private (ulong State, int Act) Before(Predecessors origins, ulong target, int first, int end)
    {
        var least = ulong.MaxValue;
        if (end - first > FewToExpand && origins.Of(target) is { } candidates)
        {
            for (var i = first; i < end; i++)
            {
                if (states[i] < least && candidates.Contains(states[i]) && Leads(states[i], target) >= 0)
                    least = states[i];
            }
        }
        else
        {
            for (var i = first; i < end; i++)
            {
                if (states[i] < least && Leads(states[i], target) >= 0)
                    least = states[i];
            }
        }

        return (least, Leads(least, target));
    }

    // The first act of the book that leads from one state to another, or -1.
    private int Leads(ulong from, ulong to)
    {
        var expander = expanders[0];
        var count = expander.Of(from);
        var act = -1;
        for (var s = 0; s < count; s++)
        {
            if (expander.Next[s].Word == to && (act < 0 || expander.Acts[s] < act))
                act = expander.Acts[s];
        }

        return act;
    }
}
