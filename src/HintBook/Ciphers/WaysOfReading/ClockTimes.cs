using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>A time of day where it stands in a text.</summary>
/// <param name="Written">As it is written.</param>
/// <param name="Hour">From 0 to 23; from 1 to 12 as it stands where nothing says which half of the day.</param>
/// <param name="Minute">From 0 to 59.</param>
/// <param name="IsOfHalf">Whether something says which half of the day it is.</param>
internal sealed record ClockTime(string Written, int Hour, int Minute, bool IsOfHalf)
{
    /// <summary>Its hour on a clock with hands: 1 to 12.</summary>
    public int HourOnClock => ((Hour + 11) % 12) + 1;
}

/// <summary>
/// Finds times of day in six languages: <c>15:30</c>, <c>10h45</c>, <c>a quarter to eleven</c>, <c>Viertel vor elf</c>, <c>onze heures moins le quart</c>,
/// <c>las once menos cuarto</c>, <c>الحادية عشرة إلا ربعا</c>, <c>十時四十五分</c>, and where the hands of a clock stand.
/// </summary>
internal sealed class ClockTimes
{
    private const int MostBetween = 3;
    private readonly string text;
    private readonly Token[] tokens;
    private readonly ClockWords words;

    private ClockTimes(string text, Token[] tokens, ClockWords words) => (this.text, this.tokens, this.words) = (text, tokens, words);

    /// <summary>Every time in a text, in order, in the language in which most of the text is times.</summary>
    public static IReadOnlyList<ClockTime> In(string text)
    {
        var all = Token.In(text);
        return ClockWords.All.Select(language => new ClockTimes(text, all, language).All()).Append(JapaneseTimes.In(text))
            .MaxBy(times => times.Sum(time => time.Written.Length))!;
    }

    private List<ClockTime> All()
    {
        var times = new List<ClockTime>();
        for (var at = 0; at < tokens.Length;)
        {
            if ((InFigures(at) ?? FromMinutes(at) ?? FromHour(at)) is { } read && Of(at, read) is var (time, end))
            {
                times.Add(time);
                at = end;
            }
            else
            {
                at++;
            }
        }

        return times.Count == 0 && Hands() is { } hands ? [hands] : times;
    }

    private bool Has(int at, ClockRole role) => at < tokens.Length && (words.RoleOf(tokens[at].Text) & role) != ClockRole.None;

    private int Past(int at, ClockRole role)
    {
        var end = at;
        while (end < at + MostBetween && Has(end, role))
            end++;
        return end;
    }

    // With the half of the day that may stand behind it.
    private (ClockTime, int)? Of(int first, Read read)
    {
        var (hour, minute, end) = (read.Minutes / 60, read.Minutes % 60, read.End);
        var behind = end;
        while (behind < end + MostBetween && Has(behind, ClockRole.Between) && tokens[behind].Between is "" or "," or "'" or "’")
            behind++;
        var half = behind < tokens.Length && tokens[behind].Between is "" or "," or "'" or "’" ? words.RoleOf(tokens[behind].Text) & HalfOfDay : ClockRole.None;
        // “P.m.” is two tokens.
        if (half == ClockRole.None && end + 1 < tokens.Length && tokens[end] is { Text: "a" or "p", Between: "" }
            && tokens[end + 1] is { Text: "m", Between: "." })
            (half, behind) = (tokens[end].Text == "a" ? ClockRole.Morning : ClockRole.Afternoon, end + 1);
        if (half == ClockRole.None && !read.IsMarked)
            return null;
        if (half != ClockRole.None)
        {
            // “Après-midi”.
            end = behind + (Has(behind + 1, ClockRole.Noon) && tokens[behind].Text == "apres" ? 2 : 1);
            if (hour > 12 && !(read.IsMarked && half != ClockRole.Morning))
                return null;
            if (hour is 0 && !read.IsNamed)
                return null;
            var isLate = half == ClockRole.Afternoon || (half == ClockRole.Night && hour is >= 6 and < 12);
            hour = hour > 12 || read.IsNamed ? hour : (hour % 12) + (isLate ? 12 : 0);
        }

        return hour > 24 ? null
            : (new ClockTime(text[tokens[first].Start..tokens[end - 1].End], hour % 24, minute, half != ClockRole.None || hour is 0 or > 12), end);
    }

    private const ClockRole HalfOfDay = ClockRole.Morning | ClockRole.Afternoon | ClockRole.Night;

    // “15:30”, “3.30”, “10h45”, “10 h”.
    private Read? InFigures(int at)
    {
        if (Figures(at, 2) is not { } hour || (at > 0 && tokens[at - 1].IsNumber && tokens[at].Between is ":" or "." or "-" or "/"))
            return null;
        var hasH = at + 1 < tokens.Length && tokens[at + 1].Text is "h" && tokens[at + 1].Between.Length == 0;
        var next = at + (hasH ? 2 : 1);
        var isParted = next < tokens.Length && (hasH ? tokens[next].Between.Length == 0 : IsBehind(next, ":."));
        if (isParted && tokens[next].End - tokens[next].Start == 2 && Figures(next, 2) is < 60 and { } minute)
        {
            // A date goes on.
            if (IsBehind(next + 1, ":.-"))
                return null;
            return new Read((hour * 60) + minute, Past(next + 1, ClockRole.Hour), IsMarked: true);
        }

        return hasH && !(isParted && tokens[next].IsNumber) ? new Read(hour * 60, next, IsMarked: true) : null;
    }

    // Whether figures stand right behind one of some marks, and that right behind the figures before.
    private bool IsBehind(int at, string marks) => at < tokens.Length && tokens[at] is { IsNumber: true, Between: [var mark] }
        && marks.Contains(mark, StringComparison.Ordinal) && tokens[at].Start == tokens[at - 1].End + 1;

    // “A quarter to eleven”, “fünf vor halb elf”, “halb elf”, “half eleven”.
    private Read? FromMinutes(int at)
    {
        if (Amount(Past(at, ClockRole.Article)) is not { } amount)
            return null;
        var next = amount.End;
        if (Has(next, ClockRole.To | ClockRole.Past))
        {
            var isTo = Has(next, ClockRole.To);
            if (!amount.IsMarked && (Has(next, ClockRole.Named) || amount.Minutes % 5 != 0 || amount.Minutes > 25))
                return null;
            var half = words.IsHalfOfNext && Has(next + 1, ClockRole.Half) ? 30 : 0;
            if (HourAt(Past(next + (half > 0 ? 2 : 1), ClockRole.Article)) is not { } from || (isTo && amount is { IsMarked: true, Minutes: 30 }))
                return null;
            return Before(from, half + (isTo ? amount.Minutes : -amount.Minutes));
        }

        if (!amount.IsFraction || (!words.IsHalfOfNext && !(words.HasBareMinutes && amount.Minutes == 30)) || HourAt(next) is not { } hour)
            return null;
        return words.IsHalfOfNext ? Before(hour, 60 - amount.Minutes) : hour with { Minutes = hour.Minutes + amount.Minutes, IsMarked = true };
    }

    // A quarter to one is 12:45, a quarter to midnight 23:45.
    private static Read Before(Read hour, int minutes)
    {
        var time = hour.Minutes - minutes;
        return hour with { Minutes = time < 0 ? time + (24 * 60) : time < 60 && minutes > 0 ? time + (12 * 60) : time, IsMarked = true };
    }

    // “Onze heures moins le quart”, “las once y media”, “ten forty-five”, “elf Uhr”, “noon”.
    private Read? FromHour(int at)
    {
        // “Une heure” is one o'clock, and “une” an article as well.
        var start = NumberAt(at) is null ? Past(at, ClockRole.Article) : at;
        var isLed = Has(start, ClockRole.Hour);
        if (HourAt(Past(start, ClockRole.Hour)) is not { } hour)
            return null;
        hour = hour with { IsMarked = hour.IsMarked || isLed };
        var next = hour.End;
        if (Has(next, ClockRole.Minus))
        {
            return Amount(Past(next + 1, ClockRole.Article)) is { } off && (off.IsMarked || hour.IsMarked || off.Minutes % 5 == 0)
                ? Before(hour, off.Minutes) with { End = off.End }
                : null;
        }

        var hasAnd = Has(next, ClockRole.And) || (words.HasPrefixes && next < tokens.Length && tokens[next].Text[0] == 'و');
        var from = Has(next, ClockRole.And) ? next + 1 : next;
        if (from < tokens.Length && tokens[from].IsJoined && Amount(Past(from, ClockRole.Article)) is { } more)
        {
            // “Seven oh five” and “seven thirty” are times, “five two” is none.
            var isSaid = words.HasBareMinutes && !hour.IsMarked && !tokens[at].IsNumber && !tokens[from].IsNumber
                && (more is { IsMarked: false, Minutes: >= 10 } || tokens[from].Text is "oh" or "o");
            var isBehindAnd = hasAnd && (more.IsMarked || (at < start && more.Minutes % 5 == 0 && !more.IsFraction));
            if (isSaid || isBehindAnd || (hour.IsMarked && (more.IsFraction ? hasAnd : !hasAnd || more.IsMarked)))
                return hour with { Minutes = hour.Minutes + more.Minutes, End = more.End, IsMarked = true };
        }

        return hour;
    }

    private Read? HourAt(int at)
    {
        if (Has(at, ClockRole.Noon | ClockRole.Midnight) && (at == 0 || tokens[at - 1].Text != "apres"))
            return new Read(Has(at, ClockRole.Noon) ? 12 * 60 : 0, at + 1, IsMarked: true) { IsNamed = true };
        if (at >= tokens.Length || (NumberAt(at) ?? words.HourAt?.Invoke(tokens, at)) is not (var hour and <= 24, var taken))
            return null;
        var next = at + taken;
        var end = Has(next, ClockRole.Hour) && tokens[next].Between is "" or "'" or "’" ? Past(next, ClockRole.Hour) : next;
        // “A las once en punto”, “um elf Uhr”: an hour without minutes is a time only beside a word that says so.
        if (end == next && Has(next, ClockRole.Between) && Has(next + 1, ClockRole.Hour) && tokens[next + 1].Text == "punto")
            end = next + 2;
        return new Read(hour * 60, end, IsMarked: end > next);
    }

    private Read? Amount(int at)
    {
        if (at >= tokens.Length)
            return null;
        var fraction = (words.RoleOf(tokens[at].Text) & (ClockRole.Quarter | ClockRole.Half | ClockRole.ThreeQuarters | ClockRole.Third)) switch
        {
            ClockRole.Quarter => 15,
            ClockRole.Half => 30,
            ClockRole.ThreeQuarters => 45,
            ClockRole.Third => 20,
            _ => 0,
        };
        if (fraction > 0)
            return new Read(fraction, at + 1, IsMarked: true) { IsFraction = true };
        if (NumberAt(at) is not (var number and < 60, var taken))
        {
            // “Seven oh five”.
            return words.HasBareMinutes && tokens[at].Text is "oh" or "o" && at + 1 < tokens.Length && tokens[at + 1].IsJoined
                && NumberAt(at + 1) is ( > 0 and < 10 and var one, 1)
                ? new Read(one, at + 2, IsMarked: true)
                : null;
        }

        var end = at + taken;
        if (number == 3 && Has(end, ClockRole.Quarter))
            return new Read(45, end + 1, IsMarked: true) { IsFraction = true };
        return Has(end, ClockRole.Minute) ? new Read(number, end + 1, IsMarked: true) : new Read(number, end, IsMarked: false);
    }

    private (int Number, int Words)? NumberAt(int at) => Figures(at, 2) is { } figures ? (figures, 1) : words.NumberAt(tokens, at);

    private int? Figures(int at, int most) => at < tokens.Length && tokens[at] is { IsNumber: true } token && token.Text.Length <= most
        ? int.Parse(token.Text, NumberStyles.None, CultureInfo.InvariantCulture)
        : null;

    // “The small hand at 4, the big hand at 9.”
    private ClockTime? Hands()
    {
        if (!Enumerable.Range(0, tokens.Length).Any(at => Has(at, ClockRole.Hand)))
            return null;
        var (hour, minute) = (HandAt(ClockRole.Small, ClockRole.Big), HandAt(ClockRole.Big, ClockRole.Small));
        if (hour is not (var hours and >= 1 and <= 12, var one) || minute is not (var five and >= 1 and <= 12, var other) || one == other)
            return null;
        var (first, last) = (Math.Min(one, other), Math.Max(one, other));
        return new ClockTime(text[tokens[first].Start..tokens[last].End], hours, five * 5 % 60, IsOfHalf: false);
    }

    // The first number behind the word for a hand, before the other hand is named.
    private (int Number, int At)? HandAt(ClockRole hand, ClockRole other)
    {
        for (var named = 0; named < tokens.Length; named++)
        {
            if (!Has(named, hand))
                continue;
            var at = named + 1;
            for (; at < tokens.Length && !Has(at, other); at++)
            {
                // “The long one”.
                if (NumberAt(at) is var (number, _) && !Has(at, ClockRole.Article) && (at > named + 1 || tokens[at].Text != "one"))
                    return (number, at);
                if (Has(at, ClockRole.Noon))
                    return (12, at);
            }

            named = at - 1;
        }

        return null;
    }

    // Minutes since midnight, or an amount of them; where its last token ends; whether it is a time, or an amount of minutes, beyond doubt.
    private sealed record Read(int Minutes, int End, bool IsMarked)
    {
        public bool IsFraction { get; init; }

        public bool IsNamed { get; init; }
    }
}
