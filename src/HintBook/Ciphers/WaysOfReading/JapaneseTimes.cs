namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Times in Japanese, from memory: <c>十時四十五分</c>, <c>午後三時半</c>, <c>十一時十五分前</c>, and the hands of a clock, 短針 and 長針.</summary>
internal static class JapaneseTimes
{
    private const int LongestBefore = 4;
    private const string Noon = "正午";
    private static readonly string[] Early = ["午前", "朝", "早朝"];
    private static readonly string[] Late = ["午後", "夕方", "昼", "夜", "晩"];

    /// <summary>Every time, in order.</summary>
    public static List<ClockTime> In(string text)
    {
        var times = new List<ClockTime>();
        for (var at = text.IndexOf('時', StringComparison.Ordinal); at >= 0; at = text.IndexOf('時', at + 1))
        {
            if (JapaneseNumbers.Before(text, at) is not (<= 24 and var hour, var start))
                continue;
            var (minute, end) = Minutes(text, at + 1);
            var before = text[Math.Max(0, start - LongestBefore)..start].TrimEnd('の');
            var half = Array.Find([.. Early, .. Late], word => before.EndsWith(word, StringComparison.Ordinal));
            var isLate = Late.Contains(half) && hour < 12 && !(half is "夜" or "晩" && hour < 5);
            var time = ((hour + (isLate ? 12 : 0)) * 60) + minute;
            time = time < 0 ? time + (24 * 60) : time < 60 && minute < 0 ? time + (12 * 60) : time;
            start = half is null ? start : text.LastIndexOf(half, start, StringComparison.Ordinal);
            times.Add(new ClockTime(text[start..end], time / 60 % 24, time % 60, half is not null || hour > 12));
        }

        if (times.Count == 0 && text.Contains(Noon, StringComparison.Ordinal))
            times.Add(new ClockTime(Noon, 12, 0, IsOfHalf: true));
        return times.Count == 0 && Hands(text) is { } hands ? [hands] : times;
    }

    private static (int Minutes, int End) Minutes(string text, int from)
    {
        if (from < text.Length && text[from] == '半')
            return (30, from + 1);
        if (JapaneseNumbers.Behind(text, from) is not (< 60 and var minutes, var end) || end >= text.Length || text[end] != '分')
            return (0, from);
        return end + 1 < text.Length && text[end + 1] == '前' ? (-minutes, end + 2) : (minutes, end + 1);
    }

    private static ClockTime? Hands(string text) =>
        Hand(text, "短") is ( >= 1 and <= 12 and var hour, var one) && Hand(text, "長") is ( >= 1 and <= 12 and var five, var other)
            ? new ClockTime(text[Math.Min(one, other)..(Math.Max(one, other) + 1)], hour, five * 5 % 60, IsOfHalf: false)
            : null;

    private static (int Number, int At)? Hand(string text, string word)
    {
        var hand = text.IndexOf(word, StringComparison.Ordinal);
        if (hand < 0 || !text.Contains('針', StringComparison.Ordinal))
            return null;
        var start = hand;
        while (start < text.Length && !JapaneseNumbers.IsNumeral(text[start]))
            start++;
        return JapaneseNumbers.Behind(text, start) is (var number, _) ? (number, start) : null;
    }
}
