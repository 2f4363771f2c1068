using System.Globalization;
using System.Text;

namespace HintBook.Cards.Typesetting;

/// <summary>
/// In which direction each letter of a line runs: the algorithm of Unicode Standard Annex 9 for text without embeddings, overrides and isolates, whose
/// marks are passed over. Paired brackets (rule N0) are taken as other neutral signs.
/// </summary>
internal static class BidiLevels
{
    private enum Kind
    {
        Left,
        Right,
        Arabic,
        EuropeanNumber,
        EuropeanSeparator,
        EuropeanTerminator,
        ArabicNumber,
        CommonSeparator,
        Mark,
        Neutral,
    }

    /// <summary>Whether a paragraph runs from right to left: its first strong letter says so (rules P2 and P3).</summary>
    public static bool RightToLeft(string text)
    {
        foreach (var rune in text.EnumerateRunes())
        {
            var kind = Of(rune);
            if (kind is Kind.Left or Kind.Right or Kind.Arabic)
                return kind != Kind.Left;
        }

        return false;
    }

    /// <summary>Whether a text has letters that run from left to right, and none that run from right to left.</summary>
    public static bool OnlyLeftToRight(string text)
    {
        var kinds = text.EnumerateRunes().Select(Of).ToHashSet();
        return kinds.Contains(Kind.Left) && !kinds.Contains(Kind.Right) && !kinds.Contains(Kind.Arabic);
    }

    /// <summary>The level of each UTF-16 unit: even from left to right, odd from right to left.</summary>
    public static byte[] In(string text, bool rightToLeft)
    {
        var runes = text.EnumerateRunes().ToArray();
        var kinds = Array.ConvertAll(runes, Of);
        var isMark = Array.ConvertAll(kinds, kind => kind == Kind.Mark);
        var start = rightToLeft ? Kind.Right : Kind.Left;
        ResolveWeak(kinds, start);
        ResolveNeutral(kinds, start);

        var levels = new List<byte>(text.Length);
        for (var i = 0; i < runes.Length; i++)
        {
            // Rules I1 and I2; a mark keeps its letter's level.
            var level = isMark[i] && levels.Count > 0 ? levels[^1] : LevelOf(kinds[i], rightToLeft);
            for (var unit = 0; unit < runes[i].Utf16SequenceLength; unit++)
                levels.Add(level);
        }

        // Rule L1: blanks at the end of a line run with the paragraph.
        for (var i = text.Length - 1; i >= 0 && char.IsWhiteSpace(text[i]); i--)
            levels[i] = rightToLeft ? (byte)1 : (byte)0;
        return [.. levels];
    }

    private static byte LevelOf(Kind kind, bool rightToLeft) => (kind, rightToLeft) switch
    {
        (Kind.Left, false) => 0,
        (Kind.Left, true) => 2,
        (Kind.Right or Kind.Arabic, _) => 1,
        _ => 2,
    };

    // Rules W1 to W7.
    private static void ResolveWeak(Kind[] kinds, Kind start)
    {
        var strong = start;
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] == Kind.Mark)
                kinds[i] = i == 0 ? start : kinds[i - 1];
            if (kinds[i] == Kind.EuropeanNumber && strong == Kind.Arabic)
                kinds[i] = Kind.ArabicNumber;
            if (kinds[i] is Kind.Left or Kind.Right or Kind.Arabic)
                strong = kinds[i];
        }

        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] == Kind.Arabic)
                kinds[i] = Kind.Right;
        }

        for (var i = 1; i + 1 < kinds.Length; i++)
        {
            if (kinds[i - 1] == kinds[i + 1] && ((kinds[i] is Kind.EuropeanSeparator or Kind.CommonSeparator && kinds[i - 1] == Kind.EuropeanNumber)
                || (kinds[i] == Kind.CommonSeparator && kinds[i - 1] == Kind.ArabicNumber)))
            {
                kinds[i] = kinds[i - 1];
            }
        }

        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] != Kind.EuropeanTerminator)
                continue;
            var end = i;
            while (end < kinds.Length && kinds[end] == Kind.EuropeanTerminator)
                end++;
            var beside = (i > 0 && kinds[i - 1] == Kind.EuropeanNumber) || (end < kinds.Length && kinds[end] == Kind.EuropeanNumber);
            Array.Fill(kinds, beside ? Kind.EuropeanNumber : Kind.Neutral, i, end - i);
            i = end - 1;
        }

        strong = start;
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] is Kind.EuropeanSeparator or Kind.CommonSeparator)
                kinds[i] = Kind.Neutral;
            if (kinds[i] is Kind.Left or Kind.Right)
                strong = kinds[i];
            if (kinds[i] == Kind.EuropeanNumber && strong == Kind.Left)
                kinds[i] = Kind.Left;
        }
    }

    // Rules N1 and N2; numbers count as right to left.
    private static void ResolveNeutral(Kind[] kinds, Kind start)
    {
        for (var i = 0; i < kinds.Length; i++)
        {
            if (kinds[i] != Kind.Neutral)
                continue;
            var end = i;
            while (end < kinds.Length && kinds[end] == Kind.Neutral)
                end++;
            var before = i == 0 ? start : Side(kinds[i - 1]);
            var after = end == kinds.Length ? start : Side(kinds[end]);
            Array.Fill(kinds, before == after ? before : start, i, end - i);
            i = end - 1;
        }
    }

    private static Kind Side(Kind kind) => kind == Kind.Left ? Kind.Left : Kind.Right;

    // Bidi_Class as far as it is met in running text (DerivedBidiClass, Unicode 15.0; from memory, held against its test file).
    private static Kind Of(Rune rune)
    {
        var category = Rune.GetUnicodeCategory(rune);
        return rune.Value switch
        {
            >= '0' and <= '9' => Kind.EuropeanNumber,
            '+' or '-' or 0x2212 => Kind.EuropeanSeparator,
            '#' or '$' or '%' or (>= 0xA2 and <= 0xA5) or 0xB0 or 0xB1 or 0x066A or (>= 0x2030 and <= 0x2034) or (>= 0x20A0 and <= 0x20CF)
                => Kind.EuropeanTerminator,
            ',' or '.' or '/' or ':' or 0xA0 or 0x060C or 0x202F => Kind.CommonSeparator,
            0xB2 or 0xB3 or 0xB9 or (>= 0x06F0 and <= 0x06F9) => Kind.EuropeanNumber,
            (>= 0x0660 and <= 0x0669) or 0x066B or 0x066C or (>= 0x0600 and <= 0x0605) or 0x06DD => Kind.ArabicNumber,
            0x200E => Kind.Left,
            0x200F => Kind.Right,
            0x061C => Kind.Arabic,
            _ when category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => Kind.Mark,
            (>= 0x0590 and <= 0x05FF) or (>= 0x07C0 and <= 0x085F) or (>= 0xFB1D and <= 0xFB4F) or (>= 0x10800 and <= 0x10FFF) => Kind.Right,
            (>= 0x0608 and <= 0x07BF) or (>= 0x0860 and <= 0x08FF) or (>= 0xFB50 and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFF)
                when IsLetter(category) => Kind.Arabic,
            _ when IsLetter(category) => Kind.Left,
            _ => Kind.Neutral,
        };
    }

    private static bool IsLetter(UnicodeCategory category) => category is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter
        or UnicodeCategory.TitlecaseLetter or UnicodeCategory.ModifierLetter or UnicodeCategory.OtherLetter or UnicodeCategory.LetterNumber
        or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.DecimalDigitNumber;
}
