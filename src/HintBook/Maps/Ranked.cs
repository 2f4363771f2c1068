namespace HintBook.Maps;

/// <summary>
/// A graph whose edges all lead from one row to the next: where an edge passes a row, a waypoint of no width stands in it.
/// Vertices below <paramref name="Boxes"/> are the boxes, the others waypoints.
/// </summary>
/// <param name="Boxes">How many boxes there are.</param>
/// <param name="Row">The row of each vertex.</param>
/// <param name="Above">The neighbours of each vertex in the row above.</param>
/// <param name="Below">The neighbours of each vertex in the row below.</param>
/// <param name="Chains">For each edge its vertices from top to bottom.</param>
internal sealed record Ranked(int Boxes, List<int> Row, List<List<int>> Above, List<List<int>> Below, List<int[]> Chains)
{
    public int Count => Row.Count;

    public bool IsWaypoint(int vertex) => vertex >= Boxes;

    // From how many long edges of one box on they run together; fewer are easier to follow one by one.
    private const int Many = 6;

    /// <summary>
    /// Puts in the waypoints. Every edge must lead downward. Where many edges of one box pass rows, on the way to it or from it,
    /// they share one waypoint in each row, so that a wide fan takes no more room there than a single edge. A neighbour that is
    /// reached by several edges is listed as often.
    /// </summary>
    public static Ranked Rank(int[] row, IEnumerable<(int From, int To)> edges)
    {
        var graph = new Ranked(row.Length, [.. row], [.. row.Select(_ => new List<int>())], [.. row.Select(_ => new List<int>())], []);
        var all = edges.ToArray();
        var entering = all.Where(IsLong).CountBy(edge => edge.To).ToDictionary();
        var leaving = all.Where(IsLong).CountBy(edge => edge.From).ToDictionary();
        var shared = new Dictionary<(int Box, bool Leaving, int Row), int>();
        foreach (var edge in all)
        {
            var (from, to) = edge;
            var chain = new int[row[to] - row[from] + 1];
            (chain[0], chain[^1]) = (from, to);
            for (var i = 1; i < chain.Length - 1; i++)
                chain[i] = Waypoint(edge, row[from] + i);

            foreach (var (upper, lower) in chain.Zip(chain.Skip(1)))
            {
                graph.Below[upper].Add(lower);
                graph.Above[lower].Add(upper);
            }

            graph.Chains.Add(chain);
        }

        return graph;

        bool IsLong((int From, int To) edge) => row[edge.To] - row[edge.From] > 1;

        int Waypoint((int From, int To) edge, int here)
        {
            var outward = leaving[edge.From] > entering[edge.To];
            if (Math.Max(leaving[edge.From], entering[edge.To]) < Many)
                return graph.Add(here);
            var key = (outward ? edge.From : edge.To, outward, here);
            if (!shared.TryGetValue(key, out var waypoint))
                shared[key] = waypoint = graph.Add(here);
            return waypoint;
        }
    }

    private int Add(int row)
    {
        Row.Add(row);
        Above.Add([]);
        Below.Add([]);
        return Count - 1;
    }
}
