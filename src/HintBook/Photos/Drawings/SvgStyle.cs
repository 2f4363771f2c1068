using System.Globalization;
using System.Xml.Linq;

namespace HintBook.Photos.Drawings;

/// <summary>How a shape is painted: what its groups say, and what it says itself (SVG 1.1, chapter 11).</summary>
internal sealed record SvgStyle
{
    /// <summary>What nothing says otherwise.</summary>
    public static SvgStyle Start { get; } = new();

    /// <summary>The colour within as 0xRRGGBB; null for none.</summary>
    public int? Fill { get; private init; } = 0;

    /// <summary>Whether the rule of even and odd says what is within.</summary>
    public bool EvenOdd { get; private init; }

    /// <summary>The colour of the outline as 0xRRGGBB; null for none.</summary>
    public int? Stroke { get; private init; }

    /// <summary>The outline's width, in the shape's own units.</summary>
    public double Width { get; private init; } = 1;

    /// <summary>The shape of its ends.</summary>
    public string Ends { get; private init; } = "butt";

    /// <summary>The shape of its corners.</summary>
    public string Corners { get; private init; } = "miter";

    /// <summary>How long a pointed corner may be.</summary>
    public double MiterLimit { get; private init; } = 4;

    /// <summary>Whether it is there at all.</summary>
    public bool IsShown { get; private init; } = true;

    /// <summary>The style of an element within this one.</summary>
    /// <param name="element">The element.</param>
    /// <param name="tell">Is told what isn't understood, and what to write instead.</param>
    public SvgStyle With(XElement element, Action<XElement, string, string> tell)
    {
        var style = this;
        foreach (var attribute in element.Attributes().Where(attribute => attribute.Name.Namespace == XNamespace.None && attribute.Name.LocalName != "style"))
            style = Said(attribute.Name.LocalName, attribute.Value);
        // What stands in “style” goes before attributes.
        foreach (var rule in (element.Attribute("style")?.Value ?? "").Split(';'))
            style = rule.Split(':', 2) is [var name, var value] ? Said(name.Trim(), value) : style;
        return style;

        SvgStyle Said(string name, string value)
        {
            value = value.Trim();
            if (value == "inherit")
                return style;
            if (style.Change(name, value) is { } changed)
                return changed;
            tell(element, $"{name}=\"{(value.Length > 40 ? $"{value[..40]}…" : value)}\"", InsteadOf(name));
            return style;
        }
    }

    // Null where the value can't be drawn. A property that changes nothing that is seen may be whatever it likes.
    private SvgStyle? Change(string name, string value)
    {
        switch (name)
        {
            case "fill":
                return SvgColour.TryRead(value, out var fill) ? this with { Fill = fill } : null;
            case "stroke":
                return SvgColour.TryRead(value, out var stroke) ? this with { Stroke = stroke } : null;
            case "fill-rule":
                return value is "evenodd" or "nonzero" ? this with { EvenOdd = value == "evenodd" } : null;
            case "stroke-width":
                return Number(value) is >= 0 and var width ? this with { Width = width } : null;
            case "stroke-linecap":
                return value is "butt" or "round" or "square" ? this with { Ends = value } : null;
            case "stroke-linejoin":
                return value is "miter" or "round" or "bevel" ? this with { Corners = value } : null;
            case "stroke-miterlimit":
                return Number(value) is >= 1 and var limit ? this with { MiterLimit = limit } : null;
            case "fill-opacity":
                return Number(value) switch { 1 => this, 0 => this with { Fill = null }, _ => null };
            case "stroke-opacity":
                return Number(value) switch { 1 => this, 0 => this with { Stroke = null }, _ => null };
            case "opacity":
                return Number(value) switch { 1 => this, 0 => this with { IsShown = false }, _ => null };
            case "display":
                return value == "none" ? this with { IsShown = false } : this;
            case "visibility":
                return value is "hidden" or "collapse" ? this with { IsShown = false } : this;
            case "stroke-dasharray" or "clip-path" or "mask" or "filter" or "marker" or "marker-start" or "marker-mid" or "marker-end":
                return value is "none" or "" ? this : null;
            case "mix-blend-mode":
                return value == "normal" ? this : null;
            default:
                return this;
        }
    }

    private static double? Number(string value)
    {
        var digits = value.EndsWith("px", StringComparison.Ordinal) ? value[..^2] : value;
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }

    private static string InsteadOf(string name) => name switch
    {
        "fill" or "stroke" => "Write a plain colour, as in #3a5f2c, or none.",
        "opacity" or "fill-opacity" or "stroke-opacity" or "mix-blend-mode" => "Write the colour that is seen instead: nothing shines through on paper.",
        "stroke-dasharray" or "marker" or "marker-start" or "marker-mid" or "marker-end" =>
            "Make the outline a path of its own in your drawing program (“stroke to path”).",
        "clip-path" or "mask" or "filter" => "Draw it with plain colours and whole shapes.",
        _ => "Write a plain number, or a word that SVG 1.1 has for it.",
    };
}
