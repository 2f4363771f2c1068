namespace HintBook.Text;

/// <summary>The line that a finding is about, and the marks that go below it.</summary>
/// <param name="Line">What is shown of the line.</param>
/// <param name="Marks">Spaces, then at least one <c>^</c> below the place.</param>
internal sealed record Excerpt(string Line, string Marks)
{
    /// <summary>A line of more columns than this is cut around the place.</summary>
    public const int Widest = 100;

    private const string More = "…";

    /// <summary>
    /// The line where the span begins, with the place underlined up to its end or the line's; null where there is no text to
    /// show. An empty span is one mark.
    /// </summary>
    public static Excerpt? Of(Span at)
    {
        var (number, column) = at.File.PlaceOf(at.Start);
        var line = at.File.LineAt(number);
        if (string.IsNullOrWhiteSpace(line))
            return null;

        var start = Math.Min(column - 1, line.Length);
        var end = Math.Clamp(start + Math.Max(0, at.End - at.Start), start, line.Length);
        var (from, to) = Window(line, start);
        var before = (from > 0 ? More : "") + TerminalText.Shown(line.AsSpan(from, start - from));
        var shown = before + TerminalText.Shown(line.AsSpan(start, to - start)) + (to < line.Length ? More : "");
        var marks = Math.Max(1, TerminalText.Columns(TerminalText.Shown(line.AsSpan(start, Math.Min(end, to) - start))));
        return new(shown.TrimEnd(), new string(' ', TerminalText.Columns(before)) + new string('^', marks));
    }

    // A third of the room goes to what stands before the place, and more where little stands after it. Pairs of surrogates stay together.
    private static (int From, int To) Window(string line, int start)
    {
        if (TerminalText.Columns(line) <= Widest)
            return (0, line.Length);
        var (from, to) = (start, start);
        while (to < line.Length && Wide(line, start, to + Letter(line, to)) <= Widest * 2 / 3)
            to += Letter(line, to);
        while (from > 0 && Wide(line, from - LetterBefore(line, from), to) <= Widest)
            from -= LetterBefore(line, from);
        return (from, to);
    }

    private static int Wide(string line, int from, int to) => TerminalText.Columns(line.AsSpan(from, to - from));

    private static int Letter(string line, int at) =>
        char.IsHighSurrogate(line[at]) && at + 1 < line.Length && char.IsLowSurrogate(line[at + 1]) ? 2 : 1;

    private static int LetterBefore(string line, int at) =>
        at > 1 && char.IsLowSurrogate(line[at - 1]) && char.IsHighSurrogate(line[at - 2]) ? 2 : 1;
}
