using System.Text;

namespace HintBook.Text;

/// <summary>Writes findings for a person at a terminal.</summary>
public static class FindingsText
{
    /// <summary>
    /// For each finding its weight, code, place and message, the line with the place underlined, other places, and what to write
    /// instead; findings are parted by an empty line. Empty for no findings. Lines end with <c>\n</c>.
    /// </summary>
    /// <param name="findings">What to write.</param>
    /// <param name="withNotes">Whether notes are written too.</param>
    /// <param name="colour">Whether to colour by ANSI codes (ECMA-48, "select graphic rendition").</param>
    public static string Write(Findings findings, bool withNotes = false, bool colour = false) =>
        string.Join("\n", findings.Shown(withNotes).Select(finding => One(finding, colour ? Paint.InColour : Paint.Plain)));

    private static string One(Finding finding, Paint paint)
    {
        var text = new StringBuilder();
        var severity = finding.Code.Severity.Word();
        text.Append(paint.Severity(finding.Code.Severity, $"{severity} {finding.Code.Id}"));
        text.Append($" {paint.Place(Place(finding.At))}: {TerminalText.Shown(finding.Message)}\n");
        Source(text, finding.At, marks => paint.Severity(finding.Code.Severity, marks));
        foreach (var related in finding.Related)
        {
            text.Append($"  {paint.Place(Place(related.At))}: {TerminalText.Shown(related.Message)}\n");
            Source(text, related.At, paint.Place);
        }

        if (finding.Help is { } help)
            text.Append($"  {paint.Help("help:")} {string.Join("\n        ", help.Split('\n').Select(line => TerminalText.Shown(line.TrimEnd())))}\n");
        return text.ToString();
    }

    private static void Source(StringBuilder text, Span at, Func<string, string> painted)
    {
        if (Excerpt.Of(at) is not { } excerpt)
            return;
        var number = $"{at.File.PlaceOf(at.Start).Line}";
        text.Append($"  {number} | {excerpt.Line}\n");
        var indent = excerpt.Marks.Length - excerpt.Marks.TrimStart().Length;
        text.Append($"  {new string(' ', number.Length)} | {new string(' ', indent)}{painted(excerpt.Marks[indent..])}\n");
    }

    private static string Place(Span at)
    {
        var (line, column) = at.File.PlaceOf(at.Start);
        return $"{TerminalText.Shown(at.File.Path)}:{line}:{column}";
    }

    private sealed record Paint(bool Colours)
    {
        public static Paint Plain { get; } = new(false);

        public static Paint InColour { get; } = new(true);

        public string Severity(Severity severity, string text) => Coloured(text, severity switch
        {
            HintBook.Text.Severity.Error => "1;31",
            HintBook.Text.Severity.Warning => "1;33",
            _ => "1;36",
        });

        public string Place(string text) => Coloured(text, "1");

        public string Help(string text) => Coloured(text, "1;32");

        private string Coloured(string text, string code) => Colours ? $"\e[{code}m{text}\e[0m" : text;
    }
}
