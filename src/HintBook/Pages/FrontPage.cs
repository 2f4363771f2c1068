using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The first page: what anyone sees on the closed box, how the hints work, and the stages that are open from the start.</summary>
internal static class FrontPage
{
    public static SitePage Of(Edition edition) => new($"{edition.Folder}index.html", "front.html", "front", () => Names(edition));

    private static ScriptObject Names(Edition edition) => edition.Page(
        PageHead.Of(edition, "front", "index.html"),
        ("welcome", edition.Prose.Of(edition.Book.Welcome)),
        ("photos", PhotoView.Of(edition.Book.Photos, Place.Front, edition)),
        ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
        ("first", View.List(edition.Plan.Survey.First.Select(stage => StageLink.Of(edition, stage)))));
}
