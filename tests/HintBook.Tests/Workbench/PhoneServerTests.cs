using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Tests.Photos;
using HintBook.Tests.Reading;
using HintBook.Workbench;
using HintBook.Workbench.Phone;
using SixLabors.ImageSharp;
using ZXing;
using ZXing.QrCode;

namespace HintBook.Tests.Workbench;

/// <summary>What telephones in the local network get over the wire: the reader's pages, and nothing else.</summary>
public sealed partial class PhoneServerTests : IAsyncLifetime
{
    private readonly BookOnDisk book = new();
    private readonly HttpClient client = new();
    private WorkbenchServer bench = null!;

    private string Host => $"http://127.0.0.1:{bench.Phone?.Port}";

    private string Front => Host + bench.Phone?.Path;

    public async ValueTask InitializeAsync()
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: { file: lid.jpg, alt: A lid. } }"))
            .With("photos/lid.jpg", Shots.Jpeg(500, 300, orientation: 6));
        bench = await WorkbenchServer.Open(book.Path, onPhones: true);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (!(await client.GetStringAsync($"{bench.Address}look", patience.Token)).Contains("\"title\":\"The Tea Caddy\"", StringComparison.Ordinal))
            await Task.Yield();
    }

    public async ValueTask DisposeAsync()
    {
        await bench.DisposeAsync();
        client.Dispose();
        book.Dispose();
    }

    [Fact]
    public async Task It_is_off_unless_it_is_asked_for()
    {
        using var other = new BookOnDisk();
        await using var quiet = await WorkbenchServer.Open(other.Path);

        Assert.Null(quiet.Phone);
        Assert.Empty(quiet.OnPhones);
    }

    [Fact]
    public void It_is_behind_a_random_path_of_its_own()
    {
        Assert.Matches("^/[0-9a-f]{32}/$", bench.Phone?.Path);
        Assert.NotEqual(bench.Address.AbsolutePath, bench.Phone?.Path);
        Assert.All(bench.OnPhones, address => Assert.False(IPAddress.IsLoopback(IPAddress.Parse(address.Host))));
    }

    [Fact]
    public async Task Every_file_of_the_site_is_served_and_every_link_of_a_page_leads_somewhere()
    {
        var asked = new HashSet<string> { "" };
        var left = new Queue<string>(asked);
        while (left.TryDequeue(out var path))
        {
            using var answer = await client.GetAsync(Front + path);
            // The list of what is kept on a device is made by a publish alone.
            if (path is "sw.js" or "offline.js")
                continue;
            Assert.True(answer.IsSuccessStatusCode, path);
            if (answer.Content.Headers.ContentType?.MediaType != "text/html")
                continue;
            foreach (Match link in Links().Matches(await answer.Content.ReadAsStringAsync()))
            {
                var to = new Uri(new Uri(Front + path), WebUtility.HtmlDecode(link.Groups[1].Value));
                var name = to.AbsolutePath[bench.Phone!.Value.Path.Length..];
                if (to.GetLeftPart(UriPartial.Authority) == Host && asked.Add(name))
                    left.Enqueue(name);
            }
        }

        Assert.True(asked.Count > 5, string.Join(' ', asked));
    }

    [Theory]
    [InlineData("look")]
    [InlineData("looks")]
    [InlineData("house")]
    [InlineData("make")]
    [InlineData("making")]
    [InlineData("phone.svg")]
    [InlineData("known?name=stages/01-the-lid.md")]
    [InlineData("show?name=stages/01-the-lid.md")]
    [InlineData("text?name=book.yaml")]
    [InlineData("media?name=photos/lid.jpg")]
    [InlineData("photos/lid.jpg")]
    [InlineData("book.yaml")]
    [InlineData("stages/01-the-lid.md")]
    [InlineData("bench.html")]
    [InlineData("bench.js")]
    [InlineData("map.svg")]
    [InlineData("see/parlour/light/index.html")]
    [InlineData("..%2Fbook.yaml")]
    [InlineData("%2Fetc%2Fhostname")]
    [InlineData("pictures/..%2F..%2Fbook.yaml")]
    public async Task Nothing_but_the_readers_pages_is_there(string path)
    {
        using var answer = await client.GetAsync(Front + path);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("Nothing is here.", await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/index.html")]
    [InlineData("/00000000000000000000000000000000/")]
    public async Task Nothing_is_told_without_the_whole_path(string path)
    {
        using var answer = await client.GetAsync(Host + path);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task The_path_of_one_listener_opens_nothing_at_the_other()
    {
        using var here = await client.GetAsync(Host + bench.Address.AbsolutePath);
        using var there = await client.GetAsync(bench.Address.GetLeftPart(UriPartial.Authority) + bench.Phone?.Path);

        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.NotFound), (here.StatusCode, there.StatusCode));
    }

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    public async Task No_other_method_is_answered(string method)
    {
        using var request = new HttpRequestMessage(new(method), Front);

        using var answer = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    // A page from elsewhere may reach this computer by a name of its own (DNS rebinding); a telephone goes by the number of the address.
    [Fact]
    public async Task A_name_that_leads_here_is_refused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, Front);
        request.Headers.Host = "evil.example";

        using var answer = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_picture_is_upright_and_says_nothing_of_the_camera()
    {
        var page = await client.GetStringAsync(Front + "index.html");
        var links = Links().Matches(page).Select(link => link.Groups[1].Value).Where(link => link.EndsWith(".html", StringComparison.Ordinal)).Distinct();
        var pages = await Task.WhenAll(links.Select(link => client.GetStringAsync(Front + link)));

        var bytes = await client.GetByteArrayAsync(Front + pages.Select(text => Pictures().Match(text).Value).First(found => found.Length > 0));

        using var image = Image.Load(bytes);
        Assert.Equal((300, 500), (image.Width, image.Height));
        Assert.Null(image.Metadata.ExifProfile);
    }

    [Fact]
    public async Task A_body_is_not_read()
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, bench.Phone!.Value.Port);
        await socket.GetStream().WriteAsync(Encoding.ASCII.GetBytes(
            $"GET {bench.Phone?.Path} HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 1000000\r\n\r\n"));

        using var answer = await client.GetAsync(Front);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    // ISO/IEC 18004, read back by a decoder that shares nothing with the writer.
    [Fact]
    public void The_code_in_the_terminal_leads_to_the_pages()
    {
        var address = new Uri("http://192.168.178.20:41234/0123456789abcdef0123456789abcdef/");
        string[] lines = ScanCode.Text(address)!.TrimEnd('\n').Split('\n');
        const int dots = 4;
        var width = lines[0].Length * dots;
        var height = lines.Length * 2 * dots;
        var grey = new byte[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (sign, lower) = (lines[y / (2 * dots)][x / dots], y / dots % 2 == 1);
                grey[(y * width) + x] = sign == '█' || sign == (lower ? '▄' : '▀') ? byte.MaxValue : (byte)0;
            }
        }

        var seen = new RGBLuminanceSource(grey, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        var read = new QRCodeReader().decode(new(new ZXing.Common.HybridBinarizer(seen)));

        Assert.Equal(address.ToString(), read?.Text);
    }

    [GeneratedRegex("""(?:href|src)="([^"#]+)["#]""")]
    private static partial Regex Links();

    [GeneratedRegex("""pictures/[^" ]+\.jpg""")]
    private static partial Regex Pictures();
}
