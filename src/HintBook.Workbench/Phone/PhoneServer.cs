using System.Collections.Immutable;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using HintBook.Checking;
using HintBook.Workbench.Looking;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Phone;

/// <summary>
/// The reader's pages alone, for telephones in the local network, behind a path of 128 random bits. It reads, and writes nothing; it knows no
/// text of the book, and nothing else of the workbench.
/// </summary>
internal sealed class PhoneServer : IAsyncDisposable
{
    private readonly WebApplication server;
    private readonly LiveBook book;
    private readonly byte[] token = Encoding.ASCII.GetBytes(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16)));
    private volatile ReadersMedia? media;

    private PhoneServer(LiveBook book)
    {
        this.book = book;
        // Empty: no settings are read from files or from the environment.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Any, 0);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Limits.MaxConcurrentConnections = 64;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        });
        server = builder.Build();
        server.Run(Answer);
    }

    /// <summary>Where a telephone finds the front page: an address for each network that this computer is in, the likeliest first.</summary>
    public ImmutableArray<Uri> Addresses { get; private set; } = [];

    /// <summary>The port.</summary>
    public int Port { get; private set; }

    /// <summary>The path that all its addresses have.</summary>
    public string Path => $"/{Encoding.ASCII.GetString(token)}/";

    /// <summary>Shows a book's pages to the local network until it is disposed of.</summary>
    /// <param name="book">The book.</param>
    public static async Task<PhoneServer> Open(LiveBook book)
    {
        var phone = new PhoneServer(book);
        try
        {
            await phone.server.StartAsync().ConfigureAwait(false);
        }
        catch
        {
            await phone.server.DisposeAsync().ConfigureAwait(false);
            throw;
        }

        phone.Port = new Uri(phone.server.Urls.First()).Port;
        phone.Addresses = [.. LocalNetwork.Addresses().Select(address => new Uri($"http://{address}:{phone.Port}{phone.Path}"))];
        return phone;
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => server.DisposeAsync();

    private Task Answer(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.CacheControl = "no-store";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers.ContentSecurityPolicy = "frame-ancestors 'none'";
        return MayRead(context.Request) is { } path && book.Now.Shown is { } shown ? Page(context, shown, path) : NotHere(context);
    }

    // A name that leads here is refused: pages from elsewhere could use one to read what only a telephone should (DNS rebinding).
    private string? MayRead(HttpRequest request)
    {
        var path = request.Path.Value ?? "";
        var length = token.Length + 2;
        return (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))
            && IPAddress.TryParse(request.Host.Host, out _)
            && path.Length >= length && path[0] == '/' && path[length - 1] == '/'
            && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(path[1..(length - 1)]), token)
            ? path[length..]
            : null;
    }

    private async Task Page(HttpContext context, Examined shown, string path)
    {
        var readers = MediaOf(shown);
        var file = path.Length == 0 || path.EndsWith('/') ? path + "index.html" : path;
        try
        {
            if (readers.Picture(file) is { } picture)
                await Send(context, picture, TypeOf(file)).ConfigureAwait(false);
            else if (readers.Film(file) is { } film)
                await Results.Stream(film, TypeOf(file), enableRangeProcessing: true).ExecuteAsync(context).ConfigureAwait(false);
            else if (shown.Site.Files.FirstOrDefault(made => made.Path == file) is { } page)
                await Send(context, page.Content(), TypeOf(file)).ConfigureAwait(false);
            else
                await NotHere(context).ConfigureAwait(false);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidOperationException && !context.Response.HasStarted)
        {
            // The maker is told of a broken template or a lost photo on the workbench; a reader learns nothing from it.
            await NotHere(context).ConfigureAwait(false);
        }
    }

    private ReadersMedia MediaOf(Examined shown) =>
        media is { } known && ReferenceEquals(known.Book, shown) ? known : media = new ReadersMedia(shown);
}
