using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace HintBook.Browser.Tests.Sites;

/// <summary>
/// Serves the files of one folder on this machine, as a plain web host would, and nothing else. Like many hosts it lets browsers keep for ten
/// minutes what they have got.
/// </summary>
internal sealed class FolderServer : IDisposable
{
    private readonly ConcurrentQueue<string> answered = [];
    private readonly CancellationTokenSource end = new();
    private int left = int.MaxValue;
    private string? countsBehind;

    private readonly HttpListener listener;
    private readonly string root;

    private FolderServer(HttpListener listener, string root, string address)
    {
        this.listener = listener;
        this.root = Path.GetFullPath(root);
        Address = address;
        _ = Serve();
    }

    /// <summary>Where the folder is served, with a slash at the end.</summary>
    public string Address { get; }

    /// <summary>The files that were sent, in order, relative to the folder.</summary>
    public IReadOnlyCollection<string> Answered => answered;

    /// <summary>Addresses that lead on with a status of 301, by the file that is asked for: relative to the folder, as is where they lead.</summary>
    public ConcurrentDictionary<string, string> Moved { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether requests are taken and never answered, as where the network is as good as gone.</summary>
    public bool IsSilent { get; set; }

    /// <summary>Sends some more files, and cuts every connection after that.</summary>
    /// <param name="files">How many more.</param>
    /// <param name="behind">The file behind which the count begins; null for at once.</param>
    public void CutAfter(int files, string? behind = null) => (left, countsBehind) = (files, behind);

    public static FolderServer Of(string folder)
    {
        // Another program may take the port between finding it and listening on it.
        for (var tries = 0; ; tries++)
        {
            var address = $"http://127.0.0.1:{FreePort()}/";
            var fresh = new HttpListener { Prefixes = { address } };
            try
            {
                fresh.Start();
                return new FolderServer(fresh, folder, address);
            }
            catch (HttpListenerException) when (tries < 10)
            {
                fresh.Close();
            }
        }
    }

    public void Dispose()
    {
        end.Cancel();
        listener.Close();
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                var context = await listener.GetContextAsync();
                _ = Task.Run(() => Answer(context));
            }
            catch (Exception stopped) when (stopped is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
        }
    }

    private async Task Answer(HttpListenerContext context)
    {
        using var response = context.Response;
        if (Moved.TryGetValue(context.Request.Url!.AbsolutePath.TrimStart('/'), out var now))
        {
            response.StatusCode = (int)HttpStatusCode.MovedPermanently;
            response.RedirectLocation = Address + now;
            return;
        }

        var file = Path.GetFullPath(Path.Combine(root, Uri.UnescapeDataString(context.Request.Url!.AbsolutePath).TrimStart('/')));
        if (!file.StartsWith(root + Path.DirectorySeparatorChar, StringComparison.Ordinal) || !File.Exists(file))
        {
            response.StatusCode = (int)HttpStatusCode.NotFound;
            return;
        }

        if (IsSilent)
        {
            await Task.Delay(Timeout.Infinite, end.Token).ContinueWith(_ => { }, TaskScheduler.Default);
            return;
        }

        var name = Path.GetRelativePath(root, file).Replace('\\', '/');
        if (countsBehind is null && Interlocked.Decrement(ref left) < 0)
        {
            // By itself this would be an empty answer that is whole: a body is promised that never comes.
            response.ContentLength64 = 1;
            response.Abort();
            return;
        }

        if (countsBehind == name)
            countsBehind = null;
        byte[] content;
        try
        {
            content = await File.ReadAllBytesAsync(file);
        }
        catch (IOException)
        {
            // The site was published anew at this moment. Without a status this would be an empty file that a device may keep.
            response.StatusCode = (int)HttpStatusCode.NotFound;
            return;
        }

        answered.Enqueue(name);
        response.Headers["Cache-Control"] = "max-age=600";
        response.ContentType = TypeOf(Path.GetExtension(file));
        response.ContentLength64 = content.Length;
        try
        {
            await response.OutputStream.WriteAsync(content);
        }
        catch (HttpListenerException)
        {
            // The browser has left the page.
        }
    }

    private static string TypeOf(string extension) => extension switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".jpg" => "image/jpeg",
        ".png" => "image/png",
        ".webp" => "image/webp",
        ".mp4" => "video/mp4",
        ".vtt" => "text/vtt",
        ".webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    };
}
