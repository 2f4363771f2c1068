using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;

namespace HintBook.Publishing;

/// <summary>Which pages of a sealed book open with a card of their own.</summary>
internal static class StageCards
{
    /// <summary>
    /// The pages of the stages under each name that was ever published, where the book has cards of single stages. Where it has none any more, those for which
    /// one was printed: it lies in somebody's box.
    /// </summary>
    public static ImmutableArray<string> PagesOf(Examined book)
    {
        var all = book.Addresses.Names.Values.SelectMany(each => each);
        if (book.Book.Cards != CardChoice.Box)
            return [.. all];
        var printed = book.Kept.Printed.SelectMany(cards => cards.Cards).ToHashSet(StringComparer.Ordinal);
        return [.. all.Where(printed.Contains)];
    }
}
