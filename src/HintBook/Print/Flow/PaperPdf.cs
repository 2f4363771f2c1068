using HintBook.Cards;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace HintBook.Print.Flow;

/// <summary>Writes the pages of a paper as one PDF: tagged in reading order, with the title, the language and bookmarks.</summary>
internal static class PaperPdf
{
    /// <summary>The file.</summary>
    /// <param name="title">The document's title.</param>
    /// <param name="language">Its language as a BCP 47 tag.</param>
    /// <param name="pages">Its pages.</param>
    /// <param name="look">Its colours; null for black on white.</param>
    public static byte[] Write(string title, string language, IEnumerable<PaperPage> pages, CardLook? look = null) => StablePdf.Make(title, document =>
    {
        PaperPage[] all = [.. pages];
        var drawn = new Drawn(look ?? CardLook.Plain, new Decoys(document, all));
        var tags = new PaperTags(UAManager.ForDocument(document).StructureBuilder);
        document.Language = language;
        document.ViewerPreferences.DisplayDocTitle = true;
        foreach (var page in all)
            Add(document, tags, page, drawn);
        tags.End();
        FilterInk.Blend(document);
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
                drawn.Decoys.Draw(graphics, filtered);
                foreach (var each in filtered.Things)
                    DrawPale(graphics, each, drawn);
                break;
            default:
                PdfDrawing.Draw(graphics, thing, drawn.Look);
                break;
        }
    }

    private static void DrawPale(XGraphics graphics, Printed thing, Drawn drawn)
    {
        if (thing is PrintedText text)
        {
            var width = text.FromRight ? Letters.Width(text.Text, text.Face, text.Size) : 0;
            // Nothing that is drawn afterwards may blend.
            var state = graphics.Save();
            TextDrawing.Draw(graphics, text.Text, text.Face, text.Size, FilterInk.Brush, text.X - width, text.Baseline, text.RightToLeft);
            graphics.Restore(state);
        }
        else
        {
            Draw(graphics, thing, drawn);
        }
    }

    // A photo that stands on several pages is in the file once.
    private sealed class Drawn(CardLook look, Decoys decoys)
    {
        public CardLook Look => look;

        public Decoys Decoys => decoys;

        private readonly Dictionary<byte[], XImage> images = new(ReferenceEqualityComparer.Instance);

        public XImage Of(byte[] jpeg)
        {
            if (!images.TryGetValue(jpeg, out var image))
                images[jpeg] = image = XImage.FromStream(new MemoryStream(jpeg, 0, jpeg.Length, writable: false, publiclyVisible: true));
            return image;
        }
    }
}
