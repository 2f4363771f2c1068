using System.CommandLine;
using HintBook.Checking;
using HintBook.Ciphers;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>prove BOOK</c>: works every code out from its clue, step by step; <c>prove --ways</c> lists the ways of reading.</summary>
internal static class ProveVerb
{
    public static Command Make(Terminal terminal)
    {
        var book = Options.Book();
        book.Arity = ArgumentArity.ZeroOrOne;
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var ways = new Option<bool>("--ways") { Description = "List the ways of reading instead, each with its source." };
        var notes = Options.Notes();
        var verb = new Command("prove", "Work every code out from its clue, step by step.") { book, format, ways, notes };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(book) is null && !given.GetValue(ways))
                given.AddError("Which book? Write its folder after “prove”.");
        });
        verb.SetAction(parsed =>
        {
            if (!parsed.GetValue(ways))
                return Prove(parsed.GetValue(book)!, parsed.GetValue(format) == "json", parsed.GetValue(notes), terminal);
            terminal.Out.Write(ProofText.WriteWays());
            return ExitCode.Fine;
        });
        return verb;
    }

    private static int Prove(string path, bool asJson, bool withNotes, Terminal terminal)
    {
        var (book, read) = Check.Names(path);
        if (book is null)
            return OutcomePrinter.NotReady("The codes can't be looked at yet", read, terminal);

        var proofs = Proofs.Prove(book);
        var findings = Findings.Of(proofs.Findings);
        terminal.Say(findings, withNotes);
        terminal.Out.Write(asJson ? ProofJson.Write(proofs) : ProofText.Write(book, proofs, withNotes));
        return findings.AnyError ? ExitCode.BookHasErrors : ExitCode.Fine;
    }
}
