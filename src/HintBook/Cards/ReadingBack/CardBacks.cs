using System.Collections.Immutable;
using PdfSharp.Pdf.IO;

namespace HintBook.Cards.ReadingBack;

/// <summary>A side of backs as it stands in the finished file.</summary>
/// <param name="Content">The page's instructions, unpacked.</param>
/// <param name="Width">The page's width in points.</param>
/// <param name="Height">The page's height in points.</param>
internal sealed record CardBacks(byte[] Content, double Width, double Height)
{
    /// <summary>Opens a finished PDF anew and takes out its sides of backs, sheet by sheet.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="sheets">How many sheets it has.</param>
    /// <param name="onHead">Whether backs stand on their heads there.</param>
    public static ImmutableArray<CardBacks> In(byte[] pdf, int sheets, bool onHead)
    {
        using var file = new MemoryStream(pdf);
        using var document = PdfReader.Open(file, PdfDocumentOpenMode.Import);
        var backs = ImmutableArray.CreateBuilder<CardBacks>(sheets);
        for (var sheet = 0; sheet < sheets; sheet++)
        {
            var page = document.Pages[CardSheets.PageOfBacks(sheet)];
            backs.Add(new(page.Contents.CreateSingleContent().Stream!.UnfilteredValue, page.Width.Point, page.Height.Point) { OnHead = onHead });
        }

        return backs.MoveToImmutable();
    }

    /// <summary>Whether its backs stand on their heads.</summary>
    public bool OnHead { get; init; }

    /// <summary>The side in pixels with its backs upright, or null where it paints in a way that this reader can't follow.</summary>
    public Raster? Pixels()
    {
        try
        {
            var page = Raster.Fill(PageInk.Extract(ContentStream.Read(Content)), Width, Height);
            if (OnHead)
                page.TurnHalfway();
            return page;
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }
}
