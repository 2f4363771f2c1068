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

    // A phone sees a code from many distances within a second; the reader gets a few as well, the quickest first. It
    // sometimes takes a chance pattern for a finder at one size and not at another.
    private const int NearSide = 300;

    /// <summary>What the code says, or null where none can be read.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static string? Read(byte[] pixels, int width, int height)
    {
        var far = Math.Max(1, Math.Max(width, height) / NearSide);
        foreach (var step in new[] { far, 1, far + 1, 2 }.Distinct())
        {
            var text = Attempt(step == 1 ? pixels : EveryNth(pixels, width, height, step), (width + step - 1) / step, (height + step - 1) / step);
            if (text is not null)
                return text;
        }

        return null;
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

    /// <summary>What the code in a PNG file says, or null where none can be read.</summary>
    public static string? ReadPng(byte[] png)
    {
        using var image = Image.Load<L8>(png);
        var pixels = new byte[image.Width * image.Height];
        image.CopyPixelDataTo(pixels);
        return Read(pixels, image.Width, image.Height);
    }
}
