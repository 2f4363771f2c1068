using HintBook.Publishing;

namespace HintBook.Tests.Publishing;

/// <summary>A maker's mark that is an SVG: on every paper as shapes, on the site as an SVG with nothing but its shapes.</summary>
public class DrawnMarkTests
{
    private const string Mark =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40" onload="alert(1)"><title>secret note</title>
        <path d="M30 2 L58 38 H2 Z" fill="#3a5f2c"/><circle cx="30" cy="26" r="7" fill="none" stroke="#ffffff" stroke-width="3"/></svg>
        """;

    [Fact]
    public void It_is_on_the_site_made_harmless_and_on_every_paper()
    {
        using var desk = WithMark(Mark);
        desk.Change("book.yaml", "\ntitle:", "\nprint: { make: [ all ] }\ntitle:");
        desk.Published();

        var file = Assert.Single(Directory.GetFiles(Path.Combine(desk.Site, "pictures"), "*.svg"));
        var svg = File.ReadAllText(file);
        Assert.DoesNotContain("alert", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("secret note", svg, StringComparison.Ordinal);
        Assert.Contains(Path.GetFileName(file), File.ReadAllText(Path.Combine(desk.Site, "index.html")), StringComparison.Ordinal);
        // Its green, in the way that PDF writes colours.
        foreach (var paper in (string[])["cards.pdf", "booklet.pdf", "leaflet.pdf", "reset.pdf", "label.pdf"])
            Assert.True(Pages(Path.Combine(desk.Output, "print", paper)).Contains("0.227 0.373 0.173 rg", StringComparison.Ordinal), paper);
    }

    [Fact]
    public void What_it_holds_that_is_not_drawn_stops_the_publish_and_is_named()
    {
        using var desk = WithMark(
            "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>\n<text>A</text><rect width='9' height='9' fill='url(#g)'/></svg>");
        var findings = Assert.IsType<Rejected>(desk.Publish()).Findings.All.Where(finding => finding.Code.Id == "HB5109").ToArray();
        Assert.Equal(2, findings.Length);
        var text = Assert.Single(findings, finding => finding.Message.Contains("“text” (line 2)", StringComparison.Ordinal));
        Assert.Contains("object to path", text.Help, StringComparison.Ordinal);
    }

    private static BookAndOutput WithMark(string svg)
    {
        var desk = new BookAndOutput();
        Directory.CreateDirectory(Path.Combine(desk.Book, "photos"));
        File.WriteAllText(Path.Combine(desk.Book, "photos", "mark.svg"), svg);
        desk.Change("book.yaml", "\nmaker:\n", "\nmaker:\n  logo: mark.svg\n");
        return desk;
    }

    private static string Pages(string pdf)
    {
        using var document = PdfSharp.Pdf.IO.PdfReader.Open(pdf, PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        return string.Concat(document.Pages.Cast<PdfSharp.Pdf.PdfPage>().Select(page => page.Contents.Elements.Count == 0
            ? ""
            : System.Text.Encoding.Latin1.GetString(page.Contents.CreateSingleContent().Stream?.UnfilteredValue ?? [])));
    }
}
