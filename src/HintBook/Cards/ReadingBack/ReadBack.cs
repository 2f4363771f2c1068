using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Cards.ReadingBack;

/// <summary>How many codes were read from pixels and said what they should.</summary>
/// <param name="Cards">How many cards there are.</param>
/// <param name="FromPictures">How many were read from their PNG files.</param>
/// <param name="FromPdf">How many were read from the finished PDF, its pages turned into pixels.</param>
public sealed record ReadBack(int Cards, int FromPictures, int FromPdf)
{
    /// <summary>Whether every code was read in both places.</summary>
    public bool All => FromPictures == Cards && FromPdf == Cards;

    /// <summary>Reads every card twice, on all cores: from its picture, and from its place on the PDF's back sides.</summary>
    internal static (ReadBack Counts, ImmutableArray<Finding> Findings) Run(
        Book book, ImmutableArray<Card> cards, ImmutableArray<byte[]> pictures, byte[] pdf, Paper paper, WorkLog? work)
    {
        var fromPictures = cards.AsParallel().AsOrdered()
            .Select((card, i) =>
            {
                work?.Did(Work.DecodePicture, card.Name);
                return Judge(book, card, $"qr/{card.Name}.png", CodeReader.ReadPng(pictures[i]));
            })
            .ToImmutableArray();
        var backs = CardBacks.In(pdf, Imposition.SheetsFor(cards.Length));
        var fromPdf = cards.Chunk(Imposition.PerSheet).Zip(backs).AsParallel().AsOrdered()
            .SelectMany((sheet, number) => OnSheet(book, sheet.First, sheet.Second, number, paper, work))
            .ToImmutableArray();

        var found = fromPictures.Concat(fromPdf).OfType<Finding>().ToImmutableArray();
        return (new(cards.Length, fromPictures.Count(finding => finding is null), fromPdf.Count(finding => finding is null)), found);
    }

    private static IEnumerable<Finding?> OnSheet(Book book, Card[] cards, CardBacks back, int sheet, Paper paper, WorkLog? work)
    {
        var pixels = back.Pixels();
        var where = $"cards.pdf, page {CardSheets.PageOfBacks(sheet) + 1}";
        return [.. cards.Select((card, slot) =>
        {
            work?.Did(Work.DecodePdf, card.Name);
            return Judge(book, card, where, Read(pixels, CardBack.CodeOn(Imposition.Back(paper, slot))));
        })];
    }

    private static string? Read(Raster? page, Rect place)
    {
        if (page is null)
            return null;
        var (pixels, width, height) = page.Cut(place);
        return CodeReader.Read(pixels, width, height);
    }

    private static Finding? Judge(Book book, Card card, string where, string? read)
    {
        var at = card.Stage?.Id.At ?? book.Address?.At ?? book.Title.At;
        return read is null ? CardFindings.CannotBeRead(at, card.Name, where)
            : read != card.Says ? CardFindings.ReadsAs(at, card.Name, where, card.Says, read)
            : null;
    }
}
