using System.Text;
using HintBook.Workbench.Looking;
using HintBook.Workbench.Phone;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Guarding;

/// <summary>What the page asks about the workbench itself: whether it may write, whether there is another, and where a telephone finds the pages.</summary>
/// <param name="book">The book.</param>
/// <param name="isTaken">Whether another workbench has it too.</param>
/// <param name="phone">Shows the pages to telephones; null where that wasn't asked for.</param>
internal sealed class HouseAnswers(LiveBook book, bool isTaken, PhoneServer? phone)
{
    /// <summary>What answers a request; null where it is about something else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The path behind the token.</param>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method) switch
    {
        ("house", "GET") => () => Send(context, House(), "application/json"),
        ("phone.svg", "GET") when phone?.Addresses is [var first, ..] && ScanCode.Svg(first) is { } code => () =>
            Send(context, Encoding.UTF8.GetBytes(code), TypeOf(path)),
        _ => null,
    };

    private byte[] House() => JsonLists.Document(json =>
    {
        json.WriteBoolean("readOnly", !BookAccess.CanWrite(book.Root));
        json.WriteBoolean("another", isTaken);
        json.WriteBoolean("sealed", book.Now.Shown?.Book.Sealed is not null);
        json.WriteBoolean("phone", phone is not null);
        json.WriteTexts("addresses", phone?.Addresses.Select(address => address.ToString()) ?? []);
    });
}
