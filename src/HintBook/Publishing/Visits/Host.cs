using System.Collections.Immutable;
using System.Net;
using System.Net.Http.Headers;

namespace HintBook.Publishing.Visits;

/// <summary>Asks a host for addresses, politely and within bounds. Redirects are followed by hand, so that each can be looked at.</summary>
internal sealed class Host : IDisposable
{
    private readonly HttpClient client;
    private readonly VisitBounds bounds;
    private long bytes;

    /// <summary>Nobody has been asked yet.</summary>
    /// <param name="bounds">How far it may go.</param>
    /// <param name="isLocal">Whether it is this computer, which no proxy stands before.</param>
    public Host(VisitBounds bounds, bool isLocal)
    {
        this.bounds = bounds;
        var handler = new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            AutomaticDecompression = DecompressionMethods.All,
            MaxConnectionsPerServer = VisitBounds.AtATime,
            UseCookies = false,
            UseProxy = !isLocal,
        };
        client = new HttpClient(handler) { Timeout = Timeout.InfiniteTimeSpan };
        client.DefaultRequestHeaders.UserAgent.Add(new ProductInfoHeaderValue("HintBook", "1"));
    }

    /// <summary>How many bytes have come back.</summary>
    public long Bytes => Interlocked.Read(ref bytes);

    public void Dispose() => client.Dispose();

    /// <summary>Asks for one address.</summary>
    /// <param name="address">The address.</param>
    /// <param name="size">How large the published file is, in bytes.</param>
    /// <param name="follow">Whether redirects are followed.</param>
    /// <param name="stop">Ends the visit.</param>
    /// <exception cref="OperationCanceledException">The visit is over.</exception>
    public async Task<Answer> Ask(Uri address, long size, bool follow, CancellationToken stop)
    {
        using var each = CancellationTokenSource.CreateLinkedTokenSource(stop);
        each.CancelAfter(bounds.Each);
        var at = address;
        var redirects = ImmutableArray.CreateBuilder<Uri>();
        try
        {
            while (true)
            {
                using var answer = await Send(at, size, each.Token).ConfigureAwait(false);
                if (!follow || !IsRedirect(answer.StatusCode) || answer.Headers.Location is not { } location)
                    return await Read(answer, at, redirects.ToImmutable(), size, each.Token).ConfigureAwait(false);
                at = new Uri(at, location);
                redirects.Add(at);
                if (redirects.Count > Answer.MostRedirects)
                    return new() { From = at, Redirects = redirects.ToImmutable(), Failure = "is redirected again and again" };
                if (at.Scheme != Uri.UriSchemeHttp && at.Scheme != Uri.UriSchemeHttps)
                    return new() { From = at, Redirects = redirects.ToImmutable(), Failure = $"is redirected to {at}, which is no page" };
            }
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            return new() { From = at, Redirects = redirects.ToImmutable(), Failure = $"didn't answer within {bounds.Each.TotalSeconds:0.#} s" };
        }
        catch (Exception failure) when (failure is HttpRequestException or IOException or InvalidDataException)
        {
            return new() { From = at, Redirects = redirects.ToImmutable(), Failure = Reason(failure) };
        }
    }

    private Task<HttpResponseMessage> Send(Uri at, long size, CancellationToken stop)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, at);
        if (size > bounds.Whole)
            request.Headers.Range = new RangeHeaderValue(0, bounds.Whole - 1);
        return client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stop);
    }

    private async Task<Answer> Read(HttpResponseMessage answer, Uri at, ImmutableArray<Uri> redirects, long size, CancellationToken stop)
    {
        // One byte more than was published tells that there is more; a host that sends without end is not listened to.
        var room = (int)Math.Min(size + 1, bounds.Whole);
        var content = new byte[room];
        var stream = await answer.Content.ReadAsStreamAsync(stop).ConfigureAwait(false);
        await using var closed = stream.ConfigureAwait(false);
        var read = await stream.ReadAtLeastAsync(content, room, throwOnEndOfStream: false, stop).ConfigureAwait(false);
        Interlocked.Add(ref bytes, read);
        var type = answer.Content.Headers.ContentType;
        return new()
        {
            Status = (int)answer.StatusCode,
            From = at,
            Redirects = redirects,
            Type = type?.MediaType?.ToLowerInvariant(),
            Charset = type?.CharSet?.Trim('"').ToLowerInvariant(),
            KeptFor = KeptFor(answer),
            Content = content[..read],
            GoesOn = read == room,
            Length = answer.Content.Headers.ContentRange?.Length ?? answer.Content.Headers.ContentLength,
        };
    }

    // RFC 9111, sections 5.2.2 and 5.3: max-age comes before Expires.
    private static TimeSpan? KeptFor(HttpResponseMessage answer)
    {
        var control = answer.Headers.CacheControl;
        if (control is { NoStore: true } or { NoCache: true })
            return TimeSpan.Zero;
        return control?.MaxAge ?? (answer.Content.Headers.Expires is { } until && answer.Headers.Date is { } now ? until - now : null);
    }

    private static bool IsRedirect(HttpStatusCode status) => (int)status is 301 or 302 or 303 or 307 or 308;

    private static string Reason(Exception failure) => failure is HttpRequestException request
        ? request.HttpRequestError switch
        {
            HttpRequestError.NameResolutionError => "can't be found: there is no host of that name",
            HttpRequestError.ConnectionError => "can't be reached: nothing answers there",
            HttpRequestError.SecureConnectionError => "has no https that a browser would trust",
            _ => "broke off, or answered in a way that no browser understands",
        }
        : "broke off while it was answering";
}
