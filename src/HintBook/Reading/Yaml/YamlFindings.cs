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

    public static Finding Syntax(Span at, string why) => SyntaxCode.At(
        at,
        $"This can't be read as YAML: {why}.",
        "Look at this line and the one before it: a colon needs a space after it, lists need “- ” or “[ … ]”, "
            + "and a text with a colon or a “#” in it needs quotes around it.");

    public static Finding Tab(Span at) => TabCode.At(
        at,
        "There is a tab at the start of this line; YAML only knows spaces there.",
        "Replace the tab by two spaces for each level.");

    public static Finding Alias(Span at, string name) => AliasCode.At(
        at,
        $"“*{name}” begins with a star, which in YAML repeats another place of the file, and a book can't do that.",
        $"Write “{name.Trim('*')}” without the star, or put the whole text into quotes. To repeat a value, write it out again.");

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
}
