using System.Text;
using System.Xml;
using HintBook.Audit.Mentions;

namespace HintBook.Audit;

/// <summary>Reads an SVG file as XML: its ids, its addresses, what it says, and scripts that it must not have.</summary>
internal static class DrawingReader
{
    private const int LongestItems = 2000;

    private static readonly XmlReaderSettings Careful = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    /// <summary>Reads a drawing.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        var listener = secrets.Listen(path);
        var faults = new List<AuditFault>();
        var references = new List<Reference>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        var line = new StringBuilder();
        var items = new List<string>();
        var rows = new ReferenceRows();
        var (x, y) = ((string?)null, (string?)null);
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), Careful);
            var place = (IXmlLineInfo)reader;
            while (reader.Read())
            {
                if (reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
                    line.Append(reader.Value);
                else if (reader.NodeType is XmlNodeType.Comment or XmlNodeType.ProcessingInstruction)
                    Hear(reader.Value, "in a comment", Manner.Prose);
                if (reader.NodeType is XmlNodeType.Element or XmlNodeType.EndElement && !PageWords.IsInLine(reader.LocalName))
                    End();
                if (reader.NodeType != XmlNodeType.Element)
                    continue;
                if (reader.LocalName == "tspan" && (reader.GetAttribute("x") ?? reader.GetAttribute("y") ?? reader.GetAttribute("dy")) is not null)
                    line.Append('\n');
                if (reader.LocalName is "text" or "tspan")
                    (x, y) = (reader.GetAttribute("x"), reader.GetAttribute("y"));
                if (reader.LocalName is "use" or "image" && (reader.GetAttribute("href") ?? reader.GetAttribute("xlink:href")) is { } shown)
                    rows.Add(Uri.UnescapeDataString(shown), reader.GetAttribute("x"), reader.GetAttribute("y"));
                if (reader.GetAttribute("id") is { } id)
                    rows.AddId(id);
                if (reader.LocalName == "script")
                    faults.Add(new(path, place.LineNumber, place.LinePosition, "A drawing must not hold a script."));
                var element = reader.LocalName;
                while (reader.MoveToNextAttribute())
                {
                    if (reader.LocalName == "id" && !ids.Add(reader.Value))
                        faults.Add(new(path, place.LineNumber, place.LinePosition, $"The id “{reader.Value}” is there twice."));
                    else if (reader.LocalName == "href")
                        references.Add(new(ReferenceKind.Asset, Reference.Cleaned(reader.Value), place.LineNumber, place.LinePosition));
                    else if (reader.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase))
                        faults.Add(new(path, place.LineNumber, place.LinePosition, $"The attribute “{reader.LocalName}” runs a script."));
                    Attribute(element, reader.Name, reader.Value);
                }
            }

            if (items.Count > 1 && items.Sum(item => item.Length) <= LongestItems)
                Hear(string.Join(FoldedText.BetweenItems, items), "in a drawing", Manner.Items);

            foreach (var (said, manner) in rows.Rows)
                Hear(said, "in what a drawing refers to", manner);

            foreach (var time in DrawnHands.In(text))
                Hear(time, "in the hands of a drawn clock", Manner.Remark);

            void Attribute(string element, string name, string value)
            {
                if (name.Contains('-', StringComparison.Ordinal) && !PageWords.Keywords.Contains(name))
                    Hear(name, "in the name of an attribute", Manner.Trade);
                if (name is "href" or "xlink:href")
                    Hear(Uri.UnescapeDataString(value), "in an address", PictureAddresses.MannerOf(element, value));
                else if (!PageWords.Keywords.Contains(name) && !name.StartsWith("xmlns", StringComparison.Ordinal))
                    Hear(value, $"in the attribute “{name}”", PictureAddresses.IsNamed(element, name, value) ? Manner.Picture : MannerOf(name));
            }

            void End()
            {
                var said = line.ToString();
                Hear(said, "in a drawing", Manner.Prose);
                if (!string.IsNullOrWhiteSpace(said))
                    items.Add(said.Trim());
                rows.AddText(said, x, y);
                line.Clear();
            }

            void Hear(string said, string where, Manner manner)
            {
                if (!secrets.IsEmpty && said.Length > 0)
                    faults.AddRange(listener.Hear(new(said, place.LineNumber, place.LinePosition, where, manner, secrets.Outside)));
            }
        }
        catch (XmlException e)
        {
            faults.Add(new(path, e.LineNumber, e.LinePosition, "The drawing is not well-formed XML."));
        }

        return new(path) { Faults = [.. faults], References = [.. references], Ids = ids };
    }

    private static Manner MannerOf(string attribute) =>
        PageWords.Spoken.Contains(attribute) ? Manner.Prose
        : attribute == "class" ? Manner.Trade
        : Manner.Address;
}
