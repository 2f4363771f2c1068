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

    /// <summary>Paints a page of a given size in points. A pixel is painted where its centre is inside.</summary>
    /// <exception cref="InvalidDataException">A picture can't be read.</exception>
    public static Raster Paint(IEnumerable<Ink> inks, double widthInPoints, double heightInPoints)
    {
        const double scale = MillimetresPerPoint * PixelsPerMillimetre;
        var raster = new Raster((int)Math.Ceiling(widthInPoints * scale), (int)Math.Ceiling(heightInPoints * scale));
        var toPixels = new Matrix3x2((float)scale, 0, 0, (float)-scale, 0, (float)(heightInPoints * scale));
        var clips = new Dictionary<Clip, byte[]>(ReferenceEqualityComparer.Instance);
        foreach (var ink in inks)
        {
            var clip = ink.Clip is null ? null : raster.Outside(ink.Clip, toPixels, clips);
            switch (ink)
            {
                case InkedShape shape: raster.Fill(shape, toPixels, clip); break;
                case InkedPicture picture: raster.Show(picture, toPixels, clip); break;
            }
        }

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

    // The page with 0 where something can be seen. Each part is drawn once, however much is painted in it.
    private byte[] Outside(Clip clip, Matrix3x2 toPixels, Dictionary<Clip, byte[]> known)
    {
        if (known.TryGetValue(clip, out var before))
            return before;
        var drawn = new Raster(Width, Height);
        drawn.Fill(clip.Inside with { Luminance = 0 }, toPixels, clip.Within is null ? null : Outside(clip.Within, toPixels, known));
        return known[clip] = drawn.pixels;
    }

    // The pixel of a picture that lies below the middle of each pixel of the page.
    private void Show(InkedPicture ink, Matrix3x2 toPixels, byte[]? clip)
    {
        var place = ink.Place * toPixels;
        if (!Matrix3x2.Invert(place, out var back))
            return;
        var (picture, samples) = (ink.Picture, ink.Picture.Pixels());
        Vector2[] corners = [.. new Vector2[] { new(0, 0), new(1, 0), new(0, 1), new(1, 1) }.Select(corner => Vector2.Transform(corner, place))];
        var (left, right) = Between(corners.Select(corner => corner.X), Width);
        var (top, bottom) = Between(corners.Select(corner => corner.Y), Height);
        for (var y = top; y < bottom; y++)
        {
            for (var x = left; x < right; x++)
            {
                var at = Vector2.Transform(new(x + 0.5f, y + 0.5f), back);
                if (at.X is >= 0 and < 1 && at.Y is > 0 and <= 1 && clip?[(y * Width) + x] is null or 0)
                    pixels[(y * Width) + x] = samples[((int)((1 - at.Y) * picture.Height) * picture.Width) + (int)(at.X * picture.Width)];
            }
        }
    }

    private static (int First, int End) Between(IEnumerable<float> all, int length) =>
        ((int)Math.Clamp(all.Min(), 0, length), (int)Math.Clamp(MathF.Ceiling(all.Max()), 0, length));

    private void Fill(InkedShape shape, Matrix3x2 toPixels, byte[]? clip)
    {
        var (first, last) = (Height, -1);
        foreach (var loop in shape.Loops)
        {
            for (var i = 0; i < loop.Count; i++)
            {
                var (top, bottom) = Cross(Vector2.Transform(loop[i], toPixels), Vector2.Transform(loop[(i + 1) % loop.Count], toPixels));
                (first, last) = (Math.Min(first, top), Math.Max(last, bottom));
            }
        }

        for (var y = first; y <= last; y++)
            FillRow(y, shape, clip);
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

    private void FillRow(int y, InkedShape shape, byte[]? clip)
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
            var run = pixels.AsSpan((y * Width) + left, right - left);
            if (clip is null)
                run.Fill(shape.Luminance);
            else
                FillWhereSeen(run, clip.AsSpan((y * Width) + left, right - left), shape.Luminance);
        }

        row.Clear();
    }

    private static void FillWhereSeen(Span<byte> run, ReadOnlySpan<byte> outside, byte luminance)
    {
        for (var x = 0; x < run.Length; x++)
            run[x] = outside[x] == 0 ? luminance : run[x];
    }

    // The first pixel whose middle lies to the right.
    private static int Column(int crossing) => (int)MathF.Ceiling(((crossing >> 1) / Fine) - 0.5f);
}
