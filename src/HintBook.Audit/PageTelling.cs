using System.Text;
using AngleSharp.Dom;

namespace HintBook.Audit;

/// <summary>What a page tells a reader who has opened nothing.</summary>
internal static class PageTelling
{
    private static readonly string[] Spoken = ["alt", "title", "aria-label", "aria-description", "aria-valuetext", "placeholder", "label"];

    // Elements that stand in a line of text: what is before and after them is one word.
    private static readonly HashSet<string> InLine = new(StringComparer.Ordinal)
    {
        "a", "abbr", "b", "bdi", "bdo", "cite", "code", "data", "del", "dfn", "em", "font", "i", "ins", "kbd", "mark", "q", "s", "samp",
        "small", "span", "strong", "sub", "sup", "time", "u", "var", "wbr",
    };

    private static readonly HashSet<string> Unseen = new(StringComparer.Ordinal) { "head", "script", "style", "template" };

    /// <summary>Titles, <c>meta</c> values, and the attributes that are shown or read aloud on what can be seen. Addresses are found elsewhere.</summary>
    public static IEnumerable<Saying> Outside(IDocument page) =>
    [
        .. from title in page.QuerySelectorAll("head title") select Say(title, title.TextContent, "in the page's title"),
        .. from meta in page.QuerySelectorAll("meta[content]") select Say(meta, meta.GetAttribute("content")!, "in a meta element"),
        .. from element in Seen(page.Body)
           from attribute in Spoken
           let text = element.GetAttribute(attribute)
           where text is not null
           select Say(element, text, $"in the attribute “{attribute}”"),
    ];

    /// <summary>The text that can be seen, block by block, so that a word across two elements of a line is found and one across two blocks is not.</summary>
    public static IEnumerable<Saying> Shown(IDocument page)
    {
        var sayings = new List<Saying>();
        var line = new StringBuilder();
        if (page.Body is { } body)
            Walk(body);
        return sayings;

        void Walk(IElement block)
        {
            foreach (var node in SeenNodes(block))
            {
                if (node is IText text)
                    line.Append(text.Data);
                if (node is not IElement element)
                    continue;
                if (InLine.Contains(element.LocalName))
                {
                    Walk(element);
                    continue;
                }

                End(block);
                Walk(element);
                End(element);
            }

            if (!InLine.Contains(block.LocalName))
                End(block);
        }

        void End(IElement block)
        {
            if (line.Length > 0)
                sayings.Add(Say(block, line.ToString(), "in the text"));
            line.Clear();
        }
    }

    private static IEnumerable<IElement> Seen(IElement? element)
    {
        var waiting = new Stack<IElement>(element is null ? [] : [element]);
        while (waiting.TryPop(out var next))
        {
            yield return next;
            foreach (var child in SeenNodes(next).OfType<IElement>())
                waiting.Push(child);
        }
    }

    private static IEnumerable<INode> SeenNodes(IElement element) => element.LocalName switch
    {
        "details" when !element.HasAttribute("open") => element.Children.Where(child => child.LocalName == "summary").Take(1).Where(CanBeSeen),
        "dialog" when !element.HasAttribute("open") => [],
        _ => element.ChildNodes.Where(node => node is not IElement child || CanBeSeen(child)),
    };

    private static bool CanBeSeen(IElement element) => !Unseen.Contains(element.LocalName) && !element.HasAttribute("hidden");

    private static Saying Say(IElement element, string text, string where)
    {
        var (line, column) = PageReader.PlaceOf(element);
        return new(text, line, column, where);
    }
}
