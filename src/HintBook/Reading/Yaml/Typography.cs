using System.Buffers;
using System.Collections.Immutable;

namespace HintBook.Reading.Yaml;

/// <summary>What word processors write instead of the plain signs that YAML knows.</summary>
internal static class Typography
{
    // Unicode 15, category Zs (space separators), without the plain space.
    private static readonly SearchValues<char> OddSpaces =
        SearchValues.Create("\u00A0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200A\u202F\u205F\u3000");

    // Unicode 15, categories Pi and Pf (initial and final quotes) as far as word processors write them, and the low ones, which are in Ps.
    private static readonly ImmutableArray<string> Kinds = ["“”„‟", "‘’‚‛", "«»", "‹›"];

    /// <summary>Whether it is a space that isn't the plain one, such as a no-break space.</summary>
    public static bool IsOddSpace(char sign) => OddSpaces.Contains(sign);

    /// <summary>Whether a text has one of them.</summary>
    public static bool HasOddSpace(ReadOnlySpan<char> text) => text.ContainsAny(OddSpaces);

    /// <summary>Whether it is a typographic quotation mark.</summary>
    public static bool IsCurlyQuote(char sign) => Kinds.Any(kind => kind.Contains(sign, StringComparison.Ordinal));

    /// <summary>
    /// What stands between two typographic quotation marks that enclose a whole text, or null. A text that only begins or ends with a
    /// quotation isn't enclosed; one of the two marks may be a straight one.
    /// </summary>
    public static string? Enclosed(string text)
    {
        if (text.Length < 3)
            return null;
        var kind = Kinds.FirstOrDefault(kind => kind.Contains(text[0], StringComparison.Ordinal) || kind.Contains(text[^1], StringComparison.Ordinal));
        if (kind is null || !IsMark(text[0]) || !IsMark(text[^1]))
            return null;
        var inner = text[1..^1];
        // An apostrophe inside is none of the two marks.
        return inner.Any(sign => sign is not '’' && kind.Contains(sign, StringComparison.Ordinal)) || string.IsNullOrWhiteSpace(inner) ? null : inner.Trim();

        bool IsMark(char sign) => kind.Contains(sign, StringComparison.Ordinal) || sign is '"' or '\'';
    }

    /// <summary>
    /// The offsets of odd spaces where YAML needs plain ones: in an indent, after a dash and after a key's colon. Those in texts are the author's.
    /// </summary>
    public static IEnumerable<int> OddSpacesOfStructure(string text)
    {
        if (!HasOddSpace(text))
            yield break;
        // The indent of the key whose text is a block, while its lines are passed over.
        var block = -1;
        for (var start = 0; start < text.Length; start = Text.Lines.Next(text, start))
        {
            var end = Text.Lines.Next(text, start);
            var (plain, begin) = (start, start);
            while (plain < end && text[plain] == ' ')
                plain++;
            while (begin < end && IsSpace(text[begin]))
                begin++;
            if (begin == end || text[begin] is '\n' or '\r')
                continue;
            if (block >= 0 && begin - start > block && plain - start > block)
                continue;
            foreach (var odd in OddIn(start, begin))
                yield return odd;
            if (block >= 0 && begin - start > block)
                continue;
            block = -1;
            while (begin + 1 < end && text[begin] == '-' && IsSpace(text[begin + 1]))
            {
                var dash = begin;
                for (begin++; begin < end && IsSpace(text[begin]); begin++)
                {
                }

                foreach (var odd in OddIn(dash, begin))
                    yield return odd;
            }

            var colon = begin;
            while (colon < end && (char.IsLetterOrDigit(text[colon]) || text[colon] is '-' or '_'))
                colon++;
            if (colon > begin && colon < end && text[colon] == ':')
            {
                var value = colon + 1;
                while (value < end && IsSpace(text[value]))
                    value++;
                foreach (var odd in OddIn(colon, value))
                    yield return odd;
            }

            if (text.AsSpan(start, end - start).TrimEnd().TrimEnd("+-0123456789") is [.., ' ' or ':', '|' or '>'])
                block = begin - start;
        }

        IEnumerable<int> OddIn(int from, int to) => Enumerable.Range(from, to - from).Where(i => IsOddSpace(text[i]));
    }

    private static bool IsSpace(char sign) => sign == ' ' || IsOddSpace(sign);
}
