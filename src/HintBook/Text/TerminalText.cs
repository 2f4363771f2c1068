using System.Globalization;
using System.Text;

namespace HintBook.Text;

/// <summary>How text looks on a terminal, where letters take columns.</summary>
public static class TerminalText
{
    /// <summary>A tab is shown as this many spaces, wherever it stands.</summary>
    public const int Tab = 4;

    /// <summary>The columns of a text: two for wide letters and pictographs, none for marks that join the letter before.</summary>
    public static int Columns(ReadOnlySpan<char> text)
    {
        var columns = 0;
        foreach (var rune in text.EnumerateRunes())
            columns += Columns(rune);
        return columns;
    }

    /// <summary>The text as a terminal may show it: tabs as spaces, other control characters as U+FFFD, so that none is carried out.</summary>
    public static string Shown(ReadOnlySpan<char> text)
    {
        var shown = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value == '\t')
                shown.Append(' ', Tab);
            else
                shown.Append(IsHarmful(rune) ? Rune.ReplacementChar : rune);
        }

        return shown.ToString();
    }

    /// <summary>The text with control characters as U+FFFD, but for tabs and line breaks.</summary>
    public static string Printable(ReadOnlySpan<char> text)
    {
        var shown = new StringBuilder(text.Length);
        var left = text;
        foreach (var rune in text.EnumerateRunes())
        {
            left = left[Math.Min(rune.Utf16SequenceLength, left.Length)..];
            var passes = rune.Value is '\n' or '\t' || (rune.Value == '\r' && left is ['\n', ..]) || !IsHarmful(rune);
            shown.Append(passes ? rune : Rune.ReplacementChar);
        }

        return shown.ToString();
    }

    /// <summary>
    /// The text in lines as a terminal may show them, broken at spaces and between wide letters, which have none; line breaks of the text
    /// count as spaces. A word wider than a line stands on one of its own, uncut.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="columns">The columns of a line, at least 1.</param>
    public static IEnumerable<string> Wrapped(string text, int columns)
    {
        var (line, width) = (new StringBuilder(), 0);
        foreach (var piece in Pieces(Shown(text.ReplaceLineEndings(" "))))
        {
            if (width > 0 && width + Columns(piece.AsSpan().TrimEnd(' ')) > columns)
            {
                yield return line.ToString().TrimEnd(' ');
                (line, width) = (new StringBuilder(), 0);
            }

            line.Append(piece);
            width += Columns(piece);
        }

        yield return line.ToString().TrimEnd(' ');
    }

    // Words with the spaces after them. Punctuation stays with the wide letter before it.
    private static IEnumerable<string> Pieces(string text)
    {
        var (start, at) = (0, 0);
        Rune? before = null;
        foreach (var rune in text.EnumerateRunes())
        {
            var afterSpace = before?.Value == ' ' && rune.Value != ' ';
            var amongWide = before is { } letter && IsWide(letter.Value) && IsWide(rune.Value) && Rune.IsLetterOrDigit(rune);
            if (afterSpace || amongWide)
            {
                yield return text[start..at];
                start = at;
            }

            at += rune.Utf16SequenceLength;
            before = rune;
        }

        yield return text[start..];
    }

    private static int Columns(Rune rune) => rune.Value switch
    {
        '\t' => Tab,
        _ when IsHarmful(rune) => 1,
        _ when Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        _ when IsWide(rune.Value) => 2,
        _ => 1,
    };

    // Control characters and the marks that turn the direction of text (Unicode, UAX #9).
    private static bool IsHarmful(Rune rune) =>
        Rune.IsControl(rune) || rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    // The blocks that Unicode's UAX #11 calls wide or full-width, roughly: whole blocks, and the pictographs.
    private static bool IsWide(int rune) => rune
        is (>= 0x1100 and <= 0x115F) or (>= 0x2E80 and <= 0x303E) or (>= 0x3041 and <= 0xA4CF) or (>= 0xA960 and <= 0xA97F)
        or (>= 0xAC00 and <= 0xD7A3) or (>= 0xF900 and <= 0xFAFF) or (>= 0xFE30 and <= 0xFE6F) or (>= 0xFF01 and <= 0xFF60)
        or (>= 0xFFE0 and <= 0xFFE6) or (>= 0x1F300 and <= 0x1F64F) or (>= 0x1F680 and <= 0x1F6FF) or (>= 0x1F900 and <= 0x1FAFF)
        or (>= 0x20000 and <= 0x3FFFD);
}
