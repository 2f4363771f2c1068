using System.Collections.Immutable;
using System.Net;
using System.Text;
using HintBook.Books;

namespace HintBook.Pages;

/// <summary>
/// Pages for a place where the site was before, each leading to its page where the site is now. A script leads on, since what stands
/// behind <c>#</c> would be lost by a refresh (WHATWG HTML, 4.2.5.3, shared declarative refresh steps: the address is taken as it is
/// written); where no script runs, a refresh does. Of a sealed book what stands there is the key of a card: without a script its pages say so and wait.
/// </summary>
public static class MovedSite
{
    private const string Script =
        """
        location.replace(document.querySelector("link[rel=canonical]").href + location.hash);

        """;

    // Whoever had been there kept the whole old site on their device: without this its worker would show it for ever.
    private const string Worker =
        """
        self.addEventListener("install", () => self.skipWaiting());
        self.addEventListener("activate", event => event.waitUntil(self.registration.unregister()));

        """;

    /// <summary>
    /// The folder for an old address: its host, then its path, so that it lies as it must at that host. What is no address gets a folder, too.
    /// </summary>
    /// <param name="address">The old address.</param>
    public static string FolderOf(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri))
            return Plain(address);
        var host = uri.IsDefaultPort ? uri.IdnHost : $"{uri.IdnHost}-{uri.Port}";
        return string.Join('/', uri.AbsolutePath.Split('/').Select(Uri.UnescapeDataString).Select(Plain).Where(step => step.Length > 0).Prepend(Plain(host)));
    }

    /// <summary>The pages for one old place.</summary>
    /// <param name="folder">Where they lie: see <see cref="FolderOf"/>.</param>
    /// <param name="address">Where the site is now, ending in a slash.</param>
    /// <param name="pages">The pages of the site, by path.</param>
    /// <param name="words">The words of the book's language.</param>
    /// <param name="withKeys">Whether cards hold keys, which a refresh would lose.</param>
    public static ImmutableArray<MadeFile> Build(string folder, string address, IEnumerable<string> pages, ThemeWords words, bool withKeys = false) =>
    [
        new($"{folder}/moved.js", () => Encoding.UTF8.GetBytes(Script)),
        new($"{folder}/{Theme.WorkerFile}", () => Encoding.UTF8.GetBytes(Worker)),
        .. pages.Select(page => new MadeFile($"{folder}/{page}", () => Encoding.UTF8.GetBytes(PageOf(page, address, words, withKeys)))),
    ];

    private static string PageOf(string page, string address, ThemeWords words, bool withKeys)
    {
        var root = string.Concat(Enumerable.Repeat("../", page.Count(letter => letter == '/')));
        var to = WebUtility.HtmlEncode(address + (page == "index.html" ? "" : page));
        var refresh = withKeys ? "" : $"""

            <noscript><meta http-equiv="refresh" content="0; url={to}"></noscript>
            """;
        var lost = !withKeys ? "" : $"""

            <noscript><p>{WebUtility.HtmlEncode(words["moved_key"])}</p></noscript>
            """;
        return $"""
            <!doctype html>
            <html lang="{words.Language}" dir="{TextDirection.Of(words.Language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; worker-src 'self'">
            <title>{WebUtility.HtmlEncode(words["moved"])}</title>
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="robots" content="noindex">
            <meta name="referrer" content="no-referrer">
            <link rel="canonical" href="{to}">
            <script src="{root}moved.js"></script>{refresh}
            </head>
            <body>
            <p>{WebUtility.HtmlEncode(words["moved_to"])} <a href="{to}">{to}</a></p>{lost}
            </body>
            </html>

            """;
    }

    private static string Plain(string step) => step is "." or ".."
        ? ""
        : string.Concat(step.Select(letter => char.IsLetterOrDigit(letter) || letter is '.' or '-' or '_' or '~' ? letter : '-'));
}
