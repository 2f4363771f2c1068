using AngleSharp.Dom;

namespace HintBook.Audit;

/// <summary>The addresses of a page (HTML Living Standard, the attributes of type URL in its index of attributes).</summary>
internal static class PageReferences
{
    private const string Space = " \t\n\r\f", SpaceOrComma = Space + ",";

    private static readonly HashSet<string> LoadedByLink = new(StringComparer.OrdinalIgnoreCase)
    {
        "stylesheet", "icon", "apple-touch-icon", "mask-icon", "preload", "modulepreload", "prefetch", "manifest",
    };

    /// <summary>Every address, in the order of the page.</summary>
    public static IEnumerable<Reference> In(IEnumerable<IElement> elements)
    {
        foreach (var element in elements)
        {
            var found = Find(element);
            if (found.Length == 0)
                continue;
            var place = ElementPlace.Of(element);
            foreach (var (kind, address) in found)
                yield return new(kind, Reference.Cleaned(address), place.Line, place.Column);
        }
    }

    /// <summary>The addresses of one element, as they are written.</summary>
    public static (ReferenceKind Kind, string Address)[] Find(IElement element) => element.LocalName switch
    {
        "a" or "area" => [.. Find(element, ReferenceKind.Link, "href"), .. Find(element, ReferenceKind.Link, "xlink:href")],
        "form" => Find(element, ReferenceKind.Link, "action"),
        "button" => Find(element, ReferenceKind.Link, "formaction"),
        "link" when IsLoaded(element) => [.. Find(element, ReferenceKind.Asset, "href"), .. Set(element, "imagesrcset")],
        "link" => Find(element, ReferenceKind.Link, "href"),
        "img" or "source" => [.. Find(element, ReferenceKind.Asset, "src"), .. Set(element, "srcset")],
        "video" => [.. Find(element, ReferenceKind.Asset, "src"), .. Find(element, ReferenceKind.Asset, "poster")],
        "script" or "audio" or "track" or "iframe" or "embed" or "input" => Find(element, ReferenceKind.Asset, "src"),
        "object" => Find(element, ReferenceKind.Asset, "data"),
        "use" or "image" => [.. Find(element, ReferenceKind.Asset, "href"), .. Find(element, ReferenceKind.Asset, "xlink:href")],
        "meta" => Refresh(element),
        _ => [],
    };

    private static (ReferenceKind Kind, string Address)[] Find(IElement element, ReferenceKind kind, string attribute) =>
        element.GetAttribute(attribute) is { } address ? [(kind, address)] : [];

    /// <summary>
    /// The candidates of a set of pictures: an address up to a space, perhaps a width up to a comma (HTML Living Standard, "parse a srcset
    /// attribute").
    /// </summary>
    private static List<(ReferenceKind Kind, string Address)> Set(IElement element, string attribute)
    {
        var found = new List<(ReferenceKind, string)>();
        var rest = (element.GetAttribute(attribute) ?? "").AsSpan().TrimStart(SpaceOrComma);
        while (!rest.IsEmpty)
        {
            var end = rest.IndexOfAny(Space);
            var address = end < 0 ? rest : rest[..end];
            rest = rest[address.Length..];
            found.Add((ReferenceKind.Asset, address.TrimEnd(',').ToString()));
            var comma = address.EndsWith(",") ? 0 : rest.IndexOf(',');
            rest = (comma < 0 ? [] : rest[comma..]).TrimStart(SpaceOrComma);
        }

        return found;
    }

    private static (ReferenceKind Kind, string Address)[] Refresh(IElement element)
    {
        var content = element.GetAttribute("content") ?? "";
        var at = content.IndexOf("url=", StringComparison.OrdinalIgnoreCase);
        return at >= 0 && string.Equals(element.GetAttribute("http-equiv"), "refresh", StringComparison.OrdinalIgnoreCase)
            ? [(ReferenceKind.Link, content[(at + 4)..].Trim(' ', '\'', '"'))]
            : [];
    }

    private static bool IsLoaded(IElement link) =>
        (link.GetAttribute("rel") ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Any(LoadedByLink.Contains);
}
