namespace HintBook.Spoilers;

/// <summary>Roman numerals, as the rules of today write them: no sign more than three times, and only I, X and C before greater ones.</summary>
internal static class Roman
{
    private const int Greatest = 8999;
    private static readonly (string Signs, int Value)[] Signs =
        [("m", 1000), ("cm", 900), ("d", 500), ("cd", 400), ("c", 100), ("xc", 90), ("l", 50), ("xl", 40), ("x", 10), ("ix", 9), ("v", 5), ("iv", 4), ("i", 1)];

    /// <summary>Whether a letter is a capital, or one of the signs Ⅰ to Ⅿ that are whole numerals.</summary>
    public static bool IsCapital(char letter) => char.IsUpper(letter) || letter is >= 'Ⅰ' and <= 'Ⅿ';

    /// <summary>The value of a numeral in small letters; 0 if it is none.</summary>
    public static int ValueOf(ReadOnlySpan<char> numeral)
    {
        // Ⅷ is one sign.
        if (numeral is [>= 'ⅰ' and <= 'ⅻ' and var sign])
            return sign - 'ⅰ' + 1;
        var value = 0;
        var rest = numeral;
        foreach (var (signs, worth) in Signs)
        {
            // A thousand is written as often as it takes; four alike are a slip that clock faces make on purpose.
            var most = worth == 1000 ? 8 : signs.Length > 1 || worth is 5 or 50 or 500 ? 1 : 4;
            for (; most > 0 && rest.StartsWith(signs); most--)
            {
                value += worth;
                rest = rest[signs.Length..];
            }
        }

        return rest.IsEmpty && value <= Greatest ? value : 0;
    }
}
