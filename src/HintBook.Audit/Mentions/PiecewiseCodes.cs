using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Finds codes that are told piece by piece over sentences, items and cells: "the first wheel is 0, the second 6", "start with K", "two zeros and a
/// seven", in Roman numerals, by an alphabet for spelling. All of it is a doubt. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class PiecewiseCodes(CodeTable codes)
{
    private const int MostBetween = 14, FewestAlone = 3, FarAway = 1000, Near = 4;
    private readonly List<Piece> pieces = [];
    private readonly List<int> places = [];
    private readonly List<Token> labelled = [];
    private readonly StringBuilder symbols = new();

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (codes.Longest == 0)
            return;
        tokens = WithLabels(tokens);
        var speaksOfCodes = Any(tokens, Sign.Code | Sign.Ordinal | Sign.Last | Sign.Next);
        Look(text, tokens, source, Sign.Number | Sign.Figures, speaksOfCodes, found);
        Look(text, tokens, source, Sign.Letter, speaksOfCodes: true, found);
        if (Any(tokens, Sign.Roman))
            Look(text, tokens, source, Sign.Roman | Sign.Number, speaksOfCodes: true, found);
        if (Any(tokens, Sign.Ordinal))
            Look(text, tokens, source, Sign.Ordinal, speaksOfCodes: true, found);
    }

    // "wheel one", "wheel 2": numbers in their order behind a word for a wheel say its place.
    private ReadOnlySpan<Token> WithLabels(ReadOnlySpan<Token> tokens)
    {
        var count = 0;
        for (var i = 1; i < tokens.Length; i++)
            count += IsLabel(tokens, i, count) ? 1 : 0;
        if (count < 2)
            return tokens;
        labelled.Clear();
        for (var i = 0; i < tokens.Length; i++)
        {
            labelled.Add(i > 0 && IsLabel(tokens, i, tokens[i].Value - 1)
                ? new(tokens[i].First, tokens[i].Last, Sign.Ordinal, tokens[i].Value, "")
                : tokens[i]);
        }

        return CollectionsMarshal.AsSpan(labelled);
    }

    private static bool IsLabel(ReadOnlySpan<Token> tokens, int at, int before) =>
        tokens[at].Is(Sign.Number) && tokens[at].Value == before + 1 && tokens[at - 1].Is(Sign.Code) && !tokens[at - 1].Is(Sign.Grammar);

    private void Gather(FoldedText text, ReadOnlySpan<Token> tokens, string source, Sign wanted)
    {
        pieces.Clear();
        for (var i = 0; i < tokens.Length; i++)
        {
            var token = tokens[i];
            if (!token.Is(wanted) || (token.Is(Sign.Number) && Measures.Follow(source, text.Words[token.Last].End)))
                continue;
            var (said, times) = (SymbolsOf(token, wanted), 1);
            // "two zeros": the number says how often.
            if (token.Is(Sign.Number) && i + 1 < tokens.Length && tokens[i + 1].Is(Sign.Figures) && token.Value is > 0 and < 7)
                (times, said, i) = (token.Value, tokens[i + 1].Symbols, i + 1);
            if (said.Length == 0 || (i + 1 < tokens.Length && token.Is(Sign.Number) && tokens[i + 1].Is(Sign.More)) || IsExplained(tokens, i, wanted, said))
                continue;
            var isCounting = times == 1 && token.Is(Sign.Number) && IsCounting(text, tokens, i);
            pieces.Add(new(i, said, times, token.Is(Sign.Unsure), isCounting));
        }
    }

    private static string SymbolsOf(in Token token, Sign wanted) =>
        wanted == Sign.Letter ? token.Symbols.Length == 1 ? token.Symbols : ""
        : wanted == Sign.Ordinal ? token.Value is > 0 and < 27 ? token.Value.ToString(CultureInfo.InvariantCulture) : ""
        : token.Is(Sign.Roman) && (wanted & Sign.Roman) != Sign.None ? token.Value > 0 ? token.Value.ToString(CultureInfo.InvariantCulture) : ""
        : token.Symbols;

    // "K as in kilo", "N comme Nicolas": the letter was said before.
    private bool IsExplained(ReadOnlySpan<Token> tokens, int at, Sign wanted, string said) =>
        wanted == Sign.Letter && pieces.Count > 0 && pieces[^1].Symbols == said && at - pieces[^1].Token is > 1 and < 4
        && tokens[at].Symbols.Length == 1;

    // "five hives": a word that isn't one of grammar follows.
    private static bool IsCounting(FoldedText text, ReadOnlySpan<Token> tokens, int at) =>
        at + 1 < tokens.Length && tokens[at + 1].Sign == Sign.None && text.Words[tokens[at + 1].First].Parting is Parting.Space or Parting.Nothing;

    private void Look(FoldedText text, ReadOnlySpan<Token> tokens, string source, Sign wanted, bool speaksOfCodes, List<FoundSecret> found)
    {
        Gather(text, tokens, source, wanted);
        var before = found.Count;
        for (var start = 0; start < pieces.Count; start++)
            InOrder(tokens, start, speaksOfCodes, wanted, found);
        RemoveArticles();
        for (var start = 0; start < pieces.Count && wanted != Sign.Ordinal; start++)
            ByPlaces(tokens, start, found);

        for (var i = found.Count - 1; i >= before; i--)
        {
            if (Measures.RoleOf(source, text.Words[found[i].First].Start, text.Words[found[i].Last].End) == NumberRole.Ordinary)
                found.RemoveAt(i);
        }
    }

    // "eine Zwei" is a two.
    private void RemoveArticles()
    {
        for (var i = pieces.Count - 2; i >= 0; i--)
        {
            if (pieces[i].IsUnsure && pieces[i + 1].Token == pieces[i].Token + 1)
                pieces.RemoveAt(i);
        }
    }

    // One after the other, as they are said; what is no piece for sure may be left out.
    private void InOrder(ReadOnlySpan<Token> tokens, int start, bool speaksOfCodes, Sign wanted, List<FoundSecret> found)
    {
        symbols.Clear();
        var (used, counting, last, isRepeated) = (0, 0, -1, false);
        for (var i = start; i < pieces.Count && (wanted == Sign.Ordinal ? used : symbols.Length) < codes.Longest; i++)
        {
            var piece = pieces[i];
            if (last >= 0 && tokens[piece.Token].First - tokens[pieces[last].Token].Last > MostBetween)
                break;
            if (last >= 0 && piece.IsUnsure && !codes.HasStart(symbols + piece.Symbols))
                continue;
            counting += piece.IsCounting ? 1 : 0;
            if (counting > 1 || (piece.IsCounting && used > 0))
                break;
            Append(symbols, piece);
            (used, last, isRepeated) = (used + 1, i, isRepeated || piece.Times > 1);
            var isEnough = used >= (wanted != Sign.Ordinal && (speaksOfCodes || isRepeated) ? 2 : FewestAlone)
                || (used == 1 && piece.Symbols.Length > 2 && tokens[piece.Token].Is(Sign.Roman));
            if (!isEnough || !IsWhole(tokens, start, i))
                continue;
            Report(symbols.ToString(), tokens, start, i, found);
            if (wanted == Sign.Ordinal)
                Report(ByAlphabet(start, i), tokens, start, i, found);
        }
    }

    // "the third letter of the alphabet, then the eighth".
    private string ByAlphabet(int start, int end)
    {
        var letters = new StringBuilder();
        for (var i = start; i <= end; i++)
            letters.Append((char)('a' + int.Parse(pieces[i].Symbols, CultureInfo.InvariantCulture) - 1));
        return letters.ToString();
    }

    // Of "5, 1, 7, 3" the 1 and the 7 are no code.
    private bool IsWhole(ReadOnlySpan<Token> tokens, int start, int end) =>
        (start == 0 || IsFar(tokens, start - 1, start)) && (end + 1 >= pieces.Count || IsFar(tokens, end, end + 1));

    private bool IsFar(ReadOnlySpan<Token> tokens, int one, int next) =>
        pieces[one].IsUnsure || pieces[next].IsUnsure || pieces[next].IsCounting || pieces[next].Token - pieces[one].Token > Near
        || tokens[pieces[next].Token].First - tokens[pieces[one].Token].Last > Near;

    // By the places that are said of them: "the last is a 6, the second a 1".
    private void ByPlaces(ReadOnlySpan<Token> tokens, int start, List<FoundSecret> found)
    {
        foreach (var length in codes.Lengths)
        {
            var end = start;
            for (var count = 0; end < pieces.Count && count < length; end++)
                count += pieces[end].Symbols.Length * pieces[end].Times;
            if (end - start < 2)
                continue;
            foreach (var isBehind in (bool[])[false, true])
            {
                if (Place(tokens, start, end, length, isBehind))
                    ReportPlaced(tokens, start, end, found);
            }
        }
    }

    private void ReportPlaced(ReadOnlySpan<Token> tokens, int start, int end, List<FoundSecret> found)
    {
        symbols.Clear();
        foreach (var place in places.Index().OrderBy(place => place.Item))
            Append(symbols, pieces[start + place.Index]);
        Report(symbols.ToString(), tokens, start, end - 1, found);
        if (Any(tokens, Sign.Backwards))
            Report(string.Concat(symbols.ToString().Reverse()), tokens, start, end - 1, found);
    }

    // Whether the places of the pieces follow each other without a gap, and at least one is said or the row is read from its end.
    private bool Place(ReadOnlySpan<Token> tokens, int start, int end, int length, bool isBehind)
    {
        places.Clear();
        var (isSaid, cursor, first) = (Any(tokens, Sign.Backwards), 0, 0);
        for (var i = start; i < end; i++)
        {
            var mark = isBehind ? MarkBehind(tokens, i, end) : MarkBefore(tokens, i, i == start ? -1 : i - 1);
            isSaid |= mark.IsSaid;
            cursor = mark.Sign switch
            {
                Sign.Ordinal => mark.Place,
                Sign.Last => length,
                Sign.Previous => cursor - 1,
                Sign.Between => 2,
                Sign.Left => first - 1,
                Sign.Right => first + 1,
                _ => i == start && HasSides(tokens) ? FarAway : cursor + 1,
            };
            if (i == start)
                first = cursor;
            places.Add(cursor);
        }

        return isSaid && places.Distinct().Count() == places.Count && places.Max() - places.Min() == places.Count - 1;
    }

    private static bool HasSides(ReadOnlySpan<Token> tokens) => Any(tokens, Sign.Left | Sign.Right);

    private (Sign Sign, int Place, bool IsSaid) MarkBefore(ReadOnlySpan<Token> tokens, int piece, int before)
    {
        var from = before < 0 ? Math.Max(0, pieces[piece].Token - MostBetween) : pieces[before].Token + 1;
        for (var at = pieces[piece].Token - 1; at >= from; at--)
        {
            if (Marks(tokens[at]) is { IsSaid: true } mark)
                return mark;
        }

        return default;
    }

    // "a 6 on the first wheel".
    private (Sign Sign, int Place, bool IsSaid) MarkBehind(ReadOnlySpan<Token> tokens, int piece, int end)
    {
        var to = piece + 1 < end ? pieces[piece + 1].Token : Math.Min(tokens.Length, pieces[piece].Token + MostBetween);
        for (var at = pieces[piece].Token + 1; at < to; at++)
        {
            if (Marks(tokens[at]) is { IsSaid: true } mark)
                return mark;
        }

        return default;
    }

    private static (Sign Sign, int Place, bool IsSaid) Marks(in Token token) =>
        token.Is(Sign.Ordinal) ? (Sign.Ordinal, token.Is(Sign.Fraction) ? 60 / token.Value : token.Value, true)
        : token.Is(Sign.Last) ? (Sign.Last, 0, true)
        : token.Is(Sign.Previous) ? (Sign.Previous, 0, true)
        : token.Is(Sign.Left) ? (Sign.Left, 0, true)
        : token.Is(Sign.Right) ? (Sign.Right, 0, true)
        : token.Is(Sign.Between) ? (Sign.Between, 0, true)
        : default;

    private void Report(string said, ReadOnlySpan<Token> tokens, int start, int end, List<FoundSecret> found)
    {
        foreach (var (secret, _) in codes.Of(said))
            found.Add(new(secret, tokens[pieces[start].Token].First, tokens[pieces[end].Token].Last, Sure: false, Words: 1, IsCode: true));
    }

    private static void Append(StringBuilder to, in Piece piece)
    {
        for (var i = 0; i < piece.Times; i++)
            to.Append(piece.Symbols);
    }

    private static bool Any(ReadOnlySpan<Token> tokens, Sign any)
    {
        foreach (var token in tokens)
        {
            if (token.Is(any))
                return true;
        }

        return false;
    }

    /// <summary>A piece that a code may have.</summary>
    /// <param name="Token">Which token says it.</param>
    /// <param name="Symbols">Its figures or its letter.</param>
    /// <param name="Times">How often.</param>
    /// <param name="IsUnsure">Whether it may be an article.</param>
    /// <param name="IsCounting">Whether it counts something.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Piece(int Token, string Symbols, int Times, bool IsUnsure, bool IsCounting);
}
