using System.Globalization;
using System.Runtime.InteropServices;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>What the pieces of a code are read as.</summary>
internal enum PieceKind
{
    /// <summary>Figures and number words.</summary>
    Figures,

    /// <summary>Roman numerals.</summary>
    Roman,

    /// <summary>Letters, their names, and the words of spelling alphabets.</summary>
    Letters,

    /// <summary>First, second, third.</summary>
    Ordinals,

    /// <summary>Letters by their places in the alphabet.</summary>
    Alphabet,
}

/// <summary>A piece of a code.</summary>
/// <param name="Symbols">Figures or small letters.</param>
/// <param name="First">Its first word.</param>
/// <param name="Next">The word behind it.</param>
/// <param name="IsCount">Whether it says how many of something there are.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Piece(string Symbols, int First, int Next, bool IsCount = false);

/// <summary>How much of a text could be pieces of a code.</summary>
/// <param name="Figures">Figures and number words.</param>
/// <param name="Numerals">Roman numerals.</param>
/// <param name="Letters">Lone letters, and words that stand for one.</param>
/// <param name="Places">First, second, last.</param>
/// <param name="HasAlphabet">Whether the alphabet is spoken of.</param>
/// <param name="IsTurned">Whether something may be read from its end.</param>
/// <param name="HasInitials">Whether first letters are spoken of.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PieceCounts(
    int Figures, int Numerals, int Letters, int Places, bool HasAlphabet, bool IsTurned, bool HasInitials);

/// <summary>Reads single pieces of codes: <c>two zeros</c>, <c>K as in kilo</c>, <c>VII</c>; and the places of which they are told.</summary>
internal sealed class PieceReader(WordList words)
{
    private const int MostAhead = 4;
    private const int MostAlike = 6;
    private const char FirstKatakana = '\u30A0';
    private const WordRole Helping = WordRole.Function | WordRole.Determiner | WordRole.Preposition | WordRole.And | WordRole.Between | WordRole.Sequence;
    private const Gap Parting = Gap.Comma | Gap.Stop | Gap.Line | Gap.Paragraph;
    private readonly NumberReader numbers = new(words);
    private readonly bool hasNoSpaces = words.Language.HasNoSpaces;
    private readonly (string Said, char Figure)[] spoken =
    [
        .. words.Language.Pieces.Spoken.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .OrderByDescending(pair => pair.Length)
            .Select(pair => (pair[..^2], pair[^1])),
    ];

    private int endOfSpoken = -1;

    /// <summary>How much of a text could be pieces, so that most texts needn't be read for them.</summary>
    public PieceCounts Count(WordReader text, string source)
    {
        var (figures, numerals, letters, places, hasAlphabet, isTurned, hasInitials) = (0, 0, 0, 0, false, hasNoSpaces, false);
        var before = -1;
        foreach (var word in text.Words)
        {
            var role = words.RoleOf(word.Id);
            var hint = words.Signs.HintOf(word.Id);
            isTurned |= (hint & PieceHint.Turning) != PieceHint.None;
            hasInitials |= (hint & PieceHint.Initials) != PieceHint.None || ((hint & PieceHint.Letter) != PieceHint.None && words.Signs.PlaceOf(before) == 1)
                || (words.Language.HeadFirst && words.Signs.PlaceOf(word.Id) == 1 && (words.Signs.HintOf(before) & PieceHint.Letter) != PieceHint.None);
            before = word.Id;
            if (char.IsAsciiDigit(text.Bare(word)[0]) || (word.Id >= 0 && words.FigureOf(word.Id) is not null))
                figures++;
            if (word.Length == 1 || (role & WordRole.Letter) != WordRole.None)
                letters++;
            if ((role & WordRole.Place) != WordRole.None)
                places++;
            hasAlphabet |= word.Id >= 0 && (role & WordRole.Setting) != WordRole.None && words.Signs.IsAlphabet(word.Id);
            if (word.Length > 1 && char.IsAsciiLetterUpper(source[word.Start]) && char.IsAsciiLetterUpper(source[word.End - 1]))
                letters += 2;
            if (source[word.Start] is 'I' or 'V' or 'X' or 'L' or 'C' or 'D' or 'M' && (word.Length > 2 || figures + letters > 0))
                numerals++;
        }

        return hasNoSpaces
            ? new(MostAhead, 1, MostAhead, MostAhead, hasAlphabet, isTurned, hasInitials)
            : new(figures, numerals, letters, places, hasAlphabet, isTurned, hasInitials);
    }

    /// <summary>The piece that begins at a word, if there is one.</summary>
    public Piece? At(WordReader text, string source, int at, PieceKind kind) => kind switch
    {
        PieceKind.Figures => Spoken(text, source, at) ?? Figures(text, at),
        PieceKind.Letters => Letter(text, source, at),
        PieceKind.Roman => Numeral(text, source, at),
        PieceKind.Ordinals => words.Signs.PlaceOf(text.Words[at].Id) is > 0 and < 10 and var place ? new($"{place}", at, at + 1) : null,
        _ => InAlphabet(text, at),
    };

    /// <summary>The place that a word or number names: <c>the second wheel</c>, <c>wheel 2:</c>, <c>2.</c> before a line; 0 if it names none.</summary>
    /// <param name="text">The words.</param>
    /// <param name="source">The text.</param>
    /// <param name="at">The word.</param>
    /// <param name="next">The word behind it.</param>
    public int PlaceAt(WordReader text, string source, int at, out int next)
    {
        next = at + 1;
        var word = text.Words[at];
        // "Acht" without an ending is a number.
        if (Has(text, at, WordRole.Place) && words.Signs.PlaceOf(word.Id) is not 0 and var place && text.Bare(word) is not "acht")
            return place;
        // "The first drum six clicks" says no sixth drum.
        var isPlaced = at > 0 && Has(text, at - 1, WordRole.Place);
        if (Has(text, at, WordRole.Wheel) && !isPlaced && numbers.IsNumber(text, next) && IsTight(text, next) && numbers.Read(text, ref next, out place))
            return place is > 0 and < 10 && IsSaidOf(text, source, next) ? place : 0;
        if (LetterPlace(text, source, at) is > 0 and var lettered)
        {
            next = lettered;
            return text.Bare(text.Words[next - 1])[0] - 'a' + 1;
        }

        if (!char.IsAsciiDigit(text.Bare(word)[0]) && !hasNoSpaces)
            return 0;
        next = at;
        if (!numbers.Read(text, ref next, out place) || place is 0 or > 9 || next >= text.Words.Length)
            return 0;
        if (text.Words[next].Gap == Gap.None && text.Bare(text.Words[next]) is "st" or "nd" or "rd" or "th" or "er" or "e" or "re" or "eme")
        {
            next++;
            return place;
        }

        if (hasNoSpaces)
            return IsCountedPlace(text, ref next) ? place : 0;
        var isListed = (word.Gap & (Gap.Line | Gap.Paragraph)) != Gap.None
            && word.End < source.Length && source[word.End] is '.' or ')' or ':' && word.End + 1 < source.Length && char.IsWhiteSpace(source[word.End + 1])
            && (text.Words[next].Gap & (Gap.Line | Gap.Paragraph)) == Gap.None;
        return isListed ? place : 0;
    }

    // "Drum A takes the six", or a table whose lines begin with A, B, C; the word behind the letter, or 0.
    private int LetterPlace(WordReader text, string source, int at)
    {
        var letter = Has(text, at, WordRole.Wheel) ? at + 1 : at;
        if (letter + 1 >= text.Words.Length || text.Bare(text.Words[letter]) is not [>= 'a' and <= 'j'])
            return 0;
        var isListed = letter == at && (text.Words[at].Gap & (Gap.Line | Gap.Paragraph)) != Gap.None && numbers.IsNumber(text, at + 1) && IsTight(text, at + 1);
        var isNamed = letter > at && IsTight(text, letter) && char.IsUpper(source[text.Words[letter].Start]) && IsSaidOf(text, "", letter + 1);
        return isListed || isNamed ? letter + 1 : 0;
    }

    // 一つ目, 2番目.
    private static bool IsCountedPlace(WordReader text, ref int next)
    {
        var at = text.Bare(text.Words[next]) is "目" ? next : next + 1;
        if (at >= text.Words.Length || text.Bare(text.Words[at]) is not "目" || text.Words[next].Gap != Gap.None)
            return false;
        next = at + 1;
        return true;
    }

    // "Wheel 2: 5", "wheel 2 is set to 5": something follows that is said of it.
    private bool IsSaidOf(WordReader text, string source, int next)
    {
        if (next >= text.Words.Length)
            return false;
        var end = text.Words[next - 1].End;
        if (end < source.Length && source[end] is ':' or '=')
            return true;
        for (var i = next; i < next + MostAhead && i < text.Words.Length; i++)
        {
            if ((text.Words[i].Gap & Parting) != Gap.None)
                return false;
            if (numbers.IsNumber(text, i) || (text.Words[i].Length == 1 && !Has(text, i, WordRole.Determiner)))
                return i > next;
        }

        return false;
    }

    // にい、はち: single letters of these are small words as well, and count only where nothing stands before them.
    private Piece? Spoken(WordReader text, string source, int at)
    {
        var start = text.Words[at].Start;
        foreach (var (said, figure) in spoken)
        {
            if (!source.AsSpan(start).StartsWith(said, StringComparison.Ordinal)
                || (text.Words[at].Gap == Gap.None && endOfSpoken != start && said[0] < FirstKatakana))
                continue;
            endOfSpoken = start + said.Length;
            return new($"{figure}", at, at + said.Length);
        }

        return null;
    }

    private Piece? Figures(WordReader text, int at)
    {
        var again = words.FigureOf(text.Words[at].Id) is { Kind: FigureKind.Again, Value: var times } ? times : IsPairOf(text, at) ? 2 : 1;
        var next = again > 1 ? at + 1 : at;
        while (again > 1 && next < text.Words.Length && Has(text, next, WordRole.Determiner | WordRole.Preposition) && !numbers.IsNumber(text, next))
            next++;
        // "The last pair 04".
        if (again > 1 && next == at + 1 && next < text.Words.Length && text.Words[next].Length > 1 && char.IsAsciiDigit(text.Bare(text.Words[next])[0])
            && words.Signs.IsTwice(text.Words[at].Id))
            again = 1;
        var first = next;
        if (!numbers.Read(text, ref next, out var number) || (next < text.Words.Length && IsPronoun(text, first, next, number)))
            return null;
        var bare = text.Bare(text.Words[first]);
        if (IsGlued(text, first) || IsGlued(text, first + 1))
            return null;
        var symbols = char.IsAsciiDigit(bare[0]) ? bare.ToString() : number.ToString(CultureInfo.InvariantCulture);
        if (next < text.Words.Length && IsTight(text, next) && number is > 0 and <= MostAlike && Counted(text, next) is { } counted)
        {
            symbols = string.Concat(Enumerable.Repeat(counted.Symbols, number));
            next = counted.Next;
        }
        else if (next < text.Words.Length && words.Signs.IsTwice(text.Words[next].Id) && !numbers.IsNumber(text, next + 1))
        {
            (again, next) = (2, next + 1);
        }

        if (Has(text, next, WordRole.Unit) && IsTight(text, next))
            return null;
        // "El dos cede": with the article of one thing a number is its own noun.
        return new(string.Concat(Enumerable.Repeat(symbols, again)), at, next, !HasArticleOfOne(text, first) && IsCount(text, next));
    }

    // "A pair of sixes"; "on the left pair, eighty-three" is where.
    private bool IsPairOf(WordReader text, int at) =>
        words.Signs.IsTwice(text.Words[at].Id) && at + 1 < text.Words.Length && IsTight(text, at + 1);

    private bool HasArticleOfOne(WordReader text, int at) =>
        words.Language.HeadFirst && at > 0 && text.Bare(text.Words[at - 1]) is "el" or "le" && IsTight(text, at);

    // "06" in "2024-06-28": part of a longer number.
    private static bool IsGlued(WordReader text, int at)
    {
        if (at == 0 || at >= text.Words.Length)
            return false;
        var (left, right) = (text.Words[at - 1], text.Words[at]);
        return left.Length + right.Length > 2
            && right.Start == left.End + 1
            && (right.Gap & (Gap.Space | Gap.Line)) == Gap.None
            && char.IsAsciiDigit(text.Bare(left)[0])
            && char.IsAsciiDigit(text.Bare(right)[0]);
    }

    // "Two zeros": a figure in the plural behind a small number.
    private Piece? Counted(WordReader text, int at)
    {
        if (words.FigureOf(text.Words[at].Id) is not { Kind: FigureKind.Small, Value: < 10 and var figure })
            return null;
        var bare = text.Bare(text.Words[at]);
        var isMany = words.Language.Pieces.Plurals ? at > 0 : bare[^1] == 's';
        return isMany ? new(figure.ToString(CultureInfo.InvariantCulture), at, at + 1) : null;
    }

    // "The first one", "eine Drei": the word for one is none.
    private bool IsPronoun(WordReader text, int first, int next, int number)
    {
        if (number != 1 || HasArticleOfOne(text, first) || next > first + 1 || char.IsAsciiDigit(text.Bare(text.Words[first])[0]))
            return false;
        if (first > 0 && words.Signs.PlaceOf(text.Words[first - 1].Id) > 0 && (text.Words[first].Gap & Parting) == Gap.None)
            return true;
        return Has(text, first, WordRole.Determiner)
            && (text.Words[next].Gap & Parting) == Gap.None
            && !Has(text, next, WordRole.And | WordRole.Sequence | WordRole.Preposition);
    }

    // "5 wheels", "22 cm": the number says how many.
    private bool IsCount(WordReader text, int next)
    {
        if (next >= text.Words.Length || (text.Words[next].Gap & Parting) != Gap.None)
            return false;
        if (hasNoSpaces)
            return text.Words[next].Gap == Gap.None && "つ個枚本人羽匹頭輪粒滴回".AsSpan().Contains(text.Bare(text.Words[next])[0]);
        return !words.Signs.IsTally(text.Words[next].Id)
            && !Has(text, next, Helping | WordRole.Setting | WordRole.Link | WordRole.Place)
            && !numbers.IsNumber(text, next)
            && !words.Signs.IsTwice(text.Words[next].Id) && text.Words[next].Length > 1
            && !IsNoNoun(text.Bare(text.Words[next]));
    }

    // "A three tacked on the end".
    private bool IsNoNoun(ReadOnlySpan<char> word) => words.Language.Code switch
    {
        "en" => IsNoEnglishNoun(word),
        "de" => word is "macht" or "kommt" or "steht" or "folgt" or "gehort" or "bildet" or "beginnt" or "schliesst" or "sitzt" or "fuhrt" or "endet",
        "fr" => word is "va" or "vient" or "suit" or "ouvre" or "ferme" or "finit" or "termine" or "commence" or "reste",
        "es" => word is "va" or "viene" or "sigue" or "abre" or "cierra" or "acaba" or "termina" or "empieza" or "queda",
        _ => false,
    };

    private static bool IsNoEnglishNoun(ReadOnlySpan<char> word) =>
        word is "leads" or "follows" or "comes" or "stands" or "goes" or "closes" or "opens" or "ends" or "sits" or "starts" or "begins"
            or "finishes" or "takes"
        || word.Length > 4 && (word.EndsWith("ed") || word.EndsWith("ing") || word.EndsWith("ly"));

    private Piece? InAlphabet(WordReader text, int at)
    {
        var next = at + 1;
        var place = words.Signs.PlaceOf(text.Words[at].Id);
        var isTwenty = words.FigureOf(text.Words[at].Id) is { Value: 20 } && next < text.Words.Length;
        if (isTwenty && words.Signs.PlaceOf(text.Words[next].Id) is > 0 and < 7 and var more)
            (place, next) = (20 + more, next + 1);
        else if (place == 0 && char.IsAsciiDigit(text.Bare(text.Words[at])[0]))
        {
            next = at;
            numbers.Read(text, ref next, out place);
        }

        return place is > 0 and <= 26 ? new($"{(char)('a' + place - 1)}", at, next) : null;
    }

    private Piece? Letter(WordReader text, string source, int at)
    {
        var word = text.Words[at];
        var bare = text.Bare(word);
        var letter = bare.Length == 1 && char.IsLetter(bare[0]) ? bare[0] : words.Signs.LetterOf(word.Id) is > '\0' and var named ? named
            : LetterLikeGrammar(text, source, at);
        if (letter == '\0' || (hasNoSpaces && !char.IsAsciiLetter(letter)))
            return null;
        var next = at + 1;
        if (next < text.Words.Length && (text.Words[next].Gap & Gap.Elision) != Gap.None)
            return null;
        if (bare.Length == 1 && next + 1 < text.Words.Length && words.Signs.IsStanding(text.Words[next].Id))
        {
            var skip = next + 1;
            while (skip + 1 < text.Words.Length && skip < next + 3 && (words.Signs.IsStanding(text.Words[skip].Id) || Has(text, skip, WordRole.Determiner)))
                skip++;
            if (text.Bare(text.Words[skip]) is [var initial, _, ..] && initial == letter)
                return new($"{letter}", at, skip + 1);
        }

        if (bare.Length == 1 && Has(text, at, WordRole.Function | WordRole.Determiner | WordRole.And | WordRole.Preposition) && !IsSetApart(text, source, at)
            && !(at > 0 && words.Signs.IsIndefinite(text.Words[at - 1].Id) && IsTight(text, at)
                && (next >= text.Words.Length || (text.Words[next].Gap & Parting) != Gap.None || Has(text, next, WordRole.And)))
            && !(char.IsUpper(source[word.Start]) && at > 0 && Has(text, at - 1, WordRole.Determiner) && (word.Gap & Parting) == Gap.None))
            return null;
        var isNext = at > 0 && char.IsUpper(source[word.Start]) && ((word.Gap & Gap.Comma) != Gap.None || Has(text, at - 1, WordRole.And | WordRole.Sequence));
        if (next < text.Words.Length && bare.Length == 1 && !isNext && (text.Words[next].Gap & Parting) == Gap.None
            && !Has(text, next, Helping | WordRole.Setting | WordRole.Place)
            && text.Words[next].Length > 1 && words.Signs.LetterOf(text.Words[next].Id) == '\0' && !hasNoSpaces
            && words.FigureOf(text.Words[next].Id) is not { Kind: FigureKind.Again })
        {
            // The code of signals has "x-ray".
            return letter == 'x' && text.Words[next].Gap == Gap.Hyphen && text.Bare(text.Words[next]) is "ray" ? new("x", at, next + 1) : null;
        }

        return new($"{letter}", at, next);
    }

    // "Ka, ji, dé": the names of some letters are words of grammar but for an accent, or but for the commas around them.
    private char LetterLikeGrammar(WordReader text, string source, int at)
    {
        var bare = text.Bare(text.Words[at]);
        if (bare.Length != 2 || bare[1] != 'e' || words.Language.Code is not ("fr" or "es"))
            return '\0';
        var isMarked = words.Language.Code == "fr" ? source[text.Words[at].End - 1] is 'é' : bare[0] == 'd';
        return isMarked && bare[0] is ('c' or 'd' or 't') && (text.Words[at].Gap & (Gap.Comma | Gap.Paragraph)) != Gap.None
            && (at + 1 >= text.Words.Length || (text.Words[at + 1].Gap & Parting) != Gap.None) ? bare[0] : '\0';
    }

    // "S deux fois".
    private bool IsTwice(WordReader text, int at) =>
        words.Signs.IsTwice(text.Words[at].Id)
        || (at + 1 < text.Words.Length && words.FigureOf(text.Words[at].Id) is { Value: 2 } && words.Signs.IsTimes(text.Words[at + 1].Id));

    // A letter that is a word as well: "then A, then I".
    private bool IsSetApart(WordReader text, string source, int at)
    {
        var next = at + 1;
        var ends = next >= text.Words.Length || (text.Words[next].Gap & (Parting | Gap.Hyphen)) != Gap.None
            || Has(text, next, WordRole.And | WordRole.Sequence) || text.Words[next].Length == 1 || IsTwice(text, next);
        var begins = (text.Words[at].Gap & (Parting | Gap.Hyphen)) != Gap.None || (at > 0 && Has(text, at - 1, WordRole.Sequence));
        return ends && (begins || char.IsUpper(source[text.Words[at].Start]) || (at > 0 && text.Words[at - 1].Length == 1));
    }

    private Piece? Numeral(WordReader text, string source, int at)
    {
        var word = text.Words[at];
        if (words.FigureOf(word.Id) is { Value: 0 })
            return new("0", at, at + 1);
        return Roman.IsCapital(source[word.Start]) && Roman.IsCapital(source[word.End - 1]) && Roman.ValueOf(text.Bare(word)) is > 0 and var value
            ? new(value.ToString(CultureInfo.InvariantCulture), at, at + 1)
            : null;
    }

    private static bool IsTight(WordReader text, int at) => (text.Words[at].Gap & (Gap.Comma | Gap.Stop | Gap.Line | Gap.Paragraph)) == Gap.None;

    private bool Has(WordReader text, int at, WordRole role) => at < text.Words.Length && (words.RoleOf(text.Words[at].Id) & role) != WordRole.None;
}
