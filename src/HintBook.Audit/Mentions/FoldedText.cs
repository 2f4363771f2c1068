using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>What separates a word from the one before it, from the weakest to the strongest.</summary>
internal enum Parting : byte
{
    /// <summary>Nothing: a script without spaces.</summary>
    Nothing,

    /// <summary>Hyphens, and a line's end behind one.</summary>
    Hyphen,

    /// <summary>The apostrophe behind a word that lost its vowel.</summary>
    Elision,

    /// <summary>Spaces, quotes, brackets and other signs.</summary>
    Space,

    /// <summary>A comma: a name doesn't go on behind it, though a code does.</summary>
    Comma,

    /// <summary>A colon.</summary>
    Colon,

    /// <summary>The end of a sentence or of a clause.</summary>
    Stop,

    /// <summary>The end of a list's item or of a cell: codes may go on behind it, a name doesn't.</summary>
    Item,

    /// <summary>An empty line: nothing goes on behind it.</summary>
    Paragraph,
}

/// <summary>A word of a text: a run of letters and digits.</summary>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">The offset behind it, a possessive included.</param>
/// <param name="From">Where its bare letters begin.</param>
/// <param name="Length">How many bare letters it has.</param>
/// <param name="Parting">What stands before it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct FoldedWord(int Start, int End, int From, int Length, Parting Parting);

/// <summary>
/// A text as words of bare letters: lower case, without accents, in one width, digits of all scripts as 0 to 9, without soft hyphens and
/// joiners. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class FoldedText(AuditLanguage language)
{
    private readonly List<FoldedWord> words = [];
    private char[] letters = new char[512];
    private int used;

    private const char FirstArabic = '\u0621';

    /// <summary>Stands between the items of a list and the cells of a table.</summary>
    public const char BetweenItems = '\u2028';

    /// <summary>The words of the text that was read last.</summary>
    public ReadOnlySpan<FoldedWord> Words => CollectionsMarshal.AsSpan(words);

    /// <summary>The bare letters of a word.</summary>
    public ReadOnlySpan<char> Of(in FoldedWord word) => letters.AsSpan(word.From, word.Length);

    /// <summary>Whether a word is one of some.</summary>
    /// <param name="some">Folded words.</param>
    /// <param name="at">Its number.</param>
    public bool Has(HashSet<string> some, int at) => some.GetAlternateLookup<ReadOnlySpan<char>>().Contains(Of(words[at]));

    /// <summary>Whether one of the words from a number to before another is one of some.</summary>
    public bool HasAny(HashSet<string> some, int from, int to)
    {
        for (var at = from; at < to; at++)
        {
            if (Has(some, at))
                return true;
        }

        return false;
    }

    /// <summary>Whether the words from one on spell some letters without a gap.</summary>
    public bool Says(int from, string said)
    {
        var at = 0;
        for (var i = from; i < words.Count && at < said.Length; i++)
        {
            var word = Of(words[i]);
            if ((i > from && words[i].Parting > Parting.Nothing) || !said.AsSpan(at).StartsWith(word))
                return false;
            at += word.Length;
        }

        return at == said.Length;
    }

    /// <summary>The same as a set.</summary>
    public static HashSet<string> SetOf(string list) => [.. BareWords(list)];

    /// <summary>The words of a list parted by spaces, each as its bare letters.</summary>
    public static IEnumerable<string> BareWords(string list)
    {
        var folded = new FoldedText(AuditLanguage.Unknown);
        foreach (var word in list.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            folded.Read(word, isProse: false);
            yield return string.Concat(folded.Words.ToArray().Select(part => folded.Of(part).ToString()));
        }
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="isProse">Whether full stops end sentences; in addresses and names of files every sign is just one between words.</param>
    public void Read(string text, bool isProse)
    {
        words.Clear();
        used = 0;
        // A letter folds to at most three.
        if (letters.Length < 3 * text.Length)
            letters = new char[3 * text.Length];
        var (parting, lines) = (Parting.Paragraph, 0);
        for (var at = 0; at < text.Length;)
        {
            var kind = KindAt(text, at, out var width);
            if (kind is Kind.Letter or Kind.Alone)
            {
                at = ReadWord(text, at, parting, alone: kind == Kind.Alone, hasHumps: !isProse);
                (parting, lines) = (IsHump(text, at) && !isProse ? Parting.Hyphen : Parting.Nothing, 0);
                continue;
            }

            at += width;
            var found = kind switch
            {
                Kind.Unheard => Parting.Nothing,
                Kind.Hyphen => Parting.Hyphen,
                Kind.Apostrophe when parting == Parting.Nothing && words.Count > 0 && IsElided(Of(words[^1])) => Parting.Elision,
                Kind.Line when ++lines > 1 => Parting.Paragraph,
                Kind.Line when parting == Parting.Hyphen => Parting.Hyphen,
                Kind.Comma when isProse => Parting.Comma,
                Kind.Colon when isProse => Parting.Colon,
                Kind.Stop when isProse => Parting.Stop,
                Kind.Item => Parting.Item,
                _ => Parting.Space,
            };
            if (found > parting)
                parting = found;
        }
    }

    private int ReadWord(string text, int start, Parting parting, bool alone, bool hasHumps)
    {
        var (at, end, from) = (start, start, used);
        while (at < text.Length)
        {
            if (hasHumps && at > start && IsHump(text, at))
                break;
            if (!alone && char.IsAsciiLetterOrDigit(text[at]))
            {
                letters[used++] = char.ToLowerInvariant(text[at]);
                end = ++at;
                continue;
            }

            var kind = KindAt(text, at, out var width);
            if (kind == Kind.Apostrophe && Heard(text, at + 1) is var next && KindOf(text, next) == Kind.Letter)
            {
                if (IsElided(letters.AsSpan(from, used - from)))
                    break;
                if (IsPossessive(text, next))
                {
                    (at, end) = (next + 1, next + 1);
                    break;
                }
            }
            else if (kind == Kind.Letter && !alone)
            {
                Append(text, at);
                end = at + width;
            }
            else if (kind == Kind.Alone && alone && at == start)
            {
                Append(text, at);
                end = at + width;
            }
            else if (kind != Kind.Unheard)
            {
                break;
            }

            at += width;
        }

        Add(start, end, from, parting);
        return at;
    }

    // A German number beyond a thousand is written as one word: "siebentausenddreizehn" is read as three.
    private void Add(int start, int end, int from, Parting parting)
    {
        var word = letters.AsSpan(from, used - from);
        // ب٣٠: an Arabic preposition before figures.
        if (language.BeforeNumbers.Length > 0 && word.Length > 1 && word[0] >= FirstArabic && !word[1..].ContainsAnyExceptInRange('0', '9'))
        {
            words.Add(new(start, start + 1, from, 1, parting));
            words.Add(new(end - word.Length + 1, end, from + 1, word.Length - 1, Parting.Nothing));
            return;
        }

        var middle = language.GluedThousand;
        var at = middle.Length > 0 && word.Length > middle.Length ? word.IndexOf(middle) : -1;
        if (at < 0)
        {
            words.Add(new(start, end, from, used - from, parting));
            return;
        }

        var behind = at + middle.Length;
        if (at > 0)
            words.Add(new(start, end, from, at, parting));
        words.Add(new(start, end, from + at, middle.Length, at > 0 ? Parting.Nothing : parting));
        if (behind < word.Length)
            words.Add(new(start, end, from + behind, word.Length - behind, Parting.Nothing));
    }

    // "mothMedal": a small letter, then a capital and a small one.
    private static bool IsHump(string text, int at) =>
        at > 1 && at + 1 < text.Length && char.IsAsciiLetterLower(text[at - 1]) && char.IsAsciiLetter(text[at - 2])
        && char.IsAsciiLetterUpper(text[at]) && char.IsAsciiLetterLower(text[at + 1]);

    private bool IsElided(ReadOnlySpan<char> word)
    {
        foreach (var elided in language.Elided)
        {
            if (word.SequenceEqual(elided))
                return true;
        }

        return false;
    }

    private static bool IsPossessive(string text, int at) =>
        text[at] is 's' or 'S' && KindOf(text, Heard(text, at + 1)) is not (Kind.Letter or Kind.Apostrophe);

    // Skips soft hyphens, joiners and combining marks.
    private static int Heard(string text, int at)
    {
        while (at < text.Length && KindAt(text, at, out var width) == Kind.Unheard)
            at += width;
        return at;
    }

    private static Kind KindOf(string text, int at) => at < text.Length ? KindAt(text, at, out _) : Kind.Space;

    private void Append(string text, int at)
    {
        var letter = text[at];
        if (letter < 0x80)
        {
            letters[used++] = letter is >= 'A' and <= 'Z' ? (char)(letter + ('a' - 'A')) : letter;
            return;
        }

        var rune = Rune.GetRuneAt(text, at);
        var digit = CharUnicodeInfo.GetDigitValue(text, at);
        if (digit >= 0)
            letters[used++] = (char)('0' + digit);
        else if (IsRomanNumeral(letter))
            used += ((int)CharUnicodeInfo.GetNumericValue(letter)).TryFormat(letters.AsSpan(used), out var written, default, CultureInfo.InvariantCulture)
                ? written
                : 0;
        else
            used += Accents.Bare(rune, letters.AsSpan(used));
    }

    private static Kind KindAt(string text, int at, out int width)
    {
        var letter = text[at];
        width = 1;
        if (letter < 0x80)
            return Ascii[letter];
        if (!Rune.TryGetRuneAt(text, at, out var rune))
            return Kind.Space;
        width = rune.Utf16SequenceLength;
        return rune.Value switch
        {
            0x2019 or 0x02BC or 0xFF07 => Kind.Apostrophe,
            0x2014 or 0x2015 or 0x3001 or 0xFF0C => Kind.Comma,
            0x060C or 0xFF64 => Kind.Comma,
            0x2026 or 0x3002 or 0x2029 or 0x061B or 0x061F => Kind.Stop,
            BetweenItems => Kind.Item,
            0x2212 => Kind.Hyphen,
            // The tatweel only stretches an Arabic word.
            0x0640 => Kind.Unheard,
            >= 0xFF01 and <= 0xFF5E => Ascii[rune.Value - 0xFEE0],
            _ when CharUnicodeInfo.GetDigitValue(text, at) >= 0 || IsRomanNumeral(letter) => Kind.Letter,
            _ when IsWrittenWithoutSpaces(rune.Value) => Kind.Alone,
            _ => Rune.GetUnicodeCategory(rune) switch
            {
                UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format =>
                    Kind.Unheard,
                UnicodeCategory.DashPunctuation => Kind.Hyphen,
                _ when Rune.IsLetterOrDigit(rune) || Accents.IsLetterInDisguise(rune) => Kind.Letter,
                _ => Kind.Space,
            },
        };
    }

    // Ⅵ is one letter, and means a number.
    private static bool IsRomanNumeral(char letter) => letter is (>= '\u2160' and <= '\u216B') or (>= '\u2170' and <= '\u217B');

    // Thai, Lao, Khmer, Burmese, Chinese and Japanese are written without spaces: every letter counts as a word.
    private static bool IsWrittenWithoutSpaces(int letter) => letter is 0x3007 or (>= 0x0E01 and <= 0x0EFF) or (>= 0x1000 and <= 0x109F)
        or (>= 0x1780 and <= 0x17FF) or (>= 0x2E80 and <= 0x2FDF) or (>= 0x3040 and <= 0x30FF) or (>= 0x3400 and <= 0x9FFF)
        or (>= 0xF900 and <= 0xFAFF) or (>= 0x20000 and <= 0x3FFFF);

    private static readonly Kind[] Ascii = [.. Enumerable.Range(0, 0x80).Select(letter => (char)letter switch
    {
        (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') => Kind.Letter,
        '-' or '_' => Kind.Hyphen,
        '\n' => Kind.Line,
        '\'' => Kind.Apostrophe,
        ',' => Kind.Comma,
        ':' => Kind.Colon,
        '.' or ';' or '!' or '?' or '|' or '=' => Kind.Stop,
        _ => Kind.Space,
    })];

    private enum Kind : byte
    {
        Space,
        Letter,
        Alone,
        Unheard,
        Apostrophe,
        Hyphen,
        Line,
        Comma,
        Colon,
        Stop,
        Item,
    }
}
