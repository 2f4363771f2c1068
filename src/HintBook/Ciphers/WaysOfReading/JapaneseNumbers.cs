using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Japanese numbers: <c>二十一</c>, <c>千九百十四</c>, figure by figure <c>五一七三</c>, and the native ones with their counter, <c>ひとつ</c> to
/// <c>ここのつ</c>. Their values are Unicode's (15.0, kPrimaryNumeric); the native words are from memory.
/// </summary>
internal static class JapaneseNumbers
{
    private const string Figures = "〇一二三四五六七八九";
    private const int Largest = 1_000_000;

    private static readonly ImmutableArray<string> Native = ["ひとつ", "ふたつ", "みっつ", "よっつ", "いつつ", "むっつ", "ななつ", "やっつ", "ここのつ"];

    /// <summary>Every number, in order.</summary>
    public static IEnumerable<Row> In(string text) => Runs(text).Where(run => run.Number is not null).Select(run => new Row(run.Read, run.Number!));

    /// <summary>Runs of numerals that make no number below a million.</summary>
    public static IEnumerable<string> Strange(string text) => Runs(text).Where(run => run.Number is null).Select(run => run.Read);

    private static IEnumerable<(string Read, string? Number)> Runs(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            var end = at;
            while (end < text.Length && (IsNumeral(text[end]) || text[end] is '億' or '兆'))
                end++;
            if (end > at)
            {
                yield return (text[at..end], Value(text.AsSpan(at..end)));
                at = end;
            }
            else if (Native.FirstOrDefault(word => string.CompareOrdinal(text, at, word, 0, word.Length) == 0) is { } word)
            {
                yield return (word, (Native.IndexOf(word) + 1).ToString(CultureInfo.InvariantCulture));
                at += word.Length;
            }
            else
            {
                at++;
            }
        }
    }

    /// <summary>Whether it is a numeral of Han script or a figure.</summary>
    public static bool IsNumeral(char symbol) => FigureOf(symbol) >= 0 || UnitOf(symbol) > 0;

    /// <summary>The number that ends before a place of a text, and where it begins; null if none does.</summary>
    public static (int Number, int Start)? Before(string text, int end)
    {
        var start = end;
        while (start > 0 && IsNumeral(text[start - 1]))
            start--;
        return NumberOf(text.AsSpan(start..end)) is { } number ? (number, start) : null;
    }

    /// <summary>The number that begins at a place of a text, and where it ends; null if none does.</summary>
    public static (int Number, int End)? Behind(string text, int start)
    {
        var end = start;
        while (end < text.Length && IsNumeral(text[end]))
            end++;
        return NumberOf(text.AsSpan(start..end)) is { } number ? (number, end) : null;
    }

    private static int? NumberOf(ReadOnlySpan<char> run) =>
        int.TryParse(Value(run), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The value of a run of numerals, as figures; null if they don't make a number below a million.</summary>
    public static string? Value(ReadOnlySpan<char> run)
    {
        var hasUnit = false;
        var figures = new StringBuilder();
        foreach (var symbol in run)
        {
            if (!IsNumeral(symbol))
                return null;
            hasUnit |= UnitOf(symbol) > 0;
            figures.Append(FigureOf(symbol));
        }

        if (!hasUnit)
            return figures.ToString();
        var (whole, below, figure) = (0L, 0L, -1L);
        foreach (var symbol in run)
        {
            var unit = UnitOf(symbol);
            if (unit == 0)
            {
                figure = (figure < 0 ? 0 : figure * 10) + FigureOf(symbol);
            }
            else if (unit == 10_000)
            {
                (whole, below, figure) = (whole + ((below + Math.Max(figure, below == 0 ? 1 : 0)) * unit), 0, -1);
            }
            else
            {
                (below, figure) = (below + ((figure < 0 ? 1 : figure) * unit), -1);
            }

            if (whole >= Largest || below >= Largest || figure >= Largest)
                return null;
        }

        return (whole + below + Math.Max(figure, 0)).ToString(CultureInfo.InvariantCulture);
    }

    private static int FigureOf(char symbol) => symbol switch
    {
        '零' or '○' => 0,
        '壱' => 1,
        '弐' => 2,
        '参' => 3,
        >= '0' and <= '9' => symbol - '0',
        _ => Figures.IndexOf(symbol, StringComparison.Ordinal),
    };

    private static int UnitOf(char symbol) => symbol switch { '十' or '拾' => 10, '百' => 100, '千' => 1000, '万' => 10_000, _ => 0 };
}
