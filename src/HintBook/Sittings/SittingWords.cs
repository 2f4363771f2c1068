using System.Globalization;
using HintBook.Books;

namespace HintBook.Sittings;

/// <summary>How numbers of sittings are said, on the screen and on the page alike.</summary>
internal static class SittingWords
{
    /// <summary>What is said where so few times were noted that the middle of them tells little.</summary>
    public const string FewTimes =
        "With fewer than six times, how long a stage takes most people isn't known; the middle one is a rough guide.";

    /// <summary>Minutes as a number, with one digit behind the point where it needs one.</summary>
    public static string Number(double minutes) => minutes.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Minutes, or hours and minutes from an hour and a half on.</summary>
    public static string Length(double minutes) =>
        minutes < 90 ? $"{Number(minutes)} min" : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(minutes / 60)} h {Math.Floor(minutes % 60):00}");

    /// <summary>Two numbers of minutes with a dash between.</summary>
    public static string Between(double low, double high) => $"{Number(low)}–{Number(high)}";

    /// <summary>A share from 0 to 1 in whole per cent, with a space that doesn't end a line.</summary>
    public static string PerCent(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:0}\u00A0%");

    /// <summary>How sure it is that most people would do the same.</summary>
    /// <param name="proportion">Who did it.</param>
    public static string Say(Proportion proportion)
    {
        var (low, high) = proportion.Bounds;
        return $"{proportion.Did} of {proportion.Of}; of all people between {PerCent(low)} and {PerCent(high)}";
    }

    /// <summary>Why a step of help is worth rewriting.</summary>
    /// <param name="step">The step.</param>
    public static string Advice(HelpTaken step) => step switch
    {
        HelpTaken.Nudge => "the nudge doesn't help, since most of those who read it went on to the clue",
        HelpTaken.Clue => "the clue doesn't help, since most of those who read it went on to the answer",
        _ => "the answer doesn't help, since most gave up here",
    };
}
