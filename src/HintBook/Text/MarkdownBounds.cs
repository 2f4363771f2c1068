namespace HintBook.Text;

/// <summary>
/// Bounds on Markdown, looked at before it is parsed: the parser's time grows with the square of the depth of lists and quotations, and of
/// the number of openings in a paragraph. Within the bounds no text was found that takes a second; no text that people read comes
/// near them.
/// </summary>
internal static class MarkdownBounds
{
    /// <summary>The most letters of one text: about 100 pages.</summary>
    public const int MostLetters = 200_000;

    /// <summary>The most letters of one paragraph.</summary>
    public const int MostInParagraph = 20_000;

    /// <summary>How often <c>[</c>, <c>&lt;</c> and rows of <c>*</c>, <c>_</c> and <c>`</c> may stand in one paragraph.</summary>
    public const int MostSignsInParagraph = 1_000;

    /// <summary>How often they may stand in one text.</summary>
    public const int MostSigns = 10_000;

    /// <summary>How deep lists and quotations may stand inside each other.</summary>
    public const int Deepest = 32;

    // Four columns for each level.
    private const int WidestIndent = 4 * Deepest;

    /// <summary>Where a text leaves the bounds, with what is wrong and what to do; null for a text within them.</summary>
    public static (int At, string Message, string Help)? Left(string markdown)
    {
        var (at, letters, signs, allSigns) = (0, 0, 0, 0);
        foreach (var line in markdown.AsSpan().EnumerateLines())
        {
            var text = line.Trim();
            if (IsTooDeep(line))
            {
                return (
                    at,
                    "Lists or quotations stand inside each other far deeper than anybody can read.",
                    "Two or three levels are enough: write it flat.");
            }

            if (text.IsEmpty || IsBullet(line))
                (letters, signs) = (0, 0);
            var here = Signs(text);
            (letters, signs, allSigns) = (letters + text.Length, signs + here, allSigns + here);
            if (letters > MostInParagraph)
                return (at, $"This paragraph has more than {MostInParagraph} letters.", "Break it with empty lines.");
            if (signs > MostSignsInParagraph || allSigns > MostSigns)
                return (at, "Here is one more of the signs [ < * _ ` than anybody reads: a thousand in one paragraph.", "Take out those that set nothing.");
            at += line.Length;
            at += markdown.AsSpan(at) switch
            {
                ['\r', '\n', ..] => 2,
                [] => 0,
                _ => 1,
            };
        }

        return markdown.Length > MostLetters
            ? (0, $"This text has more than {MostLetters} letters, which is about 100 pages.", "Is it the right text? If it is, make it shorter.")
            : null;
    }

    // A row of one sign is a line across the page, however long it is (CommonMark 0.31.2, 4.1).
    private static bool IsTooDeep(ReadOnlySpan<char> line)
    {
        if (line.TrimStart() is ['-' or '*', ..] row && row.Trim([row[0], ' ', '\t']).IsEmpty)
            return false;
        var (columns, levels) = (0, 0);
        while (!line.IsEmpty && columns <= WidestIndent && levels <= Deepest)
        {
            var marker = MarkerOf(line);
            if (marker == 0 && line[0] is not (' ' or '\t'))
                return false;
            levels += marker > 0 ? 1 : 0;
            columns += line[0] == '\t' ? 4 : 1;
            line = line[Math.Max(1, marker)..];
        }

        return !line.IsEmpty;
    }

    // The length of a mark that opens a quotation or a list's item.
    private static int MarkerOf(ReadOnlySpan<char> line)
    {
        if (line[0] == '>')
            return 1;
        if (line is ['-' or '+' or '*', ' ' or '\t', ..])
            return 1;
        var digits = line.IndexOfAnyExceptInRange('0', '9');
        return digits is > 0 and < 10 && line[digits..] is ['.' or ')', ' ' or '\t', ..] ? digits + 1 : 0;
    }

    private static bool IsBullet(ReadOnlySpan<char> line) => line.TrimStart(' ') is ['-' or '+' or '*', ' ', not ' ', ..] text && line.Length - text.Length < 4;

    private static int Signs(ReadOnlySpan<char> text)
    {
        var (signs, before) = (0, '\0');
        foreach (var letter in text)
        {
            if (letter is '[' or '<' || (letter is '*' or '_' or '`' && letter != before))
                signs++;
            before = letter;
        }

        return signs;
    }
}
