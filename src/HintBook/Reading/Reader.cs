using System.Globalization;
using HintBook.Books;
using HintBook.Reading.Folder;
using HintBook.Reading.Shapes;
using HintBook.Reading.Sittings;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What came of reading a folder.</summary>
/// <param name="Folder">The folder, for what is read later (photos, films); null if there is none.</param>
/// <param name="Book">The book, as far as it could be read; null if nothing can be made of it.</param>
/// <param name="Findings">Everything that is wrong with the files.</param>
public sealed record ReadBook(BookFolder? Folder, Book? Book, Findings Findings);

/// <summary>From a folder of text to a book.</summary>
public static class Reader
{
    /// <summary>The format that books are written in.</summary>
    public const int Format = 2;

    private static readonly string[] NameKeys = ["parts", "things", "facts", "codes"];

    /// <summary>Reads everything that can be read; never throws for anything that is in the folder.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="results">Keeps what each stage's file says for the next run; null for a run that stands alone.</param>
    public static ReadBook Read(string path, RunResults? results = null)
    {
        var findings = new List<Finding>();
        var folder = BookFolder.Open(path, findings);
        var book = folder is null ? null : ReadBook(folder, results, findings);
        return new ReadBook(folder, book, Findings.Of(findings));
    }

    private static Book? ReadBook(BookFolder folder, RunResults? results, List<Finding> findings)
    {
        var written = folder.ReadText("book.yaml", findings);
        var file = written ?? SourceFile.Unread("book.yaml");
        var (keys, own) = written is null ? (null, OwnWords.Unknown) : KeysIn(file, findings);
        if (keys is null || NameKeys.Any(key => keys[key] is YamlUnread))
        {
            // The stages have mistakes of their own to tell, whatever stands in the way here. Without the names nothing can be said of what they name.
            string[] other = keys is null ? [] : [.. Translations.LanguagesOf(keys, findings).Select(language => language.Value)];
            Stages.In(folder, file, Translations.Stages, other, new Dictionary<string, Named>(), own, results, findings);
            return null;
        }

        findings.AddRange(FormatOf(keys, file));
        findings.AddRange(Boxes.WrongDials(keys));
        var box = Boxes.Names(folder, keys, findings);
        findings.AddRange(Boxes.UnknownDials(keys, box));
        var names = NamesOf(box, findings);
        var unset = new Located<string>("", file.Top);
        var languages = Translations.LanguagesOf(keys, findings);
        var stages = Stages.In(folder, file, Translations.Stages, [.. languages.Select(language => language.Value)], names, own, results, findings);
        var book = new Book
        {
            File = file,
            Title = keys.Text("title") ?? unset,
            Id = keys.Text("id"),
            Maker = keys["maker"] is YamlMap maker && maker.Text("name") is { } name
                ? new Maker(name, maker.Text("help")) { Logo = Pictures.LogoOf(folder, maker, findings) }
                : null,
            Shelf = keys["shelf"] is YamlMap shelf ? new OnShelf(shelf.Text("language"), shelf.Text("line"))
            {
                EditionOf = shelf.Text("edition-of"),
            } : null,
            Language = keys.Text("language") ?? unset.With("en"),
            Address = keys.Text("address") is { } address ? address.With(WithSlash(address.Value)) : null,
            MovedFrom = [.. keys.Texts("moved-from").Select(old => old.With(WithSlash(old.Value)))],
            Theme = keys.Text("theme") ?? unset.With("parlour"),
            Goal = Moves.Conditions(keys["goal"]),
            Patience = keys.Text("patience") is { } patience ? DurationIn(patience.Value) : TimeSpan.FromMinutes(20),
            Cards = keys.Text("cards")?.Value switch
            {
                "box" => CardChoice.Box,
                "stages" => CardChoice.Stages,
                _ => CardChoice.Both,
            },
            Print = keys.PrintWishes(),
            ShortAddresses = keys.Text("addresses")?.Value == "short",
            ForThePost = keys.Texts("for-the-post"),
            Cautions = keys.CautionList("cautions"),
            Photos = Pictures.OfBook(folder, keys, findings),
            Size = keys.Text("size"),
            Weight = keys.Text("weight"),
            FilmAddress = Clips.AddressOf(keys),
            Welcome = keys.Prose("welcome"),
            Care = keys.Care(),
            CareTopics = keys.CareTopics(),
            Html = keys.Flag("html"),
            Sealed = keys.Flag("sealed") ? keys["sealed"]?.At : null,
            Allow = keys.Allowances(),
            Box = Boxes.WithMoves(box, keys, names),
            Tables = ClueReads.Tables(keys),
            Copies = Copies.In(folder, keys, own, findings),
            Stages = stages.All,
            KnowsAllStages = stages.AllKnown,
            Rehearsals = Rehearsals.In(folder, own, findings),
            MinutesFromSittings = keys.Text("minutes")?.At,
            Letters = LetterFile.In(folder, findings),
        };
        book = book with { Sittings = SittingFiles.In(folder, book, findings) };
        book = book with { Translations = [.. languages.Select(language => Translations.Read(folder, book, language, own, results, findings))] };
        findings.AddRange(CopyFindings.OtherLanguages(book));
        findings.AddRange(Clips.WithoutFilm(book));
        findings.AddRange(Clips.WithoutMoment(book));
        book = WithCaptions(book, folder, findings);
        findings.AddRange(stages.All.Select(stage => stage.Translates).OfType<Located<string>>().Select(TranslationFindings.TranslatesNothing));
        findings.AddRange(CautionFindings.OnlyAtAStage(book));
        if (!findings.Exists(finding => finding.IsError))
            findings.AddRange(UnusedFiles.In(folder, book));
        return book;
    }

    // A film's captions are the same in all languages of the book.
    private static Book WithCaptions(Book book, BookFolder folder, List<Finding> findings)
    {
        var clips = book.Translations.Prepend(book).SelectMany(each => each.Stages).Select(stage => stage.Clip).OfType<Clip>();
        var captions = CaptionFiles.Read(folder, clips, findings);
        return book with { Captions = captions, Translations = [.. book.Translations.Select(each => each with { Captions = captions })] };
    }

    private static IEnumerable<Finding> FormatOf(YamlMap keys, SourceFile file) =>
        keys.Text("format") is not { } format
            ? keys.Text("title") is null ? [] : [DeclarationFindings.NoFormat(file)]
        : int.TryParse(format.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > Format
            ? [DeclarationFindings.NewerFormat(format)]
        : [];

    private static (YamlMap? Keys, OwnWords Own) KeysIn(SourceFile file, List<Finding> findings)
    {
        var node = YamlFile.Read(file.Whole, findings);
        if (node is YamlScalar { IsEmpty: true })
            node = Keys.Empty(file.Top);
        var own = node is YamlMap map ? OwnWords.Of(map) : OwnWords.Unknown;
        if (node is not null)
            ShapeCheck.Fits(node, BookShapes.Book, "the book", own, findings);
        return (node as YamlMap, own);
    }

    private static Dictionary<string, Named> NamesOf(Box box, List<Finding> findings)
    {
        var names = new Dictionary<string, Named>();
        var folded = new Dictionary<string, Named>(StringComparer.OrdinalIgnoreCase);
        foreach (var named in box.Names)
        {
            if (folded.TryGetValue(named.Id.Value, out var first))
                findings.Add(DeclarationFindings.Twice(named.Id, first.Id));
            folded.TryAdd(named.Id.Value, named);
            names.TryAdd(named.Id.Value, named);
        }

        return names;
    }

    private static string WithSlash(string address) => address.EndsWith('/') ? address : address + "/";

    private static TimeSpan DurationIn(string written)
    {
        var number = written.AsSpan().TrimEnd("hmins ");
        var minutes = written.EndsWith('h') ? 60 : written.EndsWith('n') ? 1 : 1.0 / 60;
        return double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? TimeSpan.FromMinutes(Math.Min(value * minutes, 1e6))
            : TimeSpan.FromMinutes(20);
    }
}
