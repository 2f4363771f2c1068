using System.Collections.Concurrent;
using System.Collections.Immutable;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Reads a finished site as a stranger would, from its files alone, and says what is wrong. It shares no code with what
/// wrote them: a mistake there is not repeated here.
/// </summary>
public static class SiteAudit
{
    /// <summary>Audits a folder. The same folder gives the same report; nothing in a file makes it throw.</summary>
    /// <param name="folder">The site: what would be uploaded.</param>
    /// <param name="table">Words that must not be seen where, or null to check the rest alone.</param>
    public static AuditReport Run(string folder, AuditTable? table)
    {
        if (!Directory.Exists(folder))
            return new(0, 0, 0, 0, [new("", 0, 0, $"There is no folder “{folder}” to audit.")]);

        var (paths, noFiles) = SiteFolder.List(folder);
        var secrets = Secrets.Of(table);
        var files = Read(folder, paths, secrets);
        var links = new Links(files);
        var dead = files.AsParallel().AsOrdered().SelectMany(links.Faults).ToArray();

        return new(
            Files: files.Length,
            Pages: files.Count(file => file.IsPage),
            Links: files.Sum(Links.CountInside),
            Outgoing: files.Sum(Links.CountOutgoing),
            Faults: Ordered([.. noFiles, .. SiteFolder.Lookalikes(paths), .. secrets.Unusable(paths), .. files.SelectMany(f => f.Faults), .. dead]));
    }

    // The longest first: a long file that is started last would keep one core busy while the others wait.
    private static SiteFile[] Read(string folder, ImmutableArray<string> paths, Secrets secrets)
    {
        var files = new SiteFile[paths.Length];
        var longestFirst = Enumerable.Range(0, paths.Length).OrderByDescending(i => new FileInfo(Path.Combine(folder, paths[i])).Length);
        Parallel.ForEach(
            Partitioner.Create(longestFirst, EnumerablePartitionerOptions.NoBuffering),
            i => files[i] = SiteFileReader.Read(folder, paths[i], secrets));
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
}
