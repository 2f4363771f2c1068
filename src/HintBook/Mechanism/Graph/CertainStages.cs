using System.Collections.Immutable;
using System.Numerics;

namespace HintBook.Mechanism.Graph;

/// <summary>
/// Which stages have been done on every way to a gain. These are the causal landmarks of the graph without losses: the greatest
/// solution of "what leads here on every way is what leads to the wants, plus the stage itself" (Keyder, Richter and Helmert,
/// "Sound and complete landmarks for and/or graphs", 2010). A stage that is certain here is certain in the box too.
/// </summary>
internal sealed class CertainStages
{
    private readonly GainGraph graph;

    // One bit for each stage; null while nothing is known, which counts as "everything".
    private readonly BigInteger?[] before;

    private CertainStages(GainGraph graph)
    {
        this.graph = graph;
        before = new BigInteger?[graph.Count];
    }

    /// <summary>Works through the steps that can be taken until nothing changes any more.</summary>
    public static CertainStages In(GainGraph graph, GainReachability whole)
    {
        var certain = new CertainStages(graph);
        var reachable = whole.Order.ToHashSet();
        foreach (var gain in graph.AtStart)
            certain.before[gain] = BigInteger.Zero;

        var open = new Queue<int>(whole.Order);
        var waiting = whole.Order.ToHashSet();
        while (open.TryDequeue(out var step))
        {
            waiting.Remove(step);
            foreach (var gain in certain.Narrowed(graph.Steps[step]))
            {
                foreach (var other in graph.Wanting[gain].Where(other => reachable.Contains(other) && waiting.Add(other)))
                    open.Enqueue(other);
            }
        }

        return certain;
    }

    /// <summary>The stages done on every way to a want, as bits; null if no way leads there.</summary>
    public BigInteger? Before(Want want) => want.Fold(
        gain => before[gain],
        all => all.Aggregate((BigInteger?)BigInteger.Zero, (sum, one) => sum | one),
        any => any.Aggregate((BigInteger?)null, (common, one) => common is null ? one : one is null ? common : common & one));

    /// <summary>The stages whose bits are set, in the author's order.</summary>
    public static ImmutableArray<int> Indices(BigInteger bits)
    {
        var indices = ImmutableArray.CreateBuilder<int>();
        var bytes = bits.ToByteArray(isUnsigned: true);
        for (var i = 0; i < bytes.Length; i++)
        {
            for (var rest = bytes[i]; rest != 0; rest &= (byte)(rest - 1))
                indices.Add((8 * i) + BitOperations.TrailingZeroCount(rest));
        }

        return indices.ToImmutable();
    }

    public static bool Has(BigInteger bits, int stage) => !((bits >> stage) & BigInteger.One).IsZero;

    private List<int> Narrowed(GainStep step)
    {
        var changed = new List<int>();
        if (Before(step.Wants) is not { } here)
            return changed;
        if (step.Stage is { } stage)
            here |= BigInteger.One << stage;
        foreach (var gain in step.Gains)
        {
            var now = before[gain] is { } known ? known & here : here;
            if (now == before[gain])
                continue;
            before[gain] = now;
            changed.Add(gain);
        }

        return changed;
    }
}
