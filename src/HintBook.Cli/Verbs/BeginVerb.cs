using System.CommandLine;
using HintBook.Photos.Films;
using HintBook.Publishing;
using HintBook.Starting;
using HintBook.Starting.Drafting;

namespace HintBook.Cli.Verbs;

/// <summary><c>begin FOLDER</c>: starts a book from a small one with comments that teach.</summary>
internal static class BeginVerb
{
    public static Command Make(Terminal terminal)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder to make." };
        var film = new Option<string?>("--from")
        {
            Description = "A film of the solution: the stages are drafted from the captions that lie beside it (.vtt or .srt).",
            HelpName = "FILM",
        };
        var verb = new Command("begin", "Start a new book: three stages with comments that teach, or stages drafted from a film.") { folder, film };
        verb.SetAction(parsed => Begin(parsed.GetValue(folder)!, parsed.GetValue(film), terminal));
        return verb;
    }

    private static int Begin(string folder, string? film, Terminal terminal)
    {
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            terminal.Say($"“{folder}” exists and isn't empty, so nothing is written there. Name a new folder.");
            return ExitCode.WrongUsage;
        }

        if (film is not null)
            return BeginWith(film, folder, terminal);

        NewBook.In(folder);
        terminal.Out.WriteLine(
            $"""
            A new book stands in {folder}.
              Write in   {Path.Combine(folder, "book.yaml")} and the files in {Path.Combine(folder, "stages")}
              Check it   hintbook check {Quoted(folder)}
              Publish    hintbook publish {Quoted(folder)}
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
        foreach (var (path, text) in files)
            SingleFile.Write(Path.Combine(folder, path), text);
        File.Copy(film, Path.Combine(folder, "clips", Path.GetFileName(film)));
        terminal.Out.Write($"A new book stands in {folder}.\n{DraftVerb.Told(stages, things)}");
        return ExitCode.Fine;
    }

    private static string? CaptionsBeside(string film) =>
        Directory.EnumerateFiles(Path.GetDirectoryName(Path.GetFullPath(film))!, Path.GetFileNameWithoutExtension(film) + ".*")
            .Where(file => Path.GetExtension(file).ToLowerInvariant() is ".vtt" or ".srt")
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();

    // “solution.de.vtt” is German; English where nothing is said.
    private static string LanguageOf(string captions) =>
        Path.GetFileName(captions).Split('.') is [_, .., { Length: 2 or 3 } language, _] && language.All(char.IsAsciiLetter)
            ? language.ToLowerInvariant()
            : "en";

    private static string Quoted(string path) => path.Contains(' ') ? $"\"{path}\"" : path;
}
