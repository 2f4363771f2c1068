using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>The few elements that the page is made of.</summary>
internal static class Html
{
    /// <summary>A column of a table.</summary>
    /// <param name="Head">Its name.</param>
    /// <param name="IsNumber">Whether its cells stand at the right.</param>
    public readonly record struct Column(string Head, bool IsNumber = true);

    /// <summary>A table whose first column names its rows. It may be moved sideways by keyboard where it is wider than the screen.</summary>
    /// <param name="caption">What it shows.</param>
    /// <param name="columns">Its columns; the first one names the rows.</param>
    /// <param name="rows">Its rows, each with as many cells as there are columns: texts or elements.</param>
    public static XElement Table(string caption, Column[] columns, IEnumerable<object[]> rows) => Wide(
        caption,
        new XElement("table",
            new XElement("caption", caption),
            new XElement("thead", new XElement("tr", columns.Select(column => new XElement("th", new XAttribute("scope", "col"), Kind(column), column.Head)))),
            new XElement("tbody", rows.Select(row => new XElement("tr", row.Zip(columns).Select((cell, index) => index == 0
                ? new XElement("th", new XAttribute("scope", "row"), cell.First)
                : new XElement("td", Kind(cell.Second), cell.First)))))));

    /// <summary>What may be wider than the screen.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="content">The content.</param>
    public static XElement Wide(string name, XElement content) => new(
        "div",
        new XAttribute("class", "wide"),
        new XAttribute("tabindex", "0"),
        new XAttribute("role", "region"),
        new XAttribute("aria-label", name),
        content);

    /// <summary>A document as a text, the same for HTML and for XML, with what neither can hold left out.</summary>
    /// <param name="html">The root.</param>
    public static string Document(XElement html)
    {
        foreach (var text in html.DescendantNodes().OfType<XText>())
            text.Value = Clean(text.Value);
        foreach (var attribute in html.DescendantsAndSelf().Attributes())
            attribute.Value = Clean(attribute.Value);
        // A browser would take <td/> for the beginning of a cell.
        foreach (var empty in html.DescendantsAndSelf().Where(element => element.IsEmpty && element.Name.LocalName is not "meta").ToArray())
            empty.Value = "";
        var written = new StringBuilder("<!DOCTYPE html>\n");
        using (var xml = XmlWriter.Create(written, new() { OmitXmlDeclaration = true, Indent = false, NewLineHandling = NewLineHandling.None }))
            html.Save(xml);
        return written.Append('\n').ToString();
    }

    private static XAttribute? Kind(Column column) => column.IsNumber ? new("class", "number") : null;

    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value > char.MaxValue || XmlConvert.IsXmlChar((char)rune.Value))
                clean.Append(rune.ToString());
        }

        return clean.ToString();
    }
}
