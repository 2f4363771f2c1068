using System.Text;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>Damages files as a slip of the hand, a bad program or a bad disk does.</summary>
internal static class Damage
{
    // What has a meaning in YAML, in Markdown or in a template, or is hard to read for other reasons.
    private static readonly string[] Snares =
    [
        "---\n", "...\n", "[", "]", "{", "}", ": ", "- ", "? ", "&a ", "*a", "<<: *a", "!!binary ", "!x ", "|\n", ">-\n", "#", " # ", "%YAML 9.9\n",
        "'", "\"", "“", "\t",
        "\0", "\u0085", "\u2028", "\u00A0", "\uFEFF", "\u202E", "\u001B[31m", "\uD83D\uDD11", "é", "ﬁ", "\r\n", "\r", "\n\n\n", "{{", "}}", "{{ 1 / 0 }}",
        "![](", "[a](javascript:x)", "<script>", "<b>", "&amp;",
        "```", "~~~\n", "* * *", "# Nudge\n", "# Answer\n", "# Reset\n", "    ", "\\", "|a|b|\n|-|-|\n", "~", "null", "true",
        "0x1F", "1e309", "-1", "99999999999999999999", "2026-11-28", "../", "/etc/passwd", "CON",
        "needs: ", "does: ", "gives: ", "any: ", "positions: ", "turns: next",
        "free: true", "undo: ",
        "after: ", "was: ", "reads: ", "lock: { wheels: 40, symbols: 0-9 }", "from: \"00:00\", to: \"23:59\", step: 1 min", "0-999999", "languages: [ de, xx ]",
        "translates: ", "red-herring: true", "optional: true", "behind: ", "when: ", "photos: ", "clip: ", "hidden", "in-hand", "used-up",
    ];

    /// <summary>A text with one kind of damage, somewhere.</summary>
    public static string Of(string text, Random dice, IReadOnlyList<string> others)
    {
        var lines = text.Split('\n').ToList();
        var at = dice.Next(lines.Count);
        var here = dice.Next(text.Length + 1);
        switch (dice.Next(16))
        {
            case 0:
                return text[..here];
            case 1:
                return text.Insert(here, Snares[dice.Next(Snares.Length)]);
            case 2:
                return text.Remove(here, Math.Min(dice.Next(1, 30), text.Length - here));
            case 3:
                lines.RemoveAt(at);
                break;
            case 4:
                lines.Insert(at, lines[dice.Next(lines.Count)]);
                break;
            case 5:
                lines[at] = new string(' ', dice.Next(9)) + lines[at].TrimStart();
                break;
            case 6:
                (lines[at], lines[^1]) = (lines[^1], lines[at]);
                break;
            case 7:
                return text.Insert(here, Repeated(dice));
            case 8:
                return OneWordForAnother(text, dice);
            case 9:
                var other = others[dice.Next(others.Count)];
                var part = dice.Next(other.Length + 1);
                return text.Insert(here, other.Substring(part, Math.Min(dice.Next(200), other.Length - part)));
            case 10:
                lines[at] = lines[at].Replace(":", dice.Next(2) == 0 ? "" : " :", StringComparison.Ordinal);
                break;
            case 11:
                return here == text.Length ? text : text[..here] + (char)dice.Next(1, 0x300) + text[(here + 1)..];
            case 12:
                return text.Replace("\n", "\r\n", StringComparison.Ordinal);
            case 13:
                lines[at] = lines[at].Replace("[", "", StringComparison.Ordinal).Replace("{", "[", StringComparison.Ordinal);
                break;
            case 14:
                lines.InsertRange(at, lines.GetRange(at, Math.Min(dice.Next(1, 12), lines.Count - at)));
                break;
            default:
                lines[at] += Snares[dice.Next(Snares.Length)];
                break;
        }

        return string.Join('\n', lines);
    }

    /// <summary>Bytes with one kind of damage, somewhere.</summary>
    public static byte[] Of(byte[] bytes, Random dice)
    {
        if (bytes.Length == 0)
            return [(byte)dice.Next(256)];
        var at = dice.Next(bytes.Length);
        var length = Math.Min(dice.Next(1, 64), bytes.Length - at);
        byte[] changed = [.. bytes];
        switch (dice.Next(8))
        {
            case 0:
                return bytes[..at];
            case 1:
                changed[at] ^= (byte)(1 << dice.Next(8));
                return changed;
            case 2:
                dice.NextBytes(changed.AsSpan(at, length));
                return changed;
            case 3:
                changed.AsSpan(at, length).Fill((byte)(dice.Next(2) * 255));
                return changed;
            case 4:
                return [.. bytes[..at], .. bytes[(at + length)..]];
            case 5:
                return [.. bytes[..at], .. bytes.AsSpan(at, length), .. bytes[at..]];
            case 6:
                // Where a header says how long or how large something is, four bytes can make it anything.
                var header = Math.Min(at % 64, bytes.Length - 1);
                dice.NextBytes(changed.AsSpan(header, Math.Min(4, bytes.Length - header)));
                return changed;
            default:
                return [.. bytes, .. bytes[..at]];
        }
    }

    private static string OneWordForAnother(string text, Random dice)
    {
        var words = text.Split([' ', '\n', ',', ':', '[', ']', '{', '}'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? text : text.Replace(words[dice.Next(words.Length)], words[dice.Next(words.Length)], StringComparison.Ordinal);
    }

    private static string Repeated(Random dice)
    {
        var count = 1 << dice.Next(1, 13);
        var snare = Snares[dice.Next(Snares.Length)];
        var text = new StringBuilder();
        for (var i = 0; i < count; i++)
            text.Append(snare);
        return text.ToString();
    }
}
