using System.Text;
using HintBook.Print;
using HintBook.Workbench.Looking;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Making;

/// <summary>What the page asks about publishing and printing.</summary>
/// <param name="book">The book.</param>
/// <param name="workshop">Where it is made.</param>
internal sealed class MakeAnswers(LiveBook book, Workshop workshop)
{
    private string? AddressOfBook => book.Now.Shown?.Book.Address?.Value;

    /// <summary>What answers a request; null where it is about something else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The path behind the token.</param>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("make", "GET") => () => Send(context, Choices(), "application/json"),
        ("make", "POST") => () => Begin(context),
        ("make", "DELETE") => () => Stop(context),
        ("making", "GET") => () => Progress(context),
        _ => null,
    };

    private byte[] Choices() => JsonLists.Document(json =>
    {
        json.WriteString("output", Path.Combine(book.Root, "published"));
        json.WriteTexts("sheets", MakeAsked.SheetNames);
        json.WriteTexts("papers", PaperKinds.All.Select(kind => kind.Name));
        json.WriteString("address", AddressOfBook);
    });

    private async Task Begin(HttpContext context)
    {
        if (await Asked<MakeAsked>(context).ConfigureAwait(false) is not { } asked)
            return;
        if (asked.Paper is null || asked.Kinds is { IsEmpty: true })
            await Refuse(context, "Choose what is printed.", StatusCodes.Status400BadRequest).ConfigureAwait(false);
        else if (asked.Output?.Contains('\0') == true)
            await Refuse(context, "This can't be the name of a folder.", StatusCodes.Status400BadRequest).ConfigureAwait(false);
        else if (workshop.Begin(asked, AddressOfBook))
            context.Response.StatusCode = StatusCodes.Status202Accepted;
        else
            await Refuse(context, "Something is being made already. Wait for its end, or stop it.").ConfigureAwait(false);
    }

    private Task Stop(HttpContext context)
    {
        workshop.Stop();
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    private Task Progress(HttpContext context) => Tell(context, async (known, ended) =>
    {
        var state = await workshop.After(known, ended).ConfigureAwait(false);
        return (state.Number, Encoding.UTF8.GetString(state.Json(book.Root)));
    });
}
