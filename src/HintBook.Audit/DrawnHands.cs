using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>The times at which the hands of a clock stand in a drawing: two angles that fit each other, as on a clock.</summary>
internal static partial class DrawnHands
{
    private const int Most = 12;
    private const double Play = 1;

    /// <summary>The times that two turned lines may show, as <c>10:45</c>; none in a drawing that speaks of no hands.</summary>
    public static IEnumerable<string> In(string drawing)
    {
        if (!Hands().IsMatch(drawing))
            return [];
        double[] angles =
        [
            .. from match in Turned().Matches(drawing).Take(Most)
               select ((double.Parse(match.Groups["angle"].ValueSpan, CultureInfo.InvariantCulture) % 360) + 360) % 360,
        ];
        return
        [
            .. from hour in angles
               from minute in angles
               let minutes = (int)Math.Round(minute / 6) % 60
               let hours = (int)Math.Floor((hour + Play) / 30) % 12
               where Math.Abs((hours * 30) + (minutes / 2.0) - hour) < Play
               select string.Create(CultureInfo.InvariantCulture, $"{(hours == 0 ? 12 : hours)}:{minutes:00}"),
        ];
    }

    [GeneratedRegex(@"\b(hour|minute|hands?|clock|zeiger|aiguille|manecilla)", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, 10_000)]
    private static partial Regex Hands();

    [GeneratedRegex(
        @"(rotate[Z]?\(\s*|rotate\s*:\s*|(angle|turn|hour|minute)[A-Za-z-]*[""']?\s*[:=]\s*[""']?)(?<angle>-?[0-9]{1,4}(\.[0-9]{1,4})?)",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Turned();
}
