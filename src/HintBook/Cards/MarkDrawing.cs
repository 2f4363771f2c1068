using HintBook.Photos.Drawings;
using PdfSharp.Drawing;

namespace HintBook.Cards;

/// <summary>Draws a maker's mark as areas and lines.</summary>
internal static class MarkDrawing
{
    /// <summary>Draws it on a page that counts in millimetres. What lies beside its place is cut off.</summary>
    public static void Draw(XGraphics graphics, PrintedDrawing drawing)
    {
        var place = drawing.Place;
        var scale = place.Width / drawing.Drawing.Width;
        var state = graphics.Save();
        graphics.IntersectClip(new XRect(place.X, place.Y, place.Width, place.Height));
        foreach (var shape in drawing.Drawing.Shapes)
        {
            var path = new XGraphicsPath { FillMode = shape.EvenOdd ? XFillMode.Alternate : XFillMode.Winding };
            foreach (var figure in shape.Figures)
                Add(path, figure, point => new(place.X + (point.X * scale), place.Y + (point.Y * scale)));
            if (shape.Fill is { } fill)
                graphics.DrawPath(new XSolidBrush(Colour(fill)), path);
            if (shape.Pen is { } pen)
                graphics.DrawPath(PenOf(pen, scale), path);
        }

        graphics.Restore(state);
    }

    /// <summary>Adds an outline to a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="figure">The outline.</param>
    /// <param name="place">Where its points come to lie.</param>
    public static void Add(XGraphicsPath path, Figure figure, Func<System.Numerics.Vector2, XPoint> place)
    {
        path.StartFigure();
        var from = place(figure.Start);
        foreach (var curve in figure.Curves)
        {
            var end = place(curve.End);
            if (curve.IsStraight)
                path.AddLine(from, end);
            else
                path.AddBezier(from, place(curve.First), place(curve.Second), end);
            from = end;
        }

        if (figure.IsClosed)
            path.CloseFigure();
    }

    private static XPen PenOf(Pen pen, double scale) => new(Colour(pen.Colour), pen.Width * scale)
    {
        LineCap = pen.Ends switch { "round" => XLineCap.Round, "square" => XLineCap.Square, _ => XLineCap.Flat },
        LineJoin = pen.Corners switch { "round" => XLineJoin.Round, "bevel" => XLineJoin.Bevel, _ => XLineJoin.Miter },
        MiterLimit = pen.MiterLimit,
    };

    private static XColor Colour(int colour) => XColor.FromArgb(unchecked((int)(0xFF000000 | (uint)colour)));
}
