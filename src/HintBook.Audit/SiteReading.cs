using System.Collections.Concurrent;
using System.Collections.Immutable;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// An audit of a folder that still grows: finished files are read while later ones are being written, each once. What has changed since it was read, or
/// was never announced, is read at the end, so that the report is that of the files as they lie there then.
/// </summary>
/// <param name="folder">The site: what would be uploaded.</param>
/// <param name="table">Words that must not be seen where, or null to check the rest alone.</param>
public sealed class SiteReading(string folder, AuditTable? table)
{
    private readonly Lazy<Secrets> secrets = new(() => Secrets.Of(table));
    private readonly ConcurrentDictionary<string, (Stamp Stamp, SiteFile File)> read = new(StringComparer.Ordinal);

    /// <summary>Reads a file that is finished. May be called from several threads, for one file from one at a time.</summary>
    /// <param name="path">In the site, with forward slashes.</param>
    public void Read(string path)
    {
        // Taken first: whatever is written later makes another.
        if (Stamp.Of(Path.Combine(folder, path)) is { } stamp)
            read[path] = (stamp, SiteFileReader.Read(folder, path, secrets.Value));
    }

    /// <summary>Reads what hasn't been read, follows all links, and reports. The same folder gives the same report; nothing in a file makes it throw.</summary>
    public AuditReport End()
    {
        if (!Directory.Exists(folder))
            return new(0, 0, 0, 0, [new("", 0, 0, $"There is no folder “{folder}” to audit.")]);

        var (paths, noFiles) = SiteFolder.List(folder);
        var files = Files(paths);
        var links = new Links(files);
        var dead = files.AsParallel().AsOrdered().SelectMany(links.Faults).ToArray();

        return new(
            Files: files.Length,
            Pages: files.Count(file => file.IsPage),
            Links: files.Sum(Links.CountInside),
            Outgoing: files.Sum(Links.CountOutgoing),
            Faults: Ordered([.. noFiles, .. SiteFolder.Lookalikes(paths), .. secrets.Value.Unusable(paths), .. files.SelectMany(f => f.Faults), .. dead]));
    }

    // The longest first: a long file that is started last would keep one core busy while the others wait.
    private SiteFile[] Files(ImmutableArray<string> paths)
    {
        var files = new SiteFile[paths.Length];
        var left = new List<(int Place, long Length)>();
        for (var i = 0; i < paths.Length; i++)
        {
            var stamp = Stamp.Of(Path.Combine(folder, paths[i]));
            if (read.TryGetValue(paths[i], out var known) && known.Stamp == stamp)
                files[i] = known.File;
            else
                left.Add((i, stamp?.Length ?? 0));
        }

        Parallel.ForEach(
            Partitioner.Create(left.OrderByDescending(one => one.Length), EnumerablePartitionerOptions.NoBuffering),
            one => files[one.Place] = SiteFileReader.Read(folder, paths[one.Place], secrets.Value));
        return files;
    }

    private static ImmutableArray<AuditFault> Ordered(IEnumerable<AuditFault> faults) =>
    [
        .. faults
            .Distinct()
            .OrderBy(f => f.File, StringComparer.Ordinal)
            .ThenBy(f => f.Line)
            .ThenBy(f => f.Column)
            .ThenBy(f => f.Message, StringComparer.Ordinal),
    ];

    // By which a file is known again that nobody has written since.
    private readonly record struct Stamp(long Length, DateTime Written)
    {
        public static Stamp? Of(string file) => new FileInfo(file) is { Exists: true } info ? new(info.Length, info.LastWriteTimeUtc) : null;
    }
}
