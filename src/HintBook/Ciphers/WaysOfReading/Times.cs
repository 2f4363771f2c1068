using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Times of day and dates.</summary>
internal static class Times
{
    private const string Source = "RFC 3339 for dates and times that are written with hyphens and colons; common practice for the rest.";

    public static Way To24 { get; } = Way.Bare(
        "24-hour",
        "Times in English, German, French, Spanish, Arabic or Japanese (“3:30 pm”, “Viertel vor elf”, “onze heures et demie”, the hands of a clock) "
            + "as four figures: 1530.",
        Source,
        text => ReadingResult.Of(
            ClockTimes.In(text).Select(time => new Row(time.Written, $"{time.Hour:00}{time.Minute:00}")),
            $"no time stands in {TextPieces.Quoted(text)}"));

    public static Way To12 { get; } = Way.Bare(
        "12-hour",
        "The same times as a clock shows them: 330.",
        Source,
        text => ReadingResult.Of(
            ClockTimes.In(text).Select(time => new Row(time.Written, $"{time.HourOnClock}{time.Minute:00}")),
            $"no time stands in {TextPieces.Quoted(text)}"));

    /// <summary>Dates in the form that is stated by letters: <c>ddmm</c>, <c>mmddyy</c>, <c>yyyy</c>; one letter leaves the nought out.</summary>
    public static Way Dates { get; } = new()
    {
        Name = "dates",
        Says = "Dates in the same languages (“4 March 1923”, “le 4 mars”, “4.3.1923”, “1923-03-04”) in the stated form: “{ dates: ddmm }”.",
        Source = Source,
        Told = new("a form made of d, dd, m, mm, yy and yyyy", "ddmm"),
        Conventions = told => told is [var form] && PartsOf(form) is not null
            ? [.. new[] { Swapped(form) }.Where(other => other != form).Select(other => new Convention([other], $"writing the date as {other}")
            {
                When = Invitations.MayPutMonthFirst,
            })]
            : [],
        Read = (text, told) => told is not [var form] || PartsOf(form) is not { } parts
            ? new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't a form such as “ddmm”")
            : DatesIn(text, parts),
    };

    private static ReadingResult DatesIn(string text, string[] form)
    {
        var dates = WaysOfReading.Dates.In(text).ToArray();
        if (Array.Find(dates, date => !Exists(date)) is { } never)
            return new ReadingResult.Stuck($"there is no day {TextPieces.Quoted(never.Written)}");
        if (Array.Exists(form, part => part[0] == 'y') && Array.Find(dates, date => date.Year is null) is { } yearless)
            return new ReadingResult.Stuck($"{TextPieces.Quoted(yearless.Written)} has no year");
        return ReadingResult.Of(dates.Select(date => new Row(date.Written, Formed(date, form))), $"no date stands in {TextPieces.Quoted(text)}");
    }

    // A date without a year may be 29 February, so it is checked in a leap year.
    private static bool Exists(WrittenDate date) =>
        date.Month is >= 1 and <= 12 && date.Year is null or >= 1 && date.Day >= 1 && date.Day <= DateTime.DaysInMonth(date.Year ?? 4, date.Month);

    private static string Formed(WrittenDate date, string[] form) => string.Concat(form.Select(part => part switch
    {
        "d" or "dd" => Figures(date.Day, part.Length),
        "m" or "mm" => Figures(date.Month, part.Length),
        "yy" => Figures(date.Year!.Value % 100, 2),
        _ => Figures(date.Year!.Value, 4),
    }));

    // The runs of one letter that a form is made of; null if it isn't one.
    private static string[]? PartsOf(string form)
    {
        var parts = new List<string>();
        for (var at = 0; at < form.Length;)
        {
            var start = at;
            while (at < form.Length && form[at] == form[start])
                at++;
            parts.Add(form[start..at]);
        }

        return parts.Count > 0 && parts.TrueForAll(part => part is "d" or "dd" or "m" or "mm" or "yy" or "yyyy") ? [.. parts] : null;
    }

    private static string Swapped(string form) => string.Concat(form.Select(letter => letter switch { 'd' => 'm', 'm' => 'd', _ => letter }));

    private static string Figures(int number, int least) => number.ToString(CultureInfo.InvariantCulture).PadLeft(least, '0');
}
