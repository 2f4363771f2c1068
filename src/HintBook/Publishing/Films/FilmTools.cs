namespace HintBook.Publishing.Films;

/// <summary>The programs that look into films and cut clips out of them, as the user installed them. Nothing of them comes with this one.</summary>
/// <param name="Ffmpeg">The full path of <c>ffmpeg</c>.</param>
/// <param name="Ffprobe">The full path of <c>ffprobe</c>, which comes with it.</param>
public sealed record FilmTools(string Ffmpeg, string Ffprobe)
{
    /// <summary>
    /// What they are told of the film before its name: it is a film and no list of other files, which they would open, and lies on the disk.
    /// </summary>
    internal static readonly string[] OnlyFilms =
    [
        "-format_whitelist", "mov,mp4,m4a,3gp,3g2,mj2,matroska,webm,avi,ogg,mpegts,mpeg,flv,asf", "-protocol_whitelist", "file",
    ];

    /// <summary>Those that are called when their names are typed in a terminal; null if one of them isn't there.</summary>
    public static FilmTools? OnPath() => OnPath("ffmpeg") is { } ffmpeg && OnPath("ffprobe") is { } ffprobe ? new(ffmpeg, ffprobe) : null;

    // A folder of the path that isn't written out in full would mean a program that lies wherever one happens to be, in a book perhaps.
    private static string? OnPath(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Where(Path.IsPathFullyQualified)
            .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? program + ".exe" : program))
            .FirstOrDefault(File.Exists);
}
