using HintBook.Workbench.Writing;

namespace HintBook.Workbench.Choosing;

/// <summary>The folder that a maker means by what was typed or chosen.</summary>
/// <param name="Path">The folder; empty where it can't be opened.</param>
/// <param name="Why">Why it can't be opened; null where it can.</param>
internal sealed record ChosenFolder(string Path, string? Why)
{
    /// <summary>Understands it.</summary>
    /// <param name="said">A path, perhaps in quotes as another program copies it, perhaps of the file book.yaml.</param>
    /// <param name="documents">The folder that a bare name is meant in, and that need not be there yet.</param>
    public static ChosenFolder Of(string? said, string documents)
    {
        var typed = said?.Trim().Trim('"', '“', '”').Trim() ?? "";
        if (typed.Length == 0 || typed.Contains('\0', StringComparison.Ordinal))
            return new("", "Which folder? Write its path or its name.");
        if (typed == "~" || typed.StartsWith("~/", StringComparison.Ordinal))
            typed = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile) + typed[1..];
        documents = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(documents));
        var path = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(typed, documents));
        if (System.IO.Path.GetFileName(path) == "book.yaml" && File.Exists(path))
            path = System.IO.Path.GetDirectoryName(path)!;
        if (File.Exists(System.IO.Path.Combine(path, "book.yaml")))
            return new(path, null);
        if (!BookBeginning.IsPossible(path))
            return new("", $"“{path}” has no book in it (no file book.yaml) and isn't empty. For a new book name a folder that is empty or not there yet.");
        var parent = System.IO.Path.GetDirectoryName(path);
        return Directory.Exists(path) || Directory.Exists(parent) || parent == documents
            ? new(path, null)
            : new("", $"There is no folder “{parent}” to begin a book in.");
    }
}
