using System.Text.RegularExpressions;
using HintBook.Photos;
using HintBook.Reading.Editing;
using HintBook.Workbench.Writing;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Showing;

/// <summary>What the page asks about the photos and the film of a stage, and what it changes of them.</summary>
/// <param name="files">The book's texts: one for all who write them, so that no two do at once.</param>
/// <param name="root">The book's folder, as a full path.</param>
internal sealed partial class ShowAnswers(BookFiles files, string root)
{
    private const string NotAStage = "The keys of this stage can't be read. Mend its text first.";

    private readonly MediaFiles media = new(root);

    private sealed record PhotoChange(string Name, ShownPhoto Was, ShownPhoto Now);

    private sealed record ClipChange(string Name, ShownClip? Was, ShownClip? Now);

    /// <summary>What answers a request; null where it is about something else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The path behind the token.</param>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("show", "GET") => () => Show(context),
        ("media", "GET" or "HEAD") => () => media.PathOf(context.Request.Query["name"].ToString()) is { } file ? SendFile(context, file) : NotHere(context),
        ("photo", "POST") => () => AddPhoto(context),
        ("photo", "PUT") => () => ChangePhoto(context),
        ("clip", "PUT") => () => ChangeClip(context),
        _ => null,
    };

    private Task Show(HttpContext context)
    {
        var name = context.Request.Query["name"].ToString();
        if (!StageFile().IsMatch(name) || files.Read(name) is not { } file)
            return NotHere(context);
        var stage = StageShow.Read(name, file.Text);
        return Send(context, ShowJson.Of(stage, media.Films, PhotoSettings.Standard.MaxFileBytes), "application/json");
    }

    private async Task AddPhoto(HttpContext context)
    {
        var query = context.Request.Query;
        var (name, place, given, alt) = (query["name"].ToString(), query["place"].ToString(), query["as"].ToString(), query["alt"].ToString().Trim());
        var limit = PhotoSettings.Standard.MaxFileBytes;
        if (context.Request.ContentLength > limit)
        {
            await Refuse(context, $"“{given}” is too large: a photo may have {limit >> 20} MB at most. Save it as a JPEG.").ConfigureAwait(false);
            return;
        }

        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = limit;
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted).ConfigureAwait(false);
        if (!StageFile().IsMatch(name) || !StageShow.Places.Contains(place))
        {
            await NotHere(context).ConfigureAwait(false);
            return;
        }

        switch (PhotoPipeline.Keep(given, body.ToArray(), PhotoSettings.Standard))
        {
            case PhotoNotKept { Why: var why }:
                await Refuse(context, why).ConfigureAwait(false);
                break;
            case KeptPhoto kept:
                await Answer(context, () => Added(name, new(place, 0, "", alt.Length > 0 ? alt : null, []), given, kept)).ConfigureAwait(false);
                break;
        }
    }

    // The photo lies in its folder before a text names it, and goes again where the text can't.
    private string? Added(string name, ShownPhoto photo, string given, KeptPhoto kept)
    {
        var wanted = MediaFiles.NameFor(given, $"{StageFile().Match(name).Groups["id"].Value}-{photo.Place}");
        if (Changed(name, stage => stage.Add(photo with { File = media.Unused(wanted) }), dry: true) is { } cannot)
            return cannot;
        var file = media.Keep(wanted, kept);
        var why = Changed(name, stage => stage.Add(photo with { File = file }));
        if (why is not null)
            media.Forget(file);
        return why;
    }

    private async Task ChangePhoto(HttpContext context)
    {
        if (await Asked<PhotoChange>(context).ConfigureAwait(false) is not { } asked)
            return;
        if (asked is not { Name: not null, Was.Marks.IsDefault: false, Now.Marks.IsDefault: false } || asked.Now.Marks.Any(mark => !IsGood(mark)))
            await Refuse(context, "A mark lies on the photo, from 0 to 100 per cent, and says what is there.").ConfigureAwait(false);
        else
            await Answer(context, () => Changed(asked.Name, stage => stage.Change(asked.Was, asked.Now))).ConfigureAwait(false);
    }

    private async Task ChangeClip(HttpContext context)
    {
        if (await Asked<ClipChange>(context).ConfigureAwait(false) is not { } asked)
            return;
        if (asked.Name is null || (asked.Now is { } now && !(IsTime(now.From) && (now.To is null || IsTime(now.To)))))
            await Refuse(context, "Write times as minutes and seconds, such as 2:16 or 2:16.5.").ConfigureAwait(false);
        else
            await Answer(context, () => Changed(asked.Name, stage => stage.Show(asked.Was, asked.Now))).ConfigureAwait(false);
    }

    private static bool IsGood(ShownMark mark) => mark is { X: >= 0 and <= 100, Y: >= 0 and <= 100, Says: { } says } && says.Trim().Length > 0;

    private static bool IsTime(string time) => TimeText().IsMatch(time);

    private static async Task Answer(HttpContext context, Func<string?> change)
    {
        string? why;
        try
        {
            why = change();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            why = $"It can't be saved: {failure.Message}";
        }

        if (why is null)
            context.Response.StatusCode = StatusCodes.Status204NoContent;
        else
            await Refuse(context, why).ConfigureAwait(false);
    }

    // Why it wasn't changed, or null. A file that changes between reading and saving is read again.
    private string? Changed(string name, Func<StageShow, EditedEntry> change, bool dry = false)
    {
        const int mostTries = 5;
        for (var number = 1; ; number++)
        {
            if (!StageFile().IsMatch(name) || files.Read(name) is not { } file)
                return $"The book has no stage “{name}” any more.";
            if (StageShow.Read(name, file.Text) is not { } stage)
                return NotAStage;
            var edited = change(stage);
            if (edited is not EditedEntry.Done { Text: var text } || dry)
                return (edited as EditedEntry.Refused)?.Why;
            switch (files.Save(name, text, file.Digest))
            {
                case Saved.Refused refused:
                    return refused.Why;
                case Saved.Done:
                    return null;
                case Saved.ChangedMeanwhile when number == mostTries:
                    return $"“{name}” is being changed by another program. Try again.";
            }
        }
    }

    // A stage of the book, or of a translation.
    [GeneratedRegex(@"^stages/(?:[^/]+/)?(?:\d+[-_ ]?)?(?<id>[^/]+)\.(?:md|yaml)$")]
    private static partial Regex StageFile();

    [GeneratedRegex(@"^(?:\d{1,2}:)?(?:\d{1,2}:)?\d{1,4}(?:\.\d{1,3})?$")]
    private static partial Regex TimeText();
}
