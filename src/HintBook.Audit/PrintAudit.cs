using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Xml;
using System.Xml.Linq;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>
/// Reads what was printed for those who hold the box: the sheets of cards and their codes, the booklet of hints, and clues. What the table
/// of secrets doesn't name is for the maker.
/// </summary>
public static class PrintAudit
{
    private const string Codes = "qr/";

    /// <summary>Audits a folder; one that isn't there has nothing wrong.</summary>
    /// <param name="folder">Where the printed files lie.</param>
    /// <param name="site">The site to which their codes lead; null to be content with its address.</param>
    /// <param name="table">Who may see what.</param>
    public static PrintReport Run(string folder, string? site, AuditTable table)
    {
        if (!Directory.Exists(folder))
            return new(0, 0, []);
        var secrets = Secrets.Of(table);
        var (paths, noFiles) = SiteFolder.List(folder);
        var read = paths.Where(path => path.StartsWith(Codes, StringComparison.Ordinal) || table.PrintedPages.ContainsKey(path)
                || table.Booklets.Any(booklet => booklet.File == path))
            .AsParallel().AsOrdered()
            .Select(path => One(folder, path, site, table, secrets))
            .ToArray();
        return new(
            read.Length,
            read.Sum(one => one.Codes),
            [
                .. noFiles
                    .Concat(table.Clues.Where(clue => paths.Contains(clue.File)).SelectMany(clue => ClueReader.Faults(folder, clue)))
                    .Concat(read.SelectMany(one => one.Faults))
                    .Distinct()
                    .OrderBy(fault => fault.File, StringComparer.Ordinal)
                    .ThenBy(fault => fault.Line)
                    .ThenBy(fault => fault.Message, StringComparer.Ordinal),
            ]);
    }

    private static (int Codes, ImmutableArray<AuditFault> Faults) One(string folder, string path, string? site, AuditTable table, Secrets secrets)
    {
        if (table.Booklets.FirstOrDefault(booklet => booklet.File == path) is { } booklet)
            return (0, BookletReader.Faults(folder, booklet, secrets));
        var codes = new List<(string? Says, int Page)>();
        var faults = table.PrintedPages.TryGetValue(path, out var pages)
            ? PrintReader.Faults(folder, path, pages, secrets, codes)
            : SiteFileReader.Read(folder, path, secrets).Faults;
        if (path.StartsWith(Codes, StringComparison.Ordinal) && path.EndsWith(".png", StringComparison.OrdinalIgnoreCase))
            codes.Add((QrReader.Read(File.ReadAllBytes(Path.Combine(folder, path))), 0));
        var drawn = path.StartsWith(Codes, StringComparison.Ordinal) && path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)
            ? SaidByDrawing(Path.Combine(folder, path))
            : [];
        var listener = secrets.Listen(path);
        return (
            codes.Count,
            [
                .. faults,
                .. codes.SelectMany(code => Wrong(path, WithoutKey(code.Says), code.Page, site, table, listener, secrets.Outside)),
                .. Exchanged(path, [.. codes, .. drawn], table),
            ]);
    }

    // A card leads its owner to the page that was meant for it.
    private static IEnumerable<AuditFault> Exchanged(string path, IReadOnlyList<(string? Says, int Page)> codes, AuditTable table) =>
        table.PrintedCodes.TryGetValue(path, out var meant)
            ? from pair in codes.Zip(meant)
              where pair.First.Says is not null && pair.First.Says != pair.Second
              let place = pair.First.Page == 0 ? "The code" : $"A code on page {pair.First.Page}"
              let said = WithoutKey(pair.First.Says)
              let wanted = WithoutKey(pair.Second)
              select new AuditFault(path, 0, 0, said == wanted
                  ? $"{place} leads to “{said}” with the key of another card."
                  : $"{place} says “{said}”, and its card belongs to “{wanted}”.")
            : [];

    // What stands behind the sign # opens sealed help: it is compared, and never told.
    [return: NotNullIfNotNull(nameof(says))]
    private static string? WithoutKey(string? says) => says?.Split('#')[0];

    // The writer of the drawing puts what the code says into its title.
    private static (string? Says, int Page)[] SaidByDrawing(string file)
    {
        try
        {
            return XDocument.Load(file).Descendants().FirstOrDefault(element => element.Name.LocalName == "title") is { } title ? [(title.Value, 0)] : [];
        }
        catch (Exception e) when (e is XmlException or IOException)
        {
            return [];
        }
    }

    private static IEnumerable<AuditFault> Wrong(string path, string? says, int page, string? site, AuditTable table, Secrets.Listener listener, Scope outside)
    {
        var where = page == 0 ? "The code" : $"A code on page {page}";
        if (says is null)
            return [new(path, 0, 0, $"{where} can't be read.")];
        var told = listener.Hear(new(Uri.UnescapeDataString(says), 0, 0, page == 0 ? "in the code" : $"in a code on page {page}", Manner.Address, outside));
        return LeadsToThe(site, says, table.Address) ? told : told.Append(new(path, 0, 0, $"{where} says “{says}”, which is no page of the site."));
    }

    private static bool LeadsToThe(string? site, string says, string? address) =>
        address is not null
        && says.StartsWith(address, StringComparison.Ordinal)
        && says[address.Length..] is var page
        && (page.Length == 0 || site is null || (!page.Contains("..", StringComparison.Ordinal)
            && (File.Exists(Path.Combine(site, page)) || File.Exists(Path.Combine(site, page + ".html")))));
}

/// <summary>What an audit of printed files read, and what it found.</summary>
/// <param name="Files">How many files were read.</param>
/// <param name="Codes">How many codes were read.</param>
/// <param name="Faults">By file, then by message.</param>
public sealed record PrintReport(int Files, int Codes, ImmutableArray<AuditFault> Faults);
