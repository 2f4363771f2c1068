using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// Reads a book in another language: <c>book.fr.yaml</c> and <c>stages/fr/</c>. A translator copies a stage's file and
/// translates it where it stands; only its texts are taken, the box is the one of the book.
/// </summary>
internal static class Translations
{
    /// <summary>The folder of the stages in the book's own language.</summary>
    public const string Stages = "stages";

    /// <summary>The other languages that a book is in, each once.</summary>
    public static ImmutableArray<Located<string>> LanguagesOf(YamlMap keys, List<Finding> findings)
    {
        var own = keys.Text("language")?.Value ?? "en";
        var languages = keys.Texts("languages");
        findings.AddRange(languages.Where(language => language.Value == own).Select(TranslationFindings.OwnLanguage));
        return [.. languages.Where(language => language.Value != own).DistinctBy(language => language.Value)];
    }

    /// <summary>The book in one other language.</summary>
    public static Book Read(BookFolder folder, Book book, Located<string> language, OwnWords own, RunResults? results, List<Finding> findings)
    {
        var file = $"book.{language.Value}.yaml";
        own = own with { Language = language.Value };
        var keys = KeysIn(folder, file, language, own, findings);
        var stages = StagesIn(folder, book, language, own, results, findings);
        return book with
        {
            Language = language,
            Source = book,
            Title = keys.Text("title") ?? book.Title,
            Welcome = keys.Prose("welcome") ?? book.Welcome,
            Care = keys.Care() ?? book.Care,
            CareTopics = book.CareTopics.SetItems(keys.CareTopics()),
            Cautions = WithNotes(book.Cautions, keys.CautionList("cautions")),
            FilmAddress = Clips.AddressOf(keys) ?? book.FilmAddress,
            Photos = keys["photo"] is null ? book.Photos : Pictures.OfBook(folder, keys, findings),
            Allow = [.. book.Allow, .. keys.Allowances()],
            Box = WithNames(folder, book.Box, keys, findings),
            Stages = [.. book.Stages.Select(stage => stages.TryGetValue(stage.Id.Value, out var texts) ? WithTexts(stage, texts) : stage)],
        };
    }

    private static YamlMap KeysIn(BookFolder folder, string file, Located<string> language, OwnWords own, List<Finding> findings)
    {
        if (!folder.FilesIn("", findings)?.Contains(file) ?? true)
        {
            findings.Add(TranslationFindings.NoBook(language, file));
            return Keys.Empty(language.At);
        }

        var node = folder.ReadText(file, findings) is { } text ? YamlFile.Read(text.Whole, findings) : null;
        if (node is not null)
            ShapeCheck.Fits(node, BookShapes.Translation, "the translation", own, findings);
        return node as YamlMap ?? Keys.Empty(language.At);
    }

    private static Dictionary<string, Stage> StagesIn(
        BookFolder folder, Book book, Located<string> language, OwnWords own, RunResults? results, List<Finding> findings)
    {
        var names = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
        var ids = book.Stages.Select(stage => stage.Id.Value).ToHashSet();
        var (stages, allKnown) = HintBook.Reading.Stages.In(folder, null, $"{Stages}/{language.Value}", [], names, own, results, findings);
        var read = stages.ToDictionary(stage => stage.Id.Value);
        findings.AddRange(
            from stage in read.Values
            where book.KnowsAllStages && !ids.Contains(stage.Id.Value)
            select TranslationFindings.NoSuchStage(stage, ids));
        findings.AddRange(
            from stage in book.Stages
            where allKnown && !read.ContainsKey(stage.Id.Value)
            select TranslationFindings.NotTranslated(stage, language.Value));
        // A file that can't be read has said so; it is not out of date because of that.
        findings.AddRange(
            from stage in book.Stages
            where !stage.File.IsUnread && read.TryGetValue(stage.Id.Value, out var texts) && !texts.File.IsUnread
            from finding in LeftBehind(stage, read[stage.Id.Value])
            select finding);
        return read;
    }

    private static IEnumerable<Finding> LeftBehind(Stage original, Stage texts)
    {
        var digest = TextDigest.Of(original);
        if (texts.Translates is not { } written)
            return [TranslationFindings.NoDigest(texts, original, digest)];
        return TextDigest.Fits(written.Value, original)
            ? []
            : [TranslationFindings.LeftBehind(written, original, TextDigest.ChangedSince(written.Value, original), digest)];
    }

    private static Stage WithTexts(Stage stage, Stage texts) => stage with
    {
        File = texts.File,
        Title = texts.Title,
        Sign = texts.Sign,
        Nudge = texts.Nudge,
        Clue = texts.Clue,
        Answer = texts.Answer,
        Reset = texts.Reset ?? stage.Reset,
        Cautions = WithNotes(stage.Cautions, texts.Cautions),
        Photos = [.. stage.Photos.Where(photo => !texts.Photos.Any(other => other.Place == photo.Place)), .. texts.Photos],
        Clip = texts.Clip ?? stage.Clip,
        Allow = [.. stage.Allow, .. texts.Allow],
        Moves = WithSentences(stage.Moves, texts.Moves),
    };

    // An undo of the whole stage stays one, whichever move it is read from. A translator may leave the moves out, but not some of them.
    private static ImmutableArray<Move> WithSentences(ImmutableArray<Move> moves, ImmutableArray<Move> texts)
    {
        var said = new Dictionary<Undo, Undo>(ReferenceEqualityComparer.Instance);
        return [.. moves.Select((move, index) => WithName(move, index) with { Undo = WithUndo(move.Undo, texts[Math.Min(index, texts.Length - 1)].Undo) })];

        Move WithName(Move move, int index) => moves.Length == texts.Length ? move with { Name = texts[index].Name } : move;

        Undo? WithUndo(Undo? undo, Undo? other) =>
            undo is null || other is null ? undo : said.TryGetValue(undo, out var known) ? known : said[undo] = WithSentences(undo, other);
    }

    private static Undo WithSentences(Undo undo, Undo texts) => undo with
    {
        Steps = [.. undo.Steps.Select((step, index) => texts.Steps.ElementAtOrDefault(index)?.Says is { } says ? step with { Says = says } : step)],
        Never = undo.Never is null ? null : texts.Never ?? undo.Never,
    };

    // Which dangers there are, the book's own language says; a translation only says how to word its note.
    private static ImmutableArray<Caution> WithNotes(ImmutableArray<Caution> cautions, ImmutableArray<Caution> texts) =>
        [
            .. cautions.Select(caution => texts.FirstOrDefault(other => other.Kind == caution.Kind) is { Note: { } note } found
                ? caution with { Note = note, At = found.At }
                : caution),
        ];

    private static Box WithNames(BookFolder folder, Box box, YamlMap keys, List<Finding> findings)
    {
        string[] moves = [.. box.Moves.Select(move => move.Name.Value)];
        findings.AddRange(
            from entry in (keys["moves"] as YamlMap)?.Entries ?? []
            where !moves.Contains(entry.Key.Value)
            select TranslationFindings.NoSuchName(entry.Key.Located, "moves", moves, elsewhere: null));
        var (parts, things, facts, codes) = (Texts("parts", box.Parts), Texts("things", box.Things), Texts("facts", box.Facts), Texts("codes", box.Codes));
        return box with
        {
            Parts = [.. box.Parts.Select(part => Named(part, parts) with { Place = PlaceOf(part, parts) ?? part.Place, Details = DetailsOf(part) })],
            Things = [.. box.Things.Select(thing => Named(thing, things) with { Place = PlaceOf(thing, things) ?? thing.Place })],
            Facts = [.. box.Facts.Select(fact => Named(fact, facts))],
            Codes = [.. box.Codes.Select(code => Named(code, codes))],
            Moves = [.. box.Moves.Select(move => (keys["moves"] as YamlMap)?.Text(move.Name.Value) is { } name ? move with { Name = name } : move)],
        };

        string? KindOf(string id) => box.Names.FirstOrDefault(named => named.Id.Value == id) switch
        {
            Part => "parts",
            Thing => "things",
            Fact => "facts",
            Code => "codes",
            _ => null,
        };

        ImmutableDictionary<string, PositionDetails> DetailsOf(Part part) =>
            PositionWords.Translated(part, PositionWords.In(folder, parts.GetValueOrDefault(part.Id.Value), findings));

        Dictionary<string, YamlMap> Texts(string kind, IEnumerable<Named> known)
        {
            string[] ids = [.. known.Select(named => named.Id.Value)];
            findings.AddRange(keys.Named(kind)
                .Where(named => !ids.Contains(named.Name.Value))
                .Select(named => TranslationFindings.NoSuchName(named.Name, kind, ids, KindOf(named.Name.Value))));
            return keys.Named(kind).DistinctBy(named => named.Name.Value).ToDictionary(named => named.Name.Value, named => named.Keys);
        }
    }

    // What it is called in the book's own language stays a name of it: texts that aren't translated call it so.
    private static T Named<T>(T named, Dictionary<string, YamlMap> texts)
        where T : Named =>
        texts.GetValueOrDefault(named.Id.Value) is { } keys && keys.Text("name") is { } name
            ? named with { Name = name.Value, Also = [.. keys.Texts("also"), named.Id.With(named.Name), .. named.Also] }
            : named;

    private static string? PlaceOf(Named named, Dictionary<string, YamlMap> texts) => texts.GetValueOrDefault(named.Id.Value)?.Text("place")?.Value;
}
