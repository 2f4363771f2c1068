using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Kept;
using HintBook.Cards.ReadingBack;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Print;
using HintBook.Publishing.Films;
using HintBook.Publishing.Unchanged;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The whole way from a checked book to a site and printed cards, on one page. It has no logic of its own: each room does its part.</summary>
public static class Pipeline
{
    private static readonly ImmutableHashSet<PaperKind> CardsAlone = [PaperKind.Cards];

    /// <summary>Checks a book and publishes it: the site, the cards and the report, or nothing at all.</summary>
    /// <remarks>Where nothing has changed since the last publish, its outcome is told again (<see cref="LastPublish"/>).</remarks>
    public static PublishOutcome Publish(string path, PublishOptions options, CancellationToken stop = default) =>
        Guarded(() =>
        {
            var last = LastPublish.Before(path, options, stop);
            return last.Find() is { } known ? new Published(known.Report) : Made(path, options, last.Keep, stop);
        }, stop);

    /// <summary>Checks a book and publishes it, be it as it was or not.</summary>
    internal static PublishOutcome PublishAnew(string path, PublishOptions options, CancellationToken stop = default) =>
        Guarded(() => Made(path, options, KeptForNobody, stop), stop);

    /// <summary>Publishes a book that has been checked.</summary>
    public static PublishOutcome Publish(Sound book, PublishOptions options, CancellationToken stop = default) =>
        Guarded(() =>
        {
            var output = options.OutputFor(book.Examined.Folder.Root);
            using var photos = PhotosFor(output);
            return MakeAll(book, output, options, photos, KeptForNobody, stop);
        }, stop);

    /// <summary>Checks a book and prints its cards alone, beside whatever site was published last.</summary>
    public static PublishOutcome PrintCards(string path, PublishOptions options, CancellationToken stop = default) =>
        Guarded(() => Checked(path, options, stop) switch
        {
            Sound sound => MakeCards(sound, options.OutputFor(path), options, stop),
            var faulty => new Rejected(faulty.Findings),
        }, stop);

    /// <summary>Checks a book and prints some of its papers, beside whatever site was published last. Papers that were printed earlier stay.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="kinds">Which papers.</param>
    /// <param name="options">Where, and on which sheets.</param>
    /// <param name="stop">Ends it.</param>
    public static PublishOutcome PrintPapers(string path, IReadOnlySet<PaperKind> kinds, PublishOptions options, CancellationToken stop = default) =>
        Guarded(() => Checked(path, options, stop) switch
        {
            Sound sound => MakePapers(sound, kinds, options.OutputFor(path), options, stop),
            var faulty => new Rejected(faulty.Findings),
        }, stop);

    private static PublishOutcome Made(string path, PublishOptions options, Action<KeptOutcome, OutputFolder> keep, CancellationToken stop)
    {
        using var ahead = PhotosFor(options.OutputFor(path));
        return Checked(path, options, stop, ahead) switch
        {
            Sound sound => MakeAll(sound, options.OutputFor(path), options, ahead, keep, stop),
            var faulty => new Rejected(faulty.Findings),
        };
    }

    private static PhotosAhead PhotosFor(string output) => new(OutputFolder.CacheIn(output));

    private static void KeptForNobody(KeptOutcome outcome, OutputFolder folder)
    {
    }

    private static Checked Checked(string path, PublishOptions options, CancellationToken stop, PhotosAhead? ahead = null)
    {
        var given = new CheckOptions
        {
            MediaKnown = ahead is null ? null : ahead.Begin,
            LastPublished = options.OutputFor(path),
            CutsClips = options.FilmTools is not null,
            Box = options.WithCard is { } card ? CardOfLostKey.Open(path, options.OutputFor(path), card) : null,
            Progress = options.Solving,
            Stop = stop,
            Work = options.Work,
        };
        var result = Check.Run(path, given);
        stop.ThrowIfCancellationRequested();
        return result;
    }

    private static PublishOutcome MakeAll(
        Sound sound, string output, PublishOptions options, PhotosAhead photos, Action<KeptOutcome, OutputFolder> keep, CancellationToken stop)
    {
        var book = sound.Examined;
        if (book.Sealing?.Box is { } box && CardOfLostKey.WhyNot(book, box) is { } refused)
            throw refused;
        using var folder = OutputFolder.Open(output, book.Folder.Root, options.Disk, stop);
        var writer = new OutputWriter(folder.Next, options.Disk, options.Say, stop);

        // Papers hold codes, which follow from the key alone.
        var kinds = book.Sealing?.Box is null ? PaperKinds.WantedBy(book.Book) : [];
        var kept = PrintCache.Open(folder.Cache, PrintCache.Cards);
        // Cards need none of the site's pictures, and are drawn on one core at first.
        var drawing = Task.Run(() => kinds.Contains(PaperKind.Cards) ? CardsOf(book, options, kept) : (CardSet.None, Findings.None), stop);
        var (developed, photoFindings) = PhotoWork.Run(book, writer, folder.Cache, photos);
        var (clips, filmFindings) = FilmWork.Run(book, writer, folder.Cache, options.FilmTools);
        var (cards, cardFindings) = drawing.GetAwaiter().GetResult();
        var keptPapers = PrintCache.Open(folder.Cache, PrintCache.Papers);
        var (papers, paperFindings) = PapersOf(book, kinds, writer, options, keptPapers);
        var findings = sound.Findings.And([.. photoFindings, .. filmFindings, .. cardFindings.All, .. paperFindings.All]);
        if (findings.AnyError)
            return new Rejected(findings);

        var begun = FinishedAudit.Begin(PublishedSite.OfBook(folder.Next) with { Cache = folder.Cache }, book, papers);
        writer.Finished = begun.Read;
        if (book.Sealing is { } sealing)
            SealedSite.Write(book, sealing, writer);
        else
            writer.WriteAll("pages", "site", book.Site.Files);
        writer.WriteAll("offline", "site", Offline.Build(book.Book, book.Theme, writer.Kept("site/"), writer.Kept(book.Media.Pictures.Values)));
        writer.Finished = null;
        writer.WriteAll("cards", "print", cards.Files);
        writer.WriteAll("papers", "print", papers.Files);
        writer.WriteAll("moved", "moved", MovedPages.Build(book));
        var keptAudits = PrintCache.Open(folder.Cache, PrintCache.Audits);
        var (audit, print, faults) = begun.End(findings, PrintCache.ForAudit(keptAudits));
        findings = findings.And(faults);
        if (findings.AnyError)
            return new Rejected(findings);

        var report = ReportOf(sound, folder, writer, developed, cards.ReadBack, audit, findings) with
        {
            Clips = clips,
            Print = print,
            Filter = papers.Filter,
            PaperCodes = papers.Codes,
            Papers = [.. papers.Files.Select(paper => paper.Path)],
            IsWithCard = book.Sealing?.Box is not null,
        };
        writer.Write("report.json", report.ToJson());
        stop.ThrowIfCancellationRequested();
        var keptAddresses = AddressStore.Keep(book, folder.Root, CardsPrinted.Of(book, kinds, options.Copies, options.Date), options.Disk);
        Keep(cards.Files, kept, PrintCache.Cards, folder, options);
        PrintCache.Save(keptAudits, folder.Cache, options.Disk, PrintCache.Audits);
        Keep(papers.Files, keptPapers, PrintCache.Papers, folder, options);
        // What was printed with the key stays.
        var names = book.Sealing?.Box is null ? OutputFolder.Swapped : ["site"];
        folder.Swap(names, writer.Made.Keys.Where(file => names.Length > 1 || file.StartsWith("site/", StringComparison.Ordinal)));
        report = report with { Findings = findings.And(keptAddresses) };
        keep(new(report, []), folder);
        return new Published(report) { Book = book };
    }

    private static PublishOutcome MakeCards(Sound sound, string output, PublishOptions options, CancellationToken stop)
    {
        var book = sound.Examined;
        using var folder = OutputFolder.Open(output, book.Folder.Root, options.Disk, stop);
        var writer = new OutputWriter(folder.Next, options.Disk, options.Say, stop);
        var kept = PrintCache.Open(folder.Cache, PrintCache.Cards);
        var (cards, cardFindings) = CardsOf(book, options, kept);
        var findings = sound.Findings.And(cardFindings.All);
        if (findings.AnyError)
            return new Rejected(findings);

        writer.WriteAll("cards", "print", cards.Files);
        FilmWork.WriteLists(book, writer);
        var keptAudits = PrintCache.Open(folder.Cache, PrintCache.Audits);
        var (print, faults) = FinishedAudit.RunOnPapers(
            writer.PathOf("print"), site: null, book, findings, new([], [], []), PrintCache.ForAudit(keptAudits));
        findings = findings.And(faults);
        if (findings.AnyError)
            return new Rejected(findings);

        stop.ThrowIfCancellationRequested();
        var keptAddresses = AddressStore.Keep(book, folder.Root, CardsPrinted.Of(book, CardsAlone, options.Copies, options.Date), options.Disk);
        Keep(cards.Files, kept, PrintCache.Cards, folder, options);
        PrintCache.Save(keptAudits, folder.Cache, options.Disk, PrintCache.Audits);
        folder.Swap(["print"], writer.Made.Keys);
        var report = ReportOf(sound, folder, writer, 0, cards.ReadBack, Audit.AuditReport.Nothing, findings) with
        {
            Print = print,
            CardsBeforePages = CardsBeforePages(book, Path.Combine(folder.Root, "site")),
        };
        return new Published(report with { Findings = findings.And(keptAddresses) }) { Book = book };
    }

    private static PublishOutcome MakePapers(
        Sound sound, IReadOnlySet<PaperKind> kinds, string output, PublishOptions options, CancellationToken stop)
    {
        var book = sound.Examined;
        if (CodedCopies.WhyNotPrinted(book, kinds, options.Copies) is { } why)
            return new Failed(FailureKind.Usage, why, "“hintbook copies” lists the copies. Nothing was printed.");
        if (!options.Copies.IsEmpty && book.Sealing is null)
            kinds = kinds.Where(kind => kind != PaperKind.Cards).ToHashSet();
        using var folder = OutputFolder.Open(output, book.Folder.Root, options.Disk, stop);
        var writer = new OutputWriter(folder.Next, options.Disk, options.Say, stop);
        using var photos = PhotosFor(output);
        var (developed, photoFindings) = PhotoWork.Run(book, writer, folder.Cache, photos);
        var kept = PrintCache.Open(folder.Cache, PrintCache.Cards);
        var (cards, cardFindings) = kinds.Contains(PaperKind.Cards) ? CardsOf(book, options, kept) : (CardSet.None, Findings.None);
        var keptPapers = PrintCache.Open(folder.Cache, PrintCache.Papers);
        var (papers, paperFindings) = PapersOf(book, kinds, writer, options, keptPapers);
        var findings = sound.Findings.And([.. photoFindings, .. cardFindings.All, .. paperFindings.All]);
        if (findings.AnyError)
            return new Rejected(findings);

        writer.WriteAll("cards", "print", cards.Files);
        writer.WriteAll("papers", "print", papers.Files);
        var keptAudits = PrintCache.Open(folder.Cache, PrintCache.Audits);
        var (print, faults) = FinishedAudit.RunOnPapers(writer.PathOf("print"), site: null, book, findings, papers, PrintCache.ForAudit(keptAudits));
        findings = findings.And(faults);
        if (findings.AnyError)
            return new Rejected(findings);

        stop.ThrowIfCancellationRequested();
        var keptAddresses = AddressStore.Keep(book, folder.Root, CardsPrinted.Of(book, kinds, options.Copies, options.Date), options.Disk);
        Keep(cards.Files, kept, PrintCache.Cards, folder, options);
        PrintCache.Save(keptAudits, folder.Cache, options.Disk, PrintCache.Audits);
        Keep(papers.Files, keptPapers, PrintCache.Papers, folder, options);
        folder.Swap(["print"], writer.Made.Keys.Where(file => file.StartsWith("print/", StringComparison.Ordinal)), keepEarlier: true);
        return new Published(ReportOf(sound, folder, writer, developed, cards.ReadBack, Audit.AuditReport.Nothing, findings) with
        {
            Print = print,
            Filter = papers.Filter,
            PaperCodes = papers.Codes,
            CardSheets = cards.Sheets,
            CardsBeforePages = cards.Files.IsEmpty ? 0 : CardsBeforePages(book, Path.Combine(folder.Root, "site")),
            Papers = [.. papers.Files.Select(paper => paper.Path)],
            Findings = findings.And(keptAddresses),
        })
        { Book = book };
    }

    // Photos were developed before: a paper takes them from where they wait for the swap.
    private static (PrintedPapers Papers, Findings Findings) PapersOf(
        Examined book, IReadOnlySet<PaperKind> kinds, OutputWriter writer, PublishOptions options, KeptWork kept) =>
        PaperPrint.Make(kinds, book.Site, book.Theme, options.Paper, path =>
        {
            var file = writer.PathOf(Path.Combine("site", path));
            return File.Exists(file) ? File.ReadAllBytes(file) : null;
        }, kept, options.Work, CodedCopies.Of(book), options.Copies);

    private static int CardsBeforePages(Examined book, string site) => book.Book.Cards == CardChoice.Box || !Directory.Exists(site)
        ? 0
        : book.Book.Stages.Count(stage => !File.Exists(Path.Combine(site, book.Addresses.Names[stage.Id.Value][0] + ".html")));

    // Only a publish that comes to its end leaves something for the next one. Some files are made while they are written.
    private static void Keep(ImmutableArray<MadeFile> made, KeptWork kept, string name, OutputFolder folder, PublishOptions options)
    {
        if (!made.IsEmpty)
            PrintCache.Save(kept, folder.Cache, options.Disk, name);
    }

    private static (CardSet Cards, Findings Findings) CardsOf(Examined book, PublishOptions options, KeptWork kept)
    {
        var (words, _) = book.Theme.WordsIn(book.Book.Language);
        var (look, wrong) = CardLook.Of(book.Theme);
        var (picture, coarse) = CardPhoto.Of(book, options.Paper, kept, options.Work);
        var cardWords = CardWords.Of(words, book.Theme.InEnglish, Theme.ToolsEnglish);
        var (cards, findings) = CardsOfCopies.Print(book, options.Copies, copies =>
            CardPrint.Print(book.Book, book.Addresses, options.Paper, cardWords, options.Work, look, picture, kept, copies));
        return (cards, findings.And([.. wrong, .. coarse]));
    }

    private static Report ReportOf(
        Sound sound, OutputFolder folder, OutputWriter writer, int developed, ReadBack cards, Audit.AuditReport audit, Findings findings)
    {
        var book = sound.Examined;
        var site = writer.Made.Where(file => file.Key.StartsWith("site/", StringComparison.Ordinal)).ToArray();
        return new()
        {
            Book = book.Book.Title.Value,
            Folder = folder.Root,
            Pages = site.Count(file => file.Key.EndsWith(".html", StringComparison.Ordinal)),
            Photos = site.Length == 0 ? 0 : book.Media.Photos.Length,
            Developed = developed,
            SiteBytes = site.Sum(file => file.Value),
            Cards = cards,
            HasAddress = book.Addresses.Base is not null,
            CardsAreProofs = ExampleHosts.IsExample(book.Addresses.Base),
            Moved = MovedPages.FoldersOf(book).ToImmutableSortedDictionary(
                moved => moved.Key, moved => Path.Combine(folder.Root, "moved", moved.Value), StringComparer.Ordinal),
            Audit = audit,
            Claims = BookClaims.Of(sound with { Findings = findings }),
            Findings = findings,
        };
    }

    // Whatever the machine does, the user gets a sentence; the last good publish is still whole then.
    internal static PublishOutcome Guarded(Func<PublishOutcome> work, CancellationToken stop)
    {
        try
        {
            return work();
        }
        catch (AggregateException several) when (Told(several.Flatten().InnerExceptions[0], stop) is { } outcome)
        {
            return outcome;
        }
        catch (Exception failure) when (Told(failure, stop) is { } outcome)
        {
            return outcome;
        }
    }

    private static Failed Stopped => new(FailureKind.Stopped, "Stopped.", "What was published before is untouched.");

    private static Failed? Told(Exception failure, CancellationToken stop) => failure switch
    {
        MachineFailure told => new Failed(told.Kind, told.Message, told.Help),
        // What had been written is cleared away on a stop, so a writer may miss its folder.
        OperationCanceledException => Stopped,
        IOException or UnauthorizedAccessException when stop.IsCancellationRequested => Stopped,
        UnauthorizedAccessException => new Failed(
            FailureKind.Machine,
            $"It isn't allowed: {failure.Message}",
            "Check the permissions. What was published before is untouched."),
        IOException => new Failed(
            FailureKind.Machine,
            failure.Message,
            "Look for a full disk or a file that another program holds. What was published before is untouched."),
        _ => null,
    };
}
