using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How an owner looks after the box. It stands in the open, so only dangers of the box as a whole are spoken of.</summary>
internal static class CarePage
{
    private static readonly (string Word, CautionKind[] Where)[] Topics =
    [
        ("force", []),
        ("cleaning", []),
        ("finish", []),
        ("place", []),
        ("batteries", [CautionKind.Battery, CautionKind.ButtonCell]),
        ("magnets", [CautionKind.Magnets]),
        ("children", []),
        ("stop", []),
    ];

    public static SitePage Of(Edition edition) => new($"{edition.Folder}care.html", "care.html", "care", () => Names(edition));

    private static ScriptObject Names(Edition edition)
    {
        var dangers = edition.Book.Cautions.Select(caution => caution.Kind).ToHashSet();
        return edition.Page(
            PageHead.Of(edition, "care", "care.html"),
            ("text", edition.Prose.Of(edition.Book.Care)),
            ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
            ("topics", View.List(Topics.Where(topic => topic.Where.Length == 0 || topic.Where.Any(dangers.Contains)).Select(topic => View.Of(
                ("title", edition.Words[$"care_{topic.Word}"]),
                ("text", edition.Words[$"care_{topic.Word}_text"]))))));
    }
}
