using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// "I've done this" opens what comes next, and only that.
public class WayTests(ReadingRoom room)
{
    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Doing_a_step_opens_each_branch_that_it_leads_to(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        Assert.Empty(await reader.StageLinks());

        await reader.Press(Words.Done);

        Assert.Equal(Titles("heron", "magpie"), await reader.StageLinks(Words.NextList));
        Assert.Equal(Titles("rook"), await reader.StageLinks(Words.BesidesList));
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_front_page_shows_what_is_open_now_and_what_is_done(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenFront();
        await reader.Follow(SmallBook.TitleOf("plover"));
        await reader.Press(Words.Done);
        await reader.Follow(Words.ToFront);

        Assert.Equal(Titles("rook", "heron", "magpie"), await reader.StageLinks("[data-way-open]"));
        Assert.Equal(Titles("plover"), await reader.StageLinks("[data-way-done]"));
        Assert.Equal(4, (await reader.StageLinks()).Count);
    }

    // A late card: whoever has done this step has done what it needs, and is offered only what is really next.
    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task A_step_that_is_done_counts_what_it_needs_as_done_too(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("crane");
        await reader.Press(Words.Done);
        Assert.Equal(Titles("owl"), await reader.StageLinks(Words.NextList));

        await reader.OpenFront();
        Assert.Equal(Titles("owl", "magpie"), await reader.StageLinks("[data-way-open]"));
        Assert.Equal(Titles("plover", "heron", "wren", "rook", "crane"), await reader.StageLinks("[data-way-done]"));
        await reader.OpenStage("heron");
        Assert.Contains("This is what opens now:", await reader.Seen());
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Taking_back_that_a_step_is_done_takes_back_what_followed_from_it(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("rook");
        await reader.Press(Words.Done);
        await reader.OpenStage("wren");
        await reader.Press(Words.Done);

        await reader.OpenStage("heron");
        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.Undone }).ClickAsync();

        Assert.Contains("Taken back", await reader.Seen());
        Assert.Empty(await reader.StageLinks());
        await reader.OpenFront();
        Assert.Equal(Titles("plover"), await reader.StageLinks("[data-way-open]"));
        Assert.Equal(Titles("rook"), await reader.StageLinks("[data-way-done]"));
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Hiding_closes_the_hints_and_leaves_what_is_done(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Clue);
        await reader.Press(Words.Done);

        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.Hide }).ClickAsync();

        Assert.DoesNotContain(SmallBook.Nudge("plover"), await reader.Seen());
        await reader.Page.ReloadAsync();
        Assert.DoesNotContain(SmallBook.Nudge("plover"), await reader.Seen());
        Assert.Equal(Titles("heron", "magpie"), await reader.StageLinks(Words.NextList));
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task A_red_herring_leads_on_to_what_else_is_open(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("magpie");
        await reader.Press(Words.Done);

        Assert.Equal(Titles("rook", "heron").Order(), (await reader.StageLinks(Words.BesidesList)).Order());
        await reader.Follow(SmallBook.TitleOf("heron"));
        Assert.Contains(SmallBook.SignOf("heron"), await reader.Seen());
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_last_step_leads_on_to_putting_the_box_back_and_looking_after_it(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("swift");
        await reader.Press(Words.Done);

        var links = await reader.Page.Locator(".done .onward a:visible").EvaluateAllAsync<string[]>("links => links.map(link => link.getAttribute('href'))");
        Assert.Equal(["reset.html", "care.html", "index.html"], links);
        await reader.Follow("Putting the box back");
        Assert.Equal("Putting the box back", await reader.Page.Locator("h1").InnerTextAsync());
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_front_page_goes_on_where_help_was_opened_last(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenFront();
        Assert.Equal("Start", (await reader.Page.Locator("[data-start]").InnerTextAsync()).Trim());
        foreach (var stage in new[] { "rook", "plover" })
        {
            await reader.OpenStage(stage);
            await reader.Press(Words.Nudge);
        }

        await reader.OpenFront();
        await reader.Follow($"Go on: {SmallBook.TitleOf("plover")}");
        await reader.Press(Words.Done);
        await reader.OpenFront();
        Assert.Equal($"Go on: {SmallBook.TitleOf("rook")}", (await reader.Page.Locator("[data-start]").InnerTextAsync()).Trim());
    }

    [Theory]
    [InlineData(Source.Http, "plover", "heron", "wren", "rook")]
    [InlineData(Source.File, "rook", "plover", "heron", "wren")]
    [InlineData(Source.Http, "plover", "rook", "heron", "wren")]
    public async Task A_step_where_ways_meet_opens_only_when_all_of_them_are_done(Source source, params string[] order)
    {
        await using var reader = await room.Seat(new Circumstances(Source: source));
        foreach (var stage in order)
        {
            Assert.DoesNotContain(SmallBook.TitleOf("crane"), await Front(reader));
            await reader.OpenStage(stage);
            await reader.Press(Words.Done);
            Assert.Equal(stage == order[^1], (await reader.StageLinks(Words.NextList)).Contains(SmallBook.TitleOf("crane")));
        }

        Assert.Contains(SmallBook.TitleOf("crane"), await Front(reader));
    }

    [Theory]
    [InlineData(Source.Http)]
    [InlineData(Source.File)]
    public async Task Without_script_the_reader_says_that_the_other_ways_are_done(Source source)
    {
        await using var reader = await room.Seat(new Circumstances(Script: false, Source: source));
        foreach (var stage in new[] { "wren", "rook" })
        {
            await reader.OpenStage(stage);
            Assert.False(await reader.Summary(Words.Joined).IsVisibleAsync());

            await reader.Press(Words.Done);
            Assert.Empty(await reader.StageLinks(Words.NextList));

            await reader.Press(Words.Joined);
            Assert.Equal(Titles("crane"), await reader.StageLinks("[data-joined]"));
        }
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithAndWithoutScriptForEachBook), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Every_stage_is_reached_from_the_front_page_by_the_links_of_what_is_done(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var reached = new HashSet<string>();
        var waiting = new Queue<string>(["index.html"]);
        while (waiting.TryDequeue(out var page))
        {
            await reader.Open(page);
            await reader.OpenAllByHand(".done");
            foreach (var next in (await reader.StageAddresses()).Where(reached.Add))
                waiting.Enqueue(next);
        }

        Assert.Equal(site.StagePages.Order(StringComparer.Ordinal), reached.Order(StringComparer.Ordinal));
    }

    private static async Task<IReadOnlyList<string>> Front(Reader reader)
    {
        await reader.OpenFront();
        return await reader.StageLinks();
    }

    private static IEnumerable<string> Titles(params string[] stages) => stages.Select(SmallBook.TitleOf);
}
