using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Cards;

/// <summary>Finds what a card has no room for.</summary>
internal static class Room
{
    public static IEnumerable<Finding> In(Book book, ImmutableArray<Card> cards, CardFront front)
    {
        var at = book.Address?.At ?? book.Title.At;
        if (cards.MaxBy(card => card.Says.Length) is { } longest)
        {
            double? module = longest.Code is { } code ? CardBack.ModuleOf(code) : null;
            if (module is null or < CardBack.LeastModule)
                yield return CardFindings.TooLongForTheCode(at, longest.Says, module);
            else if (cards.MaxBy(card => card.Address.Length) is { } wordiest && !CardBack.AddressOf(wordiest.Address).Whole)
                yield return CardFindings.TooLongForTheWords(at, wordiest.Address);
        }

        if (front.TitleCut)
            yield return CardFindings.CutTitle(book.Title.At);
        if (front.CautionsLeftOut > 0)
            yield return CardFindings.LeftOutCautions(book.Cautions[0].At, front.CautionsLeftOut);
    }
}
