using System.Collections.Immutable;

namespace HintBook.Print.Flow;

/// <summary>How well an answer under a red filter is seen: contrasts with the paper, from 1 to 21 (WCAG 2.2), worked out from the inks.</summary>
/// <param name="Letters">The letters, through the filter.</param>
/// <param name="Pattern">The pattern over them, through the filter.</param>
/// <param name="LettersBare">The letters, with bare eyes.</param>
/// <param name="PatternBare">The pattern, with bare eyes.</param>
public sealed record FilterContrast(double Letters, double Pattern, double LettersBare, double PatternBare);

/// <summary>
/// The inks of an answer under a red filter, and how well they are seen. A filter is reckoned to let all red through and <see cref="Leak"/> of the rest
/// (a common acetate; from memory). Contrasts are WCAG 2.2's, of the relative luminances of the light that reaches the eye.
/// </summary>
internal static class FilterInk
{
    /// <summary>The ink of the letters: pale without a filter, nearly black through it.</summary>
    public static readonly (byte R, byte G, byte B) Letters = (0, 195, 210);

    /// <summary>The inks of the pattern, lighter and darker than the letters: they hide the letters without a filter, and aren't seen through it.</summary>
    public static readonly ImmutableArray<(byte R, byte G, byte B)> Patterns = [(255, 90, 90), (255, 175, 70), (255, 125, 215), (255, 215, 130)];

    /// <summary>How much green and blue light the filter lets through.</summary>
    public const double Leak = 0.03;

    private static readonly (byte R, byte G, byte B) Paper = (255, 255, 255);

    /// <summary>The contrast of the letters with the paper, seen with bare eyes.</summary>
    public static double Bare => Contrast(Luminance(Letters, 1), Luminance(Paper, 1));

    /// <summary>The contrast of the pattern's darkest ink with the paper, seen with bare eyes: above that of the letters, which are lost in it.</summary>
    public static double PatternBare => Patterns.Max(ink => Contrast(Luminance(ink, 1), Luminance(Paper, 1)));

    /// <summary>The contrast of the letters with the paper through the filter.</summary>
    public static double Filtered => Contrast(Luminance(Letters, Leak), Luminance(Paper, Leak));

    /// <summary>The contrast of the pattern's darkest ink with the paper through the filter.</summary>
    public static double PatternFiltered => Patterns.Max(ink => Contrast(Luminance(ink, Leak), Luminance(Paper, Leak)));

    /// <summary>All four.</summary>
    public static FilterContrast Contrasts => new(Filtered, PatternFiltered, Bare, PatternBare);

    private static double Luminance((byte R, byte G, byte B) ink, double greenAndBlue) =>
        (0.2126 * Linear(ink.R)) + (greenAndBlue * ((0.7152 * Linear(ink.G)) + (0.0722 * Linear(ink.B))));

    private static double Linear(byte part)
    {
        var share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static double Contrast(double one, double other) => (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
}
