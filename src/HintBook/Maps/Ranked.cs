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

    /// <summary>Puts in the waypoints. Every edge must lead downward.</summary>
    public static Ranked Of(int[] row, IEnumerable<(int From, int To)> edges)
    {
        var graph = new Ranked(row.Length, [.. row], [.. row.Select(_ => new List<int>())], [.. row.Select(_ => new List<int>())], []);
        foreach (var (from, to) in edges)
        {
            var chain = new int[row[to] - row[from] + 1];
            (chain[0], chain[^1]) = (from, to);
            for (var i = 1; i < chain.Length - 1; i++)
            {
                chain[i] = graph.Count;
                graph.Row.Add(row[from] + i);
                graph.Above.Add([]);
                graph.Below.Add([]);
            }

            foreach (var (upper, lower) in chain.Zip(chain.Skip(1)))
            {
                graph.Below[upper].Add(lower);
                graph.Above[lower].Add(upper);
            }

            graph.Chains.Add(chain);
        }

        return graph;
    }
}
