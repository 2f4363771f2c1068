using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>
/// What scripts and style sheets say in another form than a string: parts that are joined, codes of letters, Base64, reckoned minutes, two numbers as
/// hours and minutes, figures one by one. Each is given as the text that it makes.
/// </summary>
internal static partial class HiddenText
{
    private const int Fewest = SymbolRows.Fewest, Most = SymbolRows.Most;
    private const string HourName = "h|hrs?|hours?|stunden?|std|heures?|horas?", MinuteName = "m|mins?|minutes?|minuten?|minutos?";

    /// <summary>Strings that a script makes, with their places.</summary>
    public static IEnumerable<(string Text, int At)> Strings(string script)
    {
        Match? before = null;
        var isReversed = script.Contains("reverse", StringComparison.Ordinal);
        foreach (Match match in Joined().Matches(script))
        {
            string[] parts = [.. match.Groups["part"].Captures.Select(part => part.Value)];
            yield return (string.Concat(parts), match.Index);
            if (isReversed)
                yield return (string.Concat(parts.Reverse()), match.Index);
            // ["A"].concat(["B"]), [...["A"], ...["B"]]
            if (before is not null && script[(before.Index + before.Length)..match.Index].Trim() is ".concat(" or ", ..." or ",...")
                yield return (string.Concat(before.Groups["part"].Captures.Select(part => part.Value).Concat(parts)), before.Index);
            before = match;
        }

        foreach (Match match in Letters().Matches(script))
        {
            var codes = match.Groups["code"].Captures.Select(code => CodeOf(code.Value)).ToArray();
            if (Array.TrueForAll(codes, code => code is >= ' ' and <= '~'))
                yield return (string.Concat(codes.Select(code => (char)code)), match.Index);
        }

        if (!isReversed)
            yield break;
        foreach (Match match in Word().Matches(script))
            yield return (string.Concat(match.Groups["text"].Value.Reverse()), match.Index);
    }

    private static int CodeOf(string number) => number.StartsWith("0x", StringComparison.OrdinalIgnoreCase)
        ? int.Parse(number[2..], NumberStyles.HexNumber, CultureInfo.InvariantCulture)
        : int.Parse(number, CultureInfo.InvariantCulture);

    /// <summary>Numbers that a script reckons from two: <c>60000 + 294</c>.</summary>
    public static IEnumerable<(string Text, int At)> Sums(string script) =>
        from Match match in Sum().Matches(script)
        let first = long.Parse(match.Groups["first"].Value, CultureInfo.InvariantCulture)
        let second = long.Parse(match.Groups["second"].Value, CultureInfo.InvariantCulture)
        select ((match.Groups["minus"].Success ? first - second : first + second).ToString(CultureInfo.InvariantCulture), match.Index);

    /// <summary>Times that a script or a style sheet sets as two numbers, as minutes since midnight or by the hands of a clock.</summary>
    public static IEnumerable<(string Text, int At)> Times(string text)
    {
        foreach (Match match in TwoNumbers().Matches(text).Concat(Arguments().Matches(text)).Concat(Told().Matches(text)).Concat(Reckoned().Matches(text)))
        {
            var (hour, minute) = (match.Groups["hour"].Value, match.Groups["minute"].Value.PadLeft(2, '0'));
            if (int.Parse(hour, CultureInfo.InvariantCulture) < 25 && int.Parse(minute, CultureInfo.InvariantCulture) < 60)
                yield return ($"{hour}:{minute}", match.Index);
        }

        foreach (var time in DrawnHands.In(text))
            yield return (time, 0);
    }

    /// <summary>Figures and letters that a style sheet shows one by one, and numbers to which its counters are set.</summary>
    public static IEnumerable<string> Shown(string style)
    {
        var shown = Content().Matches(style).Select(match => StyleEscapes.Unescaped(match.Groups["one"].Value)).ToArray();
        if (shown.Length is >= Fewest and < Most)
            yield return string.Join(' ', shown);
        foreach (Match match in Strings().Matches(style))
            yield return string.Concat(match.Groups["part"].Captures.Select(part => StyleEscapes.Unescaped(part.Value)));
        var set = SetToOne().Matches(style).Select(match => match.Groups["one"].Value).ToArray();
        if (set.Length is >= Fewest and < Most)
            yield return string.Join(' ', set);
        foreach (Match match in Counter().Matches(style))
            yield return match.Groups["number"].Value;
    }

    // 'MER' + 'IDIAN', a = 'MER'; a += 'IDIAN', ['ME', 'RI'].join('')
    [GeneratedRegex(
        """(["'`](?<part>[^"'`\\\n]{1,40})["'`](\s*\+\s*|\s*;\s*[\w$.]{1,40}\s*\+=\s*)){1,20}["'`](?<part>[^"'`\\\n]{1,40})["'`]"""
        + """|\[(\s*["'`](?<part>[^"'`\\\n]{1,40})["'`]\s*,?){2,20}\s*\]""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Joined();

    // fromCharCode(77, 69), [77, 69, 82, 73]
    [GeneratedRegex(
        @"(fromC(har|odeP)[A-Za-z]*\s*\(|\[)(\s*(\.\.\.)?\[?\s*(?<code>0[xX][0-9A-Fa-f]{2}|[0-9]{2,3})\s*,?){3,40}\s*[\])]",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Letters();

    [GeneratedRegex("""["'`](?<text>[A-Za-z0-9]{3,40})["'`]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Word();

    // h: 1, m: 20; hand.hour === 1 && hand.minute === 20
    [GeneratedRegex(
        """(\b|get|set)(""" + HourName + """)["'`]?(\(\))?\s*(:|={1,3})\s*["'`]?(?<hour>[0-9]{1,2})\b[^\n0-9]{1,30}"""
        + """(\b|get|set)(""" + MinuteName + """)["'`]?(\(\))?\s*(:|={1,3})\s*["'`]?(?<minute>[0-9]{1,2})\b""",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex TwoNumbers();

    // setHands(1, 20), stelleZeiger(1, 20)
    [GeneratedRegex(
        @"(hands?|clock|time|hour|zeiger|uhr|zeit|stunde|aiguilles?|horloge|heure|manecillas?|agujas?|reloj|hora|tokei|saa)[A-Za-z]*\s*\("
        + @"\s*(?<hour>[0-9]{1,2})\s*,\s*(?<minute>[0-9]{1,2})\s*\)",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex Arguments();

    // turn("hour", 1); turn("minute", 20)
    [GeneratedRegex(
        """["'`](""" + HourName + """)["'`]\s*,\s*["'`]?(?<hour>[0-9]{1,2})\b[^\n0-9]{1,40}"""
        + """["'`](""" + MinuteName + """)["'`]\s*,\s*["'`]?(?<minute>[0-9]{1,2})\b""",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex Told();

    [GeneratedRegex(
        @"(?<![\w.*/%+-]\s*)(?<first>[0-9]{2,9})\s*((?<minus>-)|\+)\s*(?<second>[0-9]{1,9})(?!\s*[\w.*/%+-])",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Sum();

    // 6 * 60 + 55
    [GeneratedRegex(@"\b(?<hour>[0-9]{1,2})\s*\*\s*60\s*\+\s*(?<minute>[0-9]{1,2})\b", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Reckoned();

    [GeneratedRegex("""\bcontent\s*:\s*["'](?<one>[0-9A-Za-z]|\\[0-9A-Fa-f]{2,6}\s?)["']""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Content();

    // content: "60" "38"
    [GeneratedRegex("""\bcontent\s*:(\s*["'](?<part>[^"'\n]{1,40})["']){2,20}""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Strings();

    // --wheel-1: 7; --second-wheel: 4
    [GeneratedRegex("""--[A-Za-z0-9_-]+\s*:\s*["']?(?<one>[0-9A-Z])["']?\s*[;}]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SetToOne();

    [GeneratedRegex(
        @"\b(counter-(reset|set|increment)\s*:\s*[A-Za-z_-]+\s+|--[A-Za-z_-]+\s*:\s*)(?<number>[0-9]{3,9})\b(?!\s*(px|ms|s|em|rem|%|[.]))",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Counter();
}
