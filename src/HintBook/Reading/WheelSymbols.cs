using System.Text;

namespace HintBook.Reading;

/// <summary>What a lock's wheel shows.</summary>
internal static class WheelSymbols
{
    /// <summary>
    /// Writes ranges out: <c>0-9</c> becomes the ten digits, <c>A-FX</c> becomes <c>ABCDEFX</c>. A hyphen stands for a range
    /// between two letters or two digits in ascending order, and for itself anywhere else; so does the dash that a word processor makes of it.
    /// </summary>
    public static string WrittenOut(string written)
    {
        var all = new StringBuilder();
        for (var i = 0; i < written.Length; i++)
        {
            if (i + 2 < written.Length && written[i + 1] is '-' or '–' && IsRange(written[i], written[i + 2]))
            {
                for (var c = written[i]; c <= written[i + 2]; c++)
                    all.Append(c);
                i += 2;
            }
            else
            {
                all.Append(written[i]);
            }
        }

        return all.ToString();
    }

    private static bool IsRange(char from, char to) =>
        from <= to
        && ((char.IsAsciiDigit(from) && char.IsAsciiDigit(to))
            || (char.IsAsciiLetterUpper(from) && char.IsAsciiLetterUpper(to))
            || (char.IsAsciiLetterLower(from) && char.IsAsciiLetterLower(to)));
}
