using System.Text;

namespace HintBook.Text;

/// <summary>Writes findings for a person at a terminal of 80 columns.</summary>
public static class FindingsText
{
    /// <summary>The columns that a line of text takes at most. A single word that is longer, such as an address, isn't cut.</summary>
    public const int Columns = 80;

    private const string Instead = "Write instead:";
    private const string OfSource = "    ";
    private const string OfText = "  ";

    /// <summary>
    /// For each finding its place in words with its weight and code, the line itself with the words in question between
    /// <c>►</c> and <c>◄</c>, what is wrong, other places, and last what to write instead; an empty line follows each finding.
    /// What concerns a file as such has no line. Empty for no findings. Lines end with <c>\n</c>.
    /// </summary>
    /// <param name="findings">What to write.</param>
    /// <param name="withNotes">Whether notes are written too.</param>
    /// <param name="colour">Whether to colour by ANSI codes (ECMA-48, "select graphic rendition").</param>
    public static string Write(Findings findings, bool withNotes = false, bool colour = false) =>
        string.Concat(findings.Shown(withNotes).Select(finding => One(finding, colour ? Paint.InColour : Paint.Plain) + "\n"));

    private static string One(Finding finding, Paint paint)
    {
        var text = new StringBuilder();
        var severity = finding.Code.Severity;
        text.Append($"{paint.Place(Place(finding.At))} · {paint.Severity(severity, $"{severity.Word()} {finding.Code.Id}")}\n");
        Source(text, finding.At, words => paint.Severity(severity, words));
        Sentences(text, finding.Message);
        foreach (var related in finding.Related)
        {
            var sameFile = related.At.File == finding.At.File && related.At != related.At.File.Top;
            Sentences(text, $"{(sameFile ? $"Line {LineOf(related.At)}" : Place(related.At))}: {related.Message}");
            Source(text, related.At, paint.Place);
        }

        if (finding.Help is { } help)
            Sentences(text, help, line => line.StartsWith(Instead, StringComparison.Ordinal) ? paint.Help(Instead) + line[Instead.Length..] : line);
        return text.ToString();
    }

    private static void Source(StringBuilder text, Span at, Func<string, string> painted)
    {
        if (Excerpt.Of(at) is { } excerpt)
            text.Append($"{OfSource}{excerpt.Before}{painted(Excerpt.Open + excerpt.Marked + Excerpt.Close)}{excerpt.After}\n");
    }

    private static void Sentences(StringBuilder text, string sentences, Func<string, string>? painted = null)
    {
        foreach (var line in TerminalText.Wrapped(sentences, Columns - OfText.Length))
            text.Append($"{OfText}{(painted is null ? line : painted(line))}\n");
    }

    private static string Place(Span at) => TerminalText.Shown(at.File.Path) + (at == at.File.Top ? "" : $", line {LineOf(at)}");

    private static int LineOf(Span at) => at.File.PlaceOf(at.Start).Line;

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
