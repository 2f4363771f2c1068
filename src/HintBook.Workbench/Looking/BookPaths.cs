namespace HintBook.Workbench.Looking;

/// <summary>Which paths below a book's folder belong to the book.</summary>
internal static class BookPaths
{
    private const string Published = "published";

    /// <summary>Whether a path is hidden, or in the folder that a publish writes.</summary>
    /// <param name="path">Relative to the book.</param>
    public static bool IsOutside(string path)
    {
        var parts = path.Split('/', '\\');
        return parts[0] == Published || parts.Any(part => part.StartsWith('.'));
    }
}
