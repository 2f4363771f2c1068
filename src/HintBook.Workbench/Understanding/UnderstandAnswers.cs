using System.Text;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Maps;
using HintBook.Spoilers;
using HintBook.Text;
using HintBook.Workbench.Looking;
using Microsoft.AspNetCore.Http;
using static HintBook.Workbench.Replies;

namespace HintBook.Workbench.Understanding;

/// <summary>What the page asks about what is proved: the map with what was found on it, what readers know where, and how soon they find their place.</summary>
/// <param name="book">The book.</param>
internal sealed class UnderstandAnswers(LiveBook book)
{
    /// <summary>What answers a request; null where it is about something else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="path">The path behind the token.</param>
    public Func<Task>? AnswerTo(HttpContext context, string path) => (path, context.Request.Method, book.Now.Shown) switch
    {
        ("map.svg", "GET", { } shown) => () => Send(context, Encoding.UTF8.GetBytes(MapOf(shown, book.Now.Findings)), TypeOf(path)),
        ("known", "GET", { } shown) => () => Known(context, shown),
        ("where", "GET", { } shown) => () => Send(context, Where(shown), "application/json"),
        _ => null,
    };

    private static string MapOf(Examined shown, Findings findings)
    {
        var map = StageMap.Build(shown.Book, shown.Survey);
        var badges = shown.Book.Stages.Select(stage => BadgeOf(stage, findings)).ToArray();
        var words = MapWords.Of(shown.Theme.WordsIn(shown.Book.Language).Words.Entries);
        return SvgMap.Write(map with { Nodes = [.. map.Nodes.Select((node, number) => node with { Badge = badges[number] })] }, words);
    }

    private static NodeBadge? BadgeOf(Stage stage, Findings findings)
    {
        var here = findings.All.Where(finding => finding.At.File.Path == stage.File.Path).Select(finding => finding.Code.Severity).ToArray();
        var (errors, warnings) = (here.Count(severity => severity == Severity.Error), here.Count(severity => severity == Severity.Warning));
        return errors > 0 ? new(Words.Count(errors, "error"), IsGrave: true)
            : warnings > 0 ? new(Words.Count(warnings, "warning"), IsGrave: false)
            : null;
    }

    // For the page of one stage: "known" is what may be mentioned from its sign on, "spoilers" what may not, each with its reason.
    private static Task Known(HttpContext context, Examined shown)
    {
        var name = context.Request.Query["name"].ToString();
        if (shown.Book.Stages.FirstOrDefault(stage => stage.File.Path == name) is not { } stage)
            return NotHere(context);
        var known = KnownHere.On(shown.Book, shown.Survey, shown.MayBeSaid[0], stage);
        return Send(context, JsonLists.Document(json =>
        {
            json.WriteString("title", stage.Title.Value);
            json.WriteBoolean("reached", !known.IsEmpty);
            json.WriteTexts("known", known.Where(each => each.From == KnownFrom.Sign).Select(each => Called(shown.Book, each.Secret)));
            json.WriteObjects("spoilers", known.Where(each => each.From != KnownFrom.Sign), each =>
            {
                json.WriteString("name", Called(shown.Book, each.Secret));
                json.WriteBoolean("title", each.Secret.Kind == SecretKind.Title);
                json.WriteString("from", each.From switch
                {
                    KnownFrom.Clue => "from the clue on",
                    KnownFrom.Answer => "in the answer only",
                    _ => "nowhere here",
                });
                json.WriteString("why", each.Why);
            });
        }), "application/json");
    }

    private static string Called(Book book, Secret secret) => secret.Kind switch
    {
        SecretKind.Title => $"the title “{secret.Spellings[0]}”",
        SecretKind.Answer => $"“{secret.Spellings[0]}”, the answer of {NameOf(book, secret.Id)}",
        SecretKind.CopyAnswer => $"“{secret.Spellings[0]}”, the answer of {NameOf(book, secret.Id)} in copy {secret.Serial}",
        _ => secret.Spellings[0],
    };

    private static string NameOf(Book book, string id) => book.Box.Names.FirstOrDefault(named => named.Id.Value == id)?.Name ?? id;

    private static byte[] Where(Examined shown) => JsonLists.Document(json =>
    {
        json.WriteTexts("says", WhereaboutsTable.Write(WhereaboutsTable.Of(shown)).Split('\n', StringSplitOptions.RemoveEmptyEntries));
        json.WriteString("page", "where.html");
    });
}
