using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>The key of a sealed book on paper, for its maker's drawer: whoever holds this sheet opens all help of all its boxes.</summary>
public static class KeySheet
{
    private const double Margin = 22;
    private const double CodeSide = 52;
    private const int GroupsInALine = 4;

    private const string Warning =
        "Whoever has this sheet opens all help of all boxes of this book. Keep it as you keep a house key, in another place than the computer. "
        + "Don’t photograph it, and don’t send it.";

    private const string Purpose = "With it the book can still be corrected, and copies added or replaced, if the file book.key is lost.";

    private const string HowTo = "Write into a terminal, with all letters below; small letters and hyphens will do, and O is read as 0, I and L as 1:";

    private const string Scanned = "The code says the same letters.";

    /// <summary>A PDF of one page, A4; on Letter it fits as well.</summary>
    /// <param name="title">The book's title.</param>
    /// <param name="id">The book's <c>id:</c>, without which the letters are of no use.</param>
    /// <param name="letters">The key as letters in groups, with spaces between.</param>
    public static byte[] Write(string title, string id, string letters)
    {
        var page = Size.Of(Paper.A4);
        var room = new Rect(Margin, Margin, page.Width - (2 * Margin), page.Height - (2 * Margin));
        var pieces = new Setter(room.Width, room.Height, RightToLeft: false).Set(Blocks(Letters.Printable(title).Text, id, letters));
        return PaperPdf.Write($"{title}: key", "en", Paginator.Fill(pieces, new(page, room)));
    }

    private static IEnumerable<Block> Blocks(string title, string id, string letters)
    {
        var style = new PaperStyle(4);
        yield return TextBlock.Of(title, style.Quiet) with { WithNext = true };
        yield return TextBlock.Of("The key of this book", style.Title) with { Before = style.Gap * 0.4, Role = Role.Title, Bookmark = 1 };
        yield return TextBlock.Of(Warning, style.Body) with { Before = 2 * style.Gap };
        yield return TextBlock.Of(Purpose, style.Body) with { Before = style.Gap };
        yield return TextBlock.Of(HowTo, style.Body) with { Before = style.Gap };
        yield return TextBlock.Of("hintbook copies BOOK --restore \"LETTERS\"", style.Subheading) with { Before = style.Gap };
        foreach (var line in letters.Split(' ').Chunk(GroupsInALine))
            yield return TextBlock.Of(string.Join("   ", line), style.Title) with { Before = 2 * style.Gap };
        if (QrMatrix.Encode(letters.Replace(" ", "", StringComparison.Ordinal)) is { } code)
        {
            yield return new CodeBlock(code, CodeSide, "the letters of the key") { Before = 3 * style.Gap };
            yield return TextBlock.Of(Scanned, style.Quiet) with { Before = style.Gap };
        }

        yield return TextBlock.Of($"In book.yaml stands “id: {id}”. The key fits no other id.", style.Body) with { Before = 2 * style.Gap };
    }
}
