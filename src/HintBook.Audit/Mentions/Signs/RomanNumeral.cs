using System.Buffers;

namespace HintBook.Audit.Mentions.Signs;

/// <summary>Roman numerals up to 3999, as stonemasons cut them: IIII is allowed for IV.</summary>
internal static class RomanNumeral
{
    private static readonly SearchValues<char> Letters = SearchValues.Create("IVXLCDM");

    /// <summary>What small letters count; 0 for no numeral.</summary>
    public static int Read(ReadOnlySpan<char> letters)
    {
        var (total, before) = (0, 0);
        for (var i = letters.Length - 1; i >= 0; i--)
        {
            var value = letters[i] switch { 'i' => 1, 'v' => 5, 'x' => 10, 'l' => 50, 'c' => 100, 'd' => 500, 'm' => 1000, _ => 0 };
            if (value == 0 || (value < before && value * 10 < before))
                return 0;
            total += value < before ? -value : value;
            before = Math.Max(before, value);
        }

        return total is > 0 and < 4000 ? total : 0;
    }

    /// <summary>Whether a word is written in capitals of Roman numerals alone.</summary>
    public static bool IsWritten(string source, int start, int end) => !source.AsSpan(start, end - start).ContainsAnyExcept(Letters);
}
