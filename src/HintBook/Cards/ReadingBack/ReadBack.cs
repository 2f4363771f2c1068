using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards.Kept;
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

    /// <summary>How many of those from pictures weren't read now but in an earlier run, from files of the same bytes.</summary>
    public int KeptFromPictures { get; init; }

    /// <summary>How many of those from the PDF weren't read now but in an earlier run, from the same instructions or the same pixels.</summary>
    public int KeptFromPdf { get; init; }

    /// <summary>Whether every code was read in both places.</summary>
    public bool All => FromPictures == Cards && FromPdf == Cards;

    /// <summary>Reads every card twice, on all cores: from its picture, and from its place on the PDF's back sides.</summary>
    internal static (ReadBack Counts, ImmutableArray<Finding> Findings) Run(
        Book book, ImmutableArray<Card> cards, ImmutableArray<byte[]> pictures, byte[] pdf, CardSheet sheet, WorkLog? work, KeptWork? kept = null)
    {
        var readings = new Readings(kept ?? new());
        var fromPictures = cards.AsParallel().AsOrdered()
            .Select((card, i) =>
            {
                var code = readings.Picture(pictures[i], () => work?.Did(Work.DecodePicture, card.Name));
                return (Code: code, Finding: Judge(book, card, $"qr/{card.File}.png", code.Says));
            })
            .ToImmutableArray();
        var sheets = cards.Chunk(sheet.PerSheet).ToArray();
        CodedPage[] backs = [.. sheets.Select((some, number) => new CodedPage(
            CardSheets.PageOfBacks(number), OnHead: !sheet.TurnsUpright, [.. some.Select((_, slot) => CardBack.CodeOn(sheet.BackUpright(slot)))]))];
        var fromPdf = readings.Pages(pdf, backs, (number, slot) => work?.Did(Work.DecodePdf, sheets[number][slot].Name))
            .SelectMany((codes, number) => Judged(book, sheets[number], codes, number))
            .ToImmutableArray();

        var counts = new ReadBack(cards.Length, fromPictures.Count(code => code.Finding is null), fromPdf.Count(code => code.Finding is null))
        {
            Figures = CodeFigures.Worst(fromPdf.Select(code => code.Code.Figures).OfType<CodeFigures>()),
            KeptFromPictures = fromPictures.Count(code => code.Finding is null && code.Code.IsKept),
            KeptFromPdf = fromPdf.Count(code => code.Finding is null && code.Code.IsKept),
        };
        return (counts, [.. fromPictures.Select(code => code.Finding).Concat(fromPdf.Select(code => code.Finding)).OfType<Finding>()]);
    }

    private static IEnumerable<(ReadCode Code, Finding? Finding)> Judged(Book book, Card[] cards, ReadCode[] codes, int number) =>
        cards.Zip(codes, (card, code) => (code, Judge(book, card, $"cards.pdf, page {CardSheets.PageOfBacks(number) + 1}", code.Says)));

    private static Finding? Judge(Book book, Card card, string where, string? read)
    {
        var at = card.Stage?.Id.At ?? book.Address?.At ?? book.Title.At;
        return read is null ? CardFindings.CannotBeRead(at, card.File, where)
            : read != card.Says ? CardFindings.ReadsAs(at, card.File, where, card.Shown, card.Secret is null ? read : "something else")
            : null;
    }
}
