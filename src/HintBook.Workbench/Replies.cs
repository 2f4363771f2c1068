using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;

namespace HintBook.Workbench;

/// <summary>Ways to answer a request.</summary>
internal static class Replies
{
    private static readonly FileExtensionContentTypeProvider Types = new()
    {
        Mappings = { [".webmanifest"] = "application/manifest+json", [".vtt"] = "text/vtt" },
    };

    /// <summary>The media type of a path, by its ending.</summary>
    public static string TypeOf(string path) => Types.TryGetContentType(path, out var type) ? type : "application/octet-stream";

    /// <summary>Sends bytes.</summary>
    /// <param name="context">The request.</param>
    /// <param name="bytes">The body.</param>
    /// <param name="type">Its media type; a text is UTF-8.</param>
    public static Task Send(HttpContext context, ReadOnlyMemory<byte> bytes, string type)
    {
        context.Response.ContentType = type.StartsWith("text/", StringComparison.Ordinal) ? $"{type}; charset=utf-8" : type;
        context.Response.ContentLength = bytes.Length;
        return HttpMethods.IsHead(context.Request.Method) ? Task.CompletedTask : context.Response.Body.WriteAsync(bytes, context.RequestAborted).AsTask();
    }

    /// <summary>Sends a file of the disk, or the part of it that is asked for (RFC 9110, 14).</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">Its full path.</param>
    public static Task SendFile(HttpContext context, string path) =>
        Results.File(path, TypeOf(path), enableRangeProcessing: true).ExecuteAsync(context);

    /// <summary>Says in a sentence why nothing was done.</summary>
    /// <param name="context">The request.</param>
    /// <param name="why">The sentence.</param>
    /// <param name="status">The status; by default that the request doesn't fit what there is.</param>
    public static Task Refuse(HttpContext context, string why, int status = StatusCodes.Status409Conflict)
    {
        context.Response.StatusCode = status;
        return Send(context, Encoding.UTF8.GetBytes(why), "text/plain");
    }

    /// <summary>The answer to whoever isn't let in, or asks for what isn't there: nothing that could be learnt from.</summary>
    public static Task NotHere(HttpContext context) => Refuse(context, "Nothing is here.", StatusCodes.Status404NotFound);

    /// <summary>
    /// Tells a page of each new state as a server-sent event (HTML Standard, section 9.2), the newest first, until the page or the workbench is closed.
    /// </summary>
    /// <param name="context">The request.</param>
    /// <param name="next">Waits for a state that is newer than the one of a number, and gives its number and what is told of it.</param>
    public static async Task Tell(HttpContext context, Func<int, CancellationToken, Task<(int Number, string Data)>> next)
    {
        context.Response.ContentType = "text/event-stream";
        var known = -1;
        try
        {
            while (true)
            {
                (known, var data) = await next(known, context.RequestAborted).ConfigureAwait(false);
                await context.Response.WriteAsync($"data: {data}\n\n", context.RequestAborted).ConfigureAwait(false);
                await context.Response.Body.FlushAsync(context.RequestAborted).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
            // The page was closed, or the workbench is.
        }
    }

    /// <summary>A request's body, read as JSON; null where it can't be read, which has been answered then.</summary>
    /// <typeparam name="T">What it is read as.</typeparam>
    /// <param name="context">The request.</param>
    public static async Task<T?> Asked<T>(HttpContext context)
        where T : class
    {
        try
        {
            if (await JsonSerializer.DeserializeAsync<T>(context.Request.Body, JsonSerializerOptions.Web, context.RequestAborted).ConfigureAwait(false)
                is { } asked)
            {
                return asked;
            }
        }
        catch (JsonException)
        {
            // Answered below, as is the word “null”.
        }

        context.Response.StatusCode = StatusCodes.Status400BadRequest;
        return null;
    }
}
