using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>How many findings there are, in a sentence.</summary>
internal static class FindingCount
{
    public static string Say(Findings findings, bool withNotes)
    {
        var errors = findings.Count(Severity.Error);
        var warnings = findings.Count(Severity.Warning);
        var notes = findings.Count(Severity.Note);
        var told = errors + warnings == 0
            ? "nothing is wrong"
            : $"{Words.Count(errors, "error")}, {Words.Count(warnings, "warning")}";
        return notes == 0 ? told + "."
            : withNotes ? $"{told}, {Words.Count(notes, "note")}."
            : $"{told} ({Words.Count(notes, "note")} with --notes).";
    }
}
