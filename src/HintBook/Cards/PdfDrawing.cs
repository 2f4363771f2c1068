using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Cards;

/// <summary>Puts a laid-out page into a PDF, in millimetres, as vectors only.</summary>
internal static class PdfDrawing
{
    // The exclamation mark is cut out of the triangle; measures in parts of the sign's width and height.
    private static readonly (double X, double Y)[] Triangle = [(0.5, 0.0), (1.0, 1.0), (0.0, 1.0)];
    private static readonly (double X, double Y)[] Stroke = [(0.445, 0.36), (0.555, 0.36), (0.535, 0.70), (0.465, 0.70)];
    private static readonly (double X, double Y)[] Dot = [(0.45, 0.78), (0.55, 0.78), (0.55, 0.88), (0.45, 0.88)];

    public static void Add(PdfDocument document, PrintedPage page)
    {
        var sheet = document.AddPage();
        sheet.Width = XUnit.FromMillimeter(page.Size.Width);
        sheet.Height = XUnit.FromMillimeter(page.Size.Height);
        using var graphics = XGraphics.FromPdfPage(sheet, XGraphicsUnit.Millimeter);
        foreach (var thing in page.Things)
            Draw(graphics, thing);
    }

    private static void Draw(XGraphics graphics, Printed thing)
    {
        switch (thing)
        {
            case PrintedText text:
                var width = text.FromRight ? Letters.Width(text.Text, text.Face, text.Size) : 0;
                graphics.DrawString(text.Text, Letters.Font(text.Face, text.Size), Brush(text.Tone), new XPoint(text.X - width, text.Baseline));
                break;
            case PrintedBox box:
                graphics.DrawRectangle(Brush(box.Tone), box.Place.X, box.Place.Y, box.Place.Width, box.Place.Height);
                break;
            case PrintedLine line:
                graphics.DrawLine(new XPen(Colour(line.Tone), PrintedLine.Thickness), line.X1, line.Y1, line.X2, line.Y2);
                break;
            case PrintedSign sign:
                graphics.DrawPath(Brush(Tone.Warning), Outline(sign.Place, Triangle, Stroke, Dot));
                break;
            case PrintedCode code:
                graphics.DrawPath(Brush(Tone.Ink), Outline(code));
                break;
        }
    }

    // One path for the whole code: nothing abuts, so that no viewer can show hairlines between modules.
    private static XGraphicsPath Outline(PrintedCode code)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var loop in Outlines.Trace(code.Code))
            path.AddPolygon([.. loop.Select(corner => new XPoint(code.X + (corner.X * code.Module), code.Y + (corner.Y * code.Module)))]);
        return path;
    }

    private static XGraphicsPath Outline(Rect place, params (double X, double Y)[][] loops)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var loop in loops)
            path.AddPolygon([.. loop.Select(corner => new XPoint(place.X + (corner.X * place.Width), place.Y + (corner.Y * place.Height)))]);
        return path;
    }

    private static XSolidBrush Brush(Tone tone) => new(Colour(tone));

    private static XColor Colour(Tone tone) => tone switch
    {
        Tone.Quiet => XColor.FromArgb(90, 90, 90),
        Tone.Rule => XColor.FromArgb(205, 205, 205),
        Tone.Band => XColor.FromArgb(38, 70, 83),
        Tone.Warning => XColor.FromArgb(178, 74, 12),
        _ => XColor.FromArgb(0, 0, 0),
    };
}
