using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Packed;

namespace HintBook.Mechanism.Places;

/// <summary>
/// How long a solver stands in each state: a walk with fixed random numbers, that goes on to a next stage, with handling on the way, and makes one
/// act in four at random. A tenth is spread evenly, so that no state counts for nothing.
/// </summary>
/// <param name="graph">The states.</param>
/// <param name="cost">The least cost from each state to the goal.</param>
/// <param name="stepCost">What an act costs, by state and edge.</param>
/// <param name="next">The stages that are next.</param>
internal sealed class SeededWalk(StateGraph graph, int[] cost, Func<int, int, int> stepCost, Bits[] next)
{
    private const int Walks = 200;
    private const int LongestWalk = 2_000;
    private const double HandlingMinutes = 0.5;
    private const double UsualMinutes = 10;
    private ulong random = 0x9E3779B97F4A7C15;

    /// <summary>The minutes spent in each state.</summary>
    public double[] Weights()
    {
        var toNext = StepsToNext();
        var minutes = new double[graph.Count];
        Span<int> choices = stackalloc int[256];
        for (var walk = 0; walk < Walks; walk++)
        {
            var state = 0;
            for (var step = 0; step < LongestWalk && !graph.Solved[state] && graph.From[state] < graph.From[state + 1]; step++)
            {
                var edge = Random(4) == 0 ? Any(state) : Onward(state, toNext, choices);
                var stage = graph.Machine.Acts[graph.By[edge]].Stage;
                var goesOn = stage >= 0 && next[state][stage] && cost[graph.To[edge]] < cost[state];
                minutes[state] += goesOn ? graph.Machine.Book.Stages[stage].Minutes ?? UsualMinutes : HandlingMinutes;
                // A stray act into a dead end is taken back by nobody; this solver stays out of it.
                if (cost[graph.To[edge]] != int.MaxValue)
                    state = graph.To[edge];
            }
        }

        var live = 0;
        var sum = 0.0;
        for (var state = 0; state < graph.Count; state++)
        {
            live += cost[state] != int.MaxValue && !graph.Solved[state] ? 1 : 0;
            sum += minutes[state];
        }

        for (var state = 0; state < graph.Count; state++)
            minutes[state] = (0.9 * minutes[state] / Math.Max(1, sum)) + (0.1 / Math.Max(1, live));
        return minutes;
    }

    private int Any(int state) => graph.From[state] + Random(graph.From[state + 1] - graph.From[state]);

    // One of the acts that bring the next stage nearer, or that are its move.
    private int Onward(int state, int[] toNext, Span<int> choices)
    {
        var count = 0;
        for (var e = graph.From[state]; e < graph.From[state + 1] && count < choices.Length; e++)
        {
            var to = graph.To[e];
            if (cost[to] < cost[state] || (cost[to] == cost[state] && stepCost(state, e) == 0 && toNext[to] < toNext[state]))
                choices[count++] = e;
        }

        return count == 0 ? Any(state) : choices[Random(count)];
    }

    // How many acts that cost nothing lead to one that brings the goal nearer; backwards, layer by layer.
    private int[] StepsToNext()
    {
        var steps = new int[graph.Count];
        for (var state = 0; state < graph.Count; state++)
        {
            steps[state] = graph.Solved[state] ? 0 : int.MaxValue;
            for (var e = graph.From[state]; e < graph.From[state + 1] && steps[state] > 0; e++)
            {
                if (cost[graph.To[e]] < cost[state])
                    steps[state] = 0;
            }
        }

        for (var (changed, reach) = (true, 0); changed; reach++)
        {
            changed = false;
            for (var state = 0; state < graph.Count; state++)
            {
                if (steps[state] != int.MaxValue)
                    continue;
                for (var e = graph.From[state]; e < graph.From[state + 1]; e++)
                {
                    if (steps[graph.To[e]] == reach && cost[graph.To[e]] == cost[state] && stepCost(state, e) == 0)
                    {
                        (steps[state], changed) = (reach + 1, true);
                        break;
                    }
                }
            }
        }

        return steps;
    }

    // xorshift64* (from memory): the same numbers on every machine.
    private int Random(int below)
    {
        random ^= random >> 12;
        random ^= random << 25;
        random ^= random >> 27;
        return (int)((unchecked(random * 0x2545F4914F6CDD1D) >> 33) % (ulong)below);
    }
}
