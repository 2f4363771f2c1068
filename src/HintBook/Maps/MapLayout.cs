using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace HintBook.Maps;

/// <summary>A place on paper, in pixels from the left and from the top.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Point(double X, double Y);

/// <summary>The room that a box takes, in pixels.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Extent(double Width, double Height);

/// <summary>A box on paper.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Frame(double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;

    public double Middle => Left + (Width / 2);

    public Frame Moved(double right, double down) => this with { Left = Left + right, Top = Top + down };
}

/// <summary>
/// The way of one edge. Neighbouring points on one vertical are joined by a straight line, others by an S-curve that leaves and
/// arrives vertically (<see cref="Bend"/>), so that a curve never leaves the gap between two rows.
/// </summary>
/// <param name="Points">From the box it leaves to the box it enters; empty for an edge from a box to itself.</param>
internal sealed record Route(ImmutableArray<Point> Points)
{
    /// <summary>The two control points of the curve between neighbouring points of a route.</summary>
    public static (Point Leave, Point Arrive) Bend(Point from, Point to) =>
        (new(from.X, (from.Y + to.Y) / 2), new(to.X, (from.Y + to.Y) / 2));

    public Route Moved(double right, double down) => new([.. Points.Select(p => new Point(p.X + right, p.Y + down))]);
}

/// <summary>Where every box and every edge of a graph stands, in the order in which they were given.</summary>
internal sealed record MapLayout(Extent Size, ImmutableArray<Frame> Boxes, ImmutableArray<Route> Routes)
{
    /// <summary>
    /// Draws a graph from top to bottom: each connected piece in rows of its own (<see cref="LayeredLayout"/>), the pieces
    /// beside and below each other (<see cref="Shelves"/>). Circles are allowed; some of their edges point upward.
    /// </summary>
    public static MapLayout Compute(ImmutableArray<Extent> boxes, ImmutableArray<(int From, int To)> edges)
    {
        var frames = new Frame[boxes.Length];
        var routes = Enumerable.Repeat(new Route([]), edges.Length).ToArray();
        var pieces = ConnectedComponents.Find(boxes.Length, edges);
        var drawings = pieces.ConvertAll(piece => LayeredLayout.Compute(
            [.. piece.Nodes.Select(node => boxes[node])], [.. piece.Edges.Select(edge => piece.Local(edges[edge]))]));
        var (corners, size) = Shelves.Place([.. drawings.Select(drawing => drawing.Size)]);
        foreach (var (piece, drawing, corner) in pieces.Zip(drawings, corners))
        {
            foreach (var (node, frame) in piece.Nodes.Zip(drawing.Boxes))
                frames[node] = frame.Moved(corner.X, corner.Y);
            foreach (var (edge, route) in piece.Edges.Zip(drawing.Routes))
                routes[edge] = route.Moved(corner.X, corner.Y);
        }

        return new(size, [.. frames], [.. routes]);
    }
}
