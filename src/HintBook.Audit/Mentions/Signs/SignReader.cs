using System.Globalization;
using System.Runtime.InteropServices;

namespace HintBook.Audit.Mentions.Signs;

/// <summary>
/// Reads a text as numbers, lone letters, and words that say times and codes. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class SignReader(WordNumbers numbers, SignTree tree)
{
    private const int LongestNumber = 12, FewestItems = 3;
    private readonly List<Token> tokens = [];
    private readonly List<int> signs = [];
    private readonly List<int> row = [], figures = [], places = [], items = [];
    private readonly KanaFigures? kana = numbers.Language.Code == "ja" ? new() : null;

    /// <summary>The tokens of the text that was read last.</summary>
    public ReadOnlySpan<Token> Tokens => CollectionsMarshal.AsSpan(tokens);

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text as words.</param>
    /// <param name="ids">The number of each word.</param>
    /// <param name="source">The text as it is written.</param>
    public void Read(FoldedText text, ReadOnlySpan<int> ids, string source)
    {
        tokens.Clear();
        signs.Clear();
        foreach (var word in text.Words)
            signs.Add(tree.Of(text.Of(word)));
        kana?.Read(text);
        for (var at = 0; at < ids.Length;)
        {
            Take(text, ids, source, at);
            at = tokens[^1].Last + 1;
        }

        SilenceItems(text, source);
    }

    // "1. crocus 2. apple 3. linden": the numbers of a list's items, which the text of a printed page has, say nothing.
    private void SilenceItems(FoldedText text, string source)
    {
        items.Clear();
        for (var i = 0; i < tokens.Count; i++)
        {
            var end = text.Words[tokens[i].Last].End;
            if (tokens[i].Is(Sign.InFigures) && tokens[i].Value == items.Count + 1
                && end + 1 < source.Length && (source[end] is '.' or ')') && char.IsWhiteSpace(source[end + 1]))
                items.Add(i);
        }

        foreach (var i in items.Count < FewestItems ? [] : items)
            tokens[i] = new(tokens[i].First, tokens[i].Last, Sign.Grammar, -1, "");
    }

    private void Take(FoldedText text, ReadOnlySpan<int> ids, string source, int at)
    {
        var word = text.Of(text.Words[at]);
        var (sign, value, symbols, length) = tree.At(CollectionsMarshal.AsSpan(signs), text, at);
        var use = numbers.UseOf(ids[at]);
        if ((use & (WordUse.Determiner | WordUse.Preposition | WordUse.Between | WordUse.Grammar)) != WordUse.Plain && length < 2)
            sign |= (use & WordUse.Determiner) != WordUse.Plain ? Sign.Article | Sign.Grammar : Sign.Grammar;
        if (kana?.At(at) is { } figure)
            tokens.Add(new(at, figure.Last, Sign.Number, figure.Value, Written(figure.Value)));
        else if (length > 1)
            tokens.Add(new(at, at + length - 1, sign, value, symbols));
        else if (IsOrdinalSign(text, source, at + 1) && CodeRow.FiguresOf(word) is > 0 and < 20 and var place)
            tokens.Add(new(at, at + 1, Sign.Ordinal, place, ""));
        else if (char.IsAsciiDigit(word[0]))
            Figures(text, at, word);
        else if (Number(text, ids, at) is { Words: > 0 } number)
            tokens.Add(new(at, number.Last, sign | Sign.Number | Unsure(use, number.Value), number.Value, Written(number.Value)));
        else if (IsLoneLetter(text, at))
            tokens.Add(new(at, at, sign | LetterSign(word, source, text.Words[at].Start), RomanNumeral.Read(word), word.ToString()));
        else if (word.Length > 1 && RomanNumeral.IsWritten(source, text.Words[at].Start, text.Words[at].End) && RomanNumeral.Read(word) is > 0 and var roman)
            tokens.Add(new(at, at, sign | Sign.Roman, roman, Written(roman)));
        else
            tokens.Add(new(at, at, IsUnsureLetter(sign, use) ? sign | Sign.Unsure : sign, value, symbols));
    }

    // "1.ª letra".
    private static bool IsOrdinalSign(FoldedText text, string source, int at) =>
        at < text.Words.Length && text.Words[at].Length == 1 && source[text.Words[at].Start] is 'ª' or 'º';

    // "are" and "de" are also names of letters.
    private static bool IsUnsureLetter(Sign sign, WordUse use) => (sign & Sign.Letter) != Sign.None && use != WordUse.Plain;

    // "10h45", "2nd", "7s": figures with letters behind them.
    private void Figures(FoldedText text, int at, ReadOnlySpan<char> word)
    {
        var end = word.IndexOfAnyExceptInRange('0', '9');
        if (end < 0)
        {
            tokens.Add(new(at, at, Sign.Number | Sign.InFigures, CodeRow.FiguresOf(word), word.ToString()));
            return;
        }

        var count = CodeRow.FiguresOf(word[..end]);
        var rest = word[end..];
        if (rest is "st" or "nd" or "rd" or "th" or "er" or "re" or "e" or "eme" or "a" or "o" or "º" or "ª" && count is > 0 and < 20)
            tokens.Add(new(at, at, Sign.Ordinal, count, ""));
        else if (rest is "s" && count is >= 0 and < 10)
            tokens.Add(new(at, at, Sign.Figures, count, Written(count)));
        else if (rest is "h" or "uhr" or "am" or "pm")
            Hour(at, count, word[..end], rest is "h" or "uhr" ? Sign.Hour | Sign.Clock : Sign.Clock);
        else if (rest.Length == 3 && rest[0] == 'h' && CodeRow.FiguresOf(rest[1..]) is >= 0 and < 60 and var minutes)
        {
            Hour(at, count, word[..end], Sign.Hour | Sign.Clock);
            tokens.Add(new(at, at, Sign.Number | Sign.InFigures, minutes, rest[1..].ToString()));
        }
        else
            tokens.Add(new(at, at, Sign.None, -1, ""));
    }

    private void Hour(int at, int count, ReadOnlySpan<char> figures, Sign behind)
    {
        tokens.Add(new(at, at, Sign.Number | Sign.InFigures, count, figures.ToString()));
        tokens.Add(new(at, at, behind, -1, ""));
    }

    // An "and" within a number is left out: "sesenta y uno".
    private (int Value, int Last, int Words) Number(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        if (!numbers.Spoken.Has(ids[at]))
            return default;
        row.Clear();
        figures.Clear();
        places.Clear();
        for (var i = at; i < ids.Length && row.Count < LongestNumber && (i == at || text.Words[i].Parting < Parting.Comma); i++)
        {
            if (numbers.Spoken.Has(ids[i]))
            {
                row.Add(ids[i]);
                figures.Add(-1);
                places.Add(i);
            }
            else if (numbers.UseOf(ids[i]) != WordUse.Between)
            {
                break;
            }
        }

        var (value, words) = numbers.Spoken.At(CollectionsMarshal.AsSpan(row), CollectionsMarshal.AsSpan(figures), 0, int.MaxValue);
        return words == 0 ? default : (value, places[words - 1], words);
    }

    private static Sign Unsure(WordUse use, int value) => value == 1 || (use & WordUse.Determiner) != WordUse.Plain ? Sign.Unsure : Sign.None;

    private bool IsLoneLetter(FoldedText text, int at) =>
        text.Words[at].Length == 1
        && char.IsLetter(text.Of(text.Words[at])[0])
        && !(at + 1 < text.Words.Length && text.Words[at + 1].Parting == Parting.Elision)
        && !numbers.Language.IsUnspaced;

    private Sign LetterSign(ReadOnlySpan<char> letter, string source, int start)
    {
        var isWord = numbers.Language.LetterWords.Contains(letter[0], StringComparison.Ordinal)
            && (char.IsLower(source[start]) || letter[0] is 'i' || IsSentenceStart(source, start));
        var roman = RomanNumeral.Read(letter) > 0 && char.IsUpper(source[start]) ? Sign.Roman : Sign.None;
        return (isWord ? Sign.Letter | Sign.Unsure : Sign.Letter) | roman;
    }

    private static bool IsSentenceStart(string source, int start) =>
        source.AsSpan(0, start).TrimEnd() is var before && (before.IsEmpty || before[^1] is '.' or '!' or '?' or ':');

    private static string Written(int value) => value.ToString(CultureInfo.InvariantCulture);
}
