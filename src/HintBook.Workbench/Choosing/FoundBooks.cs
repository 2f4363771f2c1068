using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace HintBook.Workbench.Choosing;

/// <summary>A book that was found.</summary>
/// <param name="Title">Its title, or the folder's name where that can't be read.</param>
/// <param name="Path">Its folder.</param>
public sealed record FoundBook(string Title, string Path);

/// <summary>Finds the books below a folder. Links aren't followed, hidden folders and published sites aren't looked into.</summary>
public static partial class FoundBooks
{
    private const string BookFile = "book.yaml";
    private const int Deepest = 3;
    private const int MostFolders = 2000;
    private const int MostLines = 200;

    /// <summary>The books, in the order of their paths; none where the folder isn't there.</summary>
    /// <param name="root">The folder.</param>
    public static ImmutableArray<FoundBook> In(string root)
    {
        var books = ImmutableArray.CreateBuilder<FoundBook>();
        var waiting = new Queue<(DirectoryInfo Folder, int Depth)>([(new(root), 0)]);
        for (var looked = 0; looked < MostFolders && waiting.TryDequeue(out var next); looked++)
        {
            var path = Path.Combine(next.Folder.FullName, BookFile);
            if (File.Exists(path))
                books.Add(new(TitleIn(path) ?? next.Folder.Name, next.Folder.FullName));
            else if (next.Depth < Deepest)
                FoldersIn(next.Folder).ForEach(folder => waiting.Enqueue((folder, next.Depth + 1)));
        }

        books.Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        return books.ToImmutable();
    }

    private static List<DirectoryInfo> FoldersIn(DirectoryInfo folder)
    {
        try
        {
            return [.. folder.EnumerateDirectories()
                .Where(each => each.LinkTarget is null && !each.Name.StartsWith('.') && !each.Attributes.HasFlag(FileAttributes.Hidden))
                .OrderBy(each => each.Name, StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static string? TitleIn(string path)
    {
        try
        {
            // A pipe has no length. Reading one would wait for whoever writes into it.
            return new FileInfo(path).Length == 0
                ? null
                : File.ReadLines(path).Take(MostLines).Select(line => Title().Match(line)).FirstOrDefault(match => match.Success)?
                    .Groups["title"].Value.Trim(' ', '"', '\'');
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // A list needs no more than what stands on the line.
    [GeneratedRegex(@"^title:\s*(?<title>\S.*?)(\s+#.*)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Title();
}
