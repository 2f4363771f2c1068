using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Names whose noun stands before what describes it, some words away: "the drawer for the oil", "a vial, blue as the sea". All of these are likely
/// mentions only.
/// </summary>
internal sealed class TurnedNames(WordList words)
{
    private const int MostWords = 9;
    private const int MostOthers = 3;
    private const int MostNear = 14;
    private const WordRole Parting = WordRole.And | WordRole.Not;
    private const WordRole Small = WordRole.Function | WordRole.Determiner | WordRole.Preposition;
    private readonly Dictionary<(int Noun, int Describing), List<(int Secret, bool IsTied, bool IsWithout)>> pairs = [];
    private readonly HashSet<int> nouns = [];
    private readonly Surroundings around = new(words);
    private readonly bool isHeadFirst = words.Language.HeadFirst;
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;

    /// <summary>Adds a name.</summary>
    /// <param name="secret">Whose it is.</param>
    /// <param name="noun">The number of its noun.</param>
    /// <param name="describing">The number of a word that describes it.</param>
    /// <param name="isTied">Whether a preposition ties the two in the name itself, so that any other may.</param>
    /// <param name="isWithout">Whether it says that something is lacking.</param>
    public void Add(int secret, int noun, int describing, bool isTied, bool isWithout = false)
    {
        if (noun == describing)
            return;
        nouns.Add(noun);
        if (!pairs.TryGetValue((noun, describing), out var here))
            pairs[(noun, describing)] = here = [];
        if (!here.Exists(other => other.Secret == secret))
            here.Add((secret, isTied, isWithout));
    }

    /// <summary>Whether a word is the noun of a name.</summary>
    public bool IsNoun(int word) => nouns.Contains(word);

    /// <summary>Adds the mentions whose noun is a word.</summary>
    public void At(WordReader text, int noun, List<Mention> found)
    {
        var (isLinked, hasPreposition, hasComma, isDenied, others) = (false, false, false, false, 0);
        for (var i = noun + 1; i < text.Words.Length && i <= noun + MostWords; i++)
        {
            var word = text.Words[i];
            if ((word.Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None)
                return;
            hasComma |= (word.Gap & Gap.Comma) != Gap.None;
            var role = words.RoleOf(word.Id);
            if (word.Id >= 0 && (isLinked || hasComma || hasPreposition) && pairs.TryGetValue((text.Words[noun].Id, word.Id), out var here))
            {
                foreach (var (secret, isTied, isWithout) in here)
                {
                    if ((isLinked || (isTied && hasPreposition) || (hasComma && !IsListed(text, i))) && isDenied == isWithout)
                        found.Add(new(secret, text.Words[noun].Start, word.End, Sureness.Likely));
                }
            }

            if ((role & WordRole.And) != WordRole.None && !isLinked)
                return;
            isDenied |= (role & WordRole.Not) != WordRole.None;
            isLinked |= (role & WordRole.Link) != WordRole.None && !IsPlace(text, i, role);
            hasPreposition |= (role & WordRole.Preposition) != WordRole.None;
            if ((role & (Small | WordRole.Link | WordRole.Not)) == WordRole.None && ++others > MostOthers)
                return;
        }
    }

    /// <summary>
    /// Adds the mentions whose noun is a word with an article that is handled, while what describes it stands near by on either side: "Pull the flag
    /// from the mast. The keeper used it to signal."
    /// </summary>
    public void Near(WordReader text, int noun, List<Mention> found)
    {
        var all = text.Words;
        if (!(hasPrefixes || (noun > 0 && Has(all[noun - 1], WordRole.Determiner))))
            return;
        int? handled = null;
        for (var i = noun - 1; i >= 0 && i >= noun - MostNear && (all[i + 1].Gap & Gap.Paragraph) == Gap.None && !Has(all[i], Parting); i--)
            At(i);
        for (var i = noun + 1; i < all.Length && i <= noun + MostNear && (all[i].Gap & Gap.Paragraph) == Gap.None && !Has(all[i], Parting); i++)
            At(i);

        void At(int i)
        {
            var all = text.Words;
            if (all[i].Id < 0 || !pairs.TryGetValue((all[noun].Id, all[i].Id), out var here))
                return;
            if (!IsOf(i) && (IsOfAnother(text, i) || (handled ??= around.IsHandled(text, noun, noun) ? 1 : 0) == 0))
                return;
            foreach (var (secret, _, _) in here)
                found.Add(new(secret, Math.Min(all[noun].Start, all[i].Start), Math.Max(all[noun].End, all[i].End), Sureness.Likely));
        }

        // "El jade del mortero".
        bool IsOf(int i) => isHeadFirst && i < noun && i >= noun - 3 && Has(text.Words[i + 1], WordRole.Preposition);
    }

    // "A flat stone lies behind the bar": what describes one noun says nothing of another.
    private bool IsOfAnother(WordReader text, int at) =>
        !isHeadFirst
        && at + 1 < text.Words.Length
        && text.Words[at + 1].Gap is Gap.Space or Gap.Hyphen
        && !Has(text.Words[at + 1], Small | WordRole.Link | WordRole.Not | WordRole.And | WordRole.Handling | WordRole.Setting);

    private bool Has(in Word word, WordRole role) => (words.RoleOf(word.Id) & role) != WordRole.None;

    // "The watch in his pocket" stands there; "a flag in green" is green.
    private bool IsPlace(WordReader text, int at, WordRole role) =>
        (role & WordRole.Preposition) != WordRole.None
        && text.Bare(text.Words[at]) is "in" or "on"
        && at + 1 < text.Words.Length
        && (words.RoleOf(text.Words[at + 1].Id) & WordRole.Determiner) != WordRole.None;

    private bool IsListed(WordReader text, int at) =>
        at + 1 >= text.Words.Length
        || (text.Words[at + 1].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) != Gap.None
        || (words.RoleOf(text.Words[at + 1].Id) & (WordRole.And | WordRole.Not)) != WordRole.None;
}
