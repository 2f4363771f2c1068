using System.Collections.Immutable;
using HintBook.Audit.Mentions;

namespace HintBook.Audit.Sealed;

/// <summary>
/// Reads a finished sealed site with its cards, as each reader's browser would, and without them, as a stranger would. It shares no code with what sealed
/// it: a mistake there is not repeated here.
/// </summary>
public static class SealedAudit
{
    /// <summary>Audits a folder. What lies open is read by <see cref="SiteAudit"/> besides, with <see cref="AuditTable.Closed"/>.</summary>
    /// <param name="folder">The site: what would be uploaded.</param>
    /// <param name="table">Words that must not be seen where, once a page is open; null to check the rest alone.</param>
    /// <param name="cards">The cards.</param>
    public static AuditReport Run(string folder, AuditTable? table, SealedCards cards)
    {
        if (!Directory.Exists(folder))
            return new(0, 0, 0, 0, [new("", 0, 0, $"There is no folder “{folder}” to audit.")]);
        var (paths, _) = SiteFolder.List(folder);
        ImmutableArray<SealedShell> shells =
        [
            .. paths.Where(IsPage).AsParallel().AsOrdered()
                .Select(path => SealedShell.Read(path, File.ReadAllText(Path.Combine(folder, path)))).OfType<SealedShell>(),
        ];
        var tables = SlotTables.Read(folder, paths);
        var (tag, epoch) = shells.FirstOrDefault(shell => !shell.Pieces.IsEmpty) is { } one ? (one.Tag, one.Epoch) : ([], []);
        var keys = CardKeys.Of(tag, epoch, tables, cards);
        var boxKey = keys.Keys.GetValueOrDefault(SlotTables.Box);
        var gates = boxKey is null ? GateKeys.None : GateKeys.Of(shells, boxKey, cards, keys.Slots);
        OpenedPage[] opened = boxKey is null
            ? []
            : [.. shells.Where(shell => !shell.Pieces.IsEmpty).AsParallel().AsOrdered().Select(shell => OpenedPage.Of(shell, boxKey, gates))];
        var secrets = Secrets.Of(table);
        var ofStages = keys.Keys.Where(key => key.Key != SlotTables.Box).ToArray();
        var foreign = ForeignPages.Of(ofStages, shells);
        return new(paths.Length, shells.Length, 0, 0,
        [
            .. tables.Faults,
            .. tables.InClear(keys.Keys.Values, cards.InUse.SelectMany(card => card.Own).Select(own => own.Value)),
            .. ShellRules.Broken(shells, table),
            .. keys.Faults,
            .. opened.SelectMany(page => page.Faults),
            .. ofStages.OrderBy(key => key.Key, StringComparer.Ordinal).AsParallel().AsOrdered()
                .SelectMany(key => OpenedPage.Shut(key.Key, key.Value, shells, gates)),
            .. gates.Faults,
            .. foreign.Faults,
            .. OwnPlaces.Unfilled(opened, cards.InUse),
            .. OpenTexts.Faults(folder, paths, cards.Texts, opened),
            .. KeySearch.For(cards, keys, gates, shells, opened).Faults(folder, paths),
            .. SaidWithin(folder, paths, opened, new(folder, paths, table, secrets), secrets),
        ])
        {
            Opened = opened.Count(page => page.Texts is not null),
            Cards = keys.Opened,
            OnOthers = foreign.Tries,
            Gates = gates.Typed,
        };
    }

    // Opened pages are read like those of a site that isn't sealed. What is wrong with a page before it is opened is told by the other audit.
    private static IEnumerable<AuditFault> SaidWithin(
        string folder, ImmutableArray<string> paths, OpenedPage[] opened, SealedFiles files, Secrets secrets)
    {
        var whole = opened.Where(page => page.Texts is not null).ToArray();
        var pages = whole.AsParallel().AsOrdered()
            .Select(page => PageReader.Read(page.Shell.Path, files.In(GateKeys.Blank(page.Shell.With(page.Texts ?? [])), page.Shell), secrets)).ToArray();
        var shells = whole.AsParallel().AsOrdered().Select(page => PageReader.Read(page.Shell.Path, page.Shell.Text, Secrets.Of(null))).ToArray();
        var read = pages.Select(page => page.Path).ToHashSet(StringComparer.Ordinal);
        var others = paths.Union(files.Pictures, StringComparer.Ordinal).Where(path => !read.Contains(path)).Select(path => IsPage(path)
            ? PageReader.Read(path, File.ReadAllText(Path.Combine(folder, path)), Secrets.Of(null))
            : new SiteFile(path)).ToArray();
        var links = new Links([.. pages, .. others]);
        return
        [
            .. files.Faults,
            .. from page in pages.Zip(shells)
               let known = page.Second.Faults.Concat(links.Faults(page.Second)).Select(fault => fault.Message).ToHashSet(StringComparer.Ordinal)
               from fault in page.First.Faults.Concat(links.Faults(page.First))
               where !known.Contains(fault.Message)
               select fault with { Line = 0, Column = 0, Message = $"Once it is opened with a card: {fault.Message}" },
        ];
    }

    private static bool IsPage(string path) => path.EndsWith(".html", StringComparison.Ordinal);
}
