namespace HintBook.Workbench.Guarding;

/// <summary>Whether a book can be written to.</summary>
internal static class BookAccess
{
    private static readonly string[] Folders = ["", "stages", "photos"];

    /// <summary>Tries it, in each folder that the workbench writes to, with a hidden file that is gone at once.</summary>
    /// <param name="root">The book's folder, as a full path.</param>
    public static bool CanWrite(string root) => Folders.Select(folder => Path.Combine(root, folder)).Where(Directory.Exists).All(CanWriteIn);

    private static bool CanWriteIn(string folder)
    {
        try
        {
            using var tried = new FileStream(Path.Combine(folder, $".{Guid.NewGuid():N}.new"), new FileStreamOptions
            {
                Mode = FileMode.CreateNew,
                Access = FileAccess.Write,
                Options = FileOptions.DeleteOnClose,
            });
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
