using System.Globalization;
using System.Text.RegularExpressions;

namespace HintBook.Text;

/// <summary>Small pieces of the English that findings are written in.</summary>
public static partial class Words
{
    /// <summary>Joins names as a sentence does: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    /// <param name="names">The names, in order.</param>
    /// <param name="last">The word before the last one.</param>
    public static string List(IEnumerable<string> names, string last = "and") =>
        Join(names, ", ", $" {last} ") is { Length: > 0 } list ? list : "nothing";

    /// <summary>Joins names as a sentence of any language does; nothing for no names.</summary>
    /// <param name="names">The names, in order.</param>
    /// <param name="comma">What stands between two of them, with its spaces.</param>
    /// <param name="last">What stands before the last one instead, with its spaces.</param>
    public static string Join(IEnumerable<string> names, string comma, string last)
    {
        var all = names.ToArray();
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(comma, all[..^1])}{last}{all[^1]}";
    }

    /// <summary>A number with its noun: <c>1 stage</c>, <c>2 stages</c>, <c>1,200 stages</c>.</summary>
    public static string Count(int number, string one, string? many = null) =>
        $"{Grouped(number)} {(number == 1 ? one : many ?? one + "s")}";

    /// <summary>A number as sentences have it: <c>12,000</c>.</summary>
    public static string Grouped(long number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>The letters, digits and underlines of a text, with one hyphen for whatever else stands between them: <c>brass-spoon</c>.</summary>
    public static string Hyphenated(string text) => string.Join('-', NoNameSign().Split(text).Where(word => word.Length > 0));

    [GeneratedRegex(@"[^\p{L}\p{N}\p{M}_]+", RegexOptions.CultureInvariant)]
    private static partial Regex NoNameSign();
}
