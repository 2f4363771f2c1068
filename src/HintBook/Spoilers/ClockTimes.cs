using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes that are times of a clock, however people say them: <c>a quarter to eleven</c>, <c>10h45</c>, <c>22.45</c>, <c>halb elf</c>. A dial
/// has twelve hours, so that 22:45 is 10:45. Knows nothing of what a lock is: a code of four figures that could be a time is met less surely.
/// </summary>
internal sealed class ClockTimes(WordList words)
{
    private const int HalfDay = 12 * 60;
    private const int MostApart = 14;
    private const int MostBesides = 5;
    private static readonly System.Buffers.SearchValues<char> Money = System.Buffers.SearchValues.Create("$€£¥₤");
    private readonly Dictionary<int, List<(int Secret, int Minutes, bool IsTime)>> codes = [];
    private readonly NumberReader numbers = new(words);
    private readonly ClockHands hands = new(words);
    private readonly ClockLabels labels = new(words);
    private readonly bool hasArticles = words.Language.Clock.HasArticles;
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;
    private readonly bool isHalfOfNext = words.Language.Clock.HalfOfNext;
    private readonly bool hasMinutesBehind = words.Language.Clock.HasMinutesBehind;
    private readonly bool hasHours = words.Language.Clock.Hours.Length > 0;
    private readonly List<(int Minutes, int First, int Last)> hours = [];
    private readonly List<(int Minutes, int First, int Last)> spans = [];
    private readonly List<(int First, int Last)> used = [];
    private int begin;
    private string read = "";

    /// <summary>Adds a code, if it could be a time.</summary>
    public void Add(int secret, string answer)
    {
        if (TimeOf(answer) is not { } minutes)
            return;
        if (!codes.TryGetValue(minutes % HalfDay, out var here))
            codes[minutes % HalfDay] = here = [];
        here.Add((secret, minutes, !answer.All(char.IsAsciiDigit)));
    }

    /// <summary>Minutes since midnight; null for what is no time.</summary>
    public static int? TimeOf(string answer)
    {
        var text = answer.Trim();
        var parting = text.IndexOfAny([':', '.', 'h']);
        var (hours, minutes) = parting < 0 ? (text.Length == 4 ? text[..2] : "", text.Length == 4 ? text[2..] : "") : (text[..parting], text[(parting + 1)..]);
        return minutes.Length == 2 && hours.Length is 1 or 2 && (hours + minutes).All(char.IsAsciiDigit) && int.Parse(hours) < 24 && int.Parse(minutes) < 60
            ? (int.Parse(hours) * 60) + int.Parse(minutes)
            : null;
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        var (hasHands, seen, labelled) = (false, WordRole.None, PieceHint.None);
        read = source;
        hours.Clear();
        spans.Clear();
        used.Clear();
        for (var i = 0; i < text.Words.Length; i++)
        {
            var role = words.RoleOf(text.Words[i].Id);
            labelled |= words.Signs.HintOf(text.Words[i].Id);
            // "The big one on the seven, the small one past the eight."
            if ((role & (WordRole.Hour | WordRole.Minute)) == WordRole.None)
                seen |= role & (WordRole.HourHand | WordRole.MinuteHand);
            hasHands |= (role & WordRole.Hand) != WordRole.None || seen == (WordRole.HourHand | WordRole.MinuteHand);
            if (numbers.IsNumber(text, i) || RomanHour(text, source, i) > 0
                || (role & Fractions) != WordRole.None || (hasHours && words.Signs.HourOf(text.Words[i].Id) > 0))
                At(text, source, i, found);
        }

        Reckoned(text, found);
        if ((labelled & (PieceHint.Hours | PieceHint.Minutes)) == (PieceHint.Hours | PieceHint.Minutes))
        {
            foreach (var (first, last, minutes) in labels.In(text, source))
                Tell(text, first, last, minutes, isSure: false, found);
        }

        if (hasHands)
        {
            foreach (var (first, last, minutes) in hands.In(text, source))
                Tell(text, first, last, minutes, isSure: false, found);
        }
    }

    private const WordRole Fractions = WordRole.Half | WordRole.Quarter | WordRole.ThreeQuarters | WordRole.Third | WordRole.Twelve;

    private void At(WordReader text, string source, int first, List<Mention> found)
    {
        var next = begin = first;
        if (IsNoTime(text, source, first))
            return;
        var isFour = text.Words[first].Length == 4 && char.IsAsciiDigit(text.Bare(text.Words[first])[0]);
        if (isFour && Has(text, first + 1, WordRole.Hour | WordRole.Lasting) && numbers.Read(text, ref next, out var four)
            && four / 100 < 24 && four % 100 < 60)
        {
            Tell(text, first, next, ((four / 100) * 60) + (four % 100), isSure: false, found);
            return;
        }

        next = first;
        if (Minutes(text, ref next, out var minutes, out var isFraction, out var isMarked))
        {
            if (isMarked || (isFraction && minutes != 30))
                spans.Add((minutes, first, next - 1));
            FromAnHour(text, first, next, minutes, isFraction, isMarked, found);
            if (isFraction)
                BeforeAnHour(text, first, next, minutes, found);
        }

        next = first;
        if (!Hour(text, ref next, out var hour, out var hasMark))
            return;
        if (hour > 0)
            hours.Add((hour * 60, first, next - 1));
        Hours(text, first, next, hour, hasMark, found);
    }

    // "$4.20", "voted five to two".
    private bool IsNoTime(WordReader text, string source, int first)
    {
        var start = text.Words[first].Start;
        if (start > 0 && Money.Contains(source[start - 1]))
            return true;
        for (var i = Math.Max(0, first - 2); i < Math.Min(text.Words.Length, first + MostBesides); i++)
        {
            if (text.Words[i].Id >= 0 && words.Signs.IsNoTime(text.Words[i].Id))
                return true;
            // Hours in the plural last: ثماني ساعات وأربعين دقيقة.
            if (hasPrefixes && i >= first && text.Bare(text.Words[i]) is "ساعات")
                return true;
        }

        return false;
    }

    // "In five minutes it is half past seven", "from four o'clock, on for a third of an hour".
    private void Reckoned(WordReader text, List<Mention> found)
    {
        var count = hours.Count;
        foreach (var (minutes, first, last) in spans)
        {
            if (IsUsed(first, last))
                continue;
            for (var i = 0; i < count; i++)
            {
                var (hour, begins, ends) = hours[i];
                if ((begins <= last && first <= ends) || Math.Max(begins - last, first - ends) > MostApart)
                    continue;
                var (from, to) = (Math.Min(first, begins), Math.Max(last, ends));
                if (IsParted(text, from, to))
                    continue;
                if (HasCue(text, from, to, static (signs, word) => signs.IsLater(word)))
                    Tell(text, from, to, hour + minutes, isSure: false, found);
                if (HasCue(text, from, to, static (signs, word) => signs.IsEarlier(word)))
                    Tell(text, from, to, hour - minutes, isSure: false, found);
            }
        }
    }

    private bool HasCue(WordReader text, int from, int to, Func<WordSigns, int, bool> isOne)
    {
        for (var i = Math.Max(0, from - 2); i < Math.Min(text.Words.Length, to + (words.Language.HasNoSpaces ? 3 * MostBesides : MostBesides)); i++)
        {
            if (text.Words[i].Id >= 0 && isOne(words.Signs, text.Words[i].Id))
                return true;
        }

        return false;
    }

    // "A quarter to eleven", "twenty past ten", "fünf vor halb elf".
    private void FromAnHour(WordReader text, int first, int next, int minutes, bool isFraction, bool isMarked, List<Mention> found)
    {
        var sign = 0;
        for (; Has(text, next, WordRole.Before | WordRole.After); next++)
            sign = sign != 0 ? sign : Has(text, next, WordRole.After) ? 1 : -1;
        if (sign == 0 || (isFraction && !isMarked && minutes == 30 && sign < 0))
            return;
        // "Fünf vor halb elf", "five past half seven", "cinq minutes avant la demie de cinq heures".
        while (hasArticles && Has(text, next, WordRole.Determiner) && Has(text, next + 1, WordRole.Half))
            next++;
        var half = !isFraction && Has(text, next, WordRole.Half) ? isHalfOfNext ? 30 : -30 : 0;
        if (half != 0)
            next++;
        while (half < 0 && Has(text, next, WordRole.After | WordRole.Preposition))
            next++;
        if (!Hour(text, ref next, out var hour, out var hasMark))
            return;
        // مضى ربع ساعة على الثالثة: a length of time, whatever stands behind it.
        if (!isMarked || !(isFraction || hasPrefixes))
            Use(first, next - 1);
        Tell(text, first, next - 1, (hour * 60) - half + (sign * minutes), isFraction || isMarked || hasMark, found);
    }

    // The quarter of "a quarter past ten" is no length of time that is added to another hour.
    private void Use(int first, int last) => used.Add((first, last));

    private bool IsUsed(int first, int last) => used.Exists(one => one.First <= first && last <= one.Last);

    private static bool IsParted(WordReader text, int from, int to)
    {
        for (var i = from + 1; i <= to; i++)
        {
            if ((text.Words[i].Gap & Gap.Paragraph) != Gap.None)
                return true;
        }

        return false;
    }

    // "Half ten" is 10:30 in English, "halb elf" in German; "viertel elf" is 10:15, "drei viertel elf" 10:45.
    private void BeforeAnHour(WordReader text, int first, int next, int minutes, List<Mention> found)
    {
        if ((minutes == 30 || isHalfOfNext) && !Has(text, next, WordRole.Determiner) && Hour(text, ref next, out var hour, out _))
            Tell(text, first, next - 1, (hour * 60) + minutes - (isHalfOfNext ? 60 : 0), isSure: isHalfOfNext, found);
    }

    // "Ten forty-five", "dix heures et demie", "las once menos cuarto", "10h45", "noon".
    private void Hours(WordReader text, int first, int next, int hour, bool hasMark, List<Mention> found)
    {
        if (hasMark)
            Tell(text, first, next - 1, hour * 60, isSure: true, found);
        var after = next;
        if (hasMinutesBehind && Has(text, after, WordRole.Before) && ++after < text.Words.Length
            && Minutes(text, ref after, out var off, out var isPart, out var isMarked))
        {
            if (isPart && !isMarked)
                Use(first, after - 1);
            Tell(text, first, after - 1, (hour * 60) - off, isPart || isMarked || hasMark, found);
        }

        var and = Has(text, next, WordRole.And);
        after = and ? next + 1 : next;
        var start = after;
        // 七時を二十分まわったころ.
        if (words.Language.HasNoSpaces && hasMark && after + 1 < text.Words.Length && text.Bare(text.Words[after]) is "を" && numbers.IsNumber(text, after + 1))
            after++;
        if (after >= text.Words.Length || (text.Words[after].Gap & Gap.Paragraph) != Gap.None)
            return;
        if (!Minutes(text, ref after, out var minutes, out var isFraction, out var hasMinute) || HasLasting(text, after))
            return;
        var isSeparated = IsSeparated(text, next);
        // "Trois heures, cinq si vous êtes musicien": a comma parts hours from what is no minutes of theirs.
        if (!isSeparated && !hasMinute && (text.Words[start].Gap & (Gap.Comma | Gap.Stop)) != Gap.None)
            return;
        if (isSeparated && !hasMark && Has(text, after, WordRole.Unit))
            return;
        if (and && !hasMinutesBehind && !isFraction && !hasMark && !hasMinute)
            return;
        if (!isFraction && !hasMark && !isSeparated && !(and && hasMinute) && !(and && hasMinutesBehind) && !IsSpokenMinutes(text, start, minutes))
            return;
        if (hasMinutesBehind && !and && Has(text, after, WordRole.Before) && hasMinute)
            Tell(text, first, after, (hour * 60) - minutes, isSure: true, found);
        var whole = (hour * 60) + minutes;
        // "In einer Viertelstunde" is no hour and a quarter.
        if (isFraction && !hasMinute && (and || hasMark))
            Use(first, after - 1);
        Tell(text, first, after - 1, whole, isFraction || hasMark || hasMinute, found);
        if (!isFraction || !hasMinutesBehind)
            return;
        var sign = Has(text, after, WordRole.Before) ? -1 : 1;
        if (sign < 0)
            after++;
        if (after < text.Words.Length && Minutes(text, ref after, out var more, out isFraction, out hasMinute) && hasMinute)
            Tell(text, first, after - 1, whole + (sign * more), isSure: true, found);
    }

    // Two figures behind a point or a colon; "22:45" is read by others as well, but not as 10:45.
    private static bool IsSeparated(WordReader text, int at) =>
        at < text.Words.Length && text.Words[at].Gap == Gap.Stop && text.Words[at].Length == 2 && char.IsAsciiDigit(text.Bare(text.Words[at])[0]);

    private bool IsSpokenMinutes(WordReader text, int at, int minutes) =>
        !char.IsAsciiDigit(text.Bare(text.Words[at])[0])
        && (minutes >= 10 || text.Words[at].Id >= 0 && words.FigureOf(text.Words[at].Id) is { Value: 0 })
        && (text.Words[at].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None;

    private bool HasLasting(WordReader text, int at) => Has(text, at, WordRole.Lasting);

    private bool Hour(WordReader text, ref int at, out int hour, out bool hasMark)
    {
        (hour, hasMark) = (0, false);
        if (hasArticles)
        {
            while (Has(text, at, WordRole.Determiner | WordRole.Hour) && !numbers.IsNumber(text, at))
                at++;
        }

        if (at >= text.Words.Length || (at > begin && (text.Words[at].Gap & Gap.Paragraph) != Gap.None))
            return false;
        var id = text.Words[at].Id;
        if (Has(text, at, WordRole.Twelve))
        {
            (hour, hasMark) = (12, true);
            at++;
            return true;
        }

        if (words.Signs.HourOf(id) is > 0 and var said)
        {
            (hour, hasMark) = (said, true);
            at++;
            if (at < text.Words.Length && words.Signs.IsTen(text.Words[at].Id))
            {
                hour += 10;
                at++;
            }

            return true;
        }

        if (RomanHour(text, read, at) is > 0 and var roman)
            (hour, at) = (roman, at + 1);
        else if (!numbers.Read(text, ref at, out hour) || hour > 24)
            return false;
        if (Has(text, at, WordRole.Hour))
        {
            hasMark = true;
            at++;
        }

        return !HasLasting(text, at) || hasMark;
    }

    // "VIII and twenty minutes": as the dial has it. A lone I is a word.
    private static int RomanHour(WordReader text, string source, int at)
    {
        if (at >= text.Words.Length)
            return 0;
        var word = text.Words[at];
        return word.Length < 5 && source[word.Start] is 'I' or 'V' or 'X' && source.AsSpan(word.Start, word.End - word.Start) is var written
            && !written.ContainsAnyExcept('I', 'V', 'X') && written is not "I" && Roman.ValueOf(text.Bare(word)) is > 0 and <= 12 and var hour
            ? hour
            : 0;
    }

    // An amount of minutes: a fraction of the hour, or a number.
    private bool Minutes(WordReader text, ref int at, out int minutes, out bool isFraction, out bool isMarked)
    {
        (minutes, isFraction, isMarked) = (0, true, false);
        // "A third" is an ordinal as well.
        var needsHour = false;
        while (hasArticles && Has(text, at, WordRole.Determiner) && !numbers.IsNumber(text, at))
            at++;
        if (numbers.Read(text, ref at, out var number))
        {
            if (number == 0 && numbers.Read(text, ref at, out var less) && less < 10)
                number = less;
            // "Five and twenty past".
            if (number is > 0 and < 10 && at + 1 < text.Words.Length && words.Language == English.Language && Has(text, at, WordRole.And)
                && words.FigureOf(text.Words[at + 1].Id) is { Kind: FigureKind.Tens, Value: var tens })
                (number, at) = (number + tens, at + 2);
            if (number == 3 && Has(text, at, WordRole.Quarter))
                number = 45;
            else if (!(number == 1 && Has(text, at, WordRole.Quarter)))
                isFraction = false;
            else
                number = 15;
            if (isFraction)
                at++;
            minutes = number;
            if (!isFraction && Has(text, at, WordRole.Minute))
            {
                isMarked = true;
                at++;
            }

            if (!isFraction)
                return number < 60;
        }
        else if (Has(text, at, WordRole.Half | WordRole.Quarter | WordRole.ThreeQuarters | WordRole.Third))
        {
            minutes = Has(text, at, WordRole.Half) ? 30 : Has(text, at, WordRole.Quarter) ? 15 : Has(text, at, WordRole.Third) ? 20 : 45;
            needsHour = Has(text, at, WordRole.Third) && words.Signs.PlaceOf(text.Words[at].Id) > 0;
            at++;
        }
        else
        {
            return false;
        }

        // "Of an hour".
        var next = at;
        while (next < at + 2 && Has(text, next, WordRole.Determiner | WordRole.Before | WordRole.Preposition) && !numbers.IsNumber(text, next))
            next++;
        if (HasLasting(text, next) || (hasArticles && Has(text, next, WordRole.Hour)))
            (at, isMarked) = (next + 1, true);
        return isMarked || !needsHour;
    }

    private bool Has(WordReader text, int at, WordRole role) =>
        at < text.Words.Length
        && (words.RoleOf(text.Words[at].Id) & role) != WordRole.None
        && (at == begin || (text.Words[at].Gap & Gap.Paragraph) == Gap.None);

    private void Tell(WordReader text, int first, int last, int minutes, bool isSure, List<Mention> found)
    {
        if (first < last || Has(text, first, Fractions))
            hours.Add((minutes, first, last));
        if (!codes.TryGetValue(((minutes % HalfDay) + HalfDay) % HalfDay, out var here))
            return;
        foreach (var (secret, time, isTime) in here)
        {
            var sure = isSure && isTime && (minutes <= 13 * 60 || minutes == time);
            found.Add(new(secret, text.Words[first].Start, text.Words[last].End, sure ? Sureness.Sure : Sureness.Likely));
        }
    }
}
