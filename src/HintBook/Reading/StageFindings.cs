using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What can be wrong with a stage's file.</summary>
internal static class StageFindings
{
    public static readonly FindingCode NoFrontMatterCode = new("HB1301", Severity.Error, "a stage without its keys");
    public static readonly FindingCode TierMissingCode = new("HB1302", Severity.Error, "a step of help is missing");
    public static readonly FindingCode TierEmptyCode = new("HB1303", Severity.Error, "a step of help is empty");
    public static readonly FindingCode TierOutOfOrderCode = new("HB1304", Severity.Error, "the steps of help are out of order");
    public static readonly FindingCode TierTwiceCode = new("HB1305", Severity.Error, "a step of help stands twice");
    public static readonly FindingCode UnknownTierCode = new("HB1306", Severity.Error, "a heading that is no step of help");
    public static readonly FindingCode TextBeforeHeadingsCode = new("HB1307", Severity.Error, "text before the first heading");
    public static readonly FindingCode FileNameCode = new("HB1308", Severity.Error, "a stage's file name");
    public static readonly FindingCode IdTwiceCode = new("HB1309", Severity.Error, "two stages of one name");
    public static readonly FindingCode IgnoredCode = new("HB1310", Severity.Warning, "a file that nothing reads");
    public static readonly FindingCode NestedTooDeepCode = new("HB1311", Severity.Error, "Markdown nested too deep");
    public static readonly FindingCode NoStagesCode = new("HB1312", Severity.Error, "a book without stages");
    public static readonly FindingCode ClipBackwardsCode = new("HB1313", Severity.Error, "a clip that ends before it starts");
    public static readonly FindingCode TierInKeysCode = new("HB1314", Severity.Error, "a step of help among the keys of a Markdown stage");
    public static readonly FindingCode WrongEndingCode = new("HB1316", Severity.Error, "a stage's file with a wrong ending");
    public static readonly FindingCode MovesAndDoesCode = new("HB1315", Severity.Error, "a stage with “moves” and with “does” beside them");

    public static readonly FindingCode EntryInTextCode = new("HB1317", Severity.Warning, "an entry among the text");
    public static readonly FindingCode FilmWithoutMomentCode = new("HB1320", Severity.Warning, "a film elsewhere whose links lead to its start");
    public static readonly FindingCode ClipWithoutFilmCode = new("HB1318", Severity.Error, "a clip without a film");

    public static Finding NoFrontMatter(SourceFile file) => NoFrontMatterCode.At(file.Top,
        "The file doesn't start with its keys between two lines “---”.",
        "Begin the file with a line “---”, then “title: …” and “sign: …”, then another line “---”, then “# Nudge”.");

    /// <summary>A line that is nearly the one around the keys: a word processor made another dash of it, or it has too many.</summary>
    public static Finding NearlyFence(Span line) => NoFrontMatterCode.At(line,
        line.Text.All(sign => sign == '-')
            ? $"Around the keys stands a line of three hyphens; this one has {line.Text.Length}."
            : "Around the keys stands a line of three hyphens; here is another sign, which a word processor may have put there.",
        "Write instead: ---");

    public static Finding FenceNotFirst(Span line) => NoFrontMatterCode.At(line,
        "The line “---” above the keys isn't the first line of the file.", "Take out what stands above it, empty lines too.");

    public static Finding FrontMatterOpen(SourceFile file) => NoFrontMatterCode.At(file.Top,
        "The entries at the top of this file have no end.", "Put a line “---” between the entries and “# Nudge”.");

    public static Finding TierMissing(SourceFile file, string tier, string heading) => TierMissingCode.At(file.Top,
        $"The stage has no {tier}.",
        file.Path.EndsWith(".md", StringComparison.Ordinal)
            ? $"Add a heading “# {heading}” with at least one sentence."
            : $"Add a key “{tier}: |” with at least one sentence below it.");

    public static Finding NearlyHeading(Span line, string tier, string heading) => TierMissingCode.At(line,
        $"The stage has no {tier}: this line isn't a heading of the first level.",
        $"Write instead: # {heading}");

    public static Finding TierEmpty(Span at, string tier) => TierEmptyCode.At(at,
        $"Nothing stands under “# {tier}”.", "Write at least one sentence there.");

    public static Finding TierOutOfOrder(Span at, string tier, ImmutableArray<string> order) => TierOutOfOrderCode.At(at,
        $"“# {tier}” stands too late in the file.",
        $"The order is {Words.List(order.Select(name => $"“# {name}”"))}.");

    public static Finding TierTwice(Span at, string tier, Span first) => TierTwiceCode.At(at,
        $"“# {tier}” stands twice.", "Put both texts under one heading.",
        new Related(first, "It stands here first."));

    public static Finding UnknownTier(Span at, string? nearest, ImmutableArray<string> order) => UnknownTierCode.At(at,
        at.Text.Trim('#', ' ') is { Length: > 0 } words ? $"“# {words}” is no step of help." : "This heading is empty.",
        nearest is not null
            ? $"Write instead: # {nearest}. (For a heading inside a text use “##”.)"
            : $"The headings are {Words.List(order.Select(name => $"“# {name}”"))}; for a heading inside a text use “##”.");

    public static Finding TextBeforeHeadings(Span at) => TextBeforeHeadingsCode.At(at,
        "This text stands before the first heading, so no reader would ever see it.", "Put it under “# Nudge”, “# Clue” or “# Answer”.");

    public static Finding FileName(SourceFile file, string name) => FileNameCode.At(file.Top,
        $"“{name}” isn't a stage's file name.",
        Suggested(name) is { } near
            ? (IsPlain(name) ? "" : "Save it as plain text. ") + $"Name it by its number and its id: “{near}”. The number puts the stages in order."
            : "Name it by its number and its id, such as “04-the-smoker.md”: letters, digits, hyphens and underlines.");

    private static bool IsPlain(string name) => Path.GetExtension(name).ToLowerInvariant() is ".md" or ".yaml" or ".yml" or ".txt";

    // Where the number is missing any will do; the author knows the place.
    private static string? Suggested(string name)
    {
        var ending = name.EndsWith(".yaml", StringComparison.Ordinal) ? ".yaml" : ".md";
        var bare = Path.GetExtension(name) is { Length: > 1 } last && last.Any(char.IsLetter) ? name[..^last.Length] : name;
        var number = string.Concat(bare.TakeWhile(char.IsAsciiDigit));
        var id = Words.Hyphenated(bare[number.Length..]).Trim('_');
        return id.Length == 0 || number.Length > 9 ? null : $"{(number.Length == 0 ? "10" : number.PadLeft(2, '0'))}-{id.ToLowerInvariant()}{ending}";
    }

    public static Finding EntryInText(Span at, bool markdown) => EntryInTextCode.At(at,
        $"This line looks like the entry “{at.Text}”, but it stands in the text: readers see it as it is, and nothing else comes of it.",
        markdown ? "Move it up between the two lines “---”. If it is meant as a text, begin the sentence with another word."
        : "Begin it in the first column, like the other keys. If it is meant as a text, begin the sentence with another word.");

    public static Finding EntryBeforeHeadings(Span at) => TextBeforeHeadingsCode.At(at,
        $"The entry “{at.Text}” stands below the keys, so nothing reads it.", "Move it up between the two lines “---”.");

    public static Finding IdTwice(SourceFile file, string id, SourceFile first, string firstId) => IdTwiceCode.At(file.Top,
        id == firstId
            ? $"Two files are the stage “{id}”."
            : $"The stages “{firstId}” and “{id}” differ only in capital letters.",
        "Give one of them another name after its number.",
        new Related(first.Top, "This is the first."));

    public static Finding Ignored(SourceFile file, string name) => IgnoredCode.At(file.Top,
        $"“{name}” in the folder “stages” isn't read: it's neither .md nor .yaml.",
        name.Length is 2 or 3 && name.All(char.IsAsciiLetterLower) ? $"If these are the stages in another language, write languages: [ {name} ] in book.yaml."
        : "Give it another ending, or take it out.");

    /// <summary>A file that would be a stage but for its ending.</summary>
    /// <param name="file">The file.</param>
    /// <param name="name">Its name.</param>
    /// <param name="ending">Its ending, such as <c>.md.txt</c>.</param>
    /// <param name="id">The stage that it would be.</param>
    public static Finding WrongEnding(SourceFile file, string name, string ending, string id)
    {
        var right = name[..^ending.Length] + (ending.Contains(".y", StringComparison.OrdinalIgnoreCase) ? ".yaml" : ".md");
        return WrongEndingCode.At(file.Top,
            $"“{name}” isn't read, since it ends in “{ending}” and not in .md or .yaml: until that is mended, the book lacks its stage “{id}”.",
            $"Save it as plain text and name it “{right}”. If your computer shows that name already, let it show the endings of file names.");
    }

    public static Finding LeavesBounds(Span at, string message, string help) => NestedTooDeepCode.At(at, message, help);

    public static Finding NestedTooDeep(Span at) => NestedTooDeepCode.At(at,
        "Lists or quotations stand inside each other far deeper than anybody can read.", "Two or three levels are enough: write it flat.");

    public static Finding NoStages(SourceFile book) => NoStagesCode.At(book.Top,
        "The book has no stages.", "Put at least one file such as “01-the-lid.md” into the folder “stages”.");

    public static Finding ClipBackwards(Span at) => ClipBackwardsCode.At(at,
        "The clip ends before it starts, or just then.", "“to” must be later than “from”.");

    public static Finding ClipWithoutFilm(Span at) => ClipWithoutFilmCode.At(at,
        "The clip names no film, and book.yaml names none that lives elsewhere.",
        "Write the film's file from the folder “clips”, as in “clip: { file: solution.mp4, from: 2:16 }”, or where it lives into book.yaml: "
            + "“film: { address: \"https://…?t={seconds}\" }”.");

    public static Finding FilmWithoutMoment(Located<string> address) => FilmWithoutMomentCode.At(address.At,
        "Every link to the film leads to its start, since its address doesn't say where the moment goes.",
        $"If that page can start at a moment, write “{{seconds}}” where its number of seconds goes, often like this: \"{WithMoment(address.Value)}\".");

    private static string WithMoment(string address)
    {
        var (page, fragment) = address.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? (address[..at], address[at..]) : (address, "");
        return $"{page}{(page.Contains('?', StringComparison.Ordinal) ? '&' : '?')}t={Clip.Moment}{fragment}";
    }

    public static Finding TierInKeys(Span at, string key) => TierInKeysCode.At(at,
        $"In a .md stage the {key} stands in the text, not among the keys.", $"Move it under a heading “# {char.ToUpperInvariant(key[0])}{key[1..]}”.");

    public static Finding MovesAndDoes(Span at, string key) => MovesAndDoesCode.At(at,
        $"The stage has “moves” and “{key}” beside them; it isn't clear which move does it.", $"Move “{key}” into one of the “moves”.");
}
