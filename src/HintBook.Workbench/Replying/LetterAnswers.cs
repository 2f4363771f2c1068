using System.Globalization;
using HintBook.Reading.Sittings;
using HintBook.Replying;
using HintBook.Workbench.Looking;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Replying;

/// <summary>What the page asks about letters of owners: the answer to one, and that it be noted.</summary>
/// <param name="book">The book.</param>
internal sealed class LetterAnswers(LiveBook book)
{
    /// <summary>What answers a request; null where it is about something else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The path behind the token.</param>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("letter", "POST") => () => Answer(context),
        ("letter/note", "POST") => () => Note(context),
        _ => null,
    };

    private async Task Answer(HttpContext context)
    {
        if (await Asked<Letter>(context).ConfigureAwait(false) is not { } asked)
            return;
        // A book with errors may tell too much at some step, and no page of it is published.
        if (book.Now is not { Shown: { } known, Findings.AnyError: false })
        {
            await Refuse(context, "The book has errors, so no page of it is published and no letter is answered. Mend them first.").ConfigureAwait(false);
            return;
        }

        var answer = LetterDesk.Answer(known, new()
        {
            Page = Written(asked.Page),
            Text = Written(asked.Text),
            Step = LetterSteps.Named(asked.Step) ?? LetterStep.Nudge,
            Serial = Written(asked.Copy),
            Language = Written(asked.Language),
        });
        await (answer switch
        {
            LetterAnswer.Written written => Send(context, Json(written), "application/json"),
            LetterAnswer.Refused refused => Refuse(context, refused.Why),
            _ => throw new InvalidOperationException("There is no other answer."),
        }).ConfigureAwait(false);
    }

    private async Task Note(HttpContext context)
    {
        if (await Asked<NotedPage>(context).ConfigureAwait(false) is not { } asked)
            return;
        if (Written(asked.Page) is not { } named || book.Now.Shown is not { } known || LetterPage.Find(named, known).Name is not { } page)
        {
            await Refuse(context, "No page of this book has that name.").ConfigureAwait(false);
            return;
        }

        try
        {
            var isDay = DateOnly.TryParseExact(asked.Date, LetterFile.DateForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day);
            var why = LetterNotes.Append(book.Root, page, isDay ? day : null);
            if (why is not null)
                await Refuse(context, why.Why).ConfigureAwait(false);
            else
                context.Response.StatusCode = StatusCodes.Status204NoContent;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await Refuse(context, $"{LetterFile.FileName} can't be written: {failure.Message}").ConfigureAwait(false);
        }
    }

    private static string? Written(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static byte[] Json(LetterAnswer.Written written) => JsonLists.Document(json =>
    {
        json.WriteString("subject", written.Letter.Subject);
        json.WriteString("text", written.Letter.Text);
        json.WriteString("language", written.Letter.Language);
        json.WriteString("page", written.Letter.Page);
        json.WriteString("copy", written.Letter.Serial);
        json.WriteTexts("remarks", written.Remarks);
    });

    private sealed record Letter(string? Text, string? Page, string? Step, string? Copy, string? Language);

    private sealed record NotedPage(string? Page, string? Date);
}
