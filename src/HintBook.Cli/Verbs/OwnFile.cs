using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>Why a file that a maker names, or one in a folder that a maker names, isn't written.</summary>
internal static class OwnFile
{
    /// <summary>Why it can't be written, as a sentence; null where it can.</summary>
    /// <param name="file">The file.</param>
    /// <param name="replaces">Whether a file that is there may be written over.</param>
    public static string? WhyNotWritten(string file, bool replaces) =>
        BesideSite(file) ?? WhyKept(file, replaces);

    /// <summary>That the file is there and stays as it is; null where it isn't there or may be written over.</summary>
    public static string? WhyKept(string file, bool replaces) => !replaces && SingleFile.IsThere(file)
        ? $"“{TerminalText.Shown(file)}” is there already, so it stays as it is. Add --replace to write over it, or name another file."
        : null;

    /// <summary>That one of several files is there and says something else; null where none does, or all may be written over.</summary>
    /// <param name="files">Where they will be, and what they will hold.</param>
    /// <param name="replaces">Whether files that are there may be written over.</param>
    public static string? WhyAllKept(IEnumerable<(string Path, ReadOnlyMemory<byte> Bytes)> files, bool replaces) =>
        !replaces && files.FirstOrDefault(file => SingleFile.IsThere(file.Path) && !SingleFile.Holds(file.Path, file.Bytes.Span)).Path is { } there
            ? $"“{TerminalText.Shown(there)}” is there already and says something else, so nothing is written. "
                + "Add --replace to write over it, or name another folder."
            : null;

    /// <summary>That it would lie in a folder which a publish made; null where it wouldn't.</summary>
    public static string? BesideSite(string file) => PublishedSite.IsAround(file)
        ? $"“{TerminalText.Shown(file)}” would lie beside the site, where readers might find it. Name a file in another folder."
        : null;
}
