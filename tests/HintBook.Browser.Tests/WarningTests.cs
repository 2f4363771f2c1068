using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// The solution and reset pages tell everything, but only after their warning is opened, and no search engine learns of them.
public class WarningTests(ReadingRoom room)
{
    public static TheoryData<string, Circumstances> SpoilingPages =>
    [
        .. from page in new[] { "solution.html", "reset.html" }
           from row in Circumstances.Pairs
           select new TheoryDataRow<string, Circumstances>(page, row.Data),
    ];

    [Theory]
    [MemberData(nameof(SpoilingPages), DisableDiscoveryEnumeration = true)]
    public async Task Nothing_of_the_box_shows_before_the_warning_is_opened(string page, Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.Open(page);

        var before = string.Join('\n', [await reader.Seen(), await reader.Heard(), .. await reader.TabStops()]);
        Assert.DoesNotContain(SmallBook.Stages, stage => before.Contains(stage, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(SmallBook.Code, before);

        await reader.OpenAllByHand();
        var after = await reader.Seen();
        Assert.All(SmallBook.Stages, stage => Assert.Contains(page == "solution.html" ? SmallBook.Answer(stage) : $"This is the {stage} way back.", after));
    }

    [Theory]
    [InlineData("solution.html")]
    [InlineData("reset.html")]
    public async Task Search_engines_are_told_to_leave_the_page_out(string page)
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.Open(page);

        Assert.Contains("noindex", await reader.Page.Locator("meta[name=robots]").GetAttributeAsync("content"));
    }
}
