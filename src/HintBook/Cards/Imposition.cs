using System.Collections.Immutable;

namespace HintBook.Cards;

/// <summary>
/// Where cards lie on a sheet: two across and four down, in the middle, so that a sheet turned over on its long edge
/// has every back behind its own front.
/// </summary>
public static class Imposition
{
    /// <summary>A card after cutting, in millimetres: the business card usual in Europe (a habit, not a standard).</summary>
    public static readonly Size Card = new(85, 55);

    /// <summary>How far colour runs over the cut on each side, in millimetres (common practice of printers, no standard).</summary>
    public const double Bleed = 3;

    /// <summary>Cards beside each other.</summary>
    public const int Columns = 2;

    /// <summary>Cards below each other.</summary>
    public const int Rows = 4;

    /// <summary>Cards on a sheet.</summary>
    public const int PerSheet = Columns * Rows;

    /// <summary>Length of a crop mark, in millimetres.</summary>
    internal const double MarkLength = 5;

    // Marks keep off the bleed, so that none is left on a card that is cut a little too large.
    private const double MarkGap = 1;

    /// <summary>How many sheets some cards need.</summary>
    public static int SheetsFor(int cards) => (cards + PerSheet - 1) / PerSheet;

    /// <summary>A front's place after cutting; cards run from left to right, then down.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public static Rect Front(Paper paper, int slot) => Cell(paper, slot % Columns, slot / Columns);

    /// <summary>A back's place after cutting, on the sheet's other side: its front's place seen from behind.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public static Rect Back(Paper paper, int slot) => Cell(paper, Columns - 1 - (slot % Columns), slot / Columns);

    /// <summary>The crop marks: short lines in the sheet's margins, each in line with a cut. They are the same on both sides.</summary>
    internal static ImmutableArray<PrintedLine> CropMarks(Paper paper)
    {
        var grid = Grid(paper).Grown(MarkGap);
        var marks = ImmutableArray.CreateBuilder<PrintedLine>();
        for (var column = 0; column < Columns; column++)
        {
            var card = Cell(paper, column, 0);
            foreach (var x in new[] { card.X, card.Right })
            {
                marks.Add(new(x, grid.Y - MarkLength, x, grid.Y, Tone.Ink));
                marks.Add(new(x, grid.Bottom, x, grid.Bottom + MarkLength, Tone.Ink));
            }
        }

        for (var row = 0; row < Rows; row++)
        {
            var card = Cell(paper, 0, row);
            foreach (var y in new[] { card.Y, card.Bottom })
            {
                marks.Add(new(grid.X - MarkLength, y, grid.X, y, Tone.Ink));
                marks.Add(new(grid.Right, y, grid.Right + MarkLength, y, Tone.Ink));
            }
        }

        return marks.ToImmutable();
    }

    private static Rect Cell(Paper paper, int column, int row)
    {
        var grid = Grid(paper);
        return new(
            grid.X + Bleed + (column * (Card.Width + (2 * Bleed))),
            grid.Y + Bleed + (row * (Card.Height + (2 * Bleed))),
            Card.Width,
            Card.Height);
    }

    // All cards with their bleeds.
    private static Rect Grid(Paper paper)
    {
        var sheet = Size.Of(paper);
        var width = Columns * (Card.Width + (2 * Bleed));
        var height = Rows * (Card.Height + (2 * Bleed));
        return new((sheet.Width - width) / 2, (sheet.Height - height) / 2, width, height);
    }
}
