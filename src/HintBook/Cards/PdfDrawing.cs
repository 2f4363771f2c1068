using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Cards;

/// <summary>Puts a laid-out page into a PDF, in millimetres, as vectors; photos alone are pixels.</summary>
internal static class PdfDrawing
{
    public static void Add(PdfDocument document, PrintedPage page)
    {
        var sheet = document.AddPage();
        sheet.Width = XUnit.FromMillimeter(page.Size.Width);
        sheet.Height = XUnit.FromMillimeter(page.Size.Height);
        if (page.Bleed is { } bleed)
        {
            var whole = new XRect(0, 0, sheet.Width.Point, sheet.Height.Point);
            sheet.BleedBox = new PdfRectangle(whole);
            var cut = XUnit.FromMillimeter(bleed).Point;
            sheet.TrimBox = new PdfRectangle(new XRect(cut, cut, whole.Width - (2 * cut), whole.Height - (2 * cut)));
        }

        using var graphics = XGraphics.FromPdfPage(sheet, XGraphicsUnit.Millimeter);
        foreach (var thing in page.Things)
            Draw(graphics, thing, page.Look);
    }

    /// <summary>Draws one thing on a page that counts in millimetres.</summary>
    internal static void Draw(XGraphics graphics, Printed thing, CardLook look)
    {
        switch (thing)
        {
            case PrintedText text:
                var width = text.FromRight ? Letters.Width(text.Text, text.Face, text.Size) : 0;
                TextDrawing.Draw(graphics, text.Text, text.Face, text.Size, Brush(look, text.Tone), text.X - width, text.Baseline, text.RightToLeft);
                break;
            case PrintedBox box:
                graphics.DrawRectangle(Brush(look, box.Tone), box.Place.X, box.Place.Y, box.Place.Width, box.Place.Height);
                break;
            case PrintedLine line:
                graphics.DrawLine(new XPen(Colour(look, line.Tone), PrintedLine.Thickness), line.X1, line.Y1, line.X2, line.Y2);
                break;
            case PrintedStroke stroke:
                graphics.DrawLines(new XPen(Colour(look, stroke.Tone), stroke.Thickness), [.. stroke.Points.Select(point => new XPoint(point.X, point.Y))]);
                break;
            case PrintedShape shape:
                var corners = shape.Corners.Select(point => new XPoint(point.X, point.Y));
                graphics.DrawPolygon(Brush(look, shape.Tone), [.. corners], XFillMode.Winding);
                break;
            case PrintedPicture picture:
                var place = picture.Place;
                graphics.DrawImage(picture.Picture.In(graphics), place.X, place.Y, place.Width, place.Height);
                break;
            case PrintedDrawing drawing:
                MarkDrawing.Draw(graphics, drawing);
                break;
            case PrintedSign sign:
                graphics.DrawPath(SignPen(look, sign.Place.Width), Strokes(sign));
                break;
            case PrintedTurned turned:
                var state = graphics.Save();
                TurnAbout(graphics, turned);
                foreach (var each in turned.Things)
                    Draw(graphics, each, look);
                graphics.Restore(state);
                break;
            case PrintedCode code:
                graphics.DrawPath(XBrushes.Black, Outline(code));
                break;
        }
    }

    /// <summary>Turns all that is drawn from now on.</summary>
    internal static void TurnAbout(XGraphics graphics, PrintedTurned turned)
    {
        var (x, y) = (turned.Around.X + (turned.Around.Width / 2), turned.Around.Y + (turned.Around.Height / 2));
        var (across, down) = turned.Turn == Turn.Mirrored ? (-1, 1) : (-1, -1);
        graphics.MultiplyTransform(new XMatrix(across, 0, 0, down, x - (across * x), y - (down * y)));
    }

    // One path for the whole code: nothing abuts, so that no viewer can show hairlines between modules.
    private static XGraphicsPath Outline(PrintedCode code)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var loop in Outlines.Trace(code.Code))
            path.AddPolygon([.. loop.Select(corner => new XPoint(code.X + (corner.X * code.Module), code.Y + (corner.Y * code.Module)))]);
        return path;
    }

    private static XPen SignPen(CardLook look, double side) => new(Colour(look, Tone.Warning), CautionSigns.Line / CautionSigns.Side * side)
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

    private static XSolidBrush Brush(CardLook look, Tone tone) => new(Colour(look, tone));

    private static XColor Colour(CardLook look, Tone tone) => XColor.FromArgb(unchecked((int)(0xFF000000 | (uint)look.ColourOf(tone))));
}
