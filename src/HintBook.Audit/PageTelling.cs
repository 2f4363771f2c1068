using System.Collections;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using HintBook.Audit.Mentions;
using HintBook.Audit.Sealed;

namespace HintBook.Audit;

/// <summary>
/// Everything that a page tells, with what may be told there: in its head and its addresses what anyone may know, in the open
/// what its reader knows, in a fold what the fold may say. Nothing is left out for being hidden: a script may show it, and a
/// search engine or a curious reader sees the file itself.
/// </summary>
internal sealed class PageTelling
{
    private const string Anything = "*";
    private const int LongestItems = 400, LongestHeading = 40;

    private readonly Secrets secrets;
    private readonly Secrets.Listener listener;
    private readonly AuditPage? page;
    private readonly string folder;
    private readonly List<AuditFault> faults = [];
    private readonly StringBuilder line = new(), above = new();
    private readonly AttributeRows rows = new();
    private readonly ReferenceRows references = new();
    private List<string> items = [];

    private PageTelling(Secrets secrets, string path) =>
        (this.secrets, listener, page, folder) = (secrets, secrets.Listen(path), secrets.PageAt(path), path[..(path.LastIndexOf('/') + 1)]);

    /// <summary>What a page tells that it may not.</summary>
    public static IEnumerable<AuditFault> Faults(IDocument document, string path, Secrets secrets)
    {
        if (secrets.IsEmpty)
            return [];
        var telling = new PageTelling(secrets, path);
        var shown = telling.page is null
            ? secrets.Outside
            : new Scope(telling.page.Shown, null, telling.page.Sure, "which is seen before anything is opened");
        foreach (var node in document.ChildNodes)
        {
            if (node is IComment comment)
                telling.Remark(comment, document.DocumentElement);
        }

        telling.Attributes(document.DocumentElement, secrets.Outside);
        if (document.Head is { } head)
            telling.Walk(head, secrets.Outside);
        if (document.Body is { } body)
        {
            telling.Attributes(body, shown);
            telling.Walk(body, shown);
        }

        foreach (var row in telling.rows.Rows)
            telling.Hear(row.First, row.Said, $"in attributes “{row.Name}”", Manner.Items, row.Scope);
        foreach (var (said, manner) in telling.references.Rows)
            telling.Hear(document.DocumentElement, said, "in pictures that the page refers to", manner, secrets.Outside);
        return telling.faults;
    }

    // A word across two elements of a line is found, and one across two blocks is none; codes go on over items and cells.
    private void Walk(IElement block, Scope scope)
    {
        var folded = FoldOf(block, scope);
        var outer = items;
        if (!PageWords.IsInLine(block.LocalName))
            items = new();
        var summary = ReferenceEquals(folded, scope) ? null : block.Children.FirstOrDefault(child => child.LocalName == "summary");
        var content = block is IHtmlTemplateElement template ? template.Content : (INode)block;
        foreach (var node in content.ChildNodes)
        {
            switch (node)
            {
                case IText text when block.LocalName is "script" or "style":
                    Program(block, text.Data);
                    break;
                case IText text:
                    line.Append(text.Data);
                    // Text between the summary and the end of a closed fold belongs to the fold.
                    if (summary is not null)
                        End(block, folded);
                    break;
                case IComment comment:
                    Remark(comment, block);
                    break;
                case IElement element:
                    Element(element, element == summary ? scope : folded, block, folded);
                    break;
            }
        }

        if (PageWords.IsInLine(block.LocalName))
            return;
        End(block, folded);
        Items(block, folded, ReferenceEquals(folded, scope) ? outer : null);
        items = outer;
    }

    private void Element(IElement element, Scope scope, IElement block, Scope around)
    {
        var here = Linked(element, scope);
        Attributes(element, here);
        switch (element.LocalName)
        {
            case "br":
                line.Append('\n');
                return;
            // What stands above a word is no part of it.
            case "rp":
                return;
            case "rt" or "rtc":
                above.Append(element.TextContent);
                return;
            case "tspan" when element.HasAttribute("x") || element.HasAttribute("y") || element.HasAttribute("dy"):
                line.Append('\n');
                break;
        }

        var isSame = ReferenceEquals(here, around);
        if (isSame && PageWords.IsInLine(element.LocalName))
        {
            Walk(element, here);
            return;
        }

        // A block within a sentence only breaks its line.
        if (isSame && element.LocalName is "div" or "p" && HasOpenLine())
            line.Append('\n');
        else
            End(block, around);
        Walk(element, here);
        End(element, here);
    }

    private bool HasOpenLine()
    {
        for (var at = line.Length - 1; at >= 0; at--)
        {
            if (!char.IsWhiteSpace(line[at]))
                return line[at] is not ('.' or '!' or '?' or ':' or ';');
        }

        return false;
    }

    private void End(IElement block, Scope scope)
    {
        if (line.Length > 0)
        {
            var said = line.ToString();
            var trimmed = said.Trim();
            Hear(block, said, Forms.Turned, block.LocalName == "title" ? "in the page's title" : "in the text", Manner.Prose, scope);
            foreach (var name in PictureAddresses.In(trimmed))
                Hear(block, name, "in the text", Manner.Picture, scope);
            if (trimmed.Length > 0)
                items.Add(trimmed);
        }

        if (above.Length > 0)
            Hear(block, above.ToString(), "above a word", Manner.Prose, scope);
        line.Clear();
        above.Clear();
    }

    // Short blocks behind each other may hold the pieces of a code.
    private void Items(IElement block, Scope scope, List<string>? outer)
    {
        if (items.Count == 0)
            return;
        var length = 0;
        foreach (var item in items)
            length += item.Length + 1;
        var isShort = length <= LongestItems;
        var joined = isShort ? items.Count == 1 ? items[0] : string.Join(FoldedText.BetweenItems, items) : "";
        if (isShort && items.Count > 1 && block.LocalName is not ("html" or "head"))
            Hear(block, joined, "in the text", Manner.Items, scope);
        // "Moth" and "Medal" in two lines of a heading.
        if (isShort && items.Count is 2 or 3 && joined.Length <= LongestHeading && block.Children.All(child => child.LocalName == "div"))
            Hear(block, joined.Replace(FoldedText.BetweenItems, ' '), "in the text", Manner.Lines, scope);
        if (isShort)
            outer?.Add(joined);
    }

    private Scope FoldOf(IElement element, Scope scope)
    {
        if (page is null || element.LocalName != "details" || element.HasAttribute("open"))
            return scope;
        string[] names = [element.GetAttribute("data-keep") ?? "", .. element.ClassList, Anything];
        var may = names.Select(name => page.Folds.GetValueOrDefault(name)).FirstOrDefault(fold => fold is not null);
        return may is null ? scope : scope with { May = may, When = "which is told too early there" };
    }

    private Scope Linked(IElement element, Scope scope) =>
        SpokenOf(element) is { } other ? scope with { MayToo = other.Shown, Sure = Both(scope.Sure, other.Sure) } : scope;

    private AuditPage? SpokenOf(IElement element) =>
        element.GetAttribute("data-page") is { } name ? secrets.PageAt($"{folder}{name}.html")
        : page is { IsSignpost: true } && element is { LocalName: "a" } && element.GetAttribute("href") is { } href ? secrets.PageAt(folder + href)
        : null;

    private static BitArray? Both(BitArray? one, BitArray? other) => one is null ? other : other is null ? one : new BitArray(one).And(other);

    private void Attributes(IElement element, Scope scope)
    {
        var addresses = PageReferences.Find(element);
        Symbol(element, addresses);
        foreach (var (_, address) in addresses)
        {
            var clean = Uri.UnescapeDataString(Reference.Cleaned(address));
            Hear(element, clean, Forms.OfAddress, "in an address", PictureAddresses.MannerOf(element.LocalName, clean), secrets.Outside);
            See(element, clean, scope);
        }

        if (element.Attributes.Length > 0)
            Settings(element);
        if (element.LocalName.Contains('-', StringComparison.Ordinal))
            Hear(element, element.LocalName, "in the name of an element", Manner.Trade, secrets.Outside);
        for (var i = 0; i < element.Attributes.Length; i++)
        {
            var attribute = element.Attributes[i]!;
            // What is sealed is no text; whether it opens to the right one is seen with the cards.
            if (SealedForm.Holds(element.LocalName, attribute.Name, attribute.Value))
                continue;
            if (attribute.Name.Contains('-', StringComparison.Ordinal) && !PageWords.Keywords.Contains(attribute.Name))
                Hear(element, attribute.Name, "in the name of an attribute", Manner.Trade, secrets.Outside);
            var isSpoken = PageWords.Spoken.Contains(attribute.Name);
            rows.Add(element, attribute, isSpoken ? scope : secrets.Outside);
            if (attribute.Name == "style" && PictureAddresses.AreIn(attribute.Value))
                Hear(element, attribute.Value, Forms.Decoded, "in the attribute “style”", Manner.Picture, secrets.Outside);
            if (attribute.Value.Length == 0 || PageWords.Keywords.Contains(attribute.Name))
                continue;
            var manner = attribute.Name == "class" ? Manner.Trade
                : PictureAddresses.IsNamed(element.LocalName, attribute.Name, attribute.Value) ? Manner.Picture
                : Manner.Address;
            var isMeta = element.LocalName == "meta" && attribute.Name == "content";
            if (!isMeta && !isSpoken && listener.IsSilent(attribute.Value, manner, Forms.Decoded))
                continue;
            foreach (var said in Statements.InString(attribute.Value))
                Hear(element, said, $"in the attribute “{attribute.Name}”", Manner.Remark, secrets.Outside);
            var where = $"in the attribute “{attribute.Name}”";
            if (isMeta || isSpoken)
            {
                if (isMeta)
                    Meta(element, attribute.Value);
                else
                    Hear(element, Film(element, attribute.Value), where, Manner.Prose, scope);
                foreach (var form in DecodedText.Of(attribute.Value))
                    Hear(element, form, where, Manner.Address, isSpoken ? scope : secrets.Outside);
            }
            else
            {
                Hear(element, attribute.Value, Forms.Decoded, where, manner, secrets.Outside);
            }
        }
    }

    // The first address of a picture is enough: others lead to the same in another size.
    private void Symbol(IElement element, (ReferenceKind Kind, string Address)[] addresses)
    {
        if (element.LocalName is "img" or "use" or "image" && addresses is [var (_, address), ..])
            references.Add(Uri.UnescapeDataString(Reference.Cleaned(address)), element.GetAttribute("x"), element.GetAttribute("y"));
        else if (element.LocalName == "text")
            references.AddText(element.TextContent, element.GetAttribute("x"), element.GetAttribute("y"));
        if (element is { LocalName: "symbol", Id: { } id })
            references.AddId(id);
    }

    // What is set by numbers in several attributes, or spelt letter by letter in a pattern.
    private void Settings(IElement element)
    {
        if (element.GetAttribute("datetime") is { } time)
            Hear(element, PageWords.WithoutDuration(time), "in the attribute “datetime”", Manner.Remark, secrets.Outside);
        if (element.GetAttribute("pattern") is { } pattern)
            Hear(element, PageWords.WithoutChoices(pattern), "in the attribute “pattern”", Manner.Remark, secrets.Outside);
        if (EndingWith("hour") is { } hour && EndingWith("minute") is { } minute)
            Hear(element, $"hour {hour.Value} minute {minute.Value}", "in attributes", Manner.Remark, secrets.Outside);

        IAttr? EndingWith(string word)
        {
            for (var i = 0; i < element.Attributes.Length; i++)
            {
                if (element.Attributes[i] is { } attribute && attribute.Name.EndsWith(word, StringComparison.OrdinalIgnoreCase))
                    return attribute;
            }

            return null;
        }
    }

    private void Meta(IElement meta, string content)
    {
        var name = meta.GetAttribute("name") ?? meta.GetAttribute("property") ?? "";
        var isPolicy = string.Equals(meta.GetAttribute("http-equiv"), "content-security-policy", StringComparison.OrdinalIgnoreCase);
        if (isPolicy || PageWords.KeywordMeta.Contains(name))
            return;
        Hear(meta, content, "in a meta element", Manner.Prose, secrets.Outside);
        if (content.Contains('/', StringComparison.Ordinal))
        {
            var address = Uri.UnescapeDataString(content);
            Hear(meta, address, "in a meta element", PictureAddresses.Is(address) ? Manner.Picture : Manner.Address, secrets.Outside);
            See(meta, content, secrets.Outside);
        }
    }

    private void Program(IElement element, string text)
    {
        foreach (var piece in element.LocalName == "style" ? ProgramText.InStyle(text) : ProgramText.InPage(text))
            Hear(element, piece.Text, element.LocalName == "style" ? "in a style sheet" : "in data", piece.Manner, secrets.Outside);
    }

    private void Remark(IComment comment, IElement around) =>
        Hear(ElementPlace.Of(comment, around), comment.Data, "in a comment", Manner.Prose, secrets.Outside);

    // The times at which a part of the film begins and ends are no codes.
    private static string Film(IElement element, string text) => element.LocalName == "video" ? PageWords.WithoutTimes(text) : text;

    // What said nothing once, in all of its forms, says nothing on the next page.
    private void Hear(IElement element, string text, Forms forms, string where, Manner manner, Scope scope)
    {
        if (element.LocalName == "figcaption")
        {
            Hear(element, forms == Forms.OfAddress ? PageWords.WithoutTimes(text) : text, where, manner, scope);
            foreach (var form in Others(text, forms))
                Hear(element, form, where, forms == Forms.Turned ? manner : Manner.Address, scope);
            return;
        }

        if (listener.IsSilent(text, manner, forms))
            return;
        var at = ElementPlace.Of(element);
        faults.AddRange(listener.HearAnew(new(forms == Forms.OfAddress ? PageWords.WithoutTimes(text) : text, at.Line, at.Column, where, manner, scope)));
        var isSilent = listener.HeardNothing;
        foreach (var (name, kind) in forms == Forms.Turned ? Contents.Names(text, listener.Language) : [])
        {
            faults.AddRange(listener.Hear(new(name, at.Line, at.Column, where, kind, scope)));
            isSilent &= listener.HeardNothing;
        }

        foreach (var form in Others(text, forms))
        {
            faults.AddRange(listener.Hear(new(form, at.Line, at.Column, where, forms == Forms.Turned ? manner : Manner.Address, scope)));
            isSilent &= listener.HeardNothing;
        }

        if (isSilent)
            listener.KeepSilent(text, manner, forms);
    }

    private static IEnumerable<string> Others(string text, Forms forms) => forms == Forms.Turned ? ProgramText.Turned(text.Trim()) : DecodedText.Of(text);

    private void Hear(IElement element, string text, string where, Manner manner, Scope scope)
    {
        if (element.LocalName == "figcaption" && element.ParentElement?.Children.Any(child => child.LocalName == "video") == true)
            text = PageWords.WithoutTimes(text);
        Hear(ElementPlace.Of(element), text, where, manner, scope);
    }

    private void Hear((int Line, int Column) at, string text, string where, Manner manner, Scope scope) =>
        faults.AddRange(listener.Hear(new(text, at.Line, at.Column, where, manner, scope)));

    private void See(IElement element, string address, Scope scope)
    {
        var (at, column) = ElementPlace.Of(element);
        faults.AddRange(listener.See(address, at, column, scope));
    }
}
