using HintBook.Books;
using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Tests.House;
using HintBook.Tests.Mechanism;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Pages.Walking;

/// <summary>A whole book goes in and a whole site comes out: of boxes for which “Where am I?” has little to go by, and of books with odd titles.</summary>
public sealed class OddBoxesTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Of_a_box_in_which_nothing_shows_the_signs_are_read_one_by_one()
    {
        var straight = WalkedBoxes.Straight(12, 1);
        var site = MadeSite.Of(straight with { Box = straight.Box with { Parts = [.. straight.Box.Parts.Select(part => part with { Seen = false })] } });
        Assert.NotNull(site);
        var walker = Walker.Of(site);
        Assert.NotNull(walker);

        Assert.Empty(walker.Breaches);
        Assert.Empty(walker.Lost);
        Assert.Equal(11, walker.Taps.Values.Max());
    }

    [Fact]
    public void Of_sixty_steps_in_any_order_every_sign_is_shown_and_leads_to_its_step()
    {
        var box = new BoxBuilder();
        for (var i = 1; i <= 60; i++)
            box.Part($"part-{i}", "shut", "open").Stage($"step-{i}", "", $"part-{i}=open", undo: BoxBuilder.Undo("", $"part-{i}=shut"));
        var book = box.Goal(string.Join(", ", Enumerable.Range(1, 60).Select(i => $"part-{i}=open"))).Build();
        var folder = Path.Combine(desk.Root, "any order");
        WrittenBook.Write(
            book with
            {
                Stages = [.. book.Stages.Select((stage, i) => stage with { Title = Dressing.Text($"Step {i + 1}"), Sign = Dressing.Text($"Sign {i + 1}.") })],
            },
            folder);

        var published = Assert.IsType<Published>(Pipeline.Publish(folder, desk.Options));

        Assert.Contains(published.Report.Findings.All, finding => finding.Code.Id == "HB7224");
        var signs = Sites.Parse(File.ReadAllText(Path.Combine(desk.Site, "where.html"))).QuerySelectorAll("ul.stages a");
        Assert.Equal(Enumerable.Range(1, 60).Select(i => $"Sign {i}."), signs.Select(sign => sign.TextContent));
        Assert.Equal(
            Enumerable.Range(1, 60).Select(i => $"Step {i}"),
            signs.Select(sign => Sites.Parse(File.ReadAllText(Path.Combine(desk.Site, sign.GetAttribute("href")!))).QuerySelector("h1")!.TextContent));
    }

    // By what is proved of the steps: there are too many states. With its cards such a book is published in a soak.
    [Fact]
    public void Two_thousand_steps_are_checked_and_their_questions_lead_on()
    {
        var folder = Path.Combine(desk.Root, "two thousand");
        WrittenBook.Write(WalkedBoxes.Straight(2000, 10), folder);
        var sound = Assert.IsType<Sound>(HintBook.Checking.Check.Run(folder));

        var pages = new PlacePages(Sites.Texts(sound.Examined.Site.Files), sound.Examined.Addresses).Pages;
        Assert.InRange(pages.Count, 3, 12);
        Assert.All(pages.Values, page => Assert.True(page.Lines.Count > 0 && (page.LeadsBack || page.Path == PlacePages.First), $"{page.Path} leads nowhere."));
        if (Soak.IsOn)
            Assert.IsType<Published>(Pipeline.Publish(folder, desk.Options));
    }

    [Theory]
    [InlineData("🐝", 1)]
    [InlineData("Aa bee cc ", 30)]
    [InlineData("Donaudampfschiff", 19)]
    public void A_book_without_a_photo_and_with_an_odd_title_is_published_with_its_title_on_every_page(string piece, int times)
    {
        var title = string.Concat(Enumerable.Repeat(piece, times)).Trim();
        var settings = Path.Combine(desk.Book, "book.yaml");
        var others = File.ReadAllLines(settings).Where(line => !line.StartsWith("title:", StringComparison.Ordinal));
        File.WriteAllLines(settings, others.Prepend($"title: {title}"));

        desk.Published();

        Assert.Empty(Directory.EnumerateFiles(desk.Site, "*.jpg", SearchOption.AllDirectories));
        Assert.All(
            Directory.EnumerateFiles(desk.Site, "*.html"),
            page => Assert.Contains(title, Sites.Parse(File.ReadAllText(page)).Title, StringComparison.Ordinal));
        Assert.Equal(title, Sites.Parse(File.ReadAllText(Path.Combine(desk.Site, "index.html"))).QuerySelector("h1")!.TextContent);
    }
}
