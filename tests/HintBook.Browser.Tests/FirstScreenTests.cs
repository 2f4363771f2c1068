using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// What a reader came for stands on a phone's first screen, 390 × 844 pixels, without scrolling.
public class FirstScreenTests(ReadingRoom room)
{
    private const int Height = 844;

    public static TheoryData<string> Themes => [.. Circumstances.Themes];

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task The_front_page_has_title_maker_photo_and_two_ways_in(string theme)
    {
        await using var reader = await ReaderOf(Shelf.Names.Last(), theme);
        await reader.OpenFront();

        var order = await reader.Page.EvaluateAsync<string[]>(
            """
            () => ['h1', '.maker', 'figure', '.ways', '.cautions', '.welcome', '.how', '.first', '.where', 'footer']
              .sort((one, other) => document.querySelector(one).compareDocumentPosition(document.querySelector(other)) & 4 ? -1 : 1)
            """);
        Assert.Equal(["h1", ".maker", "figure", ".ways", ".cautions", ".welcome", ".how", ".first", ".where", "footer"], order);
        Assert.Equal(2, await reader.Page.Locator(".ways a:visible").CountAsync());
        Assert.InRange(await LowestOf(reader, ".ways a"), 100, Height);
    }

    // A title of 300 letters, no photo, a title of one emoji: the ways in stay where they are.
    [Theory]
    [InlineData("Aa bee cc ", 30)]
    [InlineData("🐝", 1)]
    public async Task A_strange_title_leaves_the_two_ways_in_on_the_first_screen(string piece, int times)
    {
        await using var reader = await ReaderOf(SmallBook.Title, Pages.Theme.Default);
        var site = room.Shelf.Titled(string.Concat(Enumerable.Repeat(piece, times)).Trim());
        await reader.Page.GotoAsync(site.Address(Source.Http) + "index.html");

        Assert.InRange(await LowestOf(reader, ".ways a"), 100, Height);
    }

    [Theory]
    [MemberData(nameof(Themes))]
    public async Task Every_step_of_the_example_has_the_nudge_filled_in_and_done_as_an_outline(string theme)
    {
        var site = room.Shelf[Shelf.Names.Last(), new Circumstances(Theme: theme)];
        await using var reader = await ReaderOf(Shelf.Names.Last(), theme);
        var below = new List<string>();
        foreach (var page in site.StagePages)
        {
            await reader.Open(page);
            var lowest = await LowestOf(reader, ".nudge > summary, .done > summary");
            if (lowest > Height)
                below.Add($"{await reader.Page.Locator("h1").InnerTextAsync()}: {lowest} px");
        }

        Complaint.None(below);
        var grounds = await reader.Page.EvaluateAsync<string[]>(
            """
            () => ['.nudge > summary', '.done > summary'].map(each => {
              const style = getComputedStyle(document.querySelector(each));
              return style.backgroundColor === 'rgba(0, 0, 0, 0)' ? 'none' : style.backgroundColor === style.color ? 'the same' : 'filled';
            })
            """);
        Assert.Equal(["filled", "none"], grounds);
    }

    // Box-wide dangers are told in full once, and folded to a line each after that; no step's own are ever folded.
    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Dangers_stand_open_at_the_first_visit_and_are_a_line_each_after_that(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenFront();
        Assert.Contains("It weighs 3 kg.", await reader.Seen());

        await reader.OpenFront();
        Assert.DoesNotContain("It weighs 3 kg.", await reader.Seen());
        Assert.True(await reader.Summary("Heavy").IsVisibleAsync());
        await reader.Press("Heavy");
        Assert.Contains("It weighs 3 kg.", await reader.Seen());

        for (var visit = 0; visit < 2; visit++)
        {
            await reader.OpenStage("plover");
            Assert.Contains("along it.", await reader.Seen());
        }

        await reader.Press(Words.Nudge);
        await reader.OpenFront();
        await reader.Press(Words.Again);
        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.AgainYes }).ClickAsync();
        Assert.Contains("It weighs 3 kg.", await reader.Seen());
    }

    [Fact]
    public async Task Without_script_dangers_are_always_open()
    {
        await using var reader = await room.Seat(new Circumstances(Script: false));
        for (var visit = 0; visit < 2; visit++)
        {
            await reader.OpenFront();
            Assert.Contains("It weighs 3 kg.", await reader.Seen());
        }
    }

    private async Task<Reader> ReaderOf(string book, string theme)
    {
        var circumstances = new Circumstances(Theme: theme);
        return await room.Seat(room.Shelf[book, circumstances], circumstances);
    }

    private static Task<int> LowestOf(Reader reader, string elements) => reader.Page.EvaluateAsync<int>(
        "elements => Math.round(Math.max(...[...document.querySelectorAll(elements)].map(each => each.getBoundingClientRect().bottom)))", elements);
}
