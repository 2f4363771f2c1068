using System.Globalization;

namespace HintBook.Starting.Edition;

/// <summary>Settings of a lock that people try first (common practice, no source). A copy gets none of them.</summary>
public static class EasySettings
{
    private const int FirstYear = 1900;
    private const int LastYear = 2099;

    /// <summary>The rules in one sentence.</summary>
    public const string Rules =
        "not all wheels alike, no run up or down, nothing said twice (1212), nothing that reads the same from both ends (1221), and no year from 1900 to 2099";

    /// <summary>Whether people try a setting first. Of two wheels or fewer only equal ones are easy: too little would be left.</summary>
    /// <param name="setting">What is set, a symbol for each wheel.</param>
    /// <param name="symbols">What a wheel can show, in its order.</param>
    public static bool Holds(string setting, string symbols)
    {
        var isAlike = setting.Length > 1 && setting.Distinct().Count() == 1;
        return isAlike || (setting.Length > 2 && (IsRun(setting, symbols) || IsTwice(setting) || setting.SequenceEqual(setting.Reverse()) || IsYear(setting)));
    }

    // From the last symbol of a wheel it goes on to the first.
    private static bool IsRun(string setting, string symbols)
    {
        var places = setting.Select(symbol => symbols.IndexOf(symbol, StringComparison.Ordinal)).ToArray();
        var steps = places.Zip(places.Skip(1), (one, next) => (next - one + symbols.Length) % symbols.Length).Distinct().ToArray();
        return steps is [var step] && (step == 1 || step == symbols.Length - 1);
    }

    private static bool IsTwice(string setting) => setting.Length % 2 == 0 && setting[..(setting.Length / 2)] == setting[(setting.Length / 2)..];

    private static bool IsYear(string setting) =>
        setting.Length == 4 && setting.All(char.IsAsciiDigit) && int.Parse(setting, CultureInfo.InvariantCulture) is >= FirstYear and <= LastYear;
}
