using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace HintBook.Spoilers.ReadingLevels;

/// <summary>
/// Counts the syllables of English words by their spelling: one for each group of vowels, less the silent ones, more where two
/// neighbours are spoken apart. It is an approximation, since English spelling doesn't tell.
/// </summary>
internal static partial class Syllables
{
    // What the rules get wrong among the commonest words and those of boxes (by the dictionaries, from memory).
    private static readonly FrozenDictionary<string, int> Known = Counted(
        (1, "eye eyes toward prayer drawer drawers heard heart aren't"),
        (2, "create every evening evenings business argue being lion poem poems poet poets real cruel dual fuel trial dial dials giant giants quiet diet duet "
            + "naked wicked sacred rugged crooked ragged jagged something someone sometimes somewhere elsewhere people onion union soldier premier "
            + "pigeon pigeons chaos neon hundred metre metres reuse fluid ruin ruins science sciences client clients liar pliers fiery camera maybe "
            + "engine engines prism rhythm safety"),
        (3, "area areas idea ideas theatre theatres video videos radio radios ratio stereo museum museums anyone everyone everything everywhere everyday "
            + "however wherever whoever created poetry piano pianos recipe recipes violin violins aerial reaction reactions linear"),
        (4, "apostrophe catastrophe society variety anxiety everybody"));

    /// <summary>How many syllables a word has, at least one. A figure counts as it is read aloud by itself: <c>17</c> as "one seven".</summary>
    /// <param name="word">Letters, with apostrophes and hyphens, or figures.</param>
    public static int In(string word)
    {
        if (word.Contains('-', StringComparison.Ordinal))
            return word.Split('-', StringSplitOptions.RemoveEmptyEntries).Sum(In);
        var figures = word.Count(char.IsAsciiDigit);
        return figures > 0
            ? figures + word.Count(figure => figure is '7' or '0') + (word.Any(char.IsLetter) ? OfLetters(string.Concat(word.Where(char.IsLetter))) : 0)
            : OfLetters(word.ToLowerInvariant().Replace('’', '\''));
    }

    private static int OfLetters(string word)
    {
        if (Known.TryGetValue(word, out var known))
            return known;
        var count = Contraction().IsMatch(word) ? 1 : 0;
        word = Unspoken().Replace(word, "");
        if (Known.TryGetValue(word, out known))
            return known + count;
        if (Initials().IsMatch(word))
            return Math.Max(1, word.Length);
        word = Consonants().Replace(word, "w");
        count += VowelGroups().Count(word) + Apart().Count(word) - Silent().Count(word);
        return Math.Max(1, count);
    }

    private static FrozenDictionary<string, int> Counted(params (int Count, string Words)[] lists) =>
        lists
            .SelectMany(list => list.Words.Split(' ').Select(word => (word, list.Count)))
            .DistinctBy(pair => pair.word)
            .ToFrozenDictionary(pair => pair.word, pair => pair.Count);

    // "Didn't" and "wasn't" have a syllable that no vowel shows.
    [GeneratedRegex("[ds]n't$")]
    private static partial Regex Contraction();

    // Possessives and contractions are spoken with their word, but for "Rose's".
    [GeneratedRegex("(?<![sxz]|[cs]h|[cg]e|se|ze)'s$|'(t|re|ve|ll|d|m)?$|'")]
    private static partial Regex Unspoken();

    [GeneratedRegex("^[bcdfghjklmnpqrstvwxz]+$")]
    private static partial Regex Initials();

    // The u of "qu" and the y of "yes" are no vowels.
    [GeneratedRegex("(?<=q)u|^y(?=[aeiou])")]
    private static partial Regex Consonants();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex VowelGroups();

    [GeneratedRegex(
        "(?<![ctg])ia(?!ge|(?<=lia)[nr])|(?<![ctgsxln])io|iu|(?<=[^aeiou])ie(?=t|st$|r$)|(?<=[aeiou])y(?=[aeiou])|(?<=[aeou])ing|(?<=[^aeiou])ying|"
        + "(?<=[^qgsw])ua(?!r)|sual|eo(?!us)|(?<=i)sm$|thm$")]
    private static partial Regex Apart();

    [GeneratedRegex(
        "(?<=[^aeiouy])(?<!^[^aeiouy]+)(?<![^aeiouyl]l|[^aeiouy]r(?=e$)(?<=[^aeiouyr]r)|^)e$|(?<=[gq]u)e$|"
        + "(?<=[^aeiouyszxc])(?<![cs]h|g|[^aeiouyl]l|^[^aeiouy]+)es$|(?<=[^aeiouytd])(?<![^aeiouyl]l|^[^aeiouy]+)ed$|"
        + "(?<=[^aeiouyl])(?<!^[^aeiouy]+)e(?=(ly|ment|ments|ful|less|ness)$)|"
        + "(?<=^(?:som|wher|ther|her|hom|sid|tim|fac|saf|fiv|nin))e(?=[bcdfghjklmnpqstvwz][a-z]{2})")]
    private static partial Regex Silent();
}
