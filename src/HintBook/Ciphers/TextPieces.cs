using System.Globalization;
using System.Text;

namespace HintBook.Ciphers;

/// <summary>
/// How a text falls into pieces: lines, words, symbols, numbers. Pieces of one symbol are written next to each other
/// (<c>5173</c>); as soon as one is longer, all are parted by spaces (<c>12 3</c>), so that the next way can tell them apart.
/// </summary>
internal static class TextPieces
{
    private const int Longest = 40;

    private static readonly string[] Ascii = [.. Enumerable.Range(0, 128).Select(code => ((char)code).ToString())];

    /// <summary>Pieces as the text for the next way.</summary>
    public static string Joined(IEnumerable<string> pieces)
    {
        var all = pieces.ToArray();
        return string.Join(all.All(piece => piece.Length <= 1 || Symbols(piece).Take(2).Count() == 1) ? "" : " ", all);
    }

    /// <summary>What a reader takes for single letters: a letter with its combining marks is one (Unicode, UAX #29).</summary>
    public static IEnumerable<string> Symbols(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            // Two ASCII characters never join, but for the two of a line break.
            if (char.IsAscii(text[at]) && text[at] != '\r' && (at + 1 == text.Length || char.IsAscii(text[at + 1])))
            {
                yield return Ascii[text[at++]];
                continue;
            }

            var length = StringInfo.GetNextTextElementLength(text.AsSpan(at));
            yield return text.Substring(at, length);
            at += length;
        }
    }

    /// <summary>
    /// A text as it is read: full-width letters and signs as their usual forms, figures of any script as 0 to 9 (Unicode 15.0: U+FF01 to U+FF5E,
    /// and the decimal digit values). <c>５１７３</c> is 5173.
    /// </summary>
    public static string Plain(string text)
    {
        if (System.Text.Ascii.IsValid(text))
            return text;
        var plain = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length; at++)
        {
            var digit = CharUnicodeInfo.GetDecimalDigitValue(text, at);
            if (digit >= 0)
                plain.Append((char)('0' + digit));
            else
                plain.Append(text[at] switch { >= '\uFF01' and <= '\uFF5E' => (char)(text[at] - 0xFEE0), '\u3000' => ' ', _ => text[at] });
            at += digit >= 0 && char.IsHighSurrogate(text[at]) ? 1 : 0;
        }

        return plain.ToString();
    }

    /// <summary>Whether a symbol is something to be read: neither white space nor punctuation.</summary>
    public static bool IsRead(string symbol) =>
        !string.IsNullOrWhiteSpace(symbol) && !IsPunctuation(symbol)
        && Rune.GetUnicodeCategory(FirstOf(symbol)) is not (UnicodeCategory.Control or UnicodeCategory.Format);

    /// <summary>Whether a symbol is a punctuation mark (Unicode's general categories P…).</summary>
    public static bool IsPunctuation(string symbol) => Rune.GetUnicodeCategory(FirstOf(symbol)) is UnicodeCategory.ConnectorPunctuation
        or UnicodeCategory.DashPunctuation or UnicodeCategory.OpenPunctuation or UnicodeCategory.ClosePunctuation
        or UnicodeCategory.InitialQuotePunctuation or UnicodeCategory.FinalQuotePunctuation or UnicodeCategory.OtherPunctuation;

    /// <summary>The symbols of a text that are pictures (Unicode's general category So): faces of dice, arrows, bees.</summary>
    public static IEnumerable<string> Pictures(string text) => Symbols(text).Where(IsPicture);

    /// <summary>Whether a symbol is a picture.</summary>
    public static bool IsPicture(string symbol) => Rune.GetUnicodeCategory(FirstOf(symbol)) is UnicodeCategory.OtherSymbol;

    /// <summary>The words of a text that have a letter, and its pictures: what is left of it for a way that reads figures alone.</summary>
    public static IEnumerable<string> Lettered(string text) =>
        Words(text).Select(word => word.Value).Where(word => Letters(word).Any()).Concat(Pictures(text));

    /// <summary>The symbols without white space.</summary>
    public static IEnumerable<string> Set(string text) => Symbols(text).Where(symbol => !string.IsNullOrWhiteSpace(symbol));

    /// <summary>The lines that aren't blank, without the white space at their ends.</summary>
    public static IEnumerable<string> Lines(string text) =>
        text.Split('\n', StringSplitOptions.TrimEntries).Where(line => line.Length > 0);

    /// <summary>Runs of letters and figures; an apostrophe between letters belongs to its word, a hyphen parts two.</summary>
    public static IEnumerable<TextPiece> Words(string text)
    {
        var start = -1;
        for (var at = 0; at < text.Length;)
        {
            Rune.DecodeFromUtf16(text.AsSpan(at), out var rune, out var length);
            var inside = IsOfWord(rune) || (start >= 0 && rune.Value is '\'' or '’' && at + 1 < text.Length && char.IsLetter(text[at + 1]));
            if (inside && start < 0)
                start = at;
            if (!inside && start >= 0)
            {
                yield return new TextPiece(text, start, at);
                start = -1;
            }

            at += length;
        }

        if (start >= 0)
            yield return new TextPiece(text, start, text.Length);
    }

    /// <summary>The letters of a word or a text, each with its marks.</summary>
    public static IEnumerable<string> Letters(string text) => Symbols(text).Where(symbol => Rune.IsLetter(FirstOf(symbol)));

    /// <summary>The runs of ASCII figures in a text.</summary>
    public static IEnumerable<string> Figures(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            var start = at;
            while (at < text.Length && char.IsAsciiDigit(text[at]))
                at++;
            if (at > start)
                yield return text[start..at];
        }
    }

    /// <summary>The numbers in a text, as texts: its runs of figures, or the single figures of the only run.</summary>
    public static string[] Numbers(string text)
    {
        var runs = Figures(text).ToArray();
        return runs is [var only] ? [.. only.Select(figure => figure.ToString())] : runs;
    }

    /// <summary>A text as a sentence quotes it: on one line, and cut if it is long.</summary>
    public static string Quoted(string text)
    {
        var cut = text.Length <= Longest ? text : text[..(char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest)];
        var line = cut.ReplaceLineEndings(" ").Trim();
        return $"“{line}{(cut.Length < text.Length ? "…" : "")}”";
    }

    /// <summary>The place of an English letter in the alphabet, 1 to 26; 0 for anything else.</summary>
    public static int PlaceOf(string letter) =>
        letter.Length == 1 && char.IsAsciiLetter(letter[0]) ? char.ToUpperInvariant(letter[0]) - 'A' + 1 : 0;

    private static bool Ascii7(string text) => System.Text.Ascii.IsValid(text);

    private static Rune FirstOf(string symbol) =>
        Rune.TryGetRuneAt(symbol, 0, out var rune) ? rune : Rune.ReplacementChar;

    private static bool IsOfWord(Rune rune) =>
        rune.IsAscii ? char.IsAsciiLetterOrDigit((char)rune.Value)
        : Rune.IsLetterOrDigit(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.LetterNumber;
}

/// <summary>A word where it stands.</summary>
internal readonly record struct TextPiece(string Text, int Start, int End)
{
    public string Value => Text[Start..End];
}
