using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Times of day and dates.</summary>
internal static partial class Times
{
    private const string Source = "RFC 3339 for dates and times that are written with hyphens and colons; common practice for the rest.";

    private const string MonthNames = "January|February|March|April|May|June|July|August|September|October|November|December";

    private static readonly string[] Months =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    public static Way To24 { get; } = Way.Bare(
        "24-hour",
        "Times such as “3:30 pm”, “15h30” or “half past three in the afternoon” as four figures: 1530.",
        Source,
        text => ReadingResult.Of(
            ClockTimes.In(text).Select(time => new Row(time.Written, $"{time.Hour:00}{time.Minute:00}")),
            $"no time stands in {TextPieces.Quoted(text)}"));

    public static Way To12 { get; } = Way.Bare(
        "12-hour",
        "Times such as “15:30” as a clock shows them: 330.",
        Source,
        text => ReadingResult.Of(
            ClockTimes.In(text).Select(time => new Row(time.Written, $"{time.HourOnClock}{time.Minute:00}")),
            $"no time stands in {TextPieces.Quoted(text)}"));

    /// <summary>Dates in the form that is stated by letters: <c>ddmm</c>, <c>mmddyy</c>, <c>yyyy</c>; one letter leaves the nought out.</summary>
    public static Way Dates { get; } = new()
    {
        Name = "dates",
        Says = "Dates (“4 March 1923”, “March 4, 1923”, “1923-03-04”) in the stated form: “{ dates: ddmm }”.",
        Source = Source,
        Told = new("a form made of d, dd, m, mm, yy and yyyy", "ddmm"),
        Conventions = told => told is [var form] && Form().IsMatch(form)
            ? [.. new[] { Swapped(form) }.Where(other => other != form).Select(other => new Convention([other], $"writing the date as {other}"))]
            : [],
        Read = (text, told) => told is not [var form] || !Form().IsMatch(form)
            ? new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a form such as “ddmm”")
            : DatesIn(text, form),
    };

    private static ReadingResult DatesIn(string text, string form)
    {
        var dates = Written().Matches(text).Select(match => (match.Value, Date: DateOf(match))).ToArray();
        if (Array.Find(dates, date => date.Date is null) is { Value: { } never })
            return new ReadingResult.Stuck($"there is no day {TextPieces.Quoted(never)}");
        if (form.Contains('y', StringComparison.Ordinal) && Array.Find(dates, date => date.Date!.Value.Year == NoYear) is { Value: { } yearless })
            return new ReadingResult.Stuck($"{TextPieces.Quoted(yearless)} has no year");
        return ReadingResult.Of(dates.Select(date => new Row(date.Value, Formed(date.Date!.Value, form))), $"no date stands in {TextPieces.Quoted(text)}");
    }

    // A date without a year may be 29 February, so it is checked in a leap year that no author writes.
    private const int NoYear = 4;

    private static DateOnly? DateOf(Match match)
    {
        var month = match.Groups["name"].Success
            ? Array.FindIndex(Months, name => name.StartsWith(match.Groups["name"].Value, StringComparison.OrdinalIgnoreCase)) + 1
            : Number(match, "month");
        var year = match.Groups["year"].Success ? Number(match, "year") : NoYear;
        var day = Number(match, "day");
        return month is >= 1 and <= 12 && year >= 1 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
    }

    private static string Formed(DateOnly date, string form) => Part().Replace(form, part => part.Value switch
    {
        "d" => Figures(date.Day, 1),
        "dd" => Figures(date.Day, 2),
        "m" => Figures(date.Month, 1),
        "mm" => Figures(date.Month, 2),
        "yy" => Figures(date.Year % 100, 2),
        _ => Figures(date.Year, 4),
    });

    private static string Swapped(string form) => string.Concat(form.Select(letter => letter switch { 'd' => 'm', 'm' => 'd', _ => letter }));

    private static string Figures(int number, int least) => number.ToString(CultureInfo.InvariantCulture).PadLeft(least, '0');

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?:d{1,2}|m{1,2}|yyyy|yy)+$")]
    private static partial Regex Form();

    [GeneratedRegex("dd?|mm?|yyyy|yy")]
    private static partial Regex Part();

    [GeneratedRegex(
        @"\b(?<year>[0-9]{4})-(?<month>[0-9]{2})-(?<day>[0-9]{2})\b"
        + @"|\b(?<day>[0-9]{1,2})(?:st|nd|rd|th)? (?:of )?(?<name>" + MonthNames + @")\b(?:,? (?<year>[0-9]{4})\b)?"
        + @"|\b(?<name>" + MonthNames + @") (?<day>[0-9]{1,2})(?:st|nd|rd|th)?\b(?:,? (?<year>[0-9]{4})\b)?",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
