using HintBook.Books;
using HintBook.Photos.Films;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Every answer in trail order, behind a warning.</summary>
internal static class SolutionPage
{
    public static SitePage Build(LanguageSite site) => new($"{site.Folder}solution.html", "solution.html", "solution", () => Names(site));

    private static ScriptObject Names(LanguageSite site) => site.Page(
        PageHead.Build(site, "solution", "solution.html"),
        ("cautions", CautionView.List(site.Book.Cautions, site)),
        ("films", View.List(site.Plan.Films
            .OrderBy(film => film.Key, StringComparer.Ordinal)
            .Select((film, index) => Film(site, index, film.Key, film.Value)))),
        ("stages", View.List(site.Book.Stages.Select(stage => Step(site, stage)))));

    // The whole film, with its chapters for the player and as links: what comes after # is where the film starts.
    private static ScriptObject Film(LanguageSite site, int index, string file, PublishedFilm film) => View.Of(
        ("says", site.Plan.Films.Count == 1
            ? site.Words["film_whole"]
            : site.Words.Say("film_several", ("number", $"{index + 1}"), ("films", $"{site.Plan.Films.Count}"))),
        ("src", site.From(film.Path)),
        ("track", site.From(film.Chapters)),
        ("captions", FilmView.Captions(film, site)),
        ("chapters", View.List(Chapters.List(site.Book, file, null).Select(chapter => View.Of(
            ("href", FilmView.PartOf(site.From(film.Path), chapter.From, chapter.To)),
            ("time", Chapters.Clock(chapter.From)),
            ("title", chapter.Stage.Title.Value),
            ("lang", site.LanguageOf(chapter.Stage)))))));

    private static ScriptObject Step(LanguageSite site, Stage stage) => View.Of(
        ("title", stage.Title.Value),
        ("sign", stage.Sign.Value),
        ("lang", site.LanguageOf(stage)),
        ("cautions", CautionView.List(stage.Cautions, site)),
        ("text", site.Prose.Of(stage.Answer)),
        ("photos", PhotoView.Build(stage.Photos, Place.Answer, site)),
        ("film", FilmView.OfClip(stage, site)));
}
