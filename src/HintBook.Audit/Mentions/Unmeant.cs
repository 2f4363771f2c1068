using System.Buffers;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells talk in which a word or a time isn't meant; see <see cref="UnmeantIn"/>. Shared by all threads.</summary>
internal sealed class Unmeant
{
    private const int NearCopula = 3, NearQuality = 6, ShortestStem = 3, LongestSmall = 4, Around = 100;
    private static readonly char[] Ends = ['.', '!', '?', '\n', '。', '؟', FoldedText.BetweenItems];
    private static readonly char[] HardEnds = ['!', '?', '\n', '。', '؟', FoldedText.BetweenItems];
    private readonly HashSet<string> qualities, copulas, beforeNames, inNames, days, readers;
    private readonly string[] endings;
    private readonly bool hasHours;
    private readonly SearchValues<string> onScreen, hours;
    private readonly string[] topics;
    private readonly Dictionary<string, string[]> senses = new(StringComparer.Ordinal);
    private readonly bool isUnspaced;

    public Unmeant(string language)
    {
        var talk = UnmeantIn.Of(language);
        (qualities, days) = (FoldedText.SetOf(talk.Qualities), FoldedText.SetOf(talk.Days));
        (beforeNames, inNames) = (FoldedText.SetOf(talk.BeforeNames), FoldedText.SetOf(talk.InNames));
        copulas = FoldedText.SetOf(RemarksIn.Of(language).Copulas + (language == "fr" ? " voilà" : ""));
        endings = [.. FoldedText.SetOf(talk.QualityEndings)];
        (topics, readers) = (talk.Topics.Split(", ", StringSplitOptions.RemoveEmptyEntries), FoldedText.SetOf(talk.Reader));
        isUnspaced = language == "ja";
        AddSenses(language);
        (onScreen, hours, hasHours) = (Phrases(talk.OnScreen), Phrases(talk.Hours), talk.Hours.Length > 0);
    }

    /// <summary>Whether the words from one to another stand for no thing.</summary>
    /// <param name="text">The text in words.</param>
    /// <param name="source">The text.</param>
    /// <param name="first">The first of the words.</param>
    /// <param name="last">The last.</param>
    /// <param name="name">What they name.</param>
    public bool Is(FoldedText text, string source, int first, int last, string name) =>
        (first > 0 && beforeNames.Contains(text.Of(text.Words[first - 1]).ToString()))
        || (last + 1 < text.Words.Length && inNames.Count > 0 && inNames.Contains(text.Of(text.Words[last + 1]).ToString()))
        || SaysWhatAQualityIs(text, first)
        || IsElsewhere(text, source, first, last)
        || HasOtherSense(text, source, first, last, name);

    // "Does the stamp on the parcel have to be first class?", unless it speaks to the reader.
    private bool IsElsewhere(FoldedText text, string source, int first, int last)
    {
        var sentence = Sentence(source, text.Words[first].Start, text.Words[last].End, Ends);
        if (sentence.ContainsAny(onScreen))
            return true;
        foreach (var topic in topics)
        {
            if (sentence.IndexOf(topic, StringComparison.OrdinalIgnoreCase) is >= 0 and var at && (isUnspaced || at == 0 || !char.IsLetter(sentence[at - 1])))
                return !SpeaksToReader(text, first, last);
        }

        return false;
    }

    private bool SpeaksToReader(FoldedText text, int first, int last)
    {
        var (from, to) = InSentence(text, first, last);
        return readers.Count > 0 && text.HasAny(readers, from, to + 1);
    }

    /// <summary>Whether a word beside it says that the noun is another one: "a seal lay on the rocks".</summary>
    public bool HasOtherSense(FoldedText text, string source, int first, int last, string name)
    {
        if (!senses.TryGetValue(Bare(name), out var beside) && !senses.TryGetValue(text.Of(text.Words[last]).ToString(), out beside))
            return false;
        if (isUnspaced)
        {
            var sentence = Sentence(source, text.Words[first].Start, text.Words[last].End, Ends).ToString();
            return Array.Exists(beside, one => sentence.Contains(one, StringComparison.Ordinal));
        }

        var (from, to) = InSentence(text, first, last);
        for (var at = from; at <= to; at++)
        {
            if ((at < first || at > last) && IsOne(beside, text.Of(text.Words[at])))
                return true;
        }

        return false;
    }

    private static bool IsOne(string[] all, ReadOnlySpan<char> word)
    {
        foreach (var one in all)
        {
            if (one[0] == '*' ? word.EndsWith(one.AsSpan(1)) : one[^1] == '*' ? word.StartsWith(one.AsSpan(0, one.Length - 1)) : word.SequenceEqual(one))
                return true;
        }

        return false;
    }

    private static (int From, int To) InSentence(FoldedText text, int first, int last)
    {
        while (first > 0 && text.Words[first].Parting < Parting.Stop)
            first--;
        while (last + 1 < text.Words.Length && text.Words[last + 1].Parting < Parting.Stop)
            last++;
        return (first, last);
    }

    private void AddSenses(string language)
    {
        foreach (var entry in SensesIn.Of(language).Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = entry.IndexOf(':', StringComparison.Ordinal);
            var words = entry[(colon + 2)..].Split(isUnspaced ? ", " : " ", StringSplitOptions.RemoveEmptyEntries);
            string[] beside = isUnspaced ? words
                : [.. words.Select(word => word[0] == '*' ? "*" + Bare(word) : word[^1] == '*' ? Bare(word) + "*" : Bare(word))];
            foreach (var noun in entry[..colon].Split(' '))
                senses[Bare(noun)] = beside;
        }
    }

    private static string Bare(string word) => FoldedText.BareWords(word).LastOrDefault() ?? "";

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

    private static SearchValues<string> Phrases(string list) =>
        SearchValues.Create(list.Split(", ", StringSplitOptions.RemoveEmptyEntries), StringComparison.OrdinalIgnoreCase);
}
