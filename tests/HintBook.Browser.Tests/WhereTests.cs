using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Someone opens the site in the middle of the box and finds their step by what they see.
public class WhereTests(ReadingRoom room)
{
    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task A_reader_finds_their_step_by_its_sign(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenFront();
        await reader.Follow("Find my step");

        Assert.DoesNotContain(SmallBook.SignOf("heron"), await reader.Seen());
        await reader.Follow("None of these");
        await reader.Follow(SmallBook.SignOf("heron"));
        Assert.Equal(SmallBook.TitleOf("heron"), await reader.Page.Locator("h1").InnerTextAsync());
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task A_page_that_isnt_theirs_leads_back_to_the_question(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("wren");

        await reader.Follow("This isn’t what I see");

        Assert.Equal("Where am I?", await reader.Page.Locator("h1").InnerTextAsync());
        Assert.DoesNotContain(SmallBook.SignOf("crane"), await reader.Seen());
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_reader_alone_is_told_how_much_help_was_used(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Clue);
        // An answer that only asked back doesn't count.
        await reader.Press(Words.Answer);
        await reader.Press(Words.Done);

        Assert.Contains($"Help opened so far: nudges 1, clues 1, answers {(circumstances.AsksOnceMore ? 0 : 1)}.", await reader.Seen());
        if (circumstances.AsksOnceMore)
            await reader.Press(Words.AnswerNow);
        await reader.OpenStage("rook");
        await reader.Press(Words.Nudge);
        await reader.OpenFront();
        Assert.Contains("Help opened so far: nudges 2, clues 1, answers 1.", await reader.Seen());
        Complaint.None(reader.Network.Complaints);
    }

    [Fact]
    public async Task Without_script_nothing_is_counted_and_nothing_is_said_of_it()
    {
        await using var reader = await room.Seat(new Circumstances(Script: false));
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Done);

        Assert.DoesNotContain("so far", await reader.Seen());
    }
}
