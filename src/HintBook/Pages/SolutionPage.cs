using HintBook.Books;
using HintBook.Photos.Films;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Every answer in trail order, behind a warning.</summary>
internal static class SolutionPage
{
    public static SitePage Of(Edition edition) => new($"{edition.Folder}solution.html", "solution.html", "solution", () => Names(edition));

    private static ScriptObject Names(Edition edition) => edition.Page(
        PageHead.Of(edition, "solution", "solution.html"),
        ("cautions", View.Cautions(edition.Book.Cautions, edition.Words)),
        ("films", View.List(edition.Plan.Films.OrderBy(film => film.Key, StringComparer.Ordinal).Select(film => Film(edition, film.Key, film.Value)))),
        ("stages", View.List(edition.Book.Stages.Select(stage => Step(edition, stage)))));

    // The whole film, with its chapters for the player and as links: what comes after # is where the film starts.
    private static ScriptObject Film(Edition edition, string file, PublishedFilm film) => View.Of(
        ("src", edition.From(film.Path)),
        ("track", edition.From(film.Chapters)),
        ("captions", View.Captions(film, edition)),
        ("chapters", View.List(Chapters.Of(edition.Book, file, null).Select(chapter => View.Of(
            ("href", View.PartOf(edition.From(film.Path), chapter.From, chapter.To)),
            ("time", Chapters.Clock(chapter.From)),
            ("title", chapter.Stage.Title.Value))))));

    private static ScriptObject Step(Edition edition, Stage stage) => View.Of(
        ("title", stage.Title.Value),
        ("sign", stage.Sign.Value),
        ("lang", edition.LanguageOf(stage)),
        ("cautions", View.Cautions(stage.Cautions, edition.Words)),
        ("text", edition.Prose.Of(stage.Answer)),
        ("photos", PhotoView.Of(stage.Photos, Place.Answer, edition)),
        ("film", View.Film(stage.Clip, edition)));
}
