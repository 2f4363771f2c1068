using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Every answer in trail order, behind a warning.</summary>
internal static class SolutionPage
{
    public static SitePage Of(Edition edition) => new("solution.html", "solution.html", "solution", () => Names(edition));

    private static ScriptObject Names(Edition edition) => edition.Page(
        PageHead.Of(edition, "solution", "title_solution"),
        ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
        ("stages", View.List(edition.Book.Stages.Select(stage => Step(edition, stage)))));

    private static ScriptObject Step(Edition edition, Stage stage) => View.Of(
        ("title", stage.Title.Value),
        ("sign", stage.Sign.Value),
        ("cautions", View.Cautions(stage.Cautions, edition.Words)),
        ("text", edition.Prose.Of(stage.Answer)),
        ("photos", View.Photos(stage.Photos, Place.Answer, edition)),
        ("film", View.Film(stage.Clip, edition)));
}
