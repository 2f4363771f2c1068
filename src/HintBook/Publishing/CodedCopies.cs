using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Sealing;

namespace HintBook.Publishing;

/// <summary>The copies of a sealed book with the codes that stand on their papers.</summary>
internal static class CodedCopies
{
    /// <summary>Those that are in use, in the book's order; none of a book that lies open.</summary>
    public static ImmutableArray<CodedCopy> Of(Examined book)
    {
        if (book.Sealing is not { } sealing || book.Book.Id is not { } id)
            return [];
        var codes = new CopyCodes(sealing.Secret, id.Value);
        return
        [
            .. from copy in book.Book.Copies
               where !copy.Retired
               let kept = sealing.Kept[copy.Serial.Value]
               where kept is { Retired: false }
               select new CodedCopy(kept.Serial, kept.Number, page => (page is null ? codes.OfBox(kept) : codes.OfPage(kept, page)).ToString()),
        ];
    }
}
