using System.CommandLine;
using HintBook.Bench;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism.Tours;

namespace HintBook.Cli.Verbs;

/// <summary><c>testwalk BOOK</c>: the shortest series of handlings that tests everything once and ends as shipped, on the screen or on paper.</summary>
internal static class TestWalkVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var (copy, output, replace, paper) = (BenchVerb.Copy(), BenchVerb.Out(), Options.Replace(), Options.Paper());
        var format = BenchVerb.Format();
        var (memory, time) = (SolvingVerb.Memory(), SolvingVerb.Time());
        var verb = new Command("testwalk", "Plan the shortest series of handlings that tests every move, lock and latch once.")
        {
            book, copy, format, time, memory, output, replace, paper,
        };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(book)!;
            var file = parsed.GetValue(output);
            if (BenchVerb.WhyNotWritten(file, parsed.GetValue(replace)) is { } why)
                return BenchVerb.Refuse(why, terminal);
            var read = Check.Names(path);
            if (read.Book is not { } found)
                return OutcomePrinter.NotReady("No walk can be planned yet", read.Findings, terminal);
            if (!BenchVerb.Find(found, parsed.GetValue(copy), out var of, out var unknown))
                return BenchVerb.Refuse(unknown, terminal);
            found = of is null ? found : found.As(of);

            var walk = TestWalk.Plan(found, SolvingVerb.LimitsOf(parsed.GetValue(memory), parsed.GetValue(time)), stop);
            if (file is not null && walk.Steps.IsEmpty)
                terminal.Say("No sheet is written, since there is nothing to walk through.");
            else if (file is not null)
            {
                var looked = CheckedBook.At(path, null, terminal, stop);
                if (looked.Known is not { } known)
                    return OutcomePrinter.NotReady("The walk can't be put on paper yet", looked.Findings, terminal);
                BenchVerb.Write(file, WalkSheet.Write(known, walk, Options.PaperOf(parsed.GetValue(paper)!), of), terminal);
            }

            terminal.Out.Write(parsed.GetValue(format) == "json"
                ? TestWalkJson.Write(found, walk, of?.Serial.Value)
                : TestWalkText.Write(found, walk, of?.Serial.Value));
            return stop.IsCancellationRequested ? ExitCode.MachineFailed : walk.Steps.IsEmpty ? ExitCode.BookHasErrors : ExitCode.Fine;
        });
        return verb;
    }
}
