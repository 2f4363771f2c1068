using System.Buffers;
using System.Collections.Immutable;

namespace HintBook.Cards.Typesetting;

/// <summary>Where a line may end.</summary>
internal static class LineBreaks
{
    // Requirements for Japanese Text Layout (JLREQ, W3C), 3.1.7 and appendix A: classes cl-02 to cl-05 and cl-09 to cl-11 (from memory).
    private const string NeverFirst =
        "，、。．・：；？！ー’”）〕］｝〉》」』】｠〙〗»ヽヾゝゞ々〻‐゠–〜～‼⁇⁈⁉"
        + "ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶㇰㇱㇲㇳㇴㇵㇶㇷㇸㇹㇺㇻㇼㇽㇾㇿ,.:;?!)]}%％℃°…‥";

    private const string NeverLast = "‘“（〔［｛〈《「『【｟〘〖«([{¥￥$＄£￡#＃№";

    private static readonly SearchValues<char> EndsOfWords = SearchValues.Create(" ,;:!?)/-–");

    // What stands after a number belongs to it: units of the International System and those that makers write beside them (common practice, no source).
    private static readonly ImmutableHashSet<string> Units =
    [
        "mm", "cm", "m", "km", "in", "ft", "µm", "g", "kg", "mg", "t", "lb", "lbs", "oz", "ml", "cl", "dl", "l", "L", "mL", "s", "min", "h",
        "V", "kV", "mV", "A", "mA", "mAh", "Ah", "W", "kW", "Wh", "mW", "Hz", "kHz", "Ω", "N", "Nm", "K", "°C", "°F", "℃", "%", "‰", "dB", "lx", "lm", "nm",
        "кг", "г", "мм", "см", "м", "cd", "T", "mT", "Pa", "kPa", "bar", "kg.", "cm.", "mm.", "كجم", "كغم", "كغ", "سم", "مم",
    ];

    /// <summary>Whether a line may end after a UTF-16 unit of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">The unit.</param>
    /// <param name="signs">The signs after which a line may end.</param>
    public static bool After(string text, int at, string signs)
    {
        if (at + 1 >= text.Length)
            return false;
        if (text[at] == ' ' && signs.Contains(' ', StringComparison.Ordinal))
            return !IsBeforeUnit(text, at);
        if (signs.Contains(text[at], StringComparison.Ordinal))
            return true;
        return signs.Contains(' ', StringComparison.Ordinal) && IsIdeographic(text, at) | IsIdeographic(text, at + 1)
            && text[at + 1] != ' ' && !char.IsLowSurrogate(text[at + 1])
            && !NeverFirst.Contains(text[at + 1], StringComparison.Ordinal) && !NeverLast.Contains(text[at], StringComparison.Ordinal)
            && text[at] is not ('\u00A0' or '\u202F' or '\u2060') && text[at + 1] is not ('\u00A0' or '\u202F' or '\u2060');
    }

    private static bool IsBeforeUnit(string text, int space)
    {
        if (space == 0 || !char.IsDigit(text[space - 1]))
            return false;
        var word = text.AsSpan(space + 1);
        var end = word.IndexOfAny(EndsOfWords);
        var unit = (end < 0 ? word : word[..end]).TrimEnd('.').ToString();
        return Units.Contains(unit);
    }

    // Kana, ideographs and their full-width signs, which stand without blanks between them.
    private static bool IsIdeographic(string text, int at) => text[at] is (>= '\u2E80' and <= '\u9FFF') or (>= '\uF900' and <= '\uFAFF')
        or (>= '\uFF00' and <= '\uFFEF') || (char.IsSurrogate(text[at]) && IsSupplementaryIdeograph(text, at));

    private static bool IsSupplementaryIdeograph(string text, int at)
    {
        var start = char.IsLowSurrogate(text[at]) ? at - 1 : at;
        return start >= 0 && start + 1 < text.Length && char.IsSurrogatePair(text, start) && char.ConvertToUtf32(text, start) is >= 0x20000 and <= 0x3FFFF;
    }
}
