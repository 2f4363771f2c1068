using System.Collections.Immutable;
using HintBook.Audit.Sealed;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>Writes down for the audit with which cards a sealed site opens, and what mustn't be seen without one.</summary>
internal static class SealedCardTable
{
    private const int LongSign = 24;

    /// <summary>The table of a book; null for one that lies open.</summary>
    public static SealedCards? Of(Examined book)
    {
        if (book.Sealing is not { } sealing || book.Book.Id is not { } id)
            return null;
        var codes = new CopyCodes(sealing.Secret, id.Value);
        var pages = StageCards.PagesOf(book);
        var gone = book.Book.Copies.Where(copy => copy.Retired).Select(copy => copy.Serial.Value).ToHashSet(StringComparer.Ordinal);
        var retired = sealing.Kept.Copies.ToLookup(copy => copy.Retired || gone.Contains(copy.Serial));
        var replaced = sealing.Kept.Copies.SelectMany(copy => Enumerable.Range(1, copy.Issue - 1).Select(issue => copy with { Issue = issue }));
        return new([.. retired[false].SelectMany(CardsOf)], [.. retired[true].Concat(replaced).SelectMany(CardsOf)]) { Texts = TextsOf(book.Book) };

        IEnumerable<SealedCard> CardsOf(KeptCopy copy) =>
            pages.Select(page => new SealedCard(copy.Serial, codes.OfPage(copy, page).ToString(), page))
                .Prepend(new(copy.Serial, codes.OfBox(copy).ToString(), Page: null));
    }

    // A title may be an everyday word, which may stand anywhere, and a short sign too.
    private static ImmutableArray<SealedText> TextsOf(Book source)
    {
        Book[] languages = [source, .. source.Translations];
        return
        [
            .. from book in languages
               from stage in book.Stages
               from text in new SealedText[] { new(stage.Title.Value, Sure: false), new(stage.Sign.Value, Sure: stage.Sign.Value.Length >= LongSign) }
               select text,
            .. source.AllPhotos.Select(photo => new SealedText(photo.File.Value, Sure: true)),
        ];
    }
}
