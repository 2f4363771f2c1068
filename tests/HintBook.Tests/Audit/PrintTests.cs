using System.Collections.Immutable;
using HintBook.Audit;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Tests.Audit;

/// <summary>What printed cards tell: their text, their document's information, and their codes.</summary>
public class PrintTests
{
    private static readonly AuditTable Secrets = Table.Of(Table.Name("queen clip"), Table.Code("5173")) with
    {
        PrintedPages = ImmutableDictionary<string, int>.Empty.Add("cards.pdf", 2),
    };

    [Theory]
    [InlineData("a good card", "a good card", "a good card")]
    [InlineData("a good card", "a good card", "queen clip")]
    public void The_makers_own_pages_may_say_everything(params string[] pages) => Assert.Empty(Audit(Pdf("Cards", pages)));

    [Theory]
    [InlineData("a good card", "the queen clip")]
    [InlineData("the queen\nclip", "a good card")]
    [InlineData("set 5, 1, 7, 3", "a good card")]
    public void A_secret_on_a_card_is_found(params string[] pages) =>
        Assert.Contains("on page", Assert.Single(Audit(Pdf("Cards", pages))).Message, StringComparison.Ordinal);

    // Printed from the right, with its letters joined: “the queen's key is here”.
    [Fact]
    public void A_secret_in_Arabic_is_found_though_it_is_drawn_from_left_to_right()
    {
        Assert.SkipUnless(FontFile.Of(Typeface.Regular).Length > 2, "This build was made without the fonts that npm fetches.");
        var pdf = StablePdf.Make("Cards", document =>
        {
            using var paper = XGraphics.FromPdfPage(document.AddPage());
            TextDrawing.Draw(paper, "هنا مفتاح الملكة الآن", Typeface.Regular, 12, XBrushes.Black, 50, 50, rightToLeft: true);
        });
        var secrets = Table.Of(Table.Name("مفتاح الملكة"), Table.Name("الملكة الآن")) with { PrintedPages = Secrets.PrintedPages };
        Assert.Equal(2, Audit(secrets, ("cards.pdf", pdf)).Length);
    }

    [Fact]
    public void A_secret_in_the_documents_title_is_found() => Assert.Contains(
        Audit(Pdf("The queen clip", "x")),
        fault => fault.Message.Contains("the document's title", StringComparison.Ordinal));

    [Theory]
    [InlineData("/Title")]
    [InlineData("/Author")]
    [InlineData("/Subject")]
    [InlineData("/Keywords")]
    [InlineData("/Creator")]
    public void A_secret_in_any_other_information_is_found(string entry)
    {
        using var document = new PdfDocument();
        document.AddPage();
        document.Info.Elements.SetString(entry, "5 1 7 3");
        using var file = new MemoryStream();
        document.Save(file, closeStream: false);
        Assert.NotEmpty(Audit(file.ToArray()).Where(fault => fault.Secret == "5173"));
    }

    [Fact]
    public void A_damaged_pdf_is_a_fault() =>
        Assert.Contains("can't be read", Assert.Single(Audit("%PDF-1.4 nothing"u8.ToArray())).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("https://alder-row.example/beekeeper/", 0)]
    [InlineData("https://alder-row.example/beekeeper/a7k2.html", 0)]
    [InlineData("https://alder-row.example/beekeeper/gone.html", 1)]
    [InlineData("https://alder-row.example/other/a7k2.html", 1)]
    [InlineData("https://alder-row.example/beekeeper/../a7k2.html", 1)]
    [InlineData("https://alder-row.example/beekeeper/a7k2.html?queen-clip", 2)]
    [InlineData("The queen clip", 2)]
    public void A_code_leads_to_a_page_of_the_site_and_tells_nothing(string says, int faults)
    {
        var code = QrMatrix.Encode(says)!;
        Assert.Equal(faults, Audit(("qr/box.png", QrImages.Png(code, 0.5))).Length);
        Assert.Equal(faults, Audit(("cards.pdf", StablePdf.Make("Cards", document => Draw(document, code)))).Length);
    }

    [Fact]
    public void Two_codes_that_are_exchanged_are_faults()
    {
        var (box, tray) = ("https://alder-row.example/beekeeper/", "https://alder-row.example/beekeeper/a7k2.html");
        var table = Secrets with
        {
            PrintedCodes = Secrets.PrintedCodes.Add("qr/box.png", [box]).Add("qr/a7k2.png", [tray]).Add("qr/box.svg", [box]).Add("cards.pdf", [box, tray]),
        };
        var (boxCode, trayCode) = (QrMatrix.Encode(box)!, QrMatrix.Encode(tray)!);
        Assert.Empty(Audit(table, ("qr/box.png", QrImages.Png(boxCode, 0.5)), ("qr/a7k2.png", QrImages.Png(trayCode, 0.5))));
        Assert.Equal(2, Audit(table, ("qr/box.png", QrImages.Png(trayCode, 0.5)), ("qr/a7k2.png", QrImages.Png(boxCode, 0.5))).Length);
        Assert.Empty(Audit(table, ("qr/box.svg", QrImages.Svg(boxCode, box, 0.5).ToArray())));
        Assert.Single(Audit(table, ("qr/box.svg", QrImages.Svg(trayCode, tray, 0.5).ToArray())));
        Assert.Empty(Audit(table, ("cards.pdf", Both(boxCode, trayCode))));
        Assert.Equal(2, Audit(table, ("cards.pdf", Both(trayCode, boxCode))).Length);

        static byte[] Both(QrMatrix one, QrMatrix other) => StablePdf.Make("Cards", document =>
        {
            Draw(document, one);
            Draw(document, other);
        });
    }

    [Fact]
    public void A_picture_without_a_code_is_a_fault() =>
        Assert.Contains("can't be read", Assert.Single(Audit(("qr/box.png", "-"u8.ToArray()))).Message, StringComparison.Ordinal);

    [Fact]
    public void What_the_table_does_not_name_is_for_the_maker() => Assert.Empty(Audit(("chapters-queen clip.txt", "The queen clip"u8.ToArray())));

    [Fact]
    public void A_drawn_codes_words_and_name_are_read() =>
        Assert.Equal(2, Audit(("qr/queen-clip.svg", "<svg xmlns='http://www.w3.org/2000/svg'><title>5173</title></svg>"u8.ToArray())).Length);

    private static ImmutableArray<AuditFault> Audit(byte[] pdf) => Audit(("cards.pdf", pdf));

    private static ImmutableArray<AuditFault> Audit((string Path, byte[] Bytes) file) => Audit(Secrets, file);

    private static ImmutableArray<AuditFault> Audit(AuditTable table, params (string Path, byte[] Bytes)[] files)
    {
        using var site = Site.Good();
        var print = Path.Combine(site.Folder, "print");
        Directory.CreateDirectory(Path.Combine(print, "qr"));
        foreach (var (path, bytes) in files)
            File.WriteAllBytes(Path.Combine(print, path), bytes);
        return PrintAudit.Run(print, site.Folder, table).Faults;
    }

    private static byte[] Pdf(string title, params string[] pages) => StablePdf.Make(title, document =>
    {
        foreach (var page in pages)
        {
            using var paper = XGraphics.FromPdfPage(document.AddPage());
            foreach (var (number, line) in page.Split('\n').Index())
                paper.DrawString(line, new XFont(EmbeddedFonts.Family, 12), XBrushes.Black, 50, 50 + (20 * number));
        }
    });

    private static void Draw(PdfDocument document, QrMatrix code)
    {
        using var paper = XGraphics.FromPdfPage(document.AddPage());
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var loop in Outlines.Trace(code))
            path.AddPolygon([.. loop.Select(corner => new XPoint(50 + (1.7 * corner.X), 50 + (1.7 * corner.Y)))]);
        paper.DrawPath(XBrushes.Black, path);
    }
}
