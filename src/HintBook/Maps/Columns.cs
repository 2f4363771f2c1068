namespace HintBook.Maps;

/// <summary>
/// Gives every vertex its place from left to right, so that long edges run straight and a box stands under the middle of
/// what leads to it (Brandes and Köpf 2001: four one-sided alignments and the mean of the middle two, with blocks compacted as
/// longest paths, so that boxes may be of any width).
/// </summary>
internal static class Columns
{
    private const double BoxGap = 30;
    private const double WayGap = 18;

    /// <summary>The middle of each vertex in pixels. Neighbours of a row never touch.</summary>
    public static double[] Place(int[][] rows, Ranked graph, double[] width)
    {
        var conflicts = Conflicts(rows, graph);
        var upward = rows.Reverse().ToArray();
        double[][] four =
        [
            Aligned(rows, graph.Above, graph, width, conflicts),
            Mirrored(Aligned(Flipped(rows), graph.Above, graph, width, conflicts)),
            Aligned(upward, graph.Below, graph, width, conflicts),
            Mirrored(Aligned(Flipped(upward), graph.Below, graph, width, conflicts)),
        ];

        var narrowest = four.MinBy(columns => columns.Max() - columns.Min())!;
        for (var i = 0; i < four.Length; i++)
        {
            var shift = i % 2 == 0 ? narrowest.Min() - four[i].Min() : narrowest.Max() - four[i].Max();
            four[i] = [.. four[i].Select(x => x + shift)];
        }

        var middle = new double[graph.Count];
        Span<double> sorted = stackalloc double[4];
        for (var vertex = 0; vertex < middle.Length; vertex++)
        {
            for (var i = 0; i < 4; i++)
                sorted[i] = four[i][vertex];
            sorted.Sort();
            middle[vertex] = (sorted[1] + sorted[2]) / 2;
        }

        return middle;
    }

    private static double[] Aligned(
        int[][] rows, List<List<int>> neighbours, Ranked graph, double[] width, HashSet<(int, int)> conflicts)
    {
        var place = Places(rows, graph.Count);
        var root = Enumerable.Range(0, graph.Count).ToArray();
        var taken = new bool[graph.Count];
        foreach (var row in rows)
        {
            var last = -1;
            foreach (var vertex in row)
            {
                var others = neighbours[vertex].OrderBy(other => place[other]).ToArray();
                for (var i = (others.Length - 1) / 2; i <= others.Length / 2 && i < others.Length; i++)
                {
                    var other = others[i];
                    if (root[vertex] != vertex || taken[other] || place[other] <= last || conflicts.Contains(Pair(vertex, other)))
                        continue;
                    root[vertex] = root[other];
                    taken[other] = true;
                    last = place[other];
                }
            }
        }

        return Compacted(rows, root, graph, width);
    }

    // Every block as far left as its left neighbours let it; then as far right as it can go without widening the drawing.
    private static double[] Compacted(int[][] rows, int[] root, Ranked graph, double[] width)
    {
        var right = new List<(int Block, double Gap)>?[root.Length];
        var left = new List<(int Block, double Gap)>?[root.Length];
        foreach (var row in rows)
        {
            for (var i = 0; i + 1 < row.Length; i++)
            {
                var gap = ((width[row[i]] + width[row[i + 1]]) / 2)
                    + (graph.IsWaypoint(row[i]) || graph.IsWaypoint(row[i + 1]) ? WayGap : BoxGap);
                (right[root[row[i]]] ??= []).Add((root[row[i + 1]], gap));
                (left[root[row[i + 1]]] ??= []).Add((root[row[i]], gap));
            }
        }

        var waiting = new int[root.Length];
        for (var block = 0; block < root.Length; block++)
            waiting[block] = left[block]?.Count ?? 0;
        var order = Enumerable.Range(0, root.Length).Where(vertex => root[vertex] == vertex && waiting[vertex] == 0).ToList();
        for (var i = 0; i < order.Count; i++)
            order.AddRange((right[order[i]] ?? []).Select(next => next.Block).Where(block => --waiting[block] == 0));

        var x = new double[root.Length];
        foreach (var block in order)
            x[block] = (left[block] ?? []).Select(before => x[before.Block] + before.Gap).DefaultIfEmpty(0).Max();
        foreach (var block in Enumerable.Reverse(order))
        {
            if (right[block] is { } after)
                x[block] = Math.Max(x[block], after.Min(next => x[next.Block] - next.Gap));
        }

        return [.. root.Select(block => x[block])];
    }

    // Edges that cross a stretch between two waypoints give way to it, so that long edges stay straight.
    private static HashSet<(int, int)> Conflicts(int[][] rows, Ranked graph)
    {
        var place = Places(rows, graph.Count);
        var conflicts = new HashSet<(int, int)>();
        foreach (var (upper, lower) in rows.Zip(rows.Skip(1)))
        {
            var (from, scanned) = (0, 0);
            for (var i = 0; i < lower.Length; i++)
            {
                var partner = graph.IsWaypoint(lower[i]) && graph.Above[lower[i]].Exists(graph.IsWaypoint) ? graph.Above[lower[i]].Find(graph.IsWaypoint) : -1;
                if (partner < 0 && i < lower.Length - 1)
                    continue;
                var to = partner < 0 ? upper.Length : place[partner];
                for (; scanned <= i; scanned++)
                {
                    foreach (var above in graph.Above[lower[scanned]])
                    {
                        var inner = graph.IsWaypoint(above) && graph.IsWaypoint(lower[scanned]);
                        if (!inner && (place[above] < from || place[above] > to))
                            conflicts.Add(Pair(above, lower[scanned]));
                    }
                }

                from = to;
            }
        }

        return conflicts;
    }

    private static (int, int) Pair(int one, int other) => (Math.Min(one, other), Math.Max(one, other));

    private static int[] Places(int[][] rows, int count)
    {
        var place = new int[count];
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Length; i++)
                place[row[i]] = i;
        }

        return place;
    }

    private static int[][] Flipped(int[][] rows) => [.. rows.Select(row => row.Reverse().ToArray())];

    private static double[] Mirrored(double[] columns) => [.. columns.Select(x => -x)];
}
