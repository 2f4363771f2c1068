using System.Buffers;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>The keys between two lines <c>---</c> at the top of a Markdown file.</summary>
internal static class FrontMatter
{
    private static readonly SearchValues<char> Dashes = SearchValues.Create("-–—―‒−_");

    /// <summary>The span of the keys and the span of the text after them; without keys, a finding and null.</summary>
    public static (Span? Keys, Span Body) Split(SourceFile file, List<Finding> findings)
    {
        var text = file.Text;
        if (!IsFence(text, 0))
        {
            var first = text.Length - text.TrimStart().Length;
            findings.Add(
                first < text.Length && IsFence(text, first) ? StageFindings.FenceNotFirst(LineAt(file, first))
                : first < text.Length && IsNearlyFence(text, first) ? StageFindings.NearlyFence(LineAt(file, first))
                : StageFindings.NoFrontMatter(file));
            return (null, file.Whole);
        }

        var start = Lines.Next(text, 0);
        for (var line = start; line < text.Length; line = Lines.Next(text, line))
        {
            if (IsFence(text, line))
                return (new Span(file, start, line), new Span(file, Lines.Next(text, line), text.Length));
        }

        for (var line = start; line < text.Length; line = Lines.Next(text, line))
        {
            if (!IsNearlyFence(text, line))
                continue;
            findings.Add(StageFindings.NearlyFence(LineAt(file, line)));
            return (new Span(file, start, line), new Span(file, Lines.Next(text, line), text.Length));
        }

        findings.Add(StageFindings.FrontMatterOpen(file));
        return (null, file.Whole);
    }

    /// <summary>A stage file's text as far as its keys go: all of a YAML file, and of a Markdown file what stands above its text.</summary>
    public static string KeysOf(SourceFile file) =>
        file.Path.EndsWith(".md", StringComparison.Ordinal) && Split(file, []).Keys is { } keys ? file.Text[..keys.End] : file.Text;

    private static Span LineAt(SourceFile file, int line) =>
        new(file, line, line + file.Text[line..Lines.Next(file.Text, line)].TrimEnd().Length);

    // Word processors make one long dash, or a line across the page, of hyphens.
    private static bool IsNearlyFence(string text, int line) =>
        text.AsSpan(line, Lines.Next(text, line) - line).TrimEnd() is { Length: > 0 } signs && !signs.ContainsAnyExcept(Dashes);

    private static bool IsFence(string text, int line) =>
        text.AsSpan(line, Lines.Next(text, line) - line).TrimEnd() is "---";
}
