namespace HintBook.Tests.Reading;

/// <summary>The example's texts in a folder of their own, with an empty file for each picture and film: enough to be read and surveyed.</summary>
internal static class ExampleCopy
{
    /// <summary>Path inside the book and text of each file.</summary>
    public static (string Path, string Text)[] Texts { get; } =
    [
        .. Directory.EnumerateFiles(Where.Example, "*", SearchOption.AllDirectories)
            .Select(full => Path.GetRelativePath(Where.Example, full).Replace('\\', '/'))
            .Where(path => path == "book.yaml" || path.StartsWith("stages/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => (path, File.ReadAllText(Path.Combine(Where.Example, path)))),
    ];

    public static BookOnDisk Make()
    {
        var book = new BookOnDisk().Without("stages/01-the-lid.md");
        foreach (var (path, text) in Texts)
            book.With(path, text);
        foreach (var finding in book.Read().Findings.All.Where(finding => finding.Code.Id == "HB1008"))
            book.With($"photos/{finding.At.Text}", "");
        return book;
    }
}
