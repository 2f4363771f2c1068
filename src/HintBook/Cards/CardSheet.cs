using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>Where cards of one size lie on sheets of one size: as many as there is room for, in the middle, with a bleed around each.</summary>
/// <param name="Card">A card after cutting, lying.</param>
/// <param name="Page">The sheet as it is printed.</param>
/// <param name="Columns">Cards beside each other.</param>
/// <param name="Rows">Cards below each other.</param>
/// <param name="ForShop">Whether a page is one card with its bleed, for a printer's shop: without marks, with a trim box and a bleed box.</param>
/// <param name="TurnsUpright">Whether the printer turns a sheet over an upright edge, so that backs mirror from left to right; else from top to bottom.</param>
/// <param name="Offset">How far the printer puts backs to the right and down, in millimetres; they are moved the other way.</param>
public sealed record CardSheet(Size Card, Size Page, int Columns, int Rows, bool ForShop, bool TurnsUpright, (double Right, double Down) Offset)
{
    /// <summary>The smallest card that holds a code, a title and its cautions, lying, in millimetres.</summary>
    public static readonly Size Least = new(70, 45);

    /// <summary>The largest card, lying, in millimetres: A6 (ISO 216).</summary>
    public static readonly Size Most = new(148, 105);

    // What stays free of cards at each edge: 5 mm that printers don't reach, a mark and its gap.
    private const double Margin = 5 + PrintersMarks.Length + PrintersMarks.Gap;

    // A sheet lies only if that gains more than a quarter of the cards: an upright one is easier to cut.
    private const double WorthLying = 1.25;

    // Usual sizes: the first three are habits, ID-1 is ISO/IEC 7810, A7 is ISO 216.
    private static readonly ImmutableDictionary<string, Size> Named = ImmutableDictionary<string, Size>.Empty
        .Add("european", new(85, 55))
        .Add("american", new(88.9, 50.8))
        .Add("japanese", new(91, 55))
        .Add("id-1", new(85.60, 53.98))
        .Add("a7", new(105, 74));

    /// <summary>Cards on a sheet.</summary>
    public int PerSheet => Columns * Rows;

    /// <summary>The usual card on a paper, turned over its long edge.</summary>
    public static CardSheet Usual(Paper paper) => On(Named["european"], Size.Of(paper), overLongEdge: true, default);

    /// <summary>The sheets that an author wants, and a finding where the card is too small or too large; then its size is the usual one.</summary>
    /// <param name="wishes">What the author wants.</param>
    /// <param name="paper">The paper for a book that names none.</param>
    public static (CardSheet Sheet, Finding? Finding) Of(PrintWishes wishes, Paper paper)
    {
        var (card, finding) = SizeOf(wishes.Card);
        var sheet = wishes.Sheet?.Value switch
        {
            "a4" => Paper.A4,
            "letter" => Paper.Letter,
            "a3" => Paper.A3,
            "sra3" => Paper.Sra3,
            _ => paper,
        };
        var made = wishes.Sheet?.Value == "shop"
            ? new CardSheet(card, WithBleed(card), 1, 1, ForShop: true, TurnsUpright: true, default)
            : On(card, Size.Of(sheet), wishes.Duplex?.Value != "short-edge", wishes.Offset);
        return (made, finding);
    }

    /// <summary>How many sheets some cards need.</summary>
    public int SheetsFor(int cards) => (cards + PerSheet - 1) / PerSheet;

    /// <summary>A front's place after cutting; cards run from left to right, then down.</summary>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public Rect Front(int slot) => Cell(slot % Columns, slot / Columns);

    /// <summary>A back's place after cutting, on the sheet's other side: its front's place seen from behind, moved against the printer's offset.</summary>
    /// <param name="slot">0 to <see cref="PerSheet"/> − 1.</param>
    public Rect Back(int slot)
    {
        var (column, row) = (slot % Columns, slot / Columns);
        var place = TurnsUpright ? Cell(Columns - 1 - column, row) : Cell(column, Rows - 1 - row);
        return place with { X = place.X - Offset.Right, Y = place.Y - Offset.Down };
    }

    /// <summary>The marks around all cards; none for a shop, which sets its own.</summary>
    /// <param name="back">Whether for the side of the backs, whose marks are moved with them.</param>
    internal ImmutableArray<Printed> Marks(bool back)
    {
        if (ForShop)
            return [];
        var cells = Enumerable.Range(0, PerSheet).Select(slot => Cell(slot % Columns, slot / Columns)).ToArray();
        var (right, down) = back ? (-Offset.Right, -Offset.Down) : (0, 0);
        return [.. PrintersMarks.Crop(cells, Grid).Concat(PrintersMarks.Registration(Grid)).Select(mark => PrintersMarks.Moved(mark, right, down))];
    }

    // All cards with their bleeds.
    private Rect Grid
    {
        get
        {
            var (width, height) = (Columns * (Card.Width + (2 * Imposition.Bleed)), Rows * (Card.Height + (2 * Imposition.Bleed)));
            return new((Page.Width - width) / 2, (Page.Height - height) / 2, width, height);
        }
    }

    private static Size WithBleed(Size card) => new(card.Width + (2 * Imposition.Bleed), card.Height + (2 * Imposition.Bleed));

    private static CardSheet On(Size card, Size sheet, bool overLongEdge, (double Right, double Down) offset)
    {
        var upright = Count(card, sheet);
        var lying = Count(card, new(sheet.Height, sheet.Width));
        var lies = lying.Columns * lying.Rows > WorthLying * upright.Columns * upright.Rows;
        var (columns, rows) = lies ? lying : upright;
        return new(card, lies ? new(sheet.Height, sheet.Width) : sheet, columns, rows, ForShop: false, TurnsUpright: overLongEdge != lies, offset);
    }

    private static (int Columns, int Rows) Count(Size card, Size sheet) => (
        (int)((sheet.Width - (2 * Margin)) / (card.Width + (2 * Imposition.Bleed))),
        (int)((sheet.Height - (2 * Margin)) / (card.Height + (2 * Imposition.Bleed))));

    private static (Size Card, Finding? Finding) SizeOf(Located<string>? wanted)
    {
        var usual = Named["european"];
        if (wanted is not { } written || Named.TryGetValue(written.Value, out usual))
            return (usual, null);
        usual = Named["european"];
        if (PrintWishes.Millimetres(written.Value) is not { } sides)
            return (usual, null);
        var card = new Size(Math.Max(sides.Width, sides.Height), Math.Min(sides.Width, sides.Height));
        var fits = card.Width >= Least.Width && card.Height >= Least.Height && card.Width <= Most.Width && card.Height <= Most.Height;
        return fits ? (card, null) : (usual, CardFindings.CardSize(written, card));
    }

    private Rect Cell(int column, int row)
    {
        var grid = Grid;
        return new(
            grid.X + Imposition.Bleed + (column * (Card.Width + (2 * Imposition.Bleed))),
            grid.Y + Imposition.Bleed + (row * (Card.Height + (2 * Imposition.Bleed))),
            Card.Width,
            Card.Height);
    }
}
