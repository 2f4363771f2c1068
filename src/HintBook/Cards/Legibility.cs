using System.Text;
using HintBook.Books;
using HintBook.Cards.Typesetting;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>Finds text that the fonts have no letters for.</summary>
internal static class Legibility
{
    public static IEnumerable<Finding> In(Book book, CardWords words)
    {
        var missing =
            from text in Texts(book, words)
            let letters = Letters.Printable(text.Text).Missing
            where letters.Length > 0
            select letters.Any(letter => letter.EnumerateRunes().Any(Rune.IsLetterOrDigit))
                ? CardFindings.NoGlyphsFor(text.At, text.What, letters)
                : CardFindings.LettersMissing(text.At, text.What, letters);
        return words.Replaced.IsEmpty ? missing : missing.Append(CardFindings.SaidInEnglish(book.Language, words.Replaced.Length));
    }

    private static IEnumerable<(Span At, string What, string Text)> Texts(Book book, CardWords words)
    {
        yield return (book.Title.At, "The book's title", book.Title.Value);
        if (book.Maker is { } maker)
            yield return (maker.Name.At, "The maker's name", maker.Name.Value);
        if (book.Address is { } address)
            yield return (address.At, "The address", address.Value);
        foreach (var caution in book.Cautions)
            yield return (caution.At, "The caution's note", caution.Note ?? "");
        yield return (book.Language.At, $"The wording of the cards in “{book.Language.Value}”", string.Concat(words.All));
        if (book.Cards == CardChoice.Box)
            yield break;
        foreach (var stage in book.Stages)
            yield return (stage.Title.At, "The stage's title, printed on the maker's sheet,", stage.Title.Value);
    }
}
