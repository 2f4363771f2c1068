using System.Buffers;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Tells whether a step of the box stands behind a thing in a bracket or behind a comma, as in a list of spare parts: "sponge (stage 2)", "canard en buis
/// (étape 4)". Shared by all threads.
/// </summary>
internal sealed class Steps
{
    private const int MostBetween = 3, MostOther = 1, MostWords = 5, LongestUnspaced = 10;
    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789０１２３４５６７８９一二三四五六七八九十");
    private static readonly SearchValues<char> Ends = SearchValues.Create("）)、。，\n");
    private readonly WordNumbers numbers;
    private readonly HashSet<string> words, before, cut;
    private readonly string[] written;

    public Steps(WordNumbers numbers)
    {
        this.numbers = numbers;
        var steps = StepsIn.Of(numbers.Language.Code);
        (words, before, cut) = (FoldedText.SetOf(steps.Words), FoldedText.SetOf(steps.Before), FoldedText.SetOf(steps.Short));
        written = steps.Words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>Whether a step follows behind a word.</summary>
    public bool Follow(FoldedText text, ReadOnlySpan<int> ids, string source, int last)
    {
        if (words.Count == 0)
            return false;
        if (numbers.Language.IsUnspaced)
            return FollowUnspaced(source.AsSpan(text.Words[last].End));
        for (var at = last + 1; at < text.Words.Length && at <= last + 1 + MostBetween; at++)
        {
            var gap = source.AsSpan(text.Words[at - 1].End..text.Words[at].Start);
            if (gap.ContainsAny('(', '[') && text.Words[at].Parting < Parting.Stop)
                return IsStep(text, ids, source, at, isInBrackets: true);
            if (text.Words[at].Parting == Parting.Comma)
                return at <= last + 1 + (before.Count == 0 ? MostBetween : 2) && IsStep(text, ids, source, at, isInBrackets: false);
            if (text.Words[at].Parting > Parting.Comma || (at == last + 1 && before.Count > 0 && !text.Has(before, at)))
                return false;
        }

        return false;
    }

    // A step, its number, and small words; nothing else.
    private bool IsStep(FoldedText text, ReadOnlySpan<int> ids, string source, int from, bool isInBrackets)
    {
        var (others, steps) = (0, 0);
        for (var at = from; at < text.Words.Length; at++)
        {
            var gap = source.AsSpan(text.Words[at - 1].End..text.Words[at].Start);
            if (at > from && (isInBrackets ? gap.ContainsAny(')', ']') : text.Words[at].Parting >= Parting.Comma))
                break;
            if (at - from == MostWords || (at > from && text.Words[at].Parting >= Parting.Comma && !text.Has(cut, at - 1)))
                return false;
            if (text.Has(words, at))
                steps++;
            else if (text.Has(cut, at) || (at > from && text.Has(cut, at - 1) && text.Of(text.Words[at]) is "o" or "º"))
                continue;
            else if (char.IsAsciiDigit(text.Of(text.Words[at])[0]) || numbers.UseOf(ids[at]) is WordUse.Plain || numbers.IsSaidInNumbers(ids[at]))
                others++;
        }

        return steps == 1 && others == MostOther;
    }

    // 櫛（第二段）, 紙やすり、第5段階.
    private bool FollowUnspaced(ReadOnlySpan<char> behind)
    {
        if (behind.IsEmpty || behind[0] is not ('（' or '(' or '、'))
            return false;
        var end = behind[1..].IndexOfAny(Ends);
        var said = end < 0 ? behind[1..] : behind[1..(end + 1)];
        if (said.Length > LongestUnspaced || !said.ContainsAny(Figures))
            return false;
        foreach (var word in written)
        {
            if (said.Contains(word, StringComparison.Ordinal))
                return true;
        }

        return false;
    }
}
