using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Checking;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The cards of a book: those of all copies in one file, or those of certain copies, each in files of its own.</summary>
internal static class CardsOfCopies
{
    /// <summary>The sheets of one copy: <c>cards/007.pdf</c>.</summary>
    public static string SheetsOf(CodedCopy copy) => $"cards/{copy.Folder}.pdf";

    /// <summary>Prints them.</summary>
    /// <param name="book">The book.</param>
    /// <param name="only">The serials of the copies that are asked for; empty for all.</param>
    /// <param name="print">Prints the cards of some copies together.</param>
    public static (CardSet Set, Findings Findings) Print(
        Examined book, ImmutableArray<string> only, Func<ImmutableArray<CodedCopy>, (CardSet Set, Findings Findings)> print)
    {
        if (only.IsEmpty)
            return print(CodedCopies.Of(book));
        var sets = CodedCopies.Of(book, only).Select(copy => (Copy: copy, Printed: print([copy]))).ToArray();
        return (
            Joined([.. sets.Select(each => Renamed(each.Printed.Set, each.Copy))]),
            Findings.Of([.. sets.SelectMany(each => each.Printed.Findings.All).Distinct()]));
    }

    // The test sheet is the same for all copies, and is made with the cards of all.
    private static CardSet Renamed(CardSet set, CodedCopy copy) => set with
    {
        Sheets = [SheetsOf(copy)],
        Files =
        [
            .. from file in set.Files
               where file.Path != "test-sheet.pdf"
               select file.Path switch
               {
                   "cards.pdf" => file with { Path = SheetsOf(copy) },
                   "which-card.pdf" => file with { Path = $"cards/{copy.Folder}-which-card.pdf" },
                   _ => file,
               },
        ],
    };

    private static CardSet Joined(ImmutableArray<CardSet> sets) => new(
        [.. sets.SelectMany(set => set.Files)],
        sets.Select(set => set.ReadBack).Aggregate((all, one) => one with
        {
            Cards = all.Cards + one.Cards,
            FromPictures = all.FromPictures + one.FromPictures,
            FromPdf = all.FromPdf + one.FromPdf,
            KeptFromPictures = all.KeptFromPictures + one.KeptFromPictures,
            KeptFromPdf = all.KeptFromPdf + one.KeptFromPdf,
        }))
    {
        Sheets = [.. sets.SelectMany(set => set.Sheets)],
    };
}
