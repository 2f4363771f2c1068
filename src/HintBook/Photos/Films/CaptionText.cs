using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using HintBook.Books;

namespace HintBook.Photos.Films;

/// <summary>Captions as they are published (W3C WebVTT, section 4.1): without the author's comments.</summary>
internal static partial class CaptionText
{
    /// <summary>Captions of a whole film.</summary>
    public static string Whole(Captions captions) => Written(captions, captions.Cues);

    /// <summary>Captions of a part of a film: only what is said in it.</summary>
    /// <param name="captions">The captions of the film.</param>
    /// <param name="part">The part.</param>
    /// <param name="start">The moment of the film that is the first of the part's own file; zero where it has none.</param>
    public static string Part(Captions captions, FilmPart part, TimeSpan start) => Written(
        captions,
        from cue in captions.Cues
        where part.Shows(cue.From, cue.To)
        let moved = cue with { From = Later(cue.From, Later(part.From, start)) - start, To = (part.To is { } end && end < cue.To ? end : cue.To) - start }
        where moved.To > moved.From
        select moved);

    /// <summary>
    /// Captions as a script that hands them to the page: from a memory stick a browser takes no captions, because they want an origin (HTML Living
    /// Standard, 4.8.11.11.3), but scripts.
    /// </summary>
    /// <param name="name">The name of the file that holds the captions themselves.</param>
    /// <param name="captions">What is in that file.</param>
    public static string Script(string name, string captions) =>
        $"hintbookCaptions({JsonSerializer.Serialize(name)}, {JsonSerializer.Serialize(captions)});\n";

    /// <summary>A time as WebVTT writes it: <c>00:02:16.000</c>.</summary>
    public static string Time(TimeSpan time) =>
        string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours:00}:{time.Minutes:00}:{time.Seconds:00}.{time.Milliseconds:000}");

    private static string Written(Captions captions, IEnumerable<Cue> cues)
    {
        var text = new StringBuilder("WEBVTT\n");
        foreach (var style in captions.Styles)
            text.Append(CultureInfo.InvariantCulture, $"\n{style}\n");
        foreach (var cue in cues)
        {
            text.Append('\n');
            if (cue.Id.Length > 0)
                text.Append(CultureInfo.InvariantCulture, $"{cue.Id}\n");
            text.Append(CultureInfo.InvariantCulture, $"{Time(cue.From)} --> {Time(cue.To)}{(cue.Settings.Length > 0 ? " " : "")}{cue.Settings}\n");
            // Times within a cue are those of the whole film.
            text.Append(CultureInfo.InvariantCulture, $"{TimeWithin().Replace(cue.At.Text.ReplaceLineEndings("\n"), "")}\n");
        }

        return text.ToString();
    }

    private static TimeSpan Later(TimeSpan one, TimeSpan other) => one > other ? one : other;

    [GeneratedRegex("<[0-9][0-9:.]*>")]
    private static partial Regex TimeWithin();
}
