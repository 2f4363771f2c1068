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

    // A parser is made ready once for each thread; its errors are those of the page that it read last.
    private static readonly ThreadLocal<(HtmlParser Parser, List<HtmlErrorEvent> Errors)> OfThread = new(() =>
    {
        var errors = new List<HtmlErrorEvent>();
        var parser = new HtmlParser(Options);
        parser.Error += (_, e) =>
        {
            if (e is HtmlErrorEvent error)
                errors.Add(error);
        };
        return (parser, errors);
    });

    /// <summary>Reads a page.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        var (parser, errors) = OfThread.Value;
        errors.Clear();
        using var page = parser.ParseDocument(text);
        AuditFault[] syntax =
        [
            .. from error in errors
               select new AuditFault(path, error.Position.Line, error.Position.Column, $"The HTML is not well formed: {error.Message.TrimEnd('.')}."),
        ];
        var all = new List<IElement>();
        Gather(page, all);
        return new(path)
        {
            IsPage = true,
            References = [.. PageReferences.In(all)],
            Ids = NamesIn(all),
            Faults =
            [
                .. syntax,
                .. PageRules.Broken(page, all, path),
                .. PageTelling.Faults(page, path, secrets),
            ],
        };
    }

    // In the order of the page; the parser holds its depth.
    private static void Gather(INode node, List<IElement> all)
    {
        var children = node.ChildNodes;
        for (var i = 0; i < children.Length; i++)
        {
            if (children[i] is not IElement element)
                continue;
            all.Add(element);
            Gather(element, all);
        }
    }

    private static HashSet<string> NamesIn(List<IElement> all)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var element in all)
        {
            if (element.Id is { } id)
                names.Add(id);
            if (element.LocalName == "a" && element.GetAttribute("name") is { } name)
                names.Add(name);
        }

        return names;
    }
}
