using System.Globalization;
using System.Numerics;
using System.Text;

namespace HintBook.Photos.Drawings;

/// <summary>Writes a drawing as an SVG that holds nothing but its shapes: no script, no address, no name, nothing of what the file had besides.</summary>
internal static class SvgWriter
{
    /// <summary>The file.</summary>
    /// <param name="drawing">The drawing.</param>
    public static byte[] Write(Drawing drawing)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {drawing.Width:0.##} {drawing.Height:0.##}\">\n");
        foreach (var shape in drawing.Shapes)
            Write(svg, shape);
        return Encoding.UTF8.GetBytes(svg.Append("</svg>\n").ToString());
    }

    private static void Write(StringBuilder svg, DrawnShape shape)
    {
        svg.Append(shape.Fill is { } fill ? $"<path fill=\"#{fill:x6}\"" : "<path fill=\"none\"");
        if (shape.EvenOdd)
            svg.Append(" fill-rule=\"evenodd\"");
        if (shape.Pen is { } pen)
        {
            svg.Append(CultureInfo.InvariantCulture, $" stroke=\"#{pen.Colour:x6}\" stroke-width=\"{pen.Width:0.##}\" stroke-linecap=\"{pen.Ends}\"")
                .Append(CultureInfo.InvariantCulture, $" stroke-linejoin=\"{pen.Corners}\" stroke-miterlimit=\"{pen.MiterLimit:0.##}\"");
        }

        svg.Append(" d=\"");
        foreach (var figure in shape.Figures)
        {
            svg.Append('M').Append(At(figure.Start));
            foreach (var curve in figure.Curves)
                svg.Append(curve.IsStraight ? $"L{At(curve.End)}" : $"C{At(curve.First)} {At(curve.Second)} {At(curve.End)}");
            svg.Append(figure.IsClosed ? "Z" : "");
        }

        svg.Append("\"/>\n");
    }

    private static string At(Vector2 point) => string.Create(CultureInfo.InvariantCulture, $"{point.X:0.##} {point.Y:0.##}");
}
