using System.Globalization;
using System.Security;
using System.Text;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;

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
        var side = code.SizeWithQuietZone * pixels;
        var light = new byte[side * side];
        Array.Fill(light, byte.MaxValue);
        for (var y = 0; y < code.Size * pixels; y++)
        {
            var row = light.AsSpan((((QrMatrix.QuietZone * pixels) + y) * side) + (QrMatrix.QuietZone * pixels), code.Size * pixels);
            for (var x = 0; x < code.Size; x++)
            {
                if (code[x, y / pixels])
                    row.Slice(x * pixels, pixels).Clear();
            }
        }

        using var image = Image.LoadPixelData<L8>(light, side, side);
        image.Metadata.ResolutionUnits = PixelResolutionUnit.PixelsPerMeter;
        image.Metadata.HorizontalResolution = image.Metadata.VerticalResolution = Math.Round(Resolution / MillimetresPerInch * 1000);
        using var file = new MemoryStream();
        image.SaveAsPng(file, new PngEncoder
        {
            ColorType = PngColorType.Grayscale,
            BitDepth = PngBitDepth.Bit1,
            FilterMethod = PngFilterMethod.None,
            CompressionLevel = PngCompressionLevel.BestSpeed,
        });
        return file.ToArray();
    }
}
