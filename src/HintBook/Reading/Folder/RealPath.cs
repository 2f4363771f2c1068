namespace HintBook.Reading.Folder;

/// <summary>Where a path really leads, as the system walks it: each link at its place, and <c>..</c> from where the link before it led.</summary>
internal static class RealPath
{
    // As many as Linux follows (Linux man-pages, path_resolution(7)).
    private const int MostLinks = 40;

    /// <summary>The path without links; what isn't there is taken as it is written. Null for links in a circle.</summary>
    /// <param name="path">A full path, or one from the current folder.</param>
    public static string? Of(string path)
    {
        var full = Path.IsPathFullyQualified(path) ? path : Path.GetFullPath(path);
        var (here, left, links) = ("", new Stack<string>(), 0);
        Start(full);
        while (left.TryPop(out var step))
        {
            if (step is "" or ".")
                continue;
            if (step == "..")
            {
                here = Path.GetDirectoryName(here) ?? here;
                continue;
            }

            var next = Path.Combine(here, step);
            if (new FileInfo(next).LinkTarget is not { } target)
                here = next;
            else if (++links > MostLinks)
                return null;
            else
                Start(target);
        }

        return here;

        void Start(string from)
        {
            if (Path.IsPathRooted(from))
                here = Path.GetPathRoot(from) ?? "";
            var steps = from[(Path.GetPathRoot(from) ?? "").Length..].Split(Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar);
            foreach (var step in steps.Reverse())
                left.Push(step);
        }
    }

    /// <summary>Whether a path without links is a folder or lies in it.</summary>
    public static bool IsWithin(string path, string folder) =>
        path == folder || path.StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
