using System.Collections.Immutable;
using System.Globalization;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Text;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace HintBook.Print.Flow;

/// <summary>
/// Turns an author's Markdown into blocks: paragraphs, lists within lists, quotes, headings, literal text and workings. What stands out in any way stands in
/// the heavier weight, since there is no italic. Of a link its words are printed, and where it leads if they don't say so.
/// </summary>
/// <param name="style">How it is set.</param>
/// <param name="working">What stands for <c>{{ working: code }}</c>.</param>
/// <param name="head">The names of a working's columns.</param>
/// <param name="own">What stands for <c>{{ copy: name }}</c>.</param>
internal sealed class ProseBlocks(PaperStyle style, Working working, (string Read, string Gives) head, Func<string, string> own)
{
    private const double NumberRoom = 5.5;
    private const double BulletRoom = 4;
    private const double QuoteRoom = 5;

    private static readonly MarkdownPipeline CommonMark = new MarkdownPipelineBuilder { MaximumNestingDepth = ProseHtml.Deepest }.DisableHtml().Build();

    /// <summary>The blocks of a text; none for no text. A text that is nested too deep has none: it was a finding of the pages.</summary>
    public ImmutableArray<Block> Of(Prose? prose)
    {
        if (prose is null || MarkdownBounds.Left(prose.Markdown) is not null)
            return [];
        try
        {
            return [.. Of(Markdig.Markdown.Parse(OwnMark.Replace(prose.Markdown, name => AsItIs(own(name))), CommonMark), new(0, IsQuoted: false, null))];
        }
        catch (ArgumentException)
        {
            return [];
        }
    }

    // A value is no Markdown (CommonMark 0.31.2, 2.4).
    private static string AsItIs(string value) =>
        string.Concat(value.Select(letter => char.IsAscii(letter) && (char.IsPunctuation(letter) || char.IsSymbol(letter)) ? $"\\{letter}" : $"{letter}"));

    private IEnumerable<Block> Of(ContainerBlock container, Place place)
    {
        foreach (var block in container)
        {
            foreach (var set in Of(block, place))
                yield return set;
            // Only the first block of an item has the item's number beside it.
            place = place with { Marker = null };
        }
    }

    private IEnumerable<Block> Of(Markdig.Syntax.Block block, Place place) => block switch
    {
        HeadingBlock heading => [Text(Runs(heading.Inline, strong: false), style.Subheading, place) with { Role = Role.Subheading, WithNext = true }],
        ParagraphBlock paragraph => Paragraph(paragraph, place),
        ListBlock list => list.OfType<ListItemBlock>().SelectMany((item, i) => Item(list, item, i, place)),
        QuoteBlock quote => Of(quote, place with { Indent = place.Indent + QuoteRoom, IsQuoted = true }),
        Markdig.Syntax.CodeBlock code => [Text([new Run(code.Lines.ToString().TrimEnd())], style.Literal, place)],
        ContainerBlock other => Of(other, place),
        _ => [],
    };

    private IEnumerable<Block> Paragraph(ParagraphBlock paragraph, Place place)
    {
        var runs = Runs(paragraph.Inline, strong: false);
        var words = string.Concat(runs.Select(run => run.Text));
        // What a colon announces stands below it.
        if (WorkingMark.AskedIn(words) is not { } code)
            return [Text(runs, style.Body, place) with { WithNext = words.TrimEnd() is [.., ':' or '：'] }];
        var lines = working.LinesOf(code);
        return lines.IsEmpty ? [] : [new TableBlock(head, lines, style.Body) { Before = style.Gap }];
    }

    private IEnumerable<Block> Item(ListBlock list, ListItemBlock item, int index, Place place)
    {
        var first = int.TryParse(list.OrderedStart, NumberStyles.None, CultureInfo.InvariantCulture, out var start) ? start : 1;
        var sign = list.IsOrdered ? $"{(first + index).ToString(CultureInfo.InvariantCulture)}." : "•";
        var room = list.IsOrdered ? NumberRoom : BulletRoom;
        var blocks = Of(item, place with { Indent = place.Indent + room, Marker = new Marker.Sign(sign) });
        // Items stand closer than paragraphs.
        return blocks.Select((block, i) => i == 0 && index > 0 ? block with { Before = style.Gap * 0.6 } : block);
    }

    private TextBlock Text(ImmutableArray<Run> runs, TextStyle look, Place place) => new(runs, look)
    {
        Before = style.Gap,
        Indent = place.Indent,
        IsQuoted = place.IsQuoted,
        Role = place.IsQuoted ? Role.Quote : Role.Paragraph,
        Marker = place.Marker,
    };

    private static ImmutableArray<Run> Runs(ContainerInline? inlines, bool strong) =>
        inlines is null ? [] : [.. inlines.SelectMany<Inline, Run>(inline => Runs(inline, strong))];

    private static ImmutableArray<Run> Runs(Inline inline, bool strong) => inline switch
    {
        LiteralInline literal => [new Run(literal.Content.ToString(), strong)],
        HtmlEntityInline entity => [new Run(entity.Transcoded.ToString(), strong)],
        CodeInline code => [new Run(code.Content, Strong: true)],
        LineBreakInline { IsHard: true } => [new Run("\n", strong)],
        LineBreakInline => [new Run(" ", strong)],
        AutolinkInline link => [new Run(link.Url, strong)],
        LinkInline { IsImage: true } image => Runs(image, strong),
        LinkInline link => LinkRuns(link, strong),
        EmphasisInline emphasis => Runs(emphasis, strong: true),
        ContainerInline container => Runs(container, strong),
        _ => [],
    };

    private static ImmutableArray<Run> LinkRuns(LinkInline link, bool strong)
    {
        var words = Runs((ContainerInline)link, strong);
        var address = link.Url ?? "";
        return Link.LeadsOut(address) && !string.Concat(words.Select(run => run.Text)).Contains(address, StringComparison.Ordinal)
            ? [.. words, new Run($" ({address})", strong)]
            : words;
    }

    private sealed record Place(double Indent, bool IsQuoted, Marker? Marker);
}
