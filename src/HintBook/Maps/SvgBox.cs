using System.Xml;

namespace HintBook.Maps;

/// <summary>Draws the boxes. Each kind has a shape of its own, so that the map can be read without colours.</summary>
internal static class SvgBox
{
    private const double Rounding = 10;
    private const double LoopRoom = 26;
    private const double BadgeFont = 12;

    /// <summary>A box with room beside it, on both sides, for an arrow from the box to itself.</summary>
    public static Extent WithRoomForLoop(Extent size) => size with { Width = size.Width + (2 * LoopRoom) };

    public static Frame WithoutRoomForLoop(Frame frame) =>
        frame with { Left = frame.Left + LoopRoom, Width = frame.Width - (2 * LoopRoom) };

    /// <summary>The arrow from a box to itself, on the right of it.</summary>
    public static string Loop(Frame frame)
    {
        var (right, middle) = (frame.Right, frame.Top + (frame.Height / 2));
        return $"M{SvgText.Px(new Point(right, middle + 10))} C{SvgText.Px(new Point(right + LoopRoom, middle + 18))} "
            + $"{SvgText.Px(new Point(right + LoopRoom, middle - 10))} {SvgText.Px(new Point(right + 1, middle - 8))}";
    }

    /// <summary>A stage's box with its number and title.</summary>
    public static void Write(XmlWriter xml, Frame frame, StageNode stage, Label label, bool spoilerFree)
    {
        xml.WriteStartElement("g");
        if (!spoilerFree)
            xml.Element("title", $"{label.Number} {Wrapping.Clean(stage.Title)}");
        Shape(xml, frame, spoilerFree ? StageKind.Ordinary : stage.Kind);
        var middle = frame.Top + (frame.Height / 2);
        var first = middle - ((Math.Max(1, label.Lines.Length) - 1) * Label.LineHeight / 2) + (Label.FontSize * 0.35);
        if (label.Lines.IsEmpty)
            xml.Element("text", label.Number, ("x", frame.Middle), ("y", first), ("text-anchor", "middle"), ("font-weight", "bold"));
        else
            xml.Element("text", label.Number, ("x", frame.Left + Label.Padding), ("y", first), ("font-weight", "bold"));
        for (var line = 0; line < label.Lines.Length; line++)
            xml.Element("text", label.Lines[line], ("x", frame.Left + label.TitleLeft), ("y", first + (line * Label.LineHeight)));
        if (stage.Badge is { } badge && !spoilerFree)
            Corner(xml, frame, badge);
        xml.WriteEndElement();
    }

    // Over the upper right corner, half inside: boxes stand further apart than that.
    private static void Corner(XmlWriter xml, Frame frame, NodeBadge badge)
    {
        var width = (badge.Says.Length * BadgeFont * 0.6) + 12;
        var left = Math.Max(frame.Left, frame.Right + 6 - width);
        xml.WriteStartElement("rect");
        xml.Attributes(
            ("x", left), ("y", frame.Top - 10), ("width", width), ("height", 17), ("rx", 8), ("fill", badge.IsGrave ? "#9d1c1c" : "#7a4a00"));
        xml.WriteEndElement();
        xml.Element(
            "text", badge.Says, ("x", left + (width / 2)), ("y", frame.Top + 3), ("text-anchor", "middle"), ("font-size", BadgeFont), ("fill", "#ffffff"));
    }

    /// <summary>
    /// An empty box. Its shape tells its kind: rounded for a stage, broken when optional, with its corners cut off for a red herring,
    /// dotted and square where nothing leads, double for the goal.
    /// </summary>
    public static void Shape(XmlWriter xml, Frame frame, StageKind kind)
    {
        switch (kind)
        {
            case StageKind.Optional:
                Rectangle(xml, frame, Rounding, "#eef4fb", "#1f5c99", ("stroke-dasharray", "8 4"));
                break;
            case StageKind.RedHerring:
                xml.Element("path", null, ("d", CutCorners(frame)), ("fill", "#fdeee6"), ("stroke", "#a63c06"), ("stroke-width", 1.6));
                break;
            case StageKind.Unreachable:
                Rectangle(xml, frame, 0, "#eeeeee", "#5f5f5f", ("stroke-dasharray", "1.5 4.5"), ("stroke-linecap", "round"));
                break;
            case StageKind.Goal:
                Rectangle(xml, frame, Rounding, "#fff6d6", "#7a5b00");
                Rectangle(xml, new(frame.Left + 4, frame.Top + 4, frame.Width - 8, frame.Height - 8), Rounding - 3, "none", "#7a5b00");
                break;
            default:
                Rectangle(xml, frame, Rounding, "#f7f9fa", "#333f48");
                break;
        }
    }

    private static void Rectangle(
        XmlWriter xml, Frame frame, double corner, string fill, string stroke, params ReadOnlySpan<(string Name, object Value)> more)
    {
        xml.WriteStartElement("rect");
        xml.Attributes(
            ("x", frame.Left), ("y", frame.Top), ("width", frame.Width), ("height", frame.Height), ("rx", corner),
            ("fill", fill), ("stroke", stroke), ("stroke-width", 1.6));
        xml.Attributes(more);
        xml.WriteEndElement();
    }

    private static string CutCorners(Frame frame)
    {
        var (left, right, top, bottom) = (frame.Left, frame.Right, frame.Top, frame.Bottom);
        Point[] corners =
        [
            new(left + Rounding, top), new(right - Rounding, top), new(right, top + Rounding), new(right, bottom - Rounding),
            new(right - Rounding, bottom), new(left + Rounding, bottom), new(left, bottom - Rounding), new(left, top + Rounding),
        ];
        return $"M{string.Join(" L", corners.Select(SvgText.Px))} z";
    }
}
