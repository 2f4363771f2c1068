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

    /// <summary>The photos of one place that were published; null for none.</summary>
    public static ScriptArray? Photos(IEnumerable<Photo> photos, Place place, Edition edition)
    {
        var list = List(
            from photo in photos
            where photo.Place == place
            let picture = edition.Plan.Pictures.GetValueOrDefault(photo.File.Value)
            where picture is not null
            select Of(
                ("src", picture.Files[0].Path),
                ("srcset", string.Join(", ", picture.Files.Select(file => $"{file.Path} {file.Width}w"))),
                ("width", picture.Largest.Width),
                ("height", picture.Largest.Height),
                ("alt", photo.Alt?.Value ?? edition.Words["photo_without_alt"]),
                ("marks", photo.Marks.IsEmpty ? null : List(photo.Marks.Select(Mark)))));
        return list.Count == 0 ? null : list;
    }

    /// <summary>The part of the film that shows a stage, as a media fragment (W3C Media Fragments URI 1.0, section 4.2.1: normal play time in seconds).</summary>
    public static ScriptObject? Film(Clip? clip, Edition edition)
    {
        if (clip is null || edition.Plan.Films.GetValueOrDefault(clip.File.Value) is not { } film)
            return null;
        return Of(
            ("src", PartOf(film, clip.From, clip.To)),
            ("says", clip.To is { } to
                ? edition.Words.Say("film_part", ("from", Chapters.Clock(clip.From)), ("to", Chapters.Clock(to)))
                : edition.Words.Say("film_from", ("from", Chapters.Clock(clip.From)))));
    }

    /// <summary>The address of a part of a film.</summary>
    public static string PartOf(string film, TimeSpan from, TimeSpan? to) => $"{film}#t={Seconds(from)}{(to is { } end ? $",{Seconds(end)}" : "")}";

    private static ScriptObject Mark(Mark mark, int index) => Of(
        ("number", index + 1),
        ("x", Percent(mark.X)),
        ("y", Percent(mark.Y)),
        ("says", mark.Says.Value));

    private static string Percent(double value) => value.ToString("0.##", CultureInfo.InvariantCulture) + "%";

    private static string Seconds(TimeSpan time) => ((decimal)time.Ticks / TimeSpan.TicksPerSecond).ToString("0.###", CultureInfo.InvariantCulture);
}
