using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace HintBook.Cards.ReadingBack;

/// <summary>Reads the QR code in a picture, by a library that shares nothing with the one that makes the codes.</summary>
internal static class CodeReader
{
    private static readonly Dictionary<DecodeHintType, object> Pure = new() { [DecodeHintType.PURE_BARCODE] = true };

    // The first look is from some distance, as a phone's: fewer pixels, quicker.
    private const int NearSide = 300;

    /// <summary>What the code says, or null where none can be read.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top. Nothing but the code may be dark.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static string? Read(byte[] pixels, int width, int height) => Glance(pixels, width, height) ?? Measured(pixels, width, height);

    private static string? Glance(byte[] pixels, int width, int height)
    {
        var step = Math.Max(1, Math.Max(width, height) / NearSide);
        return Decode(EveryNth(pixels, width, height, step), (width + step - 1) / step, (height + step - 1) / step, hints: null);
    }

    // ZXing's search for the three finders runs from the top and ends with the third pattern that looks like one. In about one code
    // of a thousand a chance pattern among the data comes before the finder at the bottom, and then it sees no code where phones
    // and other readers see one (issues 410 and 897 of zxing/zxing; the way out that is given there is the hint PURE_BARCODE:
    // nothing in the picture but the code, and upright). That hint takes the module from one finder's width in whole pixels, which is
    // too coarse for a page on which a module is no whole number of pixels (a quarter of the codes); so the code is
    // brought to one pixel a module first.
    private static string? Measured(byte[] pixels, int width, int height) =>
        UprightCode.In(pixels, width, height) is { } code ? Decode(code.Pixels, code.Side, code.Side, Pure) : null;

    private static string? Decode(byte[] pixels, int width, int height, Dictionary<DecodeHintType, object>? hints)
    {
        var source = new RGBLuminanceSource(pixels, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)), hints)?.Text;
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
