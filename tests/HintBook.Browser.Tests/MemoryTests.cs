using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// With script, the device remembers what was opened and done, until the reader clears it.
public class MemoryTests(ReadingRoom room)
{
    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task What_was_opened_is_open_after_a_reload_and_in_a_new_tab(Circumstances circumstances)
    {
        await using var reader = await ReaderAmidTheBox(circumstances);

        await reader.Page.ReloadAsync();
        await AssertAmidTheBox(reader);

        await reader.TakeNewPage();
        await reader.OpenStage("plover");
        await AssertAmidTheBox(reader);
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Starting_again_forgets_everything(Circumstances circumstances)
    {
        await using var reader = await ReaderAmidTheBox(circumstances);
        await reader.OpenFront();
        Assert.Equal(["The rook step", "The heron step", "The magpie step", "The plover step"], await reader.StageLinks());

        await reader.Press(Words.Again);
        await reader.Page.GetByRole(AriaRole.Button, new() { Name = Words.AgainYes }).ClickAsync();

        Assert.Equal(SmallBook.First.Select(SmallBook.TitleOf), await reader.StageLinks());
        await reader.Page.ReloadAsync();
        Assert.Equal(SmallBook.First.Select(SmallBook.TitleOf), await reader.StageLinks());
        await reader.OpenStage("plover");
        Assert.DoesNotContain(SmallBook.Nudge("plover"), await reader.Seen());
        Assert.Empty(await reader.StageLinks());
        Assert.DoesNotContain(room.Shelf.Small.PageOf("plover")[..^".html".Length], await reader.Kept());
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Another_reader_on_another_device_starts_with_everything_closed(Circumstances circumstances)
    {
        await using var first = await ReaderAmidTheBox(circumstances);
        await using var second = await room.Seat(circumstances);

        await second.OpenFront();

        Assert.Equal(SmallBook.First.Select(SmallBook.TitleOf), await second.StageLinks());
    }

    [Theory]
    [MemberData(nameof(Circumstances.WithScript), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Where_nothing_can_be_stored_everything_works_but_remembering(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.BeforeEveryPage("Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('switched off', 'SecurityError'); } });");
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Clue);
        await reader.Take(Words.Answer);
        await reader.Press(Words.Done);

        Assert.Contains(SmallBook.Answer("plover"), await reader.Seen());
        await reader.Follow(SmallBook.TitleOf("heron"));
        Assert.Contains(SmallBook.SignOf("heron"), await reader.Seen());
        await reader.OpenFront();
        Assert.Equal(SmallBook.First.Select(SmallBook.TitleOf), await reader.StageLinks());
        Complaint.None(reader.Network.Complaints);
    }

    private async Task<Reader> ReaderAmidTheBox(Circumstances circumstances)
    {
        var reader = await room.Seat(circumstances);
        await reader.OpenStage("plover");
        await reader.Press(Words.Nudge);
        await reader.Press(Words.Done);
        await AssertAmidTheBox(reader);
        return reader;
    }

    private static async Task AssertAmidTheBox(Reader reader)
    {
        var seen = await reader.Seen();
        Assert.Contains(SmallBook.Nudge("plover"), seen);
        Assert.DoesNotContain(SmallBook.Clue("plover"), seen);
        Assert.Equal(["The heron step", "The magpie step"], await reader.StageLinks("[data-next]"));
    }
}
