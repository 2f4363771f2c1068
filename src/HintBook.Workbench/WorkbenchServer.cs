using System.Net;
using HintBook.Reading.Folder;
using HintBook.Workbench.Looking;
using HintBook.Workbench.Writing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;

namespace HintBook.Workbench;

/// <summary>The workbench of one book, on this computer's own address only (127.0.0.1), until it is disposed of.</summary>
public sealed class WorkbenchServer : IAsyncDisposable
{
    // A text of the largest size in UTF-8, and room for its frame.
    private const long LargestBody = BookFolder.MostTextBytes + (64 * 1024);

    private readonly WebApplication server;
    private readonly LiveBook book;

    private WorkbenchServer(WebApplication server, LiveBook book, Uri address)
    {
        this.server = server;
        this.book = book;
        Address = address;
    }

    /// <summary>Where it is; whoever knows it may read and change the book.</summary>
    public Uri Address { get; }

    /// <summary>Fails with what nobody expected, should that end the looking at the book.</summary>
    public Task Ended => book.Ended;

    /// <summary>Opens the workbench of a book. It answers at once; the book is read meanwhile.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <exception cref="IOException">The port is in use.</exception>
    public static async Task<WorkbenchServer> Open(string path, int port = 0)
    {
        // Empty: no settings are read from files or from the environment.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestBody;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        });
        var made = builder.Build();
        FilesWriter.Mend(Path.GetFullPath(path));
        var live = new LiveBook(path);
        var door = new Door();
        var answers = new Answers(live, new BookFiles(live.Root));
        made.Run(context =>
        {
            Harden(context.Response.Headers);
            return door.Enters(context.Request) is { } asked ? answers.Answer(context, asked) : Answers.NotHere(context);
        });
        try
        {
            await made.StartAsync().ConfigureAwait(false);
        }
        catch
        {
            await live.DisposeAsync().ConfigureAwait(false);
            await made.DisposeAsync().ConfigureAwait(false);
            throw;
        }

        return new(made, live, new Uri(new Uri(made.Urls.First()), door.Path));
    }

    /// <summary>Closes it. Pages that are open say so.</summary>
    public async ValueTask DisposeAsync()
    {
        await book.DisposeAsync().ConfigureAwait(false);
        await server.DisposeAsync().ConfigureAwait(false);
    }

    private static void Harden(IHeaderDictionary headers)
    {
        headers.CacheControl = "no-store";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
