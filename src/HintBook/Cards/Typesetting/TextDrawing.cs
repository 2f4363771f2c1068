using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace HintBook.Cards.Typesetting;

/// <summary>
/// Draws lines of text in every script. What Inter sets is drawn as PDFsharp does it; every other run is shaped by HarfBuzz, and its glyphs are handed to
/// PDFsharp in the event that it raises for the glyphs of a text. Each glyph tells the letters that it stands for, so that text can be searched and copied.
/// </summary>
public static class TextDrawing
{
    // PDFsharp keeps glyphs by code point, one each. The glyphs of shaped fonts get code points of their own, in a plane for private use.
    private const int PrivatePlane = 0xF0000;

    // Glyphs nearer than this to where the one before them ends need no new place: a thousandth of the em.
    private const double Nearly = 0.001;

    private static readonly ConditionalWeakTable<PdfDocument, ShapedFonts> Told = [];

    [ThreadStatic]
    private static CodePointGlyphIndexPair[]? pending;

    private sealed class ShapedFonts
    {
        public SortedDictionary<string, SortedDictionary<ushort, string>> ByFont { get; } = new(StringComparer.Ordinal);
    }

    /// <summary>Draws one line.</summary>
    /// <param name="graphics">A page of a document that <see cref="StablePdf"/> makes.</param>
    /// <param name="text">What <see cref="Letters.Printable"/> gave.</param>
    /// <param name="face">The typeface.</param>
    /// <param name="size">The em, in the page's unit.</param>
    /// <param name="brush">The colour.</param>
    /// <param name="x">The line's left end.</param>
    /// <param name="baseline">The line on which the letters stand.</param>
    /// <param name="rightToLeft">Whether the paragraph runs from right to left.</param>
    public static void Draw(
        XGraphics graphics, string text, Typeface face, double size, XBrush brush, double x, double baseline, bool rightToLeft = false)
    {
        if (!rightToLeft && Letters.NeedsNoShaping(text, face))
        {
            graphics.DrawString(text, Letters.Font(face, size), brush, new XPoint(x, baseline));
            return;
        }

        foreach (var run in ShapedLine.Shape(text, face, rightToLeft).Runs)
            Draw(graphics, run, size, brush, x, baseline);
    }

    /// <summary>Makes a document take the glyphs that are drawn here.</summary>
    internal static void Prepare(PdfDocument document) => document.RenderEvents.RenderTextEvent += (_, args) =>
    {
        if (pending is { } glyphs)
            args.CodePointGlyphIndexPairs = glyphs;
    };

    /// <summary>Writes which letters the shaped glyphs of a document stand for (ISO 32000-1, 9.10.3). To be called before the document is saved.</summary>
    internal static void Finish(PdfDocument document)
    {
        if (!Told.TryGetValue(document, out var told))
            return;
        foreach (var font in document.Internals.GetAllObjects().OfType<PdfDictionary>().Where(each => each.Elements.GetName("/Subtype") == "/Type0"))
        {
            var name = font.Elements.GetName("/BaseFont");
            if (told.ByFont.FirstOrDefault(each => name.EndsWith("+" + FontFile.NameInPdf(each.Key), StringComparison.Ordinal)) is not { Value: { } letters })
                continue;
            var map = new PdfDictionary(document);
            map.CreateStream(Encoding.ASCII.GetBytes(ToUnicode(letters)));
            document.Internals.AddObject(map);
            font.Elements.SetReference("/ToUnicode", map);
        }
    }

    private static void Draw(XGraphics graphics, ShapedRun run, double size, XBrush brush, double x, double baseline)
    {
        var font = Letters.FontOf(run.Font, size);
        if (run.Font.Name.StartsWith(FontFile.Inter, StringComparison.Ordinal))
        {
            graphics.DrawString(run.RightToLeft ? Mirrored(run.Text) : run.Text, font, brush, new XPoint(x + (run.X * size), baseline));
            return;
        }

        var letters = LettersOf(graphics, run.Font);
        foreach (var glyph in run.Glyphs)
            letters.TryAdd(glyph.Id, OneLetter(glyph.Text));
        for (var start = 0; start < run.Glyphs.Length;)
        {
            var end = start + 1;
            while (end < run.Glyphs.Length && Follows(run, end))
                end++;
            var place = new XPoint(x + ((run.X + run.Glyphs[start].X) * size), baseline - (run.Glyphs[start].Y * size));
            pending = [.. run.Glyphs[start..end].Select(glyph => new CodePointGlyphIndexPair(PrivatePlane + glyph.Id, glyph.Id))];
            graphics.DrawString(new string('x', end - start), font, brush, place);
            pending = null;
            start = end;
        }
    }

    // Lam and alef joined are one glyph. Readers that turn lines round turn its two letters round as well, so it is said by the one letter that Unicode has for
    // the pair (Arabic Presentation Forms-B), which normalisation takes apart again in the right order.
    private static string OneLetter(string letters) => letters switch
    {
        "\u0644\u0622" => "\uFEF5",
        "\u0644\u0623" => "\uFEF7",
        "\u0644\u0625" => "\uFEF9",
        "\u0644\u0627" => "\uFEFB",
        _ => letters,
    };

    // What Inter sets from right to left are signs between words; brackets turn round (Unicode Standard Annex 9, rule L4).
    private static string Mirrored(string signs)
    {
        const string pairs = "()[]{}<>«»‹›";
        var letters = signs.Reverse().Select(sign => pairs.IndexOf(sign, StringComparison.Ordinal) is var at and >= 0 ? pairs[at ^ 1] : sign);
        return string.Concat(letters);
    }

    private static bool Follows(ShapedRun run, int next)
    {
        var (before, glyph) = (run.Glyphs[next - 1], run.Glyphs[next]);
        var advance = run.Font.Shaper.GetHorizontalGlyphAdvance(before.Id) / (double)run.Font.UnitsPerEm;
        return glyph.Y == before.Y && Math.Abs(glyph.X - before.X - advance) < Nearly;
    }

    private static SortedDictionary<ushort, string> LettersOf(XGraphics graphics, FontFile font)
    {
        var document = graphics.PdfPage?.Owner ?? throw new ArgumentException("Text is drawn on pages of a document only.", nameof(graphics));
        var fonts = Told.GetOrCreateValue(document).ByFont;
        if (!fonts.TryGetValue(font.Name, out var letters))
            fonts[font.Name] = letters = [];
        return letters;
    }

    /// <summary>Packs the instructions of pages and forms, whole with the checksum that RFC 1950 wants: PDFsharp's own packing leaves it out.</summary>
    internal static void Pack(PdfDocument document)
    {
        var pages = document.Pages.Cast<PdfPage>().SelectMany(page => page.Contents.Elements.Cast<PdfItem>().OfType<PdfReference>().ToArray())
            .Select(content => content.Value).OfType<PdfDictionary>();
        var forms = document.Internals.GetAllObjects().OfType<PdfDictionary>().Where(each => each.Elements.GetName("/Subtype") == "/Form");
        foreach (var dictionary in pages.Concat(forms).ToArray())
        {
            if (dictionary.Stream is not { } stream || dictionary.Elements.ContainsKey("/Filter"))
                continue;
            using var packed = new MemoryStream();
            using (var zlib = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
                zlib.Write(stream.Value);
            stream.Value = packed.ToArray();
            dictionary.Elements.SetName("/Filter", "/FlateDecode");
            dictionary.Elements.SetInteger("/Length", stream.Value.Length);
        }
    }

    // A CMap takes at most 100 entries in a block.
    private static string ToUnicode(SortedDictionary<ushort, string> letters)
    {
        var map = new StringBuilder(
            "/CIDInit /ProcSet findresource begin 12 dict begin begincmap\n/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n"
            + "/CMapName /Adobe-Identity-UCS def /CMapType 2 def\n1 begincodespacerange <0000> <FFFF> endcodespacerange\n");
        foreach (var block in letters.Where(letter => letter.Value.Length > 0).Chunk(100))
        {
            map.Append(CultureInfo.InvariantCulture, $"{block.Length} beginbfchar\n");
            foreach (var (glyph, text) in block)
                map.Append(CultureInfo.InvariantCulture, $"<{glyph:X4}> <{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>\n");
            map.Append("endbfchar\n");
        }

        return map.Append("endcmap CMapName currentdict /CMap defineresource pop end end\n").ToString();
    }
}
