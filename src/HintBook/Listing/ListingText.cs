using System.Text;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Replying;

namespace HintBook.Listing;

/// <summary>Writes a description as Markdown, as plain text and as a page.</summary>
internal static class ListingText
{
    private const string Style =
        "body{max-width:40em;margin:2em auto;padding:0 1em;font:1.05em/1.5 system-ui,sans-serif;color:#222;background:#fff}"
        + "img{max-width:100%;height:auto}h1,h2{line-height:1.2}";

    /// <summary>As Markdown (CommonMark): signs in plain texts are escaped.</summary>
    public static string Markdown(IEnumerable<ListingBlock> blocks) => Joined(blocks, block => block switch
    {
        ListingBlock.Heading heading => $"{(heading.IsTitle ? "#" : "##")} {Escaped(heading.Text)}",
        ListingBlock.Paragraph paragraph => Escaped(paragraph.Text),
        ListingBlock.Items items => string.Join('\n', items.Texts.Select(text => $"- {Escaped(text)}")),
        ListingBlock.Written written => written.Text.Markdown.ReplaceLineEndings("\n").Trim('\n'),
        _ => "",
    });

    /// <summary>As plain text.</summary>
    public static string Plain(IEnumerable<ListingBlock> blocks, bool html) => Joined(blocks, block => block switch
    {
        ListingBlock.Heading heading => heading.Text,
        ListingBlock.Paragraph paragraph => paragraph.Text,
        ListingBlock.Items items => string.Join('\n', items.Texts.Select(text => $"– {text}")),
        ListingBlock.Written written => LetterProse.TextOf(ProseHtml.Render(written.Text, html: html).Html),
        _ => "",
    });

    /// <summary>As a page that needs nothing else: no script, no file beside it.</summary>
    /// <param name="blocks">The description.</param>
    /// <param name="book">The book, in its language.</param>
    /// <param name="photo">The photo as JPEG, and its words; null for none.</param>
    public static string Page(IEnumerable<ListingBlock> blocks, Book book, (ReadOnlyMemory<byte> Jpeg, int Width, int Height, string Alt)? photo)
    {
        var html = new StringBuilder();
        var language = Html.Escaped(book.Language.Value);
        html.Append($"<!doctype html>\n<html lang=\"{language}\" dir=\"{TextDirection.Of(book.Language.Value)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append($"<title>{Html.Escaped(book.Title.Value)}</title>\n<style>{Style}</style>\n</head>\n<body>\n<main>\n");
        foreach (var block in blocks)
        {
            html.Append(block switch
            {
                ListingBlock.Heading { IsTitle: true } title => $"<h1>{Html.Escaped(title.Text)}</h1>\n{Picture(photo)}",
                ListingBlock.Heading heading => $"<h2>{Html.Escaped(heading.Text)}</h2>\n",
                ListingBlock.Paragraph paragraph => $"<p>{Html.Escaped(paragraph.Text)}</p>\n",
                ListingBlock.Items items => $"<ul>\n{string.Concat(items.Texts.Select(text => $"<li>{Html.Escaped(text)}</li>\n"))}</ul>\n",
                ListingBlock.Written written => ProseHtml.Render(written.Text, html: book.Html).Html.Text,
                _ => "",
            });
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Picture((ReadOnlyMemory<byte> Jpeg, int Width, int Height, string Alt)? photo) => photo is not var (jpeg, width, height, alt)
        ? ""
        : $"<p><img src=\"data:image/jpeg;base64,{Convert.ToBase64String(jpeg.Span)}\" "
            + $"width=\"{width}\" height=\"{height}\" alt=\"{Html.Escaped(alt)}\"></p>\n";

    private static string Joined(IEnumerable<ListingBlock> blocks, Func<ListingBlock, string> text) =>
        string.Join("\n\n", blocks.Select(text).Where(each => each.Length > 0)) + "\n";

    // What means something anywhere in a line, and what does so at its beginning (CommonMark 0.31.2, 2.4).
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder();
        foreach (var letter in text.ReplaceLineEndings(" "))
        {
            if (letter is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '#' or '&' or '!' or '|' or '~')
                escaped.Append('\\');
            escaped.Append(letter);
        }

        return escaped.Length > 0 && escaped[0] is '-' or '+' ? $"\\{escaped}" : escaped.ToString();
    }
}
