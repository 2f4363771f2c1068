using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>How many findings there are, in a sentence.</summary>
internal static class FindingCount
{
    /// <summary>The sentence.</summary>
    /// <param name="findings">What is counted.</param>
    /// <param name="withNotes">Whether the notes are printed, too.</param>
    /// <param name="allProved">Whether all claims about the book are proved; otherwise it isn't said that nothing is wrong.</param>
    public static string Say(Findings findings, bool withNotes, bool allProved = true)
    {
        var errors = findings.Count(Severity.Error);
        var warnings = findings.Count(Severity.Warning);
        var notes = findings.Count(Severity.Note);
        var told = errors + warnings == 0 && allProved
            ? "nothing is wrong"
            : $"{Words.Count(errors, "error")}, {Words.Count(warnings, "warning")}";
        return notes == 0 ? told + "."
            : withNotes ? $"{told}, {Words.Count(notes, "note")}."
            : $"{told} ({Words.Count(notes, "note")} with --notes).";
    }
}
