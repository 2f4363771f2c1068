using HintBook.Text;

namespace HintBook.Reading.Sittings;

/// <summary>What can be wrong in a table of sittings. The rest of it is used.</summary>
internal static class SittingFindings
{
    public static readonly FindingCode OtherColumnsCode = new("HB1801", Severity.Warning, "a table of sittings with other columns");
    public static readonly FindingCode RowCode = new("HB1802", Severity.Warning, "a row of sittings that can't be used");

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
}
