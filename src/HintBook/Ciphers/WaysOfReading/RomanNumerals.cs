using System.Globalization;
using System.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Roman numerals from 1 to 3999 in their usual form: at most three of I, X, C, M in a row, one of V, L, D, and only IV, IX,
/// XL, XC, CD and CM subtract. At the end IIII is read as well, as it stands on clocks. What is written otherwise (IC, VV) is no numeral here.
/// </summary>
internal static class RomanNumerals
{
    private const string Source = "Common practice: the rules as they are taught; Unicode 15.0 for the numeric values of U+2160 to U+216F.";

    private static readonly (string Sign, int Value)[] Signs =
    [
        ("M", 1000), ("CM", 900), ("D", 500), ("CD", 400), ("C", 100), ("XC", 90), ("L", 50), ("XL", 40), ("X", 10), ("IX", 9), ("V", 5), ("IV", 4), ("I", 1),
    ];

    public static Way ToFigures { get; } = Way.Bare(
        "roman-numerals",
        "The Roman numerals that stand in capitals, as figures.",
        Source,
        text => ReadingResult.Of(
            from word in TextPieces.Words(text)
            let value = Value(word.Value)
            where value is not null
            select new Row(word.Value, value.Value.ToString(CultureInfo.InvariantCulture)),
            TextPieces.Words(text).Select(word => word.Value).Where(LooksLikeOne),
            $"no Roman numeral in capitals stands in {TextPieces.Quoted(text)}"));

    public static Way FromFigures { get; } = Way.Bare(
        "to-roman-numerals",
        "Each number from 1 to 3999 as a Roman numeral.",
        Source,
        text => TextPieces.Figures(text).FirstOrDefault(run => Written(run) is null) is { } strange
            ? new ReadingResult.Stuck($"{TextPieces.Quoted(strange)} isn't a number from 1 to 3999")
            : ReadingResult.Of(TextPieces.Figures(text).Select(run => new Row(run, Written(run)!)), $"no number stands in {TextPieces.Quoted(text)}")) with
    {
        StandsAlone = false,
    };

    /// <summary>A number as a numeral; null outside of 1 to 3999.</summary>
    public static string? Written(int number)
    {
        if (number is < 1 or > 3999)
            return null;
        var numeral = new StringBuilder();
        foreach (var (sign, value) in Signs)
        {
            for (; number >= value; number -= value)
                numeral.Append(sign);
        }

        return numeral.ToString();
    }

    /// <summary>A numeral's value; null if it isn't one in its usual form or that of clocks.</summary>
    public static int? Value(string numeral)
    {
        if (numeral.EndsWith("IIII", StringComparison.Ordinal))
            numeral = numeral.EndsWith("VIIII", StringComparison.Ordinal) ? $"{numeral[..^5]}IX" : $"{numeral[..^4]}IV";
        if (numeral is [>= '\u2160' and <= '\u216F'])
            return (int)char.GetNumericValue(numeral[0]);
        // MMMDCCCLXXXVIII is the longest.
        if (numeral.Length is 0 or > 15)
            return null;
        var (value, at) = (0, 0);
        foreach (var (sign, worth) in Signs)
        {
            for (; string.CompareOrdinal(numeral, at, sign, 0, sign.Length) == 0; at += sign.Length)
                value += worth;
        }

        return at == numeral.Length && Written(value) == numeral ? value : null;
    }

    // A word in capitals of nothing but these letters that is no numeral: a solver would stumble over it.
    private static bool LooksLikeOne(string word) =>
        word.Length > 1 && word.All(letter => "IVXLCDM".Contains(letter, StringComparison.Ordinal)) && Value(word) is null;

    private static string? Written(string figures) =>
        int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Written(number) : null;
}
