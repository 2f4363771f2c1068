using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace HintBook.Audit;

/// <summary>Escapes in style sheets (CSS Syntax Module Level 3, 4.3.7) and code points in scripts (ECMAScript, 12.9.4).</summary>
internal static partial class StyleEscapes
{
    /// <summary>A style's string without its escapes.</summary>
    public static string Unescaped(string style) => Escape().Replace(style, Meant);

    /// <summary>The character that an escape means: by its number, or the one behind the backslash.</summary>
    public static string Meant(Match escape) =>
        escape.Groups["hex"] is { Success: true, Value: var hex }
            ? Rune.TryCreate(int.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture), out var rune) ? rune.ToString() : " "
            : escape.Groups["other"].Value;

    // Up to six hexadecimal digits and a space, a line's end that isn't there, or the character itself.
    [GeneratedRegex(@"\\((?<hex>[0-9A-Fa-f]{1,6})\s?|\n|(?<other>.))", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Escape();
}
