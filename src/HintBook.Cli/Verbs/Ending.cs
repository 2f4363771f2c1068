using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>Prints how a publish ended, and gives its exit code.</summary>
internal static class Ending
{
    public static int Of(Outcome outcome, bool withNotes, Terminal terminal, Func<Report, string> told)
    {
        switch (outcome)
        {
            case Published(var report):
                terminal.Error.Write(FindingsText.Write(report.Findings, withNotes, terminal.ColourError));
                terminal.Out.Write(told(report));
                return ExitCode.Fine;
            case Rejected(var findings):
                terminal.Error.Write(FindingsText.Write(findings, withNotes, terminal.ColourError));
                terminal.Error.WriteLine($"Nothing was published: {Tally.Of(findings, withNotes)}");
                return ExitCode.BookHasErrors;
            case Failed failed:
                terminal.Error.WriteLine(failed.Message);
                terminal.Error.WriteLine(failed.Help);
                return failed.Kind == FailureKind.Usage ? ExitCode.WrongUsage : ExitCode.MachineFailed;
            default:
                throw new InvalidOperationException("A publish ends in no other way.");
        }
    }
}
