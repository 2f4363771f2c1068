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
    /// <param name="kept">What earlier audits read; null to read everything now.</param>
    public static PrintReport Run(string folder, string? site, AuditTable table, KeptAudits? kept = null)
    {
        if (!Directory.Exists(folder))
            return new(0, 0, []);
        var audit = new Audit(folder, site, table, kept ?? KeptAudits.None);
        var (paths, noFiles) = SiteFolder.List(folder);
        var read = paths.Where(path => path.StartsWith(Codes, StringComparison.Ordinal) || table.PrintedPages.ContainsKey(path)
                || table.Booklets.Any(booklet => booklet.File == path) || table.Clues.Any(clue => clue.File == path))
            .AsParallel().AsOrdered()
            .Select(audit.One)
            .ToArray();
        return new(
            read.Length,
            read.Sum(one => one.Codes),
            [
                .. noFiles
                    .Concat(read.SelectMany(one => one.Faults))
                    .Distinct()
                    .OrderBy(fault => fault.File, StringComparer.Ordinal)
                    .ThenBy(fault => fault.Line)
                    .ThenBy(fault => fault.Message, StringComparer.Ordinal),
            ])
        { Kept = read.Count(one => one.IsKept) };
    }

    private sealed record ReadFile(int Codes, bool IsKept, ImmutableArray<AuditFault> Faults);

    private sealed class Audit(string folder, string? site, AuditTable table, KeptAudits kept)
    {
        private readonly Lazy<Secrets> secrets = new(() => Secrets.Of(table));
        private readonly byte[] digest = TableDigest.Of(table);

        // Where a code leads is looked up anew each time: it depends on the site, and on nothing that was read here.
        public ReadFile One(string path)
        {
            var file = File.ReadAllBytes(Path.Combine(folder, path));
            if (kept.Clean(path, file, digest) is { } known)
                return Judged(path, known, [], isKept: true);
            var codes = new List<(string? Says, int Page)>();
            AuditFault[] faults = [.. FaultsIn(path, file, codes)];
            if (faults.Length == 0)
                kept.KeepClean(path, file, digest, codes);
            return Judged(path, codes, faults, isKept: false);
        }

        private ReadFile Judged(string path, IReadOnlyCollection<(string? Says, int Page)> codes, AuditFault[] faults, bool isKept) => new(
            path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase) ? 0 : codes.Count,
            isKept,
            [
                .. faults,
                .. codes.Where(code => code.Says is not null && !LeadsToThe(site, WithoutKey(code.Says), table.Address) && !IsDrawing(path))
                    .Select(code => new AuditFault(path, 0, 0, $"{Place(code.Page)} says “{WithoutKey(code.Says)}”, which is no page of the site.")),
                .. Exchanged(path, codes, table),
            ]);

        private IEnumerable<AuditFault> FaultsIn(string path, byte[] file, List<(string? Says, int Page)> codes)
        {
            if (table.Booklets.FirstOrDefault(booklet => booklet.File == path) is { } booklet)
                return BookletReader.Faults(file, booklet, secrets.Value);
            if (table.Clues.FirstOrDefault(clue => clue.File == path) is { } clue)
                return ClueReader.Faults(file, clue);
            var faults = table.PrintedPages.TryGetValue(path, out var pages)
                ? PrintReader.Faults(file, path, pages, secrets.Value, codes)
                : SiteFileReader.Read(folder, path, secrets.Value).Faults;
            if (IsDrawing(path))
            {
                codes.AddRange(SaidByDrawing(Path.Combine(folder, path)));
                return faults;
            }

            if (path.StartsWith(Codes, StringComparison.Ordinal) && path.EndsWith(".png", StringComparison.OrdinalIgnoreCase))
                codes.Add((kept.CodeIn(file, QrReader.Read), 0));
            var listener = secrets.Value.Listen(path);
            return [.. faults, .. codes.SelectMany(code => ToldBy(path, WithoutKey(code.Says), code.Page, listener, secrets.Value.Outside))];
        }
    }

    private static bool IsDrawing(string path) =>
        path.StartsWith(Codes, StringComparison.Ordinal) && path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);

    private static string Place(int page) => page == 0 ? "The code" : $"A code on page {page}";

    // A card leads its owner to the page that was meant for it.
    private static IEnumerable<AuditFault> Exchanged(string path, IReadOnlyCollection<(string? Says, int Page)> codes, AuditTable table) =>
        table.PrintedCodes.TryGetValue(path, out var meant)
            ? from pair in codes.Zip(meant)
              where pair.First.Says is not null && pair.First.Says != pair.Second
              let place = Place(pair.First.Page)
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

    private static IEnumerable<AuditFault> ToldBy(string path, string? says, int page, Secrets.Listener listener, Scope outside) => says is null
        ? [new(path, 0, 0, $"{Place(page)} can't be read.")]
        : listener.Hear(new(Uri.UnescapeDataString(says), 0, 0, page == 0 ? "in the code" : $"in a code on page {page}", Manner.Address, outside));

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
public sealed record PrintReport(int Files, int Codes, ImmutableArray<AuditFault> Faults)
{
    /// <summary>How many of the files weren't read now but in an earlier audit, with the same bytes and the same table.</summary>
    public int Kept { get; init; }
}
