using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Choosing;

/// <summary>
/// A page that asks which book the workbench shall open: it lists those in a folder, takes a path, and begins a book where there is none. Each
/// book that is chosen gets a workbench of its own, until this is disposed of. On this computer's own address only.
/// </summary>
public sealed class ChooserServer : IAsyncDisposable
{
    private const long LargestBody = 64 * 1024;

    private readonly WebApplication server;
    private readonly string documents;
    private readonly Func<Uri, bool> show;
    private readonly Guests guests;
    private readonly SemaphoreSlim gate = new(1);
    private readonly Dictionary<string, WorkbenchServer> open = new(StringComparer.Ordinal);
    private readonly CancellationTokenSource closing = new();
    private readonly TaskCompletionSource closed = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private ChooserServer(string documents, Func<Uri, bool> show, Guests guests, WebApplication server) =>
        (this.documents, this.show, this.guests, this.server) = (documents, show, guests, server);

    /// <summary>Where it is; whoever knows it may open and begin books.</summary>
    public Uri Address { get; private set; } = new("about:blank");

    /// <summary>Ends when the page's button is pressed that closes all of it.</summary>
    public Task Closed => closed.Task;

    /// <summary>Opens it.</summary>
    /// <param name="documents">The folder that books are looked for in, and begun in.</param>
    /// <param name="show">Opens an address in the browser; false where there is none.</param>
    /// <param name="guests">Who is there.</param>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <exception cref="IOException">The port is in use.</exception>
    public static async Task<ChooserServer> Open(string documents, Func<Uri, bool> show, Guests guests, int port = 0)
    {
        var made = LocalServer.Make(port, LargestBody);
        var door = new Door();
        var chooser = new ChooserServer(documents, show, guests, made);
        LocalServer.Answer(made, door, guests, chooser.Answer);
        try
        {
            await made.StartAsync().ConfigureAwait(false);
        }
        catch
        {
            await chooser.DisposeAsync().ConfigureAwait(false);
            throw;
        }

        chooser.Address = new(new Uri(made.Urls.First()), door.Path);
        return chooser;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await closing.CancelAsync().ConfigureAwait(false);
        await server.DisposeAsync().ConfigureAwait(false);
        foreach (var bench in open.Values)
            await bench.DisposeAsync().ConfigureAwait(false);
        gate.Dispose();
        closing.Dispose();
    }

    private Task Answer(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("", "GET") => OwnPages.Send(context, "choose.html"),
        ("choose.js" or "bench.css" or "bench.svg", "GET") => OwnPages.Send(context, path),
        ("books", "GET") => Send(context, Books(), "application/json"),
        ("open", "POST") => Opened(context),
        ("close", "POST") => Close(context),
        ("stay", "GET") => Tell(context, Stay),
        _ => NotHere(context),
    };

    private byte[] Books() => JsonLists.Document(json =>
    {
        json.WriteString("documents", documents);
        json.WriteObjects("books", FoundBooks.In(documents), book =>
        {
            json.WriteString("title", book.Title);
            json.WriteString("path", book.Path);
        });
    });

    private async Task Opened(HttpContext context)
    {
        if (await Asked<Choice>(context).ConfigureAwait(false) is not { } choice)
            return;
        var (folder, why) = ChosenFolder.Of(choice.Path, documents);
        if (why is not null)
        {
            await Refuse(context, why).ConfigureAwait(false);
            return;
        }

        WorkbenchServer bench;
        try
        {
            bench = await BenchOf(folder).ConfigureAwait(false);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await Refuse(context, $"“{folder}” can't be opened: {failure.Message}").ConfigureAwait(false);
            return;
        }

        var isShown = show(bench.Address);
        await Send(context, JsonLists.Document(json =>
        {
            json.WriteString("path", folder);
            json.WriteString("address", bench.Address.ToString());
            json.WriteBoolean("shown", isShown);
        }), "application/json").ConfigureAwait(false);
    }

    private async Task<WorkbenchServer> BenchOf(string folder)
    {
        await gate.WaitAsync().ConfigureAwait(false);
        try
        {
            if (!open.TryGetValue(folder, out var bench) || bench.Ended.IsCompleted)
            {
                if (bench is not null)
                    await bench.DisposeAsync().ConfigureAwait(false);
                open[folder] = bench = await WorkbenchServer.Open(folder, guests: guests).ConfigureAwait(false);
            }

            return bench;
        }
        finally
        {
            gate.Release();
        }
    }

    private async Task Close(HttpContext context)
    {
        await Send(context, Encoding.UTF8.GetBytes("Closed."), "text/plain").ConfigureAwait(false);
        await context.Response.CompleteAsync().ConfigureAwait(false);
        closed.TrySetResult();
    }

    // Nothing is told but that the page is still there.
    private async Task<(int Number, string Data)> Stay(int known, CancellationToken stop)
    {
        if (known >= 0)
        {
            using var until = CancellationTokenSource.CreateLinkedTokenSource(stop, closing.Token);
            await Task.Delay(Timeout.Infinite, until.Token).ConfigureAwait(false);
        }

        return (0, "here");
    }

    private sealed record Choice(string? Path);
}
