using System.Runtime.InteropServices;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told as the turns of a combination lock: "right to 3, left past it to 0, right again to 8". Each number of the sentence, or of up to four that
/// follow each other, has a side to which one turns before it or behind it, both sides are named, and all the numbers are the code's figures in their
/// order. Two numbers count only beside a word of a lock, and none where a way through a town or a house is described. All of these are likely mentions.
/// Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class LockTurns
{
    private const int Shortest = 3;
    private const int Fewest = 2;
    private const int MostSentences = 4;
    private readonly WordList words;
    private readonly NumberReader reader;
    private readonly Measures measures;
    private readonly string[] leftInRuns;
    private readonly string[] rightInRuns;
    private readonly string[] waysInRuns;
    private readonly string[] locksInRuns;
    private readonly Dictionary<string, Sign> signs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> codes = [];
    private readonly List<Item> items = [];
    private int longest;

    public LockTurns(WordList words)
    {
        this.words = words;
        (reader, measures) = (new(words), new(words));
        var turning = TurnWords.Of(words.Language.Code);
        (leftInRuns, rightInRuns, waysInRuns, locksInRuns) = (Split(turning.Left), Split(turning.Right), Split(turning.Ways), Split(turning.Locks));
        var letters = new WordReader(words);
        foreach (var (list, sign) in new[]
            { (turning.Left, Sign.Left), (turning.Right, Sign.Right), (turning.Turns, Sign.Turn), (turning.Locks, Sign.Lock), (turning.Ways, Sign.Way) })
        {
            foreach (var word in Split(list))
            {
                letters.Read(word);
                var bare = letters.Bare(letters.Words[0]).ToString();
                signs[bare] = signs.GetValueOrDefault(bare) | sign;
            }
        }

        static string[] Split(string list) => list.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Adds a code of figures; others are left out.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Its figures.</param>
    public void Add(int secret, string symbols)
    {
        if (symbols.Length < Shortest || !symbols.All(char.IsAsciiDigit))
            return;
        longest = Math.Max(longest, symbols.Length);
        if (!codes.TryGetValue(symbols, out var here))
            codes[symbols] = here = [];
        here.Add(secret);
    }

    /// <summary>Adds every mention to a list.</summary>
    /// <param name="text">The words.</param>
    /// <param name="source">The text.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0 || (words.Language.HasNoSpaces && !(Runs.HasAny(source, leftInRuns) && Runs.HasAny(source, rightInRuns))))
            return;
        Gather(text, source);
        if (!items.Exists(item => item.Sign == Sign.Left) || !items.Exists(item => item.Sign == Sign.Right))
            return;
        for (var first = 0; first < items.Count; first++)
        {
            if (first > 0 && items[first].Sentence == items[first - 1].Sentence)
                continue;
            var next = first;
            for (var more = 0; more < MostSentences && next < items.Count; more++)
            {
                var sentence = items[first].Sentence + more;
                while (next < items.Count && items[next].Sentence == sentence)
                    next++;
                Tell(text, CollectionsMarshal.AsSpan(items)[first..next], found);
            }
        }
    }

    private void Gather(WordReader text, string source)
    {
        items.Clear();
        var sentence = 0;
        for (var i = 0; i < text.Words.Length;)
        {
            var word = text.Words[i];
            if (i > 0)
                sentence += (word.Gap & Gap.Paragraph) != Gap.None ? MostSentences : (word.Gap & Gap.Stop) != Gap.None ? 1 : 0;
            var sign = SignAt(text, source, i);
            var next = i;
            if (reader.IsNumber(text, i) && reader.Read(text, ref next, out var number))
            {
                var isTurn = next < text.Words.Length && (SignAt(text, source, next) & Sign.Turn) != Sign.None
                    && (text.Words[next].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) == Gap.None;
                // "90 degrees to the right" is no figure of a lock, and a sentence with it none of its turns.
                var isMeasure = !isTurn && measures.Of(text, source, i, next - 1) != Measured.No;
                items.Add(new(
                    isMeasure ? Sign.Way : isTurn ? Sign.Number | Sign.Turn : Sign.Number, NumberReader.Written(text, i, number), i, next - 1, sentence));
                i = next;
                continue;
            }

            foreach (var one in (ReadOnlySpan<Sign>)[Sign.Left, Sign.Right, Sign.Lock, Sign.Way])
            {
                if ((sign & one) != Sign.None)
                    items.Add(new(one, "", i, i, sentence));
            }

            i++;
        }
    }

    private Sign SignAt(WordReader text, string source, int at)
    {
        if (!words.Language.HasNoSpaces)
            return signs.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Bare(text.Words[at]), out var sign) ? sign : Sign.None;
        var behind = source.AsSpan(text.Words[at].Start);
        var found = Runs.StartsWithAny(behind, leftInRuns) ? Sign.Left : Runs.StartsWithAny(behind, rightInRuns) ? Sign.Right : Sign.None;
        found |= Runs.StartsWithAny(behind, waysInRuns) ? Sign.Way : Sign.None;
        found |= Runs.StartsWithAny(behind, locksInRuns) ? Sign.Lock : Sign.None;
        return found | (signs.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Bare(text.Words[at]), out var one) ? one & Sign.Turn : Sign.None);
    }

    private void Tell(WordReader text, ReadOnlySpan<Item> told, List<Mention> found)
    {
        foreach (var item in told)
        {
            if (item.Sign == Sign.Way)
                return;
        }

        // "Three turns right to 28": how often one turns is no figure of the code, but may be in "three turns right, one left".
        if (!Tell(text, told, hasTurns: false, hasOnes: true, found) && !Tell(text, told, hasTurns: false, hasOnes: false, found))
            Tell(text, told, hasTurns: true, hasOnes: true, found);
    }

    private bool Tell(WordReader text, ReadOnlySpan<Item> told, bool hasTurns, bool hasOnes, List<Mention> found)
    {
        var (said, count, first, last) = ("", 0, -1, -1);
        var (sides, isLock, isBefore, isBehind, isSided) = (Sign.None, false, true, true, false);
        foreach (var item in told)
        {
            isLock |= item.Sign == Sign.Lock;
            if (item.Sign is Sign.Left or Sign.Right)
            {
                sides |= item.Sign;
                isSided = true;
            }

            var isOne = item.Symbols is "1" && !char.IsAsciiDigit(text.Bare(text.Words[item.First])[0]);
            if ((item.Sign & Sign.Number) == Sign.None || (!hasTurns && (item.Sign & Sign.Turn) != Sign.None) || (!hasOnes && isOne))
                continue;
            isBefore &= isSided;
            isBehind &= isSided || count == 0;
            isSided = false;
            said += item.Symbols;
            (first, last, count) = (first < 0 ? item.First : first, item.Last, count + 1);
            if (said.Length > longest)
                return false;
        }

        if (count < Fewest || sides != (Sign.Left | Sign.Right) || !(isBefore || (isBehind && isSided)) || (count == Fewest && !isLock)
            || !codes.TryGetValue(said, out var here))
            return false;
        foreach (var secret in here)
            found.Add(new(secret, text.Words[first].Start, text.Words[last].End, Sureness.Likely));
        return true;
    }

    [Flags]
    private enum Sign
    {
        None = 0,
        Left = 1,
        Right = 2,
        Turn = 4,
        Lock = 8,
        Way = 16,
        Number = 32,
    }

    // A number, a side or another word that matters, the words from its first to its last, and the sentence in which it stands.
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Item(Sign Sign, string Symbols, int First, int Last, int Sentence);
}
