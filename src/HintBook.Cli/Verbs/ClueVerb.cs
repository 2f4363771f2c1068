using System.Collections.Immutable;
using System.CommandLine;
using HintBook.Ciphers.Making;
using HintBook.Print.Clues;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>clue CODE --as WAY</c>: makes a clue for a code and proves it; <c>clue --ways</c> lists what can be made.</summary>
internal static class ClueVerb
{
    private const int Choices = 3;

    public static Command Make(Terminal terminal)
    {
        var code = new Argument<string?>("CODE") { Description = "What the clue shall give, in figures and letters.", Arity = ArgumentArity.ZeroOrOne };
        var way = new Option<string?>("--as") { Description = "The kind of clue.", HelpName = "WAY" };
        var with = new Option<string[]>("--with")
        {
            Description = "What the way is told: a key, a number, holes.",
            HelpName = "TOLD",
            AllowMultipleArgumentsPerToken = true,
            DefaultValueFactory = _ => [],
        };
        var variant = new Option<int>("--variant") { Description = "Another number chooses other words, filler letters and holes.", HelpName = "N" };
        var language = new Option<string>("--language")
        {
            Description = "The language of a clue that is made of words.",
            DefaultValueFactory = _ => Clues.Languages[0],
        };
        language.AcceptOnlyFromAmong([.. Clues.Languages]);
        var output = Options.Out("A file to print, .svg or .pdf; a mask gets a sheet of its own.");
        var replace = Options.Replace();
        var paper = Options.Paper();
        var format = new Option<string>("--format") { Description = "How to print it.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json");
        var ways = new Option<bool>("--ways") { Description = "List the kinds of clues instead." };
        var verb = new Command("clue", "Make a clue for a code, and prove it.") { code, way, with, variant, language, output, replace, paper, format, ways };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(ways))
                return;
            if (given.GetValue(code) is null)
                given.AddError("A clue for which code? Write it after “clue”.");
            if (given.GetValue(way) is null)
                given.AddError("Which kind of clue? Write “--as” and its name; “hintbook clue --ways” lists them.");
        });
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(ways))
            {
                terminal.Out.Write(ClueText.WriteWays());
                return ExitCode.Fine;
            }

            ImmutableArray<string> told = [.. parsed.GetValue(with)!.SelectMany(each => each.Split(',', StringSplitOptions.RemoveEmptyEntries))];
            var made = Clues.Several(
                parsed.GetValue(code)!, parsed.GetValue(way)!, told, parsed.GetValue(variant), parsed.GetValue(language)!, Choices);
            if (made[0].Attempt is not Attempt.Made one)
                return Refuse(((Attempt.Refused)made[0].Attempt).Why, terminal);
            if (parsed.GetValue(output) is { } file
                && Print(one.Clue, file, parsed.GetValue(replace), Options.PaperOf(parsed.GetValue(paper)!), terminal) is { } why)
                return Refuse(why, terminal);
            var others = made.Skip(1).Select(each => (each.Variant, ((Attempt.Made)each.Attempt).Clue));
            terminal.Out.Write(parsed.GetValue(format) == "json" ? ClueText.WriteJson(one, others) : ClueText.Write(one, others));
            return ExitCode.Fine;
        });
        return verb;
    }

    // Why nothing can be printed, or null when it has been written.
    private static string? Print(MadeClue clue, string path, bool replace, Cards.Paper paper, Terminal terminal)
    {
        if (!CluePrint.Endings.Contains(Path.GetExtension(path), StringComparer.OrdinalIgnoreCase))
            return $"“{path}” has none of the endings that a printed clue can have: {Words.List(CluePrint.Endings, "or")}.";
        var (files, noRoom) = CluePrint.Make(clue, path, paper);
        if (!replace && files.FirstOrDefault(file => SingleFile.IsThere(file.Path)) is { } there)
            return $"“{there.Path}” is there already, so nothing is written. Add --replace to write over it, or name another file.";
        foreach (var file in files)
        {
            SingleFile.Write(file.Path, file.Content().Span);
            terminal.Say($"Written: {file.Path}. Print it at 100 %.");
        }

        return noRoom;
    }

    private static int Refuse(string why, Terminal terminal)
    {
        terminal.Say(why);
        return ExitCode.WrongUsage;
    }
}
