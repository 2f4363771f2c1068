using System.Globalization;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>The settings of clocks, by the minute of half a day.</summary>
internal sealed class TimeTable
{
    private readonly Dictionary<int, List<(int Secret, bool Sure)>> times = [];

    /// <summary>Whether there are none.</summary>
    public bool IsEmpty => times.Count == 0;

    /// <summary>Adds a setting such as <c>10:45</c>, <c>10.45</c> or <c>10h45</c>.</summary>
    /// <returns>Whether it is one.</returns>
    public bool Add(int secret, AuditSpelling spelling)
    {
        if (spelling.Text.Split(':', '.', 'h', 'H') is not [var hour, var minute]
            || !int.TryParse(hour, NumberStyles.None, CultureInfo.InvariantCulture, out var h) || h > 24
            || !int.TryParse(minute, NumberStyles.None, CultureInfo.InvariantCulture, out var m) || m > 59)
            return false;
        var at = Times.OnDial(h, m);
        if (!times.TryGetValue(at, out var same))
            times[at] = same = [];
        same.Add((secret, spelling.Sure));
        return true;
    }

    /// <summary>The secrets that are set to a minute of half a day.</summary>
    public IReadOnlyList<(int Secret, bool Sure)> Of(int minute) => times.TryGetValue(minute, out var same) ? same : [];
}

/// <summary>Finds times however they are said: in figures, in words, as minutes before or after the hour, by the hands of a clock.</summary>
internal sealed class Times(TimeTable table, AuditLanguage language)
{
    private readonly bool isHourFirst = language.IsHourFirst;
    private readonly TimeRemarks remarks = new(language);
    private const int MostToNumber = 6, MostToLabel = 9, MostAhead = 4, MostJoined = 2;
    private readonly List<(int Minute, int First, int Last)> hours = [];
    private const int HalfDay = 12 * 60, LongestSearch = 9, FewWords = 4;

    /// <summary>The minute of half a day.</summary>
    public static int OnDial(int hour, int minute) => ((((hour * 60) + minute) % HalfDay) + HalfDay) % HalfDay;

    /// <summary>Adds every mention in a text to a list.</summary>
    /// <param name="text">The text as words.</param>
    /// <param name="tokens">Its signs.</param>
    /// <param name="source">The text as it is written.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (table.IsEmpty)
            return;
        var isSure = text.Words.Length <= FewWords || Any(tokens, Sign.Clock);
        hours.Clear();
        for (var i = 0; i < tokens.Length; i++)
        {
            if (remarks.IsNoTime(text, tokens, source, i))
                continue;
            if (IsHour(tokens[i]) && tokens[i].Value > 0 && !(i + 1 < tokens.Length && tokens[i + 1].Is(Sign.Length | Sign.Minute)))
                hours.Add((tokens[i].Value * 60, i, i));
            Report(InFigures(text, tokens, source, i), i, isSure, tokens, found);
            Report(MinutesFirst(text, tokens, i), i, isSure, tokens, found);
            Report(HourFirst(text, tokens, i), i, isSure, tokens, found);
            Report(PartOfHour(tokens, i), i, isSure, tokens, found);
            Report(Remaining(tokens, i), i, isSure, tokens, found);
            Report(Labelled(tokens, i), i, isSure, tokens, found);
            Report(DigitByDigit(text, tokens, i), i, isSure: false, tokens, found);
        }

        GoneBy(text, tokens, found);
        ByHands(text, tokens, found);
    }

    private void Report((int Minute, int Last)? time, int first, bool isSure, ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        if (time is not var (minute, last))
            return;
        hours.Add((minute, first, last));
        foreach (var (secret, sure) in table.Of(minute))
            found.Add(new(secret, tokens[first].First, tokens[last].Last, sure && isSure, Words: 1, IsCode: true));
    }

    // "In five minutes it is half past seven", "from four o'clock, a third of an hour on", "eleven, less a quarter".
    private void GoneBy(FoldedText text, ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        var count = hours.Count;
        for (var i = 0; i < tokens.Length; i++)
        {
            if (TimeRemarks.SpanAt(text, tokens, i) is not var (minutes, end))
                continue;
            for (var at = 0; at < count; at++)
            {
                var (hour, first, last) = hours[at];
                if ((first <= end && i <= last) || Math.Max(first - end, i - last) > 2 * LongestSearch)
                    continue;
                var (from, to) = (Math.Min(i, first), Math.Max(end, last));
                // "Half past nine and five minutes".
                var isAdded = hour % 60 != 0 && i > last && i - last < 3 && (i == last + 1 || IsAnd(tokens[i - 1]));
                if (isAdded || remarks.IsSince(text, tokens, from, to))
                    Report((OnDial(0, hour + minutes), to), from, isSure: false, tokens, found);
                if (remarks.IsUntil(text, tokens, from, to))
                    Report((OnDial(0, hour - minutes), to), from, isSure: false, tokens, found);
            }
        }
    }

    // "Nine-two-five".
    private static (int, int)? DigitByDigit(FoldedText text, ReadOnlySpan<Token> tokens, int i)
    {
        if (i + 2 >= tokens.Length || !(tokens[i].Is(Sign.Number) && tokens[i + 1].Is(Sign.Number) && tokens[i + 2].Is(Sign.Number)))
            return null;
        var (hour, tens, ones) = (tokens[i].Value, tokens[i + 1].Value, tokens[i + 2].Value);
        var isJoined = text.Words[tokens[i + 1].First].Parting == Parting.Hyphen && text.Words[tokens[i + 2].First].Parting == Parting.Hyphen;
        var isAlone = (i == 0 || !tokens[i - 1].Is(Sign.Number)) && (i + 3 >= tokens.Length || !tokens[i + 3].Is(Sign.Number));
        return isJoined && isAlone && hour is > 0 and < 13 && tens is >= 0 and < 6 && ones is >= 0 and < 10 ? Of(hour, (10 * tens) + ones, i + 2) : null;
    }

    // "10:45", "10.45", "10h45", "22 h 45", "1045": two figures for the minutes, no further figures beside them.
    private static (int, int)? InFigures(FoldedText text, ReadOnlySpan<Token> tokens, string source, int i)
    {
        if (!IsFigures(tokens[i]))
            return null;
        var (start, end) = Place(text, tokens[i]);
        if (start > 1 && source[start - 1] is ':' or '.' or ',' && char.IsAsciiDigit(source[start - 2]))
            return null;
        if (tokens[i].Symbols.Length == 4 && (IsHours(tokens, source, i, end) || (tokens[i].Symbols[0] == '0' && text.Words.Length <= FewWords)))
            return Of(tokens[i].Value / 100, tokens[i].Value % 100, i);
        if (i + 1 >= tokens.Length || !IsFigures(tokens[i + 1]) || tokens[i + 1].Symbols.Length != 2 || tokens[i].Symbols.Length > 2)
            return null;
        var (next, behind) = Place(text, tokens[i + 1]);
        if (next != end + 1 || source[end] is not (':' or '.' or '：'))
            return null;
        if ((behind + 1 < source.Length && source[behind] is ':' or '.' or ',' && char.IsAsciiDigit(source[behind + 1])) || IsMeasure(source, behind))
            return null;
        return Of(tokens[i].Value, tokens[i + 1].Value, i + 1);

        static (int, int) Place(FoldedText text, in Token token) => (text.Words[token.First].Start, text.Words[token.Last].End);
    }

    private static bool IsHours(ReadOnlySpan<Token> tokens, string source, int i, int end) =>
        (Any(tokens, Sign.Clock) && !IsMeasure(source, end)) || (i + 1 < tokens.Length && tokens[i].Value < 2400 && tokens[i + 1].Is(Sign.Length));

    // "a quarter to eleven", "five minutes past two", "half an hour before nine"; "fünf vor halb elf".
    private (int, int)? MinutesFirst(FoldedText text, ReadOnlySpan<Token> tokens, int i)
    {
        if (!IsMinutes(tokens[i]))
            return null;
        var at = i + 1;
        Skip(tokens, ref at, Sign.Minute | Sign.Length | Sign.Hour | Sign.Article);
        var isOf = (tokens[i].Is(Sign.To) && tokens[i].Is(Sign.Fraction)) || remarks.IsTenOf(text, tokens, i);
        var isTo = isOf;
        var minutes = remarks.WithOnesBefore(text, tokens, i);
        if (!isTo && (at >= tokens.Length || !tokens[at].Is(Sign.To | Sign.Past)))
            return null;
        isTo |= tokens[Math.Min(at, tokens.Length - 1)].Is(Sign.To);
        // "Onze heures et quart" says the hour first; "un quart avant onze heures" doesn't.
        if (at < tokens.Length && tokens[at].Is(Sign.To | Sign.Past))
            at++;
        if (isOf && at < tokens.Length && remarks.IsOf(text, tokens[at]))
            at++;
        Skip(tokens, ref at, Sign.Article | Sign.Hour | Sign.Clock | Sign.Length | Sign.Grammar);
        var half = 0;
        if (at < tokens.Length && tokens[at].Is(Sign.PartOf) && !IsHour(tokens[at]))
            half = tokens[at].Is(Sign.Fraction) && !isOf ? 0 : 60 - tokens[at++].Value;
        // "Five past half seven", "cinq minutes avant la demie de cinq heures".
        if (!isOf && half == 0 && !tokens[i].Is(Sign.Fraction) && at + 1 < tokens.Length && tokens[at].Is(Sign.Fraction) && tokens[at].Value == 30)
        {
            (half, at) = (-30, at + 1);
            Skip(tokens, ref at, Sign.Article | Sign.Past | Sign.Grammar);
            if (at + 1 < tokens.Length && text.Of(text.Words[tokens[at].First]) is "de" or "d")
                at++;
        }

        if (at >= tokens.Length || !IsHour(tokens[at]) || (isOf && TimeRemarks.IsCounting(text, tokens, at)))
            return null;
        return Of(tokens[at].Value, (isTo ? -minutes : minutes) - half, at);
    }

    // "onze heures moins le quart", "eleven forty-five", "zehn Uhr fünfundvierzig", "seven o'clock".
    private (int, int)? HourFirst(FoldedText text, ReadOnlySpan<Token> tokens, int i)
    {
        if (!IsHour(tokens[i]) || (i > 0 && tokens[i - 1].Is(Sign.Length)))
            return null;
        var at = i + 1;
        var hasHour = at < tokens.Length && tokens[at].Is(Sign.Hour);
        // ثماني ساعات is how long it lasts.
        if (hasHour && text.Of(text.Words[tokens[at].First]) is "ساعات")
            return null;
        if (hasHour)
            at++;
        // 七時を二十分まわった.
        if (hasHour && at + 2 < tokens.Length && text.Of(text.Words[tokens[at].First]) is "を"
            && tokens[at + 1].Is(Sign.Number) && tokens[at + 2].Is(Sign.Minute))
            at++;
        var (isTo, isJoined) = (false, hasHour);
        if (at < tokens.Length && tokens[at].Is(Sign.To) && (isHourFirst || hasHour) && !tokens[at].Is(Sign.Fraction))
            (isTo, isJoined, at) = (true, true, at + 1);
        else if (at < tokens.Length && tokens[at].Is(Sign.Past | Sign.Grammar)
            && (isHourFirst || hasHour || IsWithMinutes(tokens, at + 1)) && IsAnd(tokens[at]))
            (isJoined, at) = (true, at + 1);
        Skip(tokens, ref at, Sign.Article);
        if (at >= tokens.Length || (tokens[at].First > tokens[i].First && text.Words[tokens[at].First].Parting > Parting.Space))
            return hasHour ? Of(tokens[i].Value, 0, i + 1) : null;
        if (tokens[at].Is(Sign.Length) || (at + 1 < tokens.Length && tokens[at + 1].Is(Sign.Length)))
            return null;
        var minutes = tokens[at];
        if (!IsMinutes(minutes) || minutes.Is(Sign.Long | Sign.Short))
            return hasHour ? Of(tokens[i].Value, 0, i + 1) : null;
        // Without a word between them the minutes have two figures: "four twenty".
        if (!isJoined && (minutes.Value < 10 || IsFigures(minutes) || minutes.Is(Sign.Unsure)) && !minutes.Is(Sign.Fraction))
            return null;
        if (!isJoined && !isHourFirst && minutes.Is(Sign.Fraction))
            return null;
        var last = at;
        if (at + 1 < tokens.Length && tokens[at + 1].Is(Sign.Minute))
            last = ++at;
        // "十一時十五分前".
        if (hasHour && IsBehind(tokens, at, Sign.To))
            (isTo, last) = (true, at + 1);
        return Of(tokens[i].Value, isTo ? -minutes.Value : minutes.Value, last);
    }

    // "VIII and twenty minutes".
    private static bool IsWithMinutes(ReadOnlySpan<Token> tokens, int at) =>
        at + 1 < tokens.Length && tokens[at].Is(Sign.Number) && tokens[at + 1].Is(Sign.Minute);

    // "halb elf", "dreiviertel elf"; "half eight" in Britain.
    private static (int, int)? PartOfHour(ReadOnlySpan<Token> tokens, int i)
    {
        if (!tokens[i].Is(Sign.PartOf) || i + 1 >= tokens.Length || !IsHour(tokens[i + 1]))
            return null;
        // In English the half hour has passed.
        return tokens[i].Is(Sign.Fraction) && tokens[i].Value == 30
            ? Of(tokens[i + 1].Value, 30, i + 1)
            : Of(tokens[i + 1].Value, tokens[i].Value - 60, i + 1);
    }

    // "in einer Viertelstunde wäre elf", "あと十五分で十一時".
    private static (int, int)? Remaining(ReadOnlySpan<Token> tokens, int i)
    {
        if (!tokens[i].Is(Sign.Remaining))
            return null;
        var at = i + 1;
        Skip(tokens, ref at, Sign.Article | Sign.Grammar | Sign.Hour);
        if (at >= tokens.Length || !IsMinutes(tokens[at]))
            return null;
        var minutes = tokens[at];
        var isNamed = minutes.Is(Sign.Fraction);
        for (var end = Math.Min(tokens.Length, at + 1 + LongestSearch); ++at < end;)
        {
            isNamed |= tokens[at].Is(Sign.Minute);
            if (tokens[at].Is(Sign.Number))
                return isNamed && IsHour(tokens[at]) && !tokens[at].Is(Sign.Unsure) ? Of(tokens[at].Value, -minutes.Value, at) : null;
        }

        return null;
    }

    // "hour === 10 && minute === 45".
    private static (int, int)? Labelled(ReadOnlySpan<Token> tokens, int i)
    {
        if (IsMinuteWord(tokens[i]) && NumberBehind(tokens, i, MostToNumber) is { } m && tokens[m].Value < 60)
        {
            for (var at = m + 1; at < Math.Min(tokens.Length, m + MostToLabel); at++)
            {
                if (tokens[at].Is(Sign.Number))
                    break;
                if (IsHourWord(tokens[at]) && HourBehind(tokens, at) is { } h)
                    return Of(tokens[h].Value, tokens[m].Value, h);
            }
        }

        if (!IsHourWord(tokens[i]))
            return null;
        // A table: both words, then both numbers.
        if (i + 3 < tokens.Length && IsMinuteWord(tokens[i + 1]) && IsHour(tokens[i + 2]) && tokens[i + 3].Is(Sign.Number) && tokens[i + 3].Value < 60)
            return Of(tokens[i + 2].Value, tokens[i + 3].Value, i + 3);
        // "Eight for the hour": it may stand before its word, if others stand between.
        var ahead = i - 1;
        while (ahead > 0 && ahead > i - MostAhead && !IsHour(tokens[ahead]))
            ahead--;
        if (ahead >= 0 && IsHour(tokens[ahead]) && tokens[i].First - tokens[ahead].Last > MostJoined)
            i = ahead;
        if ((i == ahead ? i : HourBehind(tokens, i)) is not { } hour)
            return null;
        for (var at = hour + 1; at < Math.Min(tokens.Length, hour + MostToLabel); at++)
        {
            if (tokens[at].Is(Sign.Number) && !tokens[at].Is(Sign.Unsure))
                return null;
            if (IsMinuteWord(tokens[at]) && NumberBehind(tokens, at, MostToNumber) is { } minute && tokens[minute].Value < 60)
                return Of(tokens[hour].Value, tokens[minute].Value, minute);
        }

        return null;

        static int? HourBehind(ReadOnlySpan<Token> tokens, int from)
        {
            for (var at = from + 1; at < Math.Min(tokens.Length, from + 1 + MostToNumber); at++)
            {
                if (tokens[at].Is(Sign.Number) || IsHour(tokens[at]))
                    return IsHour(tokens[at]) ? at : null;
            }

            return null;
        }

        static bool IsHourWord(in Token token) => token.Is(Sign.Hour | Sign.Length) || (token.Is(Sign.Short) && token.Is(Sign.Hand));

        static bool IsMinuteWord(in Token token) => token.Is(Sign.Minute) || (token.Is(Sign.Long) && token.Is(Sign.Hand));
    }

    // "The short hand just before eleven, the long one on the nine."
    private void ByHands(FoldedText text, ReadOnlySpan<Token> tokens, List<FoundSecret> found)
    {
        // "The big one on the seven, the small one past the eight" needs no word for hands.
        if (!Any(tokens, Sign.Hand) && !(Any(tokens, Sign.Long) && Any(tokens, Sign.Short)))
            return;
        var (minute, hour) = (Pointed(text, tokens, Sign.Long, Sign.Short), Pointed(text, tokens, Sign.Short, Sign.Long));
        // "Its fellow", "the other".
        if (hour is null && !Any(tokens, Sign.Short))
            hour = Fellow(text, tokens);
        if (minute is null && !Any(tokens, Sign.Long))
            minute = Fellow(text, tokens);
        // "Both hands on the four."
        if (hour is null && minute is null && !Any(tokens, Sign.Short | Sign.Long) && TimeRemarks.AreBoth(text, tokens) is { } both)
            hour = minute = Behind(text, tokens, both, default);
        if (hour is not var (at, h, isBefore) || h is < 1 or > 12)
            return;
        // "… on the four, the long one exactly on it."
        var (last, m) = minute is var (place, value, _) ? (place, value) : Any(tokens, Sign.Long) ? (at, h) : (-1, 0);
        if (last < 0 || m is < 0 or > 60)
            return;
        var minutes = m <= 12 ? m * 5 % 60 : m;
        Report((OnDial(isBefore ? h - 1 : h, minutes), Math.Max(last, at)), Math.Min(last, at), isSure: false, tokens, found);
        if (isBefore)
            Report((OnDial(h, minutes), Math.Max(last, at)), Math.Min(last, at), isSure: false, tokens, found);
        if (!isBefore && minutes > 30)
            Report((OnDial(h - 1, minutes), Math.Max(last, at)), Math.Min(last, at), isSure: false, tokens, found);
    }

    // The number at which a hand points: the nearest behind it, before the other hand is spoken of; or else the one before it.
    private (int At, int Number, bool IsBefore)? Pointed(FoldedText text, ReadOnlySpan<Token> tokens, Sign hand, Sign other)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (tokens[i].Is(hand) && !tokens[i].Is(other) && Behind(text, tokens, i, other) is { } found)
                return found;
        }

        return null;
    }

    private (int At, int Number, bool IsBefore)? Fellow(FoldedText text, ReadOnlySpan<Token> tokens)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            if (remarks.IsOther(text, tokens[i]) && Behind(text, tokens, i, default) is { } found)
                return found;
        }

        return null;
    }

    private (int At, int Number, bool IsBefore)? Behind(FoldedText text, ReadOnlySpan<Token> tokens, int hand, Sign other)
    {
        var isBefore = false;
        var end = Math.Min(tokens.Length, hand + 1 + (2 * LongestSearch));
        for (var at = hand + 1; at < end && !tokens[at].Is(other) && !remarks.IsOther(text, tokens[at]); at++)
        {
            isBefore |= tokens[at].Is(Sign.Before);
            if (tokens[at].Is(Sign.Number) && remarks.IsPartOfWay(text, tokens, at))
                continue;
            if (IsOnTheDial(tokens[at]) || IsOneOnTheDial(tokens, at))
                return (at, tokens[at].Value, isBefore || IsBehind(tokens, at, Sign.Before));
            if (remarks.UpOrDown(text, tokens[at]) is > 0 and var upright && (at + 1 >= tokens.Length || !tokens[at + 1].Is(Sign.Number)))
                return (at, upright, isBefore);
        }

        return null;
    }

    private static bool IsOnTheDial(in Token token) =>
        token.Is(Sign.Number | Sign.Roman) && token.Value is >= 0 and <= 60 && !token.Is(Sign.Unsure | Sign.Long | Sign.Short);

    // In Japanese "before" stands directly behind the number.
    private static bool IsBehind(ReadOnlySpan<Token> tokens, int at, Sign sign) =>
        at + 1 < tokens.Length && tokens[at + 1].Is(sign) && !tokens[at + 1].Is(Sign.Grammar | Sign.Remaining) && tokens[at + 1].First == tokens[at].Last + 1;

    // "One" is a place on the dial behind a preposition or an article, "the small one" isn't.
    private static bool IsOneOnTheDial(ReadOnlySpan<Token> tokens, int at) =>
        tokens[at].Is(Sign.Number) && tokens[at].Value == 1 && at > 0 && tokens[at - 1].Is(Sign.Article | Sign.Grammar | Sign.Past | Sign.To)
        && !tokens[at - 1].Is(Sign.Long | Sign.Short);

    private static int? NumberBehind(ReadOnlySpan<Token> tokens, int from, int most)
    {
        for (var at = from + 1; at < Math.Min(tokens.Length, from + 1 + most); at++)
        {
            if (tokens[at].Is(Sign.Number))
                return at;
        }

        return null;
    }

    private static (int, int)? Of(int hour, int minute, int last) => hour is < 0 or > 24 || minute is < -60 or > 59 ? null : (OnDial(hour, minute), last);

    private static bool IsFigures(in Token token) => token.Is(Sign.InFigures);

    private static bool IsMinutes(in Token token) => token.Value is >= 0 and < 60 && (token.Is(Sign.Fraction) || (token.Is(Sign.Number) && token.Value > 0));

    // Hours may be Roman, as on a dial: of single letters only V and X, for I is a word.
    private static bool IsHour(in Token token) =>
        (token.Is(Sign.Number) && token.Value is >= 0 and <= 24)
        || (token.Is(Sign.Roman) && (token.Is(Sign.Letter) ? token.Value is 5 or 10 : token.Value is > 1 and <= 12));

    private static bool IsAnd(in Token token) => token.Is(Sign.Past) || token.Is(Sign.Grammar);

    private static bool IsMeasure(string source, int end) => Measures.Follow(source, end);

    private static void Skip(ReadOnlySpan<Token> tokens, ref int at, Sign any)
    {
        while (at < tokens.Length && tokens[at].Is(any) && !tokens[at].Is(Sign.Number | Sign.Fraction | Sign.To | Sign.Past))
            at++;
    }

    private static bool Any(ReadOnlySpan<Token> tokens, Sign sign)
    {
        foreach (var token in tokens)
        {
            if (token.Is(sign))
                return true;
        }

        return false;
    }
}
