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
        if (sealing.Secret is not { } secret)
            return sealing.Box is { } box ? OfCard(box, book.Book) : null;
        var codes = new CopyCodes(secret, id.Value);
        var owned = new OwnOfCopies(book);
        var gates = SealedSite.GatesOf(book, sealing);
        var pages = StageCards.PagesOf(book);
        var gone = book.Book.Copies.Where(copy => copy.Retired).Select(copy => copy.Serial.Value).ToHashSet(StringComparer.Ordinal);
        var retired = sealing.Kept.Copies.ToLookup(copy => copy.Retired || gone.Contains(copy.Serial));
        var replaced = sealing.Kept.Copies.SelectMany(copy => Enumerable.Range(1, copy.Issue - 1).Select(issue => copy with { Issue = issue }));
        return new([.. retired[false].SelectMany(CardsOf)], [.. retired[true].Concat(replaced).SelectMany(CardsOf)])
        {
            Texts = [.. TextsOf(book.Book), .. WordsOf(book.Book)],
            Gates = [.. gates.WordsOfAll.Select(gate => new SealedGate(gate.Page, gate.Word))],
            Keys = KeysOf(secret, sealing.Kept, id.Value),
        };

        IEnumerable<SealedCard> CardsOf(KeptCopy copy) =>
            from page in pages.Prepend<string?>(null)
            let code = page is null ? codes.OfBox(copy) : codes.OfPage(copy, page)
            select new SealedCard(copy.Serial, code.ToString(), page)
            {
                Own = owned.Of(copy.Serial, page),
                Gates = [.. gates.WordsOf(copy.Serial, page).Select(gate => new SealedGate(gate.Page, gate.Word))],
            };
    }

    // Codes are looked for in any spelling, with the other secrets.
    private static IEnumerable<SealedText> WordsOf(Book book) =>
        from gate in book.Stages.Select(stage => stage.Gate).OfType<StageGate>()
        where gate.CodeIn(book.Box) is null
        select new SealedText(gate.Written.Value, Sure: false);

    // The one card that is known; of the others nobody can tell whether they open anything.
    private static SealedCards OfCard(OpenedBox box, Book book)
    {
        var card = new SealedCard($"of slot {box.Card.Number}", box.Card.ToString(), null) { Own = OwnValue.Read(box.Own) };
        return new([card], []) { Texts = TextsOf(book) };
    }

    private static ImmutableArray<SealedKey> KeysOf(BookSecret secret, KeptCopies kept, string id)
    {
        var keys = new BookKeys(secret, id);
        var epochs = Enumerable.Range(1, kept.Epoch).Select(keys.Epoch);
        return
        [
            new("the secret of the book", [.. secret.Bytes]),
            new("the key above all others", [.. keys.Root]),
            .. epochs.Select(epoch => new SealedKey($"the key of the box in epoch {epoch.Number}", [.. epoch.BoxKey])),
        ];
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
