using System.Globalization;
using System.Text;

namespace HintBook.Maps;

/// <summary>How wide text is in any ordinary sans-serif font: a little too wide rather than too narrow.</summary>
internal static class Lettering
{
    /// <summary>The width in pixels at a font size in pixels. Nobody knows which font a reader has; the widths are of a wide one.</summary>
    public static double Width(string text, double size, bool bold = false) =>
        text.EnumerateRunes().Sum(Em) * size * (bold ? 1.12 : 1);

    // In ems; measured by eye against wide system fonts, rounded up.
    private static double Em(Rune rune) => rune.Value switch
    {
        ' ' or 'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '\'' or '!' or '|' or '’' => 0.36,
        'f' or 'r' or 't' or '(' or ')' or '[' or ']' or '/' or '-' or '"' or '“' or '”' => 0.46,
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '&' or '…' or '—' => 1.0,
        >= 'a' and <= 'z' => 0.63,
        >= '0' and <= '9' => 0.65,
        >= 'A' and <= 'Z' => 0.79,
        _ when IsMark(rune) => 0,
        _ when IsWide(rune) => 1.1,
        _ => 0.85,
    };

    private static bool IsMark(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format;

    // The blocks of East Asian wide letters and of pictographs; a rough cut of Unicode's UAX #11, on the wide side.
    private static bool IsWide(Rune rune) => rune.Value is (>= 0x1100 and <= 0x11FF) or (>= 0x2E80 and <= 0xD7FF)
        or (>= 0xF900 and <= 0xFAFF) or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF00 and <= 0xFF60) or >= 0x1F000;
}
