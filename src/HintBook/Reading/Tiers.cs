using System.Buffers;
using HintBook.Books;
using HintBook.Reading.Yaml;
using HintBook.Text;
using Markdig;
using Markdig.Syntax;

namespace HintBook.Reading;

/// <summary>The steps of help that stand under headings of their own in a stage's text.</summary>
internal sealed record Tiers(Prose? Nudge, Prose? Clue, Prose? Answer, Prose? Reset)
{
    /// <summary>How many characters of indentation, dashes and quotation marks a line may start with: room for a hundred levels.</summary>
    private const int MostMarks = 400;

    private static readonly SearchValues<char> MarksOfNesting = SearchValues.Create(" \t>-*+");
    private static readonly string[] InOrder = ["Nudge", "Clue", "Answer", "Reset"];
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().Build();

    /// <summary>Cuts a text at its first-level headings.</summary>
    public static Tiers InMarkdown(Span body, List<Finding> findings)
    {
        var found = new Dictionary<string, Prose>();
        var last = -1;
        foreach (var (heading, text) in Sections(body, findings))
        {
            var index = Array.FindIndex(InOrder, name => name.Equals(heading.Text.Trim(), StringComparison.OrdinalIgnoreCase));
            if (index < 0)
                findings.Add(StageFindings.UnknownTier(heading, Nearest.To(heading.Text.Trim(), InOrder), InOrder));
            else if (!found.TryAdd(InOrder[index], new Prose(text.Text, text)))
                findings.Add(StageFindings.TierTwice(heading, InOrder[index], found[InOrder[index]].At));
            else if (index < last)
                findings.Add(StageFindings.TierOutOfOrder(heading, InOrder[index], InOrder));
            else if (text.Start == text.End)
                findings.Add(StageFindings.TierEmpty(heading, InOrder[index]));
            last = Math.Max(last, index);
        }

        return new Tiers(Of("Nudge"), Of("Clue"), Of("Answer"), Of("Reset"));

        Prose? Of(string name) => found.GetValueOrDefault(name);
    }

    /// <summary>The same four texts, written as keys.</summary>
    public static Tiers InKeys(YamlMap keys) => new(keys.Prose("nudge"), keys.Prose("clue"), keys.Prose("answer"), keys.Prose("reset"));

    /// <summary>Says which of the three steps of help a stage lacks.</summary>
    public void FindMissing(SourceFile file, List<Finding> findings)
    {
        foreach (var (name, _) in new[] { ("Nudge", Nudge), ("Clue", Clue), ("Answer", Answer) }.Where(tier => tier.Item2 is null))
            findings.Add(StageFindings.TierMissing(file, name));
    }

    private static IEnumerable<(Span Heading, Span Text)> Sections(Span body, List<Finding> findings)
    {
        var headings = Headings(body, findings);
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

    // Markdig's time grows with the square of the depth, and past tens of thousands of levels it throws: a line that starts
    // with so many marks is refused before it gets there.
    private static Span? DeepLine(Span body)
    {
        var text = body.Text;
        for (var start = 0; start < text.Length;)
        {
            var marks = text.AsSpan(start).IndexOfAnyExcept(MarksOfNesting);
            if (marks is < 0 or > MostMarks && text.Length - start > MostMarks)
                return new Span(body.File, body.Start + start, body.Start + start + MostMarks);
            var end = text.IndexOf('\n', start);
            start = end < 0 ? text.Length : end + 1;
        }

        return null;
    }

    private static (Span Line, Span Words)[] Headings(Span body, List<Finding> findings)
    {
        if (DeepLine(body) is { } deep)
        {
            findings.Add(StageFindings.NestedTooDeep(deep));
            return [];
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
            // Markdig's own bound on nesting, tens of thousands of levels deep.
            findings.Add(StageFindings.NestedTooDeep(FirstLine(body)));
            return [];
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
