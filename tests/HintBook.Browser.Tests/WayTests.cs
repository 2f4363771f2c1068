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

        Assert.Equal(Titles("heron", "magpie"), await reader.StageLinks());
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
            Assert.Equal(stage == order[^1], (await reader.StageLinks()).Contains(SmallBook.TitleOf("crane")));
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
            Assert.Empty(await reader.StageLinks());

            await reader.Press(Words.Joined);
            Assert.Equal(Titles("crane"), await reader.StageLinks());
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
