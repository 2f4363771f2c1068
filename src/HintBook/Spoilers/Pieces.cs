using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told piece by piece, over words, sentences and items of a list: "the first wheel is 0, the second 6", "start with K, then L", "two zeros
/// and a seven". Pieces belong together if nothing but the words of setting a lock stands between them, or a few others with a word of order.
/// </summary>
internal sealed class Pieces
{
    private const int MostWords = 12;
    private const int MostOthers = 4;
    private const int Shortest = 3;
    private const int ShortestSure = 4;
    private const WordRole Neutral = WordRole.Function | WordRole.Determiner | WordRole.Preposition | WordRole.And | WordRole.Between | WordRole.Setting
        | WordRole.Link | WordRole.Sequence | WordRole.Wheel;
    private readonly WordList words;
    private readonly PieceReader reader;
    private readonly ScatteredCodes scattered;
    private readonly Reckonings reckonings;
    private readonly CountedThings counted;
    private readonly LockTurns turns;
    private readonly Measures measures;
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly List<Piece> chain = [];
    private readonly List<(int Before, int Place)> places = [];
    private bool hasLetters;
    private bool hasFigures;
    private int longest;
    private bool isLoose;
    private bool isBackwards;
    private int ending;

    public Pieces(WordList words)
    {
        (this.words, reader, reckonings, counted, measures) = (words, new(words), new(words), new(words), new(words));
        turns = new(words);
        scattered = new(words, reader);
    }

    /// <summary>Adds a code.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Figures and small letters without anything between.</param>
    /// <param name="clue">The clue that stands in the box, which may be quoted.</param>
    public void Add(int secret, string symbols, string clue = "")
    {
        if (symbols.Length < Shortest)
            return;
        scattered.Add(secret, symbols);
        reckonings.Add(secret, symbols);
        counted.Add(secret, symbols, clue);
        turns.Add(secret, symbols);
        longest = Math.Max(longest, symbols.Length);
        hasLetters |= symbols.All(char.IsLetter);
        hasFigures |= symbols.All(char.IsAsciiDigit);
        if (!codes.TryGetValue(symbols, out var here))
            codes[symbols] = here = [];
        here.Add(secret);
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        var counts = reader.Count(text, source);
        if (hasFigures && counts.Figures > 1)
            Chain(text, source, PieceKind.Figures, found);
        if (hasFigures && counts.Numerals > 0)
            Chain(text, source, PieceKind.Roman, found);
        if (hasFigures && counts.Places > 2)
            Chain(text, source, PieceKind.Ordinals, found);
        if (hasLetters && counts.Letters > 2)
            Chain(text, source, PieceKind.Letters, found);
        if (hasLetters && counts.HasAlphabet)
            Chain(text, source, PieceKind.Alphabet, found);
        scattered.In(text, source, counts, found);
        if (hasFigures && counts.Figures > 0)
            reckonings.In(text, source, found);
        if (hasFigures && counts.Figures > 1)
        {
            counted.In(text, source, found);
            turns.In(text, source, found);
        }
    }

    private void Chain(WordReader text, string source, PieceKind kind, List<Mention> found)
    {
        Clear();
        isBackwards = false;
        var gap = default(Between);
        var isOrdered = false;
        for (var i = 0; i < text.Words.Length;)
        {
            gap.IsParted |= (text.Words[i].Gap & Gap.Paragraph) != Gap.None;
            if (kind is not (PieceKind.Ordinals or PieceKind.Alphabet) && reader.PlaceAt(text, source, i, out var behind) is not 0 and var place)
            {
                places.Add((chain.Count, place == WordSigns.Previous ? (places.Count > 0 ? places[^1].Place - 1 : WordSigns.Last - 1) : place));
                gap.IsMarked = true;
                gap.Words += behind - i;
                i = behind;
                continue;
            }

            if (reader.At(text, source, i, kind) is { } piece)
            {
                // "Pages 51 to 83".
                if (kind == PieceKind.Figures && measures.Of(text, source, i, piece.Next - 1) != Measured.No)
                {
                    Tell(text, kind, isOrdered, found);
                    Clear();
                    (gap, isOrdered, i) = (default, false, piece.Next);
                    continue;
                }

                Link(text, piece, gap, kind, isOrdered, found);
                i = piece.Next;
                gap = default;
                continue;
            }

            var role = words.RoleOf(text.Words[i].Id);
            isOrdered |= (role & WordRole.Sequence) != WordRole.None;
            isBackwards |= IsBackwards(text, i);
            gap.IsMarked |= (role & WordRole.Sequence) != WordRole.None;
            gap.IsSum |= (role & WordRole.And) != WordRole.None;
            gap.IsEnd |= words.Signs.IsEnd(text.Words[i].Id);
            if ((role & Neutral) == WordRole.None && (kind != PieceKind.Letters || words.FigureOf(text.Words[i].Id) is null))
                gap.Others++;
            if (++gap.Words > MostWords && chain.Count > 0)
            {
                Tell(text, kind, isOrdered, found);
                Clear();
                isOrdered = false;
            }

            i++;
        }

        Tell(text, kind, isOrdered, found);
    }

    // Takes a piece into the chain, or begins another one with it.
    private void Link(WordReader text, Piece piece, Between gap, PieceKind kind, bool isOrdered, List<Mention> found)
    {
        var isSum = gap.IsSum && chain.Count > 0 && piece.Symbols.Length > 1 && chain[^1].Symbols.Length > 1;
        var isClose = gap.Others == 0 && !gap.IsParted && !piece.IsCount && !isSum && (chain.Count == 0 || !chain[^1].IsCount);
        if (chain.Count > 0 && !isClose && !(gap.IsMarked && gap.Others <= MostOthers))
        {
            Tell(text, kind, isOrdered, found);
            var kept = places.Where(one => one.Before == chain.Count).Select(one => (0, one.Place)).ToArray();
            Clear();
            places.AddRange(kept);
        }

        isLoose |= chain.Count > 0 && !isClose;
        if (gap.IsEnd)
            ending = chain.Count;
        chain.Add(piece);
    }

    // "From right to left".
    private bool IsBackwards(WordReader text, int at) =>
        words.Signs.IsBackwards(text.Words[at].Id)
        || (words.Signs.IsLeft(text.Words[at].Id) && Enumerable.Range(1, 3).Any(back => back <= at && words.Signs.IsRight(text.Words[at - back].Id)));

    private void Clear()
    {
        chain.Clear();
        places.Clear();
        (isLoose, ending) = (false, 0);
    }

    private void Tell(WordReader text, PieceKind kind, bool isOrdered, List<Mention> found)
    {
        if (chain.Count < (kind == PieceKind.Roman ? 1 : 2) || (kind == PieceKind.Ordinals && !isOrdered && IsCounting()))
            return;
        Seek(text, chain, kind, found);
        if (ending == 0)
            ending = places.FirstOrDefault(place => place.Place == WordSigns.Last).Before;
        var isFirstLast = ending == 0 && places.Exists(place => place == (0, WordSigns.Last));
        if (isBackwards)
            Seek(text, [.. Enumerable.Reverse(chain)], kind, found);
        if ((ending > 0 || isFirstLast) && ending < chain.Count - 1)
            Seek(text, [.. chain[..ending], .. chain[(ending + 1)..], chain[ending]], kind, found);
        if (places.Count >= chain.Count && Arranged() is { } arranged)
            Seek(text, arranged, kind, found);
    }

    // "First …, second …, third …" counts sentences; "fifth, first, eighth, third" doesn't.
    private bool IsCounting()
    {
        for (var i = 1; i < chain.Count; i++)
        {
            if (chain.Count >= ShortestSure && string.CompareOrdinal(chain[i].Symbols, chain[i - 1].Symbols) < 0)
                return false;
        }

        return true;
    }

    // By the places that are named, before each piece or behind it.
    private List<Piece>? Arranged()
    {
        var isBehind = !places.Exists(place => place.Before == 0) || places[^1].Before == chain.Count;
        List<(int Place, Piece Piece)> placed = [];
        for (var i = 0; i < chain.Count; i++)
        {
            var place = places.FirstOrDefault(place => place.Before == (isBehind ? i + 1 : i)).Place;
            if (place == 0 || placed.Exists(one => one.Place == place))
                return null;
            placed.Add((place, chain[i]));
        }

        return [.. placed.OrderBy(one => one.Place).Select(one => one.Piece)];
    }

    private void Seek(WordReader text, List<Piece> pieces, PieceKind kind, List<Mention> found)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            var run = "";
            for (var j = i; j < pieces.Count; j++)
            {
                run += pieces[j].Symbols;
                if (run.Length > longest)
                    break;
                if ((j == i && kind != PieceKind.Roman) || !codes.TryGetValue(run, out var here))
                    continue;
                var start = pieces.Skip(i).Take(j - i + 1).Min(piece => text.Words[piece.First].Start);
                var end = pieces.Skip(i).Take(j - i + 1).Max(piece => text.Words[piece.Next - 1].End);
                var isSure = !isLoose && i == 0 && j == pieces.Count - 1 && run.Length >= ShortestSure && kind is PieceKind.Figures or PieceKind.Letters;
                foreach (var secret in here)
                    found.Add(new(secret, start, end, isSure ? Sureness.Sure : Sureness.Likely));
            }
        }
    }

    // What stands between two pieces.
    private record struct Between(int Words, int Others, bool IsMarked, bool IsParted, bool IsSum, bool IsEnd);
}
