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
    private const WordRole Small = WordRole.Function | WordRole.Determiner | WordRole.Preposition;
    private readonly Dictionary<(int Noun, int Describing), List<(int Secret, bool IsTied, bool IsWithout)>> pairs = [];
    private readonly HashSet<int> nouns = [];

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
