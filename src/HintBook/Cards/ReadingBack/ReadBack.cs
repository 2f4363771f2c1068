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
    /// <summary>What was measured on the codes of the finished PDF; null where none was read.</summary>
    public CodeFigures? Figures { get; init; }

    /// <summary>Whether every code was read in both places.</summary>
    public bool All => FromPictures == Cards && FromPdf == Cards;

    // The quiet zone is measured to its end, so a little of what lies beyond is looked at too: nothing is printed there.
    private const double Around = 0.3;

    /// <summary>Reads every card twice, on all cores: from its picture, and from its place on the PDF's back sides.</summary>
    internal static (ReadBack Counts, ImmutableArray<Finding> Findings) Run(
        Book book, ImmutableArray<Card> cards, ImmutableArray<byte[]> pictures, byte[] pdf, CardSheet sheet, WorkLog? work)
    {
        var fromPictures = cards.AsParallel().AsOrdered()
            .Select((card, i) =>
            {
                work?.Did(Work.DecodePicture, card.Name);
                return Judge(book, card, $"qr/{card.Name}.png", CodeReader.ReadPng(pictures[i]));
            })
            .ToImmutableArray();
        var backs = CardBacks.In(pdf, sheet.SheetsFor(cards.Length));
        var fromPdf = cards.Chunk(sheet.PerSheet).Zip(backs).AsParallel().AsOrdered()
            .SelectMany((some, number) => OnSheet(book, some.First, some.Second, number, sheet, work))
            .ToImmutableArray();

        var found = fromPictures.Concat(fromPdf.Select(code => code.Finding)).OfType<Finding>().ToImmutableArray();
        var counts = new ReadBack(cards.Length, fromPictures.Count(finding => finding is null), fromPdf.Count(code => code.Finding is null));
        return (counts with { Figures = CodeFigures.Worst(fromPdf.Select(code => code.Figures).OfType<CodeFigures>()) }, found);
    }

    private static IEnumerable<(Finding? Finding, CodeFigures? Figures)> OnSheet(
        Book book, Card[] cards, CardBacks back, int number, CardSheet sheet, WorkLog? work)
    {
        var pixels = back.Pixels();
        var where = $"cards.pdf, page {CardSheets.PageOfBacks(number) + 1}";
        return [.. cards.Select((card, slot) =>
        {
            work?.Did(Work.DecodePdf, card.Name);
            var (says, figures) = Read(pixels, CardBack.CodeOn(sheet.Back(slot)));
            return (Judge(book, card, where, says), figures);
        })];
    }

    private static (string? Says, CodeFigures? Figures) Read(Raster? page, Rect place)
    {
        if (page is null)
            return (null, null);
        var (pixels, width, height) = page.Cut(place);
        var (around, aroundWidth, aroundHeight) = page.Cut(place.Grown(Around));
        return (CodeReader.Read(pixels, width, height), CodeFigures.In(around, aroundWidth, aroundHeight, Raster.PixelsPerMillimetre));
    }

    private static Finding? Judge(Book book, Card card, string where, string? read)
    {
        var at = card.Stage?.Id.At ?? book.Address?.At ?? book.Title.At;
        return read is null ? CardFindings.CannotBeRead(at, card.Name, where)
            : read != card.Says ? CardFindings.ReadsAs(at, card.Name, where, card.Says, read)
            : null;
    }
}
