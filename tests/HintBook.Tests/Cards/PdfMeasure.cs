using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace HintBook.Tests.Cards;

/// <summary>What PdfPig, a reader that the program doesn't use, finds on a page, in millimetres from the top left corner.</summary>
internal static class PdfMeasure
{
    private const double MillimetresPerPoint = 25.4 / 72;

    public static T Page<T>(byte[] pdf, int number, Func<Page, T> measure)
    {
        using var document = PdfDocument.Open(pdf);
        return measure(document.GetPage(number));
    }

    public static int Pages(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return document.NumberOfPages;
    }

    /// <summary>The page's words, in the order of its lines.</summary>
    public static string Text(byte[] pdf, int number) =>
        Page(pdf, number, page => string.Join(' ', page.GetWords().Select(word => word.Text)));

    /// <summary>The page's letters in the order in which they are drawn, without spaces: what stands on several lines of a card is in one piece.</summary>
    public static string Drawn(byte[] pdf, int number) =>
        Page(pdf, number, page => string.Concat(page.Letters.Select(letter => letter.Value).Where(letter => !string.IsNullOrWhiteSpace(letter))));

    public static (double Width, double Height) Size(Page page) =>
        (Millimetres(page.Width), Millimetres(page.Height));

    /// <summary>Everything stroked: upright and level lines.</summary>
    public static IEnumerable<Extent> Lines(Page page) => page.Paths.Where(path => path.IsStroked).Select(path => Bounds(page, path));

    /// <summary>The codes: paths of very many loops.</summary>
    public static IReadOnlyList<(Extent All, Extent Finder)> Codes(Page page) =>
    [
        .. from path in page.Paths
           where path.IsFilled && path.Count > 20
           select (Bounds(page, path), Bounds(page, path[0].GetBoundingRectangle()!.Value)),
    ];

    /// <summary>Everything that isn't a code: filled shapes, lines and letters.</summary>
    public static IEnumerable<Extent> Others(Page page) =>
        page.Paths.Where(path => path.Count <= 20).Select(path => Bounds(page, path))
            .Concat(page.Letters.Where(letter => letter.BoundingBox.Width > 0).Select(letter => Bounds(page, letter.BoundingBox)));

    private static Extent Bounds(Page page, PdfPath path) => Bounds(page, path.GetBoundingRectangle()!.Value);

    private static Extent Bounds(Page page, PdfRectangle at) => new(
        Millimetres(at.Left), Millimetres(page.Height - at.Top), Millimetres(at.Right), Millimetres(page.Height - at.Bottom));

    private static double Millimetres(double points) => points * MillimetresPerPoint;
}

/// <summary>The four edges of something, in millimetres.</summary>
internal sealed record Extent(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public bool Meets(Extent other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public Extent Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
}
