using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Reading;

namespace HintBook.Publishing;

/// <summary>What a run puts on paper that leads to the site, for the list of addresses.</summary>
internal static class CardsPrinted
{
    /// <summary>
    /// The cards of each copy; a label counts as its box card, since it has the same code. Nothing for a book whose address is one for examples, whose cards
    /// are proofs. Of a book that lies open all copies have the same cards, and they are listed only with a date.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="kinds">What is printed.</param>
    /// <param name="only">The serials of the copies for which it is printed; empty for all.</param>
    /// <param name="date">The maker's date; null where none was given.</param>
    public static ImmutableArray<PrintedCards> Of(Examined book, IReadOnlySet<PaperKind> kinds, ImmutableArray<string> only, DateOnly? date)
    {
        string[] cards =
        [
            .. kinds.Contains(PaperKind.Cards) && book.Addresses.Base is not null ? CardList.Wanted(book.Book, book.Addresses).Select(card => card.Name) : [],
            .. kinds.Contains(PaperKind.Label) ? new[] { PrintedCards.Box } : [],
        ];
        if (book.Addresses.Base is not { } site || ExampleHosts.IsExample(site) || cards.Length == 0)
            return [];
        ImmutableArray<string> sorted = [.. cards.Distinct().Order(StringComparer.Ordinal)];
        if (book.Sealing is not { } sealing)
            return date is null ? [] : [new(null, 1, date, site, sorted)];
        return
        [
            .. from copy in CodedCopies.Of(book, only)
               let kept = sealing.Kept[copy.Serial]
               where kept is not null
               select new PrintedCards(copy.Serial, kept.Issue, date, site, sorted),
        ];
    }
}
