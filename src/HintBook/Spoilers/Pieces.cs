using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told piece by piece, over words, sentences and items of a list: "the first wheel is 0, the second 6", "start with K, then L", "two zeros
/// and a seven". Pieces belong together if nothing but the words of setting a lock stands between them, or a few others with a word of order.
/// </summary>
internal sealed class Pieces(WordList words)
{
    private const int MostWords = 12;
    private const int MostOthers = 4;
    private const int Shortest = 3;
    private const int ShortestSure = 4;
    private const WordRole Neutral = WordRole.Function | WordRole.Determiner | WordRole.Preposition | WordRole.And | WordRole.Between | WordRole.Setting | WordRole.Link;
    private readonly PieceReader reader = new(words);
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly List<Piece> chain = [];
    private readonly List<(int Before, int Place)> places = [];
    private bool hasLetters;
    private bool hasFigures;
    private int longest;
    private bool isLoose;
    private bool isBackwards;

    /// <summary>Adds a code.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Figures and small letters without anything between.</param>
    public void Add(int secret, string symbols)
    {
        if (symbols.Length < Shortest)
            return;
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
        if (hasFigures)
        {
            Chain(text, source, PieceKind.Figures, found);
            Chain(text, source, PieceKind.Roman, found);
            Chain(text, source, PieceKind.Ordinals, found);
        }

        if (hasLetters)
        {
            Chain(text, source, PieceKind.Letters, found);
            if (HasAlphabet(text))
                Chain(text, source, PieceKind.Alphabet, found);
        }
    }

    private bool HasAlphabet(WordReader text)
    {
        foreach (var word in text.Words)
        {
            if (words.Signs.IsAlphabet(word.Id))
                return true;
        }

        return false;
    }

    private void Chain(WordReader text, string source, PieceKind kind, List<Mention> found)
    {
        Clear();
        isBackwards = false;
        var (since, others, isMarked, isParted, isOrdered, isSum) = (0, 0, false, false, false, false);
        for (var i = 0; i < text.Words.Length;)
        {
            isParted |= (text.Words[i].Gap & Gap.Paragraph) != Gap.None;
            if (kind is not (PieceKind.Ordinals or PieceKind.Alphabet) && reader.PlaceAt(text, source, i, out var behind) is not 0 and var place)
            {
                places.Add((chain.Count, place == PieceReader.Previous ? (places.Count > 0 ? places[^1].Place - 1 : PieceReader.Last - 1) : place));
                isMarked = true;
                since += behind - i;
                i = behind;
                continue;
            }

            if (reader.At(text, source, i, kind) is { } piece)
            {
                var isClose = others == 0 && !isParted && !piece.IsCount && (chain.Count == 0 || !chain[^1].IsCount) && !(isSum && piece.Symbols.Length > 1 && chain.Count > 0 && chain[^1].Symbols.Length > 1);
                if (chain.Count > 0 && !isClose && !(isMarked && others <= MostOthers))
                {
                    Tell(text, kind, isOrdered, found);
                    var kept = places.Where(one => one.Before == chain.Count).Select(one => (0, one.Place)).ToArray();
                    Clear();
                    places.AddRange(kept);
                }

                isLoose |= chain.Count > 0 && !isClose;
                chain.Add(piece);
                i = piece.Next;
                (since, others, isMarked, isParted, isSum) = (0, 0, false, false, false);
                continue;
            }

            var role = words.RoleOf(text.Words[i].Id);
            isMarked |= (role & WordRole.Sequence) != WordRole.None;
            isOrdered |= (role & WordRole.Sequence) != WordRole.None;
            isBackwards |= IsBackwards(text, i);
            isSum |= (role & WordRole.And) != WordRole.None;
            if ((role & (Neutral | WordRole.Sequence | WordRole.Wheel)) == WordRole.None && (kind != PieceKind.Letters || words.FigureOf(text.Words[i].Id) is null))
                others++;
            if (++since > MostWords && chain.Count > 0)
            {
                Tell(text, kind, isOrdered, found);
                Clear();
                isOrdered = false;
            }

            i++;
        }

        Tell(text, kind, isOrdered, found);
    }

    // "From right to left".
    private bool IsBackwards(WordReader text, int at) =>
        words.Signs.IsBackwards(text.Words[at].Id)
        || (words.Signs.IsLeft(text.Words[at].Id) && Enumerable.Range(1, 3).Any(back => back <= at && words.Signs.IsRight(text.Words[at - back].Id)));

    private void Clear()
    {
        chain.Clear();
        places.Clear();
        isLoose = false;
    }

    private void Tell(WordReader text, PieceKind kind, bool isOrdered, List<Mention> found)
    {
        if (chain.Count < (kind == PieceKind.Roman ? 1 : 2) || (kind == PieceKind.Ordinals && !isOrdered))
            return;
        Seek(text, chain, kind, found);
        if (isBackwards)
            Seek(text, [.. Enumerable.Reverse(chain)], kind, found);
        if (places.Count >= chain.Count && Arranged() is { } arranged)
            Seek(text, arranged, kind, found);
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
}
