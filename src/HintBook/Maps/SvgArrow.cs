using System.Text;
using System.Xml;

namespace HintBook.Maps;

/// <summary>Draws the arrows: a full line for a stage that is needed, a broken one where another would do.</summary>
internal static class SvgArrow
{
    /// <summary>The arrow head, to be written once before the first arrow.</summary>
    public static void Define(XmlWriter xml)
    {
        xml.WriteStartElement("defs");
        xml.WriteStartElement("marker");
        xml.Attributes(
            ("id", "arrow"), ("viewBox", "0 0 10 10"), ("refX", 9.5), ("refY", 5.0), ("markerWidth", 9.0), ("markerHeight", 9.0),
            ("markerUnits", "userSpaceOnUse"), ("orient", "auto"));
        xml.Element("path", null, ("d", "M0 0.8 L10 5 L0 9.2 z"), ("fill", "#333f48"));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    /// <summary>An arrow along an SVG path.</summary>
    public static void Write(XmlWriter xml, string path, bool oneOfSeveral)
    {
        xml.WriteStartElement("path");
        xml.Attributes(
            ("d", path), ("fill", "none"), ("stroke", "#333f48"), ("stroke-width", 1.6), ("marker-end", "url(#arrow)"));
        if (oneOfSeveral)
            xml.Attributes(("stroke-dasharray", "7 5"));
        xml.WriteEndElement();
    }

    /// <summary>The SVG path of a route.</summary>
    public static string Path(Route route)
    {
        var path = new StringBuilder($"M{SvgText.Px(route.Points[0])}");
        foreach (var (from, to) in route.Points.Zip(route.Points.Skip(1)))
        {
            var (leave, arrive) = Route.Bend(from, to);
            path.Append(Math.Abs(from.X - to.X) < 0.05
                ? $" V{SvgText.Px(to.Y)}"
                : $" C{SvgText.Px(leave)} {SvgText.Px(arrive)} {SvgText.Px(to)}");
        }

        return path.ToString();
    }
}
