using System.Numerics;

namespace HintBook.Photos.Drawings;

/// <summary>Elliptical arcs as cubic curves.</summary>
internal static class Arc
{
    /// <summary>The curves of an arc between two points, by the formulas of SVG 1.1, appendix F.6.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="radii">The two radii of its ellipse; made larger where they are too small to reach.</param>
    /// <param name="degrees">How far the ellipse is turned.</param>
    /// <param name="large">Whether it is the longer of the two arcs.</param>
    /// <param name="sweep">Whether its angles grow.</param>
    /// <param name="to">Where it ends.</param>
    public static IEnumerable<Curve> Curves(Vector2 from, Vector2 radii, double degrees, bool large, bool sweep, Vector2 to)
    {
        if (from == to)
            return [];
        double rx = Math.Abs(radii.X), ry = Math.Abs(radii.Y);
        if (rx == 0 || ry == 0)
            return [Curve.To(to)];
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        double dx = (from.X - to.X) / 2.0, dy = (from.Y - to.Y) / 2.0;
        double x = (cos * dx) + (sin * dy), y = (cos * dy) - (sin * dx);
        var reach = Math.Sqrt((x * x / (rx * rx)) + (y * y / (ry * ry)));
        if (reach > 1)
            (rx, ry) = (rx * reach, ry * reach);
        var square = ((rx * rx * ry * ry) - (rx * rx * y * y) - (ry * ry * x * x)) / ((rx * rx * y * y) + (ry * ry * x * x));
        var factor = Math.Sqrt(Math.Max(0, square)) * (large == sweep ? -1 : 1);
        double cx = factor * rx * y / ry, cy = -factor * ry * x / rx;
        var begin = Math.Atan2((y - cy) / ry, (x - cx) / rx);
        var angle = Math.Atan2((-y - cy) / ry, (-x - cx) / rx) - begin;
        if (sweep && angle < 0)
            angle += 2 * Math.PI;
        else if (!sweep && angle > 0)
            angle -= 2 * Math.PI;
        double mx = (from.X + to.X) / 2.0, my = (from.Y + to.Y) / 2.0;
        return Pieces(begin, angle, at => new(
            (float)(mx + (cos * (cx + (rx * at.X))) - (sin * (cy + (ry * at.Y)))),
            (float)(my + (sin * (cx + (rx * at.X))) + (cos * (cy + (ry * at.Y))))), to);
    }

    /// <summary>A whole ellipse.</summary>
    public static Figure Ellipse(double cx, double cy, double rx, double ry) => new(
        new((float)(cx + rx), (float)cy),
        [.. Pieces(0, 2 * Math.PI, at => new((float)(cx + (rx * at.X)), (float)(cy + (ry * at.Y))), new((float)(cx + rx), (float)cy))],
        IsClosed: true);

    // An arc of at most a quarter turn differs from its curve by less than three parts in ten thousand of its radius.
    private static IEnumerable<Curve> Pieces(double begin, double angle, Func<(double X, double Y), Vector2> place, Vector2 end)
    {
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(angle) / (Math.PI / 2) - 1e-6));
        var step = angle / count;
        var handle = 4 / 3.0 * Math.Tan(step / 4);
        for (var i = 0; i < count; i++)
        {
            var (s1, c1) = Math.SinCos(begin + (i * step));
            var (s2, c2) = Math.SinCos(begin + ((i + 1) * step));
            yield return new(
                place((c1 - (handle * s1), s1 + (handle * c1))),
                place((c2 + (handle * s2), s2 - (handle * c2))),
                i + 1 == count ? end : place((c2, s2)),
                IsStraight: false);
        }
    }
}
