using System.Collections.Immutable;

namespace HintBook.Maps;

/// <summary>
/// Draws one piece of a graph in rows from top to bottom, in the steps of Sugiyama, Tagawa and Toda (1981): no circles, rows, few
/// crossings, columns, and then the edges, which bend only in the gaps between the rows and pass a row in a place of their own.
/// So no edge runs through a box.
/// </summary>
internal static class LayeredLayout
{
    // A box with its gap is about half again as wide as a row with its gap is high: as many in a row as there are rows make a sheet
    // of three to two.
    private const int LeastInRow = 6;

    private const double LeastGap = 46;
    private const double MostGap = 150;
    private const double GapForBend = 0.16;
    private const double PortGap = 14;
    private const double PortMargin = 14;

    /// <summary>The drawing with its upper left corner at 0, 0. Edges from a box to itself aren't allowed here.</summary>
    public static MapLayout Compute(ImmutableArray<Extent> boxes, ImmutableArray<(int From, int To)> edges)
    {
        var turned = Rows.Turned(boxes.Length, edges);
        var downward = edges.Select((edge, i) => turned[i] ? (edge.To, edge.From) : edge).ToArray();
        var widest = Math.Max(LeastInRow, (int)Math.Ceiling(Math.Sqrt(boxes.Length)));
        var graph = Ranked.Rank(Rows.Assign(boxes.Length, downward, widest), downward);
        var rows = Crossings.Order(graph);
        var width = new double[graph.Count];
        for (var box = 0; box < boxes.Length; box++)
            width[box] = boxes[box].Width;
        var middle = Columns.Place(rows, graph, width);
        var left = Enumerable.Range(0, graph.Count).Min(vertex => middle[vertex] - (width[vertex] / 2));
        middle = [.. middle.Select(x => x - left)];

        var ways = Ways(graph, middle, width);
        var bands = Bands(rows, boxes, graph, ways);
        var frames = boxes.Select((size, box) =>
        {
            var (top, bottom) = bands[graph.Row[box]];
            return new Frame(middle[box] - (size.Width / 2), (top + bottom - size.Height) / 2, size.Width, size.Height);
        }).ToImmutableArray();
        var routes = graph.Chains.Select((chain, edge) =>
        {
            var points = Points(chain, ways[edge], graph, bands, frames);
            return new Route([.. turned[edge] ? points.Reverse() : points]);
        });
        var right = Enumerable.Range(0, graph.Count).Max(vertex => middle[vertex] + (width[vertex] / 2));
        return new(new(right, bands[^1].Bottom), frames, [.. routes]);
    }

    // Where each edge crosses each of its rows: at its waypoint, and at a box in a port beside those of the box's other edges. Edges
    // that run together have one port.
    private static double[][] Ways(Ranked graph, double[] middle, double[] width)
    {
        var ways = graph.Chains.Select(chain => chain.Select(vertex => middle[vertex]).ToArray()).ToArray();
        var ends = graph.Chains.SelectMany((chain, edge) => new[]
        {
            (Box: chain[0], Below: true, Edge: edge, At: 0, Next: chain[1]),
            (Box: chain[^1], Below: false, Edge: edge, At: chain.Length - 1, Next: chain[^2]),
        });
        foreach (var side in ends.GroupBy(end => (end.Box, end.Below)))
        {
            var ports = side
                .GroupBy(end => (end.Next, Alone: graph.IsWaypoint(end.Next) ? -1 : end.Edge))
                .OrderBy(port => middle[port.Key.Next]).ThenBy(port => port.First().Edge).ToArray();
            var gap = Math.Min(PortGap, (width[side.Key.Box] - (2 * PortMargin)) / Math.Max(1, ports.Length - 1));
            for (var i = 0; i < ports.Length; i++)
            {
                foreach (var end in ports[i])
                    ways[end.Edge][end.At] += (i - ((ports.Length - 1) / 2.0)) * Math.Max(0, gap);
            }
        }

        return ways;
    }

    // The wider the widest bend between two rows, the more room it gets: in whole pixels, so that edges of boxes and bands meet exactly.
    private static (double Top, double Bottom)[] Bands(int[][] rows, ImmutableArray<Extent> boxes, Ranked graph, double[][] ways)
    {
        var widestBend = new double[rows.Length];
        for (var edge = 0; edge < ways.Length; edge++)
        {
            for (var i = 0; i + 1 < ways[edge].Length; i++)
            {
                var row = graph.Row[graph.Chains[edge][i]];
                widestBend[row] = Math.Max(widestBend[row], Math.Abs(ways[edge][i + 1] - ways[edge][i]));
            }
        }

        var bands = new (double Top, double Bottom)[rows.Length];
        var top = 0.0;
        for (var row = 0; row < rows.Length; row++)
        {
            var height = rows[row].Where(vertex => !graph.IsWaypoint(vertex)).Select(box => boxes[box].Height).DefaultIfEmpty(0).Max();
            bands[row] = (top, top + height);
            top += height + Math.Round(Math.Clamp(widestBend[row] * GapForBend, LeastGap, MostGap));
        }

        return bands;
    }

    private static IEnumerable<Point> Points(
        int[] chain, double[] way, Ranked graph, (double Top, double Bottom)[] bands, ImmutableArray<Frame> frames)
    {
        for (var i = 0; i < chain.Length; i++)
        {
            var (top, bottom) = bands[graph.Row[chain[i]]];
            if (i > 0)
                yield return new(way[i], top);
            if (i == 0 && frames[chain[i]].Bottom < bottom)
                yield return new(way[i], frames[chain[i]].Bottom);
            if (i < chain.Length - 1)
                yield return new(way[i], bottom);
            else if (frames[chain[i]].Top > top)
                yield return new(way[i], frames[chain[i]].Top);
        }
    }
}
