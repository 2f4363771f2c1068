using System.CommandLine;
using HintBook.Reading.Sittings;
using HintBook.Sittings;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>sittings BOOK</c>: what people who tried the box tell of its stages and of the whole.</summary>
internal static class SittingsVerb
{
    private const int MostRuns = 10_000_000;

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var runs = new Option<int?>("--runs")
        {
            Description = $"How often the box is opened by chance (default: {BoxSittings.UsualRuns}).",
            HelpName = "NUMBER",
        };
        var verb = new Command("sittings", "Say what people who tried the box tell of its stages and of the whole.") { book, format, runs };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(runs) is < 1 or > MostRuns)
                given.AddError($"--runs takes a number from 1 to {MostRuns}.");
        });
        verb.SetAction(parsed =>
        {
            var looked = CheckedBook.At(parsed.GetValue(book)!, null, terminal, stop);
            if (looked.Known is not { } known)
                return OutcomePrinter.NotReady("Nothing can be told of its sittings yet", looked.Findings, terminal);
            var rows = looked.Findings.All.Where(finding => finding.At.File.Path.StartsWith("sittings/", StringComparison.Ordinal)
                || finding.At.File.Path == LetterFile.FileName);
            terminal.Say(Findings.Of([.. rows]), withNotes: false);
            var told = BoxSittings.Of(known.Book, known.Survey, parsed.GetValue(runs) ?? BoxSittings.UsualRuns);
            var letters = BoxLetters.Of(known.Book, known.Addresses);
            terminal.Out.Write(parsed.GetValue(format) == "json"
                ? SittingsJson.Write(told, letters)
                : SittingsText.Write(known.Book, told) + letters.ToText());
            return ExitCode.Fine;
        });
        return verb;
    }
}
