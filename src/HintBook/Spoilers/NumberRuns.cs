using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes in any spelling: <c>5173</c>, <c>5-1-7-3</c>, <c>five, one, seven and three</c>, <c>fifty-one seventy-three</c>,
/// <c>five thousand one hundred and seventy-three</c>, <c>C.L.O.V.E.R.</c>. Figures, number words and lone letters that stand one after the
/// other make a run; a run is read figure by figure, and again with its number words taken together.
/// </summary>
internal sealed class NumberRuns(WordList words)
{
    private const int MostBetween = 2;
    private const int ShortestInARun = 4;
    private const char FirstWithoutSpaces = '\u3040';
    private readonly Dictionary<string, List<(int Secret, Sureness Sureness, bool Alone)>> codes = [];
    private readonly List<Atom> atoms = [];
    private readonly List<(int From, int First, int Last)> pieces = [];
    private readonly StringBuilder digits = new();
    private readonly Measures measures = new(words);
    private readonly NumbersAround around = NumbersAround.For(words.Language);
    private readonly string thousand = words.Language.Pieces.BigNumber;
    private int longest;

    /// <summary>Adds a code.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Figures and small letters without anything between.</param>
    /// <param name="sureness">How sure its mentions are.</param>
    public void Add(int secret, string symbols, Sureness sureness)
    {
        Put(symbols, sureness, alone: false);
        // Who says a code as one number leaves out its leading noughts.
        var spoken = symbols.TrimStart('0');
        if (spoken.Length != symbols.Length && spoken.Length > 2)
            Put(spoken, sureness, alone: true);

        void Put(string text, Sureness sure, bool alone)
        {
            longest = Math.Max(longest, text.Length);
            if (!codes.TryGetValue(text, out var here))
                codes[text] = here = [];
            here.Add((secret, sure, alone));
        }
    }

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        var all = text.Words;
        for (var i = 0; i < all.Length;)
        {
            if (AtomAt(text, i) is not { } first || (first.Letter && all[i].Length == 1 && !Continues(text, i)))
            {
                i++;
                continue;
            }

            i = Collect(text, i, first);
            Read(text, source, together: false, found);
            if (atoms.Exists(atom => atom.Figure is not null))
                Read(text, source, together: true, found);
        }
    }

    private bool Continues(WordReader text, int at) =>
        at + 1 < text.Words.Length && (text.Words[at + 1].Gap & Gap.Paragraph) == Gap.None && AtomAt(text, at + 1) is not null;

    private int Collect(WordReader text, int at, Atom first)
    {
        atoms.Clear();
        atoms.Add(first);
        var next = at + 1;
        for (var (i, between) = (next, 0); i < text.Words.Length && (text.Words[i].Gap & Gap.Paragraph) == Gap.None; i++)
        {
            if ((text.Words[i].Gap & Gap.Apart) != Gap.None && (text.Words[i].Length > 1 || text.Words[i - 1].Length > 1))
                break;
            var filler = (words.RoleOf(text.Words[i].Id) & WordRole.Between) != WordRole.None;
            if (!(filler && FollowedByFigure(text, i)) && AtomAt(text, i) is { } atom)
            {
                atoms.Add(atom with
                {
                    BehindAnd = between > 0 && (words.RoleOf(text.Words[i - 1].Id) & WordRole.And) != WordRole.None,
                    IsHyphenated = text.Words[i].Gap == Gap.Hyphen,
                });
                (next, between) = (i + 1, 0);
            }
            else if (!filler || ++between > MostBetween)
            {
                break;
            }
        }

        return next;
    }

    // "a" is a letter between letters and nothing between figures.
    private bool FollowedByFigure(WordReader text, int at) =>
        at + 1 < text.Words.Length && AtomAt(text, at + 1) is { Letter: false };

    private Atom? AtomAt(WordReader text, int at)
    {
        var word = text.Words[at];
        var bare = text.Bare(word);
        if (bare.IsEmpty)
            return null;
        if (char.IsAsciiDigit(bare[0]))
            return IsOrdinal(text, at) ? null : new Atom(at, null, Letter: false);
        if ((words.FigureOf(word.Id) ?? BigNumber(word.Id, bare)) is { } figure)
            return new Atom(at, figure, Letter: false);
        return bare.Length == 1 && !IsPartOfWord(text, at, bare[0]) ? new Atom(at, null, Letter: true) : null;
    }

    // "Einundfünfzigtausendneunhundert": a number of ten thousand and more as one word.
    private Figure? BigNumber(int known, ReadOnlySpan<char> bare)
    {
        if (thousand.Length == 0 || known >= 0 || bare.Length <= thousand.Length)
            return null;
        var at = bare.IndexOf(thousand);
        if (at <= 0 || words.FigureOf(words.NumberOf(bare[..at])) is not { } thousands)
            return null;
        var rest = bare[(at + thousand.Length)..];
        return rest.IsEmpty ? new(thousands.Value * 1000, FigureKind.Small)
            : words.FigureOf(words.NumberOf(rest.StartsWith("und") ? rest[3..] : rest)) is { } more ? new(thousands.Value * 1000 + more.Value, FigureKind.Small)
            : null;
    }

    // The "l" of "l’abeille", and each letter where no spaces part the words.
    private bool IsPartOfWord(WordReader text, int at, char letter) =>
        (at + 1 < text.Words.Length && (text.Words[at + 1].Gap & Gap.Elision) != Gap.None) || (words.Language.HasNoSpaces && letter >= FirstWithoutSpaces);

    private static bool IsOrdinal(WordReader text, int at) =>
        at + 1 < text.Words.Length && text.Words[at + 1].Gap == Gap.None && text.Bare(text.Words[at + 1]) is "st" or "nd" or "rd" or "th";

    private void Read(WordReader text, string source, bool together, List<Mention> found)
    {
        digits.Clear();
        pieces.Clear();
        for (var i = 0; i < atoms.Count;)
            i = Number(text, i, together);
        Seek(text, source, found);
    }

    private int Single(WordReader text, int i, int first)
    {
        var atom = atoms[i];
        if (atom.Figure is { Kind: FigureKind.Again, Value: var times } && i + 1 < atoms.Count)
        {
            var from = digits.Length;
            var next = Single(text, i + 1, first);
            var again = digits.ToString(from, digits.Length - from);
            for (var more = 1; more < times; more++)
                digits.Append(again);
            return next;
        }

        pieces.Add((digits.Length, first, i));
        if (atom.Figure is { } figure)
            digits.Append(figure.Value);
        else if (atom.Letter && text.Bare(text.Words[atom.Word]) is "o" && !OnlyLetters())
            digits.Append('0');
        else
            digits.Append(text.Bare(text.Words[atom.Word]));
        return i + 1;
    }

    private bool OnlyLetters() => atoms.TrueForAll(atom => atom.Letter);

    // As English says a number: what can't go on the number before it begins a new one. Figure by figure, only "fifty-one" is one.
    private int Number(WordReader text, int first, bool together)
    {
        if (words.Language.Counting is { } counting)
            return Number(text, first, together, counting);
        if (FigureAt(text, first, together) is null or { Kind: FigureKind.Again or FigureKind.Scale })
            return Single(text, first, first);
        var (total, part, i) = (0, FigureAt(text, first, together)!.Value.Value, first + 1);
        for (; i < atoms.Count && FigureAt(text, i, together) is { } figure; i++)
        {
            if (!together && (part < 20 || part > 90 || figure is not { Kind: FigureKind.Small, Value: < 10 }))
                break;
            if (figure is { Kind: FigureKind.Scale, Value: 100 } && part is > 0 and < 100)
                part *= 100;
            else if (figure is { Kind: FigureKind.Scale, Value: 1000 } && part > 0 && total == 0)
                (total, part) = (part * 1000, 0);
            else if (figure.Kind is FigureKind.Tens && part % 100 == 0 && (part > 0 || total > 0))
                part += figure.Value;
            else if (figure is { Kind: FigureKind.Small, Value: > 0 } && FitsBehind(part, total, figure.Value))
                part += figure.Value;
            else
                break;
        }

        pieces.Add((digits.Length, first, i - 1));
        digits.Append(total + part);
        return i;
    }

    private int Number(WordReader text, int first, bool together, NumberGrammar counting)
    {
        if (FigureAt(text, first, together) is not { Kind: not FigureKind.Again } figure)
            return Single(text, first, first);
        var (number, i) = (figure.Value, first + 1);
        for (; i < atoms.Count && FigureAt(text, i, together) is { } next; i++)
        {
            var longer = number;
            if (!counting.GoesOn(ref longer, next) || (!together && longer > 99))
                break;
            number = longer;
        }

        pieces.Add((digits.Length, first, i - 1));
        digits.Append(number);
        return i;
    }

    // "51 thousand 937": figures beside a word for a thousand are a number word as well.
    private Figure? FigureAt(WordReader text, int i, bool together)
    {
        var atom = atoms[i];
        if (atom.Figure is not null || atom.Letter || !together || text.Words[atom.Word].Length > 3)
            return atom.Figure;
        var isBeside = (i + 1 < atoms.Count && atoms[i + 1].Figure is { Kind: FigureKind.Scale })
            || (i > 0 && atoms[i - 1].Figure is { Kind: FigureKind.Scale });
        return isBeside ? new(int.Parse(text.Bare(text.Words[atom.Word]), CultureInfo.InvariantCulture), FigureKind.Small) : null;
    }

    private static bool FitsBehind(int part, int total, int small) =>
        (part % 100 == 0 && (part > 0 || total > 0)) || (part % 100 >= 20 && part % 10 == 0 && small < 10);

    private void Seek(WordReader text, string source, List<Mention> found)
    {
        var run = digits.ToString();
        var lookup = codes.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = i; j < pieces.Count; j++)
            {
                var (from, to) = (pieces[i].From, j + 1 < pieces.Count ? pieces[j + 1].From : run.Length);
                if (to - from > longest || (j > i && IsAnother(j, to)))
                    break;
                if (!lookup.TryGetValue(run.AsSpan(from, to - from), out var here))
                    continue;
                var whole = i == 0 && j == pieces.Count - 1;
                if (!whole && ((to - from < ShortestInARun - 1 && i != j) || IsCutOff(text, pieces[i].First, pieces[j].Last)))
                    continue;
                var (start, end) = (text.Words[atoms[pieces[i].First].Word].Start, text.Words[atoms[pieces[j].Last].Word].End);
                var measured = measures.Of(text, source, atoms[pieces[i].First].Word, atoms[pieces[j].Last].Word);
                var isShown = measured == Measured.Likely && around.IsShown(source, start, end);
                foreach (var (secret, sureness, alone) in here)
                {
                    if ((!whole && alone) || (measured != Measured.No && !isShown && (alone || measured == Measured.Surely || to - from < ShortestInARun)))
                        continue;
                    var isSure = measured == Measured.No && (whole || i == j || to - from >= ShortestInARun);
                    found.Add(new(secret, start, end, isSure ? sureness : Sureness.Likely));
                }
            }
        }
    }

    // "06-28" in "2024-06-28", "803 974" in "5 803 974": part of a longer number.
    private bool IsCutOff(WordReader text, int first, int last) =>
        (first > 0 && IsGlued(text, atoms[first - 1], atoms[first])) || (last + 1 < atoms.Count && IsGlued(text, atoms[last], atoms[last + 1]));

    private static bool IsGlued(WordReader text, Atom left, Atom right)
    {
        var (one, other) = (text.Words[left.Word], text.Words[right.Word]);
        if (left.Letter || right.Letter || left.Figure is not null || right.Figure is not null || right.Word != left.Word + 1 || one.Length + other.Length < 3)
            return false;
        return other.Start == one.End + 1 && ((other.Gap & (Gap.Space | Gap.Line)) == Gap.None || (other.Length == 3 && one.Length is > 0 and < 4));
    }

    // "325 and 14" are two numbers; "5, 1, 7 and 3" are one.
    // So are those of "four-and-twenty", which is twenty-four.
    private bool IsAnother(int piece, int to) =>
        atoms[pieces[piece].First] is { BehindAnd: true, IsHyphenated: true }
        || (atoms[pieces[piece].First].BehindAnd && to - pieces[piece].From > 1 && pieces[piece].From - pieces[piece - 1].From > 1);

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Atom(int Word, Figure? Figure, bool Letter, bool BehindAnd = false, bool IsHyphenated = false);
}
