using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>A time of day where it stands in a text.</summary>
/// <param name="Written">As it is written.</param>
/// <param name="Hour">From 0 to 23; from 1 to 12 as it stands where nothing says which half of the day.</param>
/// <param name="Minute">From 0 to 59.</param>
internal sealed record ClockTime(string Written, int Hour, int Minute)
{
    /// <summary>Its hour on a clock with hands: 1 to 12.</summary>
    public int HourOnClock => ((Hour + 11) % 12) + 1;
}

/// <summary>Finds times of day: <c>15:30</c>, <c>3.30 pm</c>, <c>10h45</c>, <c>a quarter to eleven</c>, <c>nine o'clock in the evening</c>.</summary>
internal static partial class ClockTimes
{
    private static readonly string[] Hours = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    private const string Hour = "(?<hour>[0-9]{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)";

    // Which half of the day.
    private const string Half = @"(?:\s?(?<half>[ap])\.?m\b\.?|,? in the (?<day>morning|afternoon|evening)\b|,? at (?<day>night)\b)?";

    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    /// <summary>Every time in a text, in order.</summary>
    public static IEnumerable<ClockTime> In(string text) =>
        from match in Apart(Spoken().Matches(text), InFigures().Matches(text))
        let time = Of(match)
        where time is not null
        select time;

    // “Half past 9 pm” is one time, though “9 pm” is one as well.
    private static IEnumerable<Match> Apart(IReadOnlyCollection<Match> spoken, IEnumerable<Match> figures) =>
        figures.Where(match => !spoken.Any(other => other.Index < match.Index + match.Length && match.Index < other.Index + other.Length))
            .Concat(spoken)
            .OrderBy(match => match.Index);

    private static ClockTime? Of(Match match)
    {
        if (match.Groups["name"].Success)
            return new ClockTime(match.Value, match.Groups["name"].Value.Equals("midnight", StringComparison.OrdinalIgnoreCase) ? 0 : 12, 0);
        var (hour, minute) = (HourIn(match.Groups["hour"].Value), MinuteIn(match));
        if (match.Groups["direction"].Value.Equals("to", StringComparison.OrdinalIgnoreCase))
            (hour, minute) = (hour == 1 ? 12 : hour - 1, 60 - minute);
        var half = HalfOf(match, hour);
        // A bare number is no time, and neither is 15 pm.
        var isTime = match.Groups["minute"].Success || match.Groups["direction"].Success || match.Groups["clock"].Success || half != ' ';
        if (!isTime || hour > 23 || minute > 59 || (half != ' ' && hour is < 1 or > 12))
            return null;
        return new ClockTime(match.Value.Trim(), half switch { ' ' => hour, 'a' => hour % 12, _ => (hour % 12) + 12 }, minute);
    }

    private static char HalfOf(Match match, int hour) => match.Groups["half"].Success
        ? char.ToLowerInvariant(match.Groups["half"].Value[0])
        : match.Groups["day"].Value.ToLowerInvariant() switch
        {
            "morning" => 'a',
            "afternoon" or "evening" => 'p',
            "night" => hour is >= 6 and < 12 ? 'p' : 'a',
            _ => ' ',
        };

    private static int HourIn(string written) =>
        char.IsAsciiDigit(written[0])
            ? int.Parse(written, NumberStyles.None, CultureInfo.InvariantCulture)
            : Array.IndexOf(Hours, written.ToLowerInvariant());

    private static int MinuteIn(Match match) => match.Groups["part"].Value.ToLowerInvariant() switch
    {
        "" => match.Groups["minute"].Length == 0 ? 0 : int.Parse(match.Groups["minute"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture),
        "quarter" => 15,
        "half" => 30,
        "five" => 5,
        "ten" => 10,
        "twenty" => 20,
        _ => 25,
    };

    [GeneratedRegex(
        @"(?<![0-9:.])(?<hour>[0-9]{1,2})(?:(?:[:.]|\s?h\s?)(?<minute>[0-9]{2})|\s?(?<minute>)h\b)?(?![0-9])(?![:.][0-9])" + Half, Options)]
    private static partial Regex InFigures();

    [GeneratedRegex(
        @"\b(?:(?:a )?(?<part>quarter|half|five|ten|twenty[- ]five|twenty)(?: minutes)? (?<direction>past|to) " + Hour + @"\b(?: o['’]clock)?" + Half
        + @"|" + Hour + @" (?<clock>o['’]clock)\b" + Half + @"|(?<!past |to )(?<hour>one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
        + @"(?:\s?(?<half>[ap])\.?m\b\.?|,? in the (?<day>morning|afternoon|evening)\b|,? at (?<day>night)\b)|(?<name>noon|midday|midnight)\b)",
        Options)]
    private static partial Regex Spoken();
}
