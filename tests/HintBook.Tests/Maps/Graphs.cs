using System.Collections.Immutable;
using CsCheck;
using HintBook.Maps;

namespace HintBook.Tests.Maps;

/// <summary>Graphs to draw: boxes of random sizes, and random edges between them.</summary>
internal sealed record Graph(ImmutableArray<Extent> Boxes, ImmutableArray<(int From, int To)> Edges)
{
    public override string ToString() => $"{Boxes.Length} boxes, edges {string.Join(" ", Edges)}";
}

internal static class Graphs
{
    private static readonly Gen<Extent> Box = Gen.Select(Gen.Int[40, 220], Gen.Int[40, 90], (w, h) => new Extent(w, h));

    /// <summary>Any edges at all: circles, loops and repeats.</summary>
    public static readonly Gen<Graph> Any = Of((from, to) => (from, to));

    /// <summary>Edges from a lower number to a higher one.</summary>
    public static readonly Gen<Graph> WithoutCircles = Of((from, to) => from < to ? (from, to) : (to, from), loops: false);

    /// <summary>Every box but the first hangs on one before it.</summary>
    public static readonly Gen<Graph> Trees =
        from boxes in Box.Array[1, 40]
        from picks in Gen.Int[0, 1000].Array[boxes.Length - 1]
        select new Graph([.. boxes], [.. picks.Select((pick, i) => (pick % (i + 1), i + 1))]);

    private static Gen<Graph> Of(Func<int, int, (int, int)> edge, bool loops = true) =>
        from boxes in Box.Array[1, 40]
        from ends in Gen.Select(Gen.Int[0, boxes.Length - 1], Gen.Int[0, boxes.Length - 1]).Array[0, 70]
        select new Graph([.. boxes], [.. ends.Where(e => loops || e.Item1 != e.Item2).Select(e => edge(e.Item1, e.Item2))]);
}
