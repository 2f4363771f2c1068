using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using HintBook.Audit.Mentions.Languages;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Codes told by counting: "nine islands, three harbours and seven wrecks, and carry these numbers in this order to the lock". All numbers of a sentence, or
/// of it and the one before, must be the code's figures in their order, and the text must speak of an order, a lock or the numbers. Doubts only. Reuses its
/// buffers for the next text; not thread-safe.
/// </summary>
internal sealed class CountedThings
{
    private const int Shortest = 3, MostUnsure = 6, ShortestDual = 5, NearNumber = 2, NearPlace = 2;
    private readonly CodeTable codes;
    private readonly CountTalk talk;
    private readonly HashSet<string> ones, noughts, numbered, prepositions;
    private readonly string[] duals;
    private readonly List<Count> counts = [];
    private readonly List<int> unsure = [];
    private readonly StringBuilder said = new();

    public CountedThings(CodeTable codes, CountTalk talk, AuditLanguage language)
    {
        (this.codes, this.talk) = (codes, talk);
        var words = CountsIn.Of(language.Code);
        (ones, noughts, numbered) = (FoldedText.SetOf(words.Ones), FoldedText.SetOf(words.Noughts), FoldedText.SetOf(words.Numbered));
        prepositions = FoldedText.SetOf(language.Prepositions);
        duals = [.. FoldedText.BareWords(words.Duals)];
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, ReadOnlySpan<Token> tokens, string source, List<FoundSecret> found)
    {
        if (codes.Longest < Shortest)
            return;
        var (before, start) = (0, 0);
        for (var at = 1; at <= tokens.Length; at++)
        {
            if (at < tokens.Length && text.Words[tokens[at].First].Parting < Parting.Stop)
                continue;
            Look(text, tokens, source, start, at, found);
            if (before < start)
                Look(text, tokens, source, before, at, found);
            var isNextApart = at < tokens.Length && text.Words[tokens[at].First].Parting > Parting.Stop;
            (before, start) = (isNextApart ? at : start, at);
        }
    }

    private void Look(FoldedText text, ReadOnlySpan<Token> tokens, string source, int from, int to, List<FoundSecret> found)
    {
        if (!Gather(text, tokens, source, from, to))
            return;
        for (var without = 0; without < 1 << unsure.Count; without++)
        {
            said.Clear();
            var (used, counting, first, last) = (0, 0, -1, -1);
            for (var i = 0; i < counts.Count && said.Length <= codes.Longest; i++)
            {
                if (unsure.IndexOf(i) is >= 0 and var bit && (without & (1 << bit)) != 0)
                    continue;
                said.Append(counts[i].Figures);
                used++;
                counting += counts[i].IsOfThings ? 1 : 0;
                (first, last) = (first < 0 ? counts[i].First : first, counts[i].Last);
            }

            if (used < 2 || counting == 0 || said.Length < Shortest || said.Length > codes.Longest)
                continue;
            var told = codes.Of(said.ToString());
            if (told.Count == 0)
                continue;
            if (!IsOfCode(text, tokens, source, from, to))
                return;
            foreach (var (secret, _) in told)
                found.Add(new(secret, first, last, Sure: false, Words: 1, IsCode: true));
        }
    }

    // All numbers of the stretch; false if one of them is a measure, or none of them is sure.
    private bool Gather(FoldedText text, ReadOnlySpan<Token> tokens, string source, int from, int to)
    {
        counts.Clear();
        unsure.Clear();
        var sure = 0;
        for (var i = from; i < to; i++)
        {
            var token = tokens[i];
            if (FiguresOf(text, token) is not { Length: > 0 } figures || (i > from && text.Has(numbered, tokens[i - 1].Last)))
                continue;
            var isSure = token.Is(Sign.Number) && !token.Is(Sign.Unsure) && token.Value != 0 && (token.First == token.Last || token.Symbols.Length > 1);
            if (isSure && Measures.Follow(source, text.Words[token.Last].End))
                return false;
            if (!isSure && unsure.Count == MostUnsure)
                continue;
            if (!isSure)
                unsure.Add(counts.Count);
            sure += isSure ? 1 : 0;
            var isOfThings = isSure && i + 1 < tokens.Length && !tokens[i + 1].Is(Sign.Number | Sign.Grammar)
                && text.Words[tokens[i + 1].First].Parting <= Parting.Space;
            counts.Add(new(figures, token.First, token.Last, isOfThings));
        }

        return sure > 0;
    }

    private string FiguresOf(FoldedText text, in Token token)
    {
        if (token.Is(Sign.Ordinal | Sign.Last) && !token.Is(Sign.Number))
            return "";
        if (token.Is(Sign.Number) && token.Value >= 0)
            return token.Symbols.Length > 0 ? token.Symbols : token.Value.ToString(CultureInfo.InvariantCulture);
        if (token.First != token.Last)
            return "";
        // "A palm", not "marked with a cross".
        if (text.Has(ones, token.First))
            return token.First > 0 && text.Has(prepositions, token.First - 1) ? "" : "1";
        if (text.Has(noughts, token.First))
            return "0";
        var word = text.Of(text.Words[token.First]);
        foreach (var dual in duals)
        {
            if (word.Length >= ShortestDual && word.EndsWith(dual))
                return "2";
        }

        return "";
    }

    private bool IsOfCode(FoldedText text, ReadOnlySpan<Token> tokens, string source, int from, int to)
    {
        var start = text.Words[tokens[from].First].Start;
        var end = text.Words[tokens[to - 1].Last].End;
        // "Three dials", "two brass rings" are counted themselves, and of "three swarms on the wheels" it is told where they are.
        List<(int From, int To)> counted = [];
        foreach (var count in counts)
        {
            if (!count.IsOfThings)
                continue;
            var last = count.Last;
            var isSomewhere = last + NearNumber < text.Words.Length && text.Has(prepositions, last + NearNumber);
            var most = last + (isSomewhere ? NearNumber + NearPlace : NearNumber);
            while (last + 1 < text.Words.Length && last < most && text.Words[last + 1].Parting <= Parting.Space)
                last++;
            counted.Add((text.Words[count.Last].End - start, text.Words[last].End - start));
        }

        return talk.IsOfCode(source[start..end], at => counted.Exists(range => at >= range.From && at < range.To));
    }

    /// <summary>How many things there are.</summary>
    /// <param name="Figures">The figures of the number.</param>
    /// <param name="First">Its first word.</param>
    /// <param name="Last">Its last word.</param>
    /// <param name="IsOfThings">Whether a noun follows.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Count(string Figures, int First, int Last, bool IsOfThings);
}
