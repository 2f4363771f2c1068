using System.Collections.Immutable;
using PdfSharp.Pdf.IO;

namespace HintBook.Cards.ReadingBack;

/// <summary>A page of a finished file on which codes are to be read.</summary>
/// <param name="Number">The page, from 0.</param>
/// <param name="OnHead">Whether what is read stands on its head there.</param>
/// <param name="Codes">Where its codes stand upright, each with its quiet zone, in millimetres from the left upper corner.</param>
internal sealed record CodedPage(int Number, bool OnHead, Rect[] Codes);

/// <summary>A page as it stands in the finished file.</summary>
/// <param name="Content">The page's instructions, unpacked.</param>
/// <param name="Width">The page's width in points.</param>
/// <param name="Height">The page's height in points.</param>
/// <param name="Resources">What the instructions call by name.</param>
internal sealed record FinishedPage(byte[] Content, double Width, double Height, PageResources Resources)
{
    /// <summary>Opens a finished PDF anew and takes out some of its pages.</summary>
    /// <param name="pdf">The file.</param>
    /// <param name="wanted">Which pages.</param>
    public static ImmutableArray<FinishedPage> In(byte[] pdf, IEnumerable<CodedPage> wanted)
    {
        using var file = new MemoryStream(pdf);
        using var document = PdfReader.Open(file, PdfDocumentOpenMode.Import);
        return
        [
            .. from page in wanted
               let found = document.Pages[page.Number]
               let content = found.Contents.CreateSingleContent().Stream!.UnfilteredValue
               select new FinishedPage(content, found.Width.Point, found.Height.Point, PageResources.Of(found)) { OnHead = page.OnHead },
        ];
    }

    /// <summary>Whether what is read stands on its head.</summary>
    public bool OnHead { get; init; }

    /// <summary>The page in pixels with its codes upright, or null where it paints in a way that this reader can't follow.</summary>
    public Raster? Pixels()
    {
        try
        {
            var page = Raster.Paint(PageInk.Extract(ContentStream.Read(Content), Resources), Width, Height);
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
