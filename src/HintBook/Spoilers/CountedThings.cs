using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Spoilers;

/// <summary>
/// Codes told by counting: "nine islands, three harbours and seven wrecks; carry these numbers to the lock in this order". All numbers of a sentence, or
/// of two that follow each other, are the code's figures in their order, and a word of order, of numbers or of a lock stands there or in the sentence
/// before or behind. All of these are likely mentions. Reuses its buffers for the next text; not thread-safe.
/// </summary>
internal sealed class CountedThings(WordList words)
{
    private const int Shortest = 3;
    private const int ShortestOfTwo = 4;
    private const int Fewest = 2;
    private readonly NumberReader reader = new(words);
    private readonly Measures measures = new(words);
    private readonly WordReader clues = new(words);
    private readonly Dictionary<string, List<Code>> codes = [];
    private readonly List<Count> counts = [];
    private readonly HashSet<int> remarked = [];
    private int longest;

    /// <summary>Adds a code of figures; others are left out.</summary>
    /// <param name="secret">Whose answer it is.</param>
    /// <param name="symbols">Its figures.</param>
    /// <param name="clue">The clue that stands in the box: quoting it is no mention.</param>
    public void Add(int secret, string symbols, string clue)
    {
        if (symbols.Length < Shortest || !symbols.All(char.IsAsciiDigit))
            return;
        longest = Math.Max(longest, symbols.Length);
        if (!codes.TryGetValue(symbols, out var here))
            codes[symbols] = here = [];
        clues.Read(clue);
        here.Add(new(secret, Bare(clues, 0, clues.Words.Length - 1)));
    }

    /// <summary>Adds every mention to a list.</summary>
    /// <param name="text">The words.</param>
    /// <param name="source">The text.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(WordReader text, string source, List<Mention> found)
    {
        if (codes.Count == 0)
            return;
        Gather(text, source);
        if (counts.Count < Fewest || remarked.Count == 0)
            return;
        for (var first = 0; first < counts.Count; first++)
        {
            if (first == 0 || counts[first].Sentence != counts[first - 1].Sentence)
            {
                Tell(text, first, sentences: 1, found);
                Tell(text, first, sentences: 2, found);
            }
        }
    }

    private void Gather(WordReader text, string source)
    {
        counts.Clear();
        remarked.Clear();
        var sentence = 0;
        for (var i = 0; i < text.Words.Length;)
        {
            var word = text.Words[i];
            // A remark in another paragraph is none: a clue is quoted, and then spoken of.
            if (i > 0)
                sentence += (word.Gap & Gap.Paragraph) != Gap.None ? 2 : (word.Gap & Gap.Stop) != Gap.None ? 1 : 0;
            var next = i;
            if (IsCounting(text, i) && reader.Read(text, ref next, out var number))
            {
                // "In the photo five gulls" is no page.
                if (!char.IsAsciiDigit(text.Bare(word)[0]) || measures.Of(text, source, i, next - 1) == Measured.No)
                    counts.Add(new(NumberReader.Written(text, i, number), i, next - 1, sentence, MayBeArticle(text, i, number)));
                // "5 wheels": what is counted is no remark.
                var isOfNoun = !words.Language.HasNoSpaces && next < text.Words.Length
                    && (text.Words[next].Gap & (Gap.Stop | Gap.Paragraph | Gap.Comma)) == Gap.None;
                i = isOfNoun ? next + 1 : next;
                continue;
            }

            if (word.Id >= 0 && (words.Signs.IsLock(word.Id) || words.Signs.IsNumbers(word.Id)))
                remarked.Add(sentence);
            i++;
        }
    }

    // 四束, 二本, 六つ: without spaces a number counts only before what it counts, as 一緒 is no number.
    private bool IsCounting(WordReader text, int at)
    {
        if (!reader.IsNumber(text, at))
            return false;
        if (!words.Language.HasNoSpaces)
            return true;
        var behind = at + 1;
        while (behind < text.Words.Length && reader.IsNumber(text, behind))
            behind++;
        return behind < text.Words.Length && text.Words[behind].Gap == Gap.None && text.Bare(text.Words[behind])[0] is 'つ' or (>= '\u4E00' and <= '\u9FFF');
    }

    // "One is gold" counts; the "une" of "une île" may be an article.
    private static bool MayBeArticle(WordReader text, int at, int number) => number == 1 && !char.IsAsciiDigit(text.Bare(text.Words[at])[0]);

    private void Tell(WordReader text, int first, int sentences, List<Mention> found)
    {
        var from = counts[first].Sentence;
        var last = first;
        while (last + 1 < counts.Count && counts[last + 1].Sentence < from + sentences)
            last++;
        if (counts[last].Sentence != from + sentences - 1 || !IsRemarked(from - 1, counts[last].Sentence + 1))
            return;
        if (!Tell(text, first, last, hasArticles: true, found))
            Tell(text, first, last, hasArticles: false, found);
    }

    private bool Tell(WordReader text, int first, int last, bool hasArticles, List<Mention> found)
    {
        var (said, used) = ("", 0);
        for (var i = first; i <= last && said.Length <= longest; i++)
        {
            if (hasArticles || !counts[i].MayBeArticle)
                (said, used) = (said + counts[i].Symbols, used + 1);
        }

        if (used < Fewest || (used == Fewest && said.Length < ShortestOfTwo) || !codes.TryGetValue(said, out var here))
            return false;
        var quoted = Bare(text, counts[first].First, counts[last].Last);
        foreach (var code in here.Where(code => !code.Clue.Contains(quoted, StringComparison.Ordinal)))
            found.Add(new(code.Secret, text.Words[counts[first].First].Start, text.Words[counts[last].Last].End, Sureness.Likely));
        return true;
    }

    private bool IsRemarked(int first, int last)
    {
        for (var sentence = first; sentence <= last; sentence++)
        {
            if (remarked.Contains(sentence))
                return true;
        }

        return false;
    }

    private static string Bare(WordReader text, int first, int last)
    {
        var bare = new StringBuilder();
        for (var i = first; i <= last; i++)
            bare.Append(text.Bare(text.Words[i])).Append(' ');
        return bare.ToString();
    }

    // Whose answer it is, and the bare words of its clue.
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Code(int Secret, string Clue);

    // A number, the words from its first to its last, and the sentence in which it stands.
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Count(string Symbols, int First, int Last, int Sentence, bool MayBeArticle);
}
