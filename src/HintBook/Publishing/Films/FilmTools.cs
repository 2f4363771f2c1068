namespace HintBook.Publishing.Films;

/// <summary>The programs that look into films and cut clips out of them, as the user installed them. Nothing of them comes with this one.</summary>
/// <param name="Ffmpeg">The full path of <c>ffmpeg</c>.</param>
/// <param name="Ffprobe">The full path of <c>ffprobe</c>, which comes with it.</param>
public sealed record FilmTools(string Ffmpeg, string Ffprobe)
{
    /// <summary>Those that are called when their names are typed in a terminal; null if one of them isn't there.</summary>
    public static FilmTools? OnPath() => OnPath("ffmpeg") is { } ffmpeg && OnPath("ffprobe") is { } ffprobe ? new(ffmpeg, ffprobe) : null;

    // A folder of the path that isn't written out in full would mean a program that lies wherever one happens to be, in a book perhaps.
    private static string? OnPath(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Where(Path.IsPathFullyQualified)
            .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? program + ".exe" : program))
            .FirstOrDefault(File.Exists);
}
