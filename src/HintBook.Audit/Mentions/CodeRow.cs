using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes in whatever way they are said: figures, number words and lone letters that follow each other are strung
/// together, once word by word and once as English says large numbers, and the codes are looked up in the string.
/// Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class CodeRow(CodeTable codes, WordNumbers numbers, Places places)
{
    private const int MostBetween = 2;
    private const char FirstUnspaced = '\u3040';

    // A short code is likely to appear in a longer row of figures by chance.
    private const int ShortestInARow = 3, SurelyInARow = 4;

    private readonly List<int> row = [];
    private readonly List<Piece> pieces = [];
    private readonly StringBuilder symbols = new();

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<int> ids, string source, List<FoundSecret> found)
    {
        if (codes.Longest == 0)
            return;
        for (var at = 0; at < ids.Length; at++)
        {
            if (!Starts(text, ids, at))
                continue;
            Gather(text, ids, at);
            String(text, ids, asOneNumber: false);
            LookUp(text, ids, source, found);
            String(text, ids, asOneNumber: true);
            LookUp(text, ids, source, found);

            at = row[^1];
        }
    }

    // A lone letter begins a row only where more symbols follow: "a", "I".
    private bool Starts(FoldedText text, ReadOnlySpan<int> ids, int at) =>
        IsSymbol(text, ids, at)
        && (text.Words[at].Length > 1 || char.IsAsciiDigit(text.Of(text.Words[at])[0])
            || numbers.IsSaidInNumbers(ids[at]) || (at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Paragraph && IsSymbol(text, ids, at + 1)));

    private bool IsSymbol(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        var word = text.Of(text.Words[at]);
        return (word.Length == 1 && IsAlone(text, at))
            || word.IndexOfAnyInRange('0', '9') >= 0
            || numbers.IsSaidInNumbers(ids[at]);
    }

    // Not the "l" of "l’abeille", nor a letter of a script without spaces.
    private bool IsAlone(FoldedText text, int at) =>
        !(at + 1 < text.Words.Length && text.Words[at + 1].Parting == Parting.Elision)
        && !(numbers.Language.IsUnspaced && text.Of(text.Words[at])[0] >= FirstUnspaced);

    private void Gather(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        row.Clear();
        row.Add(at);
        var between = 0;
        for (var i = at + 1; i < ids.Length && text.Words[i].Parting < Parting.Paragraph; i++)
        {
            var isBetween = (numbers.UseOf(ids[i]) & (WordUse.Between | WordUse.Determiner)) != WordUse.Plain;
            // "a" is a letter among letters and a word among figures.
            if (IsSymbol(text, ids, i) && !(isBetween && !numbers.IsSaidInNumbers(ids[i]) && i + 1 < ids.Length && IsFigure(text, ids, i + 1)))
            {
                row.Add(i);
                between = 0;
            }
            else if (!isBetween || ++between > MostBetween)
            {
                break;
            }
        }
    }

    private bool IsFigure(FoldedText text, ReadOnlySpan<int> ids, int at) =>
        IsSymbol(text, ids, at)
        && (text.Words[at].Length > 1
            || numbers.IsSaidInNumbers(ids[at])
            || char.IsAsciiDigit(text.Of(text.Words[at])[0]));

    private void String(FoldedText text, ReadOnlySpan<int> ids, bool asOneNumber)
    {
        symbols.Clear();
        pieces.Clear();
        var onlyLetters = true;
        foreach (var word in row)
            onlyLetters &= !IsFigure(text, ids, word);
        Span<int> said = row.Count <= 128 ? stackalloc int[row.Count] : new int[row.Count];
        Span<int> figures = row.Count <= 128 ? stackalloc int[row.Count] : new int[row.Count];
        for (var i = 0; i < row.Count; i++)
            (said[i], figures[i]) = (ids[row[i]], FiguresOf(text.Of(text.Words[row[i]])));
        for (var i = 0; i < row.Count; i++)
        {
            var (first, from, times) = (i, symbols.Length, 1);
            for (; i + 1 < row.Count && numbers.RepeatsOf(said[i]) is > 0 and var again; i++)
                times *= again;
            var (number, words) = numbers.Spoken.At(said, figures, i, asOneNumber ? int.MaxValue : 99);
            if (words > 0)
            {
                symbols.Append(number);
                i += words - 1;
            }
            else
            {
                var word = text.Of(text.Words[row[i]]);
                symbols.Append(word is "o" && !onlyLetters ? "0" : word);
            }

            pieces.Add(new(from, row[first], row[i]));
            var each = symbols.ToString(from, symbols.Length - from);
            for (; times > 1; times--)
                symbols.Append(each);
        }
    }

    /// <summary>What a word of figures alone counts; -1 for other words, and for those that are too long.</summary>
    public static int FiguresOf(ReadOnlySpan<char> word)
    {
        if (word.Length > 8 || word.ContainsAnyExceptInRange('0', '9'))
            return -1;
        var value = 0;
        foreach (var figure in word)
            value = (value * 10) + (figure - '0');
        return value;
    }

    private void LookUp(FoldedText text, ReadOnlySpan<int> ids, string source, List<FoundSecret> found)
    {
        var all = symbols.ToString();
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = i; j < pieces.Count; j++)
            {
                var (from, to) = (pieces[i].From, j + 1 < pieces.Count ? pieces[j + 1].From : all.Length);
                if (to - from > codes.Longest || (j > i && IsAnother(j, to)))
                    break;
                var isWhole = i == j || (i == 0 && j == pieces.Count - 1);
                if (!isWhole && to - from < ShortestInARow)
                    continue;
                foreach (var (secret, sure) in codes.Of(all.AsSpan(from..to)))
                {
                    var (first, last) = (pieces[i].First, pieces[j].Last);
                    var role = RoleOf(text, ids, source, first, last, j - i + 1 == to - from);
                    if (role == NumberRole.Ordinary)
                        continue;
                    var isPair = j == i + 1 && IsPair(j, to) && pieces[j].First - pieces[i].Last > 1;
                    var isSure = sure && role == NumberRole.Code && !isPair && (isWhole || to - from >= SurelyInARow);
                    found.Add(new(secret, first, last, isSure, Words: 1, IsCode: true));
                }
            }
        }
    }

    // Codes that are said symbol by symbol are no ordinary numbers, unless a unit follows.
    private NumberRole RoleOf(FoldedText text, ReadOnlySpan<int> ids, string source, int first, int last, bool isBySymbol)
    {
        var role = Measures.RoleOf(source, text.Words[first].Start, text.Words[last].End);
        if (role == NumberRole.Code && (IsAcrossItems(text, first, last) || places.Has(source, text.Words[first].Start, text.Words[last].End)))
            return NumberRole.Doubtful;
        if (role != NumberRole.Code || (isBySymbol && last > first))
            return role;
        var isOne = first == last && char.IsAsciiDigit(text.Of(text.Words[first])[0]);
        return Counts(text, ids, source, last) || IsCounted(source, text.Words[last].End)
            || (!isOne && !IsGrouped(text, first, last) && HasFigures(text, first, last))
            ? NumberRole.Doubtful
            : role;
    }

    // "6083 visitors": a word that isn't one of grammar follows.
    private bool Counts(FoldedText text, ReadOnlySpan<int> ids, string source, int last) =>
        last + 1 < ids.Length
        && text.Words[last + 1].Parting == Parting.Space
        && char.IsWhiteSpace(source[text.Words[last].End])
        && numbers.UseOf(ids[last + 1]) == WordUse.Plain
        && numbers.Language.Grammar.Length > 0 && char.IsLetter(text.Of(text.Words[last + 1])[0]);

    // 五百八十四箱: how many there are.
    private bool IsCounted(string source, int end) =>
        numbers.Language.IsUnspaced && end < source.Length && "箱個枚本人台冊軒匹羽頭件通名組袋俵石両歩段室社部杯着足粒".Contains(source[end], StringComparison.Ordinal);

    private static bool IsAcrossItems(FoldedText text, int first, int last)
    {
        for (var i = first + 1; i <= last; i++)
        {
            if (text.Words[i].Parting >= Parting.Item)
                return true;
        }

        return false;
    }

    private static bool HasFigures(FoldedText text, int first, int last)
    {
        for (var i = first; i <= last; i++)
        {
            if (char.IsAsciiDigit(text.Of(text.Words[i])[0]))
                return true;
        }

        return false;
    }

    // "51 937", "51,937".
    private static bool IsGrouped(FoldedText text, int first, int last)
    {
        for (var i = first + 1; i <= last; i++)
        {
            if (text.Words[i].Length != 3)
                return false;
        }

        return text.Words[first].Length <= 3;
    }

    // "325 and 14" are two numbers; "5, 1, 7 and 3" are one.
    private bool IsAnother(int piece, int to) =>
        pieces[piece].First - pieces[piece - 1].Last > 1 && to - pieces[piece].From > 1 && pieces[piece].From - pieces[piece - 1].From > 1
        && !IsPair(piece, to);

    // "Sixty-one and forty-seven" may be a code of four figures.
    private bool IsPair(int piece, int to) =>
        pieces.Count == 2 && piece == 1 && to - pieces[piece].From == 2 && pieces[piece].From == 2;

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Piece(int From, int First, int Last);
}
