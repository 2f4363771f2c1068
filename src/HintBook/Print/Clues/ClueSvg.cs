using System.Globalization;
using System.Text;
using System.Xml;

namespace HintBook.Print.Clues;

/// <summary>Writes a sheet as SVG 1.1. Width and height are in millimetres and one user unit is a millimetre, so it prints at its true size.</summary>
internal static class ClueSvg
{
    public static string Write(Sheet sheet)
    {
        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new() { Indent = true, IndentChars = "  ", NewLineChars = "\n", OmitXmlDeclaration = true }))
        {
            xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
            var (width, height) = (Mm(sheet.Size.Width), Mm(sheet.Size.Height));
            Attributes(xml, ("width", $"{width}mm"), ("height", $"{height}mm"), ("viewBox", $"0 0 {width} {height}"));
            Attributes(xml, ("font-family", "Inter, 'DejaVu Sans', sans-serif"), ("stroke", "none"), ("fill", "#000000"));
            Element(xml, "rect", ("width", width), ("height", height), ("fill", "#ffffff"));
            foreach (var thing in sheet.Things)
                Write(xml, thing);
            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Write(XmlWriter xml, Drawn thing)
    {
        (string, string)[] stroke = [("fill", "none"), ("stroke", "#000000"), ("stroke-width", Mm(Sheet.LineWidth))];
        switch (thing)
        {
            case DrawnText text:
                xml.WriteStartElement("text");
                Attributes(xml, ("x", Mm(text.X)), ("y", Mm(text.Baseline)), ("font-size", Mm(text.Size)));
                if (text.Bold)
                    Attributes(xml, ("font-weight", "600"));
                if (text.Centred)
                    Attributes(xml, ("text-anchor", "middle"));
                xml.WriteString(text.Text);
                xml.WriteEndElement();
                break;
            case DrawnBox box:
                (string, string)[] place =
                [
                    ("class", box.Is),
                    ("x", Mm(box.Place.X)),
                    ("y", Mm(box.Place.Y)),
                    ("width", Mm(box.Place.Width)),
                    ("height", Mm(box.Place.Height)),
                ];
                Element(xml, "rect", [.. place, .. box.Fill is null ? stroke : [("fill", $"#{box.Fill}")]]);
                break;
            case DrawnLine line:
                Element(xml, "line", [("x1", Mm(line.X1)), ("y1", Mm(line.Y1)), ("x2", Mm(line.X2)), ("y2", Mm(line.Y2)), .. stroke]);
                break;
            case DrawnShape shape:
                var corners = string.Join(' ', shape.Corners.Select(at => $"{Mm(at.X)},{Mm(at.Y)}"));
                Element(xml, "polygon", ("class", shape.Is), ("points", corners), ("fill", $"#{shape.Fill}"));
                break;
            case DrawnDisc disc:
                Element(xml, "circle", ("class", disc.Is), ("cx", Mm(disc.X)), ("cy", Mm(disc.Y)), ("r", Mm(disc.Radius)), ("fill", $"#{disc.Fill}"));
                break;
            case DrawnRing ring:
                Element(xml, "circle", [("cx", Mm(ring.X)), ("cy", Mm(ring.Y)), ("r", Mm(ring.Radius)), .. stroke]);
                break;
        }
    }

    private static void Element(XmlWriter xml, string name, params ReadOnlySpan<(string, string)> attributes)
    {
        xml.WriteStartElement(name);
        Attributes(xml, attributes);
        xml.WriteEndElement();
    }

    private static void Attributes(XmlWriter xml, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        foreach (var (name, value) in attributes)
            xml.WriteAttributeString(name, value);
    }

    // To a hundredth of a millimetre.
    private static string Mm(double millimetres) => (Math.Round(millimetres, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}
