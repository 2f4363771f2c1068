using System.Collections.Immutable;
using System.CommandLine;
using HintBook.Audit;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>audit FOLDER</c>: reads a published site again, as a stranger would, against what its book says may be known where.</summary>
internal static class AuditVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The output folder of a publish, of a book or a shelf." };
        var book = new Option<string?>("--book")
        {
            Description = "The folder of the book or the shelf (default: the one that FOLDER was published from by itself).",
            HelpName = "BOOK",
        };
        var verb = new Command("audit", "Read a published site again and say what is wrong with it.") { folder, book };
        verb.SetAction(parsed => Audit(parsed.GetValue(folder)!, parsed.GetValue(book), terminal, stop));
        return verb;
    }

    private static int Audit(string folder, string? path, Terminal terminal, CancellationToken stop)
    {
        if (!Directory.Exists(Path.Combine(folder, "site")))
        {
            terminal.Say($"There is no published site in “{folder}”: it has no folder “site”.");
            return ExitCode.WrongUsage;
        }

        var published = Path.GetFullPath(folder);
        var from = path ?? HomeOf(published);
        var books = Shelf.BooksIn(from);
        if (path is null && !IsHome(from, books, published))
        {
            terminal.Say($"It can't be seen which book “{folder}” was published from. Name the book's folder with --book.");
            return ExitCode.WrongUsage;
        }

        if (books.IsEmpty)
            return One(from, PublishedSite.OfBook(published), terminal, stop);

        var exit = ExitCode.Fine;
        foreach (var book in books)
        {
            var name = Path.GetFileName(book);
            terminal.Out.WriteLine($"{TerminalText.Shown(name)}:");
            exit = Math.Max(exit, One(book, PublishedSite.OnShelf(published, name), terminal, stop));
        }

        return exit;
    }

    // A book is published into itself; a book on a shelf into “books” in the shelf's output.
    private static string HomeOf(string published)
    {
        var above = Path.Combine(published, "..");
        var onShelf = Path.GetFullPath(Path.Combine(published, "..", "..", "..", Path.GetFileName(Path.TrimEndingDirectorySeparator(published))));
        var isOnShelf = Path.GetFileName(Path.GetFullPath(above)) == "books" && File.Exists(Path.Combine(onShelf, "book.yaml"));
        return isOnShelf ? onShelf : above;
    }

    private static bool IsHome(string folder, ImmutableArray<string> books, string published) => books.IsEmpty
        ? File.Exists(Path.Combine(folder, "book.yaml"))
        : books.Any(book => Directory.Exists(PublishedSite.OnShelf(published, Path.GetFileName(book)).Site));

    private static int One(string path, PublishedSite published, Terminal terminal, CancellationToken stop)
    {
        if (!Directory.Exists(published.Site))
        {
            terminal.Say($"“{path}” hasn't been published here: there is no folder “{published.Site}”. Publish again.");
            return ExitCode.BookHasErrors;
        }

        var looked = CheckedBook.At(path, published.Output, terminal, stop);
        if (looked.Known is not { } book)
            return OutcomePrinter.NotReady("Without its book the site can't be audited", looked.Findings, terminal);

        var (report, faults) = FinishedAudit.Run(published, book, looked.Findings);
        var findings = Findings.Of(faults);
        terminal.Give(findings, withNotes: false);
        terminal.Out.WriteLine(Told(report, findings));
        return findings.AnyError ? ExitCode.BookHasErrors : ExitCode.Fine;
    }

    private static string Told(AuditReport report, Findings findings) =>
        $"{Words.Count(report.Files, "file")}, {Words.Count(report.Pages, "page")} read, {Words.Count(report.Links, "link")} followed: "
        + FindingCount.Say(findings, withNotes: false);
}
