using System.Globalization;
using HintBook.Books;
using HintBook.Photos.Films;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Films as templates get them.</summary>
internal static class FilmView
{
    /// <summary>
    /// The part of the film that shows a stage: a film of its own, or a media fragment of the whole (W3C Media Fragments URI 1.0, section
    /// 4.2.1: normal play time in seconds). Where the film lives elsewhere, a link to the moment at which the part starts.
    /// </summary>
    public static ScriptObject? OfClip(Stage stage, LanguageSite site)
    {
        if (stage.Clip is not { } clip)
            return null;
        var says = clip.To is { } to
            ? site.Words.Say("film_part", ("from", Chapters.Clock(clip.From)), ("to", Chapters.Clock(to)), ("title", stage.Title.Value))
            : site.Words.Say("film_from", ("from", Chapters.Clock(clip.From)), ("title", stage.Title.Value));
        if (clip.File is not { } file)
        {
            // A link that leads to the film's start doesn't promise a moment.
            return site.Book.FilmAddress is { } address
                ? Elsewhere(address.Value, clip.From, Clip.HasMoment(address.Value) ? says : site.Words["film_whole"], site)
                : null;
        }

        if (site.Plan.Films.GetValueOrDefault(file.Value) is not { } film)
            return null;
        var part = film.Parts.GetValueOrDefault(clip.Part, film);
        return View.Of(
            ("src", film.IsCut(clip.Part) ? site.From(part.Path) : PartOf(site.From(part.Path), clip.From, clip.To)),
            ("captions", Captions(part, site)),
            ("transcript", Transcript(file.Value, clip.Part, site)),
            ("says", says),
            ("address", null),
            ("elsewhere", null));
    }

    /// <summary>What is said in a film, by language; the page's own language comes first and is shown from the start.</summary>
    public static ScriptArray Captions(PublishedFilm film, LanguageSite site) => View.List(
        film.Captions
            .OrderByDescending(language => language == site.Book.Language.Value)
            .Select((language, index) => View.Of(
                ("src", site.From(film.CaptionsIn(language))),
                ("tag", language),
                ("name", site.Theme.NameOf(language)),
                ("shown", index == 0 && language == site.Book.Language.Value))));

    /// <summary>
    /// What is said in a film or a part of it, to be read: in the page's language, else in the book's own, else in any. Null where nothing is said.
    /// </summary>
    public static ScriptObject? Transcript(string film, FilmPart? part, LanguageSite site)
    {
        var own = (site.Book.Source ?? site.Book).Language.Value;
        var said = site.Book.Captions.Where(each => each.Film == film)
            .OrderByDescending(each => each.Language == site.Book.Language.Value)
            .ThenByDescending(each => each.Language == own)
            .ThenBy(each => each.Language, StringComparer.Ordinal)
            .FirstOrDefault();
        string[] lines = said is null ? [] : [.. said.Cues.Where(cue => part?.Shows(cue.From, cue.To) ?? true).Select(cue => cue.Text)];
        return said is null || lines.Length == 0
            ? null
            : View.Of(("tag", said.Language), ("dir", TextDirection.Of(said.Language)), ("lines", View.List(lines)));
    }

    /// <summary>The address of a part of a film.</summary>
    public static string PartOf(string film, TimeSpan from, TimeSpan? to) => $"{film}#t={Seconds(from)}{(to is { } end ? $",{Seconds(end)}" : "")}";

    /// <summary>A moment of a film that lives elsewhere: whole seconds, before the moment rather than after it.</summary>
    public static string MomentOf(string address, TimeSpan from) =>
        address.Replace(Clip.Moment, ((long)from.TotalSeconds).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    /// <summary>A film that lives elsewhere. Nothing of it is loaded before the reader follows the link.</summary>
    public static ScriptObject Elsewhere(string address, TimeSpan from, string says, LanguageSite site) => View.Of(
        ("src", null),
        ("captions", View.List([])),
        ("transcript", null),
        ("says", says),
        ("address", MomentOf(address, from)),
        ("elsewhere", HostOf(address, site)));

    /// <summary>Whose page it is to which the address of a film leads.</summary>
    public static string HostOf(string address, LanguageSite site) =>
        site.Words.Say("film_elsewhere", ("host", address.Split('/', '?', '#') is [_, _, var host, ..] ? host : address));

    private static string Seconds(TimeSpan time) => ((decimal)time.Ticks / TimeSpan.TicksPerSecond).ToString("0.###", CultureInfo.InvariantCulture);
}
