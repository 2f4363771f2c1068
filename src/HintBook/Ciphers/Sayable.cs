using System.Collections.Immutable;

namespace HintBook.Ciphers;

/// <summary>
/// Whether letters could be a word: whether an English mouth could say them. On a lock of letters any letters fit, but a solver sets only what could be
/// meant. It knows no words, so it takes ROUT and WUG alike; it refuses MVAIT and BTIS. The lists of sounds are from memory.
/// </summary>
internal static class Sayable
{
    private const string Vowels = "aeiouy";
    private const int MostVowels = 3;

    private static readonly ImmutableHashSet<string> Onsets =
    [
        .. ("b bl br c ch chr cl cr d dr dw f fl fr g gl gn gr h j k kl kn kr kw l m n p ph pl pr r rh s sc sch scr sh shr sk skw sl sm sn sp spl spr "
            + "st str sw t th thr tr tw v w wh wr x z").Split(' '),
    ];

    private static readonly ImmutableHashSet<string> Codas =
    [
        .. ("b c ch ck ct d dd f ff ft g gg gh ght h k l lb ld lf lk ll lm lp ls lt m mb mn mp ms n nch nd ng nk ns nt p pt ps r rb rch rd rf rg rk rl "
            + "rm rn rp rs rst rt rth s sh sk sm sp ss st t tch th ts tt v w wl wn ws x z zz ds ks bs gs").Split(' '),
    ];

    /// <summary>Whether a word of letters can be said; false for anything else than letters.</summary>
    public static bool Is(string text)
    {
        var word = text.ToLowerInvariant().Replace("qu", "kw", StringComparison.Ordinal);
        if (word.Length < 2 || !word.All(char.IsAsciiLetterLower) || word.Contains('q', StringComparison.Ordinal))
            return false;
        var (at, syllables) = (0, 0);
        while (at < word.Length)
        {
            var consonants = Run(word, at, vowels: false);
            var (isFirst, isLast) = (at == 0, at + consonants.Length == word.Length);
            if (consonants.Length > 0 && !(isFirst ? Onsets.Contains(consonants) : isLast ? Codas.Contains(consonants) : IsBetween(consonants)))
                return false;
            at += consonants.Length;
            var vowels = Run(word, at, vowels: true);
            if (vowels.Length > MostVowels)
                return false;
            at += vowels.Length;
            syllables += Math.Sign(vowels.Length);
        }

        return syllables > 0;
    }

    // Between vowels the end of one syllable and the beginning of the next; a consonant may be doubled.
    private static bool IsBetween(string consonants) => Enumerable.Range(0, consonants.Length + 1).Any(cut =>
        (cut == 0 || Codas.Contains(consonants[..cut])) && (cut == consonants.Length || Onsets.Contains(consonants[cut..])));

    private static string Run(string word, int at, bool vowels)
    {
        var end = at;
        while (end < word.Length && Vowels.Contains(word[end], StringComparison.Ordinal) == vowels)
            end++;
        return word[at..end];
    }
}
