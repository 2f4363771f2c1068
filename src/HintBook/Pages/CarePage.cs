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

    public static SitePage Build(LanguageSite site) => new($"{site.Folder}care.html", "care.html", "care", () => Names(site));

    private static ScriptObject Names(LanguageSite site)
    {
        var dangers = site.Book.Cautions.Select(caution => caution.Kind).ToHashSet();
        return site.Page(
            PageHead.Build(site, "care", "care.html"),
            ("text", site.Prose.Of(site.Book.Care)),
            ("cautions", View.Cautions(site.Book.Cautions, site.Words)),
            ("topics", View.List(Topics.Where(topic => topic.Where.Length == 0 || topic.Where.Any(dangers.Contains)).Select(topic => View.Of(
                ("title", site.Words[$"care_{topic.Word}"]),
                ("text", site.Words[$"care_{topic.Word}_text"]))))));
    }
}
