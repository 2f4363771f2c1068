using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace HintBook.Cards.ReadingBack;

/// <summary>Reads the QR code in a picture, by a library that shares nothing with the one that makes the codes.</summary>
internal static class CodeReader
{
    /// <summary>What the code says, or null where none can be read.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    public static string? Read(byte[] pixels, int width, int height)
    {
        var source = new RGBLuminanceSource(pixels, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new GlobalHistogramBinarizer(source)))?.Text;
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
