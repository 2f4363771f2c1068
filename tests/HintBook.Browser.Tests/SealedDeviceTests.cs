using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests;

// What a device with one card opens and forgets, and what of it is none of this box.
public sealed class SealedDeviceTests(ReadingRoom room)
{
    // With the card of one step the page of all solutions opens that step, and says why the others stay shut.
    [Fact]
    public async Task On_the_solution_page_the_card_of_one_step_is_told_from_a_damaged_page()
    {
        using var book = SealedSmallBook.Of(room, "solution with one card");
        await using var reader = await room.Seat(book.Site, new());
        await book.Scan(reader, "plover", book.CardOf("plover"));
        await reader.Open("solution.html");
        await Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();
        await reader.OpenAll();

        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]"))
            .ToHaveTextAsync("This card opens its own step only. The other steps stay locked.");
        await Assertions.Expect(reader.Page.Locator(".steps h2")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_piece_that_arrived_damaged_is_told_as_that()
    {
        using var book = SealedSmallBook.Of(room, "damaged solution");
        await using var reader = await room.Seat(book.Site, new());
        await book.Scan(reader, "plover", book.BoxCard);
        var solution = Path.Combine(book.Site.Folder, "solution.html");
        var html = await File.ReadAllTextAsync(solution, TestContext.Current.CancellationToken);
        var at = html.IndexOf("data-text=\"", StringComparison.Ordinal) + 100;
        await File.WriteAllTextAsync(solution, html[..at] + (html[at] == 'A' ? 'B' : 'A') + html[(at + 1)..], TestContext.Current.CancellationToken);
        await reader.Open("solution.html");
        await Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();
        await reader.OpenAll();

        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToContainTextAsync("arrived damaged");
    }

    // The device takes its time for each file; a page that left at once would take the rest of the work with it.
    [Fact]
    public async Task To_forget_a_box_leaves_what_another_book_on_the_host_keeps()
    {
        using var book = SealedSmallBook.Of(room, "two books on a host");
        await using var reader = await room.Seat(book.Site, new());
        await book.Scan(reader, "plover", book.BoxCard);
        await reader.Page.EvaluateAsync(
            """
            async () => {
              const cache = await caches.open("hintbook-sealed:another:1");
              for (const file of ["another/k/box-0.js", "another/p/0123456789abcdef-0.js", "k/box-9.js"]) {
                await cache.put(new URL(file, location.href), new Response("kept"));
              }
              document.documentElement.dataset.before = "";
              const forget = Cache.prototype.delete;
              Cache.prototype.delete = async function (file) {
                await new Promise(done => setTimeout(done, 300));
                return forget.call(this, file);
              };
            }
            """);
        await reader.Page.Locator("[data-forget]").First.ClickAsync();

        await Assertions.Expect(reader.Page.Locator("html:not([data-before])")).ToBeAttachedAsync();
        Assert.Equal(2, await reader.Page.EvaluateAsync<int>("async () => (await (await caches.open('hintbook-sealed:another:1')).keys()).length"));
    }

    [Fact]
    public async Task A_card_whose_address_the_host_leads_on_opens_the_page()
    {
        using var book = SealedSmallBook.Of(room, "moved by the host");
        await using var reader = await room.Seat(book.Site, new());
        book.Site.Server.Moved["former.html"] = book.Site.PageOf("plover");
        await reader.Open($"former.html#{book.CardOf("plover")}");

        await Assertions.Expect(reader.Page.Locator("html[data-opened]")).ToBeAttachedAsync();
        Assert.Equal(SmallBook.TitleOf("plover"), await reader.Page.Locator("h1").TextContentAsync());
        Assert.EndsWith(book.Site.PageOf("plover"), reader.Page.Url, StringComparison.Ordinal);
    }

    // Browsers have no cryptography there; this machine itself would count as secure.
    [Fact]
    public async Task At_a_plain_address_the_page_says_so_and_leads_to_the_secure_one_with_the_key()
    {
        using var book = SealedSmallBook.Of(room, "plain http");
        await using var reader = await room.Seat(book.Site, new());
        var (page, code) = (book.Site.PageOf("plover"), book.CardOf("plover"));
        await reader.Page.RouteAsync("http://plain.home.arpa/**", route =>
            route.FulfillAsync(new() { Path = Path.Combine(book.Site.Folder, new Uri(route.Request.Url).AbsolutePath.TrimStart('/')) }));
        await reader.Page.GotoAsync($"http://plain.home.arpa/{page}#{code}");

        await Assertions.Expect(reader.Page.Locator("[data-locked] [role=status]")).ToHaveTextAsync("This page opens at its secure address only.");
        await Assertions.Expect(reader.Page.Locator("[data-https]")).ToBeVisibleAsync();
        Assert.Equal($"https://plain.home.arpa/{page}#{code}", await reader.Page.Locator("[data-https]").EvaluateAsync<string>("link => link.href"));
        Assert.Equal(0, await reader.Page.Locator("h1").CountAsync());
    }
}
