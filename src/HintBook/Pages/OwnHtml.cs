using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace HintBook.Pages;

/// <summary>
/// HTML that an author asked for, made fit for a page: read as a browser reads it, so that no stray end tag opens what is
/// closed, and left with the elements and attributes that only set text.
/// </summary>
internal static class OwnHtml
{
    // The text-level, grouping and tabular elements of WHATWG HTML 4.4, 4.5 and 4.9, and disclosures.
    private static readonly HashSet<string> Elements =
    [
        "a", "abbr", "b", "bdi", "bdo", "blockquote", "br", "caption", "cite", "code", "col", "colgroup", "dd", "del", "details", "dfn",
        "div", "dl", "dt", "em", "figcaption", "figure", "h2", "h3", "h4", "h5", "h6", "hr", "i", "ins", "kbd", "li", "mark", "ol", "p",
        "pre", "q", "rp", "rt", "ruby", "s", "samp", "small", "span", "strong", "sub", "summary", "sup", "table", "tbody", "td", "tfoot",
        "th", "thead", "time", "tr", "u", "ul", "var", "wbr",
    ];

    private static readonly HashSet<string> Attributes =
        ["class", "colspan", "datetime", "dir", "href", "lang", "rel", "reversed", "rowspan", "scope", "start", "title", "value"];

    // What has no text of its own to keep.
    private static readonly HashSet<string> Silent = ["script", "style", "template", "noscript", "iframe", "object", "embed", "svg", "math", "head", "title"];

    /// <summary>The HTML as it may stand on a page, and what was left out of it, each once.</summary>
    public static (string Html, IReadOnlyList<string> LeftOut) Fit(string html)
    {
        var parser = new HtmlParser();
        var document = parser.ParseDocument("");
        var body = document.CreateElement("div");
        body.Append([.. parser.ParseFragment(html, body)]);
        var leftOut = new List<string>();
        foreach (var element in body.QuerySelectorAll("*").ToArray())
            Fit(element, leftOut);
        foreach (var comment in body.Descendants<IComment>().ToArray())
            comment.Remove();
        return (body.InnerHtml, [.. leftOut.Distinct(StringComparer.Ordinal)]);
    }

    private static void Fit(IElement element, List<string> leftOut)
    {
        if (!Elements.Contains(element.LocalName))
        {
            leftOut.Add($"<{element.LocalName}>");
            if (!Silent.Contains(element.LocalName))
                element.Before([.. element.ChildNodes]);
            element.Remove();
            return;
        }

        foreach (var attribute in element.Attributes.ToArray())
        {
            if (Attributes.Contains(attribute.Name) && (attribute.Name != "href" || Link.Leads(attribute.Value)))
                continue;
            leftOut.Add(attribute.Name);
            element.RemoveAttribute(attribute.Name);
        }
    }
}
