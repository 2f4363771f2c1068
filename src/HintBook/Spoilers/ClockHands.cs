using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Times told by where the two hands of a clock point: "the short hand on the ten, the long one on the nine". Where the hour hand stands between
/// two hours either may be named, so that both are taken.
/// </summary>
internal sealed class ClockHands(WordList words)
{
    private const int MostWords = 30;
    private const int MostBefore = 5;
    private const int MostToHand = 3;
    private readonly NumberReader numbers = new(words);

    /// <summary>The times that a text may mean, with their first and last words.</summary>
    public List<(int First, int Last, int Minutes)> In(WordReader text, string source)
    {
        List<(int, int, int)> times = [];
        var isOther = false;
        var (hour, minute) = (-1, -1);
        for (var i = 0; i < text.Words.Length; i++)
        {
            var role = words.RoleOf(text.Words[i].Id);
            // "The hand of the hours", as Arabic has it.
            if (i > 0 && (words.RoleOf(text.Words[i - 1].Id) & WordRole.Hand) != WordRole.None && (role & (WordRole.Hour | WordRole.Minute)) != WordRole.None)
                role |= (role & WordRole.Minute) != WordRole.None ? WordRole.MinuteHand : WordRole.HourHand;
            // "La aguja de las horas", عقرب الساعات.
            var label = words.Signs.HintOf(text.Words[i].Id) & (PieceHint.Hours | PieceHint.Minutes);
            if (label is PieceHint.Hours or PieceHint.Minutes && IsOfHand(text, i))
                role |= label == PieceHint.Minutes ? WordRole.MinuteHand : WordRole.HourHand;
            // "Its fellow", "the other".
            if (text.Words[i].Id >= 0 && hour >= 0 != minute >= 0 && words.Signs.IsOtherHand(text.Words[i].Id))
                (role, isOther) = (role | (hour >= 0 ? WordRole.MinuteHand : WordRole.HourHand), true);
            if ((role & WordRole.Hand) != WordRole.None && i > 0 && words.Signs.IsBoth(text.Words[i - 1].Id)
                && Pointed(text, source, i + 1, Math.Min(i + MostBefore + 2, text.Words.Length), isBehind: true) is var (value, word))
                Add(times, i - 1, word, value, value);
            if ((role & WordRole.HourHand) != WordRole.None)
                hour = i;
            if ((role & WordRole.MinuteHand) != WordRole.None)
                minute = i;
            if (hour < 0 || minute < 0 || (i != hour && i != minute) || Math.Abs(hour - minute) > MostWords)
                continue;
            var (first, second) = (Math.Min(hour, minute), Math.Max(hour, minute));
            if (Pointed(text, source, first, second, isBehind: true) is not { } one
                || Pointed(text, source, second, Math.Min(second + (MostWords / 2), text.Words.Length), isBehind: true) is not { } other)
            {
                // "Short hand a little past the four, long hand exactly on it."
                if (!isOther && Pointed(text, source, first, second, isBehind: true) is { } both && HasPronoun(text, second))
                    Add(times, first, second, both.Value, both.Value);
                if (Pointed(text, source, Math.Max(0, first - MostBefore), first, isBehind: false) is not { } before
                    || Pointed(text, source, first, second, isBehind: false) is not { } after)
                    continue;
                (one, other) = (before, after);
            }

            var (atHour, atMinute) = hour < minute ? (one.Value, other.Value) : (other.Value, one.Value);
            Add(times, Math.Min(first, one.Word), Math.Max(second, other.Word), atHour, atMinute);
        }

        return times;
    }

    // With nothing but small words between.
    private bool IsOfHand(WordReader text, int at)
    {
        for (var i = at - 1; i >= 0 && i >= at - MostToHand && (text.Words[i + 1].Gap & ~(Gap.Space | Gap.Line)) == Gap.None; i--)
        {
            var role = words.RoleOf(text.Words[i].Id);
            if ((role & WordRole.Hand) != WordRole.None)
                return true;
            if ((role & (WordRole.Determiner | WordRole.Preposition)) == WordRole.None)
                return false;
        }

        return false;
    }

    private static void Add(List<(int, int, int)> times, int first, int last, int hour, int minute)
    {
        if (hour is < 0 or > 12 || minute is < 0 or > 59)
            return;
        var minutes = minute <= 12 ? minute % 12 * 5 : minute;
        times.Add((first, last, (hour * 60) + minutes));
        if (minutes > 0)
            times.Add((first, last, ((hour - 1) * 60) + minutes));
    }

    // The first number behind a hand, or the last one before it.
    private (int Value, int Word)? Pointed(WordReader text, string source, int from, int to, bool isBehind)
    {
        (int, int)? found = null;
        for (var i = from; i < to; i++)
        {
            var at = i;
            if (ValueAt(text, source, ref at) is not { } value)
                continue;
            found = (value, i);
            if (isBehind)
                return found;
            i = at - 1;
        }

        return found;
    }

    private bool HasPronoun(WordReader text, int at)
    {
        for (var i = at + 1; i < Math.Min(text.Words.Length, at + MostBefore + 2); i++)
        {
            if (words.Signs.IsPronoun(text.Words[i].Id))
                return true;
        }

        return false;
    }

    // "Two-thirds of the way": no place on the dial.
    private bool IsFraction(WordReader text, int next) =>
        next < text.Words.Length
        && (text.Words[next].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None
        && ((words.Signs.PlaceOf(text.Words[next].Id) > 2 && text.Bare(text.Words[next])[^1] == 's')
            || (words.RoleOf(text.Words[next].Id) & (WordRole.Quarter | WordRole.Third)) != WordRole.None);

    // "The short one": the word for one is none.
    private bool IsPronoun(WordReader text, int at) =>
        ((words.RoleOf(text.Words[at].Id) & WordRole.Determiner) != WordRole.None
            && at + 1 < text.Words.Length && (text.Words[at + 1].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None)
        || (at > 0 && words.FigureOf(text.Words[at].Id) is { Value: 1 }
            && (words.RoleOf(text.Words[at - 1].Id) & (WordRole.HourHand | WordRole.MinuteHand)) != WordRole.None);

    private int? ValueAt(WordReader text, string source, ref int at)
    {
        var word = text.Words[at];
        if (numbers.IsNumber(text, at) && !IsPronoun(text, at))
            return numbers.Read(text, ref at, out var number) && !IsFraction(text, at) ? number : null;
        at++;
        if (words.Signs.HourOf(word.Id) is > 0 and var hour)
            return at < text.Words.Length && words.Signs.IsTen(text.Words[at].Id) ? hour + 10 : hour;
        if (words.Signs.IsDown(word.Id))
            return 6;
        // "Up to eleven" is no twelve.
        if (words.Signs.IsUp(word.Id) && !(at < text.Words.Length && text.Bare(text.Words[at]) is "to"))
            return 12;
        return Roman.IsCapital(source[word.Start]) && Roman.ValueOf(text.Bare(word)) is > 0 and <= 12 and var roman ? roman : null;
    }
}
