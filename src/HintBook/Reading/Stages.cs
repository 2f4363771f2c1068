using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>The stages of a folder.</summary>
/// <param name="All">Those that its files are, in the author's order; a file that can't be read is a stage of which only the id is known.</param>
/// <param name="AllKnown">Whether there can be no other: the folder could be read, and of each file it is known which stage it is.</param>
internal sealed record ReadStages(ImmutableArray<Stage> All, bool AllKnown);

/// <summary>Reads the files in the folder <c>stages</c>.</summary>
internal static partial class Stages
{
    private static readonly string[] MoveKeys = ["does", "gives", "takes"];
    private static readonly string[] TextEndings =
        ["md", "markdown", "mdown", "yaml", "yml", "txt", "text", "rtf", "doc", "docx", "odt", "pages", "html", "htm"];

    /// <summary>All stages, by number, then by name.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">The file to tell of a book without stages, or null where that is no mistake.</param>
    /// <param name="within">Where the files are: <c>stages</c>, or for another language such as <c>stages/fr</c>.</param>
    /// <param name="languages">Languages whose folders lie beside the files.</param>
    /// <param name="names">The names of the box.</param>
    /// <param name="own">The book's own words, in the language of these files.</param>
    /// <param name="results">Keeps what each file says for the next run, or null.</param>
    /// <param name="findings">Where findings go.</param>
    public static ReadStages In(
        BookFolder folder,
        SourceFile? book,
        string within,
        IReadOnlyCollection<string> languages,
        IReadOnlyDictionary<string, Named> names,
        OwnWords own,
        RunResults? results,
        List<Finding> findings)
    {
        if (folder.FilesIn(within, findings)?.Where(name => !languages.Contains(name)).ToArray() is not { } files)
            return new([], AllKnown: false);
        var taken = files.Where(IsText).Select(name => FileName().Match(name).Groups["id"].Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var read = new (int Number, Stage? Stage, List<Finding> Findings)[files.Length];
        Parallel.For(0, files.Length, i => read[i] = ReadOne(folder, within, files[i], taken, names, own, results));

        findings.AddRange(read.SelectMany(one => one.Findings));
        var stages = new List<Stage>();
        var ids = new Dictionary<string, Stage>(StringComparer.OrdinalIgnoreCase);
        foreach (var (_, stage, _) in read.OrderBy(one => one.Number))
        {
            if (stage is null)
                continue;
            if (ids.TryAdd(stage.Id.Value, stage))
                stages.Add(stage);
            else
                findings.Add(StageFindings.IdTwice(stage.File, stage.Id.Value, ids[stage.Id.Value].File, ids[stage.Id.Value].Id.Value));
        }

        var allKnown = !read.Any(one => one.Stage is null && one.Findings.Exists(finding => finding.IsError));
        if (stages.Count == 0 && allKnown && book is not null)
            findings.Add(StageFindings.NoStages(book));
        return new([.. stages], allKnown);
    }

    private static (int Number, Stage? Stage, List<Finding> Findings) ReadOne(
        BookFolder folder,
        string within,
        string name,
        HashSet<string> taken,
        IReadOnlyDictionary<string, Named> names,
        OwnWords own,
        RunResults? results)
    {
        var findings = new List<Finding>();
        var unread = SourceFile.Unread($"{within}/{name}");
        var parts = FileName().Match(name);
        var (id, ending) = (parts.Groups["id"].Value, parts.Groups["ending"].Value);
        // “3 The tray.docx” would be a stage but for its name; notes beside the stages don't begin with a number.
        var looksLikeOne = parts.Success
            ? ending.Split('.').Any(IsTextEnding)
            : char.IsAsciiDigit(name[0]) && name.Split('.')[0].Any(char.IsLetter) && IsTextEnding(Path.GetExtension(name).TrimStart('.'));
        if (!IsText(name) && (taken.Contains(id) || !looksLikeOne))
        {
            findings.Add(StageFindings.Ignored(unread, name));
            return (0, null, findings);
        }

        if (!parts.Success || (IsText(name) && ending is not (".md" or ".yaml")))
        {
            findings.Add(StageFindings.FileName(unread, name));
            return (0, null, findings);
        }

        var number = int.Parse(parts.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        var text = IsText(name) ? folder.ReadText(unread.Path, findings) : null;
        if (!IsText(name))
            findings.Add(StageFindings.WrongEnding(unread, name, ending, id));
        // Whatever can't be read, the stage is there: what other files say of it must not become a mistake too.
        var written = text is null ? WrittenStage.Nothing(unread) : WrittenIn(text, own, results);
        findings.AddRange(written.Findings);
        return (number, StageOf(folder, written, id, names, findings), findings);
    }

    private static bool IsTextEnding(string ending) => TextEndings.Contains(ending.ToLowerInvariant());

    private static bool IsText(string name) => name.EndsWith(".md", StringComparison.Ordinal) || name.EndsWith(".yaml", StringComparison.Ordinal);

    private static WrittenStage WrittenIn(SourceFile file, OwnWords own, RunResults? results) => results is null
        ? WrittenStage.Read(file, own)
        : results.Get("stage", RunResults.KeyOf(file.Path, file.Text, own.Language, own.NamesKey), () => WrittenStage.Read(file, own));

    private static Stage StageOf(
        BookFolder folder, WrittenStage written, string id, IReadOnlyDictionary<string, Named> names, List<Finding> findings)
    {
        var (file, keys, tiers, _) = written;
        var none = new Prose("", file.Top);
        var title = keys.Text("title") ?? new Located<string>(id, file.Top);
        return new Stage
        {
            File = file,
            Id = new Located<string>(id, file.Top),
            Was = keys.Texts("was"),
            Translates = keys.Text("translates"),
            Title = title,
            Sign = keys.Text("sign") ?? new Located<string>("", file.Top),
            Moves = MovesOf(keys, title, names, findings),
            After = keys.Texts("after"),
            Optional = keys.Flag("optional"),
            RedHerring = keys.Flag("red-herring"),
            Cautions = keys.CautionList("cautions"),
            Photos = Pictures.OfStage(folder, keys, findings),
            Clip = keys["clip"] is YamlMap clip ? Clips.Read(folder, clip, findings) : null,
            Allow = keys.Allowances(),
            Minutes = keys.WholeNumber("minutes", 1, 10_000),
            MinutesAt = keys["minutes"]?.At,
            Gate = keys.Gate(),
            Nudge = tiers.Nudge ?? none,
            Clue = tiers.Clue ?? none,
            Answer = tiers.Answer ?? none,
            Reset = tiers.Reset,
        };
    }

    // With `moves`, the stage's own `needs` hold for each of them.
    private static ImmutableArray<Move> MovesOf(YamlMap keys, Located<string> title, IReadOnlyDictionary<string, Named> names, List<Finding> findings)
    {
        var own = Moves.Move(keys, title, names);
        var several = keys.Maps("moves").ToArray();
        if (several.Length == 0)
            return [own];
        findings.AddRange(keys.Entries.Where(e => MoveKeys.Contains(e.Key.Value)).Select(e => StageFindings.MovesAndDoes(e.Key.At, e.Key.Value)));
        return
        [
            .. from map in several
               let move = Moves.Move(map, Boxes.NameOf(map), names)
               select move with { Needs = own.Needs.AddRange(move.Needs), Undo = move.Undo ?? own.Undo, FromOutside = move.FromOutside || own.FromOutside },
        ];
    }

    [GeneratedRegex(@"^(?<number>[0-9]{1,6})-(?<id>[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*)(?<ending>(\.[\p{L}\p{N}]+)+)$", RegexOptions.ExplicitCapture)]
    private static partial Regex FileName();
}
