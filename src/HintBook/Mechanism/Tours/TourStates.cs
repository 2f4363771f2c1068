using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>The states of a box that a planner of walks has met, by number, with what can be done in each: worked out once, when it is asked for.</summary>
/// <param name="machine">The box.</param>
internal sealed class TourStates(TourMachine machine)
{
    private readonly List<int[]> states = [];
    private readonly List<Edge[]?> edges = [];
    private readonly Dictionary<Positions, int> numbers = [];
    private readonly Dictionary<(int State, int Act), Edge?> made = [];

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
        }

        return number;
    }

    /// <summary>All that can be done in a state, what must hold first.</summary>
    public Edge[] From(int number) => edges[number] ??= [.. machine.Deeds(states[number]).Select(Met)];

    /// <summary>What a handling that isn't only tried makes of a state; null if it isn't possible.</summary>
    public Edge? Do(int number, Handling handling)
    {
        if (!made.TryGetValue((number, handling.Act), out var edge))
            made[(number, handling.Act)] = edge = machine.Do(handling, states[number]) is { } deed ? Met(deed) : null;
        return edge;
    }

    private Edge Met(Deed deed)
    {
        var to = NumberOf(deed.Next);
        return new(deed with { Next = states[to] }, to);
    }
}
