using HintBook.Cards;
using HintBook.Cards.ReadingBack;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>The whole way from a folder of text to a site and printed cards, on one page. It has no logic of its own: each room does its part.</summary>
public static class Pipeline
{
    /// <summary>Publishes a book: the site, the cards and the report, or nothing at all.</summary>
    public static PublishOutcome Publish(string path, PublishOptions options, CancellationToken stop = default) => Guarded(() =>
    {
        var output = options.OutputFor(path);
        var book = CheckedBook.Of(path, output, options.Solving, stop);
        stop.ThrowIfCancellationRequested();
        if (book.Findings.AnyError)
            return new Rejected(book.WithPages().Findings);

        using var folder = OutputFolder.Open(output, path);
        var writer = new OutputWriter(folder.Next, options.WriteFile, options.Say, stop);

        var (pictures, developed, photoFindings) = PictureWork.Of(book, writer, folder.Cache);
        var plan = new SitePlan
        {
            Book = book.Book!,
            Survey = book.Survey!,
            Addresses = book.Addresses!,
            Pictures = pictures,
            Films = FilmWork.Of(book, writer),
        };
        var (pages, pageFindings) = Site.Build(plan, book.Theme!);
        var words = CardWords.Of(book.Theme!.WordsIn(plan.Book.Language).Words, book.Theme.InEnglish);
        var (cards, cardFindings) = CardPrint.Print(plan.Book, plan.Addresses, options.Paper, words);
        var findings = book.Findings.And([.. photoFindings.All, .. FilmWork.Glance(plan.Book, book.Folder!), .. pageFindings.All, .. cardFindings.All]);
        if (findings.AnyError)
            return new Rejected(findings);

        writer.WriteAll("pages", "site", pages);
        writer.WriteAll("offline", "site", Offline.Build(plan.Book, book.Theme!, writer.Kept("site/")));
        writer.WriteAll("cards", "print", cards.Files);
        var (audit, faults) = AuditWork.Of(folder.Next, book);
        findings = findings.And(faults);
        if (findings.AnyError)
            return new Rejected(findings);

        var report = ReportOf(book, folder, writer, pictures.Count, developed, cards.ReadBack, audit, findings);
        writer.Write("report.json", report.ToJson());
        stop.ThrowIfCancellationRequested();
        folder.Swap(OutputFolder.Swapped, writer.Made.Keys, options.Watch);
        return new Published(report with { Findings = findings.And(AddressStore.Keep(book, folder.Root)) }) { Made = new MadeSite(plan, book.Theme!) };
    });

    /// <summary>Prints the cards alone, beside whatever site was published last.</summary>
    public static PublishOutcome PrintCards(string path, PublishOptions options, CancellationToken stop = default) => Guarded(() =>
    {
        var output = options.OutputFor(path);
        var book = CheckedBook.Of(path, output, options.Solving, stop);
        stop.ThrowIfCancellationRequested();
        if (book.Findings.AnyError)
            return new Rejected(book.Findings);

        using var folder = OutputFolder.Open(output, path);
        var writer = new OutputWriter(folder.Next, options.WriteFile, options.Say, stop);
        var (words, language) = book.Theme!.WordsIn(book.Book!.Language);
        var (cards, cardFindings) = CardPrint.Print(book.Book, book.Addresses!, options.Paper, CardWords.Of(words, book.Theme.InEnglish));
        var findings = book.Findings.And([.. language.All, .. cardFindings.All]);
        if (findings.AnyError)
            return new Rejected(findings);

        writer.WriteAll("cards", "print", cards.Files);
        findings = findings.And(AuditWork.OfCards(writer.PathOf("print"), site: null, book));
        if (findings.AnyError)
            return new Rejected(findings);

        stop.ThrowIfCancellationRequested();
        folder.Swap(["print"], writer.Made.Keys, options.Watch);
        var report = ReportOf(book, folder, writer, 0, 0, cards.ReadBack, Audit.AuditReport.Nothing, findings);
        return new Published(report with { Findings = findings.And(AddressStore.Keep(book, folder.Root)) });
    });

    private static Report ReportOf(
        CheckedBook book, OutputFolder folder, OutputWriter writer, int photos, int developed, ReadBack cards, Audit.AuditReport audit, Findings findings) => new()
        {
            Book = book.Book!.Title.Value,
            Folder = folder.Root,
            Pages = writer.Made.Keys.Count(file => file.StartsWith("site/", StringComparison.Ordinal) && file.EndsWith(".html", StringComparison.Ordinal)),
            Photos = photos,
            Developed = developed,
            SiteBytes = writer.Made.Where(file => file.Key.StartsWith("site/", StringComparison.Ordinal)).Sum(file => file.Value),
            Cards = cards,
            Audit = audit,
            Findings = findings,
        };

    // Whatever the machine does, the user gets a sentence; the last good publish is still whole then.
    internal static PublishOutcome Guarded(Func<PublishOutcome> work)
    {
        try
        {
            return work();
        }
        catch (AggregateException several) when (Told(several.Flatten().InnerExceptions[0]) is { } outcome)
        {
            return outcome;
        }
        catch (Exception failure) when (Told(failure) is { } outcome)
        {
            return outcome;
        }
    }

    private static Failed? Told(Exception failure) => failure switch
    {
        MachineFailure told => new Failed(told.Kind, told.Message, told.Help),
        OperationCanceledException => new Failed(FailureKind.Stopped, "Stopped.", "What was published before is untouched."),
        UnauthorizedAccessException => new Failed(FailureKind.Machine, $"It isn't allowed: {failure.Message}", "Check the permissions. What was published before is untouched."),
        IOException => new Failed(FailureKind.Machine, failure.Message, "Look for a full disk or a file that another program holds. What was published before is untouched."),
        _ => null,
    };
}
