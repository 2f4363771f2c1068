using System.Buffers;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>What stands between a word and the one before it.</summary>
[Flags]
internal enum Gap : byte
{
    /// <summary>Nothing: a figure after a letter, or a script without spaces.</summary>
    None = 0,

    /// <summary>A hyphen or an underscore.</summary>
    Hyphen = 1,

    /// <summary>White space, quotes, brackets and the marks of Markdown.</summary>
    Space = 2,

    /// <summary>The end of a line.</summary>
    Line = 4,

    /// <summary>A comma or a dash.</summary>
    Comma = 8,

    /// <summary>What ends a clause or a cell: no name goes on behind it, though a code may.</summary>
    Stop = 16,

    /// <summary>An empty line: nothing goes on behind it.</summary>
    Paragraph = 32,

    /// <summary>The apostrophe behind a word that lost its vowel: <c>l’</c>.</summary>
    Elision = 64,

    /// <summary>A stroke or a sign of multiplication, which make two numbers.</summary>
    Apart = 128,
}

/// <summary>One word, or one run of figures, of a text.</summary>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">The offset after it.</param>
/// <param name="Id">Its number among the words that matter, or -1.</param>
/// <param name="Gap">What stands before it.</param>
/// <param name="From">Where its bare letters begin.</param>
/// <param name="Length">How many bare letters it has.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Word(int Start, int End, int Id, Gap Gap, int From, int Length);

/// <summary>
/// Reads texts into words: small letters without accents, figures apart from letters, possessives and (in English) plurals folded.
/// Joiners, soft hyphens, lone accents and the asterisks of Markdown are not there at all.
/// </summary>
internal sealed class WordReader(WordList words)
{
    private const int LongestWord = 64;
    private const int LongestMark = 40;
    private static readonly SearchValues<char> InEntities = SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789#");

    // Makes an Arabic word longer on paper.
    private const int Tatweel = 0x0640;
    private readonly List<Word> read = [];
    private readonly string[] elided = words.Language.Elided.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    private char[] bare = new char[1024];
    private int used;

    /// <summary>The words of the text that was read last.</summary>
    public ReadOnlySpan<Word> Words => CollectionsMarshal.AsSpan(read);

    /// <summary>The bare letters of a word, its ending not folded.</summary>
    public ReadOnlySpan<char> Bare(in Word word) => bare.AsSpan(word.From, word.Length);

    /// <summary>The number of two words written as one, or -1.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <param name="between">Letters between them: the s of <c>bull’s-eye</c>.</param>
    public int Joined(in Word left, in Word right, ReadOnlySpan<char> between = default)
    {
        var length = left.Length + between.Length + right.Length;
        if (length > LongestWord)
            return -1;
        Span<char> both = stackalloc char[LongestWord];
        Bare(left).CopyTo(both);
        between.CopyTo(both[left.Length..]);
        Bare(right).CopyTo(both[(left.Length + between.Length)..]);
        return words.NumberOfFolded(both[..length]);
    }

    /// <summary>Reads a text; what was read before is gone.</summary>
    public void Read(string text)
    {
        read.Clear();
        used = 0;
        if (bare.Length < (text.Length * 3) + 8)
            bare = new char[(text.Length * 3) + 8];
        var gap = Gap.Paragraph;
        var lines = 0;
        for (var i = 0; i < text.Length;)
        {
            var kind = KindAt(text, i, out var width);
            if (kind is Kind.Letter or Kind.Figure or Kind.Alone)
            {
                i = ReadWord(text, i, kind, gap);
                (gap, lines) = (Gap.None, 0);
                continue;
            }

            if (kind == Kind.Space && text[i] is '<' or '&' && MarkAt(text, i) is > 0 and var mark)
            {
                gap |= text[i] == '<' ? Gap.Line : Gap.Space;
                i += mark;
                continue;
            }

            if (kind == Kind.Line && ++lines > 1)
                gap |= Gap.Paragraph;
            if (kind == Kind.Apostrophe && gap == Gap.None && IsElided())
                gap = Gap.Elision;
            gap |= GapOf(kind);
            i += width;
        }
    }

    // The length of a tag or an entity, which are white space to a reader; 0 if there is none.
    private static int MarkAt(string text, int at)
    {
        var end = text.AsSpan(at, Math.Min(LongestMark, text.Length - at)).IndexOf(text[at] == '<' ? '>' : ';');
        if (end < 2)
            return 0;
        var inner = text.AsSpan(at + 1, end - 1);
        return text[at] == '<' ? (char.IsAsciiLetter(inner[0]) || inner[0] == '/' ? end + 1 : 0) : inner.IndexOfAnyExcept(InEntities) < 0 ? end + 1 : 0;
    }

    private int ReadWord(string text, int start, Kind kind, Gap gap)
    {
        var (i, end, from) = (start, start, used);
        while (i < text.Length)
        {
            var here = KindAt(text, i, out var width);
            if (here == Kind.Unheard)
            {
                i += width;
                continue;
            }

            if (here == Kind.Apostrophe && kind == Kind.Letter && i > start && i + 1 < text.Length && KindAt(text, i + 1, out _) == Kind.Letter)
            {
                if (elided.Length > 0 && IsElided(bare.AsSpan(from, used - from)))
                    break;
                if (IsPossessive(text, i + 1))
                {
                    i += 2;
                    end = i;
                    break;
                }

                i += width;
                continue;
            }

            if (here != kind || (kind == Kind.Alone && i > start))
                break;
            Append(text, i);
            i += width;
            end = i;
        }

        // Trailing joiners belong to nothing.
        read.Add(new Word(start, end, words.NumberOf(bare.AsSpan(from, used - from)), gap, from, used - from));
        return Math.Max(i, start + 1);
    }

    private bool IsElided() => elided.Length > 0 && read.Count > 0 && IsElided(Bare(read[^1]));

    private bool IsElided(ReadOnlySpan<char> word)
    {
        foreach (var known in elided)
        {
            if (word.SequenceEqual(known))
                return true;
        }

        return false;
    }

    private static bool IsPossessive(string text, int at) =>
        text[at] is 's' or 'S' && (at + 1 == text.Length || KindAt(text, at + 1, out _) is not (Kind.Letter or Kind.Apostrophe));

    private void Append(string text, int at)
    {
        var letter = text[at];
        if (letter < 0x80)
        {
            bare[used++] = letter is >= 'A' and <= 'Z' ? (char)(letter | 0x20) : letter;
            return;
        }

        Rune.DecodeFromUtf16(text.AsSpan(at), out var rune, out _);
        if (BareLetters.SeveralOf(rune.Value) is { } several)
        {
            several.CopyTo(bare.AsSpan(used));
            used += several.Length;
            return;
        }

        if (ComposedLetters.IsSyllable(rune.Value))
        {
            used += ComposedLetters.Take(rune.Value, bare.AsSpan(used));
            return;
        }

        var digit = CharUnicodeInfo.GetDigitValue(text, at);
        var one = digit >= 0 ? '0' + digit : BareLetters.Of(rune.Value);
        var small = one < 0x80 ? new Rune(one) : Rune.ToLowerInvariant(new Rune(one));
        used += small.EncodeToUtf16(bare.AsSpan(used));
    }

    private static Gap GapOf(Kind kind) => kind switch
    {
        Kind.Hyphen => Gap.Hyphen,
        Kind.Line => Gap.Line,
        Kind.Comma => Gap.Comma,
        Kind.Stop => Gap.Stop,
        Kind.Apart => Gap.Apart,
        Kind.Unheard => Gap.None,
        _ => Gap.Space,
    };

    private static Kind KindAt(string text, int at, out int width)
    {
        var letter = text[at];
        width = 1;
        if (letter < 0x80)
            return Ascii[letter];
        if (letter == '\uFFFD' || !Rune.TryGetRuneAt(text, at, out var rune))
            return Kind.Space;
        width = rune.Utf16SequenceLength;
        if (rune.Value is 0x2019 or 0x02BC or 0xFF07)
            return Kind.Apostrophe;
        // The marks of kana, which stand in a letter of one piece as well; and the iota that is written below a Greek letter.
        if (rune.Value is 0x3099 or 0x309A or Tatweel)
            return Kind.Unheard;
        if (rune.Value == 0x0345)
            return Kind.Letter;
        if (IsWrittenWithoutSpaces(rune.Value))
            return Kind.Alone;
        if (CharUnicodeInfo.GetDigitValue(text, at) >= 0)
            return Kind.Figure;
        if (rune.Value is (>= 0xFF01 and <= 0xFF5E))
            return Ascii[rune.Value - 0xFEE0];
        return Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.Format => Kind.Unheard,
            UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter
                or UnicodeCategory.ModifierLetter or UnicodeCategory.OtherLetter => Kind.Letter,
            UnicodeCategory.LetterNumber => Kind.Letter,
            UnicodeCategory.OtherSymbol when rune.Value is (>= 0x24B6 and <= 0x24E9) or (>= 0x1F130 and <= 0x1F149) => Kind.Letter,
            UnicodeCategory.ParagraphSeparator => Kind.Stop,
            UnicodeCategory.LineSeparator => Kind.Line,
            UnicodeCategory.DashPunctuation => rune.Value is 0x2014 or 0x2015 ? Kind.Comma : Kind.Hyphen,
            UnicodeCategory.OtherPunctuation => rune.Value is 0x2026 or 0xFF1B ? Kind.Stop : Kind.Space,
            UnicodeCategory.MathSymbol when rune.Value == 0x2212 => Kind.Hyphen,
            UnicodeCategory.MathSymbol when rune.Value == 0x00D7 => Kind.Apart,
            _ => Kind.Space,
        };
    }

    // Thai, Lao, Khmer, Myanmar and the scripts of China and Japan: each letter counts by itself, since no space parts the words.
    private static bool IsWrittenWithoutSpaces(int point) =>
        point is (>= 0x0E01 and <= 0x0EFF) or (>= 0x1000 and <= 0x109F) or (>= 0x1780 and <= 0x17FF) or (>= 0x3040 and <= 0x30FF)
            or (>= 0x3400 and <= 0x9FFF) or (>= 0xF900 and <= 0xFAFF) or (>= 0x20000 and <= 0x3FFFF);

    private static readonly Kind[] Ascii = [.. Enumerable.Range(0, 128).Select(i => (char)i switch
    {
        (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') => Kind.Letter,
        >= '0' and <= '9' => Kind.Figure,
        '-' or '_' => Kind.Hyphen,
        '\n' => Kind.Line,
        ',' => Kind.Comma,
        '.' or ';' or ':' or '!' or '?' or '|' or '=' => Kind.Stop,
        '\'' => Kind.Apostrophe,
        '*' => Kind.Unheard,
        '/' => Kind.Apart,
        _ => Kind.Space,
    })];

    private enum Kind : byte
    {
        Space,
        Letter,
        Figure,
        Alone,
        Unheard,
        Apostrophe,
        Hyphen,
        Line,
        Comma,
        Stop,
        Apart,
    }
}
