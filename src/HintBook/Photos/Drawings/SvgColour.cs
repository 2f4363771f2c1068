using System.Globalization;

namespace HintBook.Photos.Drawings;

/// <summary>Reads the colours of SVG 1.1 that drawing programs write.</summary>
internal static class SvgColour
{
    // The sixteen of HTML 4, orange of CSS 2, and the ground of all others.
    private static readonly Dictionary<string, int> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["black"] = 0x000000,
        ["silver"] = 0xC0C0C0,
        ["gray"] = 0x808080,
        ["grey"] = 0x808080,
        ["white"] = 0xFFFFFF,
        ["maroon"] = 0x800000,
        ["red"] = 0xFF0000,
        ["purple"] = 0x800080,
        ["fuchsia"] = 0xFF00FF,
        ["green"] = 0x008000,
        ["lime"] = 0x00FF00,
        ["olive"] = 0x808000,
        ["yellow"] = 0xFFFF00,
        ["navy"] = 0x000080,
        ["blue"] = 0x0000FF,
        ["teal"] = 0x008080,
        ["aqua"] = 0x00FFFF,
        ["orange"] = 0xFFA500,
        ["currentColor"] = 0x000000,
    };

    /// <summary>Reads a colour.</summary>
    /// <param name="text">What stands in the file.</param>
    /// <param name="colour">The colour as 0xRRGGBB; null for none.</param>
    /// <returns>Whether it was understood.</returns>
    public static bool TryRead(string text, out int? colour)
    {
        text = text.Trim();
        colour = null;
        if (text is "none" or "transparent")
            return true;
        if (Names.TryGetValue(text, out var named))
            colour = named;
        else if (text is ['#', ..] && int.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var hex))
            colour = text.Length switch { 7 => hex, 4 => (hex / 256 * 0x110000) + (hex / 16 % 16 * 0x1100) + (hex % 16 * 0x11), _ => null };
        else if (text.StartsWith("rgb(", StringComparison.Ordinal) && text.EndsWith(')'))
            colour = OfParts(text[4..^1].Split(','));
        return colour is not null;
    }

    private static int? OfParts(string[] parts)
    {
        if (parts.Length != 3)
            return null;
        var colour = 0;
        foreach (var part in parts)
        {
            var (digits, whole) = part.Trim() is [.. var share, '%'] ? (share, 100) : (part.Trim(), 255);
            if (!double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
                return null;
            colour = (colour * 256) + (int)Math.Clamp(Math.Round(value * 255 / whole, MidpointRounding.AwayFromZero), 0, 255);
        }

        return colour;
    }
}
