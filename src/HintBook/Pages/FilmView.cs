using System.Globalization;
using HintBook.Books;
using HintBook.Photos.Films;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Films as templates get them.</summary>
internal static class FilmView
{
    /// <summary>
    /// The part of the film that shows a stage, as a media fragment (W3C Media Fragments URI 1.0, section 4.2.1: normal play time in
    /// seconds).
    /// </summary>
    public static ScriptObject? OfClip(Stage stage, LanguageSite site)
    {
        if (stage.Clip is not { } clip || site.Plan.Films.GetValueOrDefault(clip.File.Value) is not { } film)
            return null;
        return View.Of(
            ("src", PartOf(site.From(film.Path), clip.From, clip.To)),
            ("captions", Captions(film, site)),
            ("says", clip.To is { } to
                ? site.Words.Say("film_part", ("from", Chapters.Clock(clip.From)), ("to", Chapters.Clock(to)), ("title", stage.Title.Value))
                : site.Words.Say("film_from", ("from", Chapters.Clock(clip.From)), ("title", stage.Title.Value))));
    }

    /// <summary>What is said in a film, by language; the page's own language comes first and is shown from the start.</summary>
    public static ScriptArray Captions(PublishedFilm film, LanguageSite site) => View.List(
        film.Captions
            .OrderByDescending(track => track.Key == site.Book.Language.Value)
            .Select((track, index) => View.Of(
                ("src", site.From(track.Value)),
                ("tag", track.Key),
                ("name", site.Theme.NameOf(track.Key)),
                ("shown", index == 0 && track.Key == site.Book.Language.Value))));

    /// <summary>The address of a part of a film.</summary>
    public static string PartOf(string film, TimeSpan from, TimeSpan? to) => $"{film}#t={Seconds(from)}{(to is { } end ? $",{Seconds(end)}" : "")}";

    private static string Seconds(TimeSpan time) => ((decimal)time.Ticks / TimeSpan.TicksPerSecond).ToString("0.###", CultureInfo.InvariantCulture);
}
