using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>A file that a maker names, and that is for nobody else.</summary>
internal static class OwnFile
{
    /// <summary>Why it can't be written, as a sentence; null where it can.</summary>
    /// <param name="file">The file.</param>
    /// <param name="replaces">Whether a file that is there may be written over.</param>
    public static string? WhyNotWritten(string file, bool replaces) =>
        BesideSite(file)
            ?? (!replaces && SingleFile.IsThere(file)
                ? $"“{TerminalText.Shown(file)}” is there already, so it stays as it is. Add --replace to write over it, or name another file."
                : null);

    /// <summary>That it would lie in a folder which a publish made; null where it wouldn't.</summary>
    public static string? BesideSite(string file) => PublishedSite.IsAround(file)
        ? $"“{TerminalText.Shown(file)}” would lie beside the site, where readers might find it. Name a file in another folder."
        : null;
}
