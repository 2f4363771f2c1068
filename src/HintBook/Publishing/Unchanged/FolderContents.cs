using System.Buffers;
using System.Security.Cryptography;
using HintBook.Reading.Folder;

namespace HintBook.Publishing.Unchanged;

/// <summary>What lies in a folder: every path in it, with a digest of the file's content. No time and no length is trusted.</summary>
internal sealed class FolderContents
{
    /// <summary>A folder with more bytes than these isn't looked at: comparing it could take longer than making everything again.</summary>
    public const long MostBytes = 4L << 30;

    private const int MostEntries = 250_000;
    private const int Block = 256 * 1024;
    private const string Folder = "folder";
    private const string Link = "link ";

    private readonly SortedDictionary<string, string> digests;

    private FolderContents(SortedDictionary<string, string> digests) => this.digests = digests;

    /// <summary>How many files there are.</summary>
    public int Files => digests.Values.Count(digest => digest != Folder);

    /// <summary>Whether a link is among them: what it leads to isn't looked at.</summary>
    public bool HasLinks => digests.Values.Any(digest => digest.StartsWith(Link, StringComparison.Ordinal));

    /// <summary>The digest of a file; null where there is none.</summary>
    /// <param name="path">In the folder, with forward slashes.</param>
    public string? this[string path] => digests.GetValueOrDefault(path);

    /// <summary>Reads a folder on all cores; null where something in it can't be read or is no file, or where there is too much of it.</summary>
    /// <param name="root">The folder's full path.</param>
    /// <param name="skips">Which folders and files don't count, by their full path.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static FolderContents? Of(string root, Func<string, bool> skips, CancellationToken stop)
    {
        try
        {
            var found = new SortedDictionary<string, string>(StringComparer.Ordinal);
            return List(root, skips, found) is { } files ? Read(files, found, stop) : null;
        }
        catch (Exception failure) when (Flat(failure) is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Whether two folders hold the same, some paths aside.</summary>
    /// <param name="other">The other folder.</param>
    /// <param name="aside">Which paths don't count.</param>
    public bool IsAs(FolderContents other, Func<string, bool> aside) =>
        digests.Where(file => !aside(file.Key)).SequenceEqual(other.digests.Where(file => !aside(file.Key)));

    /// <summary>Writes all that tells the folder's content from any other.</summary>
    public void Write(BinaryWriter output)
    {
        output.Write(digests.Count);
        foreach (var (path, digest) in digests)
        {
            output.Write(path);
            output.Write(digest);
        }
    }

    // What is a folder or a link is known at once; the files are still to be read.
    private static List<(string Path, FileInfo File)>? List(string root, Func<string, bool> skips, SortedDictionary<string, string> found)
    {
        var files = new List<(string, FileInfo)>();
        var waiting = new Stack<DirectoryInfo>([new DirectoryInfo(root)]);
        var bytes = 0L;
        while (waiting.TryPop(out var next))
        {
            foreach (var entry in next.EnumerateFileSystemInfos())
            {
                if (skips(entry.FullName))
                    continue;
                var path = Path.GetRelativePath(root, entry.FullName).Replace(Path.DirectorySeparatorChar, '/');
                if (entry.LinkTarget is { } target)
                    found[path] = Link + target;
                else if (entry is DirectoryInfo inner)
                {
                    found[path] = Folder;
                    waiting.Push(inner);
                }
                else if (entry is FileInfo file)
                {
                    files.Add((path, file));
                    bytes += file.Length;
                }

                if (found.Count + files.Count > MostEntries || bytes > MostBytes)
                    return null;
            }
        }

        return files;
    }

    private static FolderContents? Read(
        List<(string Path, FileInfo File)> files, SortedDictionary<string, string> found, CancellationToken stop)
    {
        var read = new string?[files.Count];
        Parallel.For(0, files.Count, new() { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
            read[i] = files[i].File.Length == 0 && SpecialFile.Is(files[i].File.FullName) ? null : DigestOf(files[i].File.FullName));
        if (Array.Exists(read, digest => digest is null))
            return null;
        for (var i = 0; i < read.Length; i++)
            found[files[i].Path] = read[i]!;
        return new(found);
    }

    private static string DigestOf(string path)
    {
        using var file = File.OpenHandle(path, options: FileOptions.SequentialScan);
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var block = ArrayPool<byte>.Shared.Rent(Block);
        try
        {
            for (var at = 0L; RandomAccess.Read(file, block.AsSpan(0, Block), at) is > 0 and var many; at += many)
                digest.AppendData(block, 0, many);
            return Convert.ToHexStringLower(digest.GetHashAndReset());
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(block);
        }
    }

    private static Exception Flat(Exception failure) => failure is AggregateException several ? several.Flatten().InnerExceptions[0] : failure;
}
