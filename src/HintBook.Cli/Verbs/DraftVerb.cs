using System.Collections.Immutable;
using System.CommandLine;
using HintBook.Photos.Films;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Starting.Drafting;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>draft BOOK --from CAPTIONS</c>: writes stages to start from, one for each step of a film.</summary>
internal static class DraftVerb
{
    public static Command Make(Terminal terminal)
    {
        var book = Options.Book();
        var from = new Option<string>("--from")
        {
            Description = "What is said in the film: captions as .vtt or .srt.",
            HelpName = "CAPTIONS",
            Required = true,
        };
        var chapters = new Option<string?>("--chapters") { Description = "A list of the film's chapters, one a line: 0:00 Start.", HelpName = "LIST" };
        var film = new Option<string?>("--film")
        {
            Description = "The film in the book's folder “clips” (default: the one that the captions lie beside).",
            HelpName = "FILM",
        };
        var verb = new Command("draft", "Write stages to start from, out of what is said in a film.") { book, from, chapters, film };
        verb.SetAction(parsed =>
            Draft(parsed.GetValue(book)!, parsed.GetValue(from)!, parsed.GetValue(chapters), parsed.GetValue(film), terminal));
        return verb;
    }

    private static int Draft(string path, string captions, string? list, string? film, Terminal terminal)
    {
        var read = Reader.Read(path);
        if (read.Book is not { } book)
            return OutcomePrinter.NotReady("Nothing can be drafted", read.Findings, terminal);
        var spoken = FilmParts.SpokenIn(captions, terminal);
        var chapters = list is null ? null : FilmParts.ChaptersIn(list, terminal);
        if (spoken is null || (list is not null && chapters is null))
            return ExitCode.WrongUsage;
        if (film is not null && !File.Exists(Path.Combine(path, "clips", film)))
        {
            terminal.Say($"There is no film “{film}” in {Path.Combine(path, "clips")}. Put it there, or leave --film out.");
            return ExitCode.WrongUsage;
        }

        var stages = new DirectoryInfo(Path.Combine(path, "stages"));
        if (stages.LinkTarget is not null)
        {
            terminal.Say($"“{stages.FullName}” is a link to another folder, and nothing is written outside of the book.");
            return ExitCode.WrongUsage;
        }

        var taken = stages.Exists ? stages.EnumerateFiles().Select(file => file.Name) : [];
        var shown = film ?? FilmBeside(path, captions);
        var length = shown is null ? null : FilmFile.LengthOf(Path.Combine(path, "clips", shown));
        var (drafted, things, says) = BookDraft.Of(book, taken, spoken, chapters, shown, length);
        foreach (var sentence in says)
            terminal.Say(sentence);
        if (drafted.IsEmpty)
            return ExitCode.WrongUsage;
        foreach (var stage in drafted)
            SingleFile.Write(Path.Combine(path, stage.Path), stage.Text());
        terminal.Out.Write(Told(drafted, things));
        return ExitCode.Fine;
    }

    /// <summary>What was drafted, and what is often named.</summary>
    public static string Told(ImmutableArray<DraftedStage> drafted, ImmutableArray<NamedThing> things) =>
        $"""
        {Words.Count(drafted.Length, "stage")} drafted:
        {string.Join('\n', drafted.Select(stage => $"  {DraftedStage.Moment(stage.Step.From),8}  {stage.Path}"))}
        Each says “{Books.Draft.Open}” where you have something to write; until that is gone the book isn't published.
        {Proposed(things)}
        """;

    private static string Proposed(ImmutableArray<NamedThing> things) => things.IsEmpty
        ? ""
        : "Often named in the film, and not in book.yaml. What can be held you may copy under “things”, what moves under “parts”:\n"
            + string.Concat(things.Select(thing => $"  {thing.Id}: {{ name: {thing.Called} }}\n"));

    // “clips/solution.en.vtt” lies beside “clips/solution.mp4”.
    private static string? FilmBeside(string book, string captions)
    {
        var clips = Path.GetFullPath(Path.Combine(book, "clips"));
        var name = Path.GetFileName(captions).Split('.')[0];
        return Path.GetDirectoryName(Path.GetFullPath(captions)) == clips
            ? Directory.EnumerateFiles(clips, name + ".*").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)
                .FirstOrDefault(FilmFile.IsNamedSo)
            : null;
    }
}
