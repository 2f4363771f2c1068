using System.Collections.Frozen;
using Microsoft.AspNetCore.Http;

namespace HintBook.Workbench;

/// <summary>The workbench's own pages, scripts and styles, which travel inside it.</summary>
internal static class OwnPages
{
    // Nothing from elsewhere, nothing in the page itself, no page that holds ours in a frame. The reader's pages come with a policy of their own.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; media-src 'self'; connect-src 'self'; frame-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private const string Prefix = "page/";

    private static readonly FrozenSet<string> Names = typeof(OwnPages).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
        .Select(name => name[Prefix.Length..])
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether there is one of that name.</summary>
    public static bool Has(string name) => Names.Contains(name);

    /// <summary>Sends one.</summary>
    /// <param name="context">The request.</param>
    /// <param name="name">Its name.</param>
    public static Task Send(HttpContext context, string name)
    {
        context.Response.Headers.ContentSecurityPolicy = Policy;
        return Replies.Send(context, Bytes(name), Replies.TypeOf(name));
    }

    private static byte[] Bytes(string name)
    {
        using var stream = typeof(OwnPages).Assembly.GetManifestResourceStream(Prefix + name)
            ?? throw new InvalidOperationException($"{name} isn't embedded.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
