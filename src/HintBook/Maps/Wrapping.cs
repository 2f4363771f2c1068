using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace HintBook.Maps;

/// <summary>Breaks titles into lines.</summary>
internal static class Wrapping
{
    /// <summary>The most lines that a title gets; what is left over is cut, and an ellipsis says so.</summary>
    public const int MostLines = 3;

    private const string Ellipsis = "…";

    /// <summary>
    /// At most <see cref="MostLines"/> lines, none wider than <paramref name="widest"/>, and as even as can be. A word that is too
    /// long is broken between letters as people see them. At least one line, perhaps an empty one.
    /// </summary>
    public static ImmutableArray<string> Lines(string title, double widest, Func<string, double> width)
    {
        var text = Clean(title);
        var lines = Greedy(text, widest, width);
        if (lines.Length > MostLines)
            return [.. lines[..(MostLines - 1)], Cut(lines[MostLines - 1] + " " + lines[MostLines], widest, width)];
        for (var narrower = widest - 8; narrower > widest / 3; narrower -= 8)
        {
            var evener = Greedy(text, narrower, width);
            if (evener.Length > lines.Length || text.Split(' ').Any(word => width(word) > narrower))
                break;
            lines = evener;
        }

        return lines;
    }

    /// <summary>The text on one line: control characters, line breaks and runs of space become one space, halves of surrogate pairs U+FFFD.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            var isSpace = Rune.IsWhiteSpace(rune) || Rune.IsControl(rune);
            if (!isSpace)
                clean.Append(rune.Value is 0xFFFE or 0xFFFF ? Rune.ReplacementChar : rune);
            else if (clean.Length > 0 && clean[^1] != ' ')
                clean.Append(' ');
        }

        return clean.ToString().TrimEnd(' ');
    }

    private static ImmutableArray<string> Greedy(string text, double widest, Func<string, double> width)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' '))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (width(longer) <= widest)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
                lines.Add(line);
            line = "";
            foreach (var letter in Letters(word))
            {
                if (line.Length > 0 && width(line + letter) > widest)
                {
                    lines.Add(line);
                    line = "";
                    if (lines.Count > MostLines)
                        return [.. lines];
                }

                line += letter;
            }
        }

        return [.. lines, line];
    }

    private static string Cut(string text, double widest, Func<string, double> width)
    {
        var letters = Letters(text).ToList();
        while (letters.Count > 0 && width(string.Concat(letters).TrimEnd(' ') + Ellipsis) > widest)
            letters.RemoveAt(letters.Count - 1);
        var cut = string.Concat(letters);
        var word = cut.LastIndexOf(' ');
        return (word > cut.Length / 2 ? cut[..word] : cut).TrimEnd(' ', ',') + Ellipsis;
    }

    private static IEnumerable<string> Letters(string text)
    {
        var letters = StringInfo.GetTextElementEnumerator(text);
        while (letters.MoveNext())
            yield return letters.GetTextElement();
    }
}
