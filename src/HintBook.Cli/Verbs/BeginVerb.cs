using System.CommandLine;
using HintBook.Photos.Films;
using HintBook.Starting;
using HintBook.Starting.Drafting;

namespace HintBook.Cli.Verbs;

/// <summary><c>begin FOLDER</c>: starts a book from a small one with comments that teach, from the example, or from a film.</summary>
internal static class BeginVerb
{
    public static Command Make(Terminal terminal)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder to make." };
        var title = new Option<string?>("--title") { Description = "What the box is called.", HelpName = "TITLE" };
        var maker = new Option<string?>("--maker") { Description = "Who makes it.", HelpName = "NAME" };
        var language = new Option<string?>("--language")
        {
            Description = $"The language of the book, as its short tag: {BookLanguages.Tags}. Any other tag will do; HintBook's own words are English then.",
            HelpName = "TAG",
        };
        language.Validators.Add(given =>
        {
            if (given.Tokens is [var token] && !BookWords.IsLanguage(token.Value))
                given.AddError($"“{token.Value}” is no tag of a language. Write it in short: --language de. {BookLanguages.Known}");
        });
        var like = new Option<string?>("--like") { Description = "Copy this example instead, photos and all." };
        like.AcceptOnlyFromAmong(ExampleBook.Name);
        var film = new Option<string?>("--from")
        {
            Description = "A film of the solution: the stages are drafted from the captions that lie beside it (.vtt or .srt).",
            HelpName = "FILM",
        };
        var verb = new Command("begin", "Start a new book: three stages with comments that teach, the example, or stages drafted from a film.")
        {
            folder, title, maker, language, like, film,
        };
        verb.Validators.Add(given =>
        {
            if (given.GetValue(like) is not null && given.GetValue(film) is not null)
                given.AddError("Begin with an example or with a film: write “--like” or “--from”, not both.");
            if (given.GetValue(like) is not null && given.GetValue(language) is not null)
                given.AddError("The example is written in English. Leave “--language” out.");
            if (given.GetValue(film) is not null && (given.GetValue(title) ?? given.GetValue(maker) ?? given.GetValue(language)) is not null)
                given.AddError("With “--from” the film's name gives the title and its captions the language. Write the rest into book.yaml afterwards.");
        });
        verb.SetAction(parsed => Begin(
            parsed.GetValue(folder)!,
            new(parsed.GetValue(title), parsed.GetValue(maker), parsed.GetValue(language)),
            parsed.GetValue(like) is not null,
            parsed.GetValue(film),
            terminal));
        return verb;
    }

    private static int Begin(string folder, BookWords words, bool likeExample, string? film, Terminal terminal)
    {
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            terminal.Say($"“{folder}” exists and isn't empty, so nothing is written there. Name a new folder.");
            return ExitCode.WrongUsage;
        }

        if (film is not null)
            return BeginWith(film, folder, terminal);

        if (likeExample)
        {
            AllOrNothing(folder, () => ExampleBook.In(folder, words));
        }
        else
        {
            words = BookQuestions.Ask(words, terminal);
            AllOrNothing(folder, () => NewBook.In(folder, NewBook.Of(words, sample: true)));
            if (words.Language is { } language)
                BookLanguages.Told(language).ToList().ForEach(terminal.Say);
        }

        terminal.Out.WriteLine(
            $"""
            Created a new book in {folder}.
              Write in   {Path.Combine(folder, "book.yaml")} and the files in {Path.Combine(folder, "stages")}
              Check it   hintbook check {Quoted(folder)}
              Publish    hintbook publish {Quoted(folder)}
              Cards      need an address: in book.yaml, take away the # before “address:” and write yours
            """);
        return ExitCode.Fine;
    }

    private static int BeginWith(string film, string folder, Terminal terminal)
    {
        if (!File.Exists(film))
        {
            terminal.Say($"There is no film “{film}”.");
            return ExitCode.WrongUsage;
        }

        if (CaptionsBeside(film) is not { } captions)
        {
            terminal.Say($"Beside “{film}” lie no captions: {Path.GetFileNameWithoutExtension(film)}.en.vtt or .srt, with your language for “en”.");
            return ExitCode.WrongUsage;
        }

        if (FilmParts.SpokenIn(captions, terminal) is not { } spoken)
            return ExitCode.WrongUsage;
        var steps = FilmEnd.Within(FilmSteps.Of(spoken.Items, [], LanguageOf(captions)), FilmFile.LengthOf(film));
        foreach (var sentence in spoken.Says.Concat(steps.Says))
            terminal.Say(sentence);
        if (steps.Items.IsEmpty)
            return ExitCode.WrongUsage;
        var (files, stages, things) = FilmBook.Of(Path.GetFileName(film), LanguageOf(captions), spoken.Items, steps.Items);
        AllOrNothing(folder, () =>
        {
            NewBook.In(folder, files);
            Directory.CreateDirectory(Path.Combine(folder, "clips"));
            File.Copy(film, Path.Combine(folder, "clips", Path.GetFileName(film)));
        });
        terminal.Out.Write($"Created a new book in {folder}.\n{DraftVerb.Told(stages, things)}");
        return ExitCode.Fine;
    }

    // A full disk leaves no half of a book: what was written is deleted, since the folder held nothing before.
    private static void AllOrNothing(string folder, Action write)
    {
        var wasThere = Directory.Exists(folder);
        try
        {
            write();
        }
        catch
        {
            if (!wasThere)
                DeleteIfThere(folder);
            else
                foreach (var entry in Directory.GetFileSystemEntries(folder))
                    DeleteIfThere(entry);
            throw;
        }
    }

    private static void DeleteIfThere(string path)
    {
        if (Directory.Exists(path))
            Directory.Delete(path, recursive: true);
        else
            File.Delete(path);
    }

    // Some systems don't tell “Film” from “film”. Where both lie there, that of just this name is meant.
    private static string? CaptionsBeside(string film)
    {
        var start = Path.GetFileNameWithoutExtension(film) + ".";
        return Directory.EnumerateFiles(Path.GetDirectoryName(Path.GetFullPath(film))!)
            .Where(file => Path.GetFileName(file).StartsWith(start, StringComparison.OrdinalIgnoreCase))
            .Where(file => Path.GetExtension(file).ToLowerInvariant() is ".vtt" or ".srt")
            .OrderByDescending(file => Path.GetFileName(file).StartsWith(start, StringComparison.Ordinal))
            .ThenBy(file => file, StringComparer.Ordinal)
            .FirstOrDefault();
    }

    // “solution.de.vtt” is German; English where nothing is said.
    private static string LanguageOf(string captions) =>
        Path.GetFileName(captions).Split('.') is [_, .., { Length: 2 or 3 } language, _] && language.All(char.IsAsciiLetter)
            ? language.ToLowerInvariant()
            : "en";

    private static string Quoted(string path) => path.Contains(' ') ? $"\"{path}\"" : path;
}
