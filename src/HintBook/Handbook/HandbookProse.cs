using System.Text;
using System.Text.RegularExpressions;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Handbook;

/// <summary>
/// Turns a section into HTML, by the same renderer as an author's texts. Links lead to other pages of the handbook by their Markdown files' names,
/// a line of its own with a picture becomes a figure. A listing stands as it is, whatever it holds, below the name of its file.
/// </summary>
/// <param name="pages">The finished pages and pictures that a link or a figure may name.</param>
internal sealed partial class HandbookProse(IReadOnlySet<string> pages)
{
    private const string Fence = "```";

    /// <summary>The HTML of a section.</summary>
    /// <exception cref="InvalidOperationException">The text names a page or a picture that isn't there.</exception>
    public Html Render(string name, string markdown)
    {
        var html = new StringBuilder();
        var (prose, isListing) = (new StringBuilder(), false);
        foreach (var line in markdown.TrimEnd('\n').Split('\n'))
        {
            if (isListing)
            {
                isListing = line != Fence;
                html.Append(isListing ? $"{Escaped(line)}\n" : "</code></pre>\n");
            }
            else if (line.StartsWith(Fence, StringComparison.Ordinal))
            {
                Flush();
                html.Append(FileOf(line)).Append("<pre><code>");
                isListing = true;
            }
            else if (Figure().Match(line) is { Success: true } figure)
            {
                Flush();
                html.Append(FigureOf(name, figure.Groups["says"].Value, figure.Groups["file"].Value));
            }
            else
            {
                prose.Append(line).Append('\n');
            }
        }

        Flush();
        return new(html.ToString());

        void Flush()
        {
            html.Append(Prose(name, prose.ToString()));
            prose.Clear();
        }
    }

    private string Prose(string name, string markdown)
    {
        var file = new SourceFile($"{name}.md", markdown);
        var made = ProseHtml.Render(new(markdown, new(file, 0, markdown.Length)), inside: Inside);
        return made.Findings is [var first, ..] ? throw new InvalidOperationException($"{name}.md: {first.Message}") : made.Html.Text;
    }

    private string FigureOf(string name, string says, string file)
    {
        if (!pages.Contains(file))
            throw new InvalidOperationException($"{name}.md: there is no picture “{file}”.");
        var text = Escaped(says);
        return file.EndsWith(".html", StringComparison.Ordinal)
            ? $"<figure class=\"phone\"><iframe src=\"{file}\" title=\"{text}\" loading=\"lazy\"></iframe><figcaption>{text}</figcaption></figure>\n"
            : $"<figure><img src=\"{file}\" alt=\"{text}\"></figure>\n";
    }

    // “05-help.md#signs” leads to the finished page; the place on it stays.
    private string? Inside(string address)
    {
        var parts = address.Split('#', 2);
        var file = parts[0].EndsWith(".md", StringComparison.Ordinal) ? parts[0][..^".md".Length].Split('/')[^1] + ".html" : parts[0];
        return pages.Contains(file) ? string.Join('#', [file, .. parts.Skip(1)]) : null;
    }

    // “```yaml book.yaml” is a whole file, “```yaml from book.yaml” a part of one.
    private static string FileOf(string fence) => Listing().Match(fence) is { Success: true } listing
        ? $"<p class=\"file\">{(listing.Groups["part"].Success ? "A part of " : "")}<code>{Escaped(listing.Groups["path"].Value)}</code>:</p>\n"
        : "";

    private static string Escaped(string text) => string.Concat(text.Select(letter => Html.Special.Contains(letter) ? Html.Entity(letter) : $"{letter}"));

    [GeneratedRegex(@"^```[a-z]+ (?<part>from )?(?<path>\S*[./]\S*)$")]
    private static partial Regex Listing();

    [GeneratedRegex(@"^!\[(?<says>[^\]]+)\]\((?<file>[^)]+)\)$")]
    private static partial Regex Figure();
}
