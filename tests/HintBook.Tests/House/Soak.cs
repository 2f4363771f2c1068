using System.Globalization;

namespace HintBook.Tests.House;

/// <summary>
/// Whether this is a soak: a long run that draws fresh random cases and tries more of everything. The environment variable
/// <c>HINTBOOK_SOAK</c> asks for one and says how many times as many cases (<c>build.ps1 soak</c> sets it).
/// Without it every run draws the same cases, so that no test fails by chance.
/// </summary>
internal static class Soak
{
    /// <summary>The environment variable.</summary>
    public const string Variable = "HINTBOOK_SOAK";

    /// <summary>How many times as many cases as in a normal run; 1 in a normal run.</summary>
    public static int Factor { get; } = Read(Environment.GetEnvironmentVariable(Variable));

    /// <summary>Whether this run is a soak.</summary>
    public static bool IsOn => Factor > 1;

    /// <summary>What an environment variable of this value asks for.</summary>
    /// <exception cref="FormatException">It is neither absent nor a whole number from 1.</exception>
    public static int Read(string? value) => value switch
    {
        null or "" => 1,
        _ when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var factor) && factor >= 1 => factor,
        _ => throw new FormatException($"{Variable} is the number of times as many cases, from 1, and not `{value}`."),
    };
}
