using System.Collections.Immutable;
using System.Text;
using HintBook.Text;

namespace HintBook.Reading.Folder;

/// <summary>The author's folder: the only door through which the book's files come in. No file outside it is ever opened.</summary>
public sealed class BookFolder
{
    /// <summary>The largest text file, in bytes: room for 2,000 pages of prose.</summary>
    public const int MostTextBytes = 4 * 1024 * 1024;

    /// <summary>How many files one of the book's folders may hold.</summary>
    public const int MostFiles = 10_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    // Where the folder really is, should its own path hold links.
    private readonly string home;

    private BookFolder(string root)
    {
        Root = root;
        home = RealPath.Of(root) ?? root;
    }

    /// <summary>The folder's full path.</summary>
    public string Root { get; }

    /// <summary>Opens a folder that holds a <c>book.yaml</c>; null with a finding where there is none, or where it can't be seen whether there is.</summary>
    public static BookFolder? Open(string path, List<Finding> findings)
    {
        var root = Path.GetFullPath(path);
        var problem =
            File.Exists(root) ? FolderFindings.FileInsteadOfFolder(path, BookAround(path, root))
            : !Directory.Exists(root) ? FolderFindings.NoFolder(path, IsBook(Path.GetDirectoryName(root)), BooksIn(Path.GetDirectoryName(root)))
            : File.Exists(Path.Combine(root, "book.yaml")) ? null
            : WithoutBook(path, root);
        if (problem is null)
            return new BookFolder(root);
        findings.Add(problem);
        return null;
    }

    /// <summary>
    /// The names of the files in one of the book's folders, in ordinal order, hidden files left out; empty where there is no such folder,
    /// null with a finding where it can't be read.
    /// </summary>
    public IReadOnlyList<string>? FilesIn(string folder, List<Finding> findings)
    {
        var full = Path.Combine(Root, folder);
        if (!Directory.Exists(full))
            return [];
        if (PointsOutside(full))
        {
            findings.Add(FolderFindings.LinkLeavesTheBook(SourceFile.Unread(folder).Top, folder));
            return null;
        }

        string[] names;
        try
        {
            names = [.. Entries(full).Where(name => !name.StartsWith('.') && !name.EndsWith('~')).Take(MostFiles + 1)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            findings.Add(FolderFindings.Unreadable(SourceFile.Unread(folder).Top, folder, failure));
            return null;
        }

        if (names.Length > MostFiles)
        {
            findings.Add(FolderFindings.TooManyFiles(folder));
            return null;
        }

        Array.Sort(names, StringComparer.Ordinal);
        return names;
    }

    /// <summary>Reads a text file as strict UTF-8. On any problem a finding says why, and the file is null.</summary>
    /// <param name="path">Inside the book, with forward slashes.</param>
    /// <param name="findings">Where findings go.</param>
    public SourceFile? ReadText(string path, List<Finding> findings)
    {
        var bytes = ReadBytes(path, SourceFile.Unread(path).Top, MostTextBytes, findings);
        if (bytes is null)
            return null;
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            findings.Add(FolderFindings.Utf16(path));
            return null;
        }

        if (WordProcessorFile.KindOf(bytes) is { } kind)
        {
            findings.Add(FolderFindings.WordProcessor(path, kind));
            return null;
        }

        var start = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        try
        {
            return new SourceFile(path, Strict.GetString(bytes, start, bytes.Length - start));
        }
        catch (DecoderFallbackException)
        {
            findings.Add(FolderFindings.NotUtf8(path, bytes.AsSpan(start)));
            return null;
        }
    }

    /// <summary>The size of a file in bytes; null for one that isn't there or that a link leads to outside of the book.</summary>
    /// <param name="path">Inside the book, with forward slashes.</param>
    public long? SizeOf(string path) =>
        !PointsOutside(Path.Combine(Root, path)) && new FileInfo(Path.Combine(Root, path)) is { Exists: true } file ? file.Length : null;

    /// <summary>Reads a file's bytes; on any problem a finding says why, and the answer is null.</summary>
    /// <param name="path">Inside the book, with forward slashes.</param>
    /// <param name="at">Where the author names the file.</param>
    /// <param name="most">The largest size to accept, in bytes.</param>
    /// <param name="findings">Where findings go.</param>
    public byte[]? ReadBytes(string path, Span at, long most, List<Finding> findings) => Read<byte[]>(path, at, findings, file =>
    {
        if (file.Length > most)
        {
            findings.Add(FolderFindings.TooLarge(at, path, file.Length, most));
            return null;
        }

        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    });

    /// <summary>Reads of a file as much as is asked for; on any problem a finding says why, and the answer is null.</summary>
    /// <param name="path">Inside the book, with forward slashes.</param>
    /// <param name="at">Where the author names the file.</param>
    /// <param name="findings">Where findings go.</param>
    /// <param name="read">Reads; it is given the file from its start, and may seek.</param>
    public T? Read<T>(string path, Span at, List<Finding> findings, Func<FileStream, T?> read)
        where T : class
    {
        var full = Path.Combine(Root, path);
        if (PointsOutside(full))
        {
            findings.Add(FolderFindings.LinkLeavesTheBook(at, path));
            return null;
        }

        if (SpecialFile.Is(full))
        {
            findings.Add(FolderFindings.PipeOrDevice(at, path));
            return null;
        }

        try
        {
            using var file = File.OpenRead(full);
            return read(file);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            findings.Add(Directory.Exists(Path.Combine(Root, path))
                ? FolderFindings.FolderInsteadOfFile(at, path)
                : FolderFindings.Unreadable(at, path, failure));
        }

        return null;
    }

    /// <summary>
    /// Checks that a file which the author names lies in the book under exactly that name, and gives its path inside the book.
    /// Null with a finding where it doesn't.
    /// </summary>
    /// <param name="folder">The book's folder for such files: <c>photos</c> or <c>clips</c>.</param>
    /// <param name="named">The name as written.</param>
    /// <param name="findings">Where findings go.</param>
    public string? Find(string folder, Located<string> named, List<Finding> findings)
    {
        var path = $"{folder}/{named.Value}";
        if (named.Value.Contains('\\') || Path.IsPathRooted(named.Value) || named.Value.Split('/').Any(step => step is "" or "." or ".."))
        {
            findings.Add(FolderFindings.LeavesTheBook(named, folder));
            return null;
        }

        var here = Root;
        foreach (var step in path.Split('/'))
        {
            if (!Directory.Exists(here))
                break;
            var names = NamesIn(here);
            if (!names.Contains(step))
            {
                var alone = step == folder && File.Exists(Path.Combine(Root, named.Value)) ? named.Value[(folder.Length + 1)..] : null;
                findings.Add(FolderFindings.Missing(
                    named, folder, sameButForCase: names.FirstOrDefault(IsSameButForCase(step)), alone ?? Text.Nearest.To(step, names)));
                return null;
            }

            here = Path.Combine(here, step);
            if (PointsOutside(here))
            {
                findings.Add(FolderFindings.LeavesTheBook(named, folder));
                return null;
            }
        }

        if (File.Exists(here) && !SpecialFile.Is(here))
            return path;
        findings.Add(SpecialFile.Is(here)
            ? FolderFindings.PipeOrDevice(named.At, path)
            : FolderFindings.Missing(named, folder, sameButForCase: null, nearest: null));
        return null;
    }

    private static Func<string, bool> IsSameButForCase(string step) => name => name.Equals(step, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> Entries(string folder) => Directory.EnumerateFileSystemEntries(folder).Select(path => Path.GetFileName(path));

    private static Finding WithoutBook(string path, string root)
    {
        try
        {
            return FolderFindings.NoBook(path, [.. Entries(root).Take(20)], BookAround(path, root), BooksIn(root));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return FolderFindings.Unreadable(SourceFile.Unread("book.yaml").Top, path, failure);
        }
    }

    private static bool IsBook(string? folder) => folder is not null && File.Exists(Path.Combine(folder, "book.yaml"));

    // A stage's file, or the folder of the stages, was named in place of the book.
    private static string? BookAround(string path, string root)
    {
        var steps = 0;
        for (var folder = Path.GetDirectoryName(root); folder is not null && steps < 2; folder = Path.GetDirectoryName(folder), steps++)
        {
            if (IsBook(folder))
                return Path.IsPathRooted(path) ? folder : Path.GetRelativePath(Directory.GetCurrentDirectory(), folder);
        }

        return null;
    }

    // Where nothing was found, names alone are looked at, so that a finding can say what may have been meant. No file there is opened.
    private static ImmutableArray<string> BooksIn(string? folder)
    {
        try
        {
            return folder is null || !Directory.Exists(folder)
                ? []
                :
                [
                    .. Directory.EnumerateDirectories(folder).Take(MostFiles).Where(IsBook)
                        .Select(book => Path.GetFileName(book)).Order(StringComparer.Ordinal),
                ];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    // A folder that can't be looked into has no names to offer.
    private static string[] NamesIn(string folder)
    {
        try
        {
            return [.. Entries(folder)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    // Links in a circle lead nowhere; opening such a file fails with a finding of its own.
    private bool PointsOutside(string path) => RealPath.Of(path) is { } real && !RealPath.IsWithin(real, home);
}
