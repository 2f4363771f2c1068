namespace HintBook.Audit;

/// <summary>Follows the addresses of a site's files to the files and ids that they name.</summary>
internal sealed class Links(IReadOnlyCollection<SiteFile> files)
{
    private readonly Dictionary<string, SiteFile> byPath = files.ToDictionary(file => file.Path, StringComparer.Ordinal);

    private readonly ILookup<string, string> byAnyCase = files.ToLookup(file => file.Path, file => file.Path, StringComparer.OrdinalIgnoreCase);

    /// <summary>How many of a file's addresses stay in the site.</summary>
    public static int CountInside(SiteFile file) => file.References.Count(reference => SchemeOf(reference.Address) is null);

    /// <summary>How many of a file's links lead out of it.</summary>
    public static int CountOutgoing(SiteFile file) =>
        file.References.Count(reference => reference.Kind == ReferenceKind.Link && IsOutgoing(SchemeOf(reference.Address)));

    /// <summary>What is wrong with a file's addresses.</summary>
    public IEnumerable<AuditFault> Faults(SiteFile file) =>
        from reference in file.References
        let problem = ProblemOf(file, reference)
        where problem is not null
        select new AuditFault(file.Path, reference.Line, reference.Column, problem);

    private string? ProblemOf(SiteFile from, Reference reference)
    {
        var address = reference.Address;
        var isAsset = reference.Kind == ReferenceKind.Asset;
        return SchemeOf(address) switch
        {
            null => ProblemInside(from, reference, address),
            "javascript" or "vbscript" => $"The address “{Short(address)}” runs a script.",
            "data" => isAsset ? null : $"The link “{Short(address)}” carries a document in its address.",
            var scheme when !IsOutgoing(scheme) => $"The address “{Short(address)}” has a scheme that a reader's browser may not know.",
            _ => isAsset ? $"“{Short(address)}” is loaded from elsewhere: the site has to work from a memory stick." : null,
        };
    }

    private string? ProblemInside(SiteFile from, Reference reference, string address)
    {
        if (address.Contains('\\', StringComparison.Ordinal))
            return $"The address “{address}” has a backslash; addresses have forward slashes.";
        if (address.StartsWith('/'))
            return $"The address “{address}” begins at the server's root: it leads nowhere from a folder or a memory stick.";

        var (written, fragment) = Split(address);
        if (written.Length == 0 && reference.Kind == ReferenceKind.Asset && fragment is null)
            return "The address is empty.";
        if (Resolve(from.Path, Uri.UnescapeDataString(written)) is not { } path)
            return $"The address “{address}” leaves the site's folder.";
        if (!byPath.TryGetValue(path, out var target))
            return Missing(address, path);
        return fragment is null or "" || target.Ids is not { } ids || ids.Contains(Uri.UnescapeDataString(fragment))
            ? null
            : $"The address “{address}” names a place that is not in “{path}”.";
    }

    private string Missing(string address, string path)
    {
        if (byAnyCase[path].FirstOrDefault() is { } otherCase)
            return $"The address “{address}” differs from the file “{otherCase}” by letter case: it leads nowhere on most servers.";
        return path.Length == 0 || path.EndsWith('/')
            ? $"The address “{address}” names a folder: from a memory stick that shows a list of files. Name its index.html."
            : $"The address “{address}” leads to a file that is not there.";
    }

    /// <summary>The path in the site that an address names, or null for one that climbs out of it.</summary>
    private static string? Resolve(string from, string written)
    {
        if (written.Length == 0)
            return from;
        var steps = new List<string>(from.Split('/')[..^1]);
        foreach (var step in written.Split('/'))
        {
            if (step == "..")
            {
                if (steps.Count == 0)
                    return null;
                steps.RemoveAt(steps.Count - 1);
            }
            else if (step != ".")
            {
                steps.Add(step);
            }
        }

        return string.Join('/', steps) + (written.Split('/')[^1] is "." or ".." ? "/" : "");
    }

    private static (string Path, string? Fragment) Split(string address)
    {
        var hash = address.IndexOf('#', StringComparison.Ordinal);
        var (path, fragment) = hash < 0 ? (address, null) : (address[..hash], address[(hash + 1)..]);
        var query = path.IndexOf('?', StringComparison.Ordinal);
        return (query < 0 ? path : path[..query], fragment == "top" ? null : fragment);
    }

    private static bool IsOutgoing(string? scheme) => scheme is "http" or "https" or "mailto" or "tel";

    private static string? SchemeOf(string address)
    {
        if (address.StartsWith("//", StringComparison.Ordinal))
            return "http";
        var end = address.IndexOf(':', StringComparison.Ordinal);
        return end > 0 && char.IsAsciiLetter(address[0]) && address[..end].All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '+' or '-' or '.')
            ? address[..end].ToLowerInvariant()
            : null;
    }

    private static string Short(string address) => address.Length <= 80 ? address : address[..79] + "…";
}
