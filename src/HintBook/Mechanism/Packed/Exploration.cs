using System.Collections;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>Explores a machine frontier by frontier.</summary>
internal static class Exploration
{
    // A state with its acts takes about four times as long as one without, and reading the answers off takes about nine bytes more of each.
    private const int EachCounts = 4;
    private const long BytesToRead = 9;
    private const int Stride = 1024;
    private const int MostEdges = 1 << 30;

    /// <summary>The whole graph, in states as narrow as the box allows.</summary>
    /// <param name="machine">What to explore.</param>
    /// <param name="budget">What it may use.</param>
    /// <param name="starts">The positions to start from; none for the shipped box.</param>
    /// <param name="most">How many states may be stored at the most.</param>
    /// <param name="alike">What can be exchanged: of states that differ only by exchanges one stands for all. Null: each state stands for itself.</param>
    public static StateGraph Whole(
        Machine machine, Budget budget, IReadOnlyList<int[]>? starts = null, int most = int.MaxValue, Symmetry? alike = null)
    {
        starts ??= [[.. machine.Start]];
        if (Layout.Build(machine.Variables, Word32.WordBits) is { Bits: <= 32 } half)
            return Of<Word32>(machine, half, budget, starts, most, alike);
        return Layout.Build(machine.Variables, Word64.WordBits) switch
        {
            { Bits: <= 64 } layout => Of<Word64>(machine, layout, budget, starts, most, alike),
            { Bits: <= 128 } layout => Of<Word128>(machine, layout, budget, starts, most, alike),
            var layout => Of<WordMany>(machine, layout, budget, starts, most, alike),
        };
    }

    private static StateGraph Of<T>(Machine machine, Layout layout, Budget budget, IReadOnlyList<int[]> starts, int most, Symmetry? alike)
        where T : struct, IPackedState<T>
    {
        var table = new StateTable<T>();
        var (from, to, by) = (new ChunkedList<int>(), new ChunkedList<int>(), new ChunkedList<int>());
        var layers = new List<int> { 0 };
        var possible = new bool[machine.Acts.Length];
        var (stopped, unrest) = (machine.Refused, default(ReactionFault));
        if (layout.Bits > T.Bits)
            stopped ??= "its parts have more positions together than one state can hold";
        if (stopped is null)
            Run();
        if (layers[^1] != table.States.Count)
            layers.Add(table.States.Count);
        budget.Add(table.States.Count, EachCounts);
        for (var act = 0; alike is not null && act < possible.Length; act++)
            possible[act] = alike.Images(act).Any(image => possible[image]);
        var graph = new StateGraph
        {
            Machine = machine,
            Alike = alike,
            Count = table.States.Count,
            Bytes = table.Bytes + from.Bytes + to.Bytes + by.Bytes,
            From = from,
            To = to,
            By = by,
            Possible = possible,
            Layers = layers,
            Position = (state, variable) => layout.At(table.States[state], variable),
            Solved = new BitArray(table.States.Count),
            Stopped = stopped,
            Unrest = unrest,
        };
        for (var state = 0; state < graph.Count; state++)
            graph.Solved[state] = layout.Holds(table.States[state], machine.Goal);
        return graph;

        void Run()
        {
            var successors = new Successors<T>(machine, layout);
            var settling = new Settling<T>(machine, layout);
            var representatives = alike is null ? null : new Representatives<T>(layout, alike);
            var next = new T[successors.Most];
            var acts = new int[successors.Most];
            foreach (var start in starts)
            {
                var state = layout.Pack<T>(start);
                if (Settled(ref state, [], settling))
                    table.Add(representatives is null ? state : representatives.Of(state));
            }

            from.Add(0);
            for (var end = table.States.Count; unrest is null && layers[^1] < end; end = table.States.Count)
            {
                for (var number = layers[^1]; number < end; number++)
                {
                    if (table.States.Count > most || to.Count > MostEdges)
                    {
                        stopped = $"it has more than {table.States.Count - 1} states";
                        layers.Add(end);
                        return;
                    }

                    if (number % Stride == 0 && budget.Spent(table.States.Count, end - layers[^1], Bytes(), EachCounts))
                    {
                        stopped = budget.Why;
                        layers.Add(end);
                        return;
                    }

                    var state = table.States[number];
                    var count = successors.Of(state, next, acts);
                    for (var i = 0; i < count; i++)
                    {
                        possible[acts[i]] = true;
                        if (settling.MayFollow(acts[i]) && !Settled(ref next[i], [number, acts[i]], settling))
                        {
                            from.Add(to.Count);
                            layers.Add(end);
                            return;
                        }

                        if (representatives is not null)
                            next[i] = representatives.Of(next[i]);
                        if (next[i].Equals(state) && machine.Acts[acts[i]].Stage < 0)
                            continue;
                        to.Add(table.Add(next[i]));
                        by.Add(acts[i]);
                    }

                    from.Add(to.Count);
                }

                layers.Add(end);
            }
        }

        long Bytes() => table.BytesToGrow + from.Bytes + to.Bytes + by.Bytes + (table.States.Count * BytesToRead);

        bool Settled(ref T state, int[] last, Settling<T> settling)
        {
            var moved = state;
            var rest = settling.Settle(ref state);
            if (rest == Rest.Settled)
                return true;
            stopped = rest == Rest.Loops ? "its reactions never settle" : "its reactions disagree";
            unrest = new ReactionFault(
                rest,
                last is [var number, var act] ? [.. WayTo(number), act] : [],
                [.. settling.Ready(moved)],
                [.. Enumerable.Range(0, machine.Variables.Length).Select(v => layout.At(moved, v))]);
            return false;
        }

        List<int> WayTo(int number)
        {
            var known = new StateGraph
            {
                Machine = machine,
                Count = number + 1,
                Bytes = 0,
                From = from,
                To = to,
                By = by,
                Possible = possible,
                Layers = [.. layers, table.States.Count],
                Position = (_, _) => 0,
                Solved = new BitArray(0),
            };
            return known.WayTo(number);
        }
    }
}
