using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Text;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace HintBook.Spoilers.ReadingLevels;

/// <summary>What is read of an author's Markdown: its words without marks, link addresses, headings, and the places of workings.</summary>
internal static partial class PlainText
{
    private static readonly MarkdownPipeline CommonMark = new MarkdownPipelineBuilder().DisableHtml().Build();

    /// <summary>The paragraphs, list items and the like, each as one text. Never throws.</summary>
    public static ImmutableArray<string> Blocks(string markdown)
    {
        if (MarkdownBounds.Left(markdown) is not null)
            return [markdown];
        try
        {
            return
            [
                .. from block in Markdig.Markdown.Parse(Marks().Replace(markdown, ""), CommonMark).Descendants<LeafBlock>()
                   where block is not HeadingBlock
                   let text = Of(block)
                   where !string.IsNullOrWhiteSpace(text)
                   select text,
            ];
        }
        catch (ArgumentException)
        {
            // Nested too deeply for Markdig, which has its finding elsewhere.
            return [markdown];
        }
    }

    private static string Of(LeafBlock block)
    {
        if (block.Inline is null)
            return block.Lines.ToString();
        var text = new StringBuilder();
        foreach (var inline in block.Inline.Descendants())
        {
            text.Append(inline switch
            {
                LiteralInline literal => literal.Content.ToString(),
                CodeInline code => code.Content,
                HtmlEntityInline entity => entity.Transcoded.ToString(),
                LineBreakInline => " ",
                _ => "",
            });
        }

        return text.ToString();
    }

    [GeneratedRegex(@"\{\{[^{}\n]*\}\}|\{[^{}\n]*\}")]
    private static partial Regex Marks();
}
