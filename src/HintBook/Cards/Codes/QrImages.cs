using System.Globalization;
using System.Security;
using System.Text;

namespace HintBook.Cards.Codes;

/// <summary>A code as a file of its own, for a maker who sets cards elsewhere. The quiet zone is part of each.</summary>
internal static class QrImages
{
    /// <summary>Dots to the inch of the PNG.</summary>
    public const int Resolution = 600;

    private const double MillimetresPerInch = 25.4;

    /// <summary>The code as SVG: one path, in modules, as large as on the card.</summary>
    /// <param name="code">The code.</param>
    /// <param name="says">What it says, for those who don't see it.</param>
    /// <param name="module">The side of a module, in millimetres.</param>
    public static byte[] Svg(QrMatrix code, string says, double module)
    {
        var side = code.SizeWithQuietZone;
        var path = new StringBuilder();
        foreach (var loop in Outlines.Trace(code))
        {
            path.Append(CultureInfo.InvariantCulture, $"M{loop[0].X + QrMatrix.QuietZone} {loop[0].Y + QrMatrix.QuietZone}");
            for (var i = 1; i < loop.Count; i++)
                _ = loop[i].Y == loop[i - 1].Y ? path.Append('h').Append(loop[i].X - loop[i - 1].X) : path.Append('v').Append(loop[i].Y - loop[i - 1].Y);
            path.Append('z');
        }

        var length = (side * module).ToString("0.###", CultureInfo.InvariantCulture);
        return Encoding.UTF8.GetBytes(
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{length}mm" height="{length}mm" viewBox="0 0 {side} {side}" role="img">
            <title>{SecurityElement.Escape(says)}</title>
            <path fill="#fff" d="M0 0h{side}v{side}h-{side}z"/>
            <path fill="#000" fill-rule="evenodd" d="{path}"/>
            </svg>

            """.ReplaceLineEndings("\n"));
    }

    /// <summary>The code as a PNG of one bit a pixel at <see cref="Resolution"/>: whole pixels to a module, none smaller than on the card.</summary>
    public static byte[] Png(QrMatrix code, double module)
    {
        var pixels = (int)Math.Ceiling(module / MillimetresPerInch * Resolution);
        return BitPng.Write(code, pixels, (int)Math.Round(Resolution / MillimetresPerInch * 1000));
    }
}
