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
        ("cautions", View.Cautions(site.Book.Cautions, site.Words)),
        ("films", View.List([.. Films(site), .. Elsewhere(site)])),
        ("stages", View.List(site.Book.Stages.Select(stage => Step(site, stage)))));

    // Each whole film from which a clip is taken in this language, with its chapters for the player and as links: what comes after # is where the
    // film starts.
    private static IEnumerable<ScriptObject> Films(LanguageSite site) =>
        from film in site.Plan.Films.OrderBy(film => film.Key, StringComparer.Ordinal)
        let chapters = Chapters.List(site.Book, film.Key, null)
        where !chapters.IsEmpty
        select View.Of(
            ("src", site.From(film.Value.Path)),
            ("track", site.From(film.Value.ChaptersIn(site.Book.Language.Value))),
            ("captions", FilmView.Captions(film.Value, site)),
            ("address", null),
            ("elsewhere", null),
            ("chapters", Links(chapters, chapter => FilmView.PartOf(site.From(film.Value.Path), chapter.From, chapter.To))));

    private static IEnumerable<ScriptObject> Elsewhere(LanguageSite site) =>
        from address in site.Book.FilmAddress is { } known ? new[] { known.Value } : []
        let chapters = Chapters.List(site.Book, null, null)
        where !chapters.IsEmpty
        select View.Of(
            ("src", null),
            ("track", null),
            ("captions", View.List([])),
            ("address", FilmView.MomentOf(address, TimeSpan.Zero)),
            ("elsewhere", FilmView.HostOf(address, site)),
            ("chapters", Links(chapters, chapter => FilmView.MomentOf(address, chapter.From))));

    private static ScriptArray Links(IEnumerable<Chapter> chapters, Func<Chapter, string> address) => View.List(chapters.Select(chapter => View.Of(
        ("href", address(chapter)),
        ("time", Chapters.Clock(chapter.From)),
        ("title", chapter.Stage.Title.Value))));

    private static ScriptObject Step(LanguageSite site, Stage stage) => View.Of(
        ("title", stage.Title.Value),
        ("sign", stage.Sign.Value),
        ("lang", site.LanguageOf(stage)),
        ("cautions", View.Cautions(stage.Cautions, site.Words)),
        ("text", site.Prose.Of(stage.Answer)),
        ("photos", PhotoView.Build(stage.Photos, Place.Answer, site)),
        ("film", FilmView.OfClip(stage.Clip, site)));
}
