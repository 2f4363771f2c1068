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
        return Decode(source, Pure) ?? Decode(source, hints: null);
    }

    private static string? Decode(LuminanceSource source, Dictionary<DecodeHintType, object>? hints) =>
        new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)), hints)?.Text;
}
