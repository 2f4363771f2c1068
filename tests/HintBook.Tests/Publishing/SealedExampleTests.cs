using HintBook.Cli;
using HintBook.Publishing;
using HintBook.Sealing;
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
        Assert.All(copies, copy => Assert.All(
            pages.Zip(stages),
            pair => Assert.Contains(pair.Second.Title.Value, new CardInHand(site, codes.OfBox(copy)).Head(pair.First), StringComparison.Ordinal)));
        Assert.All(
            Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories).Select(File.ReadAllText),
            page => Assert.DoesNotContain(stages, stage => page.Contains(stage.Title.Value, StringComparison.OrdinalIgnoreCase)));
    }

    private IEnumerable<string?> Read()
    {
        using var document = PdfDocument.Open(Path.Combine(example.Output, "print", "cards.pdf"));
        return [.. document.GetPages().SelectMany(page => page.Paths).Where(HintBook.Audit.DrawnCode.MayBe).Select(HintBook.Audit.DrawnCode.Read)];
    }
}
