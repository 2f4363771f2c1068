using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using HintBook.Reading;
using HintBook.Reading.Editing;
using HintBook.Workbench.Looking;
using HintBook.Workbench.Showing;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Writing;

/// <summary>What the workbench answers about forms, stages and new books. Thread-safe.</summary>
internal sealed class WritingAnswers(LiveBook book, BookFiles files)
{
    private readonly Lock gate = new();
    private readonly Stack<FilesChange> done = new();

    /// <summary>What answers a request; null for one that isn't about writing.</summary>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("form", "GET") => () => Form(context),
        ("entry", "POST") => () => Entry(context),
        ("compare", "POST") => () => Compared(context),
        ("stages/ask", "POST") => () => Stages(context, really: false),
        ("stages/do", "POST") => () => Stages(context, really: true),
        ("stages/back", "POST") => () => Back(context),
        ("draft/films", "GET") => () => Films(context),
        ("draft/ask", "POST") => () => Drafted(context, really: false),
        ("draft/do", "POST") => () => Drafted(context, really: true),
        ("begin", "POST") => () => Begun(context),
        _ => null,
    };

    private Task Form(HttpContext context) => files.Whole(context.Request.Query["name"].ToString()) is { } file
        ? Send(context, FormJson.Of(file, book.Now.Shown?.Book), "application/json")
        : NotHere(context);

    private async Task Entry(HttpContext context)
    {
        var name = context.Request.Query["name"].ToString();
        if (await Body<EntryWish>(context).ConfigureAwait(false) is not { Path.IsDefaultOrEmpty: false } wish || wish.Path.Any(key => key is null)
            || files.Whole(name) is not { } file)
        {
            await Say(context, StatusCodes.Status400BadRequest, "The file is gone, or what was sent can't be read. Nothing was changed.").ConfigureAwait(false);
            return;
        }

        var digest = context.Request.Headers.IfMatch.ToString().Trim('"');
        var value = wish.Fresh ? EntryForms.Fresh(wish.Path[0], wish.Path[^1]) : EntryJson.Read(wish.Value);
        if (wish.Fresh && (wish.Path.Length != 2 || !StageName.IsId(wish.Path[1]) || EntryEdit.At(file, wish.Path) is not null))
        {
            await Say(context, StatusCodes.Status409Conflict, "A name is made of letters, digits and hyphens, such as hive-tool, and stands there once.")
                .ConfigureAwait(false);
            return;
        }

        if (wish.Was is { } shown && !IsAs(EntryEdit.At(file, wish.Path)?.Value, EntryJson.Read(shown)))
        {
            await Say(
                context,
                StatusCodes.Status412PreconditionFailed,
                "This entry was changed by another program meanwhile. The text shows what it says now; press Enter to put yours in its place.")
                .ConfigureAwait(false);
            return;
        }

        switch (EntryEdit.Set(file, wish.Path, value))
        {
            case EditedEntry.Refused { Why: var why }:
                await Say(context, StatusCodes.Status409Conflict, why).ConfigureAwait(false);
                break;
            case EditedEntry.Done edited when files.SaveWhole(name, edited.Text, digest) is var saved:
                await (saved switch
                {
                    Saved.Done now => Done(context, now),
                    Saved.ChangedMeanwhile => Say(
                        context,
                        StatusCodes.Status412PreconditionFailed,
                        "The file was changed by another program meanwhile. It is read again; enter this once more."),
                    _ => Say(context, StatusCodes.Status409Conflict, ((Saved.Refused)saved).Why),
                }).ConfigureAwait(false);
                break;
        }
    }

    private static bool IsAs(EntryValue? now, EntryValue? shown) =>
        now is null or EntryValue.Nothing ? shown is null : shown is not null && EntryValue.Same(now, shown);

    private static Task Done(HttpContext context, Saved.Done saved)
    {
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        context.Response.Headers.ETag = $"\"{saved.Digest}\"";
        return Task.CompletedTask;
    }

    private static async Task Compared(HttpContext context)
    {
        if (await Body<Comparison>(context).ConfigureAwait(false) is not { Mine: { } mine, Theirs: { } theirs })
        {
            await Say(context, StatusCodes.Status400BadRequest, "What was sent can't be read.").ConfigureAwait(false);
            return;
        }

        var lines = LineDifferences.Of(mine, theirs);
        await Send(context, JsonLists.Document(json => json.WriteObjects("lines", lines, line =>
        {
            json.WriteString("kind", line.Kind);
            json.WriteString("text", line.Text);
        })), "application/json").ConfigureAwait(false);
    }

    private async Task Stages(HttpContext context, bool really)
    {
        if (await Body<StageWish>(context).ConfigureAwait(false) is not { Do: not null, Stage: not null, To: not null, Title: not null } wish)
        {
            await Say(context, StatusCodes.Status400BadRequest, "What was sent can't be read. Nothing was changed.").ConfigureAwait(false);
            return;
        }

        await AnswerPlan(context, () => Plan(wish), really).ConfigureAwait(false);
    }

    private async Task Drafted(HttpContext context, bool really)
    {
        if (await Body<DraftWish>(context).ConfigureAwait(false) is not { Name: not null, Captions: not null, Chapters: not null, Film: not null } wish)
        {
            await Say(context, StatusCodes.Status400BadRequest, "What was sent can't be read. Nothing was changed.").ConfigureAwait(false);
            return;
        }

        await AnswerPlan(context, () => Plan(wish), really).ConfigureAwait(false);
    }

    private Task Films(HttpContext context) =>
        Send(context, JsonLists.Document(json => json.WriteTexts("films", new MediaFiles(book.Root).Films)), "application/json");

    // What a plan means; and, if it shall really be done, does it.
    private async Task AnswerPlan(HttpContext context, Func<StagePlan> make, bool really)
    {
        StagePlan plan;
        lock (gate)
        {
            plan = make();
            if (really && plan is StagePlan.Ready ready)
            {
                if (FilesWriter.Write(book.Root, ready.Change) is { } why)
                    plan = new StagePlan.Refused(why);
                else
                    done.Push(ready.Change);
            }
        }

        await (plan switch
        {
            StagePlan.Ready ready => Send(context, JsonLists.Document(json =>
            {
                json.WriteString("what", ready.Change.Says);
                json.WriteTexts("says", ready.Says);
                json.WriteTexts("files", ready.Change.Files.Select(Told));
                json.WriteString("opens", ready.Opens);
            }), "application/json"),
            _ => Say(context, StatusCodes.Status409Conflict, ((StagePlan.Refused)plan).Why),
        }).ConfigureAwait(false);
    }

    private StagePlan Plan(StageWish wish) => Readable(() =>
    {
        var texts = from name in files.Names()
                    where StageName.Of(name) is not null || name.StartsWith($"{Rehearsals.Folder}/", StringComparison.Ordinal)
                    let bytes = FilesWriter.BytesOf(book.Root, name)
                    where bytes is not null
                    select KeyValuePair.Create(name, bytes.Value);
        return new StagePlans(new(texts), Kept()).Of(wish);
    });

    private StagePlan Plan(DraftWish wish) => Readable(() => DraftPlans.Of(book.Root, wish));

    private StagePlan Readable(Func<StagePlan> plan)
    {
        try
        {
            return new DirectoryInfo(Path.Combine(book.Root, "stages")).LinkTarget is not null
                ? new StagePlan.Refused("“stages” is a link to another folder, and nothing is written outside of the book.")
                : plan();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new StagePlan.Refused($"The book can't be read: {failure.Message} Nothing was changed.");
        }
    }

    private AddressList Kept()
    {
        var list = new[] { AddressList.FileName, AddressList.FormerName }.Select(name => Path.Combine(book.Root, name)).FirstOrDefault(File.Exists);
        return list is null ? AddressList.Nothing : AddressList.Parse(new(Path.GetFileName(list), File.ReadAllText(list)), []);
    }

    private static string Told(ChangedFile file) => (file.Before, file.After) switch
    {
        (null, _) => $"{file.Name} is made",
        (_, null) => $"{file.Name} goes",
        _ => $"{file.Name} changes",
    };

    private async Task Back(HttpContext context)
    {
        string? why;
        FilesChange? last;
        lock (gate)
        {
            why = done.TryPeek(out last) ? FilesWriter.Write(book.Root, last.Back) : "There is nothing to take back.";
            if (why is null)
                done.Pop();
        }

        await Say(context, why is null ? StatusCodes.Status200OK : StatusCodes.Status409Conflict, why ?? $"Taken back: {last?.Says}.").ConfigureAwait(false);
    }

    private async Task Begun(HttpContext context)
    {
        if (await Body<BookWish>(context).ConfigureAwait(false) is not { } wish)
        {
            await Say(context, StatusCodes.Status400BadRequest, "What was sent can't be read. Nothing was written.").ConfigureAwait(false);
            return;
        }

        string? why;
        lock (gate)
            why = BookBeginning.Begin(book.Root, wish);
        if (why is null)
            book.LookAgain();
        await Say(context, why is null ? StatusCodes.Status200OK : StatusCodes.Status409Conflict, why ?? "The book is begun.").ConfigureAwait(false);
    }

    private static async Task<T?> Body<T>(HttpContext context)
        where T : class
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<T>(context.Request.Body, JsonSerializerOptions.Web, context.RequestAborted).ConfigureAwait(false);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static Task Say(HttpContext context, int status, string words)
    {
        context.Response.StatusCode = status;
        return Send(context, Encoding.UTF8.GetBytes(words), "text/plain");
    }

    private sealed record EntryWish(ImmutableArray<string> Path, JsonElement Value, bool Fresh, JsonElement? Was);

    private sealed record Comparison(string? Mine, string? Theirs);
}
