using System.Globalization;
using System.Numerics;
using System.Text;
using HintBook.Books;

namespace HintBook.Sealing;

/// <summary>What can be asked at a gate: the word must come out of every reader's device as it came out of this program.</summary>
internal static class GateWord
{
    // Of a list of everyday words; those who try words begin with one.
    private const int WordsInAList = 30_000;

    // A guess costs a core of an ordinary computer a tenth of a second: 600,000 rounds of PBKDF2.
    private const int GuessesASecond = 10;

    // Letters whose form in NFKC is themselves and whose small form is the same everywhere, by blocks of Unicode. This program has no tables of Unicode to
    // bring others into that form.
    private static readonly (int From, int To)[] Alike =
    [
        ('0', '9'), ('A', 'Z'), ('a', 'z'), (0xC0, 0xD6), (0xD8, 0xDE), (0xE0, 0xF6), (0xF8, 0xFF), (0x100, 0x12F), (0x134, 0x13E), (0x141, 0x148),
        (0x14A, 0x17E), (0x386, 0x386), (0x388, 0x3C1), (0x3C3, 0x3CE), (0x400, 0x481), (0x48A, 0x52F), (0x621, 0x63A), (0x641, 0x64A), (0x671, 0x674),
        (0x679, 0x6D3), (0x3005, 0x3006), (0x3041, 0x3096), (0x30A1, 0x30FA), (0x30FC, 0x30FE), (0x3400, 0x4DBF),
        (0x4E00, 0x9FFF),
    ];

    // Marks between letters, which count nowhere.
    private static readonly (int From, int To)[] Between =
        [(' ', '/'), (':', '@'), ('[', '`'), ('{', '~'), (0xA0, 0xA0), (0x2010, 0x2015), (0x2018, 0x201F)];

    /// <summary>The first character that may come out differently on a reader's device; null where all are alike.</summary>
    public static Rune? Odd(string word)
    {
        foreach (var letter in word.EnumerateRunes())
        {
            if (!IsIn(Alike, letter) && !IsIn(Between, letter))
                return letter;
        }

        return null;
    }

    /// <summary>What an author writes in place of such a character; null where the word needs another one.</summary>
    public static string? InPlaceOf(Rune odd) => odd.ToString() switch
    {
        "ß" => "ss",
        "İ" or "ı" => "i",
        "ς" => "σ",
        _ => null,
    };

    /// <summary>How many words there are to guess among.</summary>
    /// <param name="code">The code; null for a word.</param>
    /// <param name="word">The word.</param>
    public static BigInteger Guesses(Code? code, string word) =>
        code?.Lock?.Settings ?? (Gate.Plain(word) is var plain && plain.All(char.IsAsciiDigit) ? BigInteger.Pow(10, plain.Length) : WordsInAList);

    /// <summary>How long it takes to try them all, on one core of an ordinary computer.</summary>
    public static string TimeFor(BigInteger guesses)
    {
        (string Unit, int Seconds)[] units = [("year", 31_536_000), ("day", 86_400), ("hour", 3_600), ("minute", 60)];
        var seconds = BigInteger.Max(1, (guesses + GuessesASecond - 1) / GuessesASecond);
        foreach (var (unit, length) in units.Where(unit => seconds >= unit.Seconds))
        {
            var count = (seconds + length - 1) / length;
            return count > 1_000 ? $"more than 1,000 {unit}s" : Said(count, unit);
        }

        return Said(seconds, "second");

        static string Said(BigInteger count, string unit) => $"{count.ToString(CultureInfo.InvariantCulture)} {unit}{(count.IsOne ? "" : "s")}";
    }

    private static bool IsIn((int From, int To)[] blocks, Rune letter) => blocks.Any(block => letter.Value >= block.From && letter.Value <= block.To);
}
