using HintBook.Text;

namespace HintBook.Pages;

/// <summary>What can be wrong where a text asks for the working of a code.</summary>
internal static class WorkingFindings
{
    public static readonly FindingCode UnknownCode = new("HB7211", Severity.Error, "the working of a code that isn't in the book");
    public static readonly FindingCode UnprovedCode = new("HB7212", Severity.Error, "the working of a code that isn't proved");
    public static readonly FindingCode OutOfPlaceCode = new("HB7213", Severity.Error, "a working that stands where none can");

    public static Finding Unknown(Span at, string code, IReadOnlyCollection<string> known) => UnknownCode.At(
        at,
        $"The book has no code called “{code}”.",
        Nearest.To(code, known) is { } near ? $"Write instead: {near}"
            : known.Count > 0 ? $"There is {Words.List(known.Select(one => $"“{one}”"))}." : "Add it to the book under “codes”.");

    public static Finding Unproved(Span at, string code) => UnprovedCode.At(
        at,
        $"The working of {code} can't be shown, because its clue isn't proved to give its answer.",
        "Give it a “clue” and “reads” that give the answer; “hintbook prove” says what is missing.");

    public static Finding DiffersByCopy(Span at, string code) => UnprovedCode.At(
        at,
        $"The working of {code} can't be shown, because every copy has a clue of its own: one of them would be told to all.",
        "Say in words how a clue is read, and leave the letters and figures to each copy.");

    public static Finding TooEarly(Span at) => OutOfPlaceCode.At(
        at,
        "A working gives the answer away, so it can stand only in an answer.",
        "Move it below “# Answer”.");

    public static Finding NotAlone(Span at) => OutOfPlaceCode.At(
        at,
        "A working is a table, so it can't stand inside of a sentence.",
        "Give “{{ working: code }}” a paragraph of its own, with an empty line before and after it.");
}
