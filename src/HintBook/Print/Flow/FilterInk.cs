using System.Collections.Immutable;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Print.Flow;

/// <summary>How well an answer under a red filter is seen: contrasts from 1 to 21 (WCAG 2.2), worked out from the inks.</summary>
/// <param name="Letters">The letters with the pattern around them, through the filter, on the average of all its inks.</param>
/// <param name="Least">The same for the lightest letter beside the darkest ink.</param>
/// <param name="Bare">The letters with the same ink of the pattern around them, in grey, where that is most; 1 where they can't be told apart.</param>
public sealed record FilterContrast(double Letters, double Least, double Bare);

/// <summary>
/// The inks of an answer under a red filter, and how well they are seen. A filter is reckoned to let all red through and <see cref="Leak"/> of the rest
/// (a common acetate; from memory). Contrasts are WCAG 2.2's, of the relative luminances of the light that reaches the eye.
/// </summary>
/// <remarks>
/// Letters have no red in them, the pattern has all of it: through the filter it is one light ground. Without a filter letters are about as light as the
/// pattern on which they lie, since their ink is blended with it (“hard light”, ISO 32000-1, 11.3.5.2): its red is taken away, its green is raised by about as
/// much, its blue is kept. So grey shows decoys alone. In colour the pattern goes from dark red to pale yellow, and the letters from green to blue with it.
/// A viewer that can't blend shows them in one green.
/// </remarks>
internal static class FilterInk
{
    /// <summary>The ink of the letters.</summary>
    public static readonly (byte R, byte G, byte B) Letters = (0, 193, 128);

    /// <summary>What lies under the pattern.</summary>
    public static readonly (byte R, byte G, byte B) Ground = (255, 50, 40);

    /// <summary>The inks of the pattern, as different in lightness as full red lets them be: eyes follow lightness before hue.</summary>
    public static readonly ImmutableArray<(byte R, byte G, byte B)> Patterns =
    [
        (255, 0, 0), (255, 0, 40), (255, 0, 80), (255, 0, 150), (255, 0, 255), (255, 60, 0), (255, 150, 0), (255, 110, 255), (255, 225, 150),
    ];

    /// <summary>How much green and blue light the filter lets through.</summary>
    public const double Leak = 0.03;

    // PDFsharp can't blend. What is drawn with this transparency, which nothing else has, is made to by Blend.
    private const int Marked = 254;

    /// <summary>Draws the letters. The document has to go through <see cref="Blend"/>.</summary>
    public static XBrush Brush { get; } = new XSolidBrush(XColor.FromArgb(Marked, Letters.R, Letters.G, Letters.B));

    /// <summary>How well the letters are seen.</summary>
    public static FilterContrast Contrasts
    {
        get
        {
            var letters = Patterns.Select(Blended).ToArray();
            return new(
                Contrast(letters.Average(ink => Luminance(ink, Leak)), Patterns.Average(ink => Luminance(ink, Leak))),
                Contrast(letters.Max(ink => Luminance(ink, Leak)), Patterns.Min(ink => Luminance(ink, Leak))),
                Patterns.Zip(letters).Max(pair => Contrast(Luminance(pair.First, 1), Luminance(pair.Second, 1))));
        }
    }

    /// <summary>Makes the ink of the letters blend with what lies under it.</summary>
    public static void Blend(PdfDocument document)
    {
        foreach (var state in document.Internals.GetAllObjects().OfType<PdfDictionary>().Where(IsMarked))
        {
            state.Elements.SetReal("/ca", 1);
            state.Elements.SetName("/BM", "/HardLight");
        }
    }

    private static bool IsMarked(PdfDictionary state) =>
        state.Elements.GetName("/Type") == "/ExtGState" && state.Elements.ContainsKey("/ca") && state.Elements.GetReal("/ca") is > 0.99 and < 1;

    // Hard light: a source darker than half multiplies, a lighter one screens.
    private static (byte R, byte G, byte B) Blended((byte R, byte G, byte B) under)
    {
        return (Part(under.R, Letters.R), Part(under.G, Letters.G), Part(under.B, Letters.B));

        static byte Part(double below, double above) => (byte)Math.Round(
            above <= 127.5 ? 2 * below * above / 255 : 255 - ((255 - below) * (255 - ((2 * above) - 255)) / 255));
    }

    private static double Luminance((byte R, byte G, byte B) ink, double greenAndBlue) =>
        (0.2126 * Linear(ink.R)) + (greenAndBlue * ((0.7152 * Linear(ink.G)) + (0.0722 * Linear(ink.B))));

    private static double Linear(byte part)
    {
        var share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }

    private static double Contrast(double one, double other) => (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
}
