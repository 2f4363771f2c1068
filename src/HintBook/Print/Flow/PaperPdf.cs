using HintBook.Cards;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace HintBook.Print.Flow;

/// <summary>Writes the pages of a paper as one PDF: tagged in reading order, with the title, the language and bookmarks.</summary>
internal static class PaperPdf
{
    // The pattern over an answer under a filter: strokes as wide as letters, in rows closer than lines.
    private const double StrokeStep = 0.8;
    private const double StrokeWidth = 0.32;
    private const int Layers = 6;

    /// <summary>The file.</summary>
    /// <param name="title">The document's title.</param>
    /// <param name="language">Its language as a BCP 47 tag.</param>
    /// <param name="pages">Its pages.</param>
    /// <param name="look">Its colours; null for black on white.</param>
    public static byte[] Write(string title, string language, IEnumerable<PaperPage> pages, CardLook? look = null) => StablePdf.Make(title, document =>
    {
        var drawn = new Drawn(look ?? CardLook.Plain);
        var tags = new PaperTags(UAManager.ForDocument(document).StructureBuilder);
        document.Language = language;
        document.ViewerPreferences.DisplayDocTitle = true;
        foreach (var page in pages)
            Add(document, tags, page, drawn);
        tags.End();
    });

    private static void Add(PdfDocument document, PaperTags tags, PaperPage page, Drawn drawn)
    {
        var sheet = document.AddPage();
        sheet.Width = XUnit.FromMillimeter(page.Frame.Page.Width);
        sheet.Height = XUnit.FromMillimeter(page.Frame.Page.Height);
        // Of a page on which nothing was drawn PDFsharp writes a stream that readers take for damaged.
        if (page.Pieces.IsEmpty && page.Furniture.IsEmpty)
            return;
        using var graphics = XGraphics.FromPdfPage(sheet, XGraphicsUnit.Millimeter);
        foreach (var (index, placed) in page.Pieces.Index())
        {
            if (placed.Piece.Bookmark is { } bookmark)
                Mark(document.Outlines, bookmark.Level, bookmark.Text, sheet);
            var goesOn = index + 1 < page.Pieces.Length && page.Pieces[index + 1].Piece.Continues;
            tags.Draw(placed, isFirst: index == 0, goesOn, thing => Draw(graphics, thing, drawn));
        }

        if (page.Furniture.IsEmpty)
            return;
        tags.Adorn(() =>
        {
            foreach (var thing in page.Furniture)
                Draw(graphics, thing, drawn);
        });
    }

    private static void Mark(PdfOutlineCollection bookmarks, int level, string text, PdfPage page)
    {
        for (; level > 1 && bookmarks.Count > 0; level--)
            bookmarks = bookmarks[^1].Outlines;
        bookmarks.Add(text, page, opened: true);
    }

    private static void Draw(XGraphics graphics, Printed thing, Drawn drawn)
    {
        switch (thing)
        {
            case PrintedPhoto picture:
                graphics.DrawImage(drawn.Of(picture.Jpeg), picture.Place.X, picture.Place.Y, picture.Place.Width, picture.Place.Height);
                break;
            case PrintedWhite white:
                graphics.DrawRectangle(XBrushes.White, white.Place.X, white.Place.Y, white.Place.Width, white.Place.Height);
                break;
            case PrintedTurned turned:
                var state = graphics.Save();
                PdfDrawing.TurnAbout(graphics, turned);
                foreach (var each in turned.Things)
                    Draw(graphics, each, drawn);
                graphics.Restore(state);
                break;
            case PrintedUnderFilter filtered:
                Pattern(graphics, filtered.Place);
                foreach (var each in filtered.Things)
                    DrawPale(graphics, each, drawn);
                break;
            default:
                PdfDrawing.Draw(graphics, thing, drawn.Look);
                break;
        }
    }

    // Strokes whose angle, length and ink follow from their place alone.
    private static void Pattern(XGraphics graphics, Rect place)
    {
        var paths = Enumerable.Range(0, Layers * FilterInk.Patterns.Length).Select(_ => new XGraphicsPath()).ToArray();
        var (rows, columns) = ((int)(place.Height / StrokeStep), (int)(place.Width / StrokeStep));
        for (var row = 0; row <= rows; row++)
        {
            for (var column = 0; column <= columns; column++)
            {
                var mixed = Mixed(row, column);
                var (x, y) = (place.X + (column * StrokeStep), place.Y + (row * StrokeStep));
                var (angle, length) = (mixed % 16 * Math.PI / 16, StrokeStep * (0.4 + (mixed / 16 % 4 * 0.2)));
                var (dx, dy) = (Math.Cos(angle) * length, Math.Sin(angle) * length);
                var path = paths[mixed / 64 % paths.Length];
                path.StartFigure();
                path.AddLines([new XPoint(x - dx, y - dy), new XPoint(x + dx, y + dy)]);
            }
        }

        // Each ink lies over the others as often as under them.
        foreach (var (layer, path) in paths.Index())
        {
            var ink = ColourOf(FilterInk.Patterns[layer % FilterInk.Patterns.Length]);
            graphics.DrawPath(new XPen(ink, StrokeWidth) { LineCap = XLineCap.Round, LineJoin = XLineJoin.Round }, path);
        }
    }

    // A small hash of two numbers: products of large primes, whose upper bits are well mixed and are brought down to the lower ones.
    private static uint Mixed(int row, int column)
    {
        var mixed = unchecked((((uint)row * 73_856_093) ^ ((uint)column * 19_349_663)) * 2_654_435_761);
        mixed = unchecked((mixed ^ (mixed >> 15)) * 2_246_822_519);
        return mixed ^ (mixed >> 13);
    }

    private static void DrawPale(XGraphics graphics, Printed thing, Drawn drawn)
    {
        if (thing is PrintedText text)
        {
            var width = text.FromRight ? Letters.Width(text.Text, text.Face, text.Size) : 0;
            var brush = new XSolidBrush(ColourOf(FilterInk.Letters));
            TextDrawing.Draw(graphics, text.Text, text.Face, text.Size, brush, text.X - width, text.Baseline, text.RightToLeft);
        }
        else
        {
            Draw(graphics, thing, drawn);
        }
    }

    private static XColor ColourOf((byte R, byte G, byte B) ink) => XColor.FromArgb(ink.R, ink.G, ink.B);

    // A photo that stands on several pages is in the file once.
    private sealed class Drawn(CardLook look)
    {
        public CardLook Look => look;

        private readonly Dictionary<byte[], XImage> images = new(ReferenceEqualityComparer.Instance);

        public XImage Of(byte[] jpeg)
        {
            if (!images.TryGetValue(jpeg, out var image))
                images[jpeg] = image = XImage.FromStream(new MemoryStream(jpeg, 0, jpeg.Length, writable: false, publiclyVisible: true));
            return image;
        }
    }
}
