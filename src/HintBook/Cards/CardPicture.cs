using System.Runtime.CompilerServices;
using HintBook.Photos.Drawings;
using PdfSharp.Drawing;

namespace HintBook.Cards;

/// <summary>The maker's mark or the box's photo, as it is printed on cards.</summary>
/// <param name="Jpeg">The picture, cut to its place, in sRGB and without metadata.</param>
/// <param name="Width">Pixels in a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="IsMark">Whether it is the maker's mark, which is shown whole.</param>
public sealed record CardPicture(ReadOnlyMemory<byte> Jpeg, int Width, int Height, bool IsMark)
{
    /// <summary>A mark that is drawn, without pixels.</summary>
    /// <param name="drawing">Its shapes.</param>
    public static CardPicture Of(Drawing drawing) =>
        new(ReadOnlyMemory<byte>.Empty, (int)Math.Ceiling(drawing.Width), (int)Math.Ceiling(drawing.Height), IsMark: true) { Drawing = drawing };

    /// <summary>The shapes of a mark that is drawn; null for pixels.</summary>
    public Drawing? Drawing { get; init; }

    /// <summary>The place of a picture on a front, in millimetres.</summary>
    public static (double Width, double Height) PlaceOn(Size card) => (WidthFor(card), HeightFor(card));

    /// <summary>How wide a photo stands on a front, in millimetres.</summary>
    internal static double WidthFor(Size card) => Math.Round(card.Width * 0.26, 1);

    /// <summary>How high a photo stands on a front, in millimetres.</summary>
    internal static double HeightFor(Size card) => Math.Round(card.Height * 0.38, 1);

    // One picture in a document, however many cards show it.
    private static readonly ConditionalWeakTable<PdfSharp.Pdf.PdfDocument, XImage> Shown = [];

    /// <summary>The picture for drawing in a document.</summary>
    internal XImage In(XGraphics graphics)
    {
        var document = graphics.PdfPage?.Owner ?? throw new ArgumentException("Pictures are drawn on pages of a document only.", nameof(graphics));
        if (!Shown.TryGetValue(document, out var image))
            Shown.Add(document, image = XImage.FromStream(new MemoryStream(Jpeg.ToArray(), 0, Jpeg.Length, writable: false, publiclyVisible: true)));
        return image;
    }
}
