using System.Globalization;
using HintBook.Books;

namespace HintBook.Publishing.Films;

/// <summary>A picture at which a clip can begin without being encoded anew.</summary>
/// <param name="At">The moment at which it is shown.</param>
/// <param name="FilmStart">The moment at which the film's own time begins.</param>
/// <param name="Pictures">How many pictures follow, itself among them, before the first that is shown behind the clip.</param>
internal sealed record KeyFrame(TimeSpan At, TimeSpan FilmStart, int Pictures)
{
    private static readonly TimeSpan Rounding = TimeSpan.FromMilliseconds(0.5);

    /// <summary>The first key frame of a clip, if a clip can begin there.</summary>
    /// <param name="tools">The programs.</param>
    /// <param name="film">The film's full path.</param>
    /// <param name="part">The clip.</param>
    /// <param name="within">How far from the clip's start it may be.</param>
    /// <param name="stop">Ends the work.</param>
    public static KeyFrame? Find(FilmTools tools, string film, FilmPart part, TimeSpan within, CancellationToken stop)
    {
        // ffprobe reads a stretch from the key frame before it on.
        var end = (part.To ?? part.From + within) + within;
        var probed = ToolRun.Run(
            tools.Ffprobe,
            [
                "-v", "error", .. FilmTools.OnlyFilms, "-select_streams", "V:0", "-read_intervals", $"{Seconds(part.From)}%{Seconds(end)}",
                "-show_entries", "packet=pts_time,flags:format=start_time", "-of", "csv=p=0", film,
            ],
            stop);
        return probed.Succeeded ? In(probed.Output, part, within) : null;
    }

    /// <summary>The same, from what ffprobe printed: a line <c>pts_time,flags</c> for each packet in the order of the file, then the film's start.</summary>
    internal static KeyFrame? In(string probed, FilmPart part, TimeSpan within)
    {
        var lines = probed.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(',')).ToArray();
        var start = lines.Where(line => line.Length == 1).Select(line => TimeOf(line[0])).FirstOrDefault() ?? TimeSpan.Zero;
        var packets = lines.Where(line => line.Length > 1)
            .Select(line => (At: TimeOf(line[0]), IsKey: line[1].StartsWith('K')))
            .SkipWhile(packet => !packet.IsKey || packet.At < part.From - Rounding)
            .ToArray();
        if (packets is not [{ At: { } key }, ..] || key > part.From + within || key >= part.To)
            return null;
        var shown = packets.TakeWhile(packet => part.To is not { } to || packet.At < to - Rounding).ToArray();
        // Pictures that stand behind a key frame in the file and are shown before it need the pictures before it.
        return shown.Length > 0 && Array.TrueForAll(shown, packet => packet.At >= key) ? new(key, start, shown.Length) : null;
    }

    private static TimeSpan? TimeOf(string written) =>
        decimal.TryParse(written, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds)
            ? TimeSpan.FromTicks((long)(seconds * TimeSpan.TicksPerSecond))
            : null;

    private static string Seconds(TimeSpan time) => time.TotalSeconds.ToString("0.######", CultureInfo.InvariantCulture);
}
