using System.Security;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;

namespace HintBook.Cards.Typesetting;

/// <summary>Makes PDF files of which every byte follows from what is drawn: no clock, no random number, nothing of the machine.</summary>
public static partial class StablePdf
{
    // PDFsharp guards its font tables but not its documents; one document at a time is the simple rule.
    private static readonly Lock OneAtATime = new();

    // A PDF must carry dates. Any fixed one will do; this is the first day that a PDF date and a ZIP date can both say.
    private static readonly DateTime NoDate = new(1980, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>Draws a document and gives its bytes. Safe to call from any thread; documents are made one after the other.</summary>
    /// <param name="title">What a viewer shows as the document's title.</param>
    /// <param name="draw">Adds the pages.</param>
    public static byte[] Make(string title, Action<PdfDocument> draw)
    {
        EmbeddedFonts.Install();
        title = string.Concat(title.EnumerateRunes().Where(rune => !Rune.IsControl(rune)));
        lock (OneAtATime)
        {
            using var document = new PdfDocument();
            document.Options.CompressContentStreams = false;
            document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestSpeed;
            document.Info.Title = title;
            document.Info.Creator = "HintBook";
            document.Info.CreationDate = NoDate;
            document.Info.ModificationDate = NoDate;
            TextDrawing.Prepare(document);
            draw(document);
            TextDrawing.Finish(document);
            TextDrawing.Pack(document);

            var identity = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(title)));
            document.Internals.FirstDocumentID = identity[..16];
            document.Internals.SecondDocumentID = identity[..16];
            using var bytes = new MemoryStream();
            document.Save(bytes, closeStream: false);
            return WithoutChance(bytes.ToArray(), title);
        }
    }

    // PDFsharp draws lots for the six letters before a subset font's name. They are overwritten in place, letter for letter,
    // so that the table of offsets stays true.
    private static byte[] WithoutChance(byte[] file, string title)
    {
        var tags = new Dictionary<string, string>();
        foreach (Match match in SubsetTag().Matches(Encoding.Latin1.GetString(file)))
        {
            if (!tags.TryGetValue(match.Value, out var tag))
                tags[match.Value] = tag = "HBOOK" + (char)('A' + (tags.Count % 26));
            Encoding.Latin1.GetBytes(tag, file.AsSpan(match.Index));
        }

        ReplaceMetadata(file, title);
        return file;
    }

    // PDFsharp's XMP packet has random identifiers and a title that isn't escaped. Ours says the title alone, and spaces fill
    // it up to the length of the old one, as XMP foresees; a title that is too long for that is left to the document's
    // information dictionary.
    private static void ReplaceMetadata(byte[] file, string title)
    {
        var start = file.AsSpan().LastIndexOf("<x:xmpmeta"u8);
        var end = file.AsSpan().LastIndexOf("</x:xmpmeta>"u8) + "</x:xmpmeta>".Length;
        if (start < 0 || end <= start)
            throw new InvalidOperationException("PDFsharp wrote no metadata where HintBook expects it.");
        var packet = file.AsSpan(start, end - start);
        var metadata = Encoding.UTF8.GetBytes(Metadata(title));
        if (metadata.Length > packet.Length)
            metadata = Encoding.UTF8.GetBytes(Metadata(""));
        packet.Fill((byte)' ');
        metadata.CopyTo(packet);
    }

    private static string Metadata(string title) =>
        $"""
        <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{SecurityElement.Escape(title)}</rdf:li></rdf:Alt></dc:title>
        </rdf:Description></rdf:RDF></x:xmpmeta>
        """.ReplaceLineEndings("\n");

    [GeneratedRegex("(?<=/(FontName|BaseFont) ?/)[A-Z]{6}(?=[+])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SubsetTag();
}
