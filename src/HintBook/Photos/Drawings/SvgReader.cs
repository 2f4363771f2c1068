using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Xml;
using System.Xml.Linq;

namespace HintBook.Photos.Drawings;

/// <summary>
/// Reads the part of SVG 1.1 that a mark needs: paths and basic shapes, plain colours, outlines, groups and transforms. All else that would be seen is
/// told, each with what to do about it; what isn't seen (titles, the notes of drawing programs, identifiers) is left out.
/// </summary>
internal sealed class SvgReader
{
    private const int MostShapes = 5_000;
    private const int Deepest = 60;
    private const float Farthest = 1e6f;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly XmlReaderSettings Careful = new() { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null };

    private readonly ImmutableArray<DrawnShape>.Builder shapes = ImmutableArray.CreateBuilder<DrawnShape>();
    private readonly List<DrawingProblem> problems = [];

    /// <summary>Reads a file.</summary>
    /// <param name="text">The file.</param>
    /// <returns>The drawing, or null with all that keeps it from being drawn, each thing once.</returns>
    public static (Drawing? Drawing, ImmutableArray<DrawingProblem> Problems) Read(string text)
    {
        var reader = new SvgReader();
        var drawing = reader.ReadAll(text);
        return reader.problems.Count == 0 ? (drawing, []) : (null, [.. reader.problems.DistinctBy(problem => problem.What)]);
    }

    private Drawing? ReadAll(string text)
    {
        try
        {
            using var xml = XmlReader.Create(new StringReader(text), Careful);
            var root = XDocument.Load(xml, LoadOptions.SetLineInfo).Root;
            if (root?.Name == Svg + "svg")
                return ReadRoot(root);
            problems.Add(new("no element “svg” at its head", "Save it as a plain SVG with your drawing program.", 1));
        }
        catch (XmlException broken)
        {
            problems.Add(new("broken XML", "Save it as a plain SVG with your drawing program.", Math.Max(1, broken.LineNumber)));
        }

        return null;
    }

    private Drawing? ReadRoot(XElement root)
    {
        float[] box = [];
        if (Said(root, "viewBox") is { } view)
            box = SvgTransform.Numbers(view) ?? [];
        else if (Length(root, "width") is { } wide && Length(root, "height") is { } high)
            box = [0, 0, (float)wide, (float)high];
        if (box is not [var x, var y, > 0 and var width, > 0 and var height])
        {
            Tell(root, "no size", "Give its first element viewBox=\"0 0 100 60\", in the units of the drawing.");
            return null;
        }

        var scale = (float)Drawing.LongSide / Math.Max(width, height);
        foreach (var child in root.Elements())
            Walk(child, SvgStyle.Start.With(root, Tell), Matrix3x2.CreateTranslation(-x, -y) * Matrix3x2.CreateScale(scale), 1);
        if (shapes.Count == 0 && problems.Count == 0)
            Tell(root, "nothing to draw", "Draw it with filled areas or lines.");
        return new(width * scale, height * scale, shapes.ToImmutable());
    }

    private void Walk(XElement element, SvgStyle around, Matrix3x2 outer, int depth)
    {
        // Whatever stands in another namespace is a note of a drawing program.
        if (element.Name.Namespace != Svg || element.Name.LocalName is "title" or "desc" or "metadata")
            return;
        // Definitions are seen only where something else refers to them, and that is told there.
        if (element.Name.LocalName == "defs" && !element.Elements(Svg + "style").Any())
            return;
        var name = element.Name.LocalName == "defs" ? "style" : element.Name.LocalName;
        if (name is not ("g" or "path" or "rect" or "circle" or "ellipse" or "line" or "polyline" or "polygon"))
        {
            Tell(element, $"the element “{name}”", InsteadOf(name));
            return;
        }

        var style = around.With(element, Tell);
        if (!style.IsShown)
            return;
        var matrix = outer;
        if (Said(element, "transform") is { } transform)
        {
            if (SvgTransform.Read(transform) is { } own)
                matrix = own * outer;
            else
                Tell(element, $"the transform “{Short(transform)}”", "Write it as in translate(10 5) rotate(30), or apply it in your drawing program.");
        }

        if (name != "g")
            Add(element, style, matrix);
        else if (depth > Deepest)
            Tell(element, $"more than {Deepest} groups in each other", "Ungroup it in your drawing program.");
        else
        {
            foreach (var child in element.Elements())
                Walk(child, style, matrix, depth + 1);
        }
    }

    private void Add(XElement element, SvgStyle style, Matrix3x2 matrix)
    {
        if (FiguresOf(element) is not { } figures)
        {
            Tell(element, $"a {element.Name.LocalName} that can't be read", "Draw it anew, with plain numbers in the units of “viewBox”.");
            return;
        }

        var drawn = figures.Select(figure => Moved(figure, matrix)).ToImmutableArray();
        if (drawn.IsEmpty || (style.Fill is null && style.Stroke is null))
            return;
        if (drawn.Any(IsFar) || shapes.Count >= MostShapes)
        {
            Tell(element, "more than a mark holds", $"A mark has at most {MostShapes} shapes, all of them on the page.");
            return;
        }

        if (style.Stroke is not null && !IsEven(matrix))
            Tell(element, "a line that is stretched unevenly", "Make its outline a path of its own in your drawing program (“stroke to path”).");
        var width = style.Width * Math.Sqrt(Math.Abs(matrix.GetDeterminant()));
        var pen = style.Stroke is { } colour && width > 0 ? new Pen(colour, width, style.Ends, style.Corners, style.MiterLimit) : null;
        // A line has no inside.
        var fill = element.Name.LocalName == "line" ? null : style.Fill;
        if (fill is not null || pen is not null)
            shapes.Add(new(drawn, fill, style.EvenOdd, pen));
    }

    private static ImmutableArray<Figure>? FiguresOf(XElement element) => element.Name.LocalName switch
    {
        "path" => PathData.Read(Said(element, "d") ?? ""),
        "polyline" or "polygon" => SvgTransform.Numbers(Said(element, "points") ?? "") is { } n && n.Length % 2 == 0
            ? Polygon(element.Name.LocalName == "polygon", [.. n.Chunk(2).Select(pair => new Vector2(pair[0], pair[1]))])
            : null,
        _ => BasicShape(element),
    };

    private static ImmutableArray<Figure>? BasicShape(XElement element)
    {
        var readable = true;
        var (cx, cy, r) = (Of("cx"), Of("cy"), Of("r"));
        var (rx, ry, hasX, hasY) = (Of("rx"), Of("ry"), Said(element, "rx") is not null, Said(element, "ry") is not null);
        ImmutableArray<Figure> figures = element.Name.LocalName switch
        {
            "circle" => r > 0 ? [Arc.Ellipse(cx, cy, r, r)] : [],
            "ellipse" => rx > 0 && ry > 0 ? [Arc.Ellipse(cx, cy, rx, ry)] : [],
            "line" => Polygon(isClosed: false, [Point(Of("x1"), Of("y1")), Point(Of("x2"), Of("y2"))]),
            _ => Rectangle(Of("x"), Of("y"), Of("width"), Of("height"), hasX ? rx : ry, hasY ? ry : rx),
        };
        return readable ? figures : null;

        double Of(string name)
        {
            var length = Length(element, name);
            readable &= length is not null || Said(element, name) is null;
            return length ?? 0;
        }
    }

    // SVG 1.1, section 9.2: from the upper left corner, clockwise.
    private static ImmutableArray<Figure> Rectangle(double x, double y, double width, double height, double rx, double ry)
    {
        if (width <= 0 || height <= 0)
            return [];
        (rx, ry) = (Math.Clamp(rx, 0, width / 2), Math.Clamp(ry, 0, height / 2));
        var (right, bottom) = (x + width, y + height);
        if (rx == 0 || ry == 0)
            return Polygon(isClosed: true, [Point(x, y), Point(right, y), Point(right, bottom), Point(x, bottom)]);
        var radii = Point(rx, ry);
        return
        [
            new(Point(x + rx, y),
            [
                Curve.To(Point(right - rx, y)),
                .. Corner(Point(right - rx, y), Point(right, y + ry)),
                Curve.To(Point(right, bottom - ry)),
                .. Corner(Point(right, bottom - ry), Point(right - rx, bottom)),
                Curve.To(Point(x + rx, bottom)),
                .. Corner(Point(x + rx, bottom), Point(x, bottom - ry)),
                Curve.To(Point(x, y + ry)),
                .. Corner(Point(x, y + ry), Point(x + rx, y)),
            ], IsClosed: true),
        ];

        IEnumerable<Curve> Corner(Vector2 from, Vector2 to) => Arc.Curves(from, radii, 0, large: false, sweep: true, to);
    }

    private static ImmutableArray<Figure> Polygon(bool isClosed, Vector2[] points) =>
        points.Length < 2 ? [] : [new(points[0], [.. points.Skip(1).Select(Curve.To)], isClosed)];

    private static Vector2 Point(double x, double y) => new((float)x, (float)y);

    private static Figure Moved(Figure figure, Matrix3x2 by) => new(
        Vector2.Transform(figure.Start, by),
        [
            .. figure.Curves.Select(curve =>
                new Curve(Vector2.Transform(curve.First, by), Vector2.Transform(curve.Second, by), Vector2.Transform(curve.End, by), curve.IsStraight)),
        ],
        figure.IsClosed);

    private static bool IsFar(Figure figure) => figure.Curves.SelectMany(curve => (Vector2[])[curve.First, curve.Second, curve.End]).Prepend(figure.Start)
        .Any(point => !(Math.Abs(point.X) < Farthest && Math.Abs(point.Y) < Farthest));

    // Both axes are as long as before or equally longer, and at right angles.
    private static bool IsEven(Matrix3x2 matrix)
    {
        var (across, down) = (new Vector2(matrix.M11, matrix.M12), new Vector2(matrix.M21, matrix.M22));
        var size = Math.Max(across.LengthSquared(), down.LengthSquared());
        return Math.Abs(across.LengthSquared() - down.LengthSquared()) <= 0.01f * size && Math.Abs(Vector2.Dot(across, down)) <= 0.01f * size;
    }

    private static string? Said(XElement element, string name) => element.Attribute(name)?.Value;

    // Pixels are the units of the drawing; other units have no meaning within it.
    private static double? Length(XElement element, string name)
    {
        var text = Said(element, name)?.Trim();
        // Of the root's size only the proportions count.
        foreach (var unit in (string[])["px", .. element.Parent is null ? new[] { "mm", "cm", "in", "pt", "pc" } : []])
            text = text?.EndsWith(unit, StringComparison.Ordinal) == true ? text[..^unit.Length] : text;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
    }

    private void Tell(XElement at, string what, string instead) =>
        problems.Add(new(what, instead, at is IXmlLineInfo place && place.HasLineInfo() ? place.LineNumber : 1));

    private static string Short(string text) => text.Length > 40 ? $"{text[..40]}…" : text;

    private static string InsteadOf(string name) => name switch
    {
        "text" or "tspan" or "textPath" => "Turn the letters into paths in your drawing program (“object to path”): the fonts of a mark aren't printed.",
        "image" => "A mark has drawn shapes alone. Trace the picture, or give it as a PNG instead of an SVG.",
        "use" or "symbol" => "Unlink the copies in your drawing program (“unlink clone”), so that each is a shape of its own.",
        "style" => "Give each shape its colours as attributes (fill=\"#3a5f2c\"): save as “presentation attributes” or as a plain SVG.",
        "script" => "Take it out: a mark only stands there.",
        "clipPath" or "mask" or "filter" or "linearGradient" or "radialGradient" or "pattern" => "Draw it with plain colours and whole shapes.",
        _ => "Draw it with path, rect, circle, ellipse, line, polyline, polygon and groups.",
    };
}
