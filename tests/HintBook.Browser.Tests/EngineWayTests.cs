using HintBook.Browser.Tests.Engines;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// What Chromium's tests say in full is true in the other engines that owners hold: here the ways that most of them take.
public class EngineWayTests(ReadingRoom room, EngineRoom engines)
{
    /// <summary>Each engine on a phone and at a desk, with script and without, in each theme, from a host and from a memory stick.</summary>
    public static TheoryData<string, Circumstances> Ways =>
    [
        .. from engine in new[] { EngineRoom.Firefox, EngineRoom.WebKit }
           from one in new Circumstances[]
           {
               new(),
               new(Phone: false, Dark: true, Source: Source.File, Theme: "workshop"),
               new(Script: false, Source: Source.File, Theme: "plain"),
           }
           select new TheoryDataRow<string, Circumstances>(engine, one),
    ];

    [Theory]
    [MemberData(nameof(Ways), DisableDiscoveryEnumeration = true)]
    public async Task A_newcomer_finds_the_first_step_gets_help_in_order_and_is_led_on(string engine, Circumstances circumstances)
    {
        await using var visitor = await engines.Seat(engine, room.Shelf[SmallBook.Title, circumstances], circumstances);
        await visitor.OpenFront();
        await visitor.Follow("Find my step");
        await visitor.Follow(SmallBook.SignOf("plover"));
        Assert.Equal(SmallBook.TitleOf("plover"), await visitor.Heading());
        Assert.DoesNotContain(SmallBook.Nudge("plover"), await visitor.Seen());

        foreach (var tier in new[] { Words.Nudge, Words.Clue, Words.Answer })
            await visitor.Take(tier);
        Assert.Contains(SmallBook.Answer("plover"), await visitor.Seen());

        await visitor.Press(Words.Done);
        Assert.Equal([SmallBook.TitleOf("heron"), SmallBook.TitleOf("magpie")], await visitor.StageLinks(Words.NextList));
        await visitor.Follow(SmallBook.TitleOf("heron"));
        Assert.Equal(SmallBook.TitleOf("heron"), await visitor.Heading());
        Assert.Empty(await visitor.Tab.Console());
    }
}
