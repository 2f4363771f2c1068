using System.Globalization;
using HintBook.Books;
using HintBook.Photos.Films;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>Small values as templates get them. Built by hand: importing objects by reflection costs more than rendering them.</summary>
internal static class View
{
    public static ScriptObject Of(params ReadOnlySpan<(string Name, object? Value)> fields)
    {
        var view = new ScriptObject(fields.Length + 4);
        foreach (var (name, value) in fields)
            view[name] = value;
        return view;
    }

    /// <summary>Every sentence by its key.</summary>
    public static ScriptObject Words(ThemeWords words) => Of([.. words.Entries.Select(word => (word.Key, (object?)word.Value))]);

    /// <summary>The address of every file that goes along with the pages, by its name in the theme.</summary>
    /// <param name="theme">The theme.</param>
    /// <param name="root">The way from a page to the site's own folder.</param>
    public static ScriptObject Assets(Theme theme, string root) => Of([.. theme.Assets.Select(asset => (asset.Key, (object?)(root + asset.Value.Path)))]);

    public static ScriptArray List(IEnumerable<object?> items) => [.. items];

    /// <summary>The dangers with their words; null for none.</summary>
    public static ScriptArray? Cautions(IEnumerable<Caution> cautions, ThemeWords words)
    {
        var list = List(cautions.Select(caution => Of(
            ("name", words.NameOf(caution.Kind)),
            ("text", words.TextOf(caution.Kind)),
            ("note", caution.Note))));
        return list.Count == 0 ? null : list;
    }

    /// <summary>The part of the film that shows a stage, as a media fragment (W3C Media Fragments URI 1.0, section 4.2.1: normal play time in seconds).</summary>
    public static ScriptObject? Film(Clip? clip, LanguageSite site)
    {
        if (clip is null || site.Plan.Films.GetValueOrDefault(clip.File.Value) is not { } film)
            return null;
        return Of(
            ("src", PartOf(site.From(film.Path), clip.From, clip.To)),
            ("captions", Captions(film, site)),
            ("says", clip.To is { } to
                ? site.Words.Say("film_part", ("from", Chapters.Clock(clip.From)), ("to", Chapters.Clock(to)))
                : site.Words.Say("film_from", ("from", Chapters.Clock(clip.From)))));
    }

    /// <summary>What is said in a film, by language; the page's own language comes first and is shown from the start.</summary>
    public static ScriptArray Captions(PublishedFilm film, LanguageSite site) => List(
        film.Captions
            .OrderByDescending(track => track.Key == site.Book.Language.Value)
            .Select((track, index) => Of(
                ("src", site.From(track.Value)),
                ("tag", track.Key),
                ("name", site.Theme.NameOf(track.Key)),
                ("shown", index == 0 && track.Key == site.Book.Language.Value))));

    /// <summary>The address of a part of a film.</summary>
    public static string PartOf(string film, TimeSpan from, TimeSpan? to) => $"{film}#t={Seconds(from)}{(to is { } end ? $",{Seconds(end)}" : "")}";

    private static string Seconds(TimeSpan time) => ((decimal)time.Ticks / TimeSpan.TicksPerSecond).ToString("0.###", CultureInfo.InvariantCulture);
}
