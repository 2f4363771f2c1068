using HintBook.Text;

namespace HintBook.Reading.Sittings;

/// <summary>What can be wrong in a table of sittings. The rest of it is used.</summary>
internal static class SittingFindings
{
    public static readonly FindingCode OtherColumnsCode = new("HB1801", Severity.Warning, "a table of sittings with other columns");
    public static readonly FindingCode RowCode = new("HB1802", Severity.Warning, "a row of sittings that can't be used");
    public static readonly FindingCode LettersCode = new("HB7411", Severity.Warning, "a row of letters that can't be used");

    /// <summary>No column says which stage a row is about.</summary>
    public static Finding NoStageColumn(Span at, string[] columns) => OtherColumnsCode.At(
        at,
        "The first row names no column “stage”, so it can't be told what the rows are about.",
        $"Write as the first row: {string.Join(",", columns)}");

    /// <summary>A stage that the book hasn't.</summary>
    public static Finding NoStage(Located<string> named, IEnumerable<string> known) => RowCode.At(
        named.At,
        named.Value.Length == 0 ? "This row names no stage." : $"The book has no stage “{named}”.",
        Nearest.To(named.Value, known) is { } near
            ? $"Write instead: {near}"
            : "Write a stage's title, or its file name without the number and the ending. If the stage is gone, leave the row: it is passed over.");

    /// <summary>Minutes that are none.</summary>
    public static Finding NoMinutes(Located<string> written) => RowCode.At(
        written.At,
        $"“{written}” isn't a number of minutes.",
        "Write minutes, such as 7 or 7.5, or leave the cell empty.");

    /// <summary>A kind of help that there isn't.</summary>
    public static Finding NoHelp(Located<string> written) => RowCode.At(
        written.At,
        $"“{written}” isn't a kind of help.",
        "Write one of: none, nudge, clue, answer, gave up.");

    /// <summary>No column says which page a letter is about.</summary>
    public static Finding NoPageColumn(Span at) => LettersCode.At(
        at,
        "The first row names no column “page”, so it can't be told what the letters are about.",
        $"Write as the first row: {LetterFile.Heading}");

    /// <summary>A letter about no page.</summary>
    public static Finding NoPage(Span at) => LettersCode.At(at, "This row names no page.", "Write the eight letters of the page's name, or take the row out.");

    /// <summary>A day that is none; the letter counts all the same.</summary>
    public static Finding NoDate(Located<string> written) => LettersCode.At(
        written.At,
        $"“{written}” isn't a day.",
        "Write year, month and day, such as 2026-11-28, or leave the cell empty.");
}
