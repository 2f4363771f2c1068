using AngleSharp.Dom;
using AngleSharp.Html.Dom.Events;
using AngleSharp.Html.Parser;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>Reads an HTML page: its syntax, its rules, its addresses and what it tells.</summary>
internal static class PageReader
{
    // The parser flattens deeper nesting, so that no page can overflow the stack.
    private static readonly HtmlParserOptions Options = new() { IsKeepingSourceReferences = true, MaximumDepth = 512 };

    /// <summary>Reads a page.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        var syntax = new List<AuditFault>();
        var parser = new HtmlParser(Options);
        parser.Error += (_, e) =>
        {
            if (e is HtmlErrorEvent error)
                syntax.Add(new(path, error.Position.Line, error.Position.Column, $"The HTML is not well formed: {error.Message.TrimEnd('.')}."));
        };
        using var page = parser.ParseDocument(text);
        var all = page.All.ToArray();
        return new(path)
        {
            IsPage = true,
            References = [.. PageReferences.In(all)],
            Ids = all.SelectMany(NamesOf).OfType<string>().ToHashSet(StringComparer.Ordinal),
            Faults =
            [
                .. syntax,
                .. PageRules.Broken(page, all, path),
                .. PageTelling.Faults(page, path, secrets),
            ],
        };
    }

    private static IEnumerable<string?> NamesOf(IElement element) =>
        element.LocalName == "a" ? [element.Id, element.GetAttribute("name")] : [element.Id];
}
