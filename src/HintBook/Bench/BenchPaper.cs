using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Print.Flow;
using HintBook.Print.Papers;

namespace HintBook.Bench;

/// <summary>What the maker's sheets have in common: a book for one copy or for all, a head with fields to fill in, one column.</summary>
internal static class BenchPaper
{
    private const double MarginX = 16;
    private const double Top = 14;
    private const double Bottom = 18;
    private const double FieldHeight = 9;

    /// <summary>What the sheets are made from.</summary>
    /// <param name="book">The book as it was checked.</param>
    /// <param name="paper">The sheets.</param>
    /// <param name="copy">The copy that they are for; null for all.</param>
    /// <param name="picture">Gives a developed picture by its path in the site; null where it isn't there.</param>
    public static PaperBook Of(Examined book, Paper paper, Copy? copy, Func<string, byte[]?>? picture = null)
    {
        var all = new PaperBook
        {
            Plan = book.Site.Plan,
            Words = book.Theme.WordsIn(book.Book.Language).Words,
            Where = book.Site.Where,
            Picture = picture ?? (_ => null),
            Look = CardLook.Of(book.Theme).Look,
            Paper = paper,
        };
        return copy is null ? all : all with { Serial = copy.Serial.Value, Plan = all.Plan with { Book = book.Book.As(copy) } };
    }

    /// <summary>How the sheets are set.</summary>
    public static PaperStyle StyleOf(PaperBook paper) => new(3.0, paper.Look.Title);

    /// <summary>The head: what it is, of which box, and who did it when.</summary>
    /// <param name="paper">The book.</param>
    /// <param name="what">What the sheet is.</param>
    public static IEnumerable<Block> Head(PaperBook paper, string what)
    {
        var style = StyleOf(paper);
        string[] fields = [paper.Words["print_serial"], paper.Words["print_date"], paper.Words["print_name"]];
        var empty = fields.Skip(paper.Serial is null ? 0 : 1)
            .Select((field, i) => new FieldBlock(field, FieldHeight, style.Quiet) { Before = i == 0 ? 2 * style.Gap : 0 });
        return [.. Heads.Of(paper, what, style), .. empty];
    }

    /// <summary>A sheet's pages.</summary>
    /// <param name="paper">The book.</param>
    /// <param name="what">What the sheet is.</param>
    /// <param name="above">What stands before a table.</param>
    /// <param name="head">The head of the table's columns, which every page has that goes on with it; null where there is no table.</param>
    /// <param name="rows">The table's rows and what stands between them.</param>
    /// <param name="below">What stands behind it.</param>
    public static ImmutableArray<PaperPage> Set(
        PaperBook paper, string what, IEnumerable<Block> above, Block? head = null, IEnumerable<Block>? rows = null, IEnumerable<Block>? below = null)
    {
        var page = Size.Of(paper.Paper);
        var room = new Rect(MarginX, Top, page.Width - (2 * MarginX), page.Height - Top - Bottom);
        var setter = new Setter(room.Width, room.Height, paper.RightToLeft);
        ImmutableArray<Piece> before = [.. setter.Set(above)], table = [.. setter.Set(rows ?? [])];
        ImmutableArray<Piece> columns = head is null ? [] : [.. setter.Set([head])];
        var first = before.Length + columns.Length;
        var pages = Paginator.Fill(
            [.. before, .. columns, .. table, .. setter.Set(below ?? [])],
            new(page, room),
            piece => columns is [var again] && piece >= first && piece < first + table.Length ? again : null);
        return Furniture.Numbered(pages, $"{paper.Book.Title.Value} · {what}");
    }

    /// <summary>The file of a sheet.</summary>
    public static byte[] Write(PaperBook paper, string what, ImmutableArray<PaperPage> pages) =>
        PaperPdf.Write($"{paper.Book.Title.Value}: {what}", paper.Book.Language.Value, pages, paper.Look);

    /// <summary>A heading.</summary>
    public static Block Heading(string text, PaperStyle style) =>
        TextBlock.Of(text, style.Heading) with { Before = 2.2 * style.Gap, Role = Role.Heading, Bookmark = 2, WithNext = true };

    /// <summary>A line with a square to tick.</summary>
    public static Block Tick(string text, PaperStyle style) =>
        TextBlock.Of(text, style.Body) with { Indent = 6.5, Marker = new Marker.TickBox(), Before = style.Gap * 0.7 };
}
