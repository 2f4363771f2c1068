using System.Buffers;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells talk in which a word or a time isn't meant; see <see cref="UnmeantIn"/>. Shared by all threads.</summary>
internal sealed class Unmeant
{
    private const int NearCopula = 3, NearQuality = 6, ShortestStem = 3, LongestSmall = 4, Around = 100;
    private static readonly char[] Ends = ['.', '!', '?', '\n', '。', '؟', FoldedText.BetweenItems];
    private static readonly char[] HardEnds = ['!', '?', '\n', '。', '؟', FoldedText.BetweenItems];
    private readonly HashSet<string> qualities, copulas, beforeNames, inNames, days;
    private readonly string[] endings;
    private readonly bool hasHours;
    private readonly SearchValues<string> onScreen, hours;

    public Unmeant(string language)
    {
        var talk = UnmeantIn.Of(language);
        (qualities, beforeNames, inNames, days) = (Words(talk.Qualities), Words(talk.BeforeNames), Words(talk.InNames), Words(talk.Days));
        copulas = Words(RemarksIn.Of(language).Copulas + (language == "fr" ? " voilà" : ""));
        endings = [.. Words(talk.QualityEndings)];
        (onScreen, hours, hasHours) = (Phrases(talk.OnScreen), Phrases(talk.Hours), talk.Hours.Length > 0);
    }

    /// <summary>Whether the words from one to another stand for no thing.</summary>
    public bool Is(FoldedText text, string source, int first, int last) =>
        (first > 0 && beforeNames.Contains(text.Of(text.Words[first - 1]).ToString()))
        || (last + 1 < text.Words.Length && inNames.Count > 0 && inNames.Contains(text.Of(text.Words[last + 1]).ToString()))
        || SaysWhatAQualityIs(text, first)
        || Sentence(source, text.Words[first].Start, text.Words[last].End, Ends).ContainsAny(onScreen);

    /// <summary>Whether a time is one at which somebody is there.</summary>
    public bool IsOpeningHour(FoldedText text, string source, int at)
    {
        var start = text.Words[at].Start;
        if (!hasHours)
            return false;
        if (Sentence(source, start, start, HardEnds).ContainsAny(hours))
            return true;
        var named = 0;
        for (var i = Math.Max(0, at - 12); i < Math.Min(text.Words.Length, at + 12) && named < 2; i++)
        {
            if (days.Contains(text.Of(text.Words[i]).ToString()) && char.IsUpper(source[text.Words[i].Start]))
                named++;
        }

        return named > 1;
    }

    // "Beharrlichkeit ist hier der Schlüssel".
    private bool SaysWhatAQualityIs(FoldedText text, int first)
    {
        var at = first - 1;
        for (; at > 0 && at >= first - NearCopula && text.Words[at + 1].Parting < Parting.Comma && !copulas.Contains(text.Of(text.Words[at]).ToString()); at--)
        {
            if (text.Words[at].Length > LongestSmall)
                return false;
        }

        if (at < 0 || (at > 0 && at < first - NearCopula) || !copulas.Contains(text.Of(text.Words[at]).ToString()))
            return false;
        for (var i = at - 1; i >= 0 && i >= at - NearQuality && text.Words[i + 1].Parting < Parting.Stop; i--)
        {
            if (IsQuality(text.Of(text.Words[i])))
                return true;
        }

        return false;
    }

    private bool IsQuality(ReadOnlySpan<char> word)
    {
        foreach (var ending in endings)
        {
            if (word.Length - ending.Length >= ShortestStem && word.EndsWith(ending))
                return true;
        }

        return qualities.Contains(word.ToString());
    }

    private static ReadOnlySpan<char> Sentence(string source, int start, int end, char[] ends)
    {
        var from = Math.Max(start > 0 ? source.LastIndexOfAny(ends, start - 1) + 1 : 0, start - Around);
        var to = end < source.Length ? source.IndexOfAny(ends, end) : -1;
        return source.AsSpan(from, Math.Min(to < 0 ? source.Length : to, end + Around) - from);
    }

    private static HashSet<string> Words(string list) => [.. FoldedText.BareWords(list)];

    private static SearchValues<string> Phrases(string list) =>
        SearchValues.Create(list.Split(", ", StringSplitOptions.RemoveEmptyEntries), StringComparison.OrdinalIgnoreCase);
}
