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
        return
        [
            .. from message in OfHead(page, path) select new AuditFault(path, 1, 1, message),
            .. from element in all
               from message in OfPicture(element).Concat(OfScript(element)).Concat(OfIds(element, ids, known))
               let place = ElementPlace.Of(element)
               select new AuditFault(path, place.Line, place.Column, message),
        ];
    }

    private static IEnumerable<string> OfHead(IDocument page, string path)
    {
        if (string.IsNullOrWhiteSpace(page.DocumentElement?.GetAttribute("lang")))
            yield return "The page doesn't say its language: <html lang=…> is missing.";
        if (page.Head?.QuerySelectorAll("title") is not [var title] || string.IsNullOrWhiteSpace(title.TextContent))
            yield return "The page needs one <title> with words in it.";
        if (!string.Equals(page.Head?.QuerySelector("meta[charset]")?.GetAttribute("charset"), "utf-8", StringComparison.OrdinalIgnoreCase))
            yield return "The page doesn't say that it is UTF-8: <meta charset=\"utf-8\"> is missing.";
        if (Meta(page, "viewport") is null)
            yield return "The page has no <meta name=\"viewport\">: a phone shows it tiny.";
        if (!IsFrontPage(page, path) && Meta(page, "robots")?.Contains("noindex", StringComparison.OrdinalIgnoreCase) != true)
            yield return "Only the front page may be found by search engines: <meta name=\"robots\" content=\"noindex\"> is missing.";
    }

    // Of the site, and of each further language in the folder of its name.
    private static bool IsFrontPage(IDocument page, string path) =>
        path == FrontPage || string.Equals(path, $"{page.DocumentElement?.GetAttribute("lang")}/{FrontPage}", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> OfPicture(IElement element)
    {
        if (element.LocalName != "img")
            yield break;
        if (element.GetAttribute("alt") is null)
            yield return "The picture has no alt.";
        foreach (var side in new[] { "width", "height" })
        {
            if (!int.TryParse(element.GetAttribute(side), NumberStyles.None, CultureInfo.InvariantCulture, out var pixels) || pixels == 0)
                yield return $"The picture has no {side} in pixels: the page jumps when it arrives.";
        }
    }

    private static IEnumerable<string> OfScript(IElement element)
    {
        switch (element.LocalName)
        {
            case "script" when !element.HasAttribute("src") && !DataBlocks.Contains(element.GetAttribute("type") ?? ""):
                yield return "A script stands in the page itself; it belongs in a file.";
                break;
            case "style":
                yield return "A style sheet stands in the page itself; it belongs in a file.";
                break;
            case "base":
                yield return "A <base> changes what every address of the page means.";
                break;
        }

        foreach (var attribute in element.Attributes)
        {
            if (attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
                yield return $"The attribute “{attribute.Name}” runs a script.";
            else if (attribute.Name is "style")
                yield return "The attribute “style” belongs in a style sheet.";
            else if (attribute.Name is "srcdoc")
                yield return "The attribute “srcdoc” holds a page within the page.";
        }
    }

    private static IEnumerable<string> OfIds(IElement element, HashSet<string> met, HashSet<string> known)
    {
        if (element.GetAttribute("id") is { } id)
        {
            if (id.Length == 0 || id.Any(char.IsWhiteSpace))
                yield return "An id must have letters, and no spaces.";
            else if (!met.Add(id))
                yield return $"The id “{id}” is there twice.";
        }

        foreach (var attribute in element.Attributes.Where(attribute => NamesOfIds.Contains(attribute.Name)))
        {
            foreach (var name in attribute.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (!known.Contains(name))
                    yield return $"The attribute “{attribute.Name}” names the id “{name}”, which is not in the page.";
            }
        }
    }

    private static string? Meta(IDocument page, string name) =>
        page.Head?.QuerySelectorAll("meta[name]")
            .FirstOrDefault(meta => string.Equals(meta.GetAttribute("name"), name, StringComparison.OrdinalIgnoreCase))
            ?.GetAttribute("content");
}
