using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Print.Flow;

namespace HintBook.Print.Booklets;

/// <summary>
/// Puts pages on sheets that are folded once and stapled in the fold. Inner sheets stand out over outer ones by the thickness of the paper; after all are
/// trimmed their outer margins would be narrower, so their pages move towards the fold by as much (creep).
/// </summary>
internal static class Saddle
{
    /// <summary>The thickness of a sheet of 100 g/m², in millimetres (common practice, no source).</summary>
    public const double Thickness = 0.12;

    private const double MarkLength = 4;

    /// <summary>The pages on each side of each sheet, outermost first, by number from 0: front and back take turns.</summary>
    /// <param name="pages">How many pages: a multiple of four.</param>
    public static ImmutableArray<(int Left, int Right)> Sides(int pages) =>
    [
        .. Enumerable.Range(0, pages / 4).SelectMany(sheet => new[]
        {
            (pages - 1 - (2 * sheet), 2 * sheet),
            ((2 * sheet) + 1, pages - 2 - (2 * sheet)),
        }),
    ];

    /// <summary>How far pages of a sheet move towards the fold, in millimetres.</summary>
    /// <param name="sheet">The sheet, from 0 for the outermost.</param>
    public static double Creep(int sheet) => sheet * Thickness;

    /// <summary>
    /// The sheets to print, to be turned over the edge beside which the fold doesn't run. As many sheets of the booklet stand one below the other on one of
    /// paper as there is room for; they are cut apart before they are folded. None if a sheet of paper has no room for two pages side by side.
    /// </summary>
    /// <param name="pages">The pages: a multiple of four.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="fromRight">Whether the fold is at the right of the first page, as for languages that run from right to left.</param>
    public static ImmutableArray<PaperPage> Sheets(ImmutableArray<PaperPage> pages, Paper paper, bool fromRight)
    {
        var page = pages[0].Frame.Page;
        var upright = Size.Of(paper);
        var (sheet, stacked) = new[] { upright, new Size(upright.Height, upright.Width) }
            .Select(size => (size, Stacked: size.Width + 0.01 >= 2 * page.Width ? (int)((size.Height + 0.01) / page.Height) : 0))
            .MaxBy(each => each.Stacked);
        if (stacked == 0)
            return [];
        var sides = fromRight ? [.. Sides(pages.Length).Select(side => (Left: side.Right, Right: side.Left))] : Sides(pages.Length);
        var sheets = ImmutableArray.CreateBuilder<PaperPage>();
        for (var first = 0; first < sides.Length / 2; first += stacked)
        {
            for (var side = 0; side < 2; side++)
            {
                var rows = Enumerable.Range(0, Math.Min(stacked, (sides.Length / 2) - first));
                sheets.Add(Side(pages, sheet, [.. rows.Select(row => (first + row, sides[(2 * (first + row)) + side]))], stacked));
            }
        }

        return sheets.ToImmutable();
    }

    private static PaperPage Side(ImmutableArray<PaperPage> pages, Size sheet, ImmutableArray<(int Sheet, (int Left, int Right) Pages)> rows, int stacked)
    {
        var page = pages[0].Frame.Page;
        var (left, top) = ((sheet.Width / 2) - page.Width, (sheet.Height - (stacked * page.Height)) / 2);
        var pieces = ImmutableArray.CreateBuilder<PlacedPiece>();
        var furniture = ImmutableArray.CreateBuilder<Printed>();
        foreach (var (row, (number, side)) in rows.Index())
        {
            var y = top + (row * page.Height);
            Put(pages[side.Left], left + Creep(number), y);
            Put(pages[side.Right], left + page.Width - Creep(number), y);
            furniture.AddRange(Marks(sheet.Width / 2, y, page, left));
        }

        return new(new(sheet, new Rect(0, 0, sheet.Width, sheet.Height)), pieces.ToImmutable(), furniture.ToImmutable());

        void Put(PaperPage from, double x, double y)
        {
            pieces.AddRange(from.Pieces.Select(placed => placed with { X = placed.X + x, Y = placed.Y + y }));
            furniture.AddRange(Moving.By(from.Furniture, x, y));
        }
    }

    // Short strokes at the fold's ends, and at the outer corners where the sheet of paper is larger.
    private static IEnumerable<Printed> Marks(double fold, double y, Size page, double left)
    {
        foreach (var end in new[] { y, y + page.Height - (MarkLength / 2) })
            yield return new PrintedLine(fold, end, fold, end + (MarkLength / 2), Tone.Rule);
        if (left < MarkLength)
            yield break;
        foreach (var edge in new[] { y, y + page.Height })
        {
            yield return new PrintedLine(fold - page.Width - MarkLength, edge, fold - page.Width - 1, edge, Tone.Ink);
            yield return new PrintedLine(fold + page.Width + 1, edge, fold + page.Width + MarkLength, edge, Tone.Ink);
        }
    }
}
