namespace HintBook.Cards;

/// <summary>How far two colours stand apart (WCAG 2.2, relative luminance and contrast ratio).</summary>
internal static class Contrast
{
    /// <summary>From 1, the same, to 21, black on white.</summary>
    /// <param name="one">0xRRGGBB.</param>
    /// <param name="other">0xRRGGBB.</param>
    public static double Between(int one, int other)
    {
        var (light, dark) = (Luminance(one), Luminance(other));
        return (Math.Max(light, dark) + 0.05) / (Math.Min(light, dark) + 0.05);
    }

    private static double Luminance(int colour) =>
        (0.2126 * Linear((colour >> 16) & 0xFF)) + (0.7152 * Linear((colour >> 8) & 0xFF)) + (0.0722 * Linear(colour & 0xFF));

    private static double Linear(int channel) => channel / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
}
