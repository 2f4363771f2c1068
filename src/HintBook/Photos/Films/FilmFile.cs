namespace HintBook.Photos.Films;

/// <summary>Files that hold films.</summary>
public static class FilmFile
{
    private static readonly string[] Endings = [".mp4", ".m4v", ".mov", ".webm", ".mkv", ".ogv"];

    /// <summary>Whether a name has the ending of a film.</summary>
    public static bool IsNamedSo(string name) => Endings.Contains(Path.GetExtension(name).ToLowerInvariant());

    /// <summary>How long a film lasts, as its file says; null where it doesn't, or can't be read.</summary>
    /// <param name="path">The file.</param>
    public static TimeSpan? LengthOf(string path)
    {
        try
        {
            using var film = File.OpenRead(path);
            return FilmLength.Read(film);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
