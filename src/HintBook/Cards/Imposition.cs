using System.Collections.Immutable;

namespace HintBook.Cards;

/// <summary>
/// Where cards of the usual size lie on a sheet: two across and four down, in the middle, so that a sheet turned over on its long edge
/// has every back behind its own front. Other sizes and sheets: <see cref="CardSheet"/>.
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

    /// <summary>How many sheets some cards need.</summary>
    public static int SheetsFor(int cards) => (cards + PerSheet - 1) / PerSheet;

    /// <summary>A front's place after cutting; cards run from left to right, then down.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public static Rect Front(Paper paper, int slot) => CardSheet.Usual(paper).Front(slot);

    /// <summary>A back's place after cutting, on the sheet's other side: its front's place seen from behind.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public static Rect Back(Paper paper, int slot) => CardSheet.Usual(paper).Back(slot);

    /// <summary>The crop marks: short lines in the sheet's margins, each in line with a cut. They are the same on both sides.</summary>
    internal static ImmutableArray<PrintedLine> CropMarks(Paper paper) => [.. CardSheet.Usual(paper).Marks(back: false).OfType<PrintedLine>()];
}
