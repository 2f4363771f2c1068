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
        ("films", View.List([.. Films(site), .. Elsewhere(site)])),
        ("stages", View.List(site.Book.Stages.Select(stage => Step(site, stage)))));

    // Each whole film from which a clip is taken in this language, with its chapters for the player and as links: what comes after # is where the
    // film starts.
    private static IEnumerable<ScriptObject> Films(LanguageSite site)
    {
        var films = site.Plan.Films.OrderBy(film => film.Key, StringComparer.Ordinal)
            .Select(film => (film.Key, film.Value, Chapters: Chapters.List(site.Book, film.Key, null)))
            .Where(film => !film.Chapters.IsEmpty)
            .ToArray();
        return films.Select((film, index) => View.Of(
            ("says", films.Length == 1
                ? site.Words["film_whole"]
                : site.Words.Say("film_several", ("number", $"{index + 1}"), ("films", $"{films.Length}"))),
            ("src", site.From(film.Value.Path)),
            ("track", site.From(film.Value.ChaptersIn(site.Book.Language.Value))),
            ("captions", FilmView.Captions(film.Value, site)),
            ("transcript", FilmView.Transcript(film.Key, null, site)),
            ("address", null),
            ("elsewhere", null),
            ("chapters", Links(site, film.Chapters, chapter => FilmView.PartOf(site.From(film.Value.Path), chapter.From, chapter.To)))));
    }

    private static IEnumerable<ScriptObject> Elsewhere(LanguageSite site) =>
        from address in site.Book.FilmAddress is { } known ? new[] { known.Value } : []
        let chapters = Chapters.List(site.Book, null, null)
        where !chapters.IsEmpty
        select View.Of(
            ("says", site.Words["film_whole"]),
            ("src", null),
            ("track", null),
            ("captions", View.List([])),
            ("transcript", null),
            ("address", FilmView.MomentOf(address, TimeSpan.Zero)),
            ("elsewhere", FilmView.HostOf(address, site)),
            ("chapters", Links(site, chapters, chapter => Clip.HasMoment(address) ? FilmView.MomentOf(address, chapter.From) : null)));

    private static ScriptArray Links(LanguageSite site, IEnumerable<Chapter> chapters, Func<Chapter, string?> address) =>
        View.List(chapters.Select(chapter => View.Of(
            ("href", address(chapter)),
            ("time", Chapters.Clock(chapter.From)),
            ("title", chapter.Stage.Title.Value),
            ("lang", site.LanguageOf(chapter.Stage)))));

    private static ScriptObject Step(LanguageSite site, Stage stage) => View.Of(
        ("page", site.Plan.Addresses.Names[stage.Id.Value][0]),
        ("title", stage.Title.Value),
        ("sign", stage.Sign.Value),
        ("lang", site.LanguageOf(stage)),
        ("cautions", CautionView.List(stage.Cautions, site)),
        ("text", site.Prose.Of(stage.Answer)),
        ("photos", PhotoView.Build(stage.Photos, Place.Answer, site)),
        ("film", FilmView.OfClip(stage, site)));
}
