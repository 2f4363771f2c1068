using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Reading.Yaml;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>
/// Reads positions that are written as a range: <c>0-59</c>, or <c>{ from: "00:00", to: "23:55", step: 5 min }</c>. Whole numbers have leading zeros
/// where the lower end has some; times are hours and minutes.
/// </summary>
internal static partial class DialPositions
{
    /// <summary>The most positions of a dial: the minutes of a day.</summary>
    public const int Most = 1440;

    /// <summary>Whether positions are written as a range, valid or not.</summary>
    public static bool IsRange(YamlNode? node) =>
        (node is YamlScalar scalar && Dashed().IsMatch(scalar.Value))
        || (node is YamlMap map && map["from"] is not null && map["to"] is not null);

    /// <summary>The positions of a range; none, and why, where it isn't one.</summary>
    /// <param name="node">What is written.</param>
    public static (ImmutableArray<Located<string>> Positions, string? Wrong) Read(YamlNode node)
    {
        var (from, to, step) = node switch
        {
            YamlScalar scalar when Dashed().Match(scalar.Value) is { Success: true } ends => (ends.Groups["from"].Value, ends.Groups["to"].Value, "1"),
            YamlMap map => (map.Text("from")?.Value ?? "", map.Text("to")?.Value ?? "", map.Text("step")?.Value ?? "1"),
            _ => ("", "", ""),
        };
        var times = Minutes(from) is not null;
        var (first, last) = times ? (Minutes(from), Minutes(to)) : (Number(from), Number(to));
        if (first is not { } low || last is not { } high || Step().Match(step) is not { Success: true } each)
            return ([], "A range is “0-59”, or “{ from: \"00:00\", to: \"23:55\", step: 5 min }”.");
        var by = int.Parse(each.Groups["number"].ValueSpan, CultureInfo.InvariantCulture) * (each.Groups["unit"].Value == "h" ? 60 : 1);
        if (by < 1 || high <= low)
            return ([], "A range goes upwards: “from” is the lower end, “to” the higher, and “step” at least 1.");
        var count = ((high - low) / by) + 1;
        if (count > Most)
            return ([], $"A dial has at most {Most} positions, and this range has {count}.");
        var digits = from.Length > 1 && from[0] == '0' ? Math.Max(from.Length, to.Length) : 1;
        var values = Enumerable.Range(0, count).Select(i => low + (i * by));
        return ([.. values.Select(value => new Located<string>(times ? Clock(value) : Padded(value, digits), node.At))], null);
    }

    private static int? Number(string text) => text.Length is > 0 and < 8 && text.All(char.IsAsciiDigit) ? int.Parse(text, CultureInfo.InvariantCulture) : null;

    private static int? Minutes(string text) => Time().Match(text) is { Success: true } time
        ? (int.Parse(time.Groups["hour"].ValueSpan, CultureInfo.InvariantCulture) * 60)
            + int.Parse(time.Groups["minute"].ValueSpan, CultureInfo.InvariantCulture)
        : null;

    private static string Clock(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}");

    private static string Padded(int number, int digits) => number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');

    [GeneratedRegex(@"^(?<from>[0-9]+) ?[-–] ?(?<to>[0-9]+)$")]
    private static partial Regex Dashed();

    [GeneratedRegex(@"^(?<hour>[0-9]{1,2}):(?<minute>[0-5][0-9])$")]
    private static partial Regex Time();

    [GeneratedRegex(@"^(?<number>[0-9]{1,6}) ?(?<unit>min|h)?$")]
    private static partial Regex Step();
}
