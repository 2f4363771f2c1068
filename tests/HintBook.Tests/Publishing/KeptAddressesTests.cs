using AngleSharp.Html.Parser;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

/// <summary>What becomes of pages and cards from one publish to the next.</summary>
public class KeptAddressesTests
{
    // No host for examples: home.arpa is for networks at home (RFC 8375), and no site of ours stands there.
    private const string Real = "https://boxes.home.arpa/my-first-box/";

    [Fact]
    public void A_stage_that_is_gone_leaves_a_kind_page_that_leads_to_where_am_I()
    {
        using var desk = Addressed();
        desk.Published();
        var page = Path.Combine(desk.Site, Listed(desk, "the-number") + ".html");
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));

        var report = desk.Published().Report;

        var finding = Assert.Single(report.Findings.All, finding => finding.Code.Id == "HB7301");
        Assert.Equal(Severity.Warning, finding.Code.Severity);
        Assert.Contains("was: [ the-number ]", finding.Help, StringComparison.Ordinal);
        var document = new HtmlParser(new() { IsStrictMode = true }).ParseDocument(File.ReadAllText(page));
        Assert.Equal("This step has changed", document.QuerySelector("h1")!.TextContent);
        Assert.NotNull(document.QuerySelector("main a[href='where.html']"));
        Assert.Equal(report.Pages, Directory.GetFiles(desk.Site, "*.html").Length);
    }

    [Fact]
    public void With_was_the_page_of_the_stage_that_is_gone_leads_to_the_new_one()
    {
        using var desk = Addressed();
        desk.Published();
        var page = Path.Combine(desk.Site, Listed(desk, "the-number") + ".html");
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Published();
        desk.Change("stages/02-four-wheels.md", "title:", "was: [ the-number ]\ntitle:");

        var report = desk.Published().Report;

        Assert.DoesNotContain(report.Findings.All, finding => finding.Code.Id == "HB7301");
        Assert.Contains("The number", File.ReadAllText(page), StringComparison.Ordinal);
    }

    // The tour of the README: publish the small book as it is, write one's own, then say where the site will live.
    [Fact]
    public void A_beginner_who_follows_the_tour_meets_no_error_and_no_warning()
    {
        using var desk = new BookAndOutput();
        Assert.Empty(desk.Published().Report.Findings.All.Where(finding => finding.Code.Severity != Severity.Note));
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Published();
        desk.Change("book.yaml", "https://my-workshop.example/my-first-box/", Real);

        var report = desk.Published().Report;

        Assert.Empty(report.Findings.All.Where(finding => finding.Code.Severity != Severity.Note));
        Assert.False(report.CardsAreProofs);
        Assert.False(Directory.Exists(Path.Combine(desk.Output, "moved")));
    }

    [Fact]
    public void A_changed_address_is_a_warning_and_pages_for_the_old_place_lie_ready()
    {
        using var desk = Addressed();
        desk.Published();
        desk.Change("book.yaml", Real, "https://other.home.arpa/box/");

        var report = desk.Published().Report;

        var finding = Assert.Single(report.Findings.All, finding => finding.Code.Id == "HB7302");
        Assert.Equal(Severity.Warning, finding.Code.Severity);
        var moved = Path.Combine(desk.Output, "moved", "boxes.home.arpa", "my-first-box");
        Assert.Equal([KeyValuePair.Create(Real, moved)], report.Moved);
        Assert.Contains("moved/boxes.home.arpa/my-first-box", finding.Help, StringComparison.Ordinal);
        var pages = Directory.GetFiles(desk.Site, "*.html").Select(Path.GetFileName).ToArray();
        Assert.Equal(pages.Order(StringComparer.Ordinal), Directory.GetFiles(moved, "*.html").Select(Path.GetFileName).Order(StringComparer.Ordinal));
        var page = File.ReadAllText(Path.Combine(moved, Listed(desk, "the-number") + ".html"));
        Assert.Contains($"https://other.home.arpa/box/{Listed(desk, "the-number")}.html", page, StringComparison.Ordinal);
        Assert.Contains("location.hash", File.ReadAllText(Path.Combine(moved, "moved.js")), StringComparison.Ordinal);
    }

    [Fact]
    public void When_the_old_place_leads_on_the_warning_ends_and_the_pages_for_it_are_still_made()
    {
        using var desk = Addressed();
        desk.Published();
        desk.Change("book.yaml", $"address: {Real}", $"address: https://other.home.arpa/box/\nmoved-from: [ {Real} ]");

        var report = desk.Published().Report;

        Assert.DoesNotContain(report.Findings.All, finding => finding.Code.Id == "HB7302");
        Assert.True(File.Exists(Path.Combine(desk.Output, "moved", "boxes.home.arpa", "my-first-box", "index.html")));
    }

    [Theory]
    [InlineData("https://a.home.arpa/", "a.home.arpa")]
    [InlineData("https://a.home.arpa:8443/b/c/", "a.home.arpa-8443/b/c")]
    [InlineData("https://a.home.arpa/%2e%2e/%2e%2e%2fb/", "a.home.arpa/..-b")]
    [InlineData("https://bücher.home.arpa/é%20x/", "xn--bcher-kva.home.arpa/é-x")]
    public void The_folder_for_an_old_address_is_its_host_and_path_and_never_leads_out(string address, string folder) =>
        Assert.Equal(folder, HintBook.Pages.MovedSite.FolderOf(address));

    [Fact]
    public void The_list_under_its_former_name_is_read_and_taken_over()
    {
        using var desk = Addressed();
        File.WriteAllText(Path.Combine(desk.Book, "addresses.lock"), $"site {Real}\nstage the-number 0a1b2c3d\nstage long-ago 7m5x9r4t\n");

        desk.Published();

        Assert.False(File.Exists(Path.Combine(desk.Book, "addresses.lock")));
        Assert.Equal("0a1b2c3d", Listed(desk, "the-number"));
        Assert.Equal("7m5x9r4t", Listed(desk, "long-ago"));
        Assert.True(File.Exists(Path.Combine(desk.Site, "0a1b2c3d.html")));
        Assert.True(File.Exists(Path.Combine(desk.Site, "7m5x9r4t.html")));
    }

    [Fact]
    public void A_list_that_came_back_from_a_backup_is_completed_from_the_output_folder()
    {
        using var desk = Addressed();
        desk.Published();
        var backup = File.ReadAllText(ListOf(desk.Book));
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Published();
        var fresh = Listed(desk, "four-wheels");
        File.WriteAllText(ListOf(desk.Book), backup);
        File.Move(Path.Combine(desk.Book, "stages", "02-four-wheels.md"), desk.StageFile);

        desk.Published();

        Assert.Equal(fresh, Listed(desk, "four-wheels"));
        Assert.True(File.Exists(Path.Combine(desk.Site, fresh + ".html")));
    }

    [Fact]
    public void The_list_that_another_book_left_in_the_output_folder_is_not_taken_for_its_own()
    {
        using var desk = Addressed();
        desk.Published();
        File.WriteAllText(ListOf(desk.Output), "stage elsewhere 7m5x9r4t\n");

        desk.Published();

        Assert.DoesNotContain("7m5x9r4t", File.ReadAllText(ListOf(desk.Book)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_cannot_be_written_keeps_its_addresses_in_the_output_folder()
    {
        using var desk = new BookAndOutput();
        // A folder of that name can't be replaced by a file, whoever tries.
        Directory.CreateDirectory(Path.Combine(desk.Book, AddressList.FileName, "in-the-way"));

        var report = desk.Published().Report;

        Assert.Contains(report.Findings.All, finding => finding.Code.Id == "HB7303");
        Assert.Contains("proof the-number ", File.ReadAllText(Path.Combine(desk.Output, AddressList.FileName)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_publish_into_another_folder_kept_meanwhile_stays_in_the_list()
    {
        using var desk = Addressed();
        var elsewhere = new PublishOptions { Output = Path.Combine(desk.Root, "elsewhere") };
        var begun = false;
        desk.Published(desk.Options with
        {
            Disk = new(_ =>
            {
                if (begun)
                    return;
                begun = true;
                File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
                desk.Published(elsewhere);
            }),
        });

        Assert.NotEmpty(Listed(desk, "the-number"));
        Assert.NotEmpty(Listed(desk, "four-wheels"));
    }

    [Fact]
    public void The_chapters_of_a_film_are_still_there_after_the_cards_were_made_alone()
    {
        using var desk = Addressed();
        Directory.CreateDirectory(Path.Combine(desk.Book, "clips"));
        File.WriteAllBytes(Path.Combine(desk.Book, "clips", "wooden-heart.mp4"), Photos.Films.Mp4.Of(TimeSpan.FromMinutes(2)));
        desk.Change("stages/02-the-number.md", "minutes: 10", "minutes: 10\nclip: { file: wooden-heart.mp4, from: 0:05, to: 1:02 }");
        desk.Published();
        var before = BookAndOutput.Tree(Path.Combine(desk.Output, "print"));
        Assert.Contains("chapters-wooden-heart.mp4.txt", before.Keys);

        Assert.IsType<Published>(Pipeline.PrintCards(desk.Book, desk.Options));

        Assert.Equal(before, BookAndOutput.Tree(Path.Combine(desk.Output, "print")));
    }

    // A disk or a hand has changed a letter: the list still reads as one, and the host in it is none.
    [Theory]
    [InlineData("https://boxes.home[arpa/")]
    [InlineData("https://boxes.home.arpa:99999/")]
    [InlineData("https://%/")]
    public void A_kept_address_that_no_browser_understands_stops_nothing(string damaged)
    {
        using var desk = Addressed();
        desk.Published();
        desk.Change("kept-addresses.txt", Real, damaged);

        var said = Cli.Said.By("publish", desk.Book, "--out", desk.Output);

        Assert.Equal(0, said.Exit);
        Assert.Contains("HB7302", said.Error, StringComparison.Ordinal);
    }

    private static BookAndOutput Addressed()
    {
        var desk = new BookAndOutput();
        desk.Change("book.yaml", "https://my-workshop.example/my-first-box/", Real);
        return desk;
    }

    private static string ListOf(string folder) => Path.Combine(folder, AddressList.FileName);

    private static string Listed(BookAndOutput desk, string stage) =>
        File.ReadAllLines(ListOf(desk.Book)).Single(line => line.Contains($" {stage} ", StringComparison.Ordinal)).Split(' ')[2];
}
