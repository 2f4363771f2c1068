using System.CommandLine;
using HintBook.Checking;
using HintBook.Replying;
using HintBook.Reading.Sittings;

namespace HintBook.Cli.Verbs;

/// <summary><c>letter BOOK PAGE</c>: answers an owner who is stuck with one step of help.</summary>
internal static class LetterVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var page = new Argument<string?>("PAGE")
        {
            Description = "The page that the owner names, or its stage's id or title.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var subject = new Option<string?>("--subject")
        {
            Description = "The letter or its subject: page, language and copy are read from it.",
            HelpName = "TEXT",
        };
        var step = new Option<string>("--step") { Description = "How much help to give.", DefaultValueFactory = _ => LetterSteps.Names[0] };
        step.AcceptOnlyFromAmong(LetterSteps.Names);
        var copy = new Option<string?>("--copy") { Description = "The owner's copy: an answer says what is its own.", HelpName = "SERIAL" };
        var language = new Option<string?>("--language") { Description = "The language to answer in.", HelpName = "TAG" };
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var note = new Option<bool>("--note") { Description = $"Note page and day in the book's {LetterFile.FileName}." };
        var date = Options.Date($"The day to note, as {LetterFile.DateForm}.");
        var verb = new Command("letter", "Answer an owner who is stuck, with one step of help.")
        {
            book, page, subject, step, copy, language, format, note, date,
        };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(page) is null && given.GetValue(subject) is null)
                given.AddError("Name the page that the letter is about, or give its subject: --subject \"…\".");
            if (given.GetValue(date) is not null && !given.GetValue(note))
                given.AddError("--date goes with --note.");
        });
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(book)!;
            var looked = CheckedBook.At(path, null, terminal, stop);
            if (looked is not Sound { Examined: var known })
                return OutcomePrinter.NotReady("No letter can be answered yet", looked.Findings, terminal);
            var answer = LetterDesk.Answer(known, new()
            {
                Page = parsed.GetValue(page),
                Text = parsed.GetValue(subject),
                Step = LetterSteps.Named(parsed.GetValue(step)) ?? LetterStep.Nudge,
                Serial = parsed.GetValue(copy),
                Language = parsed.GetValue(language),
            });
            if (answer is not LetterAnswer.Written(var letter, var remarks))
            {
                terminal.Say(((LetterAnswer.Refused)answer).Why);
                return ExitCode.WrongUsage;
            }

            terminal.Out.Write(parsed.GetValue(format) == "json" ? LetterJson.Write(letter) : letter.Text);
            foreach (var remark in remarks)
                terminal.Say(remark);
            return parsed.GetValue(note) ? Note(path, letter, Options.DateOf(parsed.GetValue(date)), terminal) : ExitCode.Fine;
        });
        return verb;
    }

    private static int Note(string book, Letter letter, DateOnly? date, Terminal terminal)
    {
        if (letter.Page is not { } page)
        {
            terminal.Say("Nothing was noted, since the letter names no page.");
            return ExitCode.Fine;
        }

        if (LetterNotes.Append(book, page, date) is { } why)
        {
            terminal.Say(why.Why);
            return why.IsOfTheMachine ? ExitCode.MachineFailed : ExitCode.BookHasErrors;
        }

        terminal.Say($"Noted in {LetterFile.FileName}.");
        return ExitCode.Fine;
    }
}
