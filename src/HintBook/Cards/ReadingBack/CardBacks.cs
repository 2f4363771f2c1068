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
    public static ImmutableArray<CardBacks> In(byte[] pdf, int sheets)
    {
        using var file = new MemoryStream(pdf);
        using var document = PdfReader.Open(file, PdfDocumentOpenMode.Import);
        var backs = ImmutableArray.CreateBuilder<CardBacks>(sheets);
        for (var sheet = 0; sheet < sheets; sheet++)
        {
            var page = document.Pages[CardSheets.PageOfBacks(sheet)];
            backs.Add(new(page.Contents.CreateSingleContent().Stream!.UnfilteredValue, page.Width.Point, page.Height.Point));
        }

        return backs.MoveToImmutable();
    }

    /// <summary>The side in pixels, or null where it paints in a way that this reader can't follow.</summary>
    public Raster? Pixels()
    {
        try
        {
            return Raster.Fill(PageInk.Extract(ContentStream.Read(Content)), Width, Height);
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }
}
