using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>The states of a box that a planner of walks has met, by number, with what can be done in each: worked out once, when it is asked for.</summary>
/// <param name="machine">The box.</param>
internal sealed class TourStates(TourMachine machine)
{
    private readonly List<int[]> states = [];
    private readonly List<Edge[]?> edges = [];
    private readonly Dictionary<Positions, int> numbers = [];
    private readonly List<Edge> found = [];

    // By state and act: 0 for what hasn't been asked yet, -1 for what isn't possible, or else the place of the edge and one more.
    private readonly List<int[]?> made = [];

    /// <summary>Something that can be done in a state.</summary>
    /// <param name="Deed">What is done.</param>
    /// <param name="To">The number of the state after it.</param>
    public readonly record struct Edge(Deed Deed, int To);

    /// <summary>How many states there are so far.</summary>
    public int Count => states.Count;

    /// <summary>A state.</summary>
    public int[] this[int number] => states[number];

    /// <summary>The number of a state; of one that hasn't been met yet, the next.</summary>
    public int NumberOf(int[] state)
    {
        var key = new Positions(state);
        if (!numbers.TryGetValue(key, out var number))
        {
            numbers[key] = number = states.Count;
            states.Add(state);
            edges.Add(null);
            made.Add(null);
        }

        return number;
    }

    /// <summary>All that can be done in a state, what must hold first.</summary>
    public Edge[] From(int number) => edges[number] ??= [.. machine.Deeds(states[number]).Select(Met)];

    /// <summary>The number of the edge that an act makes from a state; -1 if it isn't possible.</summary>
    public int Do(int number, int act)
    {
        var known = made[number] ??= new int[machine.Back.Acts.Length];
        if (known[act] == 0)
        {
            var deed = machine.Do(new Handling(act), states[number]);
            if (deed is { } possible)
                found.Add(Met(possible));
            known[act] = deed is null ? -1 : found.Count;
        }

        return known[act] < 0 ? -1 : known[act] - 1;
    }

    /// <summary>An edge by its number.</summary>
    public Edge Made(int edge) => found[edge];

    private Edge Met(Deed deed)
    {
        var to = NumberOf(deed.Next);
        return new(deed with { Next = states[to] }, to);
    }
}
