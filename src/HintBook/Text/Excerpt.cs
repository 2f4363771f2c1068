namespace HintBook.Text;

/// <summary>The line that a finding is about, with the words in question between two marks.</summary>
/// <param name="Before">What is shown of the line before the words.</param>
/// <param name="Marked">The words in question, as far as they are shown; empty for a mere place.</param>
/// <param name="After">What is shown of the line after the words.</param>
internal sealed record Excerpt(string Before, string Marked, string After)
{
    /// <summary>A line of more columns than this is cut around the words; the two marks and the dots where it was cut come on top.</summary>
    public const int Widest = 72;

    /// <summary>
    /// Stands before the words. A sign that books don't use and that terminal fonts have, since quotation marks of all kinds are found in
    /// books.
    /// </summary>
    public const string Open = "►";

    /// <summary>Stands after the words.</summary>
    public const string Close = "◄";

    private const string More = "…";

    /// <summary>The line where the span begins; null where there is no text to show, or where the finding concerns the file as such.</summary>
    public static Excerpt? Of(Span at)
    {
        var (number, column) = at.File.PlaceOf(at.Start);
        var line = at.File.LineAt(number);
        if (at == at.File.Top || string.IsNullOrWhiteSpace(line))
            return null;

        var start = Math.Min(column - 1, line.Length);
        var end = Math.Clamp(start + Math.Max(0, at.End - at.Start), start, line.Length);
        var (from, to) = Window(line, start);
        var last = Math.Min(end, to);
        var goesOn = last < end || !string.IsNullOrWhiteSpace(at.File.Text[Math.Min(at.Start + last - start, at.End)..at.End]);
        return new(
            (from > 0 ? More : "") + TerminalText.Shown(line.AsSpan(from, start - from)),
            TerminalText.Shown(line.AsSpan(start, last - start)) + (goesOn ? More : ""),
            (TerminalText.Shown(line.AsSpan(last, to - last)) + (to < line.Length && last == end ? More : "")).TrimEnd());
    }

    // A third of the room goes to what stands before the place; where little stands on one side, the other gets more. Pairs of surrogates stay together.
    private static (int From, int To) Window(string line, int start)
    {
        if (TerminalText.Columns(line) <= Widest)
            return (0, line.Length);
        var (from, to) = (start, start);
        while (to < line.Length && Wide(line, start, to + Letter(line, to)) <= Widest * 2 / 3)
            to += Letter(line, to);
        while (from > 0 && Wide(line, from - LetterBefore(line, from), to) <= Widest)
            from -= LetterBefore(line, from);
        while (to < line.Length && Wide(line, from, to + Letter(line, to)) <= Widest)
            to += Letter(line, to);
        return (from, to);
    }

    private static int Wide(string line, int from, int to) => TerminalText.Columns(line.AsSpan(from, to - from));

    private static int Letter(string line, int at) =>
        char.IsHighSurrogate(line[at]) && at + 1 < line.Length && char.IsLowSurrogate(line[at + 1]) ? 2 : 1;

    private static int LetterBefore(string line, int at) =>
        at > 1 && char.IsLowSurrogate(line[at - 1]) && char.IsHighSurrogate(line[at - 2]) ? 2 : 1;
}
