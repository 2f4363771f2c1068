using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using HintBook.Workbench.Looking;
using HintBook.Workbench.Rehearsing;
using HintBook.Workbench.Seeing;
using HintBook.Workbench.Writing;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench;

/// <summary>What the workbench answers to whoever was let in by the <see cref="Door"/>. Thread-safe.</summary>
/// <param name="book">The book.</param>
/// <param name="files">Its texts.</param>
/// <param name="rooms">Who answers what isn't answered here; each gives null for what is another's.</param>
internal sealed class Answers(LiveBook book, BookFiles files, ImmutableArray<Func<HttpContext, string, Func<Task>?>> rooms)
{
    private volatile SeenSite? site;

    /// <summary>Answers one request.</summary>
    /// <param name="context">The request, and where the answer goes.</param>
    /// <param name="path">The path behind the token.</param>
    public Task Answer(HttpContext context, string path)
    {
        var get = HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method);
        return (path, get) switch
        {
            ("", true) => OwnPages.Send(context, "bench.html"),
            (_, true) when OwnPages.Has(path) => OwnPages.Send(context, path),
            ("look", true) => Send(context, LookNow(), "application/json"),
            ("looks", true) => Looks(context),
            ("text", true) => Text(context),
            ("text", false) when HttpMethods.IsPut(context.Request.Method) => SaveText(context),
            ("play", false) when HttpMethods.IsPost(context.Request.Method) => Played(context),
            ("rehearsal", true) => Rehearsed(context),
            ("rehearsal", false) when HttpMethods.IsPost(context.Request.Method) => KeepRehearsal(context),
            _ when rooms.Select(room => room(context, path)).FirstOrDefault(answer => answer is not null) is { } answer => answer(),
            _ when get && path.Split('/', 4) is ["see", var theme, ("light" or "dark") and var shade, var page] => See(context, theme, shade == "dark", page),
            _ => NotHere(context),
        };
    }

    private byte[] LookNow()
    {
        var look = book.Now;
        return LookJson.Of(look, book.Root, files.Names(), SiteOf(look)?.Themes ?? [], BookBeginning.IsPossible(book.Root));
    }

    private SeenSite? SiteOf(Look look)
    {
        if (look.Shown is not { } shown)
            return null;
        if (site is { } seen && ReferenceEquals(seen.Book, shown))
            return seen;
        return site = new SeenSite(shown);
    }

    private async Task See(HttpContext context, string theme, bool dark, string page)
    {
        context.Response.Headers.ContentSecurityPolicy = "frame-ancestors 'self'";
        if (SiteOf(book.Now) is not { } seen)
        {
            await NotHere(context).ConfigureAwait(false);
            return;
        }

        if (seen.Original(page) is { } original)
        {
            await SendFile(context, original).ConfigureAwait(false);
            return;
        }

        var path = page.Length == 0 || page.EndsWith('/') ? page + "index.html" : page;
        try
        {
            if (seen.Made(theme, path) is not { } made)
                await NotHere(context).ConfigureAwait(false);
            else
                await Send(context, path.EndsWith(".css", StringComparison.Ordinal) ? DarkStyle.Of(made.Span, dark) : made, TypeOf(path)).ConfigureAwait(false);
        }
        catch (InvalidOperationException)
        {
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            await context.Response.WriteAsync("The template of this page is broken; the list of what was found says where.").ConfigureAwait(false);
        }
    }

    private Task Looks(HttpContext context) => Replies.Tell(context, async (known, ended) =>
    {
        var look = await book.After(known, ended).ConfigureAwait(false);
        return (look.Number, $"{look.Number}");
    });

    private Task Text(HttpContext context)
    {
        if (files.Read(context.Request.Query["name"].ToString()) is not { } file)
            return NotHere(context);
        context.Response.Headers.ETag = $"\"{file.Digest}\"";
        return Send(context, Encoding.UTF8.GetBytes(file.Text), "text/plain");
    }

    private async Task SaveText(HttpContext context)
    {
        using var reader = new StreamReader(context.Request.Body, Encoding.UTF8, detectEncodingFromByteOrderMarks: false);
        var text = await reader.ReadToEndAsync(context.RequestAborted).ConfigureAwait(false);
        var digest = context.Request.Headers.IfMatch.ToString().Trim('"');
        await Tell(context, files.Save(context.Request.Query["name"].ToString(), text, digest)).ConfigureAwait(false);
    }

    private static async Task Tell(HttpContext context, Saved saved)
    {
        switch (saved)
        {
            case Saved.Done done:
                context.Response.StatusCode = StatusCodes.Status204NoContent;
                context.Response.Headers.ETag = $"\"{done.Digest}\"";
                break;
            case Saved.ChangedMeanwhile { Theirs: var theirs }:
                context.Response.StatusCode = StatusCodes.Status412PreconditionFailed;
                context.Response.Headers.ETag = $"\"{theirs.Digest}\"";
                await Send(context, Encoding.UTF8.GetBytes(theirs.Text), "text/plain").ConfigureAwait(false);
                break;
            case Saved.Refused { Why: var why }:
                context.Response.StatusCode = StatusCodes.Status409Conflict;
                await Send(context, Encoding.UTF8.GetBytes(why), "text/plain").ConfigureAwait(false);
                break;
        }
    }

    private async Task Played(HttpContext context)
    {
        if (book.Now.Shown is not { } shown)
            await NotHere(context).ConfigureAwait(false);
        else if (await StepsIn(context).ConfigureAwait(false) is { } keys)
            await Send(context, Play.Json(shown, keys), "application/json").ConfigureAwait(false);
    }

    private Task Rehearsed(HttpContext context) =>
        book.Now.Shown is { } shown && RehearsalFiles.KeysOf(shown.Book, context.Request.Query["name"].ToString()) is { } keys
            ? Send(context, JsonSerializer.SerializeToUtf8Bytes(keys), "application/json")
            : NotHere(context);

    private async Task KeepRehearsal(HttpContext context)
    {
        if (book.Now.Shown is not { } shown)
            await NotHere(context).ConfigureAwait(false);
        else if (await StepsIn(context).ConfigureAwait(false) is { } keys)
            await Tell(context, RehearsalFiles.Keep(shown, context.Request.Query["title"].ToString(), keys)).ConfigureAwait(false);
    }

    // Null, and answered, where the body isn't a list of steps.
    private static async Task<string[]?> StepsIn(HttpContext context)
    {
        try
        {
            var keys = await JsonSerializer.DeserializeAsync<string[]>(context.Request.Body, cancellationToken: context.RequestAborted).ConfigureAwait(false);
            if (keys is not null && !Array.Exists(keys, key => key is null))
                return keys;
        }
        catch (JsonException)
        {
            // Told below, like a list with holes.
        }

        context.Response.StatusCode = StatusCodes.Status400BadRequest;
        return null;
    }
}
