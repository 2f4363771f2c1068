using HintBook.Tests.House;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;
using ZXing;
using ZXing.Common;
using ZXing.Multi.QrCode;

namespace HintBook.Tests.Cards;

/// <summary>A page as poppler draws it at 300 dots to the inch, then strewn with noise and blurred, as paper and a phone do to it.</summary>
internal static class RenderedPage
{
    private const int Noise = 40;

    /// <summary>What all codes of a page say, read by zbar; ZXing must have read the same.</summary>
    public static string[] Codes(byte[] pdf, int number)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-page-");
        try
        {
            var (file, page, spoilt) = (Path.Combine(folder.FullName, "p.pdf"), Path.Combine(folder.FullName, "p"), Path.Combine(folder.FullName, "q.png"));
            File.WriteAllBytes(file, pdf);
            DebianProgram.Run("/", "pdftoppm", "-r", "300", "-f", $"{number}", "-l", $"{number}", "-gray", "-png", "-singlefile", file, page);
            using var image = Image.Load<L8>(page + ".png");
            Spoil(image);
            image.SaveAsPng(spoilt);
            var byZbar = DebianProgram.Run("/", "zbarimg", "--nodbus", "--quiet", "--raw", spoilt).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            var pixels = new byte[image.Width * image.Height];
            image.CopyPixelDataTo(pixels);
            var source = new RGBLuminanceSource(pixels, image.Width, image.Height, RGBLuminanceSource.BitmapFormat.Gray8);
            var hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.TRY_HARDER] = true };
            var byZxing = new QRCodeMultiReader().decodeMultiple(new BinaryBitmap(new HybridBinarizer(source)), hints) ?? [];
            Assert.Equal(byZbar.Order(StringComparer.Ordinal), byZxing.Select(code => code.Text).Distinct().Order(StringComparer.Ordinal));
            return byZbar;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // The same noise in every run: a linear congruential generator (constants of Numerical Recipes, from memory).
    private static void Spoil(Image<L8> image)
    {
        var state = 1u;
        image.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                foreach (ref var pixel in rows.GetRowSpan(y))
                {
                    state = unchecked((state * 1664525u) + 1013904223u);
                    pixel = new((byte)Math.Clamp(pixel.PackedValue + (int)(state >> 24) % (2 * Noise) - Noise, 0, 255));
                }
            }
        });
        image.Mutate(each => each.GaussianBlur(2));
    }
}
