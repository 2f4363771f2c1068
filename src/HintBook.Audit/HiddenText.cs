using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>
/// What scripts and style sheets say in another form than a string: parts that are joined, codes of letters, Base64, reckoned minutes, two numbers as
/// hours and minutes, figures one by one. Each is given as the text that it makes.
/// </summary>
internal static partial class HiddenText
{
    private const int ShortestBase64 = 8, Fewest = 3, Most = 40;

    /// <summary>Strings that a script makes, with their places.</summary>
    public static IEnumerable<(string Text, int At)> Strings(string script)
    {
        foreach (Match match in Joined().Matches(script))
            yield return (string.Concat(match.Groups["part"].Captures.Select(part => part.Value)), match.Index);
        foreach (Match match in Letters().Matches(script))
        {
            var codes = match.Groups["code"].Captures.Select(code => int.Parse(code.Value, CultureInfo.InvariantCulture)).ToArray();
            if (Array.TrueForAll(codes, code => code is >= ' ' and <= '~'))
                yield return (string.Concat(codes.Select(code => (char)code)), match.Index);
        }

        foreach (Match match in Base64().Matches(script))
        {
            if (Decoded(match.Groups["text"].Value) is { } text)
                yield return (text, match.Index);
        }

        if (!script.Contains("reverse", StringComparison.Ordinal))
            yield break;
        foreach (Match match in Word().Matches(script))
            yield return (string.Concat(match.Groups["text"].Value.Reverse()), match.Index);
    }

    /// <summary>Times that a script or a style sheet sets as two numbers, as minutes since midnight or by the hands of a clock.</summary>
    public static IEnumerable<(string Text, int At)> Times(string text)
    {
        foreach (Match match in TwoNumbers().Matches(text).Concat(Arguments().Matches(text)).Concat(Reckoned().Matches(text)))
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
        var shown = Content().Matches(style).Select(match => match.Groups["one"].Value).ToArray();
        if (shown.Length is >= Fewest and < Most)
            yield return string.Join(' ', shown);
        var set = SetToOne().Matches(style).Select(match => match.Groups["one"].Value).ToArray();
        if (set.Length is >= Fewest and < Most)
            yield return string.Join(' ', set);
        foreach (Match match in Counter().Matches(style))
            yield return match.Groups["number"].Value;
    }

    // Text that anyone could write: else it is a picture or a digest.
    private static string? Decoded(string base64)
    {
        if (base64.Length < ShortestBase64 || base64.Length % 4 != 0)
            return null;
        Span<byte> bytes = stackalloc byte[base64.Length];
        if (!Convert.TryFromBase64String(base64, bytes, out var length))
            return null;
        var text = Encoding.UTF8.GetString(bytes[..length]);
        return text.All(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-' or ':' or '.' or ',' or '\'') ? text : null;
    }

    // 'MER' + 'IDIAN', ['ME', 'RI'].join('')
    [GeneratedRegex(
        """(["'`](?<part>[^"'`\\\n]{1,40})["'`]\s*\+\s*){1,20}["'`](?<part>[^"'`\\\n]{1,40})["'`]|\[(\s*["'`](?<part>[^"'`\\\n]{1,40})["'`]\s*,?){2,20}\s*\]""",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Joined();

    // fromCharCode(77, 69), [77, 69, 82, 73]
    [GeneratedRegex(@"(fromC(har|odeP)[A-Za-z]*\s*\(|\[)(\s*(\.\.\.)?\[?\s*(?<code>[0-9]{2,3})\s*,?){3,40}\s*[\])]", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Letters();

    [GeneratedRegex("""["'`](?<text>[A-Za-z0-9+/]{6,200}={0,2})["'`]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Base64();

    [GeneratedRegex("""["'`](?<text>[A-Za-z0-9]{3,40})["'`]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Word();

    // h: 1, m: 20
    [GeneratedRegex(
        """\b(h|hrs?|hours?)["'`]?\s*[:=]\s*["'`]?(?<hour>[0-9]{1,2})\b[^\n0-9]{1,24}\b(m|mins?|minutes?)["'`]?\s*[:=]\s*["'`]?(?<minute>[0-9]{1,2})\b""",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex TwoNumbers();

    // setHands(1, 20)
    [GeneratedRegex(
        @"(hands?|clock|time|hour)[A-Za-z]*\s*\(\s*(?<hour>[0-9]{1,2})\s*,\s*(?<minute>[0-9]{1,2})\s*\)",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        10_000)]
    private static partial Regex Arguments();

    // 6 * 60 + 55
    [GeneratedRegex(@"\b(?<hour>[0-9]{1,2})\s*\*\s*60\s*\+\s*(?<minute>[0-9]{1,2})\b", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Reckoned();

    [GeneratedRegex("""\bcontent\s*:\s*["'](?<one>[0-9A-Za-z])["']""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Content();

    // --wheel-1: 7
    [GeneratedRegex("""--[A-Za-z_-]+[0-9]\s*:\s*["']?(?<one>[0-9A-Z])["']?\s*[;}]""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SetToOne();

    [GeneratedRegex(
        @"\b(counter-(reset|set|increment)\s*:\s*[A-Za-z_-]+\s+|--[A-Za-z_-]+\s*:\s*)(?<number>[0-9]{3,9})\b(?!\s*(px|ms|s|em|rem|%|[.]))",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Counter();
}
