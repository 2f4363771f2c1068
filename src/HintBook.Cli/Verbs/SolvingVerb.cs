using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>What <c>solve</c> and <c>reset</c> share: limits, progress, and how an answer is told.</summary>
internal static class SolvingVerb
{
    // A year; a terabyte.
    private const int MostSeconds = 31_536_000;
    private const int MostMebibytes = 1_048_576;

    /// <summary>A verb that asks the mechanism something.</summary>
    /// <typeparam name="TAnswer">What comes of it.</typeparam>
    /// <param name="name">What one types.</param>
    /// <param name="description">What it does, for the help.</param>
    /// <param name="ask">The question.</param>
    /// <param name="findings">What an answer has to tell the author.</param>
    /// <param name="refuted">Whether the answer refutes a claim: the verb then ends as if the book had errors.</param>
    /// <param name="told">The answer as text or JSON.</param>
    /// <param name="terminal">Where it is said.</param>
    /// <param name="stop">Ends the search; what was proved until then is said.</param>
    public static Command Make<TAnswer>(
        string name,
        string description,
        Func<Book, SolveLimits, IProgress<SolveProgress>, TAnswer> ask,
        Func<TAnswer, ImmutableArray<Finding>> findings,
        Func<TAnswer, bool> refuted,
        Func<Book, TAnswer, bool, string> told,
        Terminal terminal,
        CancellationToken stop)
    {
        var book = Options.Book();
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var (memory, time) = (Memory(), Time());
        var notes = Options.Notes();
        var verb = new Command(name, description) { book, format, memory, time, notes };
        verb.SetAction(parsed =>
        {
            var read = Check.Names(parsed.GetValue(book)!);
            if (read.Book is null)
                return OutcomePrinter.NotReady("The mechanism can't be looked at yet", read.Findings, terminal);

            using var progress = new Progress(terminal);
            var limits = LimitsOf(parsed.GetValue(memory), parsed.GetValue(time));
            var answer = ask(read.Book, limits, progress);
            progress.Clear();
            var all = Findings.Of(findings(answer));
            terminal.Say(all, parsed.GetValue(notes));
            terminal.Out.Write(told(read.Book, answer, parsed.GetValue(format) == "json"));
            return stop.IsCancellationRequested ? ExitCode.MachineFailed : all.AnyError || refuted(answer) ? ExitCode.BookHasErrors : ExitCode.Fine;
        });
        return verb;
    }

    /// <summary>How much memory may be taken.</summary>
    public static Option<int> Memory()
    {
        var memory = new Option<int>("--memory") { Description = "How much memory the states may take.", HelpName = "MIB", DefaultValueFactory = _ => 1024 };
        memory.Validators.Add(result => Between(1, MostMebibytes, result));
        return memory;
    }

    /// <summary>How long it may take.</summary>
    public static Option<double?> Time()
    {
        var time = new Option<double?>("--time") { Description = "How long it may take; without it as long as it takes.", HelpName = "SECONDS" };
        time.Validators.Add(result => Between(0.001, MostSeconds, result));
        return time;
    }

    /// <summary>The limits that these options set.</summary>
    public static SolveLimits LimitsOf(int memory, double? time) =>
        SolveLimits.Of(memory, time is { } seconds ? TimeSpan.FromSeconds(seconds) : TimeSpan.MaxValue);

    // What is no number at all has been told already.
    private static void Between(double least, double most, OptionResult result)
    {
        if (result.Tokens is not [var given] || !double.TryParse(given.Value, CultureInfo.InvariantCulture, out var number))
            return;
        if (!(number >= least && number <= most))
            result.AddError(string.Create(CultureInfo.InvariantCulture, $"{result.Option.Name} must be a number from {least} to {most}."));
    }
}
