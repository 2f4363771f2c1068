using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Cards;

/// <summary>Puts a laid-out page into a PDF, in millimetres, as vectors only.</summary>
internal static class PdfDrawing
{
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
                TextDrawing.Draw(graphics, text.Text, text.Face, text.Size, Brush(text.Tone), text.X - width, text.Baseline, text.RightToLeft);
                break;
            case PrintedBox box:
                graphics.DrawRectangle(Brush(box.Tone), box.Place.X, box.Place.Y, box.Place.Width, box.Place.Height);
                break;
            case PrintedLine line:
                graphics.DrawLine(new XPen(Colour(line.Tone), PrintedLine.Thickness), line.X1, line.Y1, line.X2, line.Y2);
                break;
            case PrintedSign sign:
                graphics.DrawPath(SignPen(sign.Place.Width), Strokes(sign));
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

    private static XPen SignPen(double side) => new(Colour(Tone.Warning), CautionSigns.Line / CautionSigns.Side * side)
    {
        LineCap = XLineCap.Round,
        LineJoin = XLineJoin.Round,
    };

    private static XGraphicsPath Strokes(PrintedSign sign)
    {
        var path = new XGraphicsPath();
        var scale = sign.Place.Width / CautionSigns.Side;
        foreach (var line in SignLines.In(sign.Sign))
        {
            path.StartFigure();
            path.AddLines([.. line.Select(point => new XPoint(sign.Place.X + (point.X * scale), sign.Place.Y + (point.Y * scale)))]);
        }

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
