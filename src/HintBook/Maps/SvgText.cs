using System.Globalization;
using System.Xml;

namespace HintBook.Maps;

/// <summary>Small pieces of SVG.</summary>
internal static class SvgText
{
    /// <summary>A number of pixels as it is written: at most one digit after the point.</summary>
    public static string Px(double pixels) =>
        (Math.Round(pixels, 1) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);

    public static string Px(Point point) => $"{Px(point.X)} {Px(point.Y)}";

    public static void Attributes(this XmlWriter xml, params ReadOnlySpan<(string Name, object Value)> attributes)
    {
        foreach (var (name, value) in attributes)
            xml.WriteAttributeString(name, value is double number ? Px(number) : $"{value}");
    }

    public static void Element(
        this XmlWriter xml, string name, string? text, params ReadOnlySpan<(string Name, object Value)> attributes)
    {
        xml.WriteStartElement(name);
        xml.Attributes(attributes);
        if (text is not null)
            xml.WriteString(text);
        xml.WriteEndElement();
    }
}
