namespace HintBook.Example.Pictures;

/// <summary>A region of the picture as a signed distance in pixels, negative inside, with a frame outside which it is never asked.</summary>
internal sealed record Shape(float Left, float Top, float Right, float Bottom, Func<float, float, float> Distance)
{
    public static Shape Round(float x, float y, float radius) =>
        new(x - radius, y - radius, x + radius, y + radius, (px, py) => Length(px - x, py - y) - radius);

    /// <summary>A rectangle by its edges, with rounded corners.</summary>
    public static Shape Box(float left, float top, float right, float bottom, float corner = 0)
    {
        var (cx, cy, w, h) = ((left + right) / 2, (top + bottom) / 2, ((right - left) / 2) - corner, ((bottom - top) / 2) - corner);
        return new(left, top, right, bottom, (x, y) =>
        {
            var (dx, dy) = (MathF.Abs(x - cx) - w, MathF.Abs(y - cy) - h);
            return Length(MathF.Max(dx, 0), MathF.Max(dy, 0)) + MathF.Min(MathF.Max(dx, dy), 0) - corner;
        });
    }

    public static Shape Line(float x0, float y0, float x1, float y1, float width)
    {
        var (dx, dy) = (x1 - x0, y1 - y0);
        var square = MathF.Max((dx * dx) + (dy * dy), 1e-6f);
        var half = width / 2;
        return new(MathF.Min(x0, x1) - half, MathF.Min(y0, y1) - half, MathF.Max(x0, x1) + half, MathF.Max(y0, y1) + half, (x, y) =>
        {
            var t = Math.Clamp((((x - x0) * dx) + ((y - y0) * dy)) / square, 0, 1);
            return Length(x - x0 - (t * dx), y - y0 - (t * dy)) - half;
        });
    }

    /// <summary>A convex polygon, its corners clockwise as seen on the screen.</summary>
    public static Shape Convex(params (float X, float Y)[] corners) =>
        new(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y), (x, y) =>
        {
            var far = float.MinValue;
            for (var i = 0; i < corners.Length; i++)
            {
                var ((ax, ay), (bx, by)) = (corners[i], corners[(i + 1) % corners.Length]);
                var (nx, ny) = (by - ay, ax - bx);
                far = MathF.Max(far, (((x - ax) * nx) + ((y - ay) * ny)) / Length(nx, ny));
            }

            return far;
        });

    public static Shape Hexagon(float x, float y, float radius, float turn = 0) =>
        Convex([.. Enumerable.Range(0, 6).Select(i => turn + (i * MathF.PI / 3)).Select(a => (x + (radius * MathF.Cos(a)), y + (radius * MathF.Sin(a))))]);

    public static Shape Oval(float x, float y, float width, float height, float turn = 0)
    {
        var (cos, sin, reach) = (MathF.Cos(turn), MathF.Sin(turn), MathF.Max(width, height));
        return new(x - reach, y - reach, x + reach, y + reach, (px, py) =>
        {
            var (u, v) = ((((px - x) * cos) + ((py - y) * sin)) / width, (((py - y) * cos) - ((px - x) * sin)) / height);
            return (Length(u, v) - 1) * MathF.Min(width, height);
        });
    }

    /// <summary>A band of this width along the edge.</summary>
    public Shape Rim(float width) =>
        new(Left - width, Top - width, Right + width, Bottom + width, (x, y) => MathF.Abs(Distance(x, y)) - (width / 2));

    public Shape Without(Shape other) => this with { Distance = (x, y) => MathF.Max(Distance(x, y), -other.Distance(x, y)) };

    public Shape And(Shape other) => new(
        MathF.Min(Left, other.Left),
        MathF.Min(Top, other.Top),
        MathF.Max(Right, other.Right),
        MathF.Max(Bottom, other.Bottom),
        (x, y) => MathF.Min(Distance(x, y), other.Distance(x, y)));

    public Shape Moved(float dx, float dy) =>
        new(Left + dx, Top + dy, Right + dx, Bottom + dy, (x, y) => Distance(x - dx, y - dy));

    private static float Length(float x, float y) => MathF.Sqrt((x * x) + (y * y));
}
