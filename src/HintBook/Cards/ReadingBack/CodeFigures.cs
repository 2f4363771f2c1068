namespace HintBook.Cards.ReadingBack;

/// <summary>What was measured on printed codes, in the pixels of the finished page.</summary>
/// <param name="Module">The side of a module, in millimetres.</param>
/// <param name="Distance">
/// From how far a phone reads it, in millimetres: ten times the symbol's width, a working rule that is not in ISO/IEC 18004.
/// </param>
/// <param name="QuietZone">Light modules around it on the narrowest side; ISO/IEC 18004 wants four.</param>
/// <param name="Contrast">Between its dark and the darkest light of its quiet zone, from 1 to 21 (WCAG 2.2).</param>
public sealed record CodeFigures(double Module, double Distance, double QuietZone, double Contrast)
{
    private const int DistanceToWidth = 10;

    /// <summary>The worst of each figure; null where there are none.</summary>
    public static CodeFigures? Worst(IEnumerable<CodeFigures> all) =>
        all.Aggregate((CodeFigures?)null, (worst, next) => worst is null ? next : new(
            Math.Min(worst.Module, next.Module),
            Math.Min(worst.Distance, next.Distance),
            Math.Min(worst.QuietZone, next.QuietZone),
            Math.Min(worst.Contrast, next.Contrast)));

    /// <summary>Measures the code in a picture; null where there is none that stands upright.</summary>
    /// <param name="pixels">One byte each, 0 for black, row by row from the top. The code and its quiet zone fill it.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="scale">Pixels to the millimetre.</param>
    public static CodeFigures? In(byte[] pixels, int width, int height, double scale)
    {
        if (UprightCode.Measure(pixels, width, height) is not { } code)
            return null;
        var module = (double)code.Width / code.Modules;
        var quiet = new[] { code.Left, code.Top, width - code.Left - code.Width, height - code.Top - code.Height }.Min() / module;
        var dark = pixels[((code.Top + (int)(module / 2)) * width) + code.Left + (int)(module / 2)];
        var light = byte.MaxValue;
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                if (x < code.Left || x >= code.Left + code.Width || y < code.Top || y >= code.Top + code.Height)
                    light = Math.Min(light, pixels[(y * width) + x]);
            }
        }

        return new(module / scale, code.Width / scale * DistanceToWidth, quiet, HintBook.Cards.Contrast.Between(Grey(dark), Grey(light)));
    }

    private static int Grey(byte level) => level * 0x010101;
}
