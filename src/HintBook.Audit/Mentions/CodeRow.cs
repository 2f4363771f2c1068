using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes in whatever way they are said: figures, number words and lone letters that follow each other are strung
/// together, once word by word and once as English says large numbers, and the codes are looked up in the string.
/// Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class CodeRow(CodeTable codes, WordNumbers numbers)
{
    private const int MostBetween = 2;
    private const char FirstUnspaced = '\u3040';

    // Within a longer row of figures a short code stands by chance.
    private const int ShortestInARow = 3, SurelyInARow = 4;

    private readonly List<int> row = [];
    private readonly List<Piece> pieces = [];
    private readonly StringBuilder symbols = new();

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<int> ids, List<FoundSecret> found)
    {
        if (codes.Longest == 0)
            return;
        for (var at = 0; at < ids.Length; at++)
        {
            if (!Starts(text, ids, at))
                continue;
            Gather(text, ids, at);
            String(text, ids, asOneNumber: false);
            LookUp(found);
            if (HasLarge(ids) || numbers.Spoken is not null)
            {
                String(text, ids, asOneNumber: true);
                LookUp(found);
            }

            at = row[^1];
        }
    }

    private bool HasLarge(ReadOnlySpan<int> ids)
    {
        foreach (var word in row)
        {
            if (numbers.ValueOf(ids[word]) is { Multiplies: true })
                return true;
        }

        return false;
    }

    // A lone letter begins a row only where more symbols follow: "a", "I".
    private bool Starts(FoldedText text, ReadOnlySpan<int> ids, int at) =>
        IsSymbol(text, ids, at)
        && (text.Words[at].Length > 1 || char.IsAsciiDigit(text.Of(text.Words[at])[0])
            || numbers.Spoken?.Has(ids[at]) == true || (at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Paragraph && IsSymbol(text, ids, at + 1)));

    private bool IsSymbol(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        var word = text.Of(text.Words[at]);
        return (word.Length == 1 && IsAlone(text, at))
            || word.IndexOfAnyInRange('0', '9') >= 0
            || numbers.ValueOf(ids[at]) is not null
            || numbers.Spoken?.Has(ids[at]) == true;
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
            var isBetween = numbers.UseOf(ids[i]) is WordUse.Between or WordUse.Determiner;
            // "a" is a letter among letters and a word among figures.
            if (IsSymbol(text, ids, i) && !(isBetween && numbers.Spoken?.Has(ids[i]) != true && i + 1 < ids.Length && IsFigure(text, ids, i + 1)))
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
            || numbers.Spoken?.Has(ids[at]) == true
            || char.IsAsciiDigit(text.Of(text.Words[at])[0]));

    private void String(FoldedText text, ReadOnlySpan<int> ids, bool asOneNumber)
    {
        symbols.Clear();
        pieces.Clear();
        var onlyLetters = true;
        foreach (var word in row)
            onlyLetters &= !IsFigure(text, ids, word);
        if (numbers.Spoken is not null)
        {
            Spell(text, ids, asOneNumber, onlyLetters);
            return;
        }

        for (var i = 0; i < row.Count; i++)
        {
            var (first, from, times) = (i, symbols.Length, 1);
            for (; i + 1 < row.Count && numbers.ValueOf(ids[row[i]]) is { Repeats: true } again; i++)
                times *= again.Value;
            if (numbers.ValueOf(ids[row[i]]) is { Repeats: false, Value: var value })
            {
                value = asOneNumber ? Large(ids, ref i, value) : Small(ids, ref i, value);
                symbols.Append(value);
            }
            else
            {
                var word = text.Of(text.Words[row[i]]);
                symbols.Append(word is "o" && !onlyLetters ? "0" : word);
            }

            pieces.Add(new(from, row[first], row[i]));
            var said = symbols.ToString(from, symbols.Length - from);
            for (; times > 1; times--)
                symbols.Append(said);
        }
    }

    private void Spell(FoldedText text, ReadOnlySpan<int> ids, bool asOneNumber, bool onlyLetters)
    {
        Span<int> said = row.Count <= 256 ? stackalloc int[row.Count] : new int[row.Count];
        for (var i = 0; i < row.Count; i++)
            said[i] = ids[row[i]];
        for (var i = 0; i < row.Count; i++)
        {
            var (first, from) = (i, symbols.Length);
            var (number, words) = numbers.Spoken!.At(said, i, asOneNumber ? int.MaxValue : 99);
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
        }
    }

    // "fifty-one" is 51 even where a code is said figure by figure.
    private int Small(ReadOnlySpan<int> ids, ref int i, int value)
    {
        if (value is < 20 or > 90 || i + 1 == row.Count || numbers.ValueOf(ids[row[i + 1]]) is not { Repeats: false, Value: > 0 and < 10 and var unit })
            return value;
        i++;
        return value + unit;
    }

    // As far as one number goes: "five thousand one hundred and seventy-three".
    private int Large(ReadOnlySpan<int> ids, ref int i, int value)
    {
        var (total, part) = (0, value);
        while (i + 1 < row.Count && numbers.ValueOf(ids[row[i + 1]]) is { Repeats: false, Value: var next })
        {
            if (next == 100 && part is > 0 and < 100)
                part *= 100;
            else if (next == 1000 && total == 0 && part is > 0 and < 1000)
                (total, part) = (part * 1000, 0);
            else if (next is >= 20 and <= 90 && part % 100 == 0 && total + part > 0)
                part += next;
            else if (next is > 0 and < 20 && total + part > 0 && (part % 100 == 0 || (part % 10 == 0 && part % 100 >= 20 && next < 10)))
                part += next;
            else
                break;
            i++;
        }

        return total + part;
    }

    private void LookUp(List<FoundSecret> found)
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
                    found.Add(new(secret, pieces[i].First, pieces[j].Last, sure && (isWhole || to - from >= SurelyInARow), Words: 1, IsCode: true));
            }
        }
    }

    // "325 and 14" are two numbers; "5, 1, 7 and 3" are one.
    private bool IsAnother(int piece, int to) =>
        pieces[piece].First - pieces[piece - 1].Last > 1 && to - pieces[piece].From > 1 && pieces[piece].From - pieces[piece - 1].From > 1;

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Piece(int From, int First, int Last);
}
