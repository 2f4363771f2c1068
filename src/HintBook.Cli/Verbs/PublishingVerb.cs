using System.CommandLine;
using HintBook.Publishing;

namespace HintBook.Cli.Verbs;

/// <summary>What <c>publish</c> and <c>cards</c> share: their options, progress, and how an outcome is told.</summary>
internal static class PublishingVerb
{
    /// <summary>A verb that writes into the output folder.</summary>
    /// <param name="name">What one types.</param>
    /// <param name="description">What it does, for the help.</param>
    /// <param name="run">The way through the pipeline.</param>
    /// <param name="told">What is said when it is done.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="more">What else may follow the book, and the options with what was read of it; null for nothing.</param>
    public static Command Make(
        string name,
        string description,
        Func<string, PublishOptions, PublishOutcome> run,
        Func<Report, string> told,
        Terminal terminal,
        (Action<Command> Add, Func<ParseResult, PublishOptions, PublishOptions> With)? more = null)
    {
        var book = Options.Book();
        var output = Options.Out("The output folder (default: “published” in the book).");
        var paper = Options.Paper();
        var notes = Options.Notes();
        var date = Options.Date();
        var verb = new Command(name, description) { book, output, paper, date, notes };
        more?.Add(verb);
        verb.SetAction(parsed =>
        {
            using var progress = new Progress(terminal);
            var options = new PublishOptions
            {
                Output = parsed.GetValue(output),
                Paper = Options.PaperOf(parsed.GetValue(paper)!),
                Date = Options.DateOf(parsed.GetValue(date)),
                FilmTools = terminal.FilmTools,
                Say = progress.Say,
                Solving = progress,
            };
            var outcome = run(parsed.GetValue(book)!, more?.With(parsed, options) ?? options);
            progress.Clear();
            return OutcomePrinter.Print(outcome, parsed.GetValue(notes), terminal, told);
        });
        return verb;
    }
}
