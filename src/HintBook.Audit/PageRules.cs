using System.Globalization;
using AngleSharp.Dom;

namespace HintBook.Audit;

/// <summary>What every page of a site has and must not have, its addresses and words aside.</summary>
internal static class PageRules
{
    private const string FrontPage = "index.html";

    private static readonly HashSet<string> NamesOfIds = new(StringComparer.Ordinal)
    {
        "for", "list", "headers", "aria-labelledby", "aria-describedby", "aria-controls", "aria-owns", "aria-details", "popovertarget",
    };

    private static readonly HashSet<string> DataBlocks = new(StringComparer.OrdinalIgnoreCase) { "application/json", "application/ld+json" };

    /// <summary>Every rule that a page breaks.</summary>
    public static IEnumerable<AuditFault> Broken(IDocument page, IReadOnlyCollection<IElement> all, string path)
    {
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var known = all.Select(e => e.Id).OfType<string>().ToHashSet(StringComparer.Ordinal);
        List<AuditFault> faults = [.. OfHead(page, all, path).Select(message => new AuditFault(path, 1, 1, message))];
        // Most elements break none: nothing is made for them.
        var messages = new List<string>();
        foreach (var element in all)
        {
            messages.AddRange(OfPicture(element));
            OfScript(element, messages);
            OfIds(element, ids, known, messages);
            if (messages.Count == 0)
                continue;
            var place = ElementPlace.Of(element);
            faults.AddRange(messages.Select(message => new AuditFault(path, place.Line, place.Column, message)));
            messages.Clear();
        }

        return faults;
    }

    private static IEnumerable<string> OfHead(IDocument page, IReadOnlyCollection<IElement> all, string path)
    {
        var titles = all.Where(element => element.LocalName == "title" && IsInHead(element, page)).ToArray();
        var metas = all.Where(element => element.LocalName == "meta" && IsInHead(element, page)).ToArray();
        if (string.IsNullOrWhiteSpace(page.DocumentElement?.GetAttribute("lang")))
            yield return "The page doesn't say its language: <html lang=…> is missing.";
        if (titles is not [var title] || string.IsNullOrWhiteSpace(title.TextContent))
            yield return "The page needs one <title> with words in it.";
        if (!string.Equals(Array.Find(metas, meta => meta.HasAttribute("charset"))?.GetAttribute("charset"), "utf-8", StringComparison.OrdinalIgnoreCase))
            yield return "The page doesn't say that it is UTF-8: <meta charset=\"utf-8\"> is missing.";
        if (Meta(metas, "viewport") is null)
            yield return "The page has no <meta name=\"viewport\">: a phone shows it tiny.";
        if (!IsFrontPage(page, path) && Meta(metas, "robots")?.Contains("noindex", StringComparison.OrdinalIgnoreCase) != true)
            yield return "Only the front page may be found by search engines: <meta name=\"robots\" content=\"noindex\"> is missing.";
    }

    // Of the site, and of each further language in the folder of its name.
    private static bool IsFrontPage(IDocument page, string path) =>
        path == FrontPage || string.Equals(path, $"{page.DocumentElement?.GetAttribute("lang")}/{FrontPage}", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> OfPicture(IElement element) => element.LocalName == "img" ? OfImage(element) : [];

    private static IEnumerable<string> OfImage(IElement element)
    {
        if (element.GetAttribute("alt") is null)
            yield return "The picture has no alt.";
        foreach (var side in new[] { "width", "height" })
        {
            if (!int.TryParse(element.GetAttribute(side), NumberStyles.None, CultureInfo.InvariantCulture, out var pixels) || pixels == 0)
                yield return $"The picture has no {side} in pixels: the page jumps when it arrives.";
        }
    }

    private static void OfScript(IElement element, List<string> messages)
    {
        switch (element.LocalName)
        {
            case "script" when !element.HasAttribute("src") && !DataBlocks.Contains(element.GetAttribute("type") ?? ""):
                messages.Add("A script stands in the page itself; it belongs in a file.");
                break;
            case "style":
                messages.Add("A style sheet stands in the page itself; it belongs in a file.");
                break;
            case "base":
                messages.Add("A <base> changes what every address of the page means.");
                break;
        }

        for (var i = 0; i < element.Attributes.Length; i++)
        {
            var name = element.Attributes[i]!.Name;
            if (name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
                messages.Add($"The attribute “{name}” runs a script.");
            else if (name is "style")
                messages.Add("The attribute “style” belongs in a style sheet.");
            else if (name is "srcdoc")
                messages.Add("The attribute “srcdoc” holds a page within the page.");
        }
    }

    private static void OfIds(IElement element, HashSet<string> met, HashSet<string> known, List<string> messages)
    {
        if (element.GetAttribute("id") is { } id)
        {
            if (id.Length == 0 || id.Any(char.IsWhiteSpace))
                messages.Add("An id must have letters, and no spaces.");
            else if (!met.Add(id))
                messages.Add($"The id “{id}” is there twice.");
        }

        for (var i = 0; i < element.Attributes.Length; i++)
        {
            var attribute = element.Attributes[i]!;
            if (!NamesOfIds.Contains(attribute.Name))
                continue;
            foreach (var name in attribute.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (!known.Contains(name))
                    messages.Add($"The attribute “{attribute.Name}” names the id “{name}”, which is not in the page.");
            }
        }
    }

    private static string? Meta(IElement[] metas, string name) =>
        Array.Find(metas, meta => string.Equals(meta.GetAttribute("name"), name, StringComparison.OrdinalIgnoreCase))?.GetAttribute("content");

    private static bool IsInHead(IElement element, IDocument page)
    {
        var around = element.ParentElement;
        while (around is not null && !ReferenceEquals(around, page.Head))
            around = around.ParentElement;
        return around is not null;
    }
}
