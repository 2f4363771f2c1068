using System.Runtime.InteropServices;

namespace HintBook.Cards.ReadingBack;

/// <summary>
/// The modules of a code that stands exactly upright on white, as in the files that are read back: its dark pixels touch all
/// four sides of it, and its own timing pattern tells how many modules there are (ISO/IEC 18004). Nothing is taken over from
/// the code that was drawn.
/// </summary>
internal static class UprightCode
{
    private const int QuietZone = 4;
    private const int FinderSide = 7;
    private const int TimingRow = 6;
    private const byte Grey = 128;

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Bounds(int Left, int Top, int Right, int Bottom)
    {
        public int Width => Right - Left;

        public int Height => Bottom - Top;
    }

    /// <summary>
    /// The same code with one pixel to a module and its quiet zone around it, or null where the picture holds no upright code
    /// with its three finders whole.
    /// </summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static (byte[] Pixels, int Side)? In(byte[] pixels, int width, int height)
    {
        if (BoundsOf(pixels, width, height) is not { } bounds || Modules(pixels, width, bounds) is not { } size)
            return null;

        var side = size + (2 * QuietZone);
        var modules = new byte[side * side];
        Array.Fill(modules, byte.MaxValue);
        for (var y = 0; y < size; y++)
        {
            var row = Middle(bounds.Top, bounds.Height, y, size) * width;
            for (var x = 0; x < size; x++)
                modules[((y + QuietZone) * side) + x + QuietZone] = pixels[row + Middle(bounds.Left, bounds.Width, x, size)];
        }

        return HasFinder(0, 0) && HasFinder(size - FinderSide, 0) && HasFinder(0, size - FinderSide) ? (modules, side) : null;

        bool HasFinder(int left, int top) =>
            Enumerable.Range(0, FinderSide * FinderSide)
                .Select(i => (X: i % FinderSide, Y: i / FinderSide))
                .All(at => IsDark(left + at.X, top + at.Y) == DarkInFinder(at.X, at.Y));

        bool IsDark(int x, int y) => modules[((y + QuietZone) * side) + x + QuietZone] < Grey;
    }

    /// <summary>Where the dark of a code begins, how large it is, and how many modules are on its side; null where there is none.</summary>
    public static (int Left, int Top, int Width, int Height, int Modules)? Measure(byte[] pixels, int width, int height) =>
        BoundsOf(pixels, width, height) is { } bounds && Modules(pixels, width, bounds) is { } size
            ? (bounds.Left, bounds.Top, bounds.Width, bounds.Height, size)
            : null;

    private static Bounds? BoundsOf(byte[] pixels, int width, int height)
    {
        var (left, top, right, bottom) = (width, height, 0, 0);
        for (var y = 0; y < height; y++)
        {
            var row = pixels.AsSpan(y * width, width);
            var first = row.IndexOfAnyInRange((byte)0, (byte)(Grey - 1));
            if (first < 0)
                continue;
            (left, right) = (Math.Min(left, first), Math.Max(right, row.LastIndexOfAnyInRange((byte)0, (byte)(Grey - 1)) + 1));
            (top, bottom) = (Math.Min(top, y), y + 1);
        }

        return left < right ? new(left, top, right, bottom) : null;
    }

    // Along the timing row a finder's last row, then modules that take turns, then the other finder's: fourteen modules stand in
    // two stretches, every other module is a stretch of its own.
    private static int? Modules(byte[] pixels, int width, Bounds bounds)
    {
        var corner = pixels.AsSpan((bounds.Top * width) + bounds.Left, bounds.Width);
        var finder = corner.IndexOfAnyInRange(Grey, byte.MaxValue);
        var row = bounds.Top + Middle(0, finder, TimingRow, FinderSide);
        if (finder <= 0 || row >= bounds.Bottom)
            return null;

        var timing = pixels.AsSpan((row * width) + bounds.Left, bounds.Width);
        var stretches = 1;
        for (var x = 1; x < timing.Length; x++)
            stretches += timing[x] < Grey == timing[x - 1] < Grey ? 0 : 1;
        var size = stretches - 2 + (2 * FinderSide);
        return size is >= 21 and <= 177 && size % 4 == 1 && size <= bounds.Height ? size : null;
    }

    private static int Middle(int start, int length, int module, int modules) => start + (((2 * module) + 1) * length / (2 * modules));

    // A square ring of dark around a ring of light around a square of three.
    private static bool DarkInFinder(int x, int y) => Math.Max(Math.Abs(x - 3), Math.Abs(y - 3)) != 2;
}
