using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using HintBook.Audit.Mentions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace HintBook.Audit;

/// <summary>Reads a PDF: what its information, its bookmarks and those of its pages say that anyone may see, and the codes on them.</summary>
internal static partial class PrintReader
{
    // Written by whatever made the file: numbers of versions, times and identifiers.
    private static readonly HashSet<string> Technical = new(StringComparer.Ordinal)
    {
        "Producer", "CreatorTool", "CreateDate", "ModifyDate", "MetadataDate",
        "DocumentID", "InstanceID", "RenditionID", "part", "conformance", "format", "date",
    };

    /// <summary>What a PDF tells that it may not.</summary>
    /// <param name="file">The PDF.</param>
    /// <param name="path">Its path.</param>
    /// <param name="pages">How many of its pages anyone may see; the others are not read.</param>
    /// <param name="secrets">Who may see what.</param>
    /// <param name="codes">Gets what each code says, null for one that can't be read, with its page.</param>
    public static ImmutableArray<AuditFault> Faults(byte[] file, string path, int pages, Secrets secrets, ICollection<(string? Says, int Page)> codes)
    {
        try
        {
            using var document = PdfDocument.Open(file);
            var listener = secrets.Listen(path);
            return
            [
                .. OfDocument(document).SelectMany(said => listener.Hear(new(said.Text, 0, 0, said.Where, Manner.Prose, secrets.Outside))),
                .. Enumerable.Range(1, Math.Min(pages, document.NumberOfPages)).SelectMany(number =>
                {
                    var page = document.GetPage(number);
                    foreach (var drawn in page.Paths.Where(DrawnCode.MayBe))
                        codes.Add((DrawnCode.Read(drawn), number));
                    return OfPage(page).SelectMany(text => listener.Hear(new(text, 0, 0, $"on page {number}", Manner.Prose, secrets.Outside))).ToArray();
                }),
            ];
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The reader of PDFs throws many kinds of exceptions for damaged files.
            return [new(path, 0, 0, "The PDF can't be read, so nobody knows what it tells.")];
        }
    }

    /// <summary>What a document tells beside its pages.</summary>
    internal static IEnumerable<(string Text, string Where)> OfDocument(PdfDocument document)
    {
        var info = document.Information;
        (string?, string)[] entries =
        [
            (info.Title, "title"),
            (info.Author, "author"),
            (info.Subject, "subject"),
            (info.Keywords, "keywords"),
            (info.Creator, "creator"),
        ];
        foreach (var (text, entry) in entries)
        {
            if (!string.IsNullOrEmpty(text))
                yield return (text, $"in the document's {entry}");
        }

        if (document.TryGetXmpMetadata(out var xmp))
        {
            foreach (var text in OfXmp(xmp.GetXDocument()))
                yield return (text, "in the document's metadata");
        }

        if (document.TryGetBookmarks(out var bookmarks))
        {
            foreach (var bookmark in bookmarks.GetNodes())
                yield return (bookmark.Title, "in a bookmark");
        }

        if (document.Advanced.TryGetEmbeddedFiles(out var files))
        {
            foreach (var file in files)
                yield return (file.Name, "in the name of a file within it");
        }
    }

    private static IEnumerable<string> OfXmp(XDocument xmp) =>
    [
        .. from element in xmp.Descendants()
           where !element.HasElements && !element.AncestorsAndSelf().Any(around => Technical.Contains(around.Name.LocalName))
           select element.Value,
        .. from attribute in xmp.Descendants().Attributes()
           where !attribute.IsNamespaceDeclaration && !Technical.Contains(attribute.Name.LocalName)
           select attribute.Value,
    ];

    // Eight groups of four letters open a sealed book. They are drawn by chance: that one is the code of a lock says nothing.
    [GeneratedRegex("\\b([0-9A-HJKMNP-TV-Z]{4} ){7}[0-9A-HJKMNP-TV-Z]{4}\\b", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex CardKey();

    private static IEnumerable<string> OfPage(Page page) =>
        page.GetAnnotations().Select(annotation => annotation.Content).OfType<string>().Prepend(CardKey().Replace(TextOf(page.Letters), ""));

    /// <summary>Letters as text, in the order in which they are drawn: a card's text isn't mixed with that of the card beside it.</summary>
    internal static string TextOf(IReadOnlyList<Letter> letters)
    {
        var lines = new List<List<string>>();
        var word = new StringBuilder();
        for (var i = 0; i < letters.Count; i++)
        {
            var sameLine = i > 0 && Math.Abs(letters[i].StartBaseLine.Y - letters[i - 1].EndBaseLine.Y) < letters[i].PointSize / 2;
            if (!sameLine)
                lines.Add([]);
            if (i > 0 && (!sameLine || !Follows(letters[i - 1], letters[i]) || string.IsNullOrWhiteSpace(letters[i].Value)))
                EndWord(lines[^(sameLine ? 1 : 2)]);
            word.Append(letters[i].Value);
        }

        if (lines.Count > 0)
            EndWord(lines[^1]);
        return string.Join(' ', lines.SelectMany(WrittenOrder.Of));

        void EndWord(List<string> line)
        {
            line.Add(word.ToString().Trim());
            word.Clear();
        }
    }

    private static bool Follows(Letter before, Letter letter)
    {
        var gap = letter.StartBaseLine.X - before.EndBaseLine.X;
        return Math.Abs(letter.StartBaseLine.Y - before.EndBaseLine.Y) < 0.1 * letter.PointSize && Math.Abs(gap) < 0.15 * letter.PointSize;
    }
}
