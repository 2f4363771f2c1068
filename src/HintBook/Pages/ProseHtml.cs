using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;
using Markdig;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace HintBook.Pages;

/// <summary>
/// Turns an author's Markdown into HTML: CommonMark 0.31.2 and no extension, with four departures. HTML in the text is shown
/// as text, for it could load or hide things, unless the author asks for it; it never runs, the page's policy sees to that.
/// Links lead only where <see cref="Link.Leads"/> says. Images are not resolved, only named photos are published. Headings stand two levels
/// lower, below the page's title and the tier's name.
/// </summary>
internal static class ProseHtml
{
    /// <summary>How deep blocks or inlines may nest: Markdig's own limit, which it answers with an exception.</summary>
    public const int Deepest = 128;

    private const int HeadingsLower = 2;
    private const int SmallestHeading = 6;

    private static readonly MarkdownPipeline CommonMark = Plain().DisableHtml().Build();
    private static readonly MarkdownPipeline WithHtml = Plain().Build();

    /// <summary>The HTML of a piece of prose and what was left out of it. Safe to call from any thread.</summary>
    /// <param name="prose">The text.</param>
    /// <param name="working">What stands for <c>{{ working: code }}</c>; without it that is a text like any other.</param>
    /// <param name="html">Whether HTML in the text stays HTML.</param>
    /// <param name="inside">Where a link to another page of the site leads, null for none; an author's book has no such links.</param>
    public static RenderedProse Render(Prose prose, Working? working = null, bool html = false, Func<string, string?>? inside = null)
    {
        var pipeline = html ? WithHtml : CommonMark;
        if (MarkdownBounds.Left(prose.Markdown) is { } left)
            return new(Html.Empty, [MarkdownFindings.LeavesBounds(prose.At, left.Message, left.Help)]);
        try
        {
            var document = Markdig.Markdown.Parse(prose.Markdown, pipeline);
            var findings = ImmutableArray.CreateBuilder<Finding>();
            Mend(document, prose, inside, findings);
            if (working is not null && WorkingMark.IsIn(prose.Markdown))
                PutWorkings(document, prose, working, findings);
            var text = html ? Fitting(document.ToHtml(pipeline), prose, findings) : new Html(document.ToHtml(pipeline));
            return new(text, findings.ToImmutable());
        }
        catch (ArgumentException)
        {
            return new(Html.Empty, [MarkdownFindings.Deep(prose.At)]);
        }
    }

    private static MarkdownPipelineBuilder Plain() => new MarkdownPipelineBuilder { MaximumNestingDepth = Deepest }.UsePreciseSourceLocation();

    private static Html Fitting(string html, Prose prose, ImmutableArray<Finding>.Builder findings)
    {
        var (fit, leftOut) = OwnHtml.Fit(html);
        if (leftOut.Count > 0)
            findings.Add(MarkdownFindings.Markup(prose.At, leftOut));
        return new Html(fit);
    }

    private static void Mend(MarkdownDocument document, Prose prose, Func<string, string?>? inside, ImmutableArray<Finding>.Builder findings)
    {
        // Listed first: taking a link out changes the tree that is walked.
        foreach (var node in document.Descendants().ToArray())
        {
            switch (node)
            {
                case HeadingBlock heading:
                    heading.Level = Math.Min(SmallestHeading, heading.Level + HeadingsLower);
                    break;
                case LinkInline { IsImage: true } image:
                    findings.Add(MarkdownFindings.Image(Place(prose, image), AddressOf(image)));
                    image.ReplaceBy(new LiteralInline(DescriptionOf(image)), copyChildren: false);
                    break;
                case LinkInline link when inside?.Invoke(AddressOf(link)) is { } page:
                    link.Url = page;
                    break;
                case LinkInline link when !Link.Leads(AddressOf(link)):
                    findings.Add(MarkdownFindings.Link(Place(prose, link), AddressOf(link)));
                    KeepText(link);
                    break;
                case LinkInline link when Link.LeadsOut(AddressOf(link)):
                    link.GetAttributes().AddProperty("rel", "noreferrer");
                    break;
                case AutolinkInline { IsEmail: false } link when !Link.Leads(link.Url):
                    findings.Add(MarkdownFindings.Link(Place(prose, link), link.Url));
                    link.ReplaceBy(new LiteralInline(link.Url));
                    break;
                case AutolinkInline { IsEmail: false } link when Link.LeadsOut(link.Url):
                    link.GetAttributes().AddProperty("rel", "noreferrer");
                    break;
            }
        }
    }

    private static void PutWorkings(MarkdownDocument document, Prose prose, Working working, ImmutableArray<Finding>.Builder findings)
    {
        foreach (var paragraph in document.Descendants<ParagraphBlock>().ToArray())
        {
            var text = string.Concat(paragraph.Inline?.Descendants<LiteralInline>().Select(literal => literal.Content.ToString()) ?? []);
            if (WorkingMark.AskedIn(text) is not { } code)
            {
                if (WorkingMark.IsIn(text))
                    findings.Add(WorkingFindings.NotAlone(Place(prose, paragraph)));
                continue;
            }

            var (table, wrong) = working.TableOf(code, Place(prose, paragraph));
            if (wrong is not null)
                findings.Add(wrong);
            var parent = paragraph.Parent!;
            var at = parent.IndexOf(paragraph);
            parent.RemoveAt(at);
            parent.Insert(at, new HtmlBlock(null!) { Lines = new(table.Text) });
        }
    }

    private static string AddressOf(LinkInline link) => link.GetDynamicUrl?.Invoke() ?? link.Url ?? "";

    // A description is plain text, whatever stands in it (CommonMark 0.31.2, 6.4).
    private static string DescriptionOf(LinkInline image) => string.Concat(image.Descendants().Select(node => node switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        HtmlEntityInline entity => entity.Transcoded.ToString(),
        AutolinkInline link => link.Url,
        LineBreakInline => "\n",
        _ => "",
    }));

    private static void KeepText(LinkInline link)
    {
        while (link.FirstChild is { } child)
        {
            child.Remove();
            link.InsertBefore(child);
        }

        link.Remove();
    }

    private static Span Place(Prose prose, MarkdownObject node)
    {
        // Offsets into the text are offsets into the file only where the file holds the very same letters: not in a YAML block.
        if (prose.At.Text.Length != prose.Markdown.Length || node.Span.IsEmpty)
            return prose.At;
        return new(prose.At.File, prose.At.Start + node.Span.Start, prose.At.Start + Math.Min(node.Span.End + 1, prose.Markdown.Length));
    }
}

/// <summary>A piece of prose as HTML.</summary>
/// <param name="Html">What stands on the page.</param>
/// <param name="Findings">What was left out of it.</param>
internal sealed record RenderedProse(Html Html, ImmutableArray<Finding> Findings);
