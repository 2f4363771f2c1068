using System.Text;
using HintBook.Publishing.Visits;

namespace HintBook.Tests.Publishing.Visits;

/// <summary>A published site is asked for where it lives: here on a host of this machine that does one thing wrong at a time.</summary>
public sealed class SiteVisitTests(SiteVisitTests.Published published) : IClassFixture<SiteVisitTests.Published>
{
    private readonly string site = published.Site;
    private readonly string page = published.Page;

    /// <summary>A book that was published for an old address, then for another; the tests only read it.</summary>
    public sealed class Published : IDisposable
    {
        private readonly BookAndOutput desk = new();

        public Published()
        {
            desk.Change("book.yaml", "https://my-workshop.example/my-first-box/", "https://old.home.arpa/");
            desk.Published();
            desk.Change("book.yaml", "https://old.home.arpa/", "https://boxes.home.arpa/");
            desk.Published();
            var list = File.ReadAllLines(Path.Combine(desk.Book, "kept-addresses.txt"));
            Page = list.Single(line => line.StartsWith("stage the-number ", StringComparison.Ordinal)).Split(' ')[2] + ".html";
        }

        public string Book => desk.Book;

        public string Output => desk.Output;

        public string Site => desk.Site;

        /// <summary>The page of one stage.</summary>
        public string Page { get; }

        public void Dispose() => desk.Dispose();
    }

    [Fact]
    public async Task A_site_that_is_served_as_it_was_published_has_no_fault_and_everything_was_asked_for()
    {
        using var host = new LoopbackHost(site);

        var report = await Visit(host);

        Assert.Empty(report.Faults);
        Assert.Null(report.Ended);
        Assert.Equal(report.Of, report.Asked);
        var files = BookAndOutput.Tree(site).Keys.Select(file => file.Replace('\\', '/')).Append("");
        Assert.Equal(files.Order(StringComparer.Ordinal), host.Asked.Distinct().Order(StringComparer.Ordinal));
        Assert.Contains("everything is there as it was published.", VisitText.Write(report), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Never_more_than_two_addresses_are_asked_for_at_a_time()
    {
        using var host = new LoopbackHost(site);
        await Visit(host);
        Assert.InRange(host.MostAtATime, 1, 2);
    }

    [Fact]
    public async Task A_page_that_is_not_there_names_the_card_that_fails()
    {
        using var host = new LoopbackHost(site, (path, reply) => path == page ? new(404, []) : reply);

        var report = await Visit(host);

        var fault = Assert.Single(report.Faults);
        Assert.Equal(new Uri(host.Address, page), fault.Address);
        Assert.Equal($"the card {page[..^5]} of “The picture on the lid”", fault.Card);
        Assert.Equal("It isn't there (status 404).", fault.Message);
        Assert.Contains("1 card would fail.", VisitText.Write(report), StringComparison.Ordinal);
    }

    // A name for the host's answer, what it answers for a stage's page, and what is said of it.
    public static TheoryData<string, string> WrongAnswers => new()
    {
        { "another page", "isn't what was published" },
        { "one letter more", "isn't what was published" },
        { "cut short", "isn't what was published" },
        { "refused", "refuses it (status 403)" },
        { "broken host", "answers with status 500" },
        { "plain text", "calls it text/plain, and browsers need text/html" },
        { "no type", "calls it nothing, and browsers need text/html" },
        { "other letters", "written in iso-8859-1" },
        { "kept for a year", "keep it for 365 days" },
        { "kept for a year by a date", "keep it for 365 days" },
        { "redirect that cuts", "behind “#” in the address is lost" },
        { "refresh", "leads on by a refresh" },
        { "circle", "redirected again and again" },
        { "other folder", "into another folder" },
        { "no address", "which is no page" },
        { "never", "didn't answer within" },
        { "endless", "isn't what was published" },
    };

    [Theory]
    [MemberData(nameof(WrongAnswers))]
    public async Task What_a_host_does_wrong_is_told_with_what_to_tell_the_host(string wrong, string told)
    {
        using var host = new LoopbackHost(site, (path, reply) => path == page ? Wrong(wrong, reply) : reply);

        var report = await Visit(host, wrong == "never" ? new() { Each = TimeSpan.FromSeconds(2) } : new());

        Assert.All(report.Faults, fault => Assert.Equal(new Uri(host.Address, page), fault.Address));
        Assert.Contains(report.Faults, fault => fault.Message.Contains(told, StringComparison.Ordinal) && fault.Card is not null && fault.Help.Length > 0);
        Assert.InRange(report.Bytes, 1, 2 * BookAndOutput.Tree(site).Sum(file => file.Value.Length / 2));
    }

    // RFC 9110, 10.2.2: an address without a fragment takes on that of the request, so that such a redirect loses nothing.
    [Theory]
    [InlineData(301)]
    [InlineData(302)]
    [InlineData(307)]
    [InlineData(308)]
    public async Task A_redirect_to_the_same_page_beside_it_is_fine(int status)
    {
        var short_ = page[..^5];
        using var host = new LoopbackHost(site, (path, reply) =>
            path == page ? new(status, [], ("Location", "/" + short_))
            : path == short_ ? new(200, File.ReadAllBytes(Path.Combine(site, page)), ("Content-Type", "text/html"))
            : reply);

        Assert.Empty((await Visit(host)).Faults);
    }

    [Fact]
    public async Task A_style_sheet_of_the_wrong_type_is_told_and_no_card_is_blamed()
    {
        using var host = new LoopbackHost(site, (path, reply) =>
            path.EndsWith(".css", StringComparison.Ordinal) ? reply with { Headers = [("Content-Type", "text/plain")] } : reply);

        var report = await Visit(host);

        Assert.All(report.Faults, fault => Assert.EndsWith("send .css files as “Content-Type: text/css”.", fault.Help, StringComparison.Ordinal));
        Assert.NotEmpty(report.Faults);
        Assert.Contains("but every card leads to its page.", VisitText.Write(report), StringComparison.Ordinal);
    }

    // Its name holds its content's hash, so that a browser may keep it for ever.
    [Fact]
    public async Task What_never_changes_under_its_name_may_be_kept_for_a_year()
    {
        using var host = new LoopbackHost(site, (path, reply) => path.StartsWith("assets/", StringComparison.Ordinal)
            ? reply with { Headers = [.. reply.Headers[..1], ("Cache-Control", "public, max-age=31536000, immutable")] }
            : reply);
        Assert.Empty((await Visit(host)).Faults);
    }

    [Fact]
    public async Task Where_nobody_answers_only_one_address_is_asked_for_and_every_card_fails()
    {
        var (plan, _) = VisitPlan.Of(published.Book, published.Output, LoopbackHost.Nobody());
        var report = await SiteVisit.Run(plan!, new(), _ => { }, CancellationToken.None);

        Assert.Equal(1, report.Asked);
        Assert.Contains("nothing answers there", report.Ended, StringComparison.Ordinal);
        Assert.Equal(4, report.FailingCards.Count());
    }

    [Fact]
    public async Task A_visit_ends_when_its_time_is_over()
    {
        using var host = new LoopbackHost(site, (path, reply) => path == page ? Reply.Never : reply);
        var report = await Visit(host, new() { Time = TimeSpan.FromSeconds(1) });
        Assert.StartsWith("it took longer than", report.Ended, StringComparison.Ordinal);
        Assert.True(report.Asked < report.Of);
    }

    [Fact]
    public async Task A_visit_ends_when_too_much_has_come_back()
    {
        using var host = new LoopbackHost(site);
        var report = await Visit(host, new() { Bytes = 2000 });
        Assert.StartsWith("more than", report.Ended, StringComparison.Ordinal);
        Assert.True(report.Asked < report.Of);
    }

    [Fact]
    public async Task Of_a_large_file_only_the_beginning_is_fetched()
    {
        using var host = new LoopbackHost(site);
        var report = await Visit(host, new() { Whole = 100 });
        Assert.Empty(report.Faults);
        Assert.InRange(report.Bytes, 1, 100 * (report.Of + 1));
    }

    public static TheoryData<string, string?> OldPlaces => new()
    {
        { "redirect", null },
        { "pages of moved", null },
        { "the site itself", null },
        { "refresh", "leads on by a refresh" },
        { "redirect that cuts", "behind “#”" },
        { "gone", "doesn't lead to" },
        { "front page for all", "doesn't lead to" },
    };

    [Theory]
    [MemberData(nameof(OldPlaces))]
    public async Task An_old_card_must_lead_to_its_page_with_what_stands_behind_the_hash(string place, string? told)
    {
        var moved = Path.Combine(published.Output, "moved", "old.home.arpa", page);
        using var host = new LoopbackHost(site, (path, reply) => path == "old/" + page ? Old(place, moved) : reply);
        var (plan, _) = VisitPlan.Of(published.Book, published.Output, host.Address);
        var card = new OldCard(new Uri(host.Address, "old/" + page), new Uri(host.Address, page), Path.Combine(site, page), moved);

        var report = await SiteVisit.Run(plan! with { OldCards = [card] }, new(), _ => { }, CancellationToken.None);

        if (told is null)
            Assert.Empty(report.Faults);
        else
            Assert.Contains(told, Assert.Single(report.Faults).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(200, 1)]
    [InlineData(301, 0)]
    [InlineData(404, 0)]
    public async Task A_site_that_can_be_read_without_https_is_told(int status, int faults)
    {
        using var host = new LoopbackHost(site);
        using var open = new LoopbackHost(site, (_, _) => new(status, [], ("Location", "https://boxes.home.arpa/")));
        var (plan, _) = VisitPlan.Of(published.Book, published.Output, host.Address);

        var report = await SiteVisit.Run(plan! with { Unencrypted = open.Address }, new(), _ => { }, CancellationToken.None);

        Assert.Equal(faults, report.Faults.Length);
        Assert.Single(open.Asked);
    }

    private Reply Wrong(string wrong, Reply right) => wrong switch
    {
        "another page" => right with { Body = File.ReadAllBytes(Path.Combine(site, "index.html")) },
        "one letter more" => right with { Body = [.. right.Body, (byte)'\n'] },
        "cut short" => right with { Body = right.Body[..^1] },
        "refused" => new(403, []),
        "broken host" => new(500, []),
        "plain text" => right with { Headers = [("Content-Type", "text/plain")] },
        "no type" => right with { Headers = [] },
        "other letters" => right with { Headers = [("Content-Type", "text/html; charset=ISO-8859-1")] },
        "kept for a year" => right with { Headers = [right.Headers[0], ("Cache-Control", "max-age=31536000")] },
        // Days of the Gregorian calendar, from memory: both are Sundays and Mondays as they must be, or the header would be thrown away.
        "kept for a year by a date" => right with
        {
            Headers = [right.Headers[0], ("Date", "Sun, 01 Jan 2023 00:00:00 GMT"), ("Expires", "Mon, 01 Jan 2024 00:00:00 GMT")],
        },
        "redirect that cuts" => new(301, [], ("Location", $"/{page}#top")),
        "refresh" => right with { Body = Refresh },
        "circle" => new(302, [], ("Location", "/" + page)),
        "other folder" => new(302, [], ("Location", "/elsewhere/" + page)),
        "no address" => new(302, [], ("Location", "mailto:help@boxes.home.arpa")),
        "never" => Reply.Never,
        "endless" => Reply.Endless,
        _ => throw new ArgumentException(wrong, nameof(wrong)),
    };

    private Reply Old(string place, string moved) => place switch
    {
        "redirect" => new(301, [], ("Location", "/" + page)),
        "pages of moved" => new(200, File.ReadAllBytes(moved)),
        "the site itself" => new(200, File.ReadAllBytes(Path.Combine(site, page))),
        "refresh" => new(200, Refresh),
        "redirect that cuts" => new(301, [], ("Location", $"/{page}#")),
        "gone" => new(404, []),
        "front page for all" => new(301, [], ("Location", "/")),
        _ => throw new ArgumentException(place, nameof(place)),
    };

    private static byte[] Refresh => Encoding.UTF8.GetBytes("<!doctype html><title>x</title><meta http-equiv=\"refresh\" content=\"0; url=/\">");

    private Task<VisitReport> Visit(LoopbackHost host, VisitBounds? bounds = null)
    {
        var (plan, _) = VisitPlan.Of(published.Book, published.Output, host.Address);
        return SiteVisit.Run(plan!, bounds ?? new(), _ => { }, CancellationToken.None);
    }
}
