using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Audit.Mentions;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit;

/// <summary>
/// What one statement of a program compares or sets one after the other: the figures of a code (<c>h !== 5 || z !== 7 || e !== 3</c>,
/// <c>if (a == 5) if (b == 7) …</c>), or an hour and a minute (<c>Number(hour) % 12 === 5 &amp;&amp; Number(minute) === 50</c>).
/// </summary>
internal static partial class Statements
{
    private const int MostApart = 60, FewestPairs = 2, Hours = 24, MinutesOfHour = 60;
    private static readonly HashSet<string> HourWords = FoldedText.SetOf(ClockNames.Hours), MinuteWords = FoldedText.SetOf(ClockNames.Minutes);

    /// <summary>Rows of figures or letters, parted by spaces, and times as hours and minutes, with their places.</summary>
    /// <param name="program">A program without its remarks.</param>
    public static IEnumerable<(string Text, int At)> In(string program)
    {
        if (program.AsSpan().IndexOfAny("=:&|") < 0)
            return [];
        return [.. In(program, Given().Matches(program), isBehind: false), .. In(program, Ahead().Matches(program), isBehind: true)];
    }

    /// <summary>The same of a string or an attribute, if it looks like a program: sentences have colons too.</summary>
    public static IEnumerable<string> InString(string text) =>
        text.AsSpan().IndexOfAny("=&|") >= 0 && Operator().IsMatch(text) ? In(text).Select(said => said.Text) : [];

    /// <summary>The values that one selector of a style sheet asks for, parted by spaces: <c>[data-a="5"][data-b="7"][data-c="3"]</c>.</summary>
    public static IEnumerable<string> InSelectors(string style) =>
        from match in Selector().Matches(style)
        select string.Join(' ', match.Groups["one"].Captures.Select(one => one.Value));

    private static IEnumerable<(string Text, int At)> In(string program, MatchCollection values, bool isBehind)
    {
        List<Match> row = [];
        foreach (Match value in values)
        {
            if (row.Count > 0 && !GoesOn(program, row[^1], value, isBehind))
            {
                foreach (var said in Said(program, row, isBehind))
                    yield return said;
                row.Clear();
            }

            row.Add(value);
        }

        foreach (var said in Said(program, row, isBehind))
            yield return said;
    }

    // Between two of them stands the name of what is compared, what joins both, and nothing else of weight.
    private static bool GoesOn(string program, Match before, Match value, bool isBehind)
    {
        var gap = program.AsSpan((before.Index + before.Length)..value.Index);
        if (gap.Length is 0 or > MostApart || gap.ContainsAny(";}<>") || !HasLetter(gap))
            return false;
        var isJoined = gap.ContainsAny("&|") || gap.Contains(" and ", StringComparison.Ordinal) || gap.Contains(" or ", StringComparison.Ordinal);
        return isJoined || (!isBehind && !value.Groups["call"].Success && !before.Groups["call"].Success);
    }

    private static bool HasLetter(ReadOnlySpan<char> gap)
    {
        foreach (var letter in gap)
        {
            if (char.IsLetter(letter))
                return true;
        }

        return false;
    }

    private static IEnumerable<(string Text, int At)> Said(string program, List<Match> row, bool isBehind)
    {
        if (row.Count < FewestPairs)
            yield break;
        if (row.Count < SymbolRows.Most && (row.Count >= SymbolRows.Fewest || row.TrueForAll(value => value.Groups["one"].Length > 1)))
            yield return (string.Join(' ', row.Select(value => value.Groups["one"].Value)), row[0].Index);
        for (var i = 1; i < row.Count && !isBehind; i++)
        {
            var (first, second) = (Named(program, i > 1 ? row[i - 2] : null, row[i - 1]), Named(program, row[i - 1], row[i]));
            var (one, other) = (NumberOf(row[i - 1]), NumberOf(row[i]));
            var (hour, minute) = first.Overlaps(HourWords) && second.Overlaps(MinuteWords) ? (one, other)
                : first.Overlaps(MinuteWords) && second.Overlaps(HourWords) ? (other, one)
                : (-1, -1);
            if (hour is >= 0 and <= Hours && minute is >= 0 and < MinutesOfHour)
                yield return (string.Create(CultureInfo.InvariantCulture, $"{hour}:{minute:00}"), row[i - 1].Index);
        }
    }

    private static int NumberOf(Match value) =>
        int.TryParse(value.Groups["one"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;

    // The words of what a value is compared with: "t.getHours()" is get and hours.
    private static HashSet<string> Named(string program, Match? before, Match value)
    {
        var from = Math.Max(before is null ? 0 : before.Index + before.Length, value.Index - MostApart);
        return [.. Part().Matches(program[from..value.Index]).Select(part => part.Value.ToLowerInvariant())];
    }

    // a === 5, a: 5, x == "T", (a, 5), a - 5
    [GeneratedRegex(
        """((?<![<>=!+\-*/%&|^~?])(={1,3}|!={1,2}|(?<=[A-Za-z_$]\w{0,30}["'`]?\s{0,3}):)|(?<call>[,(^-])(?=\s*["'`]?[0-9A-Za-z]{1,4}["'`]?\s*\)))\s*"""
        + """((?<one>[0-9]{1,4})|(?<quote>["'`])(?<one>[0-9A-Za-z]|[0-9]{2,4})\k<quote>)(?![\w.$%*/+-])""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Given();

    // 5 === a
    [GeneratedRegex(
        """(?<![\w.$])((?<one>[0-9]{1,4})|(?<quote>["'`])(?<one>[0-9A-Za-z])\k<quote>)\s*(={2,3}|!={1,2})\s*(?=[A-Za-z_$])""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Ahead();

    [GeneratedRegex(
        """(\[[\w-]{1,40}[~|^$*]?=\s*["']?(?<one>[0-9A-Za-z]|[0-9]{2,4})["']?\s*\][^\[\]{},;]{0,30}){2,20}""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Selector();

    [GeneratedRegex(@"[=!]==?|&&|\|\|", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Operator();

    [GeneratedRegex(@"[A-Z]?[a-z]+|[A-Z]+(?![a-z])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Part();
}
