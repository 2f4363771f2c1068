using System.Globalization;
using System.Text;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Letters without their marks, as a lock shows them that has none: É is E, ñ is n, ß is ss, œ is oe.</summary>
internal static class Accents
{
    /// <summary>A text with bare letters, each in its case. Marks that stand alone, such as Arabic vowels, are left out.</summary>
    public static string Without(string text)
    {
        if (Ascii.IsValid(text))
            return text;
        var bare = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii)
                bare.Append((char)rune.Value);
            else if (BareLetters.SeveralOf(rune.Value) is { } several)
                bare.Append(Rune.IsUpper(rune) ? several.ToUpperInvariant() : several);
            else if (Rune.GetUnicodeCategory(rune) is not UnicodeCategory.NonSpacingMark && rune.Value != Tatweel)
                bare.Append(Cased(rune));
        }

        return bare.ToString();
    }

    /// <summary>
    /// A letter without its accent, as an alphabet counts it that has none: É is E. Letters that some count as their own or as two (Ä, Ñ, ß) stay.
    /// </summary>
    public static string Counted(string letter) => "äöüñåøæœß".Contains(letter, StringComparison.OrdinalIgnoreCase) ? letter : Without(letter);

    /// <summary>A text in small bare letters, as words are looked up. In Arabic what is written alike at the end of a word is one letter.</summary>
    public static string Folded(string text) =>
        Ascii.IsValid(text) ? text.ToLowerInvariant() : Without(text.ToLowerInvariant()).Replace('\u0629', '\u0647').Replace('\u0649', '\u064A');

    /// <summary>A text with German letters written out, as in crosswords: Ä is AE.</summary>
    public static string SpeltOut(string text)
    {
        if (Ascii.IsValid(text))
            return text;
        var spelt = new StringBuilder(text);
        foreach (var (letter, two) in new[] { ("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("Ä", "AE"), ("Ö", "OE"), ("Ü", "UE") })
            spelt.Replace(letter, two);
        return spelt.ToString();
    }

    // What lengthens the stroke between Arabic letters.
    private const int Tatweel = 0x0640;

    private static string Cased(Rune rune)
    {
        var bare = new Rune(BareLetters.Of(rune.Value));
        return (Rune.IsUpper(rune) ? Rune.ToUpperInvariant(bare) : bare).ToString();
    }
}
