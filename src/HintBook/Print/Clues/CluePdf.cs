using System.Globalization;
using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace HintBook.Print.Clues;

/// <summary>Writes sheets as the pages of one PDF, in millimetres.</summary>
internal static class CluePdf
{
    public static byte[] Write(IEnumerable<Sheet> sheets, string title) => StablePdf.Make(title, document =>
    {
        foreach (var sheet in sheets)
            Add(document, sheet);
    });

    private static void Add(PdfDocument document, Sheet sheet)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(sheet.Size.Width);
        page.Height = XUnit.FromMillimeter(sheet.Size.Height);
        using var graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
        foreach (var thing in sheet.Things)
            Draw(graphics, thing);
    }

    private static void Draw(XGraphics graphics, Drawn thing)
    {
        var pen = new XPen(XColors.Black, Sheet.LineWidth);
        switch (thing)
        {
            case DrawnText text:
                var face = text.Bold ? Typeface.SemiBold : Typeface.Regular;
                var left = text.Centred ? text.X - (Letters.Width(text.Text, face, text.Size) / 2) : text.X;
                graphics.DrawString(text.Text, Letters.Font(face, text.Size), XBrushes.Black, new XPoint(left, text.Baseline));
                break;
            case DrawnBox { Fill: null } box:
                graphics.DrawRectangle(pen, box.Place.X, box.Place.Y, box.Place.Width, box.Place.Height);
                break;
            case DrawnBox box:
                graphics.DrawRectangle(new XSolidBrush(ColourOf(box.Fill!)), box.Place.X, box.Place.Y, box.Place.Width, box.Place.Height);
                break;
            case DrawnLine line:
                graphics.DrawLine(pen, line.X1, line.Y1, line.X2, line.Y2);
                break;
            case DrawnShape shape:
                graphics.DrawPolygon(new XSolidBrush(ColourOf(shape.Fill)), [.. shape.Corners.Select(at => new XPoint(at.X, at.Y))], XFillMode.Winding);
                break;
            case DrawnDisc disc:
                graphics.DrawEllipse(new XSolidBrush(ColourOf(disc.Fill)), disc.X - disc.Radius, disc.Y - disc.Radius, 2 * disc.Radius, 2 * disc.Radius);
                break;
            case DrawnRing ring:
                graphics.DrawEllipse(pen, ring.X - ring.Radius, ring.Y - ring.Radius, 2 * ring.Radius, 2 * ring.Radius);
                break;
        }
    }

    private static XColor ColourOf(string hexadecimal) => XColor.FromArgb(Part(hexadecimal, 0), Part(hexadecimal, 2), Part(hexadecimal, 4));

    private static int Part(string hexadecimal, int at) => int.Parse(hexadecimal.AsSpan(at, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
