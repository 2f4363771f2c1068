using System.Collections.Immutable;
using System.CommandLine;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Spoilers.ReadingLevels;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>check BOOK</c>: says everything that is wrong and makes nothing; <c>check BOOK --table</c> measures its help and its “where am I?”.</summary>
internal static class CheckVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "sarif");
        var notes = Options.Notes();
        var table = new Option<bool>("--table")
        {
            Description = "Print how long each step of help is and how hard to read, and how soon “Where am I?” finds a step, instead.",
        };
        var verb = new Command("check", "Find everything that is wrong with a book; make nothing.") { book, format, notes, table };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(table) && given.GetValue(format) == "sarif")
                given.AddError("The table can be printed as text or as json, not as sarif.");
        });
        verb.SetAction(parsed => (parsed.GetValue(table), Shelf.BooksIn(parsed.GetValue(book)!)) switch
        {
            (true, _) => Table(parsed.GetValue(book)!, parsed.GetValue(format)!, terminal, stop),
            (_, { IsEmpty: false } books) when parsed.GetValue(format) == "text" => RunShelf(books, parsed.GetValue(notes), terminal, stop),
            _ => Run(parsed.GetValue(book)!, parsed.GetValue(format)!, parsed.GetValue(notes), terminal, stop),
        });
        return verb;
    }

    private static int Table(string path, string format, Terminal terminal, CancellationToken stop)
    {
        var (book, read) = Check.Names(path);
        if (book is null || book.Stages.IsEmpty)
            return OutcomePrinter.NotReady("There is no help to measure yet", read, terminal);
        var table = HelpTable.Measure(book);
        var where = CheckedBook.At(path, null, terminal, stop) switch
        {
            Sound sound => WhereaboutsTable.Of(sound.Examined),
            Faulty { Examined: { } examined } => WhereaboutsTable.Of(examined),
            _ => null,
        };
        terminal.Out.Write(format == "json"
            ? HelpTableText.WriteJson(table, json => WhereaboutsTable.WriteJson(json, where))
            : $"{HelpTableText.Write(table)}\n{WhereaboutsTable.Write(where)}");
        return ExitCode.Fine;
    }

    private static int Run(string path, string format, bool withNotes, Terminal terminal, CancellationToken stop)
    {
        var book = CheckedBook.At(path, null, terminal, stop);
        if (format == "text")
            terminal.Give(book.Findings, withNotes);
        terminal.Out.Write(format switch
        {
            "json" => FindingsJson.Write(path, book.Findings, withNotes),
            "sarif" => FindingsSarif.Write(book.Findings, Program.Version, withNotes),
            _ => Told(book, withNotes),
        });
        return book.Findings.AnyError ? ExitCode.BookHasErrors : ExitCode.Fine;
    }

    // Each book by itself, then what an owner would stumble over between the editions of one box.
    private static int RunShelf(ImmutableArray<string> books, bool withNotes, Terminal terminal, CancellationToken stop)
    {
        var looked = books.Select(path => (Name: Path.GetFileName(path), Book: CheckedBook.At(path, null, terminal, stop))).ToArray();
        foreach (var (name, book) in looked)
        {
            terminal.Out.Write($"{TerminalText.Shown(name)}:\n");
            terminal.Give(book.Findings, withNotes);
            terminal.Out.Write($"{Told(book, withNotes)}\n");
        }

        var known = from each in looked let examined = each.Book.Known where examined is not null select ($"{each.Name}/", examined);
        terminal.Give(Findings.Of([.. EditionCheck.Run(known)]), withNotes);
        return Array.Exists(looked, each => each.Book.Findings.AnyError) ? ExitCode.BookHasErrors : ExitCode.Fine;
    }

    // Of a book that isn't there, or can't be read at all, nothing is claimed: its findings say what to do.
    private static string Told(Checked book, bool withNotes)
    {
        if (book is Unreadable)
            return $"{FindingCount.Say(book.Findings, withNotes)}\n";
        var claims = BookClaims.Of(book);
        var counts = FindingCount.Say(book.Findings, withNotes, claims.All(claim => claim.IsProved));
        var told = book switch
        {
            Sound sound => Of(sound.Examined.Book),
            Faulty faulty => Of(faulty.Book),
            _ => throw new InvalidOperationException("A book that could be read is sound or faulty."),
        };
        return $"{told}\n{Verdicts.Write(claims)}";

        string Of(Book read) => $"“{TerminalText.Shown(read.Title.Value)}”, {Words.Count(read.Stages.Length, "stage")}: {counts}";
    }
}
