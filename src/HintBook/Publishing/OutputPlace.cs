using HintBook.Reading.Folder;

namespace HintBook.Publishing;

/// <summary>Where a publish may write: not into the book's own folders, not over what others made, and not through links.</summary>
internal static class OutputPlace
{
    // What a book is read from; a publish makes none of it.
    private static readonly string[] FoldersOfBooks = ["stages", "photos", "clips", "themes", "schemas"];

    /// <summary>Refuses a place that isn't for the files of a publish.</summary>
    /// <param name="root">The output folder's full path.</param>
    /// <param name="book">The book's folder, or the shelf's.</param>
    /// <exception cref="MachineFailure">Why it is refused.</exception>
    public static void Refuse(string root, string book)
    {
        if (File.Exists(root))
            throw Refused($"“{root}” is a file, not a folder.", "Name a folder with --out.");
        var (real, realBook) = (RealPath.Of(root) ?? root, RealPath.Of(book) ?? book);
        if (RealPath.IsWithin(realBook, real))
            throw Refused($"“{root}” holds the book itself.", "Name a folder of its own with --out, such as “published” in the book.");
        if (FolderOfABookAround(real) is { } folder)
        {
            throw Refused(
                $"“{root}” lies in “{folder}”, where a book keeps its own files, so nothing is written there.",
                "Name a folder of its own with --out, such as “published” in the book.");
        }
    }

    /// <summary>Refuses links in the place of what a publish writes and replaces: it would write or delete wherever they lead.</summary>
    /// <param name="root">The output folder's full path. It may be a link itself, since its user named it.</param>
    /// <param name="own">The folder in it that a publish keeps for itself.</param>
    /// <exception cref="MachineFailure">Why it is refused.</exception>
    public static void RefuseLinks(string root, string own)
    {
        string[] written =
        [
            own, $"{own}/next", $"{own}/cache", $"{own}/made.json", $"{own}/swap.json", $"{own}/hold", "site", "print", "moved", "report.json", "books",
        ];
        foreach (var path in written.Select(name => Path.Combine(root, name)).Concat(BooksOnShelf(root)))
        {
            if (new FileInfo(path).LinkTarget is not null)
                throw Refused($"“{path}” is a link, and a publish writes only where it leads itself.", Instead(path));
            if (SpecialFile.Is(path))
                throw Refused($"“{path}” is a pipe or a device.", Instead(path));
        }

        if (Directory.Exists(root) && !Directory.Exists(Path.Combine(root, own)) && Directory.EnumerateFileSystemEntries(root).Any())
        {
            throw Refused(
                $"“{root}” isn't empty and wasn't made by a publish, so nothing is written there.",
                "Name another folder with --out, or empty this one yourself.");
        }
    }

    /// <summary>Every file below a folder, and every link as itself: what it leads to isn't looked into.</summary>
    /// <exception cref="MachineFailure">Something is neither file, folder nor link, and can't be copied.</exception>
    public static IEnumerable<(string Path, bool IsLink)> FilesAndLinksIn(string folder)
    {
        foreach (var entry in new DirectoryInfo(folder).EnumerateFileSystemInfos())
        {
            if (entry.LinkTarget is not null)
            {
                yield return (entry.FullName, true);
                continue;
            }

            if (SpecialFile.Is(entry.FullName))
                throw Refused($"“{entry.FullName}” is a pipe or a device, so it can't go along into the next publish.", "Take it away.");
            if (entry is FileInfo)
            {
                yield return (entry.FullName, false);
                continue;
            }

            foreach (var below in FilesAndLinksIn(entry.FullName))
                yield return below;
        }
    }

    private static IEnumerable<string> BooksOnShelf(string root)
    {
        var books = Path.Combine(root, "books");
        return Directory.Exists(books) && new FileInfo(books).LinkTarget is null ? Directory.EnumerateFileSystemEntries(books) : [];
    }

    private static string? FolderOfABookAround(string path)
    {
        for (var (here, above) = (path, Path.GetDirectoryName(path)); above is not null; (here, above) = (above, Path.GetDirectoryName(above)))
        {
            if (FoldersOfBooks.Contains(Path.GetFileName(here), StringComparer.OrdinalIgnoreCase) && File.Exists(Path.Combine(above, "book.yaml")))
                return here;
        }

        return null;
    }

    private static string Instead(string path) =>
        $"Put a folder or a file of its own in the place of “{Path.GetFileName(path)}”, or name another folder with --out.";

    private static MachineFailure Refused(string message, string help) => new(FailureKind.Usage, message, help);
}
