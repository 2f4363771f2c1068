using HintBook.Text;

namespace HintBook.Print;

/// <summary>What can be wrong with the papers beside the cards.</summary>
internal static class PaperFindings
{
    public static readonly FindingCode NoLetters = new("HB6301", Severity.Error, "a paper in letters that can't be printed");
    public static readonly FindingCode LabelFull = new("HB6302", Severity.Warning, "a label too small for what belongs on it");

    public static readonly FindingCode TooFew = new("HB6303", Severity.Warning, "a booklet with too little to mix");

    public static readonly FindingCode ClueTooLarge = new("HB6304", Severity.Error, "a clue too large for its sheet");

    private const int LettersShown = 12;

    public static Finding LettersMissing(Located<string> language, string paper, IReadOnlyCollection<string> letters) => NoLetters.At(
        language.At,
        $"The {paper} in “{language.Value}” can't be printed: the printing fonts have no letters for {string.Join(' ', letters.Take(LettersShown))}"
            + (letters.Count > LettersShown ? " …" : "") + ".",
        "Leave this paper out of “make”, or write the book in letters that the fonts have: Latin, Greek, Cyrillic, Arabic or Japanese.");

    public static Finding FullLabel(Span at) => LabelFull.At(
        at,
        "The box label has no room for everything that belongs on it, even in its smallest letters: what is lowest runs over its edge.",
        "Shorten the notes of the book's cautions, or its title.");

    /// <summary>A booklet in which many pages are left empty.</summary>
    /// <param name="at">Where the book is named.</param>
    /// <param name="stages">How many stages there are, at least 1.</param>
    /// <param name="empty">How many pages are left empty.</param>
    public static Finding FewToMix(Span at, int stages, int empty) => TooFew.At(
        at,
        $"In the booklet of hints {Words.Count(empty, "page is", "pages are")} left empty: with {Words.Count(stages, "stage")} there is too little of other "
            + "parts of the box to stand beside an entry, opposite it and behind it.",
        "Leave the booklet out of “make” and put cards into the box; or print it as it is: nothing is told, it is only thick.");

    /// <summary>A clue that has no room on a sheet at its true size.</summary>
    /// <param name="at">Where the clue is written, or how it is made.</param>
    /// <param name="code">The code's id.</param>
    /// <param name="serial">The copy that it is for; null for one that all have.</param>
    /// <param name="why">How large it would be.</param>
    public static Finding LargeClue(Span at, string code, string? serial, string why) =>
        ClueTooLarge.At(at, $"The clue of {code}{InCopy(serial)} has no room on a sheet at its true size.", why);

    /// <summary>A clue in letters that the fonts don't have.</summary>
    /// <param name="at">Where it is written.</param>
    /// <param name="code">The code's id.</param>
    /// <param name="serial">The copy that it is for; null for one that all have.</param>
    /// <param name="letters">The letters.</param>
    public static Finding ClueLettersMissing(Span at, string code, string? serial, IReadOnlyCollection<string> letters) => NoLetters.At(
        at,
        $"The clue of {code}{InCopy(serial)} can't be printed: the printing fonts have no letters for {string.Join(' ', letters.Take(LettersShown))}"
            + (letters.Count > LettersShown ? " …" : "") + ".",
        "Write it in letters that the fonts have: Latin, Greek, Cyrillic, Arabic or Japanese; or leave the clues out of “make”.");

    private static string InCopy(string? serial) => serial is null ? "" : $" in copy {serial}";
}
