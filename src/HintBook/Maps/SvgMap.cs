using System.Text;
using System.Xml;

namespace HintBook.Maps;

/// <summary>
/// Writes a map as a picture: SVG 1.1 without scripts, fonts or anything fetched, in rows from the stages that are open from the
/// start down to the goal.
/// </summary>
public static class SvgMap
{
    private const double Margin = 24;

    /// <summary>
    /// The picture as one XML document, with lines ended by <c>\n</c>. Kinds are told by shape as well as by colour, and a legend
    /// explains those that are met. The same map gives the same text.
    /// </summary>
    /// <param name="map">What to draw.</param>
    /// <param name="words">What the legend and the description say.</param>
    /// <param name="spoilerFree">
    /// Shows numbers and arrows only, every stage in the same shape: no title of the box or of a stage, no word of the author's,
    /// and nothing that tells a red herring or the goal from the rest.
    /// </param>
    public static string Write(StageMap map, MapWords words, bool spoilerFree = false)
    {
        var labels = map.Nodes.Select(stage => Label.Of(stage, spoilerFree)).ToArray();
        var loops = map.Edges.Where(edge => edge.From == edge.To).Select(edge => edge.From - 1).ToHashSet();
        var drawing = MapLayout.Compute(
            [.. labels.Select((label, i) => loops.Contains(i) ? SvgBox.WithRoomForLoop(label.Size) : label.Size)],
            [.. map.Edges.Select(edge => (edge.From - 1, edge.To - 1))]);
        var heading = spoilerFree ? SvgHeading.None : SvgHeading.Layout(map, words, Math.Max(drawing.Size.Width, 480));
        var width = Math.Ceiling(Math.Max(drawing.Size.Width, heading.Size.Width) + (2 * Margin));
        var height = Math.Ceiling(drawing.Size.Height + heading.Size.Height + (2 * Margin));
        var left = (width - drawing.Size.Width) / 2;
        var top = Margin + heading.Size.Height;
        var frames = drawing.Boxes
            .Select((frame, i) => loops.Contains(i) ? SvgBox.WithoutRoomForLoop(frame) : frame)
            .Select(frame => frame.Moved(left, top)).ToArray();

        var text = new StringBuilder();
        using (var xml = XmlWriter.Create(text, new() { Indent = true, IndentChars = "  ", NewLineChars = "\n", OmitXmlDeclaration = true }))
        {
            xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
            xml.Attributes(
                ("width", width), ("height", height), ("viewBox", $"0 0 {width} {height}"),
                ("role", "img"), ("aria-labelledby", "map-title map-description"), ("font-family", "system-ui, sans-serif"),
                ("font-size", Label.FontSize));
            xml.Element("title", Description.Title(map, words, spoilerFree), ("id", "map-title"));
            xml.Element("desc", Description.Write(map, words), ("id", "map-description"));
            SvgArrow.Define(xml);
            xml.Element("rect", null, ("width", width), ("height", height), ("fill", "#ffffff"));
            heading.Write(xml, Margin, Margin);
            xml.WriteStartElement("g");
            foreach (var (edge, route) in map.Edges.Zip(drawing.Routes))
                SvgArrow.Write(xml, edge.From == edge.To ? SvgBox.Loop(frames[edge.To - 1]) : SvgArrow.Path(route.Moved(left, top)), edge.OneOfSeveral);
            xml.WriteEndElement();
            foreach (var (frame, stage, label) in frames.Zip(map.Nodes, labels))
                SvgBox.Write(xml, frame, stage, label, spoilerFree);

            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }
}
