using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The copies of a sealed book with the codes that stand on their papers.</summary>
internal static class CodedCopies
{
    /// <summary>Why papers can't be printed for the copies that are asked for; null if they can.</summary>
    /// <param name="examined">The book.</param>
    /// <param name="kinds">The papers.</param>
    /// <param name="serials">The serials of the copies.</param>
    public static string? WhyNotPrinted(Examined examined, IReadOnlySet<PaperKind> kinds, ImmutableArray<string> serials)
    {
        var book = examined.Book;
        if (!serials.IsEmpty && kinds.Contains(PaperKind.Cards) && examined.Sealing is null && !kinds.IsSupersetOf(PaperKinds.OfOneCopy))
            return "The book isn't sealed, so all copies have the same cards: print them without --copy.";
        foreach (var serial in serials)
        {
            if (book.Copies.FirstOrDefault(copy => copy.Serial.Value == serial) is not { } copy)
            {
                var near = Nearest.To(serial, book.Copies.Select(each => each.Serial.Value));
                return $"The book has no copy “{serial}”.{(near is null ? "" : $" Do you mean “{near}”?")}";
            }

            if (copy.Retired)
                return $"Copy “{serial}” is out of use, so nothing is printed for it.";
        }

        return null;
    }

    /// <summary>Those that are asked for by their serials; all where none is named.</summary>
    public static ImmutableArray<CodedCopy> Of(Examined book, ImmutableArray<string> only) =>
        [.. Of(book).Where(copy => only.IsEmpty || only.Contains(copy.Serial))];

    /// <summary>Those that are in use, in the book's order; none of a book that lies open, or whose key is lost.</summary>
    public static ImmutableArray<CodedCopy> Of(Examined book)
    {
        if (book.Sealing is not { Secret: { } secret } sealing || book.Book.Id is not { } id)
            return [];
        var codes = new CopyCodes(secret, id.Value);
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
