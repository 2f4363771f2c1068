using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>Reads the files in the folder <c>stages</c>.</summary>
internal static partial class Stages
{
    private static readonly string[] TierKeys = ["nudge", "clue", "answer", "reset"];
    private static readonly string[] MoveKeys = ["does", "gives", "takes"];

    /// <summary>All stages in the author's order: by number, then by name.</summary>
    /// <param name="folder">The book's folder.</param>
    /// <param name="book">The file to tell of a book without stages, or null where that is no mistake.</param>
    /// <param name="within">Where the files are: <c>stages</c>, or for another language such as <c>stages/fr</c>.</param>
    /// <param name="languages">Languages whose folders lie beside the files.</param>
    /// <param name="names">The names of the box.</param>
    /// <param name="findings">Where findings go.</param>
    public static ImmutableArray<Stage> In(
        BookFolder folder, SourceFile? book, string within, IReadOnlyCollection<string> languages, IReadOnlyDictionary<string, Named> names, List<Finding> findings)
    {
        if (folder.FilesIn(within, findings)?.Where(name => !languages.Contains(name)).ToArray() is not { } files)
            return [];
        var read = new (int Number, Stage? Stage, List<Finding> Findings)[files.Length];
        Parallel.For(0, files.Length, i => read[i] = ReadOne(folder, within, files[i], names));

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

        if (files.Length == 0 && book is not null)
            findings.Add(StageFindings.NoStages(book));
        return [.. stages];
    }

    private static (int Number, Stage? Stage, List<Finding> Findings) ReadOne(BookFolder folder, string within, string name, IReadOnlyDictionary<string, Named> names)
    {
        var findings = new List<Finding>();
        var unread = SourceFile.Unread($"{within}/{name}");
        if (!name.EndsWith(".md", StringComparison.Ordinal) && !name.EndsWith(".yaml", StringComparison.Ordinal))
        {
            findings.Add(StageFindings.Ignored(unread, name));
            return (0, null, findings);
        }

        var parts = FileName().Match(name);
        if (!parts.Success)
        {
            findings.Add(StageFindings.FileName(unread, name));
            return (0, null, findings);
        }

        var number = int.Parse(parts.Groups["number"].ValueSpan, CultureInfo.InvariantCulture);
        var id = parts.Groups["id"].Value;
        var stage = folder.ReadText(unread.Path, findings) is { } file
            ? ReadStage(folder, file, id, names, findings)
            : StageOf(folder, unread, id, Keys.Empty(unread.Top), Tiers.None, names, findings);
        return (number, stage, findings);
    }

    // Whatever can't be read, the stage is there: what other files say of it must not become a mistake too.
    private static Stage ReadStage(BookFolder folder, SourceFile file, string id, IReadOnlyDictionary<string, Named> names, List<Finding> findings)
    {
        var markdown = file.Path.EndsWith(".md", StringComparison.Ordinal);
        var (keySpan, body) = markdown ? FrontMatter.Split(file, findings) : (file.Whole, file.Whole);
        var keys = keySpan is { } span ? KeysIn(span, findings) : null;
        if (markdown && keys is not null)
            findings.AddRange(keys.Entries.Where(e => TierKeys.Contains(e.Key.Value)).Select(e => StageFindings.TierInKeys(e.Key.At, e.Key.Value)));

        var tiers = (markdown, keys) switch
        {
            (true, _) when keySpan is not null => Tiers.InMarkdown(body, findings),
            (false, { } written) => Tiers.InKeys(written, findings),
            _ => Tiers.None,
        };
        return StageOf(folder, file, id, keys ?? Keys.Empty(file.Top), tiers, names, findings);
    }

    private static YamlMap? KeysIn(Span span, List<Finding> findings)
    {
        var node = YamlText.Read(span, findings);
        if (node is YamlScalar { IsEmpty: true })
            node = Keys.Empty(span with { End = span.Start });
        if (node is not null)
            ShapeCheck.Fits(node, BookShapes.Stage, "the stage", findings);
        return node as YamlMap;
    }

    private static Stage StageOf(
        BookFolder folder, SourceFile file, string id, YamlMap keys, Tiers tiers, IReadOnlyDictionary<string, Named> names, List<Finding> findings)
    {
        var none = new Prose("", file.Top);
        var title = keys.Text("title") ?? new Located<string>(id, file.Top);
        return new Stage
        {
            File = file,
            Id = new Located<string>(id, file.Top),
            Was = keys.Texts("was"),
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

    [GeneratedRegex(@"^(?<number>[0-9]{1,6})-(?<id>[\p{L}\p{N}][\p{L}\p{N}\p{M}_-]*)\.(md|yaml)$")]
    private static partial Regex FileName();
}
