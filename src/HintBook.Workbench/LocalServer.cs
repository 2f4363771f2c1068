using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;

namespace HintBook.Workbench;

/// <summary>A server on this computer's own address only (127.0.0.1), which lets in nobody but whoever knows the way.</summary>
internal static class LocalServer
{
    /// <summary>Makes one; it isn't started yet.</summary>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <param name="largestBody">How many bytes somebody may send at once.</param>
    public static WebApplication Make(int port, long largestBody)
    {
        // Empty: no settings are read from files or from the environment.
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = largestBody;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(5);
        });
        return builder.Build();
    }

    /// <summary>Answers whoever is let in, and nobody else.</summary>
    /// <param name="server">The server.</param>
    /// <param name="door">Who is let in.</param>
    /// <param name="guests">Who is there.</param>
    /// <param name="answer">What answers a request for the path behind the token.</param>
    public static void Answer(WebApplication server, Door door, Guests guests, Func<HttpContext, string, Task> answer) => server.Run(async context =>
    {
        Harden(context.Response.Headers);
        if (door.Enters(context.Request) is not { } asked)
        {
            await Replies.NotHere(context).ConfigureAwait(false);
            return;
        }

        using var stay = guests.Enter();
        await answer(context, asked).ConfigureAwait(false);
    });

    private static void Harden(IHeaderDictionary headers)
    {
        headers.CacheControl = "no-store";
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }
}
