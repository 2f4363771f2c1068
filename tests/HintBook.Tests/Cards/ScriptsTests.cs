using HintBook.Cards.Typesetting;
using PdfSharp.Drawing;

namespace HintBook.Tests.Cards;

/// <summary>Text in every script that the site speaks.</summary>
public class ScriptsTests
{
    [Fact]
    public void Try()
    {
        var pdf = StablePdf.Make("Try", document =>
        {
            var page = document.AddPage();
            using var graphics = XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
            var y = 30.0;
            foreach (var (text, face) in new[]
            {
                ("صندوق النحّال: الآن 6 kg لا تفتح (12)", Typeface.Regular), ("蜂の箱を開けるヒント。", Typeface.SemiBold), ("The Beekeeper's Cabinet AVATAR", Typeface.Serif),
                ("this one step", Typeface.SerifItalic), ("Workshop Żółć Щука", Typeface.Narrow), ("Plain 6 kg", Typeface.Regular), ("第1の箱 Box", Typeface.Regular),
            })
            {
                var rtl = BidiLevels.RightToLeft(text);
                TextDrawing.Draw(graphics, text, face, 8, XBrushes.Black, 20, y, rtl);
                graphics.DrawLine(XPens.Red, 20, y + 2, 20 + Letters.Width(text, face, 8), y + 2);
                y += 15;
            }
        });
        File.WriteAllBytes("/tmp/hb/s26/cards/try.pdf", pdf);
    }
}
