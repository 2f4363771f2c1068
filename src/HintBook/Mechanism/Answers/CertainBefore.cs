using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What has been attained on every way to a state: its own positions, and what had been attained on every way to each state before it,
/// with the act in between. The greatest solution of these equations is exact (meet over all paths; Kam and Ullman 1977: the functions
/// only add, so they distribute over intersection). Where states stand for all that differ from them by exchanges, the first of a class stands for any of
/// it, and the first image of an act for all of them. Memory: states × attainable things / 4 bits; time: a few passes over the acts.
/// </summary>
internal static class CertainBefore
{
    /// <summary>By stage, and for the goal; null where memory or time did not suffice. What can't be reached has everything before it.</summary>
    public static (Bits[] Stages, Bits Goal)? On(StateGraph graph, Budget budget)
    {
        if (Rows(graph, budget, cutAtGoal: false) is not { } rows)
            return null;
        var (attained, words) = rows;
        var count = new Attainable(graph.Machine).Count;
        var stages = graph.Machine.StageActs.Select(_ => Bits.All(count)).ToArray();
        var goal = Bits.All(count);
        for (var state = 0; state < graph.Count; state++)
        {
            var row = attained.AsSpan(state * words, words);
            if (graph.Solved[state])
                goal.And(row);
            for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
            {
                if (graph.Machine.Acts[graph.By[e]].Stage is >= 0 and var stage)
                    stages[stage].And(row);
            }
        }

        return (stages, goal);
    }

    /// <summary>
    /// What is certain in each state, a row of words each; a state that can't be reached has everything. Null where memory or time did not suffice.
    /// </summary>
    /// <param name="graph">The states.</param>
    /// <param name="budget">What may be used.</param>
    /// <param name="cutAtGoal">Whether ways end as soon as the box is solved.</param>
    public static (ulong[] Rows, int Words)? Rows(StateGraph graph, Budget budget, bool cutAtGoal)
    {
        var things = new Attainable(graph.Machine);
        var words = (things.Count + 63) / 64;
        var bytes = (long)graph.Count * words * sizeof(ulong) * 2;
        if (budget.Spent(0, 0, graph.Bytes + bytes) || (long)graph.Count * words > int.MaxValue / 2)
            return null;

        var own = new ulong[graph.Count * words];
        for (var state = 0; state < graph.Count; state++)
        {
            for (var v = 0; v < graph.Machine.Variables.Length; v++)
            {
                if (graph.Machine.Variables[v].Named is not null)
                    Set(own, state, things.Of(graph.Alike?.Leader(v) ?? v, graph.Position(state, v)));
            }
        }

        var attained = new ulong[own.Length];
        Array.Fill(attained, ulong.MaxValue);
        own.AsSpan(0, words).CopyTo(attained);
        var line = new ulong[words];
        int[] by = [.. graph.Possible.Select((_, act) => graph.Alike?.Images(act)[0] ?? act)];
        for (var changed = true; changed;)
        {
            changed = false;
            for (var state = 0; state < graph.Count; state++)
            {
                if ((state & 0xFFFF) == 0 && budget.Spent(0, 0, bytes))
                    return null;
                if (cutAtGoal && graph.Solved[state])
                    continue;
                for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
                {
                    attained.AsSpan(state * words, words).CopyTo(line);
                    line[by[graph.By[e]] >> 6] |= 1UL << (by[graph.By[e]] & 63);
                    changed |= Meet(line, graph.To[e]);
                }
            }
        }

        return (attained, words);

        void Set(ulong[] rows, int state, int number) => rows[(state * words) + (number >> 6)] |= 1UL << (number & 63);

        bool Meet(ulong[] from, int state)
        {
            var changed = false;
            for (var w = 0; w < words; w++)
            {
                ref var old = ref attained[(state * words) + w];
                var met = old & (from[w] | own[(state * words) + w]);
                changed |= met != old;
                old = met;
            }

            return changed;
        }
    }
}
