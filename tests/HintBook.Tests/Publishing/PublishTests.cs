using System.Text.Json;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

public class PublishTests
{
    [Fact]
    public void A_publish_makes_a_site_cards_and_a_report()
    {
        using var desk = new BookAndOutput();

        var report = desk.Published().Report;

        Assert.Equal(["kept-addresses.txt", "print", "report.json", "site"], Visible(desk.Output));
        Assert.True(File.Exists(Path.Combine(desk.Site, "index.html")));
        Assert.True(File.Exists(Path.Combine(desk.Output, "print", "cards.pdf")));
        Assert.Equal(4, report.Cards.Cards);
        Assert.True(report.Cards.All);
    }

    [Fact]
    public void The_report_counts_what_is_there()
    {
        using var desk = new BookAndOutput();
        desk.Published();

        using var report = JsonDocument.Parse(File.ReadAllText(Path.Combine(desk.Output, "report.json")));

        var made = report.RootElement.GetProperty("made");
        Assert.Equal(Directory.GetFiles(desk.Site, "*.html").Length, made.GetProperty("pages").GetInt32());
        Assert.Equal(
            Directory.GetFiles(desk.Site, "*", SearchOption.AllDirectories).Sum(file => new FileInfo(file).Length),
            made.GetProperty("siteBytes").GetInt64());
    }

    [Fact]
    public void The_same_book_gives_the_same_bytes_in_another_folder()
    {
        using var one = new BookAndOutput();
        using var other = new BookAndOutput("ein Buch mit Bienen – 蜂");
        one.Published();
        other.Published();

        Assert.Equal(BookAndOutput.Tree(Path.Combine(one.Output, "site")), BookAndOutput.Tree(Path.Combine(other.Output, "site")));
        Assert.Equal(BookAndOutput.Tree(Path.Combine(one.Output, "print")), BookAndOutput.Tree(Path.Combine(other.Output, "print")));
        Assert.Equal(File.ReadAllBytes(Path.Combine(one.Output, "report.json")), File.ReadAllBytes(Path.Combine(other.Output, "report.json")));
    }

    [Fact]
    public void A_book_with_an_error_leaves_the_last_publish_as_it_was()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var before = BookAndOutput.Tree(desk.Output);
        desk.Change("book.yaml", "goal: [ wooden-heart ]", "goal: [ golden-heart ]");

        var rejected = Assert.IsType<Rejected>(desk.Publish());

        Assert.Equal("HB2101", Assert.Single(rejected.Findings.All).Code.Id);
        Assert.Equal(before, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void A_renamed_stage_keeps_its_page()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var page = Locked(desk, "the-number") + ".html";
        Assert.True(File.Exists(Path.Combine(desk.Site, page)));

        // The address stays, since the stage's old id is named in the stage that takes its place.
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Change("stages/02-four-wheels.md", "title:", "was: [ the-number ]\ntitle:");
        var report = desk.Published().Report;

        Assert.True(File.Exists(Path.Combine(desk.Site, page)));
        Assert.Equal(report.Pages, Directory.GetFiles(desk.Site, "*.html").Length);
    }

    [Fact]
    public void What_the_maker_put_among_the_files_stays()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var own = Path.Combine(desk.Site, "verified", "by-the-host.txt");
        Directory.CreateDirectory(Path.GetDirectoryName(own)!);
        File.WriteAllText(own, "mine");

        desk.Published();
        desk.Published();

        Assert.Equal("mine", File.ReadAllText(own));
    }

    [Fact]
    public void A_code_in_open_text_before_it_can_be_known_fails_the_publish()
    {
        using var desk = new BookAndOutput();
        desk.Change("stages/01-the-side-panel.md", "sign:", "sign: Somebody has written 0420 here. #");

        var rejected = Assert.IsType<Rejected>(desk.Publish());

        Assert.Contains(rejected.Findings.All, finding => finding.Code.Id == "HB3101" && finding.At.Text == "0420");
        Assert.False(Directory.Exists(desk.Site));
    }

    [Fact]
    public void A_link_that_leads_nowhere_in_the_finished_pages_fails_the_publish()
    {
        using var desk = new BookAndOutput();
        desk.Change("stages/01-the-side-panel.md", "Ask it gently.", "Ask it [gently](#nowhere).");

        var rejected = Assert.IsType<Rejected>(desk.Publish());

        Assert.Contains(rejected.Findings.All, finding => finding.Code.Id == "HB7401" && finding.Message.Contains("nowhere", StringComparison.Ordinal));
        Assert.False(Directory.Exists(desk.Site));
    }

    [Fact]
    public void A_code_that_the_author_allows_may_stand_in_the_open()
    {
        using var desk = new BookAndOutput();
        desk.Change(
            "stages/01-the-side-panel.md",
            "sign:",
            "allow: [ { mention: \"0420\", why: it is a date as well } ]\nsign: Somebody has written 0420 here. #");

        desk.Published();
    }

    [Fact]
    public void Cards_alone_leave_the_site_alone()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        var site = BookAndOutput.Tree(desk.Site);

        var report = Assert.IsType<Published>(Pipeline.PrintCards(desk.Book, desk.Options with { Paper = HintBook.Cards.Paper.Letter })).Report;

        Assert.True(report.Cards.All);
        Assert.Equal(site, BookAndOutput.Tree(desk.Site));
        desk.Published();
        Assert.Equal(site, BookAndOutput.Tree(desk.Site));
    }

    [Fact]
    public void Cards_of_stages_that_the_published_site_has_no_page_for_are_told()
    {
        using var desk = new BookAndOutput();
        desk.Published();
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));

        var said = Cli.Said.By("cards", desk.Book, "--out", desk.Output);

        Assert.Equal(0, said.Exit);
        Assert.Contains("publish before you hand them out: 1 card leads to no page", said.Out, StringComparison.Ordinal);
        desk.Published();
        Assert.DoesNotContain("before you hand", Cli.Said.By("cards", desk.Book, "--out", desk.Output).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_address_there_is_a_site_and_no_cards()
    {
        using var desk = new BookAndOutput();
        desk.Change("book.yaml", "\naddress: ", "\n# address: ");

        var report = desk.Published().Report;

        Assert.Equal(0, report.Cards.Cards);
        Assert.Contains(report.Findings.All, finding => finding is { Code: { Id: "HB6101", Severity: Severity.Warning } });
        Assert.True(File.Exists(Path.Combine(desk.Site, "index.html")));
    }

    private static IEnumerable<string> Visible(string folder) =>
        Directory.EnumerateFileSystemEntries(folder).Select(path => Path.GetFileName(path)!).Where(name => name != ".hintbook").Order(StringComparer.Ordinal);

    private static string Locked(BookAndOutput desk, string stage) =>
        File.ReadAllLines(Path.Combine(desk.Book, "kept-addresses.txt")).Single(line => line.Contains($" {stage} ", StringComparison.Ordinal)).Split(' ')[2];
}
