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
        var folder = new Argument<string>("FOLDER") { Description = "The output folder of a publish." };
        var book = new Option<string?>("--book") { Description = "The book's folder (default: the one that FOLDER lies in).", HelpName = "BOOK" };
        var verb = new Command("audit", "Read a published site again and say what is wrong with it.") { folder, book };
        verb.SetAction(parsed => Audit(parsed.GetValue(folder)!, parsed.GetValue(book), terminal, stop));
        return verb;
    }

    private static int Audit(string folder, string? path, Terminal terminal, CancellationToken stop)
    {
        if (!Directory.Exists(Path.Combine(folder, "site")))
        {
            terminal.Error.WriteLine($"There is no published site in “{folder}”: it has no folder “site”.");
            return ExitCode.WrongUsage;
        }

        var looked = CheckedBook.At(path ?? Path.Combine(folder, ".."), folder, terminal, stop);
        if (CheckedBook.ExaminedOf(looked) is not { } book)
            return OutcomePrinter.NotReady("Without its book the site can't be audited", looked.Findings, terminal);

        var (report, faults) = FinishedAudit.Run(PublishedSite.OfBook(folder), book, looked.Findings);
        var findings = Findings.Of(faults);
        terminal.Out.Write(FindingsText.Write(findings, withNotes: false, terminal.ColourOut));
        terminal.Out.WriteLine(Told(report, findings));
        return findings.AnyError ? ExitCode.BookHasErrors : ExitCode.Fine;
    }

    private static string Told(AuditReport report, Findings findings) =>
        $"{Words.Count(report.Files, "file")}, {Words.Count(report.Pages, "page")} read, {Words.Count(report.Links, "link")} followed: "
        + FindingCount.Say(findings, withNotes: false);
}
