using HintBook.Browser.Tests.Reading;

namespace HintBook.Browser.Tests;

// A page asks for nothing but the site's own files, and the browser has nothing to say about it.
public class QuietTests(ReadingRoom room)
{
    [Theory]
    [MemberData(nameof(Circumstances.SweepsOfEachBook), MemberType = typeof(Circumstances), DisableDiscoveryEnumeration = true)]
    public async Task Every_page_stays_within_the_site_and_without_complaint(string book, Circumstances circumstances)
    {
        var site = room.Shelf[book, circumstances];
        await using var reader = await room.Seat(site, circumstances);
        foreach (var page in site.Pages)
        {
            await reader.Open(page);
            await reader.OpenAll();
            await reader.LoadPictures();
        }

        Complaint.None(reader.Network.Complaints);
        Assert.All(reader.Network.Requests, request => Assert.StartsWith(site.Address(circumstances.Source), request));
        Assert.True(reader.Network.Requests.Count >= site.Pages.Count());
    }

    [Fact]
    public async Task A_request_that_leaves_the_site_would_be_noticed()
    {
        await using var reader = await room.Seat(new Circumstances());
        await reader.OpenFront();

        await reader.Page.EvaluateAsync("() => { document.images[0].srcset = ''; document.images[0].src = 'https://elsewhere.example/a.jpg'; }");

        await reader.Page.WaitForFunctionAsync("() => document.images[0].complete");
        Assert.Contains(reader.Network.Complaints, complaint => complaint.Contains("Content Security Policy", StringComparison.Ordinal));
    }
}
