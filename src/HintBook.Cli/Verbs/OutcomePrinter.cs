using HintBook.Publishing;
using HintBook.Publishing.Unchanged;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>Prints how a verb ended, and gives its exit code.</summary>
internal static class OutcomePrinter
{
    /// <summary>A book with mistakes that must be mended before what was asked for can be done.</summary>
    /// <param name="what">What can't be done, as the start of a sentence.</param>
    /// <param name="findings">The mistakes.</param>
    /// <param name="terminal">Where it is said.</param>
    public static int NotReady(string what, Findings findings, Terminal terminal)
    {
        terminal.Say(findings, withNotes: false);
        terminal.Say($"{what}: {FindingCount.Say(findings, withNotes: false)}");
        return ExitCode.BookHasErrors;
    }

    /// <summary>How a publish ended.</summary>
    public static int Print(PublishOutcome outcome, bool withNotes, Terminal terminal, Func<Report, string> told)
    {
        switch (outcome)
        {
            case Published(var report):
                if (report.Unchanged is not null && report.Findings.Shown(withNotes).Any())
                    terminal.Say("Said at the last publish, of the same files:");
                terminal.Say(report.Findings, withNotes);
                terminal.Out.Write(told(report));
                return ExitCode.Fine;
            case Rejected(var findings):
                terminal.Say(findings, withNotes);
                terminal.Say($"Nothing was published: {FindingCount.Say(findings, withNotes)}");
                return ExitCode.BookHasErrors;
            case Failed failed:
                terminal.Say(failed.Message);
                terminal.Say(failed.Help);
                return failed.Kind == FailureKind.Usage ? ExitCode.WrongUsage : ExitCode.MachineFailed;
            default:
                throw new InvalidOperationException("A publish ends in no other way.");
        }
    }

    /// <summary>What was compared where nothing had changed.</summary>
    public static string Say(Compared compared) =>
        $"{Words.Count(compared.Read, "file")} of the book and {Words.Count(compared.Made, "file")} made of it: each is as it was";
}
