namespace HintBook.Maps;

/// <summary>Orders the vertices of each row so that few edges cross.</summary>
internal static class Crossings
{
    private const int MostSweeps = 24;
    private const int FewestSweeps = 4;
    private const int Work = 1_000_000;

    /// <summary>
    /// The rows from top to bottom, each from left to right: the best of some sweeps down and up by barycentres (Sugiyama, Tagawa
    /// and Toda 1981), each followed by swaps of neighbours. Ties keep the author's order. Large graphs get fewer sweeps.
    /// </summary>
    public static int[][] Order(Ranked graph)
    {
        var rows = AsMet(graph);
        var place = new int[graph.Count];
        foreach (var row in rows)
            Number(row, place);

        var sweeps = Math.Clamp(Work / Math.Max(1, graph.Count), FewestSweeps, MostSweeps);
        var (best, fewest) = (Copy(rows), Count(rows, graph, place));
        for (var sweep = 0; sweep < sweeps && fewest > 0; sweep++)
        {
            var down = sweep % 2 == 0;
            foreach (var row in down ? rows.Skip(1) : rows.Reverse().Skip(1))
                ByBarycentre(row, down ? graph.Above : graph.Below, place);
            if (sweeps == MostSweeps)
                SwapNeighbours(rows, graph, place);
            var crossings = Count(rows, graph, place);
            if (crossings < fewest)
                (best, fewest) = (Copy(rows), crossings);
        }

        return best;
    }

    /// <summary>How many pairs of edges cross. Time O(e log v), counting inversions with a tree of sums (Barth, Jünger and Mutzel 2002).</summary>
    public static long Count(int[][] rows, Ranked graph, int[] place)
    {
        var crossings = 0L;
        foreach (var (upper, lower) in rows.Zip(rows.Skip(1)))
        {
            var seen = new int[lower.Length + 1];
            var total = 0;
            foreach (var ends in upper.Select(vertex => graph.Below[vertex].ConvertAll(below => place[below])))
            {
                foreach (var end in ends)
                    crossings += total - UpTo(seen, end);
                foreach (var end in ends)
                    Add(seen, end);
                total += ends.Count;
            }
        }

        return crossings;
    }

    // Depth first from the top, so that what hangs together starts side by side.
    private static int[][] AsMet(Ranked graph)
    {
        var rows = Enumerable.Range(0, graph.Row.Max() + 1).Select(_ => new List<int>()).ToArray();
        var met = new bool[graph.Count];
        var todo = new Stack<int>();
        foreach (var start in Enumerable.Range(0, graph.Count).OrderBy(vertex => graph.Row[vertex]))
        {
            todo.Push(start);
            while (todo.TryPop(out var vertex))
            {
                if (met[vertex])
                    continue;
                met[vertex] = true;
                rows[graph.Row[vertex]].Add(vertex);
                foreach (var below in Enumerable.Reverse(graph.Below[vertex]))
                    todo.Push(below);
            }
        }

        return [.. rows.Select(row => row.ToArray())];
    }

    // A vertex without neighbours on that side keeps its place; the others share the places that are left.
    private static void ByBarycentre(int[] row, List<List<int>> neighbours, int[] place)
    {
        var sorted = new Queue<int>(row
            .Where(vertex => neighbours[vertex].Count > 0)
            .OrderBy(vertex => (double)neighbours[vertex].Sum(other => (long)place[other]) / neighbours[vertex].Count));
        for (var i = 0; i < row.Length; i++)
        {
            if (neighbours[row[i]].Count > 0)
                row[i] = sorted.Dequeue();
        }

        Number(row, place);
    }

    private static void SwapNeighbours(int[][] rows, Ranked graph, int[] place)
    {
        foreach (var row in rows)
        {
            for (var i = 0; i + 1 < row.Length; i++)
            {
                var (left, right) = (row[i], row[i + 1]);
                var gain = Gain(graph.Above[left], graph.Above[right], place) + Gain(graph.Below[left], graph.Below[right], place);
                if (gain <= 0)
                    continue;
                (row[i], row[i + 1]) = (right, left);
                (place[left], place[right]) = (place[right], place[left]);
            }
        }
    }

    private static int Gain(List<int> left, List<int> right, int[] place) =>
        left.Sum(l => right.Sum(r => place[l].CompareTo(place[r])));

    private static void Number(int[] row, int[] place)
    {
        for (var i = 0; i < row.Length; i++)
            place[row[i]] = i;
    }

    private static int[][] Copy(int[][] rows) => [.. rows.Select(row => (int[])row.Clone())];

    private static int UpTo(int[] sums, int index)
    {
        var sum = 0;
        for (var i = index + 1; i > 0; i -= i & -i)
            sum += sums[i];
        return sum;
    }

    private static void Add(int[] sums, int index)
    {
        for (var i = index + 1; i < sums.Length; i += i & -i)
            sums[i]++;
    }
}
