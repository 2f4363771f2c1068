using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using HintBook.Pages;

namespace HintBook.Replying;

/// <summary>What a piece of a page says as plain text: the very text that the page shows, so that neither can say more than the other.</summary>
internal static class LetterProse
{
    private static readonly HashSet<string> Blocks =
    [
        "p", "div", "ul", "ol", "dl", "blockquote", "pre", "table", "figure", "details", "hr", "h2", "h3", "h4", "h5", "h6",
    ];

    // What is a line of its own within a block.
    private static readonly HashSet<string> Rows = ["li", "tr", "dt", "dd", "caption", "summary", "figcaption"];

    /// <summary>The text of some HTML: an empty line between blocks, a dash or a number before the items of a list.</summary>
    public static string TextOf(Html html)
    {
        var parser = new HtmlParser();
        var document = parser.ParseDocument("");
        var body = document.CreateElement("div");
        body.Append([.. parser.ParseFragment(html.Text, body)]);
        var text = new StringBuilder();
        foreach (var child in body.ChildNodes)
            Write(child, text, kept: false);
        return string.Join('\n', Lines(text.ToString()));
    }

    // No two empty lines one after the other, none at either end.
    private static IEnumerable<string> Lines(string text)
    {
        var gap = false;
        var any = false;
        foreach (var line in text.Split('\n').Select(line => line.TrimEnd()))
        {
            if (line.Length == 0)
            {
                gap = any;
                continue;
            }

            if (gap)
                yield return "";
            (gap, any) = (false, true);
            yield return line;
        }
    }

    private static void Write(INode node, StringBuilder text, bool kept)
    {
        if (node is IText words)
        {
            text.Append(kept ? words.Data : Flowing(words.Data, text));
            return;
        }

        if (node is not IElement element)
            return;
        var name = element.LocalName;
        if (name == "br")
        {
            text.Append('\n');
            return;
        }

        if (Blocks.Contains(name) && !IsBehindMarker(element))
            Break(text, 2);
        else if (Rows.Contains(name))
            Break(text, 1);
        if (name == "li")
            text.Append(Marker(element));
        if (name is "td" or "th" && element.PreviousElementSibling is not null)
            text.Append(" → ");
        foreach (var child in element.ChildNodes)
            Write(child, text, kept || name == "pre");
        if (name == "a" && element.GetAttribute("href") is { } address && address != element.TextContent)
            text.Append($" ({address})");
        if (Blocks.Contains(name))
            Break(text, 2);
        else if (Rows.Contains(name))
            Break(text, 1);
    }

    // The first block of an item stands on the line of its dash or number.
    private static bool IsBehindMarker(IElement element) =>
        element.ParentElement is { LocalName: "li" } item && item.FirstElementChild == element
        && string.IsNullOrWhiteSpace(element.PreviousSibling?.TextContent);

    private static string Marker(IElement item)
    {
        if (item.ParentElement is not { LocalName: "ol" } list)
            return "– ";
        var first = int.TryParse(list.GetAttribute("start"), out var start) ? start : 1;
        return $"{first + list.Children.Index().First(each => each.Item == item).Index}. ";
    }

    private static void Break(StringBuilder text, int lines)
    {
        var there = 0;
        while (there < lines && there < text.Length && text[^(there + 1)] == '\n')
            there++;
        if (text.Length > 0)
            text.Append('\n', lines - there);
    }

    // Spaces run together as in a browser, and none begins a line.
    private static string Flowing(string words, StringBuilder before)
    {
        var flowing = new StringBuilder();
        foreach (var letter in words)
        {
            var last = flowing.Length > 0 ? flowing[^1] : before.Length > 0 ? before[^1] : '\n';
            if (letter is ' ' or '\n' or '\r' or '\t' or '\f')
            {
                if (last is not (' ' or '\n'))
                    flowing.Append(' ');
            }
            else
            {
                flowing.Append(letter);
            }
        }

        return flowing.ToString();
    }
}
