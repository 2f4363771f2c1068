namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// What programmers call the two numbers of a time, in six languages: a part of a name, such as <c>hour</c> in <c>getHours</c>. Small letters without accents,
/// parted by spaces; from memory.
/// </summary>
internal static class ClockNames
{
    /// <summary>The hour.</summary>
    public const string Hours = "h hh hr hrs hour hours stunde stunden std heure heures hora horas ji saa";

    /// <summary>The minute.</summary>
    public const string Minutes = "m mm mi mn min mins minute minutes minuten minuto minutos fun daqiqa";
}
