using HintBook.Publishing.Visits;

namespace HintBook.Tests.Publishing.Visits;

/// <summary>
/// Cards with <c>addresses: short</c> have addresses without <c>.html</c>, and older ones with it: a visit asks for both, on a host that has both, one
/// or none.
/// </summary>
public sealed class ShortAddressesTests(ShortAddressesTests.Published published) : IClassFixture<ShortAddressesTests.Published>
{
    /// <summary>A book with short addresses; the tests only read it.</summary>
    public sealed class Published : IDisposable
    {
        public Published()
        {
            Desk.Change("book.yaml", "https://my-workshop.example/my-first-box/", "https://boxes.home.arpa/\naddresses: short");
            Desk.Published();
        }

        internal BookAndOutput Desk { get; } = new();

        public void Dispose() => Desk.Dispose();
    }

    // What a host answers without .html: the page, a redirect to it, or nothing; and whether it serves the page with .html.
    [Theory]
    [InlineData("page", true, "")]
    [InlineData("redirect", true, "")]
    [InlineData("nothing", true, "short")]
    [InlineData("page", false, "long")]
    [InlineData("nothing", false, "both")]
    [InlineData("front page", true, "short")]
    public async Task The_form_that_the_host_does_not_serve_is_told_for_every_card(string without, bool with, string failing)
    {
        var site = published.Desk.Site;
        var pages = Directory.GetFiles(site, "*.html").Select(file => Path.GetFileName(file)).ToArray();
        using var host = new LoopbackHost(site, (path, reply) =>
            pages.Contains(path) ? with || !IsCard(path) ? reply : new(404, [])
            : pages.Contains(path + ".html") ? Answer(without, path, site)
            : reply);

        var (plan, _) = VisitPlan.Of(published.Desk.Book, published.Desk.Output, host.Address);
        var report = await SiteVisit.Run(plan!, new(), _ => { }, CancellationToken.None);

        string[] cards = [.. pages.Where(IsCard).Select(page => page[..^5])];
        Assert.Equal(3, cards.Length);
        string[] expected =
        [
            .. failing is "short" or "both" ? cards : [],
            .. failing is "long" or "both" ? cards.Select(card => card + ".html") : [],
        ];
        Assert.Equal(
            expected.Order(StringComparer.Ordinal),
            report.Faults.Where(fault => fault.Card is not null).Select(fault => fault.Address.AbsolutePath[1..]).Order(StringComparer.Ordinal));
        Assert.Equal(failing.Length == 0, report.Faults.IsEmpty);
        Assert.All(report.Faults.Where(fault => fault.Card is not null), fault => Assert.Equal(
            !fault.Address.AbsolutePath.EndsWith(".html", StringComparison.Ordinal),
            fault.Card?.EndsWith("has no .html", StringComparison.Ordinal)));
    }

    // A card's page has a name that was drawn by chance; all others are words.
    private bool IsCard(string page) => File.ReadLines(Path.Combine(published.Desk.Book, "kept-addresses.txt"))
        .Any(line => line.StartsWith("stage ", StringComparison.Ordinal) && line.Split(' ').Contains(page[..^5]));

    private static Reply Answer(string how, string path, string site) => how switch
    {
        "page" => new(200, File.ReadAllBytes(Path.Combine(site, path + ".html")), ("Content-Type", "text/html")),
        "redirect" => new(301, [], ("Location", $"/{path}.html")),
        "front page" => new(200, File.ReadAllBytes(Path.Combine(site, "index.html")), ("Content-Type", "text/html")),
        _ => new(404, []),
    };
}
