using System.Xml;

namespace HintBook.Audit;

/// <summary>Reads an SVG file as XML: its ids, its addresses, what it says, and scripts that it must not have.</summary>
internal static class DrawingReader
{
    private static readonly XmlReaderSettings Careful = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    /// <summary>Reads a drawing.</summary>
    public static SiteFile Read(string path, string text, Secrets secrets)
    {
        var faults = new List<AuditFault>();
        var references = new List<Reference>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), Careful);
            var place = (IXmlLineInfo)reader;
            while (reader.Read())
            {
                if (reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
                    faults.AddRange(secrets.Shown(path, new(reader.Value, place.LineNumber, place.LinePosition, "in a drawing")));
                if (reader.NodeType != XmlNodeType.Element)
                    continue;
                if (reader.LocalName == "script")
                    faults.Add(new(path, place.LineNumber, place.LinePosition, "A drawing must not hold a script."));
                while (reader.MoveToNextAttribute())
                {
                    if (reader.LocalName == "id" && !ids.Add(reader.Value))
                        faults.Add(new(path, place.LineNumber, place.LinePosition, $"The id “{reader.Value}” is there twice."));
                    else if (reader.LocalName == "href")
                        references.Add(new(ReferenceKind.Asset, Reference.Cleaned(reader.Value), place.LineNumber, place.LinePosition));
                    else if (reader.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase))
                        faults.Add(new(path, place.LineNumber, place.LinePosition, $"The attribute “{reader.LocalName}” runs a script."));
                }
            }
        }
        catch (XmlException e)
        {
            faults.Add(new(path, e.LineNumber, e.LinePosition, "The drawing is not well-formed XML."));
        }

        return new(path) { Faults = [.. faults], References = [.. references], Ids = ids };
    }
}
