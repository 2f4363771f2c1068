using HintBook.Starting.Drafting;

namespace HintBook.Cli.Verbs;

/// <summary>The files that belong to a film, as a command line names them.</summary>
internal static class FilmParts
{
    /// <summary>What is said, from captions; null, and told, where the file can't be read.</summary>
    public static Usable<Said>? SpokenIn(string path, Terminal terminal) => BytesOf(path, terminal) is { } file ? FilmTexts.SpokenIn(path, file) : null;

    /// <summary>The chapters of a list; null, and told, where the file can't be read.</summary>
    public static Usable<Chapter>? ChaptersIn(string path, Terminal terminal) => BytesOf(path, terminal) is { } file ? FilmTexts.ChaptersIn(path, file) : null;

    private static byte[]? BytesOf(string path, Terminal terminal)
    {
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            terminal.Say($"“{path}” can't be read: {failure.Message}");
            return null;
        }
    }
}
