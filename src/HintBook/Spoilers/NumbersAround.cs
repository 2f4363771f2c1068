using System.Buffers;
using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Tells years, measures, numbers of things and counts from codes by what stands around them. A number that is set ("turn it to 240") stays a code: most of
/// what stands around says nothing in a sentence that speaks of a lock.
/// </summary>
internal sealed class NumbersAround
{
    private const int Around = 120;
    private const int ShortestAbbreviated = 4;
    private const int ShortYear = 4;
    private static readonly SearchValues<char> Points = SearchValues.Create(".,:٫");
    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789٠١٢٣٤٥٦٧٨٩");
    private static readonly SearchValues<char> DatePieces = SearchValues.Create("0123456789./");
    private static readonly ConcurrentDictionary<string, NumbersAround> Made = new(StringComparer.Ordinal);

    // Parts of number words from ten upwards.
    private static readonly string[] InWords =
        ["teen ", "teen-", "twenty ", "hundred", "thousand", "hundert", "tausend", "mil ", "mille", "cent", "cien", "千", "百", "ألف", "آلاف", "مئة", "مائة"];

    private readonly Regex? years;
    private readonly Regex? maybeYears;
    private readonly Regex? afterYears;
    private readonly Regex? symbols;
    private readonly Regex? units;
    private readonly Regex? things;
    private readonly Regex? counted;
    private readonly Regex? beforeCounted;
    private readonly Regex? before;
    private readonly Regex? after;
    private readonly Regex? standards;
    private readonly Regex? places;
    private readonly Regex? afterPlaces;
    private readonly Regex? phones;
    private readonly Regex? setting;
    private readonly Regex? telling;
    private readonly Regex? never;
    private readonly Regex? spans;
    private readonly Regex? afterSpans;
    private readonly Regex? instruments;
    private readonly Regex? showing;
    private readonly Regex? beforeDates;
    private readonly Regex? sold;
    private readonly bool isCounted;

    private NumbersAround(CommonNumbers? known)
    {
        symbols = Begins(@"[\s\u00A0\u202F-]?(?:" + CommonNumbers.Symbols + @")(?![\p{L}\d])", RegexOptions.None);
        standards = Ends(CommonNumbers.Numbering, RegexOptions.None);
        if (known is null)
            return;
        (years, maybeYears, afterYears) = (Ends(known.Years), Ends(known.MaybeYears), Begins(known.AfterYears));
        units = Begins(@"[\s\u00A0\u202F-]?(?:" + known.Units + @")(?![a-zà-ÿ\d])");
        things = Begins(@"[\s\u00A0\u202F-]?(?:" + known.Things + @")(?![a-zà-ÿ\d])");
        (counted, beforeCounted) = (Begins(known.Counted), Ends(known.BeforeCounted));
        isCounted = known.BeforeCounted.Length == 0;
        before = Ends(Either(known.Numbers, known.Counts));
        after = Begins(Either(known.AfterNumbers, known.AfterCounts));
        (places, afterPlaces) = (Ends(known.Places), Begins(known.AfterPlaces));
        phones = Ends(known.Phones);
        (setting, telling) = (Of(known.Setting), Of(known.Telling));
        (never, beforeDates, sold) = (Ends(known.Never), Ends(known.BeforeDates), Begins(known.Sold));
        (spans, afterSpans) = (Ends(known.Spans), Begins(known.AfterSpans));
        (instruments, showing) = (Of(known.Instruments), Of(known.Showing));
    }

    /// <summary>What is known of numbers in a language.</summary>
    public static NumbersAround For(SearchLanguage language) =>
        Made.GetOrAdd(language.Code, static code => new(CommonNumbers.Of(code)));

    /// <summary>What a number is by what stands around it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="mention">Where the number stands.</param>
    /// <param name="isTime">Whether it is a time, whose minutes a point may part from the hour.</param>
    public Measured Of(string text, in Mention mention, bool isTime)
    {
        var number = text.AsSpan(mention.Start, mention.End - mention.Start);
        var isFigures = IsFigures(number, out var figures, out var value);
        var left = text.AsSpan(Math.Max(0, mention.Start - Around), Math.Min(Around, mention.Start));
        if (!isTime && IsDate(number) && Has(beforeDates, left) && !IsSet(text, mention))
            return Measured.Surely;
        if (!isTime && (IsDate(number) || (IsWholeDate(number) && Has(beforeDates, left) && !IsSet(text, mention))
            || (IsDecimal(number) && !IsSet(text, mention))))
            return Measured.Likely;
        var right = text.AsSpan(mention.End, Math.Min(Around, text.Length - mention.End));
        var isNumber = isFigures || IsInWords(number);
        // "Room 413", "room four thirteen", "we've lived at 642": wherever a door opens, it may be that of a house.
        if ((isNumber || HasSeveralPieces(number)) && !Has(never, left) && (Has(places, left) || Has(afterPlaces, right)))
            return Measured.Likely;
        if (!isNumber && !IsPair(number))
            return Measured.No;
        if (Has(never, left))
            return Measured.No;
        if (isFigures && Has(phones, left) && IsGrouped(left))
            return Measured.Surely;
        var isYear = isFigures ? (figures == ShortYear && value is >= 1000 and < 2200) : !number.Contains("hundred", StringComparison.OrdinalIgnoreCase);
        // "Anno 240".
        if (Has(years, left) && (isYear || (isFigures && IsEra(left))))
            return Measured.Likely;
        // "The wheel stood here since 1923", "locks made from 1894 to 1923".
        if (isYear && isFigures && (Has(spans, left) || Has(afterSpans, right)))
            return Measured.Likely;
        var isSet = IsSet(text, mention);
        if (Has(symbols, right) || Has(units, right))
            return isFigures && figures < ShortYear && !isSet && !IsShown(text, mention.Start, mention.End) ? Measured.Surely : Measured.Likely;
        if (Has(standards, left))
            return Measured.Likely;
        if (isSet)
            return Measured.No;
        if (isFigures && Has(sold, right))
            return Measured.Surely;
        if (isYear && (Has(maybeYears, left) || Has(afterYears, right)))
            return Measured.Likely;
        if (Has(before, left) || Has(after, right) || Has(things, right) || IsGrouped(left)
            || ((isCounted || Has(beforeCounted, left)) && Has(counted, right)))
            return Measured.Likely;
        // No price, year or score begins with a nought.
        return number[0] == '0' || telling is null || IsAlone(text, mention) || IsIn(telling, text, mention) ? Measured.No : Measured.Likely;
    }

    // A sentence that says nothing else.
    private static bool IsAlone(string text, in Mention mention)
    {
        var (start, end) = Sentence(text, mention.Start, mention.End);
        for (var i = start; i < end; i++)
        {
            if (char.IsLetter(text[i]) && (i < mention.Start || i >= mention.End))
                return false;
        }

        return true;
    }

    // "29-47", "29 to 47": two numbers, as people tell scores, ages and doors.
    private static bool IsPair(ReadOnlySpan<char> number)
    {
        var groups = 0;
        for (var i = 0; i < number.Length; i++)
            groups += char.IsDigit(number[i]) && (i == 0 || !char.IsDigit(number[i - 1])) ? 1 : 0;
        return groups == 2;
    }

    // Figures of one number: "2,215" and "1 923" as well, but not "2-4-0".
    private static bool IsFigures(ReadOnlySpan<char> number, out int figures, out int value)
    {
        (figures, value) = (0, 0);
        var group = 0;
        for (var i = 0; i < number.Length; i++)
        {
            if (char.IsDigit(number[i]))
            {
                (figures, group) = (figures + 1, group + 1);
                value = unchecked((value * 10) + CharUnicodeInfo.GetDecimalDigitValue(number[i]));
                continue;
            }

            if (number[i] is not (',' or '.' or '\'' or '’' or ' ' or '\u00A0' or '\u202F') || (group != 3 && figures > group) || group is 0 or > 3
                || number.Length - i < 4)
                return false;
            group = 0;
        }

        return figures > 0 && (figures == group || group == 3);
    }

    // "6.18", "6,18", "٦٫١٨"; a score or a verse, "29:47".
    private static bool IsDecimal(ReadOnlySpan<char> number) =>
        number.IndexOfAny(Points) is > 0 and < 4 and var mark && number.Length - mark is 2 or 3
        && !number[..mark].ContainsAnyExcept(Digits) && !number[(mark + 1)..].ContainsAnyExcept(Digits);

    // "7/4, puis le 26", "7.4. und dann am 26": a day and a month, and something else.
    private static bool IsDate(ReadOnlySpan<char> number)
    {
        if (number.IndexOfAny('/', '.') is not (> 0 and < 3 and var mark) || number[..mark].ContainsAnyExcept(Digits))
            return false;
        var rest = number[(mark + 1)..];
        if (rest.IndexOfAnyExcept(Digits) is not (> 0 and < 3 and var end))
            return false;
        rest = rest[end..].TrimStart('.');
        return rest is [' ' or ',', ..] && !rest.ContainsAny('/', '.');
    }

    // "6.1.8", "6/1/8": a day, a month and a year.
    private static bool IsWholeDate(ReadOnlySpan<char> number) =>
        number.ContainsAny('.', '/') && !number.ContainsAnyExcept(DatePieces) && number.Count('.') + number.Count('/') == 2;

    // "Nineteen twenty-three", "two hundred and forty", but not "two four zero".
    private static bool IsInWords(ReadOnlySpan<char> number)
    {
        foreach (var letter in number)
        {
            if (!char.IsLetter(letter) && letter is not (' ' or '-'))
                return false;
        }

        foreach (var part in InWords)
        {
            if (number.Contains(part, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    private static bool HasSeveralPieces(ReadOnlySpan<char> number) => number.ContainsAny(' ', '-');

    // "AD 240", "anno 240", "© 240".
    private static bool IsEra(ReadOnlySpan<char> left)
    {
        var word = left.TrimEnd();
        return word.EndsWith("AD") || word.EndsWith("A.D.") || word.EndsWith("CE") || word.EndsWith("anno", StringComparison.OrdinalIgnoreCase)
            || word.EndsWith("Domini", StringComparison.OrdinalIgnoreCase) || word.EndsWith("©") || word.EndsWith("circa", StringComparison.OrdinalIgnoreCase);
    }

    // "555 0628".
    private static bool IsGrouped(ReadOnlySpan<char> left) =>
        left.Length > 3 && left[^1] is ' ' or '-' or '/' && char.IsDigit(left[^2]) && char.IsDigit(left[^3]) && char.IsDigit(left[^4]);

    /// <summary>Whether a measure is one that an instrument has to show: "the scale must read 729 grams".</summary>
    public bool IsShown(string text, int at, int behind)
    {
        if (instruments is null)
            return false;
        var (start, end) = Sentence(text, at, behind);
        var sentence = text.AsSpan(start, end - start);
        return Has(instruments, sentence) && Has(showing, sentence);
    }

    private static (int Start, int End) Sentence(string text, int start, int end)
    {
        while (start > 0 && !IsEnd(text, start - 1))
            start--;
        while (end < text.Length && !IsEnd(text, end))
            end++;
        return (start, end);
    }

    private bool IsSet(string text, in Mention mention) => setting is not null && IsIn(setting, text, mention);

    // Whether the rest of the sentence has it.
    private static bool IsIn(Regex words, string text, in Mention mention)
    {
        var (start, end) = Sentence(text, mention.Start, mention.End);
        return words.IsMatch(text.AsSpan(start, mention.Start - start)) || words.IsMatch(text.AsSpan(mention.End, end - mention.End));
    }

    // A stop behind a short word is one of an abbreviation: "Apt. 240".
    private static bool IsEnd(string text, int at)
    {
        if (text[at] is '!' or '?' or '\n' or '。' or '！' or '？' or '؟')
            return true;
        if (text[at] != '.' || (at + 1 < text.Length && !char.IsWhiteSpace(text[at + 1])))
            return false;
        var letters = 0;
        while (letters < at && char.IsLetter(text[at - 1 - letters]))
            letters++;
        return letters == 0 || letters >= ShortestAbbreviated;
    }

    private static bool Has(Regex? one, ReadOnlySpan<char> text) => one?.IsMatch(text) == true;

    private static string Either(string one, string other) => one.Length == 0 ? other : other.Length == 0 ? one : $"{one}|{other}";

    private static Regex? Ends(string pattern, RegexOptions options = RegexOptions.IgnoreCase) =>
        pattern.Length == 0 ? null : Of($"(?:{pattern})$", options);

    private static Regex? Begins(string pattern, RegexOptions options = RegexOptions.IgnoreCase) =>
        pattern.Length == 0 ? null : Of($"^(?:{pattern})", options);

    private static Regex? Of(string pattern, RegexOptions options = RegexOptions.IgnoreCase) =>
        pattern.Length == 0 ? null : new(pattern, options | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));
}
