using System.Globalization;
using System.Runtime.InteropServices;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes whose pieces stand far apart or in another order: "an eight and then a three close the row; ahead of them stand a six and a zero", a table
/// of places and figures, "two Es with N, C, O and R between them", "62704, from back to front", "the initials of …". That all pieces of a code stand
/// together by chance, and no others, is rare: so the words between them hardly count. All of these are likely mentions. Reuses its buffers for the
/// next text; not thread-safe.
/// </summary>
internal sealed class ScatteredCodes(WordList words, PieceReader reader)
{
    private const int MostBetween = 20;
    private const int Far = 6;
    private const int Near = 4;
    private const int MostToAgain = 6;
    private const int Around = 14;
    private const int Shortest = 3;
    private const int MostPaths = 400;
    private const int MostPlaces = 9;
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly Dictionary<string, List<string>> bySymbols = [];
    private readonly HashSet<int> lengths = [];
    private readonly List<Atom> atoms = [];
    private readonly Measures measures = new(words);
    private readonly SaidNumbers numbers = new(words);
    private readonly NumberReader read = new(words);
    private readonly string[] backwards =
    [
        .. words.Language.Pieces.BackPhrases.Split("; ", StringSplitOptions.RemoveEmptyEntries),
        .. words.Language.Pieces.Backwards.Split(' ', StringSplitOptions.RemoveEmptyEntries),
    ];

    private readonly HashSet<string> sides =
        [.. TurnWords.Of(words.Language.Code).Left.Split(' '), .. TurnWords.Of(words.Language.Code).Right.Split(' ')];

    private bool hasFigures;
    private bool hasLetters;
    private int longest;
    private int paths;

    /// <summary>Adds a code.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Figures or small letters without anything between.</param>
    public void Add(int secret, string symbols)
    {
        var isLetters = symbols.All(char.IsLetter);
        if (symbols.Length < Shortest || !(isLetters || symbols.All(char.IsAsciiDigit)))
            return;
        (hasLetters, hasFigures) = (hasLetters || isLetters, hasFigures || !isLetters);
        longest = Math.Max(longest, symbols.Length);
        lengths.Add(symbols.Length);
        if (!codes.TryGetValue(symbols, out var same))
            codes[symbols] = same = [];
        same.Add(secret);
        if (!bySymbols.TryGetValue(Sorted(symbols), out var alike))
            bySymbols[Sorted(symbols)] = alike = [];
        alike.Add(symbols);
    }

    /// <summary>Adds every mention to a list.</summary>
    /// <param name="text">The words.</param>
    /// <param name="source">The text.</param>
    /// <param name="counts">How much of it could be pieces.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(WordReader text, string source, PieceCounts counts, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        if (hasFigures && counts.Figures > 0)
            Look(text, source, PieceKind.Figures, found);
        if (hasFigures && counts.Figures > 1 && counts.Numerals > 1)
            Look(text, source, PieceKind.Roman, found);
        if (hasLetters && counts.Letters + counts.Figures > 1)
            Look(text, source, PieceKind.Letters, found);
        if (hasLetters && counts.Figures + counts.Places > Shortest)
            Look(text, source, PieceKind.Alphabet, found);
        if (counts.IsTurned)
            Backwards(text, source, found);
        if (hasLetters && counts.HasInitials)
            Initials(text, source, found);
    }

    private void Look(WordReader text, string source, PieceKind kind, List<Mention> found)
    {
        Gather(text, source, kind);
        if (atoms.Count < 2)
            return;
        if (kind == PieceKind.Letters)
            Ends(text, source, found);
        for (var start = 0; start < atoms.Count; start++)
        {
            if (kind == PieceKind.Alphabet)
            {
                InAlphabet(text, start, found);
                continue;
            }

            Labelled(text, start, isBehind: false, kind, found);
            Labelled(text, start, isBehind: true, kind, found);
            if (kind == PieceKind.Roman || atoms[start].Kind != (kind == PieceKind.Letters ? AtomKind.Letter : AtomKind.Number))
                continue;
            paths = 0;
            Walk(new(text, kind, start, found), start, "", 0, -1);
        }
    }

    // "Five letters, T at the front and N at the back": how many there are, and the first and the last of them alone.
    private void Ends(WordReader text, string source, List<Mention> found)
    {
        var (first, last, count) = (-1, -1, 0);
        foreach (var (at, atom) in atoms.Index())
        {
            if (atom.Kind != AtomKind.Letter || atom.IsOptional || !char.IsUpper(source[text.Words[atom.First].Start]))
                continue;
            (first, last, count) = (first < 0 ? at : first, at, count + 1);
        }

        if (count != 2)
            return;
        foreach (var (code, here) in codes)
        {
            if (code.StartsWith(atoms[first].Symbols, StringComparison.Ordinal) && code.EndsWith(atoms[last].Symbols, StringComparison.Ordinal)
                && words.SaysLength(text, code.Length))
                Found(text, here, atoms[first].First, atoms[last].Next - 1, found);
        }
    }

    private void Gather(WordReader text, string source, PieceKind kind)
    {
        atoms.Clear();
        for (var i = 0; i < text.Words.Length;)
            i = kind == PieceKind.Letters && LetterAt(text, source, i) is { } letter ? Take(letter) : Next(text, source, kind, i);
    }

    private int Take(Atom atom)
    {
        atoms.Add(atom);
        return atom.Next;
    }

    private int Next(WordReader text, string source, PieceKind kind, int at)
    {
        if (kind == PieceKind.Alphabet)
        {
            return reader.At(text, source, at, kind) is { } letter
                ? Take(new(AtomKind.Letter, 0, letter.Symbols, at, letter.Next, IsOptional: false))
                : at + 1;
        }

        if (reader.PlaceAt(text, source, at, out var behind) is not 0 and var place)
            return Take(new(AtomKind.Place, place, "", at, behind, IsOptional: false));
        if (numbers.At(text, at, out behind) is >= 0 and var said)
            return Take(new(AtomKind.Number, said, Written(said), at, behind, IsOptional: true));
        if (kind == PieceKind.Roman && reader.At(text, source, at, PieceKind.Roman) is { } numeral)
            return Take(new(AtomKind.Number, Number(numeral.Symbols), numeral.Symbols, at, numeral.Next, IsOptional: false));
        if (reader.At(text, source, at, PieceKind.Figures) is not { } piece)
            return at + 1;
        if (measures.Of(text, source, at, piece.Next - 1) != Measured.No)
            return Take(new(AtomKind.Break, 0, "", at, piece.Next, IsOptional: false));
        // "Zero fish, four crows": that is how a riddle hides a code, not how one tells it.
        if (piece.IsCount)
            return Take(new(AtomKind.Count, 0, "", at, piece.Next, IsOptional: true));
        var isOptional = IsHowMany(text, at, piece.Next) || (piece.Symbols is "1" && !char.IsAsciiDigit(text.Bare(text.Words[at])[0]));
        return Take(new(AtomKind.Number, Number(piece.Symbols), piece.Symbols, at, piece.Next, isOptional));
    }

    // "The first two wheels", "the next two": how many there are.
    // "The other two, 7-2": a comma may follow.
    private bool IsHowMany(WordReader text, int at, int next) =>
        (at > 0 && next == at + 1 && words.Signs.IsRest(text.Words[at - 1].Id) && (text.Words[at].Gap & ~(Gap.Space | Gap.Line)) == Gap.None)
        || IsNumberOfWheels(text, at, next)
        || IsOfPlace(text, at, next)
        || (at > 0 && next == at + 1 && next < text.Words.Length && (text.Words[at].Gap & ~(Gap.Space | Gap.Line)) == Gap.None
        && ((words.RoleOf(text.Words[at - 1].Id) & (WordRole.Place | WordRole.Sequence | WordRole.Determiner)) != WordRole.None)
        && (text.Words[next].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None);

    // "The upper three rings", "the lower two": in words, behind an article and where they are.
    private bool IsOfPlace(WordReader text, int at, int next) =>
        at > 1 && next == at + 1 && words.FigureOf(text.Words[at].Id) is not null && words.Signs.IsOrder(text.Words[at - 1].Id)
        && (words.RoleOf(text.Words[at - 2].Id) & WordRole.Determiner) != WordRole.None
        && text.Words[at].Gap == Gap.Space && text.Words[at - 1].Gap == Gap.Space
        && next < text.Words.Length && (text.Words[next].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None;

    // "It has three wheels", 残りの二桁.
    private bool IsNumberOfWheels(WordReader text, int at, int next) =>
        next < text.Words.Length && (text.Words[next].Gap & ~(Gap.Space | Gap.Line)) == Gap.None && words.FigureOf(text.Words[at].Id) is not null
        && (words.Language.HasNoSpaces
            ? text.Bare(text.Words[next]) is "桁" && !(next + 1 < text.Words.Length && text.Bare(text.Words[next + 1]) is "目" or "め")
            : (words.RoleOf(text.Words[next].Id) & WordRole.Wheel) != WordRole.None);

    // "Two Es", "K", "Wilhelm, also W".
    private Atom? LetterAt(WordReader text, string source, int at)
    {
        if (at + 1 < text.Words.Length && NamedByTwo(text.Bare(text.Words[at]), text.Bare(text.Words[at + 1])) is > '\0' and var named)
            return new(AtomKind.Letter, named - 'a' + 1, $"{named}", at, at + 2, IsOptional: false);
        if (reader.At(text, source, at, PieceKind.Letters) is { } piece)
        {
            var isAgain = atoms.Count > 0 && atoms[^1].Symbols == piece.Symbols && at - atoms[^1].Next < MostToAgain;
            // "A Y, an E".
            var isArticle = at + 1 < text.Words.Length && piece.Symbols is "a" && text.Words[at].Length == 1 && text.Words[at + 1].Length == 1
                && text.Words[at + 1].Gap == Gap.Space && char.IsUpper(source[text.Words[at + 1].Start]);
            var isWord = text.Words[at].Length == 1 && (isArticle || char.IsLower(source[text.Words[at].Start]));
            // "L twice", "deux fois" behind it.
            if (piece.Symbols.Length == 1 && TwiceBehind(text, piece.Next) is > 0 and var behind)
                return new(AtomKind.Letter, piece.Symbols[0] - 'a' + 1, piece.Symbols + piece.Symbols, at, behind, IsOptional: false);
            return new(AtomKind.Letter, piece.Symbols[0] - 'a' + 1, piece.Symbols, at, piece.Next, isAgain || isWord || IsWordOfGrammar(text, at));
        }

        if (Chunk(text, source, at) is { } chunk)
            return chunk;
        var times = words.FigureOf(text.Words[at].Id) is { Kind: FigureKind.Again or FigureKind.Small, Value: > 1 and < 5 and var many } ? many
            : words.Signs.IsTwice(text.Words[at].Id) ? 2 : 1;
        var letter = times > 1 ? at + 1 : at;
        // "A pair of Ls", "deux fois L".
        while (times > 1 && letter + 1 < text.Words.Length && letter < at + 3 && (words.Signs.IsTimes(text.Words[letter].Id)
            || (text.Words[letter].Length > 1 && (words.RoleOf(text.Words[letter].Id) & (WordRole.Preposition | WordRole.Determiner)) != WordRole.None)))
            letter++;
        if (letter < text.Words.Length && times > 1 && LetterOfMany(text.Bare(text.Words[letter])) is > '\0' and var many2)
            return new(AtomKind.Letter, many2 - 'a' + 1, new(many2, times), at, letter + 1, IsOptional: false);
        if (letter >= text.Words.Length || text.Bare(text.Words[letter]) is not ([>= 'a' and <= 'z'] or [>= 'a' and <= 'z', 's']))
            return null;
        var isPlural = text.Words[letter].End - text.Words[letter].Start > 1;
        var isSaid = char.IsUpper(source[text.Words[letter].Start]) ? isPlural ? source[text.Words[letter].End - 1] == 's' : times > 1
            : !isPlural && words.FigureOf(text.Words[at].Id) is { Kind: FigureKind.Again };
        if (!isSaid)
            return null;
        // "Zweimal T wie Theodor".
        var next = reader.At(text, source, letter, PieceKind.Letters)?.Next ?? letter + 1;
        var symbol = text.Bare(text.Words[letter])[0];
        // "Es geht P, F, A": no two letters E.
        return new(AtomKind.Letter, symbol - 'a' + 1, new(symbol, times), at, next, isPlural && times == 1 && IsWordOfGrammar(text, letter));
    }

    // The word behind "twice" or "two times", or 0.
    private int TwiceBehind(WordReader text, int at)
    {
        if (at >= text.Words.Length || (text.Words[at].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) != Gap.None)
            return 0;
        if (words.Signs.IsTwice(text.Words[at].Id))
            return at + 1;
        return at + 1 < text.Words.Length && words.FigureOf(text.Words[at].Id) is { Value: 2 } && words.Signs.IsTimes(text.Words[at + 1].Id) ? at + 2 : 0;
    }

    // "Dos eles": the name of a letter in the plural.
    private char LetterOfMany(ReadOnlySpan<char> bare) =>
        bare.Length > 2 && bare[^1] == 's' && words.NumberOf(bare[..^1]) is >= 0 and var name ? words.Signs.LetterOf(name) : '\0';

    // "Double u", "uve doble", "i griega", "double vé".
    private static char NamedByTwo(ReadOnlySpan<char> first, ReadOnlySpan<char> second) => first switch
    {
        "double" => second is "u" or "you" or "v" or "ve" ? 'w' : '\0',
        "uve" => second is "doble" ? 'w' : '\0',
        "doble" => second is "u" or "ve" or "uve" ? 'w' : '\0',
        "i" => second is "griega" or "grec" ? 'y' : '\0',
        _ => '\0',
    };

    // "ARBOR with an H in front": part of a code, in capitals.
    private Atom? Chunk(WordReader text, string source, int at)
    {
        var bare = text.Bare(text.Words[at]);
        if (bare.Length < 2 || bare.Length >= longest || source.AsSpan(text.Words[at].Start, bare.Length).ContainsAnyExceptInRange('A', 'Z'))
            return null;
        foreach (var code in codes.Keys)
        {
            if (code.AsSpan().IndexOf(bare) >= 0)
                return new(AtomKind.Letter, 0, bare.ToString(), at, at + 1, IsOptional: false);
        }

        return null;
    }

    private bool IsWordOfGrammar(WordReader text, int at) =>
        text.Words[at].Length > 1 && (words.RoleOf(text.Words[at].Id) & (WordRole.Function | WordRole.Determiner | WordRole.Preposition)) != WordRole.None;

    // Piece after piece from one on; those that may be none are left out as well.
    private void Walk(in Search search, int at, string said, int used, int last)
    {
        while (at < atoms.Count && atoms[at].Kind == AtomKind.Place)
            at++;
        if (at >= atoms.Count || ++paths > MostPaths || (last >= 0 && atoms[at].First - atoms[last].Next > MostBetween))
            return;
        var atom = atoms[at];
        if (used > 0 && (atom.IsOptional || (search.Kind == PieceKind.Letters && atom.Kind == AtomKind.Number)))
            Walk(search, at + 1, said, used, last);
        if (atom.Kind != (search.Kind == PieceKind.Letters ? AtomKind.Letter : AtomKind.Number) || said.Length + atom.Symbols.Length > longest)
            return;
        var longer = said + atom.Symbols;
        if (used > 0 && lengths.Contains(longer.Length) && IsWhole(search.Start, -1, search.Kind) && IsWhole(at, 1, search.Kind))
            Tell(search, longer, at, used + 1);
        Walk(search, at + 1, longer, used + 1, at);
    }

    // "20, 1, 12, 12, 15, 23": letters by their places in the alphabet, four and more of them behind each other.
    private void InAlphabet(WordReader text, int start, List<Mention> found)
    {
        var said = "";
        for (var at = start; at < atoms.Count && said.Length < longest; at++)
        {
            if (at > start && atoms[at].First - atoms[at - 1].Next > Far)
                return;
            said += atoms[at].Symbols;
            if (said.Length > Shortest && codes.TryGetValue(said, out var here))
                Found(text, here, atoms[start].First, atoms[at].Next - 1, found);
        }
    }

    // Whether no further piece stands close by.
    private bool IsWhole(int at, int step, PieceKind kind)
    {
        for (var i = at + step; i >= 0 && i < atoms.Count; i += step)
        {
            if ((step > 0 ? atoms[i].First - atoms[at].Next : atoms[at].First - atoms[i].Next) >= Far)
                return true;
            if (!atoms[i].IsOptional && atoms[i].Kind == (kind == PieceKind.Letters ? AtomKind.Letter : AtomKind.Number))
                return false;
        }

        return true;
    }

    private void Tell(in Search search, string said, int last, int used)
    {
        var (first, end) = (atoms[search.Start].First, atoms[last].Next - 1);
        // "In the middle a 1, before it a 6, at the end the 4": each figure has its place.
        var isLong = said.Length > Shortest || PlacesBeside(search.Start, last) > 1 || OrderWords(search.Text, first, end) >= Math.Max(used, Shortest);
        if (!isLong && !Has(search.Text, first, end, static (signs, word) => signs.IsLock(word)))
            return;
        // "Siebenundzwanzig und neunundfünfzig, ohne Abstand".
        var isPaired = said.Length == 2 * used && IsTold(search.Text, atoms[search.Start].First, end);
        // "528, and carry straight on with 36": five figures in two numbers are no chance.
        isPaired |= said.Length > 2 * used && used == 2 && atoms[search.Start].Symbols.Length > 1 && atoms[last].Symbols.Length > 1;
        var isEnough = used > 2 || search.Kind == PieceKind.Letters || isPaired;
        if (codes.TryGetValue(said, out var here) && (isEnough || IsOrdered(search.Text, search.Start, last)))
            Found(search.Text, here, first, end, search.Found);
        if (!bySymbols.TryGetValue(Sorted(said), out var alike) || !IsOrdered(search.Text, search.Start, last))
            return;
        foreach (var code in alike)
        {
            if (code != said)
                Found(search.Text, codes[code], first, end, search.Found);
        }
    }

    private int OrderWords(WordReader text, int first, int last)
    {
        var count = 0;
        for (var i = Math.Max(0, first - Near); i < Math.Min(text.Words.Length, last + Near); i++)
        {
            // "Left to 2, right to 3": the turns of a lock are told in their order (LockTurns).
            var isSide = sides.GetAlternateLookup<ReadOnlySpan<char>>().Contains(text.Bare(text.Words[i]));
            count += text.Words[i].Id >= 0 && !isSide && words.Signs.IsOrder(text.Words[i].Id) ? 1 : 0;
        }

        return count;
    }

    private int PlacesBeside(int start, int last)
    {
        var count = 0;
        for (var i = Math.Max(0, start - 1); i < Math.Min(atoms.Count, last + 2); i++)
            count += atoms[i].Kind == AtomKind.Place ? 1 : 0;
        return count;
    }

    // Whether words say where the pieces stand, so that they needn't be told in their order.
    private bool IsOrdered(WordReader text, int start, int last)
    {
        for (var i = Math.Max(0, start - 2); i < Math.Min(atoms.Count, last + 3); i++)
        {
            if (atoms[i].Kind == AtomKind.Place)
                return true;
        }

        return Has(text, atoms[start].First, atoms[last].Next - 1, static (signs, word) => signs.IsOrder(word));
    }

    private bool IsTold(WordReader text, int first, int last)
    {
        for (var i = Math.Max(0, first - Far); i <= Math.Min(text.Words.Length - 1, last + Far); i++)
        {
            if ((words.RoleOf(text.Words[i].Id) & (WordRole.Sequence | WordRole.Place)) != WordRole.None || (text.Words[i].Id >= 0
                && (words.Signs.IsOrder(text.Words[i].Id) || words.Signs.IsLock(text.Words[i].Id) || words.Signs.IsLeft(text.Words[i].Id)
                    || words.Signs.IsRight(text.Words[i].Id))))
                return true;
        }

        return false;
    }

    private bool Has(WordReader text, int first, int last, Func<WordSigns, int, bool> isOne)
    {
        for (var i = Math.Max(0, first - Around); i < Math.Min(text.Words.Length, last + Around); i++)
        {
            if (text.Words[i].Id >= 0 && isOne(words.Signs, text.Words[i].Id))
                return true;
        }

        return false;
    }

    // A place and a figure, and so on: "1 G, 2 W, 3 T, 4 E"; "third and fourth L"; "the sixth is the same as the third".
    private void Labelled(WordReader text, int start, bool isBehind, PieceKind kind, List<Mention> found)
    {
        Span<char> placed = stackalloc char[MostPlaces];
        Span<int> same = stackalloc int[MostPlaces];
        placed.Clear();
        same.Clear();
        var count = 0;
        for (var at = start; at + 1 < atoms.Count && count < MostPlaces;)
        {
            if (at > start && atoms[at].First - atoms[at - 1].Next > MostBetween)
                return;
            var next = at + 1;
            while (!isBehind && next + 1 < atoms.Count && atoms[next].Kind == AtomKind.Place && atoms[next - 1].Kind == AtomKind.Place)
                next++;
            var value = atoms[isBehind ? at : next];
            for (var label = isBehind ? next : at; label < next + (isBehind ? 1 : 0); label++, count++)
            {
                if (PlaceOf(atoms[label], kind) is not (> 0 and <= MostPlaces and var place) || placed[place - 1] != '\0' || same[place - 1] != 0)
                    return;
                if (value.Symbols.Length == 1 && (kind == PieceKind.Letters) == (value.Kind == AtomKind.Letter))
                    placed[place - 1] = value.Symbols[0];
                else if (PlaceOf(value, kind) is > 0 and <= MostPlaces and var other && (kind == PieceKind.Letters || value.Kind == AtomKind.Place))
                    same[place - 1] = other;
                else
                    return;
            }

            if (lengths.Contains(count) && Arranged(placed, same, count) is { } said && codes.TryGetValue(said, out var here))
                Found(text, here, atoms[start].First, atoms[next].Next - 1, found);
            at = next + 1;
        }
    }

    private static string? Arranged(ReadOnlySpan<char> placed, ReadOnlySpan<int> same, int count)
    {
        Span<char> said = stackalloc char[count];
        for (var i = 0; i < count; i++)
        {
            said[i] = placed[i] != '\0' ? placed[i] : same[i] > 0 ? placed[same[i] - 1] : '\0';
            if (said[i] == '\0')
                return null;
        }

        return new(said);
    }

    private static int PlaceOf(in Atom atom, PieceKind kind) =>
        atom.Kind == AtomKind.Place || atom.Kind == AtomKind.Number || (kind != PieceKind.Letters && atom.Kind == AtomKind.Letter) ? atom.Value : 0;

    // "62704, from back to front".
    private void Backwards(WordReader text, string source, List<Mention> found)
    {
        if (!Array.Exists(backwards, phrase => source.Contains(phrase, StringComparison.OrdinalIgnoreCase)))
            return;
        Span<char> turned = stackalloc char[longest];
        for (var i = 0; i < text.Words.Length; i++)
        {
            // "Rückwärts gelesen dreitausendfünfhundertachtzehn".
            var next = i;
            var word = read.IsNumber(text, i) && read.Read(text, ref next, out var value) ? Written(value) : text.Bare(text.Words[i]);
            if (word.Length < Shortest || word.Length > longest)
                continue;
            word.CopyTo(turned);
            turned[..word.Length].Reverse();
            if (codes.TryGetValue(new(turned[..word.Length]), out var here))
                Found(text, here, i, Math.Max(i, next - 1), found);
        }
    }

    // "Good Work Takes Eternity: only the initials need concern you."
    private void Initials(WordReader text, string source, List<Mention> found)
    {
        Initials(text, source, Gap.None, hasGrammar: true, found);
        Initials(text, source, Gap.None, hasGrammar: false, found);
        Initials(text, source, Gap.Line | Gap.Stop | Gap.Comma | Gap.Paragraph, hasGrammar: true, found);
    }

    // Of every word, of every word but "and" and the like, or of those that begin a line, a sentence or an item.
    private void Initials(WordReader text, string source, Gap before, bool hasGrammar, List<Mention> found)
    {
        for (var first = 0; first < text.Words.Length; first++)
        {
            var said = "";
            for (var i = first; i < text.Words.Length && said.Length < longest; i++)
            {
                if (before != Gap.None && i > first && (text.Words[i].Gap & before) == Gap.None)
                    continue;
                var isSmall = (words.RoleOf(text.Words[i].Id) & (WordRole.Function | WordRole.Determiner)) != WordRole.None;
                if (!hasGrammar && isSmall && char.IsLower(source[text.Words[i].Start]))
                    continue;
                said += text.Bare(text.Words[i])[0];
                if (lengths.Contains(said.Length) && codes.TryGetValue(said, out var here))
                    Found(text, here, first, i, found);
            }
        }
    }

    private static void Found(WordReader text, List<int> secrets, int first, int last, List<Mention> found)
    {
        foreach (var secret in secrets)
            found.Add(new(secret, text.Words[first].Start, text.Words[last].End, Sureness.Likely));
    }

    private static string Sorted(string symbols) => string.Concat(symbols.Order());

    private static string Written(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static int Number(string figures) => int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private enum AtomKind
    {
        Number,
        Letter,
        Place,
        Count,
        Break,
    }

    // A number, a letter or a place, and whether it may be none.
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Atom(AtomKind Kind, int Value, string Symbols, int First, int Next, bool IsOptional);

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Search(WordReader Text, PieceKind Kind, int Start, List<Mention> Found);
}
