using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;
using Markdig;
using Markdig.Syntax;

namespace HintBook.Reading;

/// <summary>The steps of help that stand under headings of their own in a stage's text.</summary>
internal sealed record Tiers(Prose? Nudge, Prose? Clue, Prose? Answer, Prose? Reset)
{
    /// <summary>Nothing could be read.</summary>
    public static Tiers None { get; } = new(null, null, null, null);

    private static readonly string[] InOrder = ["Nudge", "Clue", "Answer", "Reset"];
    private static readonly string[] Needed = InOrder[..3];
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().Build();

    /// <summary>Cuts a text at its first-level headings.</summary>
    public static Tiers InMarkdown(Span body, List<Finding> findings)
    {
        var found = new Dictionary<string, (Span Heading, Prose Prose)>();
        var last = -1;
        if (HeadingsIn(body, findings) is not { } headings)
            return None;
        foreach (var (heading, text) in Sections(body, headings, findings))
        {
            var index = Array.FindIndex(InOrder, name => name.Equals(heading.Text.Trim(), StringComparison.OrdinalIgnoreCase));
            if (index < 0)
            {
                findings.Add(StageFindings.UnknownTier(heading, Nearest.To(heading.Text.Trim(), InOrder), InOrder));
                continue;
            }

            var name = InOrder[index];
            if (!found.TryAdd(name, (heading, new Prose(text.Text, text))))
                findings.Add(StageFindings.TierTwice(heading, name, found[name].Heading));
            else if (index < last)
                findings.Add(StageFindings.TierOutOfOrder(heading, name, InOrder));
            if (text.Start == text.End)
                findings.Add(StageFindings.TierEmpty(heading, name));
            last = Math.Max(last, index);
        }

        FindMissing(body.File, found.ContainsKey, findings);
        return new Tiers(Of("Nudge"), Of("Clue"), Of("Answer"), Of("Reset"));

        Prose? Of(string name) => found.TryGetValue(name, out var tier) ? tier.Prose : null;
    }

    /// <summary>The same four texts, written as keys; a key without a text has its finding already.</summary>
    public static Tiers InKeys(YamlMap keys, List<Finding> findings)
    {
        FindMissing(keys.At.File, name => keys[name.ToLowerInvariant()] is not null, findings);
        return new(keys.Prose("nudge"), keys.Prose("clue"), keys.Prose("answer"), keys.Prose("reset"));
    }

    private static void FindMissing(SourceFile file, Func<string, bool> has, List<Finding> findings) =>
        findings.AddRange(Needed.Where(name => !has(name)).Select(name => StageFindings.TierMissing(file, name)));

    private static IEnumerable<(Span Heading, Span Text)> Sections(Span body, (Span Line, Span Words)[] headings, List<Finding> findings)
    {
        var first = headings.Length > 0 ? headings[0].Line.Start : body.End;
        var before = Trimmed(body with { End = first });
        if (before.Start < before.End)
            findings.Add(StageFindings.TextBeforeHeadings(FirstLine(before)));
        for (var i = 0; i < headings.Length; i++)
        {
            var end = i + 1 < headings.Length ? headings[i + 1].Line.Start : body.End;
            yield return (headings[i].Words, Trimmed(new Span(body.File, headings[i].Line.End, end)));
        }
    }

    private static (Span Line, Span Words)[]? HeadingsIn(Span body, List<Finding> findings)
    {
        if (MarkdownBounds.Left(body.Text) is { } left)
        {
            findings.Add(StageFindings.LeavesBounds(FirstLine(body with { Start = body.Start + left.At }), left.Message, left.Help));
            return null;
        }

        try
        {
            return
            [
                .. from block in Markdown.Parse(body.Text, Pipeline).OfType<HeadingBlock>()
                   where block.Level == 1
                   let line = new Span(body.File, body.Start + block.Span.Start, body.Start + block.Span.End + 1)
                   select (line, WordsOf(block, line, body.Start)),
            ];
        }
        catch (ArgumentException)
        {
            // Markdig's own bound on nesting, for what is nested over many lines.
            findings.Add(StageFindings.NestedTooDeep(FirstLine(body)));
            return null;
        }
    }

    private static Span WordsOf(HeadingBlock block, Span line, int offset) =>
        block.Inline is { Span.IsEmpty: false } words
            ? new Span(line.File, offset + words.Span.Start, offset + words.Span.End + 1)
            : line;

    private static Span FirstLine(Span span)
    {
        var end = span.Text.IndexOf('\n', StringComparison.Ordinal);
        return end < 0 ? span : Trimmed(span with { End = span.Start + end });
    }

    private static Span Trimmed(Span span)
    {
        var text = span.Text;
        // Leading blank lines go, but not the spaces of the first line: four of them mean something in Markdown.
        var start = 0;
        for (var i = 0; i < text.Length && char.IsWhiteSpace(text[i]); i++)
        {
            if (text[i] == '\n')
                start = i + 1;
        }

        var end = text.TrimEnd().Length;
        return end <= start ? span with { Start = span.End } : new Span(span.File, span.Start + start, span.Start + end);
    }
}
