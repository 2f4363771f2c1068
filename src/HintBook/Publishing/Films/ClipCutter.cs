using System.Globalization;
using HintBook.Books;

namespace HintBook.Publishing.Films;

/// <summary>
/// Cuts a clip out of a film with ffmpeg. Nothing from before the clip is in it, and nothing from behind it: its pictures are taken over as they are
/// from the first key frame in it if that is at most a second away, and encoded anew otherwise.
/// </summary>
internal static class ClipCutter
{
    private static readonly TimeSpan MostLeftOut = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Rounding = TimeSpan.FromMilliseconds(0.5);

    /// <summary>Cuts a clip.</summary>
    /// <param name="tools">The programs.</param>
    /// <param name="film">The film's full path.</param>
    /// <param name="part">The clip.</param>
    /// <param name="target">Where it is written; its ending says as what.</param>
    /// <param name="stop">Ends the work.</param>
    /// <returns>The moment of the film that is the clip's first, or why it couldn't be cut.</returns>
    public static (TimeSpan Start, string? Failure) Cut(FilmTools tools, string film, FilmPart part, string target, CancellationToken stop)
    {
        if (KeyFrame.Find(tools, film, part, MostLeftOut, stop) is { } key)
        {
            var copied = ToolRun.Run(tools.Ffmpeg, [.. Input(film, key.At - key.FilmStart - Rounding), .. AsItIs(key, part), .. Output(target)], stop);
            if (copied.Succeeded)
                return (key.At, null);
        }

        var encoded = ToolRun.Run(tools.Ffmpeg, [.. Input(film, part.From), .. Anew(part, target), .. Output(target)], stop);
        return (part.From, encoded.Succeeded ? null : encoded.Error.Length > 0 ? encoded.Error : "it doesn't say why");
    }

    private static string[] Input(string film, TimeSpan from) =>
    [
        "-nostdin", "-v", "error", "-y", .. FilmTools.OnlyFilms, "-ss", Seconds(from > TimeSpan.Zero ? from : TimeSpan.Zero), "-i", film,
        "-map", "0:V:0", "-map", "0:a:0?",
    ];

    // Packets from before the key frame, to which ffmpeg goes back in some kinds of film, are not copied.
    private static string[] AsItIs(KeyFrame key, FilmPart part) =>
    [
        "-c", "copy", "-copypriorss", "0", "-avoid_negative_ts", "make_zero",
        .. part.To is { } to ? (string[])["-t", Seconds(to - key.At), "-frames:v", key.Pictures.ToString(CultureInfo.InvariantCulture)] : [],
    ];

    // ffmpeg chooses the encoders by the kind of file. The numbers are its usual ones for films that are watched on a screen.
    private static string[] Anew(FilmPart part, string target) =>
    [
        .. part.To is { } to ? (string[])["-t", Seconds(to - part.From)] : [],
        "-pix_fmt", "yuv420p", "-b:v", "0", "-crf", Path.GetExtension(target) == ".webm" ? "31" : "21",
    ];

    private static string[] Output(string target) =>
    [
        "-map_metadata", "-1", "-map_chapters", "-1", "-fflags", "+bitexact", "-flags:v", "+bitexact", "-flags:a", "+bitexact",
        .. Path.GetExtension(target) is ".mp4" or ".m4v" or ".mov" ? (string[])["-movflags", "+faststart"] : [],
        target,
    ];

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.######", CultureInfo.InvariantCulture);
}
