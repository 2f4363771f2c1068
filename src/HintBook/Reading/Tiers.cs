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
    private const int Needed = 3;
    private const int LongestHeading = 80;
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePreciseSourceLocation().Build();

    /// <summary>Cuts a text at its first-level headings.</summary>
    /// <param name="body">The text below the keys.</param>
    /// <param name="called">What the headings are called.</param>
    /// <param name="findings">Where findings go.</param>
    public static Tiers InMarkdown(Span body, TierHeadings called, List<Finding> findings)
    {
        var found = new Dictionary<int, (Span Heading, Prose Prose)>();
        var unknown = new List<Span>();
        var last = -1;
        if (Parsed(body, findings) is not { } markdown)
            return None;
        var headings = HeadingsIn(markdown, body);
        var read = Remarks.Blanked(body.Text, markdown);
        foreach (var (heading, text) in Sections(body, headings))
        {
            var prose = new Prose(read[(text.Start - body.Start)..(text.End - body.Start)], text);
            if (!called.Read.TryGetValue(heading.Text.Trim().TrimEnd(':'), out var step))
            {
                unknown.Add(heading);
                continue;
            }

            if (!found.TryAdd(step, (heading, prose)))
                findings.Add(StageFindings.TierTwice(heading, heading.Text.Trim(), found[step].Heading));
            else if (step < last)
                findings.Add(StageFindings.TierOutOfOrder(heading, heading.Text.Trim(), called.InOrder));
            if (string.IsNullOrWhiteSpace(prose.Markdown))
                findings.Add(StageFindings.TierEmpty(heading, heading.Text.Trim()));
            last = Math.Max(last, step);
        }

        int[] missing = [.. Enumerable.Range(0, Needed).Where(step => !found.ContainsKey(step))];
        findings.AddRange(HeadingFindings(body, read, headings, unknown, missing, called));
        return new Tiers(Of(0), Of(1), Of(2), Of(3));

        Prose? Of(int step) => found.TryGetValue(step, out var tier) ? tier.Prose : null;
    }

    // A heading of another word, and a line that should be a heading, each tell of the step that is missing: it isn't told of once more.
    private static IEnumerable<Finding> HeadingFindings(
        Span body, string read, (Span Line, Span Words)[] headings, List<Span> unknown, int[] missing, TierHeadings called)
    {
        var nearly = missing.Select(step => (Step: step, Line: NearlyHeading(body, step, called))).Where(each => each.Line is not null).ToArray();
        int[] left = [.. missing.Except(nearly.Select(each => each.Step))];
        var nearest = unknown.Select(heading => Nearest.To(heading.Text.Trim(), called.InOrder.Concat(called.Read.Keys))).ToArray();
        // As many as are missing: whoever calls them otherwise has them in their order.
        if (left.Length == unknown.Count)
            nearest = [.. left.Select(step => called.InOrder[step])];
        for (var i = 0; i < unknown.Count; i++)
            yield return StageFindings.UnknownTier(unknown[i], nearest[i], called.InOrder);
        var meant = nearest.OfType<string>().Select(name => called.Read[name]);
        foreach (var (step, line) in nearly)
            yield return StageFindings.NearlyHeading(line!.Value, InOrder[step].ToLowerInvariant(), called.InOrder[step]);
        foreach (var step in left.Except(meant))
            yield return StageFindings.TierMissing(body.File, InOrder[step].ToLowerInvariant(), called.InOrder[step]);

        var before = Trimmed(body with { End = headings.Length > 0 ? headings[0].Line.Start : body.End });
        var says = !string.IsNullOrWhiteSpace(read[(before.Start - body.Start)..(before.End - body.Start)]);
        if (says && !nearly.Any(each => each.Line!.Value.Start < before.End))
            yield return EntryLine.In(before) is { } entry ? StageFindings.EntryBeforeHeadings(entry) : StageFindings.TextBeforeHeadings(FirstLine(before));
    }

    // “## Clue”, “#Clue”, “**Clue**”, “Clue:” alone on a line.
    private static Span? NearlyHeading(Span body, int step, TierHeadings called)
    {
        var text = body.Text;
        for (var start = 0; start < text.Length; start = Lines.Next(text, start))
        {
            var line = text[start..Lines.Next(text, start)].TrimEnd();
            if (line.Length <= LongestHeading && called.Read.TryGetValue(line.Trim(' ', '#', '*', '_', ':'), out var read) && read == step)
                return new Span(body.File, body.Start + start, body.Start + start + line.Length);
        }

        return null;
    }

    /// <summary>The same four texts, written as keys; a key without a text has its finding already.</summary>
    public static Tiers InKeys(YamlMap keys, List<Finding> findings)
    {
        findings.AddRange(
            from name in InOrder[..Needed]
            where keys[name.ToLowerInvariant()] is null
            select StageFindings.TierMissing(keys.At.File, name.ToLowerInvariant(), name));
        return new(keys.Prose("nudge"), keys.Prose("clue"), keys.Prose("answer"), keys.Prose("reset"));
    }

    private static IEnumerable<(Span Heading, Span Text)> Sections(Span body, (Span Line, Span Words)[] headings)
    {
        for (var i = 0; i < headings.Length; i++)
        {
            var end = i + 1 < headings.Length ? headings[i + 1].Line.Start : body.End;
            yield return (headings[i].Words, Trimmed(new Span(body.File, headings[i].Line.End, end)));
        }
    }

    private static MarkdownDocument? Parsed(Span body, List<Finding> findings)
    {
        if (MarkdownBounds.Left(body.Text) is { } left)
        {
            findings.Add(StageFindings.LeavesBounds(FirstLine(body with { Start = body.Start + left.At }), left.Message, left.Help));
            return null;
        }

        try
        {
            return Markdown.Parse(body.Text, Pipeline);
        }
        catch (ArgumentException)
        {
            // Markdig's own bound on nesting, for what is nested over many lines.
            findings.Add(StageFindings.NestedTooDeep(FirstLine(body)));
            return null;
        }
    }

    private static (Span Line, Span Words)[] HeadingsIn(MarkdownDocument markdown, Span body) =>
    [
        .. from block in markdown.OfType<HeadingBlock>()
           where block.Level == 1
           let line = new Span(body.File, body.Start + block.Span.Start, body.Start + block.Span.End + 1)
           select (line, WordsOf(block, line, body.Start)),
    ];

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
