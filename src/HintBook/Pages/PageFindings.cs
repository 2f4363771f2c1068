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

    public static Finding FarAway(Books.Stage stage, int taps) => new()
    {
        Code = FarAwayCode,
        At = stage.Title.At,
        Message = $"On the page “Where am I?” a reader finds “{stage.Title}” only after {taps} taps.",
        Help = "Each part that moves on the way and shows on the closed box saves some: mark it `seen: true`.",
    };

    public static Finding NoSuchTheme(Located<string> theme, IEnumerable<string> known) => new()
    {
        Code = UnknownTheme,
        At = theme.At,
        Message = $"There is no theme named “{theme.Value}”.",
        Help = Nearest.To(theme.Value, known) is { } near ? $"Write {near}." : $"Themes are {Words.List(known)}.",
    };

    public static Finding NoSuchFile(string theme, string file) => new()
    {
        Code = MissingTemplate,
        At = SourceFile.Unread($"themes/{theme}/{file}").Top,
        Message = $"The theme {theme} has no {file}.",
        Help = "Copy the file of that name from a theme that has it, and change it there.",
    };

    public static Finding Template(Span at, string problem) => new()
    {
        Code = BrokenTemplate,
        At = at,
        Message = $"The template {at.File.Path} does not work: {problem}",
    };

    public static Finding NoWord(SourceFile file, string key, string english) => new()
    {
        Code = MissingWord,
        At = file.Top,
        Message = $"{file.Path} has no “{key}”.",
        Help = $"Add a line with {key}: and your words for “{english}”",
    };

    public static Finding Unreadable(Span at, string problem) => new()
    {
        Code = BrokenWords,
        At = at,
        Message = $"{at.File.Path} cannot be read: {problem}",
        Help = "A words file is a list of lines, each with a key, a colon and one text in quotation marks.",
    };

    public static Finding Placeholder(Located<string> word, string key, string name, IEnumerable<string> known) => new()
    {
        Code = StrangePlaceholder,
        At = word.At,
        Message = $"Nothing fills {{{name}}} in “{key}”: readers would see it as it stands.",
        Help = known.Any() ? $"“{key}” may have {Words.List(known.Select(each => $"{{{each}}}"))}." : $"“{key}” has no placeholders.",
    };

    public static Finding NotTranslated(Located<string> language, string theme, string instead) => new()
    {
        Code = OtherLanguage,
        At = language.At,
        Message = $"The theme {theme} has no words for “{language.Value}”: its own sentences are in “{instead}”.",
        Help = $"Copy the theme into the book and translate words.{instead}.yaml as words.{language.Value}.yaml.",
    };
}
