using HintBook.Text;

namespace HintBook.Reading.Yaml;

/// <summary>What can be wrong with YAML as such, before anything is known of books.</summary>
internal static class YamlFindings
{
    public static readonly FindingCode SyntaxCode = new("HB1101", Severity.Error, "this is not YAML");
    public static readonly FindingCode TabCode = new("HB1102", Severity.Error, "a tab in the indentation");
    public static readonly FindingCode AliasCode = new("HB1103", Severity.Error, "an alias");
    public static readonly FindingCode TooDeepCode = new("HB1104", Severity.Error, "nested too deep");
    public static readonly FindingCode KeyTwiceCode = new("HB1105", Severity.Error, "a key stands twice");
    public static readonly FindingCode KeyIsNoWordCode = new("HB1106", Severity.Error, "a key is not a word");
    public static readonly FindingCode SecondDocumentCode = new("HB1107", Severity.Error, "a second document in one file");
    public static readonly FindingCode CutCode = new("HB1108", Severity.Warning, "a text that ends at a “#”");
    public static readonly FindingCode CurlyQuotesCode = new("HB1109", Severity.Warning, "a value in curly quotes");
    public static readonly FindingCode OddSpaceCode = new("HB1110", Severity.Warning, "a no-break space where a plain one belongs");
    public static readonly FindingCode MarkerCode = new("HB1111", Severity.Error, "a value that begins with a sign of YAML's own");

    public static Finding Syntax(Span at, string message, string help) => SyntaxCode.At(at, message, help);

    public static Finding Tab(Span at) => TabCode.At(
        at,
        "There is a tab at the start of this line; YAML only knows spaces there.",
        "Replace the tab by two spaces for each level.");

    public static Finding Alias(Span at, string name) => AliasCode.At(
        at,
        $"“*{name}” begins with a star, which in YAML repeats another place of the file, and a book can't do that.",
        $"Write “{name.Trim('*')}” without the star, or put the whole text into quotes. To repeat a value, write it out again.");

    public static Finding Marker(Span at, string marker) => MarkerCode.At(
        at,
        $"YAML keeps a “{marker[0]}” at the beginning of a value for itself: “{marker}” would be lost.",
        "Put the whole text in quotes.");

    public static Finding TooDeep(Span at) => TooDeepCode.At(
        at,
        $"Here more than {YamlText.MostNesting} lists or groups stand inside each other.",
        "Nothing in a book needs more than six: take out the brackets or dashes that are too many.");

    public static Finding KeyTwice(Span at, string key, Span first) => KeyTwiceCode.At(
        at,
        $"“{key}” is written twice; only one can count.",
        "Keep one, or put both values into it.",
        new Related(first, "It stands here first."));

    public static Finding KeyIsNoWord(Span at, string described) => KeyIsNoWordCode.At(
        at,
        $"Before a colon stands a word, but here is {described}.",
        "Write one name alone before the colon, without brackets. What else people call a thing or a part goes under “also”.");

    public static Finding SecondDocument(Span at) => SecondDocumentCode.At(
        at,
        "A line “---” starts a second document here, and nothing after it is read.",
        "Take the line out.");

    /// <summary>A remark that was probably meant as part of the text before it.</summary>
    /// <param name="remark">The remark, from its “#” to the end of its line.</param>
    /// <param name="text">The text before it, as it is read.</param>
    public static Finding Cut(Span remark, string text) => CutCode.At(
        remark,
        $"“#” after a space begins a remark: the text is read as “{Quoting.Shortened(text)}”, and “{Quoting.Shortened(remark.Text)}” is cut off.",
        $"Write instead: {Quoting.InQuotes($"{text} {remark.Text}")}\n"
            + "For a remark, put two spaces before the “#” and one after it, or give it a line of its own.");

    public static Finding CurlyQuotes(Span at, string inner) => CurlyQuotesCode.At(
        at,
        "The quotes around this aren't the straight ones of YAML but the curly ones of a word processor; they are read as if they were straight.",
        $"Write instead: {Quoting.InQuotes(inner)}");

    public static Finding OddSpace(Span at, int lines) => OddSpaceCode.At(
        at,
        "This is a no-break space, which looks like a plain one; it is read as if it were."
            + (lines == 1 ? "" : $" There are such spaces in {lines} lines of this file's keys."),
        "Replace it by a plain space. They come from word processors and web pages: paste as plain text.");
}
