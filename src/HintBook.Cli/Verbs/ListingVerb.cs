using System.CommandLine;
using HintBook.Checking;
using HintBook.Listing;
using HintBook.Publishing;
using HintBook.Replying;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>listing BOOK</c>: describes the box for a shop or a fair, without spoiling anything.</summary>
internal static class ListingVerb
{
    private const string UsualFolder = "listing";
    private const string AnyName = "listing.md";

    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var book = Options.Book();
        var output = Options.Out($"The folder to write to (default: {UsualFolder} in the book's folder).");
        var replace = Options.Replace();
        var language = new Option<string?>("--language") { Description = "In this language alone.", HelpName = "TAG" };
        var verb = new Command("listing", "Describe the box for a shop or a fair, spoiling nothing.") { book, output, language, replace };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(book)!;
            var folder = parsed.GetValue(output) ?? Path.Combine(path, UsualFolder);
            if (OwnFile.BesideSite(Path.Combine(folder, AnyName)) is { } beside)
            {
                terminal.Say(beside);
                return ExitCode.WrongUsage;
            }

            var looked = CheckedBook.At(path, null, terminal, stop);
            if (looked is not Sound { Examined: var known })
                return OutcomePrinter.NotReady("The box can't be described yet", looked.Findings, terminal);
            var languages = LetterWriter.LanguagesOf(known.Book);
            if (parsed.GetValue(language) is { } tag && !languages.Any(each => LetterWriter.Same(each, tag)))
            {
                terminal.Say(LetterWriter.NotIn(languages, tag));
                return ExitCode.WrongUsage;
            }

            var made = ListingFolder.Make(known, parsed.GetValue(language));
            if (made.Files.IsEmpty)
                return OutcomePrinter.NotReady("Nothing was written, since the description would spoil something", made.Findings, terminal);
            (string Path, ReadOnlyMemory<byte> Bytes)[] files = [.. made.Files.Select(file => (Path.Combine(folder, file.Name), file.Content))];
            if (OwnFile.WhyAllKept(files, parsed.GetValue(replace)) is { } why)
            {
                terminal.Say(why);
                return ExitCode.WrongUsage;
            }

            foreach (var (file, bytes) in files)
            {
                SingleFile.Write(file, bytes.Span);
                terminal.Out.WriteLine(TerminalText.Shown(file));
            }

            return ExitCode.Fine;
        });
        return verb;
    }
}
