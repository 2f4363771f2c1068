using Markdig.Syntax;

namespace HintBook.Reading;

/// <summary>The maker's own remarks in a stage's text, <c>&lt;!-- … --&gt;</c> on lines of their own: nobody else reads them.</summary>
internal static class Remarks
{
    private const string Start = "<!--";
    private const string End = "-->";

    /// <summary>The text with blanks in the place of each remark, so that every other letter keeps its place.</summary>
    /// <param name="text">Markdown.</param>
    /// <param name="parsed">What it was parsed to, HTML included.</param>
    public static string Blanked(string text, MarkdownDocument parsed)
    {
        if (!text.Contains(Start, StringComparison.Ordinal))
            return text;
        var remarks = parsed.Descendants<HtmlBlock>().Where(block => block.Type == HtmlBlockType.Comment && StandsAlone(text, block)).ToArray();
        return string.Create(text.Length, (text, remarks), static (blanked, given) =>
        {
            given.text.CopyTo(blanked);
            foreach (var remark in given.remarks)
            {
                for (var at = remark.Span.Start; at <= remark.Span.End; at++)
                    blanked[at] = blanked[at] is '\r' or '\n' ? blanked[at] : ' ';
            }
        });
    }

    // A block of HTML ends with the line that ends the comment; a text behind it there is no remark.
    private static bool StandsAlone(string text, HtmlBlock block)
    {
        var written = text.AsSpan(block.Span.Start, block.Span.Length).TrimEnd();
        return written.IndexOf(End, StringComparison.Ordinal) == written.Length - End.Length;
    }
}
