using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Finds photos and films that the book doesn't use: often their line was forgotten.</summary>
internal static class UnusedFiles
{
    private static readonly string[] Folders = ["photos", "clips"];

    /// <summary>One note for each such file.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">The book, read without errors, in all its languages.</param>
    public static IEnumerable<Finding> In(BookFolder folder, Book book)
    {
        Book[] all = [book, .. book.Translations];
        var used = all.SelectMany(each => each.AllPhotos).Select(photo => photo.File.Value)
            .Concat(all.SelectMany(each => each.Stages).Select(stage => stage.Clip?.File?.Value).OfType<string>())
            .ToHashSet();
        // Captions lie beside their film and have its name.
        var films = used.Where(file => file.StartsWith("clips/", StringComparison.Ordinal)).Select(file => Path.ChangeExtension(file, "")).ToArray();
        return
            from within in Folders
            from file in FilesBelow(folder, within)
            where !used.Contains(file) && !films.Any(film => file.StartsWith(film, StringComparison.Ordinal))
            select FolderFindings.Unused(file);
    }

    // What can't be looked into has been told where it is named.
    private static IEnumerable<string> FilesBelow(BookFolder folder, string within) =>
        from name in folder.FilesIn(within, []) ?? []
        let path = $"{within}/{name}"
        from file in folder.SizeOf(path) is null ? FilesBelow(folder, path) : [path]
        select file;
}
