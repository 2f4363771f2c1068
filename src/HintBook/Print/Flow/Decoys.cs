using System.Collections.Immutable;
using System.Text;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Print.Flow;

/// <summary>
/// The pattern under an answer that is read through a filter: letters of the same font and size as its own, in layers over each other without a gap, none of
/// which is seen through the filter. They are drawn as areas, so that nobody who reads the file takes them for text. One piece of pattern is drawn for each
/// font and size of a document, and laid side by side.
/// </summary>
internal sealed class Decoys
{
    // In ems: the size of a piece, and how far its lines are from each other. Lines of several layers stand between those of the answer.
    private const double TileWidth = 26, TileHeight = 14, LineStep = 0.58;
    private const int Layers = 6;

    private readonly Dictionary<(Typeface Face, double Size), XForm?> tiles = [];

    /// <summary>Draws the pieces that a document needs. To be called before it has tags: PDFsharp takes forms for pages then.</summary>
    /// <param name="document">The document.</param>
    /// <param name="pages">Its pages: the letters are drawn from its answers, so that each is as frequent among the decoys as there.</param>
    public Decoys(PdfDocument document, IEnumerable<PaperPage> pages)
    {
        PrintedUnderFilter[] answers = [.. pages.SelectMany(page => page.Pieces).SelectMany(placed => placed.Piece.Things).OfType<PrintedUnderFilter>()];
        Rune[] letters = [.. answers.SelectMany(TextsOf).SelectMany(text => text.Text.EnumerateRunes()).Where(Rune.IsLetterOrDigit)];
        foreach (var (face, size) in answers.Select(LookOf).OfType<(Typeface Face, double Size)>().Distinct())
            tiles[(face, size)] = Make(document, letters, face, size);
    }

    /// <summary>Draws the pattern under an answer.</summary>
    public void Draw(XGraphics graphics, PrintedUnderFilter filtered)
    {
        var place = new XRect(filtered.Place.X, filtered.Place.Y, filtered.Place.Width, filtered.Place.Height);
        graphics.DrawRectangle(new XSolidBrush(ColourOf(FilterInk.Ground)), place);
        if (LookOf(filtered) is not { } look || tiles.GetValueOrDefault(look) is not { } tile)
            return;
        var state = graphics.Save();
        graphics.IntersectClip(place);
        var (width, height) = (TileWidth * look.Size, TileHeight * look.Size);
        // Where it begins follows from the answer, so that no two can be held over each other.
        var begin = TextsOf(filtered).Aggregate(0u, (hash, text) => text.Text.Aggregate(hash, (sum, letter) => Mixed(sum, letter)));
        for (var y = place.Y - (begin % 97 / 97.0 * height); y < place.Bottom; y += height)
        {
            for (var x = place.X - (begin / 97 % 89 / 89.0 * width); x < place.Right; x += width)
                graphics.DrawImage(tile, x, y, width, height);
        }

        graphics.Restore(state);
    }

    private static IEnumerable<PrintedText> TextsOf(PrintedUnderFilter answer) => answer.Things.OfType<PrintedText>();

    // That of most of its letters.
    private static (Typeface Face, double Size)? LookOf(PrintedUnderFilter answer) =>
        TextsOf(answer).GroupBy(text => (text.Face, text.Size)).MaxBy(alike => alike.Sum(text => text.Text.Length))?.Key;

    private static XForm? Make(PdfDocument document, Rune[] letters, Typeface face, double size)
    {
        var shapes = letters.Distinct().ToDictionary(letter => letter, letter => GlyphOutlines.Of(letter, face));
        Rune[] drawn = [.. letters.Where(letter => shapes[letter] is not null)];
        if (drawn.Length == 0)
            return null;
        var form = new XForm(document, XUnit.FromMillimeter(TileWidth * size), XUnit.FromMillimeter(TileHeight * size));
        using var graphics = XGraphics.FromForm(form);
        graphics.ScaleTransform(XUnit.FromMillimeter(size).Point);
        for (uint layer = 0, count = 0; layer < Layers; layer++)
        {
            var paths = FilterInk.Patterns.Select(_ => new XGraphicsPath { FillMode = XFillMode.Winding }).ToArray();
            // A layer begins a part of a line lower than the one before it.
            var first = (double)layer / Layers * LineStep;
            for (var (y, row) = (first, 0u); y < TileHeight + 1; y += LineStep, row++)
            {
                for (var x = -(Mixed(layer, row) % 100 / 100.0); x < TileWidth;)
                {
                    var mixed = Mixed(layer + 7, count++);
                    var (figures, advance) = shapes[drawn[mixed / 64 % drawn.Length]]!.Value;
                    foreach (var figure in figures)
                        MarkDrawing.Add(paths[mixed % paths.Length], figure, point => new(x + point.X, y + point.Y));
                    x += advance;
                }
            }

            foreach (var (index, path) in paths.Index())
                graphics.DrawPath(new XSolidBrush(ColourOf(FilterInk.Patterns[index])), path);
        }

        return form;
    }

    private static XColor ColourOf((byte R, byte G, byte B) ink) => XColor.FromArgb(ink.R, ink.G, ink.B);

    // A small hash of two numbers: products of large primes, whose upper bits are well mixed and are brought down to the lower ones.
    private static uint Mixed(uint one, uint other)
    {
        var mixed = unchecked(((one * 73_856_093) ^ (other * 19_349_663)) * 2_654_435_761);
        mixed = unchecked((mixed ^ (mixed >> 15)) * 2_246_822_519);
        return mixed ^ (mixed >> 13);
    }
}
