using System.Collections.Concurrent;
using System.Security.Cryptography;
using HintBook.Books;
using HintBook.Photos;

namespace HintBook.Publishing;

/// <summary>How far long work has come.</summary>
/// <param name="Doing">What is being made: <c>photos</c>, <c>pages</c>.</param>
/// <param name="Done">How many of them are made.</param>
/// <param name="Of">How many there are.</param>
public sealed record PublishProgress(string Doing, int Done, int Of);

/// <summary>Where the next publish is put together: writes files, keeps the list of them, and says how far it has come.</summary>
internal sealed class OutputWriter(string folder, Disk disk, Action<PublishProgress> say, CancellationToken stop)
{
    private readonly ConcurrentDictionary<string, long> made = new();
    private readonly ConcurrentDictionary<string, string> hashes = new();
    private readonly ConcurrentDictionary<string, bool> folders = new();

    /// <summary>Set when the user wants it to stop.</summary>
    public CancellationToken Stop => stop;

    /// <summary>Does the steps.</summary>
    public Disk Disk => disk;

    /// <summary>Told of each file as soon as it is finished, by its path in the output folder with forward slashes; on the thread that wrote it.</summary>
    public Action<string>? Finished { get; set; }

    /// <summary>Every file written so far, relative to the output folder, with its size in bytes.</summary>
    public IReadOnlyDictionary<string, long> Made => made;

    /// <summary>The full path of something on the writer.</summary>
    public string PathOf(string relative) => Path.Combine(folder, relative);

    /// <summary>The files written so far within a folder, copied ones aside, relative to it and with a hash of their content.</summary>
    public IEnumerable<(string Path, string Hash)> Kept(string within) =>
        hashes.Where(file => file.Key.StartsWith(within, StringComparison.Ordinal)).Select(file => (file.Key[within.Length..], file.Value));

    /// <summary>Those pictures of the site that lie in it; of a sealed book most don't.</summary>
    public IEnumerable<Picture> Kept(IEnumerable<Picture> pictures) => pictures.Where(picture => made.ContainsKey($"site/{picture.Largest.Path}"));

    public void Write(string relative, ReadOnlyMemory<byte> content)
    {
        WriteUnkept(relative, content);
        // What isn't a page has its content's hash in its name.
        hashes[Slashed(relative)] = relative.EndsWith(".html", StringComparison.Ordinal) ? Convert.ToHexStringLower(SHA256.HashData(content.Span)) : "";
    }

    /// <summary>Writes a file that belongs to one which is too large to be kept on a device unasked.</summary>
    public void WriteUnkept(string relative, ReadOnlyMemory<byte> content)
    {
        stop.ThrowIfCancellationRequested();
        disk.Write(Place(relative), content);
        made[Slashed(relative)] = content.Length;
        Finished?.Invoke(Slashed(relative));
    }

    /// <summary>Takes back a file that was written.</summary>
    public void Drop(string relative)
    {
        disk.Delete(PathOf(relative));
        made.TryRemove(Slashed(relative), out _);
        hashes.TryRemove(Slashed(relative), out _);
    }

    /// <summary>Copies a file and changes the copy.</summary>
    public void Copy(string source, string relative, Action<FileStream> change)
    {
        stop.ThrowIfCancellationRequested();
        var target = Place(relative);
        disk.Copy(source, target, change);
        made[Slashed(relative)] = new FileInfo(target).Length;
        Finished?.Invoke(Slashed(relative));
    }

    public void Copy(string source, string relative)
    {
        stop.ThrowIfCancellationRequested();
        var target = Place(relative);
        disk.Copy(source, target);
        made[Slashed(relative)] = new FileInfo(target).Length;
        Finished?.Invoke(Slashed(relative));
    }

    /// <summary>Makes and writes files on all cores.</summary>
    public void WriteAll(string doing, string within, IReadOnlyCollection<MadeFile> files) =>
        ForEach(doing, files, file => Write(Path.Combine(within, file.Path), file.Content()));

    /// <summary>Does something for each item on all cores.</summary>
    public void ForEach<T>(string doing, IReadOnlyCollection<T> items, Action<T> work)
    {
        var done = 0;
        var options = new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount };
        Parallel.ForEach(items, options, item =>
        {
            work(item);
            say(new PublishProgress(doing, Interlocked.Increment(ref done), items.Count));
        });
    }

    private string Place(string relative)
    {
        var path = PathOf(relative);
        var parent = Path.GetDirectoryName(path)!;
        folders.GetOrAdd(parent, static name => Directory.CreateDirectory(name).Exists);
        return path;
    }

    private static string Slashed(string path) => path.Replace('\\', '/');
}
