using System.Numerics;

namespace HintBook.Cards.ReadingBack;

/// <summary>A page in pixels of one byte, white where nothing is painted.</summary>
internal sealed class Raster
{
    /// <summary>Pixels to the millimetre: 304.8 dots to the inch, as a common printer has.</summary>
    public const int PixelsPerMillimetre = 12;

    private const double MillimetresPerPoint = 25.4 / 72;

    private const float Fine = 256;

    private readonly byte[] pixels;

    // For each row, where edges cross its middle, until the shape is filled: 256ths of a pixel, doubled, plus one where the
    // edge runs downwards. Plain numbers, because sorting them is most of the work.
    private readonly List<int>[] crossings;

    private Raster(int width, int height)
    {
        Width = width;
        Height = height;
        pixels = new byte[width * height];
        Array.Fill(pixels, (byte)255);
        crossings = new List<int>[height];
        for (var y = 0; y < height; y++)
            crossings[y] = [];
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Paints shapes on a page of a given size in points. A pixel is painted where its centre is inside.</summary>
    public static Raster Fill(IEnumerable<InkedShape> shapes, double widthInPoints, double heightInPoints)
    {
        const double scale = MillimetresPerPoint * PixelsPerMillimetre;
        var raster = new Raster((int)Math.Ceiling(widthInPoints * scale), (int)Math.Ceiling(heightInPoints * scale));
        foreach (var shape in shapes)
            raster.Fill(shape, point => new((float)(point.X * scale), (float)((heightInPoints - point.Y) * scale)));
        return raster;
    }

    /// <summary>Turns the whole page upside down.</summary>
    public void TurnHalfway() => Array.Reverse(pixels);

    /// <summary>The pixels of a rectangle in millimetres from the top left corner.</summary>
    public (byte[] Pixels, int Width, int Height) Cut(Rect place)
    {
        var left = (int)Math.Round(place.X * PixelsPerMillimetre);
        var top = (int)Math.Round(place.Y * PixelsPerMillimetre);
        var width = Math.Min((int)(place.Width * PixelsPerMillimetre), Width - left);
        var height = Math.Min((int)(place.Height * PixelsPerMillimetre), Height - top);
        var cut = new byte[width * height];
        for (var y = 0; y < height; y++)
            pixels.AsSpan(((top + y) * Width) + left, width).CopyTo(cut.AsSpan(y * width));
        return (cut, width, height);
    }

    private void Fill(InkedShape shape, Func<Vector2, Vector2> toPixels)
    {
        var (first, last) = (Height, -1);
        foreach (var loop in shape.Loops)
        {
            for (var i = 0; i < loop.Count; i++)
            {
                var (top, bottom) = Cross(toPixels(loop[i]), toPixels(loop[(i + 1) % loop.Count]));
                (first, last) = (Math.Min(first, top), Math.Max(last, bottom));
            }
        }

        for (var y = first; y <= last; y++)
            FillRow(y, shape);
    }

    // Notes where an edge crosses the middles of rows, and tells which rows.
    private (int First, int Last) Cross(Vector2 from, Vector2 to)
    {
        var turn = from.Y < to.Y ? 1 : -1;
        var (upper, lower) = turn > 0 ? (from, to) : (to, from);
        var first = Math.Max(0, (int)MathF.Ceiling(upper.Y - 0.5f));
        var last = Math.Min(Height - 1, (int)MathF.Ceiling(lower.Y - 0.5f) - 1);
        for (var y = first; y <= last; y++)
        {
            var x = upper.X + ((lower.X - upper.X) * (y + 0.5f - upper.Y) / (lower.Y - upper.Y));
            crossings[y].Add(((int)MathF.Round(x * Fine) * 2) + (turn > 0 ? 1 : 0));
        }


        return first <= last ? (first, last) : (Height, -1);
    }

    private void FillRow(int y, InkedShape shape)
    {
        var row = crossings[y];
        row.Sort();
        var winding = 0;
        for (var i = 0; i + 1 < row.Count; i++)
        {
            winding += shape.EvenOdd || (row[i] & 1) == 1 ? 1 : -1;
            if (shape.EvenOdd ? winding % 2 == 0 : winding == 0)
                continue;
            var left = Math.Clamp(Column(row[i]), 0, Width);
            var right = Math.Clamp(Column(row[i + 1]), left, Width);
            pixels.AsSpan((y * Width) + left, right - left).Fill(shape.Luminance);
        }

        row.Clear();
    }

    // The first pixel whose middle lies to the right.
    private static int Column(int crossing) => (int)MathF.Ceiling(((crossing >> 1) / Fine) - 0.5f);
}
