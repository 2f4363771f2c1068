namespace HintBook.Cards;

/// <summary>
/// What a printer goes by at a sheet's edges: where to cut, where to fold, and whether both sides lie on each other (common practice, no standard).
/// </summary>
internal static class PrintersMarks
{
    /// <summary>Length of a mark, in millimetres.</summary>
    public const double Length = 5;

    /// <summary>How far marks keep off the bleed, so that none is left on a card that is cut a little too large, in millimetres.</summary>
    public const double Gap = 1;

    private const double RingRadius = 1.25;
    private const int RingSides = 24;
    private const double Dash = 1;

    /// <summary>Short lines around some places, each in line with a cut.</summary>
    /// <param name="places">What is cut out.</param>
    /// <param name="printed">All of it with its bleeds.</param>
    public static IEnumerable<PrintedLine> Crop(IReadOnlyCollection<Rect> places, Rect printed)
    {
        var grid = printed.Grown(Gap);
        foreach (var x in Edges(places, place => (place.X, place.Right)))
        {
            yield return new(x, grid.Y - Length, x, grid.Y, Tone.Ink);
            yield return new(x, grid.Bottom, x, grid.Bottom + Length, Tone.Ink);
        }

        foreach (var y in Edges(places, place => (place.Y, place.Bottom)))
        {
            yield return new(grid.X - Length, y, grid.X, y, Tone.Ink);
            yield return new(grid.Right, y, grid.Right + Length, y, Tone.Ink);
        }
    }

    /// <summary>Rings with a cross in the middle of each side, which must meet on both sides of the sheet.</summary>
    public static IEnumerable<Printed> Registration(Rect printed)
    {
        var grid = printed.Grown(Gap);
        var (middleX, middleY, off) = (grid.X + (grid.Width / 2), grid.Y + (grid.Height / 2), Length / 2);
        return new[] { (middleX, grid.Y - off), (middleX, grid.Bottom + off), (grid.X - off, middleY), (grid.Right + off, middleY) }
            .SelectMany(at => Ring(at.Item1, at.Item2));
    }

    /// <summary>Dashes outside a printed place where it is folded.</summary>
    /// <param name="printed">All of it with its bleeds.</param>
    /// <param name="x">Where the fold runs from top to bottom.</param>
    public static IEnumerable<PrintedLine> Fold(Rect printed, double x)
    {
        var grid = printed.Grown(Gap);
        for (var at = 0.0; at < Length; at += 2 * Dash)
        {
            yield return new(x, grid.Y - Length + at, x, grid.Y - Length + at + Dash, Tone.Ink);
            yield return new(x, grid.Bottom + at, x, grid.Bottom + at + Dash, Tone.Ink);
        }
    }

    /// <summary>The same mark elsewhere.</summary>
    public static Printed Moved(Printed mark, double right, double down) => mark switch
    {
        PrintedLine line => line with { X1 = line.X1 + right, X2 = line.X2 + right, Y1 = line.Y1 + down, Y2 = line.Y2 + down },
        PrintedStroke stroke => stroke with { Points = [.. stroke.Points.Select(point => (point.X + right, point.Y + down))] },
        _ => mark,
    };

    private static IEnumerable<Printed> Ring(double x, double y) =>
    [
        new PrintedLine(x - (Length / 2), y, x + (Length / 2), y, Tone.Ink),
        new PrintedLine(x, y - (Length / 2), x, y + (Length / 2), Tone.Ink),
        new PrintedStroke([.. Circle(x, y, RingRadius, RingSides)], PrintedLine.Thickness, Tone.Ink),
    ];

    /// <summary>The corners of a circle in straight stretches, the first one again at the end.</summary>
    public static IEnumerable<(double X, double Y)> Circle(double x, double y, double radius, int sides) =>
        Enumerable.Range(0, sides + 1).Select(i => Math.SinCos(i % sides * Math.Tau / sides)).Select(at => (x + (radius * at.Cos), y + (radius * at.Sin)));

    private static IEnumerable<double> Edges(IReadOnlyCollection<Rect> places, Func<Rect, (double, double)> of) =>
        places.Select(of).SelectMany(pair => new[] { pair.Item1, pair.Item2 }).DistinctBy(edge => Math.Round(edge, 6)).Order();
}
