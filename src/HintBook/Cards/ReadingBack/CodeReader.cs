using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace HintBook.Cards.ReadingBack;

/// <summary>Reads the QR code in a picture, by a library that shares nothing with the one that makes the codes.</summary>
internal static class CodeReader
{
    private static readonly Dictionary<DecodeHintType, object> Thorough = new() { [DecodeHintType.TRY_HARDER] = true };

    // A phone sees a code from several distances and sides within a second; the reader gets a few as well, the quickest
    // first. In about one code of two thousand it takes a chance pattern for a finder, but only when the code stands upright.
    private const int NearSide = 300;

    /// <summary>What the code says, or null where none can be read.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static string? Read(byte[] pixels, int width, int height) =>
        Looks(pixels, width, height).FirstOrDefault(text => text is not null);

    private static IEnumerable<string?> Looks(byte[] pixels, int width, int height)
    {
        var far = Math.Max(1, Math.Max(width, height) / NearSide);
        foreach (var step in new[] { far, 1, far + 1 }.Distinct())
        {
            var (columns, rows) = ((width + step - 1) / step, (height + step - 1) / step);
            var seen = EveryNth(pixels, width, height, step);
            yield return Attempt(seen, columns, rows);
            yield return Attempt(Turned(seen, columns, rows), rows, columns);
        }
    }

    private static string? Attempt(byte[] pixels, int width, int height)
    {
        var source = new RGBLuminanceSource(pixels, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        var reader = new QRCodeReader();
        return (reader.decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)))
            ?? reader.decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)), Thorough))?.Text;
    }

    private static byte[] EveryNth(byte[] pixels, int width, int height, int step)
    {
        var fewer = new byte[(width + step - 1) / step * ((height + step - 1) / step)];
        var at = 0;
        for (var y = 0; y < height; y += step)
        {
            for (var x = 0; x < width; x += step)
                fewer[at++] = pixels[(y * width) + x];
        }

        return fewer;
    }

    // A quarter turn clockwise.
    private static byte[] Turned(byte[] pixels, int width, int height)
    {
        var turned = new byte[pixels.Length];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
                turned[(x * height) + height - 1 - y] = pixels[(y * width) + x];
        }

        return turned;
    }

    /// <summary>What the code in a PNG file says, or null where none can be read.</summary>
    public static string? ReadPng(byte[] png)
    {
        using var image = Image.Load<L8>(png);
        var pixels = new byte[image.Width * image.Height];
        image.CopyPixelDataTo(pixels);
        return Read(pixels, image.Width, image.Height);
    }
}
