using System.Net;
using AngleSharp.Html.Parser;
using HintBook.Audit;
using HintBook.Cli;
using HintBook.Publishing;
using HintBook.Starting.Edition;
using HintBook.Tests.Cli;
using UglyToad.PdfPig;

namespace HintBook.Tests.Publishing;

/// <summary>The example sealed by one line, as its maker would do it.</summary>
public sealed class SealedExampleTests : IDisposable
{
    private const string Id = "beekeepers-cabinet";
    private const string Address = "https://alder-row.example/beekeeper/";

    private readonly WholeExample example = new();

    public void Dispose() => example.Dispose();

    [Fact]
    public void One_line_seals_it_and_its_cards_open_it()
    {
        File.AppendAllText(Path.Combine(example.Folder, "book.yaml"), "\nsealed: true\n");
        Assert.Equal(ExitCode.Fine, Said.By("copies", example.Folder, "--add", "2").Exit);

        var published = Assert.IsType<Published>(Pipeline.Publish(example.Folder, new() { Output = example.Output }));

        var stages = published.Book!.Book.Stages;
        var pages = stages.Select(stage => published.Book.Addresses.Names[stage.Id.Value][0]).ToArray();
        var edition = new SealedEdition(example.Folder, Id);
        var (codes, copies) = (edition.Codes!, edition.Read().Kept!.Copies);
        Assert.Equal(2, copies.Length);
        // Cards of the box and of each stage, for each copy.
        Assert.Equal(
            from copy in copies
            from page in pages.Prepend(null)
            select page is null ? $"{Address}#{codes.OfBox(copy)}" : $"{Address}{page}.html#{codes.OfPage(copy, page)}",
            Read());
        var site = Path.Combine(example.Output, "site");
        string[] titles = [.. stages.Select(stage => stage.Title.Value)];
        Assert.All(copies, copy => Assert.Equal(titles, pages.Select(page => TitleIn(new CardInHand(site, codes.OfBox(copy)).Head(page)))));
        // A title as it is written; its words may stand in a sentence of the welcome or of the care, which lie open.
        Assert.All(
            Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories).Select(file => WebUtility.HtmlDecode(File.ReadAllText(file))),
            page => Assert.DoesNotContain(titles, title => page.Contains(title, StringComparison.Ordinal)));
    }

    private static string? TitleIn(string? head) => new HtmlParser().ParseDocument(head ?? "").QuerySelector("h1")?.TextContent;

    private IEnumerable<string?> Read()
    {
        using var document = PdfDocument.Open(Path.Combine(example.Output, "print", "cards.pdf"));
        return [.. document.GetPages().SelectMany(page => page.Paths).Where(DrawnCode.MayBe).Select(DrawnCode.Read)];
    }
}
