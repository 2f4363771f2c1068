using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using HintBook.Books;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Starting.Edition;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>copies BOOK</c>: lists the boxes of an edition, adds some with codes of their own, and takes one out of use.</summary>
internal static class CopiesVerb
{
    public static Command Make(Terminal terminal)
    {
        var book = Options.Book();
        var add = new Option<int?>("--add") { Description = "So many new copies, each with codes of its own.", HelpName = "N" };
        var retire = new Option<string?>("--retire") { Description = "This copy is out of use for good.", HelpName = "SERIAL" };
        var seal = new Option<bool>("--seal") { Description = "Of a sealed book: make its key, and a number for each copy that has none." };
        var reissue = new Option<string?>("--reissue") { Description = "Of a sealed book: this copy gets another card.", HelpName = "SERIAL" };
        var rotate = new Option<bool>("--rotate") { Description = "Of a sealed book: what was saved of its help opens nothing new; all cards work on." };
        var backup = new Option<string?>("--backup") { Description = "Of a sealed book: put its key on a sheet of paper.", HelpName = "FILE.pdf" };
        var restore = new Option<string?>("--restore") { Description = "Of a sealed book: write its key from the letters on paper.", HelpName = "LETTERS" };
        var show = new Option<bool>("--show") { Description = "Show what is each copy's own: its codes and clues." };
        var format = new Option<string>("--format") { Description = "How to print the list.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var verb = new Command("copies", "List the copies of an edition, add some, take one out of use.")
        {
            book, add, retire, seal, reissue, rotate, backup, restore, show, format,
        };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(add) is < 1 or > FreshCopies.Most)
                given.AddError(string.Create(CultureInfo.InvariantCulture, $"--add must be a number from 1 to {FreshCopies.Most}."));
            Option[] acts = [add, retire, seal, reissue, rotate, backup, restore];
            var asked = Array.FindAll(acts, act => given.GetResult(act) is { Implicit: false });
            if (asked.Length > 1)
                given.AddError($"One after the other: {Words.List(asked.Select(act => act.Name))}.");
        });
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(book)!;
            var read = Reader.Read(path);
            if (read.Book is not { } found || read.Findings.AnyError)
                return OutcomePrinter.NotReady("The copies can't be looked at", read.Findings, terminal);
            var copies = new SealedCopies(found, path, terminal);
            if (parsed.GetValue(add) is { } count)
                return Add(found, path, count, copies, terminal);
            if (parsed.GetValue(retire) is { } gone)
                return Retire(found, path, gone, copies, terminal);
            if (parsed.GetValue(seal))
                return copies.Seal();
            if (parsed.GetValue(reissue) is { } serial)
                return copies.Reissue(serial);
            if (parsed.GetValue(rotate))
                return copies.Rotate();
            if (parsed.GetValue(backup) is { } sheet)
                return copies.Backup(sheet);
            if (parsed.GetValue(restore) is { } letters)
                return copies.Restore(letters);
            if (parsed.GetValue(format) == "json")
                terminal.Out.Write(Json(found, parsed.GetValue(show)));
            else
                List(found, copies, parsed.GetValue(show), terminal);
            return ExitCode.Fine;
        });
        return verb;
    }

    private static int Add(Book book, string path, int count, SealedCopies numbers, Terminal terminal)
    {
        var file = Path.Combine(path, Copies.FileName);
        var text = File.Exists(file) ? File.ReadAllText(file) : null;
        if (text is null && !book.Copies.IsEmpty)
            return Refuse($"The copies are in book.yaml. Move them into {Copies.FileName} first, each one's codes under “own” there.", terminal);
        var drawing = FreshCopies.Draw(book, count, RandomNumberGenerator.GetInt32);
        if (drawing is Drawing.Refused { Why: var why })
            return Refuse(why, terminal);
        var copies = ((Drawing.Drawn)drawing).Copies;
        if (CopiesText.With(text, copies) is not { } changed)
        {
            terminal.Out.Write(string.Concat(copies.Select(CopiesText.Written)));
            return Refuse($"Nothing can be put behind the last line of {Copies.FileName}. Write these lines under “copies” yourself.", terminal);
        }

        if (numbers.WhyNot() is { } unready)
            return Refuse(unready, terminal);
        SingleFile.Write(file, changed);
        numbers.Number(copies.Select(copy => copy.Serial));
        terminal.Out.WriteLine($"{Words.Count(copies.Length, "copy", "copies")} added to {TerminalText.Shown(file)}: {copies[0].Serial}"
            + (copies.Length > 1 ? $" to {copies[^1].Serial}" : ""));
        terminal.Say("What is each one's own stands there and opens its box: keep that file with the book, and to yourself.");
        return ExitCode.Fine;
    }

    private static int Retire(Book book, string path, string serial, SealedCopies numbers, Terminal terminal)
    {
        if (Copies.WithSerial(book, serial) is not { } copy)
            return Refuse(Copies.Unknown(book, serial), terminal);
        if (copy.Retired)
            return Refuse($"Copy {serial} is out of use already.", terminal);
        var file = Path.Combine(path, Copies.FileName);
        if (!File.Exists(file) || CopiesText.Retired(File.ReadAllText(file), serial) is not { } changed)
            return Refuse($"The place of copy {serial} wasn't found. Write “retired: true” below it in {Copies.FileName} yourself.", terminal);
        if (numbers.WhyNot() is { } unready)
            return Refuse(unready, terminal);
        SingleFile.Write(file, changed);
        numbers.Retire(serial);
        terminal.Out.WriteLine($"Copy {serial} is out of use. Its serial and its codes aren't given to another one.");
        return ExitCode.Fine;
    }

    private static void List(Book book, SealedCopies numbers, bool show, Terminal terminal)
    {
        var sold = book.Copies.Count(copy => copy.Sold);
        terminal.Out.WriteLine($"“{TerminalText.Shown(book.Title.Value)}”, {Words.Count(book.Copies.Length, "copy", "copies")}, {sold} sold");
        foreach (var copy in book.Copies)
        {
            var state = copy.Retired ? "out of use" : copy.Sold ? "sold" : "here";
            var own = show ? copy.Values.Select(value => $"{value.Name.Value} {value.Value.Value.ReplaceLineEndings(" / ")}") : [];
            string?[] said = [state, numbers.NumberOf(copy), copy.Language?.Value, .. own, show ? numbers.CodeOf(copy) : null, copy.Note?.Value];
            terminal.Out.WriteLine(TerminalText.Shown($"  {copy.Serial.Value}  {string.Join(" · ", said.OfType<string>())}"));
        }

        if (!show && book.Copies.Any(copy => !copy.Values.IsEmpty))
            terminal.Say("--show adds what is each copy's own.");
    }

    private static string Json(Book book, bool show)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartArray();
            foreach (var copy in book.Copies)
            {
                json.WriteStartObject();
                json.WriteString("serial", copy.Serial.Value);
                json.WriteBoolean("sold", copy.Sold);
                json.WriteBoolean("retired", copy.Retired);
                json.WriteString("language", copy.Language?.Value ?? book.Language.Value);
                if (copy.Note is { } note)
                    json.WriteString("note", note.Value);
                if (show)
                {
                    json.WriteStartObject("own");
                    foreach (var value in copy.Values)
                        json.WriteString(value.Name.Value, value.Value.Value);
                    json.WriteEndObject();
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    internal static int Refuse(string why, Terminal terminal)
    {
        terminal.Say(why);
        return ExitCode.BookHasErrors;
    }
}
