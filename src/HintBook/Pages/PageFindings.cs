using HintBook.Text;

namespace HintBook.Pages;

/// <summary>What can be wrong with a theme.</summary>
internal static class PageFindings
{
    public static readonly FindingCode UnknownTheme = new("HB7101", Severity.Error, "unknown theme");
    public static readonly FindingCode MissingTemplate = new("HB7102", Severity.Error, "a theme lacks a file");
    public static readonly FindingCode BrokenTemplate = new("HB7103", Severity.Error, "a template does not work");
    public static readonly FindingCode MissingWord = new("HB7104", Severity.Error, "a theme lacks a word");
    public static readonly FindingCode BrokenWords = new("HB7105", Severity.Error, "a words file cannot be read");
    public static readonly FindingCode StrangePlaceholder = new("HB7106", Severity.Error, "a word has a placeholder that nothing fills");
    public static readonly FindingCode OtherLanguage = new("HB7107", Severity.Note, "the theme has no words in the book's language");

    public static readonly FindingCode FarAwayCode = new("HB7221", Severity.Note, "a stage that is far away on “Where am I?”");

    public static Finding FarAway(Books.Stage stage, int taps) => FarAwayCode.At(
        stage.Title.At,
        $"On the page “Where am I?” a reader finds “{stage.Title}” only after {taps} taps.",
        "Each part that moves on the way and shows on the closed box saves some: mark it “seen: true”.");

    public static Finding NoSuchTheme(Located<string> theme, IEnumerable<string> known) => UnknownTheme.At(
        theme.At,
        $"There is no theme named “{theme.Value}”.",
        Nearest.To(theme.Value, known) is { } near ? $"Write instead: {near}" : $"Themes are {Words.List(known)}.");

    public static Finding NoSuchFile(string theme, string file) => MissingTemplate.At(
        SourceFile.Unread($"themes/{theme}/{file}").Top,
        $"The theme {theme} has no {file}.",
        "Copy the file of that name from a theme that has it, and change it there.");

    public static Finding Template(Span at, string problem) => BrokenTemplate.At(
        at,
        $"The template {at.File.Path} does not work: {problem}");

    public static Finding NoWord(SourceFile file, string key, string english) => MissingWord.At(
        file.Top,
        $"{file.Path} has no “{key}”.",
        $"Add a line with {key}: and your words for “{english}”");

    public static Finding Unreadable(Span at, string problem) => BrokenWords.At(
        at,
        $"{at.File.Path} cannot be read: {problem}",
        "A words file is a list of lines, each with a key, a colon and one text in quotation marks.");

    public static Finding Placeholder(Located<string> word, string key, string name, IEnumerable<string> known) => StrangePlaceholder.At(
        word.At,
        $"Nothing fills {{{name}}} in “{key}”: readers would see it as it stands.",
        known.Any() ? $"“{key}” may have {Words.List(known.Select(each => $"{{{each}}}"))}." : $"“{key}” has no placeholders.");

    public static Finding NotTranslated(Located<string> language, string theme, string instead) => OtherLanguage.At(
        language.At,
        $"The theme {theme} has no words for “{language.Value}”: its own sentences are in “{instead}”.",
        $"Copy the theme into the book and translate words.{instead}.yaml as words.{language.Value}.yaml.");
}
