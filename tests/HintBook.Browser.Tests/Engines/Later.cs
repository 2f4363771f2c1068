using System.Text.Json;

namespace HintBook.Browser.Tests.Engines;

/// <summary>Scripts that end later than they return.</summary>
internal static class Later
{
    /// <summary>Opens every fold of a page and loads and decodes every picture.</summary>
    public const string OpenEverything =
        """
        for (const each of document.querySelectorAll('details')) each.open = true;
        await Promise.all([...document.images].map(picture => { picture.loading = 'eager'; return picture.decode(); }));
        """;

    /// <summary>A body that may <c>await</c> as WebDriver's "Execute Async Script" wants it: it calls its last argument.</summary>
    public static string Script(string body) =>
        $$"""
        const given = [...arguments], done = given.pop();
        (async function () {
        {{body}}
        }).apply(null, given).then(value => done({ value: value === undefined ? null : value }), why => done({ failure: String(why) }));
        """;

    /// <summary>What such a script gives.</summary>
    /// <exception cref="InvalidOperationException">It has failed.</exception>
    public static JsonElement Result(JsonElement answer) => answer.TryGetProperty("failure", out var failure)
        ? throw new InvalidOperationException(failure.ToString())
        : answer.GetProperty("value");
}
