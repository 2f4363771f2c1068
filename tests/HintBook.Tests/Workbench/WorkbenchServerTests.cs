using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Reading.Folder;
using HintBook.Tests.Reading;
using HintBook.Workbench;

namespace HintBook.Tests.Workbench;

/// <summary>The workbench over the wire: who is let in, and what is answered.</summary>
public sealed partial class WorkbenchServerTests : IAsyncLifetime
{
    private const string Lid = "stages/01-the-lid.md";

    private readonly BookOnDisk book = new();
    private readonly HttpClient client = new();
    private WorkbenchServer bench = null!;

    private string Origin => bench.Address.GetLeftPart(UriPartial.Authority);

    public async ValueTask InitializeAsync() => bench = await WorkbenchServer.Open(book.Path);

    public async ValueTask DisposeAsync()
    {
        await bench.DisposeAsync();
        client.Dispose();
        book.Dispose();
    }

    [Fact]
    public void It_is_on_this_computers_own_address_behind_a_path_of_128_random_bits()
    {
        Assert.Equal("127.0.0.1", bench.Address.Host);
        Assert.Matches("^/[0-9a-f]{32}/$", bench.Address.AbsolutePath);
    }

    [Fact]
    public async Task The_page_lets_nothing_in_from_elsewhere()
    {
        using var answer = await client.GetAsync(bench.Address);

        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("no-store", Assert.Single(answer.Headers.GetValues("Cache-Control")));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
    }

    // Fetch Standard (Origin); Fetch Metadata Request Headers (Sec-Fetch-Site); RFC 9110, 7.2 (Host).
    [Theory]
    [InlineData("GET", "Host", "evil.example")]
    [InlineData("GET", "Host", "127.0.0.1.evil.example")]
    [InlineData("GET", "Origin", "http://evil.example")]
    [InlineData("GET", "Origin", "null")]
    [InlineData("GET", "Sec-Fetch-Site", "cross-site")]
    [InlineData("GET", "Sec-Fetch-Site", "same-site")]
    [InlineData("PUT", "Origin", "http://evil.example")]
    [InlineData("PUT", "Sec-Fetch-Site", "cross-site")]
    public async Task A_request_from_elsewhere_meets_a_shut_door(string method, string header, string value)
    {
        using var request = new HttpRequestMessage(new(method), TextOf(Lid));
        request.Headers.TryAddWithoutValidation("Origin", method == "PUT" ? Origin : null);
        request.Headers.Remove(header);
        request.Headers.TryAddWithoutValidation(header, value);

        using var answer = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_change_must_say_that_it_comes_from_here()
    {
        using var answer = await client.PutAsync(TextOf(Lid), new StringContent("mine"));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.DoesNotContain("mine", File.ReadAllText(Path.Combine(book.Path, Lid)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/look")]
    [InlineData("/00000000000000000000000000000000/")]
    [InlineData("/TOKEN")]
    [InlineData("/TOKENx/")]
    [InlineData("//TOKEN/")]
    [InlineData("/TOKEN/../TOKEN/nowhere")]
    public async Task Nothing_is_told_without_the_whole_path(string path)
    {
        using var answer = await client.GetAsync(Origin + path.Replace("TOKEN", bench.Address.AbsolutePath.Trim('/'), StringComparison.Ordinal));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("Nothing is here.", await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("text?name=..%2F..%2Fetc%2Fhostname")]
    [InlineData("text?name=%2Fetc%2Fhostname")]
    [InlineData("text?name=")]
    [InlineData("text")]
    [InlineData("see/parlour/light/..%2F..%2F..%2Fbook.yaml")]
    [InlineData("see/parlour/light/%2Fetc%2Fhostname")]
    [InlineData("see/nowhere/light/index.html")]
    [InlineData("see/parlour/dim/index.html")]
    [InlineData("page/bench.html")]
    [InlineData("rehearsal?name=book.yaml")]
    [InlineData("rehearsal?name=..%2F..%2Fetc%2Fhostname")]
    public async Task What_is_not_there_is_not_there(string path)
    {
        await Read();

        using var answer = await client.GetAsync(bench.Address + path);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_readers_page_is_shown_in_every_theme()
    {
        var look = await Read();
        foreach (var theme in look.GetProperty("themes").EnumerateArray().Select(theme => theme.GetString()))
        {
            var page = await client.GetStringAsync($"{bench.Address}see/{theme}/light/");
            Assert.Contains("The Tea Caddy", page, StringComparison.Ordinal);
            var style = await client.GetStringAsync($"{bench.Address}see/{theme}/dark/{Stylesheet().Match(page).Groups[1].Value}");
            Assert.DoesNotContain("prefers-color-scheme", style, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_saved_text_is_in_the_readers_page()
    {
        var before = await Read();
        using var text = await client.GetAsync(TextOf(Lid));
        var changed = (await text.Content.ReadAsStringAsync()).Replace("Look up.", "Look right up.", StringComparison.Ordinal);

        using var saved = await Put(Lid, changed, text.Headers.ETag!.Tag);
        Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
        var page = $"{bench.Address}see/parlour/light/{before.GetProperty("pages")[0].GetProperty("page").GetString()}";
        // A look that was being taken when the text was saved may come first.
        for (var look = before; !(await client.GetStringAsync(page)).Contains("Look right up.", StringComparison.Ordinal);)
            look = await Read(after: look.GetProperty("number").GetInt32());
    }

    [Fact]
    public async Task A_text_that_was_made_from_an_older_file_is_handed_back_with_the_newer()
    {
        using var text = await client.GetAsync(TextOf(Lid));
        book.With(Lid, "theirs\n");

        using var saved = await Put(Lid, "mine\n", text.Headers.ETag!.Tag);

        Assert.Equal(HttpStatusCode.PreconditionFailed, saved.StatusCode);
        Assert.Equal("theirs\n", await saved.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[null]")]
    [InlineData("[1]")]
    [InlineData("not json")]
    public async Task Steps_that_cannot_be_read_are_refused(string body)
    {
        await Read();
        using var request = new HttpRequestMessage(HttpMethod.Post, $"{bench.Address}play") { Content = new StringContent(body) };
        request.Headers.Add("Origin", Origin);

        using var answer = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task A_step_that_the_book_does_not_have_ends_the_playing_and_that_is_said()
    {
        await Read();
        using var request = new HttpRequestMessage(HttpMethod.Post, $"{bench.Address}play") { Content = new StringContent("[\"nothing\"]") };
        request.Headers.Add("Origin", Origin);

        using var answer = await client.SendAsync(request);

        using var box = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Contains("isn't possible", box.RootElement.GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.NotEqual(0, box.RootElement.GetProperty("possible").GetArrayLength());
    }

    [Fact]
    public async Task A_huge_body_is_refused()
    {
        using var saved = await Put(Lid, new string('a', BookFolder.MostTextBytes + (128 * 1024)), "\"x\"");

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, saved.StatusCode);
    }

    [Fact]
    public async Task A_client_that_says_nothing_keeps_nobody_waiting()
    {
        using var slow = new TcpClient();
        await slow.ConnectAsync(IPAddress.Loopback, bench.Address.Port);
        await slow.GetStream().WriteAsync("GET / HT"u8.ToArray());

        using var answer = await client.GetAsync(bench.Address);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [GeneratedRegex("""<link rel="stylesheet" href="([^"]*)""")]
    private static partial Regex Stylesheet();

    private string TextOf(string name) => $"{bench.Address}text?name={Uri.EscapeDataString(name)}";

    private async Task<HttpResponseMessage> Put(string name, string text, string digest)
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, TextOf(name)) { Content = new StringContent(text, Encoding.UTF8) };
        request.Headers.Add("Origin", Origin);
        request.Headers.TryAddWithoutValidation("If-Match", digest);
        // So that a body that is refused isn't sent (RFC 9110, 10.1.1).
        request.Headers.ExpectContinue = true;
        return await client.SendAsync(request);
    }

    // The newest look once there is one after a number, as the page hears of it.
    private async Task<JsonElement> Read(int after = 0)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        await using var looks = await client.GetStreamAsync($"{bench.Address}looks", patience.Token);
        using var lines = new StreamReader(looks);
        while (await lines.ReadLineAsync(patience.Token) is { } line)
        {
            if (!line.StartsWith("data: ", StringComparison.Ordinal) || int.Parse(line["data: ".Length..]) <= after)
                continue;
            return JsonDocument.Parse(await client.GetStringAsync($"{bench.Address}look")).RootElement;
        }

        throw new InvalidOperationException("The workbench was closed.");
    }
}
