using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.House;

namespace HintBook.Browser.Tests;

// After one visit over http the site stays on the device as far as it has come; a newer page takes its place and no tick is lost.
public class OfflineTests(ReadingRoom room)
{
    private const string Worker = "sw.js";

    [Theory]
    [InlineData(true, "parlour")]
    [InlineData(false, "plain")]
    [InlineData(true, "workshop")]
    public async Task After_one_visit_every_page_opens_without_a_network(bool front, string theme)
    {
        var circumstances = new Circumstances(Theme: theme);
        var site = room.Shelf[SmallBook.Title, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        await reader.Open(front ? "index.html" : site.PageOf("wren"));
        await IsKept(reader);

        await reader.GoOffline();

        foreach (var page in site.Pages)
        {
            await reader.Open(page);
            await reader.OpenAll();
            await reader.LoadPictures();
            Assert.NotEqual("", await reader.Page.Locator("h1").InnerTextAsync());
        }
    }

    // The network is cut after each number of files: whatever was sent by then opens. Each page that is read first takes another third of the numbers.
    [Theory]
    [InlineData("index.html", 0)]
    [InlineData("reset.html", 1)]
    [InlineData("where.html", 2)]
    public async Task What_has_come_is_used_wherever_the_network_stops(string first, int third)
    {
        using var site = OwnSite($"cut off, {first}");
        await using (var reader = await room.Seat(site, new Circumstances()))
        {
            await reader.Open(first);
            await IsKept(reader);
        }

        var all = site.Server.Answered.SkipWhile(file => file != Worker).Count() - 1;
        Assert.InRange(all, 15, 60);
        var lost = new List<string>();
        for (var files = Soak.IsOn ? 0 : third; files < all; files += Soak.IsOn ? 1 : 3)
        {
            site.Server.CutAfter(files, behind: Worker);
            await using var reader = await room.Seat(site, new Circumstances());
            var before = site.Server.Answered.Count;
            await reader.Open(first);
            var state = await HowItIsKept(reader);
            var pages = site.Server.Answered.Skip(before).SkipWhile(file => file != Worker).Where(site.Pages.Contains).Distinct().ToArray();
            // What the page itself asks for late is counted in one reading and not in another: the last cut may come when everything is there.
            if (state == "kept")
                Assert.Equal(site.Pages.Order(StringComparer.Ordinal), pages.Append(first).Distinct().Order(StringComparer.Ordinal));
            await reader.GoOffline();
            foreach (var page in pages)
            {
                await reader.Open(page);
                if (await reader.Page.Locator("h1").CountAsync() == 0)
                    lost.Add($"{page} after {files} files");
            }
        }

        Complaint.None(lost);
    }

    [Fact]
    public async Task The_page_that_is_read_is_kept_first_and_pictures_come_last_in_one_size()
    {
        using var site = OwnSite("in order");
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.Open("care.html");
        await IsKept(reader);

        string[] asked = [.. site.Server.Answered.SkipWhile(file => file != Worker).Skip(1)];
        var pages = asked.Where(file => file.EndsWith(".html", StringComparison.Ordinal)).ToArray();
        var pictures = asked.Where(file => file.StartsWith("pictures/", StringComparison.Ordinal)).ToArray();
        Assert.Equal("care.html", pages[0]);
        Assert.Equal(site.Pages, pages.Order(StringComparer.Ordinal));
        Assert.Equal(pictures, asked[^pictures.Length..]);
        Assert.All(pictures, picture => Assert.EndsWith("-800w.jpg", picture));
        Assert.Equal(6, pictures.Length);
    }

    [Fact]
    public async Task That_the_site_is_kept_is_said_when_it_is_true()
    {
        using var site = OwnSite("said");
        site.Server.CutAfter(8, behind: Worker);
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.OpenFront();
        await IsKept(reader, "incomplete");
        Assert.DoesNotContain("Kept on this device", await reader.Seen());

        site.Server.CutAfter(int.MaxValue);
        await reader.OpenFront();
        await IsKept(reader);
        Assert.Contains("Kept on this device", await reader.Seen());
    }

    [Fact]
    public async Task A_corrected_page_shows_at_the_next_view_and_the_ticks_stay()
    {
        var book = room.Shelf.SmallBookFor("published twice");
        using var site = PublishedSite.Of("published twice", book, book + ", published");
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.Open("reset.html");
        await IsKept(reader);
        await reader.OpenAllByHand();
        await reader.Page.Locator("[data-tick]").First.CheckAsync();
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);

        var stage = Directory.GetFiles(Path.Combine(book, "stages"), "*plover.md").Single();
        File.WriteAllText(stage, File.ReadAllText(stage).Replace(SmallBook.Nudge("plover"), "This is the newer nudge.", StringComparison.Ordinal));
        PublishedSite.Of("published twice", book, book + ", published").Dispose();

        await reader.OpenStage("plover");
        Assert.Contains("This is the newer nudge.", await reader.Seen());
        await IsKept(reader);
        await reader.GoOffline();
        await reader.OpenStage("plover");
        Assert.Contains("This is the newer nudge.", await reader.Seen());
        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        Assert.Equal([0], (await Ticks(reader)).Index().Where(tick => tick.Item).Select(tick => tick.Index));
    }

    [Fact]
    public async Task A_network_that_never_answers_is_not_waited_for()
    {
        using var site = OwnSite("silent");
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.OpenFront();
        await IsKept(reader);

        site.Server.IsSilent = true;
        await reader.OpenStage("plover");

        Assert.Contains(SmallBook.SignOf("plover"), await reader.Seen());
    }

    [Fact]
    public async Task A_size_of_a_picture_that_was_never_asked_for_is_replaced_by_the_one_that_is_kept()
    {
        using var site = OwnSite("sizes");
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.OpenFront();
        await IsKept(reader);
        await reader.GoOffline();

        await reader.OpenFront();
        var width = await reader.Page.EvaluateAsync<int>(
            """
            async () => {
              const picture = new Image();
              picture.src = document.querySelector('.photo a').href;
              await picture.decode();
              return picture.naturalWidth;
            }
            """);
        Assert.Equal(800, width);
    }

    [Fact]
    public void Pages_style_and_script_of_the_example_weigh_less_than_600_kB()
    {
        var site = room.Shelf[Shelf.Names.Last(), new()];
        var bytes = Directory.EnumerateFiles(site.Folder, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is not (".jpg" or ".mp4"))
            .Sum(file => new FileInfo(file).Length);
        Assert.InRange(bytes, 50_000, 600_000);
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Ticks_on_the_way_back_are_kept_until_the_next_solver_begins(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        await reader.Page.Locator("[data-tick]").Nth(1).CheckAsync();

        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        Assert.True((await Ticks(reader))[1]);

        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.OpenFront();
        await reader.Press(Words.Again);
        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.AgainYes }).ClickAsync();
        await reader.Open("reset.html");
        Assert.DoesNotContain(true, await Ticks(reader));
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task All_ticks_can_be_taken_away_at_once(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        await reader.Page.Locator("[data-tick]").Nth(0).CheckAsync();
        await reader.Page.Locator("[data-tick]").Nth(1).CheckAsync();

        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.Untick }).ClickAsync();

        Assert.DoesNotContain(true, await Ticks(reader));
        Assert.Contains("Nothing is ticked any more.", await reader.Seen());
        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        Assert.DoesNotContain(true, await Ticks(reader));
    }

    private PublishedSite OwnSite(string name)
    {
        var book = room.Shelf.SmallBookFor(name);
        return PublishedSite.Of(name, book, book + ", published");
    }

    private static Task<bool[]> Ticks(Reader reader) =>
        reader.Page.EvaluateAsync<bool[]>("() => [...document.querySelectorAll('[data-tick]')].map(box => box.checked)");

    // The worker says so to the page, which notes it down.
    private static async Task<string> HowItIsKept(Reader reader)
    {
        const string Ended = "() => ['kept', 'incomplete'].find(state => state === document.documentElement.dataset.kept)";
        return await (await reader.Page.WaitForFunctionAsync(Ended)).JsonValueAsync<string>();
    }

    private static Task<IJSHandle> IsKept(Reader reader, string state = "kept") =>
        reader.Page.WaitForFunctionAsync("state => document.documentElement.dataset.kept === state", state);
}
