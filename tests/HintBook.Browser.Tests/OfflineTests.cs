using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// After one visit over http the whole site stays on the device; a newer one takes its place and nothing that was kept is lost.
public class OfflineTests(ReadingRoom room)
{
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
        await Settled(reader);

        await reader.GoOffline();

        foreach (var page in site.Pages)
        {
            await reader.Open(page);
            await reader.OpenAll();
            await reader.LoadPictures();
            Assert.NotEqual("", await reader.Page.Locator("h1").InnerTextAsync());
        }
    }

    [Fact]
    public async Task A_site_published_again_comes_with_the_next_page_and_keeps_the_ticks()
    {
        var book = room.Shelf.SmallBookFor("published twice");
        using var site = PublishedSite.Of("published twice", book, book + ", published");
        await using var reader = await room.Seat(site, new Circumstances());
        await reader.Open("reset.html");
        await Settled(reader);
        await reader.OpenAllByHand();
        await reader.Page.Locator("[data-tick]").First.CheckAsync();
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);

        var stage = Directory.GetFiles(Path.Combine(book, "stages"), "*plover.md").Single();
        File.WriteAllText(stage, File.ReadAllText(stage).Replace(SmallBook.Nudge("plover"), "This is the newer nudge.", StringComparison.Ordinal));
        PublishedSite.Of("published twice", book, book + ", published").Dispose();
        await Updated(reader);

        await reader.OpenStage("plover");
        Assert.Contains("This is the newer nudge.", await reader.Seen());
        await reader.Open("reset.html");
        await reader.OpenAllByHand();
        Assert.Equal([0], (await Ticks(reader)).Index().Where(tick => tick.Item).Select(tick => tick.Index));
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

    private static Task<bool[]> Ticks(Reader reader) =>
        reader.Page.EvaluateAsync<bool[]>("() => [...document.querySelectorAll('[data-tick]')].map(box => box.checked)");

    // Ready means that the worker has kept every file.
    private static async Task Settled(Reader reader) => await reader.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => 0)");

    private static async Task Updated(Reader reader) => await reader.Page.EvaluateAsync(
        """
        async () => {
          const taken = new Promise(done => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
          await (await navigator.serviceWorker.ready).update();
          await taken;
        }
        """);
}
