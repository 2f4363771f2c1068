using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Nudge, clue and answer: closed until asked for, in order.
public class TierTests(ReadingRoom room)
{
    private static readonly string[] Tiers = [Words.Nudge, Words.Clue, Words.Answer];

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Help_shows_in_order_and_only_when_it_is_asked_for(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");

        await AssertKnows(reader, 0);
        for (var opened = 0; opened < Tiers.Length; opened++)
        {
            await reader.Take(Tiers[opened]);
            await AssertKnows(reader, opened + 1);
        }
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_keyboard_alone_opens_the_help_in_order_and_leads_on(Circumstances circumstances)
    {
        var small = room.Shelf[SmallBook.Title, circumstances];
        await using var reader = await room.Seat(small, circumstances);
        await reader.OpenStage("plover");

        foreach (var (tier, key) in Tiers.Zip(["Enter", "Space", "Enter"]))
        {
            await reader.TabTo(tier);
            await reader.Page.Keyboard.PressAsync(key);
        }

        if (circumstances.AsksOnceMore)
        {
            await reader.TabTo(Words.AnswerNow);
            await reader.Page.Keyboard.PressAsync("Enter");
        }

        Assert.Contains(SmallBook.Answer("plover"), await reader.Seen());
        await reader.TabTo(Words.Done);
        await reader.Page.Keyboard.PressAsync("Space");
        await reader.TabTo(SmallBook.TitleOf("heron"));
        await reader.Page.Keyboard.PressAsync("Enter");
        await reader.Arrive(small.PageOf("heron"));
        Assert.Contains(SmallBook.SignOf("heron"), await reader.Seen());
    }

    // A moment to think: no wait, only a second press, in the themes that ask for one.
    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_answer_asks_once_more_before_it_shows_where_the_theme_does(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        foreach (var tier in Tiers)
            await reader.Press(tier);

        Assert.Equal(circumstances.AsksOnceMore, await reader.Summary(Words.AnswerNow).IsVisibleAsync());
        if (circumstances.AsksOnceMore)
        {
            Assert.DoesNotContain(SmallBook.Answer("plover"), await reader.Seen());
            await reader.Press(Words.AnswerNow);
        }

        Assert.Contains(SmallBook.Answer("plover"), await reader.Seen());
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task A_picture_shows_with_its_step_and_one_that_shows_more_only_when_it_is_asked_for(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        Assert.True(await reader.Page.Locator(".nudge > .prose img").IsVisibleAsync());

        await reader.Press(Words.Clue);
        var picture = reader.Page.Locator(".clue > .prose img");
        Assert.False(await picture.IsVisibleAsync());
        await reader.Press("Show the picture");
        Assert.True(await picture.IsVisibleAsync());
        Assert.Contains("Picture of the plover clue.", await reader.Seen());
        await reader.Press("Show the picture Hide the picture");
        Assert.False(await picture.IsVisibleAsync());
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_clue_cannot_be_opened_before_the_nudge(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");

        Assert.False(await reader.Summary(Words.Clue).IsVisibleAsync());
        Assert.False(await reader.Summary(Words.Answer).IsVisibleAsync());
        // Not even by what opens it behind the reader's back, say the browser's search in the page.
        await reader.Page.EvaluateAsync("() => { document.querySelector('details.clue').open = true; document.querySelector('details.answer').open = true; }");
        await AssertKnows(reader, 0);
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Closing_the_nudge_hides_all_of_the_help(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        foreach (var tier in Tiers)
            await reader.Take(tier);

        await reader.Press(Words.Nudge);

        await AssertKnows(reader, 0);
    }

    // The first tiers and the way into the next are there to see, hear and reach; nothing of the others is.
    private static async Task AssertKnows(Reader reader, int opened)
    {
        var seen = await reader.Seen();
        var heard = await reader.Heard();
        var stops = string.Join('\n', await reader.TabStops());
        for (var tier = 0; tier < Tiers.Length; tier++)
        {
            var text = $"This is the plover {Tiers[tier].ToLowerInvariant()}.";
            var anything = $"plover {Tiers[tier].ToLowerInvariant()}";
            if (tier < opened)
            {
                Assert.Contains(text, seen);
                Assert.Contains(text, heard);
            }
            else
            {
                Assert.DoesNotContain(anything, seen);
                Assert.DoesNotContain(anything, heard);
                Assert.DoesNotContain(anything, stops);
            }

            Assert.Equal(tier <= opened, stops.Contains($"summary > {Tiers[tier]}", StringComparison.Ordinal));
        }
    }
}
