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

    public static readonly FindingCode NotToldApartCode = new("HB7223", Severity.Note, "places that “Where am I?” can’t tell apart");

    public static readonly FindingCode NotByStatesCode =
        new("HB7224", Severity.Note, "“Where am I?” wasn’t made from every state of the box");

    public static readonly FindingCode PhotoNowhereCode = new("HB7222", Severity.Warning, "a photo of a position that no page shows");

    public static Finding PhotoNowhere(Books.Part part, string position, Books.Photo photo) => PhotoNowhereCode.At(
        photo.File.At,
        $"No page shows this photo of “{part.Id.Value}: {position}”.",
        "“Where am I?” shows the photo of a position that shows on the closed box (“seen: true”); "
            + "the reset page shows the one into which it is put back. Any other photo belongs into the stage that brings the position about.");

    public static Finding NotToldApart(Books.Book book, System.Collections.Immutable.ImmutableArray<string> stages)
    {
        Books.Stage[] next = [.. stages.Select(id => book.Stages.First(stage => stage.Id.Value == id))];
        return NotToldApartCode.At(
            next[^1].Sign.At,
            $"“Where am I?” can’t tell whether {Words.List(next.Select(stage => $"“{stage.Title}”"), "or")} is next: "
                + "all that a reader may be asked is the same.",
            "Mark a part that shows on the closed box and moves in between with “seen: true”, and give its positions words "
                + "(“positions: { up: folded up, down: { says: hangs down, seen: true } }”); "
                + "or tell when a part inside can be seen (“shows-when: { roof: off }”). "
                + "Until then such a reader is sent on from the last step that is certainly done.");
    }

    public static Finding NotTold(Books.Book book, string stage)
    {
        var next = book.Stages.First(each => each.Id.Value == stage);
        return NotToldApartCode.At(
            next.Sign.At,
            $"“Where am I?” can’t lead every reader to “{next.Title}”: its title or its sign names something that isn’t certainly known where it is next.",
            "Word the sign by what anyone sees there, or mark what it names with “seen: true” if it shows on the closed box.");
    }

    public static Finding NotByStates(Books.Book book, WhereaboutsSource from) => NotByStatesCode.At(
        book.Title.At,
        from == WhereaboutsSource.Stages
            ? "“Where am I?” goes by what is proved of the steps: the box has too many states to look at each."
            : "“Where am I?” shows the signs in the order of the steps: the box can be opened in too many orders to ask what shows.",
        "Nothing has to be done. A box whose parts wait for each other more has fewer states.");

    public static Finding NoSuchTheme(Located<string> theme, IEnumerable<string> known) => UnknownTheme.At(
        theme.At,
        $"There is no theme named “{theme.Value}”.",
        Nearest.To(theme.Value, known) is { } near ? $"Write instead: {near}" : $"Themes are {Words.List(known)}.");

    public static Finding NoSuchFile(string theme, string file) => MissingTemplate.At(
        SourceFile.Unread($"themes/{theme}/{file}").Top,
        $"The theme {theme} has no {file}.",
        IsBuiltIn(file)
            ? "Lay a fresh copy of the theme into another book with “hintbook theme”, and take the file from there."
            : "Put the file there, or correct its name where it is asked for.");

    private static bool IsBuiltIn(string file) => BuiltInThemes.Texts.Values.Any(texts => texts.ContainsKey(file));

    public static Finding Template(Span at, string problem) => BrokenTemplate.At(
        at,
        $"The template {at.File.Path} does not work: {problem}",
        "Correct the name, or close what is opened there with “end”. The README.md in the theme's folder lists what each template gets.");

    public static Finding NoWord(SourceFile file, string key, string english) => MissingWord.At(
        file.Top,
        $"{file.Path} has no “{key}”.",
        $"Add a line with {key}: and your words for “{english}”");

    public static Finding Unreadable(Span at, string problem) => BrokenWords.At(
        at,
        $"{at.File.Path} cannot be read: {problem}.",
        "Look at this line and the one before it: each is a key, a colon and one text in quotation marks. "
            + "A straight quotation mark within the text needs a backslash before it.");

    public static Finding Placeholder(Located<string> word, string key, string name, IEnumerable<string> known) => StrangePlaceholder.At(
        word.At,
        $"Nothing fills {{{name}}} in “{key}”: readers would see it as it stands.",
        known.Any() ? $"“{key}” may have {Words.List(known.Select(each => $"{{{each}}}"))}." : $"“{key}” has no placeholders.");

    /// <summary>A theme that speaks another language than the book.</summary>
    /// <param name="language">The book's language.</param>
    /// <param name="theme">The theme's name.</param>
    /// <param name="instead">The language of the words that are taken instead.</param>
    /// <param name="known">The languages that the theme has words in.</param>
    public static Finding NotTranslated(Located<string> language, string theme, string instead, IEnumerable<string> known) => OtherLanguage.At(
        language.At,
        $"The theme {theme} has no words for “{language.Value}”: its own sentences are in “{instead}”.",
        $"It has words in {Words.List(known.Select(each => $"“{each}”"))}: if the book is in one of these, write the language so. "
            + $"Otherwise copy the theme into the book with “hintbook theme” and translate words.{instead}.yaml as words.{language.Value}.yaml.");
}
