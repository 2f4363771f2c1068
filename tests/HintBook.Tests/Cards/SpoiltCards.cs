using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Text;

namespace HintBook.Tests.Cards;

/// <summary>Cards of which one has another code than it should.</summary>
internal static class SpoiltCards
{
    /// <summary>Prints a book's cards with the third code changed, and reads all of them back.</summary>
    public static (CardSet Set, Findings Findings) Print(Book book, Func<QrMatrix, QrMatrix> spoil)
    {
        var cards = CardList.Build(book, CardBooks.AddressesOf(book), []);
        ImmutableArray<Card> spoilt = [.. cards.Select((card, i) => i == 2 ? card with { Code = spoil(card.Code!) } : card)];
        return CardPrint.Print(
            book,
            spoilt,
            CardFront.Layout(book, CardBooks.English),
            CardSheet.Usual(Paper.A4),
            CardLook.Plain,
            Paper.A4,
            CardBooks.English,
            Findings.None);
    }

    /// <summary>A code with every so manieth of its data modules turned to the other colour.</summary>
    public static QrMatrix Flipped(QrMatrix code, int every)
    {
        var modules =
            from y in Enumerable.Range(0, code.Size)
            from x in Enumerable.Range(0, code.Size)
            let inData = x > 8 && y > 8
            select code[x, y] ^ (inData && ((y * code.Size) + x) % every == 0);
        return new(code.Size, [.. modules]);
    }
}
