using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// All states that can be reached and all acts between them, states numbered in the order of their distance from the start. An act that
/// changes nothing is kept only if it is a stage's move, since there it still says that the stage is open. Where alike things can be exchanged,
/// one state may stand for all that differ from it by exchanges; an act between two of them then stands for all its images.
/// </summary>
internal sealed class StateGraph
{
    /// <summary>What was explored.</summary>
    public required Machine Machine { get; init; }

    /// <summary>What can be exchanged, where one state stands for all that differ from it by exchanges; null where each stands for itself.</summary>
    public Symmetry? Alike { get; init; }

    /// <summary>How many states are stored.</summary>
    public required int Count { get; init; }

    /// <summary>Bytes that it holds.</summary>
    public required long Bytes { get; init; }

    /// <summary>Where each state's acts begin in <see cref="To"/> and <see cref="By"/>; one entry more than there are states expanded.</summary>
    public required ChunkedList<int> From { get; init; }

    /// <summary>Where an act leads.</summary>
    public required ChunkedList<int> To { get; init; }

    /// <summary>Which act it is.</summary>
    public required ChunkedList<int> By { get; init; }

    /// <summary>By act: whether it, or an image of it, was possible in some state.</summary>
    public required bool[] Possible { get; init; }

    /// <summary>The number of the first state of each layer, and at the end the count.</summary>
    public required IReadOnlyList<int> Layers { get; init; }

    /// <summary>The position of a variable in a state.</summary>
    public required Func<int, int, int> Position { get; init; }

    /// <summary>Whether the box is solved in a state.</summary>
    public required System.Collections.BitArray Solved { get; init; }

    /// <summary>Why it isn't all there, or null if it is.</summary>
    public string? Stopped { get; init; }

    /// <summary>The first state that has no rest, with the way to it, or null.</summary>
    public ReactionFault? Unrest { get; init; }

    /// <summary>The distance of a state from the start.</summary>
    public int Depth(int state)
    {
        var (low, high) = (0, Layers.Count - 1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (Layers[middle] <= state)
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    /// <summary>How many states of the machine those stored stand for.</summary>
    public BigInteger States => Alike is null
        ? Count
        : Enumerable.Range(0, Count).Aggregate(BigInteger.Zero, (sum, state) => sum + Alike.Stands(v => Position(state, v)));

    /// <summary>A way of the machine from acts that lead from state to state, starting at the first, which the machine's start belongs to.</summary>
    public List<int> Real(List<int> way) => Alike is null ? way : new RealWay(Machine, Alike).Of(way);

    /// <summary>A shortest way to a state, or to one that it stands for, found back layer by layer.</summary>
    public List<int> WayTo(int state)
    {
        var way = new List<int>();
        for (var depth = Depth(state); depth > 0; depth--)
        {
            var (before, by) = Before(state, Layers[depth - 1], Layers[depth]);
            way.Add(by);
            state = before;
        }

        way.Reverse();
        return Real(way);
    }

    private (int State, int By) Before(int target, int first, int end)
    {
        for (var state = first; state < end; state++)
        {
            for (var e = From[state]; e < From[state + 1]; e++)
            {
                if (To[e] == target)
                    return (state, By[e]);
            }
        }

        throw new InvalidOperationException("a state of a layer has no state before it");
    }
}

/// <summary>A state in which the box never comes to rest, or comes to rest in more ways than one.</summary>
/// <param name="Kind">Which of the two.</param>
/// <param name="Way">The acts that lead there.</param>
/// <param name="Rules">The reactions that are ready there.</param>
/// <param name="Positions">The position of every variable there, before the reactions.</param>
internal sealed record ReactionFault(Rest Kind, List<int> Way, int[] Rules, int[] Positions);
