using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Whether figures are those of a measure, a date or a page.</summary>
internal enum Measured
{
    /// <summary>Nothing says so.</summary>
    No,

    /// <summary>A unit, a month or a word such as "page" stands beside them.</summary>
    Likely,

    /// <summary>They are a fraction or part of a measure.</summary>
    Surely,
}

/// <summary>Tells measures, prices, dates and pages, which are no codes, by what stands beside their figures.</summary>
internal sealed class Measures(WordList words)
{
    private const int LongestShort = 5;
    private static readonly System.Buffers.SearchValues<char> Signs = System.Buffers.SearchValues.Create("%°€$£¥″′×⅛¼⅜½⅝¾⅞");

    /// <summary>What the words from one to another are.</summary>
    public Measured Of(WordReader text, string source, int first, int last)
    {
        var isUnit = last + 1 < text.Words.Length && (text.Words[last + 1].Gap & ~(Gap.Space | Gap.Hyphen | Gap.Apart)) == Gap.None
            && (words.RoleOf(text.Words[last + 1].Id) & WordRole.Unit) != WordRole.None
            && !IsVerb(text, source, last + 1)
            && !(words.Language.HasNoSpaces && text.Words[last + 1].Gap != Gap.None)
            && !source.AsSpan(text.Words[last + 1].Start).StartsWith("ゼロ");
        isUnit |= IsNumberOf(text, last);
        // "P. 28", but not "in this order: 28".
        var isBehindStop = (text.Words[first].Gap & Gap.Stop) != Gap.None;
        var isPage = first > 0 && (text.Words[first].Gap & (Gap.Comma | Gap.Paragraph | Gap.Line)) == Gap.None
            && (!isBehindStop || text.Words[first - 1].Length < LongestShort)
            && (words.RoleOf(text.Words[first - 1].Id) & WordRole.Page) != WordRole.None
            && !IsVerb(text, source, first - 1);
        isPage |= IsScale(text, first);
        var isSigned = HasSign(source, text.Words[first].Start - 1, -1) || HasSign(source, text.Words[last].End, 1);
        var isDecimal = first < last && IsDecimal(text, source, first, last);
        var isZero = isDecimal && text.Bare(text.Words[first]) is "0";
        if (!isUnit && !isPage && !isSigned)
            return isZero ? Measured.Likely : Measured.No;
        return isDecimal || first < last && (text.Words[last].Gap & Gap.Apart) != Gap.None ? Measured.Surely : Measured.Likely;
    }

    // "A scale of 1:20", 縮尺は1:20: a small word stands between.
    private bool IsScale(WordReader text, int first) =>
        first > 1 && (words.RoleOf(text.Words[first - 1].Id) & (WordRole.Function | WordRole.Preposition | WordRole.Link)) != WordRole.None
        && words.Signs.IsNoTime(text.Words[first - 2].Id) && (words.RoleOf(text.Words[first - 2].Id) & WordRole.Page) != WordRole.None;

    // "We made 264 of these", "264 dieser Truhen".
    private bool IsNumberOf(WordReader text, int last) =>
        last + 2 < text.Words.Length && text.Words[last + 1].Gap == Gap.Space && text.Words[last].Length > 2
        && char.IsAsciiDigit(text.Bare(text.Words[last])[0])
        && ((words.Signs.IsOf(text.Words[last + 1].Id) && (words.RoleOf(text.Words[last + 2].Id) & WordRole.Determiner) != WordRole.None)
            || text.Bare(text.Words[last + 1]) is "dieser" or "unserer" or "solcher");

    // "831 may help": months have a capital in English.
    private bool IsVerb(WordReader text, string source, int at) =>
        words.Language == English.Language && text.Bare(text.Words[at]) is "may" or "march" && char.IsLower(source[text.Words[at].Start]);

    private static bool IsDecimal(WordReader text, string source, int first, int last) =>
        last == first + 1
        && text.Words[last].Start == text.Words[first].End + 1
        && source[text.Words[first].End] is '.' or ',' or '٫'
        && (text.Words[last].Length != 3 || text.Bare(text.Words[first]) is "0");

    private static bool HasSign(string source, int at, int step)
    {
        if (at >= 0 && at < source.Length && source[at] is ' ' or '\u00A0' or '\u202F')
            at += step;
        return at >= 0 && at < source.Length && Signs.Contains(source[at]);
    }
}
