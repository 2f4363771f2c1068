using System.Globalization;
using System.Xml.Linq;

namespace HintBook.Sittings.Page;

/// <summary>What plots are drawn with: SVG 1.1. How a kind of line or area looks, the page's style says.</summary>
internal static class Svg
{
    private static readonly XNamespace Space = "http://www.w3.org/2000/svg";

    /// <summary>A picture with a name and a description for those who don't see it.</summary>
    /// <param name="id">Begins the ids in it.</param>
    /// <param name="name">What it is.</param>
    /// <param name="description">What it shows.</param>
    /// <param name="width">Its width in its own units.</param>
    /// <param name="height">Its height.</param>
    /// <param name="parts">What is drawn, the later over the earlier.</param>
    public static XElement Picture(string id, string name, string description, double width, double height, IEnumerable<XElement> parts) =>
        Element("svg",
            new XAttribute("role", "img"),
            new XAttribute("aria-labelledby", $"{id}-name {id}-shows"),
            new XAttribute("viewBox", $"0 0 {Number(width)} {Number(height)}"),
            Element("title", new XAttribute("id", $"{id}-name"), name),
            Element("desc", new XAttribute("id", $"{id}-shows"), description),
            parts);

    /// <summary>A straight line.</summary>
    public static XElement Line(string kind, (double X, double Y) from, (double X, double Y) to) =>
        Element("line", Kind(kind), At("x1", from.X), At("y1", from.Y), At("x2", to.X), At("y2", to.Y));

    /// <summary>A line with corners.</summary>
    public static XElement Path(string kind, IEnumerable<(double X, double Y)> points) =>
        Element("polyline", Kind(kind), new XAttribute("points", string.Join(' ', points.Select(point => $"{Number(point.X)},{Number(point.Y)}"))));

    /// <summary>A rectangle.</summary>
    public static XElement Box(string kind, double x, double y, double width, double height) =>
        Element("rect", Kind(kind), At("x", x), At("y", y), At("width", width), At("height", height));

    /// <summary>A dot that says what it stands for when the mouse rests on it.</summary>
    public static XElement Dot(string kind, double x, double y, double radius, string says) =>
        Element("circle", Kind(kind), At("cx", x), At("cy", y), At("r", radius), Element("title", says));

    /// <summary>A line of text.</summary>
    public static XElement Text(string kind, double x, double y, string text) => Element("text", Kind(kind), At("x", x), At("y", y), text);

    /// <summary>The marks of a scale that runs to the right, with a line across the plot at each.</summary>
    public static IEnumerable<XElement> Across(Axis axis, double top, double bottom, Func<double, string> says) => axis.Marks.SelectMany(mark => new[]
    {
        Line("grid", (axis.At(mark), top), (axis.At(mark), bottom)),
        Text("mark below", axis.At(mark), bottom + 16, says(mark)),
    });

    /// <summary>The marks of a scale that runs upwards, with a line across the plot at each.</summary>
    public static IEnumerable<XElement> Up(Axis axis, double left, double right, Func<double, string> says) => axis.Marks.SelectMany(mark => new[]
    {
        Line("grid", (left, axis.At(mark)), (right, axis.At(mark))),
        Text("mark beside", left - 8, axis.At(mark) + 4, says(mark)),
    });

    private static XElement Element(string name, params object?[] content) => new(Space + name, content);

    private static XAttribute Kind(string kind) => new("class", kind);

    private static XAttribute At(string name, double value) => new(name, Number(value));

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
