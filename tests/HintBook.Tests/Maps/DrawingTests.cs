using CsCheck;
using HintBook.Maps;

namespace HintBook.Tests.Maps;

public class DrawingTests
{
    private const double Hair = 0.01;

    [Fact]
    public void Every_box_is_drawn_once_in_its_own_size() =>
        Graphs.Any.Sample(graph =>
            Assert.Equal(graph.Boxes, Draw(graph).Boxes.Select(frame => new Extent(frame.Width, frame.Height))));

    [Fact]
    public void No_two_boxes_overlap() =>
        Graphs.Any.Sample(graph =>
        {
            var frames = Draw(graph).Boxes;
            for (var one = 0; one < frames.Length; one++)
            {
                for (var other = 0; other < one; other++)
                    Assert.False(Overlap(frames[one], frames[other]), $"boxes {other} and {one} overlap");
            }
        });

    [Fact]
    public void Without_circles_every_edge_leads_downward() =>
        Graphs.WithoutCircles.Sample(graph =>
        {
            var drawing = Draw(graph);
            foreach (var ((from, to), route) in graph.Edges.Zip(drawing.Routes))
            {
                Assert.True(drawing.Boxes[from].Bottom < drawing.Boxes[to].Top);
                Assert.All(route.Points.Zip(route.Points.Skip(1)), step => Assert.True(step.First.Y < step.Second.Y));
            }
        });

    [Fact]
    public void Every_edge_leaves_its_first_box_and_enters_its_second() =>
        Graphs.Any.Sample(graph =>
        {
            var drawing = Draw(graph);
            foreach (var ((from, to), route) in graph.Edges.Zip(drawing.Routes).Where(pair => pair.First.From != pair.First.To))
            {
                Assert.True(TouchesFromOutside(drawing.Boxes[from], route.Points[0]));
                Assert.True(TouchesFromOutside(drawing.Boxes[to], route.Points[^1]));
            }
        });

    [Fact]
    public void No_edge_runs_through_a_box() =>
        Graphs.Any.Sample(graph =>
        {
            var drawing = Draw(graph);
            foreach (var point in drawing.Routes.SelectMany(Along))
                Assert.DoesNotContain(drawing.Boxes, frame => Inside(frame, point));
        });

    [Fact]
    public void Nothing_is_drawn_outside_the_sheet() =>
        Graphs.Any.Sample(graph =>
        {
            var drawing = Draw(graph);
            var corners = drawing.Boxes.SelectMany(frame => new Point[] { new(frame.Left, frame.Top), new(frame.Right, frame.Bottom) });
            Assert.All(corners.Concat(drawing.Routes.SelectMany(Along)), point =>
            {
                Assert.InRange(point.X, -Hair, drawing.Size.Width + Hair);
                Assert.InRange(point.Y, -Hair, drawing.Size.Height + Hair);
            });
        });

    [Fact]
    public void A_tree_is_drawn_without_crossings() =>
        Graphs.Trees.Sample(graph =>
        {
            var ranked = Ranked.Rank(Rows.Assign(graph.Boxes.Length, graph.Edges, int.MaxValue), graph.Edges);
            var rows = Crossings.Order(ranked);
            Assert.Equal(0, Crossings.Count(rows, ranked, Places(rows, ranked.Count)));
        });

    [Fact]
    public void Crossings_are_counted_as_one_would_by_hand() =>
        Graphs.WithoutCircles.Sample(graph =>
        {
            var ranked = Ranked.Rank(Rows.Assign(graph.Boxes.Length, graph.Edges, 6), graph.Edges);
            var rows = Crossings.Order(ranked);
            var place = Places(rows, ranked.Count);
            var steps = ranked.Chains.SelectMany(chain => chain.Zip(chain.Skip(1))).ToArray();
            var pairs =
                from one in steps
                from other in steps
                where ranked.Row[one.First] == ranked.Row[other.First]
                    && place[one.First] < place[other.First] && place[one.Second] > place[other.Second]
                select 1;
            Assert.Equal(pairs.Count(), Crossings.Count(rows, ranked, place));
        });

    [Fact]
    public void The_order_of_a_row_holds_its_vertices_and_no_others() =>
        Graphs.WithoutCircles.Sample(graph =>
        {
            var ranked = Ranked.Rank(Rows.Assign(graph.Boxes.Length, graph.Edges, 6), graph.Edges);
            var rows = Crossings.Order(ranked);
            Assert.Equal(Enumerable.Range(0, ranked.Count), rows.SelectMany(row => row).Order());
            Assert.All(rows.Select((row, i) => (row, i)), pair => Assert.All(pair.row, vertex => Assert.Equal(pair.i, ranked.Row[vertex])));
        });

    [Fact]
    public void Without_a_bound_each_box_stands_at_the_longest_path_to_it() =>
        Graphs.WithoutCircles.Sample(graph =>
        {
            var longest = new int[graph.Boxes.Length];
            foreach (var (from, to) in graph.Edges.OrderBy(edge => edge.From))
                longest[to] = Math.Max(longest[to], longest[from] + 1);
            Assert.Equal(longest, Rows.Assign(graph.Boxes.Length, graph.Edges, int.MaxValue));
        });

    [Fact]
    public void No_row_is_wider_than_its_bound() =>
        Graphs.WithoutCircles.Sample(graph =>
            Assert.All(Rows.Assign(graph.Boxes.Length, graph.Edges, 3).CountBy(row => row), row => Assert.InRange(row.Value, 1, 3)));

    [Fact]
    public void An_edge_is_turned_only_where_there_is_a_circle()
    {
        Graphs.WithoutCircles.Sample(graph => Assert.DoesNotContain(true, Rows.Turned(graph.Boxes.Length, graph.Edges)));
        Assert.Single(Rows.Turned(3, [(0, 1), (1, 2), (2, 0)]), turned => turned);
    }

    // Sixty stages, forty of them between one that opens them all and one that needs them all, as wide as the rest of the layer's rows.
    [Fact]
    public void A_layer_of_forty_boxes_is_wrapped_into_rows_below_each_other()
    {
        var fan = Enumerable.Range(1, 40).SelectMany(i => new[] { (0, i), (i, 41) });
        var tail = Enumerable.Range(42, 18).Select(i => (i - 1, i));
        var drawing = MapLayout.Compute([.. Enumerable.Repeat(new Extent(150, 50), 60)], [.. fan, .. tail]);
        Assert.InRange(drawing.Size.Width, 150, 15 * (150 + 30));
    }

    [Fact]
    public void Many_edges_to_one_box_run_together_and_few_do_not()
    {
        Assert.Single(LastBends(8));
        Assert.Equal(3, LastBends(3).Length);

        // A ladder with an edge from each of its rungs to a box at the end.
        static Point[] LastBends(int rungs)
        {
            (int, int)[] edges =
            [
                .. Enumerable.Range(1, rungs).Select(i => (i - 1, i)),
                (rungs, rungs + 1),
                .. Enumerable.Range(0, rungs).Select(i => (i, rungs + 1)),
            ];
            var drawing = MapLayout.Compute([.. Enumerable.Repeat(new Extent(100, 50), rungs + 2)], [.. edges]);
            return [.. drawing.Routes.TakeLast(rungs).Select(route => route.Points[^2]).Distinct()];
        }
    }

    [Fact]
    public void An_empty_graph_is_an_empty_drawing() => Assert.Equal(new Extent(0, 0), MapLayout.Compute([], []).Size);

    [Fact]
    public void Two_thousand_boxes_in_a_line_are_drawn_straight_down()
    {
        var drawing = MapLayout.Compute(
            [.. Enumerable.Repeat(new Extent(100, 50), 2000)], [.. Enumerable.Range(0, 1999).Select(i => (i, i + 1))]);
        Assert.All(drawing.Boxes, frame => Assert.Equal(50, frame.Middle));
    }

    private static MapLayout Draw(Graph graph) => MapLayout.Compute(graph.Boxes, graph.Edges);

    private static bool Overlap(Frame one, Frame other) =>
        one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;

    private static bool Inside(Frame frame, Point point) =>
        point.X > frame.Left + Hair && point.X < frame.Right - Hair && point.Y > frame.Top + Hair && point.Y < frame.Bottom - Hair;

    private static bool TouchesFromOutside(Frame frame, Point point) =>
        point.X >= frame.Left && point.X <= frame.Right
        && (Math.Abs(point.Y - frame.Top) < Hair || Math.Abs(point.Y - frame.Bottom) < Hair);

    // Sixteen places along every stretch, by Bernstein's form of the cubic curve.
    private static IEnumerable<Point> Along(Route route) =>
        from step in route.Points.Zip(route.Points.Skip(1))
        let bend = Route.Bend(step.First, step.Second)
        from i in Enumerable.Range(0, 17)
        let t = i / 16.0
        let u = 1 - t
        select new Point(
            (u * u * u * step.First.X) + (3 * u * u * t * bend.Leave.X) + (3 * u * t * t * bend.Arrive.X) + (t * t * t * step.Second.X),
            (u * u * u * step.First.Y) + (3 * u * u * t * bend.Leave.Y) + (3 * u * t * t * bend.Arrive.Y) + (t * t * t * step.Second.Y));

    private static int[] Places(int[][] rows, int count)
    {
        var place = new int[count];
        foreach (var (vertex, i) in rows.SelectMany(row => row.Select((vertex, i) => (vertex, i))))
            place[vertex] = i;
        return place;
    }
}
