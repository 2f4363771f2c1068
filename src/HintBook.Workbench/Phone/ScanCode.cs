using System.Globalization;
using System.Text;
using HintBook.Cards.Codes;

namespace HintBook.Workbench.Phone;

/// <summary>An address as a code to scan (ISO/IEC 18004), for the page and for a terminal.</summary>
public static class ScanCode
{
    /// <summary>The code as a picture, black on white with its quiet zone; null for an address that is too long.</summary>
    /// <param name="address">The address.</param>
    public static string? Svg(Uri address)
    {
        if (QrMatrix.Encode(address.ToString()) is not { } code)
            return null;
        var size = code.SizeWithQuietZone;
        var dark = new StringBuilder();
        for (var y = 0; y < code.Size; y++)
        {
            for (var x = 0; x < code.Size; x++)
            {
                if (code[x, y])
                    dark.Append(CultureInfo.InvariantCulture, $"M{x + QrMatrix.QuietZone} {y + QrMatrix.QuietZone}h1v1h-1z");
            }
        }

        return $"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {size} {size}" shape-rendering="crispEdges">
            <rect width="{size}" height="{size}" fill="#fff"/><path d="{dark}"/></svg>
            """;
    }

    /// <summary>
    /// The code in half blocks, two rows of squares to a line, its light squares drawn: for light letters on a dark ground. Null for an address
    /// that is too long.
    /// </summary>
    /// <param name="address">The address.</param>
    public static string? Text(Uri address)
    {
        if (QrMatrix.Encode(address.ToString()) is not { } code)
            return null;
        var text = new StringBuilder();
        const int edge = QrMatrix.QuietZone;
        for (var y = -edge; y < code.Size + edge; y += 2)
        {
            for (var x = -edge; x < code.Size + edge; x++)
                text.Append((Drawn(x, y), Drawn(x, y + 1)) switch { (true, true) => '█', (true, false) => '▀', (false, true) => '▄', _ => ' ' });
            text.Append('\n');
        }

        return text.ToString();

        bool Drawn(int x, int y) => y < code.Size + edge && !code[x, y];
    }
}
