using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// Nothing of a later stage or tier can be learned from a page before something on it is opened.
public class SecretTests(ReadingRoom room)
{
    [Theory]
    [MemberData(nameof(Circumstances.SweepsOfEachBook), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task No_page_tells_more_than_it_may_before_anything_is_opened(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        var told = new List<string>();
        foreach (var page in site.Pages)
        {
            await reader.Open(page);
            var (seen, heard, head) = (await reader.Seen(), await reader.Heard(), await reader.Head());
            var (heldBack, neverInHeads) = (Secrets.HeldBackOn(site, page), Secrets.NeverInHeads(site));
            told.AddRange(heldBack.Where(secret => Tells(seen, secret)).Select(secret => $"{page} shows: {secret}"));
            told.AddRange(heldBack.Where(secret => Tells(heard, secret)).Select(secret => $"{page} says: {secret}"));
            told.AddRange(neverInHeads.Where(secret => Tells(head, secret)).Select(secret => $"the title, metadata or addresses of {page}: {secret}"));
        }

        var addresses = string.Join('\n', reader.Network.Requests);
        told.AddRange(Secrets.NeverInHeads(site).Where(secret => Tells(addresses, secret)).Select(secret => $"the address of a file: {secret}"));
        Complaint.None(told);
    }

    [Theory]
    [MemberData(nameof(Circumstances.Pairs), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task The_front_page_shows_only_what_the_closed_box_lets_one_begin_with(Circumstances circumstances)
    {
        await using var reader = await room.Seat(circumstances);
        await reader.OpenFront();

        Assert.Equal(SmallBook.First.Select(SmallBook.TitleOf), await reader.StageLinks());
        var source = await reader.Page.ContentAsync();
        Assert.DoesNotContain(SmallBook.Stages.Except(SmallBook.First), stage => source.Contains(stage, StringComparison.OrdinalIgnoreCase));
    }

    private static bool Tells(string text, string secret) => text.Contains(secret, StringComparison.OrdinalIgnoreCase);
}
