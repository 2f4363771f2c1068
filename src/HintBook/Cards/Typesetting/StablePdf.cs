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
        lock (OneAtATime)
        {
            using var document = new PdfDocument();
            document.Options.CompressContentStreams = true;
            document.Options.FlateEncodeMode = PdfFlateEncodeMode.BestSpeed;
            document.Info.Title = title;
            document.Info.Creator = "HintBook";
            document.Info.CreationDate = NoDate;
            document.Info.ModificationDate = NoDate;
            draw(document);

            var identity = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(title)));
            document.Internals.FirstDocumentID = identity[..16];
            document.Internals.SecondDocumentID = identity[..16];
            using var bytes = new MemoryStream();
            document.Save(bytes, closeStream: false);
            return WithoutChance(bytes.ToArray(), identity);
        }
    }

    // PDFsharp draws lots for the six letters before a subset font's name and for two identifiers in the metadata. They are
    // overwritten in place, letter for letter, so that the table of offsets stays true.
    private static byte[] WithoutChance(byte[] file, string identity)
    {
        var text = Encoding.Latin1.GetString(file);
        var tags = new Dictionary<string, string>();
        foreach (Match match in SubsetTag().Matches(text))
        {
            if (!tags.TryGetValue(match.Value, out var tag))
                tags[match.Value] = tag = "HBOOK" + (char)('A' + (tags.Count % 26));
            Encoding.Latin1.GetBytes(tag, file.AsSpan(match.Index));
        }

        foreach (Match match in Uuid().Matches(text))
            Encoding.Latin1.GetBytes($"{identity[..8]}-{identity[8..12]}-{identity[12..16]}-{identity[16..20]}-{identity[20..32]}", file.AsSpan(match.Index));
        return file;
    }

    [GeneratedRegex(@"(?<=/(FontName|BaseFont) ?/)[A-Z]{6}(?=\+)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SubsetTag();

    [GeneratedRegex("(?<=uuid:)[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Uuid();
}
