using System.CommandLine;
using HintBook.Bench;
using HintBook.Books;

namespace HintBook.Cli.Verbs;

/// <summary><c>packing BOOK</c>: what must be in the box and how it stands before it is sent away, on the screen or on paper.</summary>
internal static class PackingVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var (copy, output, replace, paper) = (BenchVerb.Copy(), BenchVerb.Out(), Options.Replace(), Options.Paper());
        var format = BenchVerb.Format();
        var verb = new Command("packing", "List what goes into the parcel, where, and how everything stands.") { book, copy, format, output, replace, paper };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(book)!;
            var file = parsed.GetValue(output);
            if (BenchVerb.WhyNotWritten(file, parsed.GetValue(replace)) is { } why)
                return BenchVerb.Refuse(why, terminal);
            var looked = CheckedBook.At(path, null, terminal, stop);
            if (looked.Known is not { } known)
                return OutcomePrinter.NotReady("Nothing can be packed yet", looked.Findings, terminal);
            if (!BenchVerb.Find(known.Book, parsed.GetValue(copy), out var of, out var unknown))
                return BenchVerb.Refuse(unknown, terminal);

            var list = PackingSheet.List(known, of);
            if (file is not null)
                BenchVerb.Write(file, PackingSheet.Write(known, Options.PaperOf(parsed.GetValue(paper)!), of), terminal);
            terminal.Out.Write(parsed.GetValue(format) == "json"
                ? PackingText.WriteJson(list, of?.Serial.Value)
                : PackingText.Write(of is null ? known.Book : known.Book.As(of), list, of?.Serial.Value));
            if (PackingText.Problem(list) is not { } problem)
                return ExitCode.Fine;
            terminal.Say(problem);
            return ExitCode.BookHasErrors;
        });
        return verb;
    }
}
