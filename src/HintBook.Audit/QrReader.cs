using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace HintBook.Audit;

/// <summary>Reads a QR code that stands upright, by itself, and with whole pixels to a module.</summary>
internal static class QrReader
{
    private static readonly Dictionary<DecodeHintType, object> Pure = new() { [DecodeHintType.PURE_BARCODE] = true };

    /// <summary>What the code in a picture says; null where there is none that can be read.</summary>
    public static string? Read(byte[] picture)
    {
        try
        {
            using var image = Image.Load<L8>(picture);
            var pixels = new byte[image.Width * image.Height];
            image.CopyPixelDataTo(pixels);
            return Read(pixels, image.Width, image.Height);
        }
        catch (Exception e) when (e is ImageFormatException or NotSupportedException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>What the code says; null where none can be read.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static string? Read(byte[] pixels, int width, int height)
    {
        var source = new RGBLuminanceSource(pixels, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        return FromModules(pixels, width, height) ?? Decode(source, Pure) ?? Decode(source, hints: null);
    }

    // One pixel in the middle of each module says all there is, and is far less to look at. What isn't a code on whole pixels is left to the
    // slower ways.
    private static string? FromModules(byte[] pixels, int width, int height)
    {
        const int finder = 7, quiet = 4;
        const byte grey = 128;
        var top = 0;
        while (top < height && !pixels.AsSpan(top * width, width).ContainsAnyInRange((byte)0, (byte)(grey - 1)))
            top++;
        if (top == height)
            return null;
        var first = pixels.AsSpan(top * width, width);
        var (left, right) = (first.IndexOfAnyInRange((byte)0, (byte)(grey - 1)), first.LastIndexOfAnyInRange((byte)0, (byte)(grey - 1)) + 1);
        var run = first[left..].IndexOfAnyInRange(grey, byte.MaxValue);
        if (run < finder || run % finder != 0 || (right - left) % (run / finder) != 0)
            return null;
        var module = run / finder;
        var count = (right - left) / module;
        if (top + (count * module) > height)
            return null;

        var side = count + (2 * quiet);
        var modules = new byte[side * side];
        Array.Fill(modules, byte.MaxValue);
        for (var y = 0; y < count; y++)
        {
            for (var x = 0; x < count; x++)
                modules[((y + quiet) * side) + x + quiet] = pixels[((top + (y * module) + (module / 2)) * width) + left + (x * module) + (module / 2)];
        }

        return Decode(new RGBLuminanceSource(modules, side, side, RGBLuminanceSource.BitmapFormat.Gray8), Pure);
    }

    private static string? Decode(LuminanceSource source, Dictionary<DecodeHintType, object>? hints) =>
        new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)), hints)?.Text;
}
