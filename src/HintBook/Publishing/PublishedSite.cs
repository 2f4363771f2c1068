namespace HintBook.Publishing;

/// <summary>Where the finished files of one book lie.</summary>
/// <param name="Output">The output folder of its publish.</param>
/// <param name="Site">The site.</param>
/// <param name="Print">What is printed; it may be missing.</param>
public sealed record PublishedSite(string Output, string Site, string Print)
{
    private const string Own = ".hintbook";

    /// <summary>Where the records of its pictures lie; they may be missing.</summary>
    public string Cache { get; init; } = Path.Combine(Output, Own, "cache");

    /// <summary>Whether a file would lie in a folder that a publish has written, so that it might be uploaded with the site.</summary>
    /// <param name="path">The file; it need not be there.</param>
    public static bool IsAround(string path)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path));
        while (folder is not null && !Directory.Exists(Path.Combine(folder, Own)))
            folder = Path.GetDirectoryName(folder);
        return folder is not null;
    }

    /// <summary>A book that stands alone.</summary>
    /// <param name="output">Its output folder.</param>
    public static PublishedSite OfBook(string output) => new(output, Path.Combine(output, "site"), Path.Combine(output, "print"));

    /// <summary>A book on a shelf: the site that is uploaded lies in the shelf's, the rest in an output folder of the book's own.</summary>
    /// <param name="shelf">The shelf's output folder.</param>
    /// <param name="name">The name of the book's folder.</param>
    public static PublishedSite OnShelf(string shelf, string name) =>
        OfBook(Path.Combine(shelf, "books", name)) with { Site = Path.Combine(shelf, "site", name) };
}
