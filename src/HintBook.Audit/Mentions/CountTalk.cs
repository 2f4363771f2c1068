using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells talk of a code from other talk of numbers where things are counted or listed; see <see cref="CountsIn"/>. Shared by all threads.</summary>
internal sealed class CountTalk
{
    private readonly string[] locks, orders, elsewhere, placesWithin, headsWithin;
    private readonly HashSet<string> places, heads;
    private readonly bool isWithin, isUnspaced;

    public CountTalk(AuditLanguage language)
    {
        var counts = CountsIn.Of(language.Code);
        (locks, orders, elsewhere) = (Phrases(counts.Locks), Phrases(counts.Orders), Phrases(counts.Elsewhere));
        isUnspaced = language.IsUnspaced;
        // Where the article and prepositions are written as one with a word, a phrase begins anywhere.
        isWithin = isUnspaced || language.BeforeNumbers.Length > 0;
        (placesWithin, headsWithin) = isUnspaced ? (Phrases(counts.Places), Phrases(counts.Heads)) : ([], []);
        (places, heads) = isUnspaced ? ([], []) : (FoldedText.SetOf(counts.Places), FoldedText.SetOf(counts.Heads));
    }

    /// <summary>Whether a text speaks of a lock, of what was counted, or at least of an order that isn't a cook's or a shop's.</summary>
    /// <param name="said">The text.</param>
    /// <param name="isCounted">Whether what stands at an offset is itself what a number counts: "three dials".</param>
    public bool IsOfCode(string said, Func<int, bool> isCounted) =>
        Says(said, locks, isCounted) || (Says(said, orders, isCounted) && !IsElsewhere(said));

    /// <summary>Whether it speaks of kitchens, shops, families, streets or weekdays.</summary>
    public bool IsElsewhere(string said) => Says(said, elsewhere, static _ => false);

    /// <summary>Whether the words of a stretch name a place in a row.</summary>
    public bool NamesPlace(FoldedText text, string source, int start, int end) => Names(text, source, start, end, places, placesWithin);

    /// <summary>Whether they name what is set.</summary>
    public bool NamesHead(FoldedText text, string source, int start, int end) => Names(text, source, start, end, heads, headsWithin);

    private bool Names(FoldedText text, string source, int start, int end, HashSet<string> words, string[] within)
    {
        if (isUnspaced)
            return Array.Exists(within, one => source.AsSpan(start, end - start).Contains(one, StringComparison.Ordinal));
        for (var at = 0; at < text.Words.Length; at++)
        {
            if (text.Words[at].Start >= start && text.Words[at].End <= end && text.Has(words, at))
                return true;
        }

        return false;
    }

    private bool Says(string said, string[] phrases, Func<int, bool> isCounted)
    {
        foreach (var each in phrases)
        {
            var isEnd = each[0] == '*';
            var phrase = isEnd ? each[1..] : each;
            for (var at = said.IndexOf(phrase, StringComparison.OrdinalIgnoreCase); at >= 0;
                at = said.IndexOf(phrase, at + 1, StringComparison.OrdinalIgnoreCase))
            {
                if ((isWithin || isEnd || at == 0 || !char.IsLetter(said[at - 1]) || !char.IsLetter(phrase[0])) && !isCounted(at))
                    return true;
            }
        }

        return false;
    }

    private static string[] Phrases(string list) => list.Split(", ", StringSplitOptions.RemoveEmptyEntries);
}
