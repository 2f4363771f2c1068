using System.CommandLine;
using HintBook.Checking;
using HintBook.Print.Papers;
using HintBook.Publishing;
using HintBook.Reading.Sittings;
using HintBook.Sittings;
using HintBook.Sittings.Page;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>sittings BOOK</c>: what people who tried the box tell of its stages and of the whole, and a sheet to note it on.</summary>
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
        var output = FileOf("--out", "A page with plots to write, for yourself: .html.", ".html");
        var sheet = FileOf("--sheet", "A sheet to fill in while somebody tries the box: .pdf.", ".pdf");
        var paper = Options.Paper();
        paper.Description = "The paper of --sheet.";
        var replace = Options.Replace();
        var verb = new Command("sittings", "Say what people who tried the box tell of its stages and of the whole.")
        {
            book, format, runs, output, sheet, paper, replace,
        };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(runs) is < 1 or > MostRuns)
                given.AddError($"--runs takes a number from 1 to {MostRuns}.");
        });
        verb.SetAction(parsed =>
        {
            string[] files = [.. new[] { parsed.GetValue(output), parsed.GetValue(sheet) }.OfType<string>()];
            if (files.Select(file => OwnFile.WhyNotWritten(file, parsed.GetValue(replace))).OfType<string>().FirstOrDefault() is { } why)
            {
                terminal.Say(why);
                return ExitCode.WrongUsage;
            }

            var looked = CheckedBook.At(parsed.GetValue(book)!, null, terminal, stop);
            if (looked.Known is not { } known)
                return OutcomePrinter.NotReady("Nothing can be told of its sittings yet", looked.Findings, terminal);
            var rows = looked.Findings.All.Where(finding => finding.At.File.Path.StartsWith("sittings/", StringComparison.Ordinal)
                || finding.At.File.Path == LetterFile.FileName);
            terminal.Say(Findings.Of([.. rows]), withNotes: false);
            if (parsed.GetValue(sheet) is { } pdf)
                Written(pdf, "print it at 100 %, one for each person or group", terminal, () => SingleFile.Write(pdf, Sheet(known, parsed.GetValue(paper)!)));
            if (parsed.GetValue(sheet) is not null && parsed.GetValue(output) is null)
                return ExitCode.Fine;

            var told = BoxSittings.Of(known.Book, known.Survey, parsed.GetValue(runs) ?? BoxSittings.UsualRuns);
            var letters = BoxLetters.Of(known.Book, known.Addresses);
            if (parsed.GetValue(output) is { } page)
                Written(page, "it names every stage, so keep it to yourself", terminal, () => SingleFile.Write(page, SittingsPage.Write(known.Book, told)));
            else if (parsed.GetValue(format) == "json")
                terminal.Out.Write(SittingsJson.Write(told, letters));
            else
                terminal.Out.Write(SittingsText.Write(known.Book, told) + letters.ToText());
            return ExitCode.Fine;
        });
        return verb;
    }

    private static Option<string?> FileOf(string name, string what, string ending)
    {
        var option = new Option<string?>(name) { Description = what, HelpName = "FILE" };
        option.Validators.Add(given =>
        {
            if (given.Tokens is [var token] && !token.Value.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
                given.AddError($"{name} takes a file that ends in {ending}, and “{TerminalText.Shown(token.Value)}” doesn't.");
        });
        return option;
    }

    private static byte[] Sheet(Examined known, string paper) =>
        SittingSheet.Write(known.Book, known.Theme.WordsIn(known.Book.Language).Words, Options.PaperOf(paper));

    private static void Written(string file, string advice, Terminal terminal, Action write)
    {
        write();
        terminal.Out.WriteLine($"{TerminalText.Shown(file)} is written: {advice}.");
    }
}
