using System.Globalization;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>A date where it stands in a text.</summary>
/// <param name="Written">As it is written.</param>
/// <param name="Day">From 1 to 31, whether or not the month has it.</param>
/// <param name="Month">From 1 to 12.</param>
/// <param name="Year">From 1 to 9999, or null where none is written.</param>
internal sealed record WrittenDate(string Written, int Day, int Month, int? Year);

/// <summary>
/// Finds dates in six languages: <c>14 July 1789</c>, <c>July the fourteenth</c>, <c>14. Juli</c>, <c>le 14 juillet</c>, <c>14 de julio</c>, <c>14.7.1789</c>,
/// <c>1789-07-14</c>, <c>7月14日</c>. Names of months are from memory. Figures with strokes and points have the day first, unless that can't be.
/// </summary>
internal static class Dates
{
    // January to December; a month may have several names.
    private static readonly string[] Months =
    [
        "january jan januar jänner janvier enero يناير", "february feb februar feber février febrero فبراير شباط", "march mar märz mars marzo مارس آذار",
        "april apr avril abril أبريل إبريل نيسان", "may mai mayo مايو أيار", "june jun juni juin junio يونيو حزيران",
        "july jul juli juillet julio يوليو تموز", "august aug août agosto أغسطس آب", "september sep sept septembre septiembre سبتمبر أيلول",
        "october oct oktober okt octobre octubre أكتوبر", "november nov novembre noviembre نوفمبر", "december dec dezember dez décembre diciembre ديسمبر",
    ];

    private static readonly Dictionary<string, int> MonthOf = Months
        .SelectMany((names, month) => names.Split(' ').Select(name => (Name: Accents.Folded(name), Month: month + 1)))
        .DistinctBy(name => name.Name)
        .ToDictionary(name => name.Name, name => name.Month);

    // What may stand behind a day: in figures “14th”, “1er”, “1º”; before a month; before a year.
    private static readonly HashSet<string> Endings = ["st", "nd", "rd", "th", "er", "º", "°"];
    private static readonly HashSet<string> Between = [.. "of de del du the le la den der من in em".Split(' ').Select(Accents.Folded)];

    private static readonly Func<Token[], int, (int Number, int Words)?>[] InWords =
    [
        Ordinals.EnglishAt, Ordinals.GermanAt, Ordinals.ArabicAt,
        (tokens, at) => tokens[at].Text is "premier" or "primero" ? (1, 1) : null,
        NumberNames.French.At, NumberNames.Spanish.At, NumberNames.English.At, ArabicNumbers.At,
    ];

    private static readonly Func<Token[], int, (int Number, int Words)?>[] YearsInWords =
        [NumberNames.German.At, NumberNames.French.At, NumberNames.Spanish.At, EnglishYear];

    /// <summary>Whether a text names a month in English: who writes so may put the month before the day.</summary>
    public static bool MayHaveMonthFirst(string written) => Array.TrueForAll(Token.In(written), token => !MonthOf.TryGetValue(token.Text, out var month)
        || Months[month - 1].Split(' ').Take(2).Contains(token.Text, StringComparer.Ordinal) || token.Text is "sept")
        && written.Any(char.IsLetter) && !written.Contains('日', StringComparison.Ordinal) && !HasDayWithPoint(written);

    // “9. August” is German, though the month is called the same in English.
    private static bool HasDayWithPoint(string written) =>
        written.IndexOf(". ", StringComparison.Ordinal) is > 0 and var point && char.IsDigit(written[point - 1]);

    /// <summary>Every date in a text, in order.</summary>
    public static IEnumerable<WrittenDate> In(string text) =>
        WithSpaces(text).Concat(Japanese(text)).OrderBy(date => date.Start).Select(date => date.Date);

    private static IEnumerable<(int Start, WrittenDate Date)> WithSpaces(string text)
    {
        var tokens = Token.In(text);
        for (var at = 0; at < tokens.Length;)
        {
            var read = InFigures(tokens, at, text) ?? DayFirst(tokens, at, text) ?? MonthFirst(tokens, at, text);
            if (read is not var (day, month, year, end))
            {
                at++;
                continue;
            }

            yield return (tokens[at].Start, new WrittenDate(text[tokens[at].Start..tokens[end - 1].End], day, month, year));
            at = end;
        }
    }

    // “1789-07-14”, “14.7.1789”, “14/07/1789”, “14.7.”
    private static (int, int, int?, int)? InFigures(Token[] tokens, int at, string text)
    {
        if (at + 1 < tokens.Length && tokens[at + 1].Between == "." && Day(tokens, at) is { } dayOf && Day(tokens, at + 1) is <= 12 and { } monthOf
            && tokens[at + 1].End < text.Length && text[tokens[at + 1].End] == '.' && (at + 2 >= tokens.Length || !tokens[at + 2].IsNumber))
            return dayOf is > 0 and <= 31 && monthOf > 0 ? (dayOf, monthOf, null, at + 2) : null;
        if (at + 2 >= tokens.Length || tokens[at + 1].Between is not ("-" or "." or "/") || tokens[at + 2].Between != tokens[at + 1].Between)
            return null;
        if (tokens[at].Text.Length == 4 && Figure(tokens, at) is { } iso && Figure(tokens, at + 1) is { } month && Figure(tokens, at + 2) is { } day)
            return tokens[at + 1].Between == "-" ? (day, month, iso, at + 3) : null;
        if (tokens[at + 2].Text.Length != 4 || Day(tokens, at) is not { } first || Day(tokens, at + 1) is not { } second)
            return null;
        if (Figure(tokens, at + 2) is not { } year)
            return null;
        return second > 12 && first <= 12 ? (second, first, year, at + 3) : (first, second, year, at + 3);
    }

    // “1789年7月14日”, “七月十四日”: no spaces part the words, so that a month is known by its sign, with its number before it.
    private static IEnumerable<(int Start, WrittenDate Date)> Japanese(string text)
    {
        for (var sign = text.IndexOf('月', StringComparison.Ordinal); sign >= 0; sign = text.IndexOf('月', sign + 1))
        {
            if (JapaneseNumbers.Before(text, sign) is not var (month, start)
                || JapaneseNumbers.Behind(text, sign + 1) is not var (day, end) || end >= text.Length || text[end] != '日')
                continue;
            var year = start > 0 && text[start - 1] == '年' ? JapaneseNumbers.Before(text, start - 1) : null;
            var from = year?.Start ?? start;
            yield return (from, new WrittenDate(text[from..(end + 1)], day, month, year?.Number));
        }
    }

    // “14 July 1789”, “14. Juli”, “le 1er mai”, “the fourteenth of July”.
    private static (int, int, int?, int)? DayFirst(Token[] tokens, int at, string text)
    {
        foreach (var (day, next) in DaysAt(tokens, at))
        {
            var named = next;
            while (named < tokens.Length && Between.Contains(tokens[named].Text) && named < next + 2)
                named++;
            if (named < tokens.Length && tokens[named].Between is "" or "." or "-" && MonthAt(tokens[named], text) is { } month)
                return WithYear(tokens, day, month, named + 1);
        }

        return null;
    }

    // “July 14, 1789”, “July the fourteenth”.
    private static (int, int, int?, int)? MonthFirst(Token[] tokens, int at, string text)
    {
        if (MonthAt(tokens[at], text) is not { } month || at + 1 >= tokens.Length || tokens[at + 1].Between is not ("" or "."))
            return null;
        var next = tokens[at + 1].Text is "the" ? at + 2 : at + 1;
        foreach (var (day, end) in DaysAt(tokens, next))
            return WithYear(tokens, day, month, end);
        return null;
    }

    // With the year that may stand behind it.
    private static (int, int, int?, int) WithYear(Token[] tokens, int day, int month, int end) =>
        Year(tokens, end) is var (year, behind) ? (day, month, year, behind) : (day, month, null, end);

    // “She may”, “they march” are no months.
    private static int? MonthAt(Token token, string text) =>
        MonthOf.TryGetValue(token.Text, out var month) && (token.Text is not ("may" or "march" or "mar") || char.IsUpper(text[token.Start])) ? month : null;

    private static IEnumerable<(int Day, int End)> DaysAt(Token[] tokens, int at)
    {
        if (at >= tokens.Length)
            yield break;
        if (Day(tokens, at) is { } day)
            yield return (day, at + 1 < tokens.Length && Endings.Contains(tokens[at + 1].Text) && tokens[at + 1].Between.Length == 0 ? at + 2 : at + 1);
        if (tokens[at].IsNumber)
            yield break;
        foreach (var reading in InWords)
        {
            if (reading(tokens, at) is ( > 0 and <= 31 and var number, var words))
                yield return (number, at + words);
        }
    }

    private static (int Year, int End)? Year(Token[] tokens, int at)
    {
        var from = at < tokens.Length && Between.Contains(tokens[at].Text) ? at + 1 : at;
        if (from >= tokens.Length || tokens[from].Between is not ("" or "," or "."))
            return null;
        if (tokens[from].Text.Length == 4 && Figure(tokens, from) is { } year)
            return (year, from + 1);
        foreach (var reading in YearsInWords)
        {
            if (reading(tokens, from) is ( >= 1000 and <= 2999 and var said, var words))
                return (said, from + words);
        }

        return null;
    }

    // “Nineteen fourteen”, “eighteen oh five”.
    private static (int Number, int Words)? EnglishYear(Token[] tokens, int at)
    {
        if (NumberNames.English.At(tokens, at) is not ( >= 10 and <= 29 and var century, var words))
            return null;
        if (at + words >= tokens.Length || !tokens[at + words].IsJoined)
            return null;
        var isNought = tokens[at + words].Text is "oh" or "o";
        var next = at + words + (isNought ? 1 : 0);
        return tokens[at + words].Text == "hundred" ? (century * 100, words + 1)
            : next < tokens.Length && NumberNames.English.At(tokens, next) is var (rest, taken) && rest is > 0 && (rest < 10) == isNought
                ? ((century * 100) + rest, next + taken - at)
                : null;
    }

    private static int? Day(Token[] tokens, int at) => tokens[at].Text.Length <= 2 ? Figure(tokens, at) : null;

    private static int? Figure(Token[] tokens, int at) =>
        tokens[at].IsNumber && tokens[at].Text.Length <= 4 ? int.Parse(tokens[at].Text, NumberStyles.None, CultureInfo.InvariantCulture) : null;
}
