using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace HintBook.Tests.Publishing.Visits;

/// <summary>What a host answers: a status, a body and headers.</summary>
internal sealed record Reply(int Status, byte[] Body, params (string Name, string Value)[] Headers)
{
    /// <summary>Never answers.</summary>
    public static Reply Never { get; } = new(0, []);

    /// <summary>Sends without end.</summary>
    public static Reply Endless { get; } = new(-1, []);
}

/// <summary>
/// A web host on this machine that serves a folder, as well or as badly as a test wants; one request to a connection. Asked as a proxy, it serves the folder
/// under every host's name.
/// </summary>
internal sealed class LoopbackHost : IDisposable
{
    private readonly TcpListener listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource closed = new();
    private readonly string folder;
    private readonly Func<string, Reply, Reply> answer;
    private int now;
    private int most;

    /// <summary>Serves from now on.</summary>
    /// <param name="folder">What is served.</param>
    /// <param name="answer">Changes what is answered for a path in the folder; null for a good host.</param>
    public LoopbackHost(string folder, Func<string, Reply, Reply>? answer = null)
    {
        this.folder = folder;
        this.answer = answer ?? ((_, reply) => reply);
        listener.Start();
        Address = new($"http://{listener.LocalEndpoint}/");
        _ = Serve();
    }

    /// <summary>Where it is served, ending in a slash.</summary>
    public Uri Address { get; }

    /// <summary>Every path that was asked for.</summary>
    public ConcurrentBag<string> Asked { get; } = [];

    /// <summary>How many requests were under way at a time, at most.</summary>
    public int MostAtATime => most;

    public void Dispose()
    {
        closed.Cancel();
        listener.Dispose();
        closed.Dispose();
    }

    /// <summary>An address at which nobody listens any more.</summary>
    public static Uri Nobody()
    {
        using var gone = new LoopbackHost("");
        return gone.Address;
    }

    private async Task Serve()
    {
        var stop = closed.Token;
        try
        {
            while (true)
            {
                var client = await listener.AcceptTcpClientAsync(stop);
                _ = Answer(client, stop);
            }
        }
        catch (Exception end) when (end is SocketException or ObjectDisposedException or OperationCanceledException)
        {
            // The test is over.
        }
    }

    private async Task Answer(TcpClient client, CancellationToken stop)
    {
        using var closing = client;
        try
        {
            var stream = client.GetStream();
            var path = await PathFrom(stream, stop);
            Asked.Add(path);
            lock (listener)
                most = Math.Max(most, ++now);
            var reply = answer(path, Served(path));
            if (reply == Reply.Never)
                await Task.Delay(Timeout.Infinite, stop);
            var head = new StringBuilder($"HTTP/1.1 {(reply.Status > 0 ? reply.Status : 200)} said\r\nConnection: close\r\n");
            foreach (var (name, value) in reply.Headers)
                head.Append(name).Append(": ").Append(value).Append("\r\n");
            if (reply != Reply.Endless)
                head.Append("Content-Length: ").Append(reply.Body.Length).Append("\r\n");
            await stream.WriteAsync(Encoding.ASCII.GetBytes(head.Append("\r\n").ToString()), stop);
            // Before the last byte is out, so that the next request never finds this one still counted.
            lock (listener)
                now--;
            await stream.WriteAsync(reply.Body, stop);
            while (reply == Reply.Endless)
                await stream.WriteAsync(new byte[4096], stop);
        }
        catch (Exception gone) when (gone is IOException or SocketException or ObjectDisposedException or OperationCanceledException)
        {
            // Whoever asked has left, or the test is over.
        }
    }

    // The request is read to its end, so that closing the connection takes nothing back that was sent.
    private static async Task<string> PathFrom(NetworkStream stream, CancellationToken stop)
    {
        using var reader = new StreamReader(stream, Encoding.ASCII, leaveOpen: true);
        var first = await reader.ReadLineAsync(stop) ?? "";
        while (await reader.ReadLineAsync(stop) is { Length: > 0 })
        {
        }

        var target = first.Split(' ')[1];
        // A proxy is asked for the whole address (RFC 9112, section 3.2.2).
        var path = target.StartsWith("http://", StringComparison.Ordinal) ? new Uri(target).PathAndQuery : target;
        return Uri.UnescapeDataString(path).TrimStart('/');
    }

    private Reply Served(string path)
    {
        var file = Path.Combine(folder, path.Length == 0 || path.EndsWith('/') ? path + "index.html" : path);
        return File.Exists(file)
            ? new(200, File.ReadAllBytes(file), ("Content-Type", TypeOf(Path.GetExtension(file))), ("Cache-Control", "no-cache"))
            : new(404, "nothing here"u8.ToArray(), ("Content-Type", "text/plain"));
    }

    private static string TypeOf(string ending) => ending switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css",
        ".js" => "text/javascript",
        ".svg" => "image/svg+xml",
        ".webmanifest" => "application/manifest+json",
        _ => "application/octet-stream",
    };
}
