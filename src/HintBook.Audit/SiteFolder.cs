using System.Collections.Immutable;

namespace HintBook.Audit;

/// <summary>The files of a site, before any is read.</summary>
internal static class SiteFolder
{
    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false };

    /// <summary>Every file's path in ordinal order, and a fault for every entry that is no file: it is neither followed nor opened.</summary>
    public static (ImmutableArray<string> Paths, ImmutableArray<AuditFault> NoFiles) List(string folder)
    {
        var paths = new List<string>();
        var noFiles = new List<AuditFault>();
        var waiting = new Stack<DirectoryInfo>([new DirectoryInfo(folder)]);
        while (waiting.TryPop(out var next))
        {
            foreach (var entry in next.EnumerateFileSystemInfos("*", Everything))
            {
                var path = Path.GetRelativePath(folder, entry.FullName).Replace(Path.DirectorySeparatorChar, '/');
                if (entry.LinkTarget is not null)
                    noFiles.Add(new(path, 0, 0, "This is a link to another place on the disk, not a file of the site."));
                else if (entry is DirectoryInfo inner)
                    waiting.Push(inner);
                else if (entry is FileInfo file && SpecialFile.Is(file))
                    noFiles.Add(new(path, 0, 0, "This is a pipe or a device, not a file of the site."));
                else
                    paths.Add(path);
            }
        }

        return ([.. paths.Order(StringComparer.Ordinal)], [.. noFiles]);
    }

    /// <summary>Files whose names differ by letter case alone: many disks and some servers hold only one of them.</summary>
    public static IEnumerable<AuditFault> Lookalikes(IEnumerable<string> paths) =>
        from same in paths.GroupBy(path => path, StringComparer.OrdinalIgnoreCase)
        from other in same.Skip(1)
        select new AuditFault(other, 0, 0, $"Its name differs from “{same.First()}” by letter case alone.");
}
