using System.Runtime.InteropServices;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Names whose noun and what describes it stand some words away from each other: "the drawer for the oil", "a vial, blue as the sea", "Pull the flag
/// from the mast. The keeper used it to signal." All of these are likely mentions only.
/// </summary>
internal sealed class TurnedNames(WordList words)
{
    private const int MostWords = 12;
    private const int MostOthers = 5;
    private const int MostNear = 18;
    private const int AndBefore = 4;
    private const int NotBefore = 2;
    private const int NearPronoun = 6;
    private const WordRole Small = WordRole.Function | WordRole.Determiner | WordRole.Preposition;
    private readonly Dictionary<(int Noun, int Describing), List<Tie>> pairs = [];
    // By the number of a word; asked of every word of every text.
    private readonly List<bool> nouns = [];
    private readonly Surroundings around = new(words);
    private readonly bool isHeadFirst = words.Language.HeadFirst;
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;

    /// <summary>Adds a name.</summary>
    /// <param name="noun">The number of its noun.</param>
    /// <param name="describing">The number of a word that describes it.</param>
    /// <param name="tie">Whose name it is, and how the two belong together.</param>
    public void Add(int noun, int describing, Tie tie)
    {
        if (noun == describing)
            return;
        while (nouns.Count <= noun)
            nouns.Add(false);
        nouns[noun] = true;
        if (!pairs.TryGetValue((noun, describing), out var here))
            pairs[(noun, describing)] = here = [];
        if (!here.Exists(other => other.Secret == tie.Secret))
            here.Add(tie);
    }

    /// <summary>Whether a word is the noun of a name.</summary>
    public bool IsNoun(int word) => word < nouns.Count && nouns[word];

    /// <summary>Adds the mentions whose noun is a word and whose description stands behind it in the same clause.</summary>
    public void Behind(WordReader text, int noun, List<Mention> found)
    {
        var (isLinked, hasPreposition, hasComma, isAnd, others) = (false, false, false, false, 0);
        for (var i = noun + 1; i < text.Words.Length && i <= noun + MostWords; i++)
        {
            var word = text.Words[i];
            if ((word.Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None)
                return;
            hasComma |= (word.Gap & Gap.Comma) != Gap.None;
            var role = words.RoleOf(word.Id);
            if (word.Id >= 0 && (isLinked || hasComma || hasPreposition) && pairs.TryGetValue((text.Words[noun].Id, word.Id), out var here))
            {
                foreach (var tie in here)
                {
                    var isTied = isLinked || (tie.IsTied && hasPreposition) || (hasComma && (!IsListed(text, i) || IsEntry(text, noun, i)));
                    if (isTied && (!isAnd || IsOne(text, i + 1)) && !(tie.IsForm && IsOfAnother(text, i)) && (tie.IsWithout || !IsDenied(text, i)))
                        found.Add(new(tie.Secret, text.Words[noun].Start, word.End, Sureness.Likely));
                }
            }

            isAnd |= Has(word, WordRole.And) && (!isLinked || (word.Gap & Gap.Comma) != Gap.None);
            isLinked |= (Has(word, WordRole.Link) && !IsPlace(text, i, role)) || (IsOne(text, i) && Has(text.Words[i - 1], WordRole.Determiner));
            hasPreposition |= Has(word, WordRole.Preposition);
            if (!Has(word, Small | WordRole.Link | WordRole.Not) && ++others > MostOthers)
                return;
        }
    }

    /// <summary>Adds the mentions whose noun is a word with an article that is handled, while what describes it stands near by on either side.</summary>
    public void Near(WordReader text, int noun, List<Mention> found)
    {
        var all = text.Words;
        // "Which comb? The ivory one."
        var isAsked = noun > 0 && words.Signs.IsQuestion(all[noun - 1].Id);
        // "Two buckles. Only the silver one opens."
        var isOfSeveral = noun > 0 && words.FigureOf(all[noun - 1].Id) is { Value: > 1 and < 10 };
        // "One flute. Glass."
        var mayHaveFragment = hasPrefixes || (noun > 0 && (IsOne(text, noun - 1) || Has(all[noun - 1], WordRole.Not | WordRole.Determiner)
            || (noun > 1 && all[noun].Gap == Gap.Space && Has(all[noun - 2], WordRole.Not | WordRole.Determiner))));
        var isNamed = hasPrefixes || isAsked || isOfSeveral || (noun > 0 && Has(all[noun - 1], WordRole.Determiner | WordRole.Preposition));
        if (!isNamed && !mayHaveFragment)
            return;
        bool? handled = null;
        for (var i = noun - 1; i >= 0 && i >= noun - MostNear && (all[i + 1].Gap & Gap.Paragraph) == Gap.None; i--)
            At(i);
        for (var i = noun + 1; i < all.Length && i <= noun + MostNear && (all[i].Gap & Gap.Paragraph) == Gap.None; i++)
            At(i);

        void At(int i)
        {
            var read = text.Words;
            if (read[i].Id < 0 || !pairs.TryGetValue((read[noun].Id, read[i].Id), out var ties))
                return;
            foreach (var tie in ties)
            {
                if (!isNamed && !IsFragment(i))
                    continue;
                var isSaid = IsOf(i) || tie.IsWithout || ((tie.IsForm || isHeadFirst) && IsDone(i)) || IsItsOwn(i) || IsInOne(i)
                    || (IsOfIt(i) && IsOfIt(noun)) || (tie.IsTied && IsHad(i)) || (mayHaveFragment && IsFragment(i));
                if (isSaid || (isOfSeveral && (isHeadFirst || !tie.IsTied) && IsTheOne(i))
                    || (IsApart(i) && (isAsked || IsSaidOfIt(i) || (handled ??= around.IsHandled(text, noun, noun)) == true)))
                    found.Add(new(tie.Secret, Math.Min(read[noun].Start, read[i].Start), Math.Max(read[noun].End, read[i].End), Sureness.Likely));
            }
        }

        bool IsApart(int i) =>
            (hasPrefixes || isAsked || Has(text.Words[noun - 1], WordRole.Determiner) || words.Signs.HasArticle(text.Words[noun - 1].Id))
            && (!IsOfAnother(text, i) || IsStopped(i)) && !IsDenied(text, i) && !IsDenied(text, noun)
            && !IsBehindAnd(text, Math.Max(i, noun), Math.Min(i, noun));

        // "Ivory it is, and a comb it is too."
        bool IsOfIt(int i)
        {
            var (hasPronoun, hasLink) = (false, false);
            for (var at = i + 1; at < text.Words.Length && at < i + 3 && (text.Words[at].Gap & Gap.Stop) == Gap.None; at++)
            {
                hasPronoun |= words.Signs.IsPronoun(text.Words[at].Id);
                hasLink |= Has(text.Words[at], WordRole.Link);
            }

            return hasPronoun && hasLink;
        }

        // "The silver one", "die silberne", "celle d'argent", "la de plata". What "of" or "for" ties to a name is a thing by itself:
        // "four number wheels hold the lid" says nothing of the number for the lid.
        bool IsTheOne(int i)
        {
            var read = text.Words;
            if (i < noun || IsDenied(text, i))
                return false;
            var before = Has(read[i - 1], WordRole.Preposition) ? i - 2 : i - 1;
            return before > noun && (Has(read[before], WordRole.Determiner) || words.Signs.IsPronoun(read[before].Id))
                && (!IsOfAnother(text, i) || before == i - 2);
        }

        // "One flute. Glass.", "Not an iron hook this time. Brass.": all that the next sentence says.
        bool IsFragment(int i)
        {
            var read = text.Words;
            var begin = i;
            while (begin > noun + 1 && begin > i - AndBefore && (read[begin].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None && Has(read[begin - 1], Small))
                begin--;
            if (i <= noun || (read[begin].Gap & Gap.Stop) == Gap.None || (i + 1 < read.Length && (read[i + 1].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None))
                return false;
            for (var at = noun + 1; at < begin; at++)
            {
                if ((read[at].Gap & Gap.Stop) != Gap.None)
                    return false;
            }

            return true;
        }

        // "Le violon n'a plus d'âme" for "âme du violon".
        bool IsHad(int i)
        {
            var had = false;
            for (var at = i + 1; at < noun && noun - i < NearPronoun; at++)
                had |= words.Signs.IsHaving(text.Words[at].Id);
            return had && !IsStopped(i);
        }

        bool IsStopped(int i)
        {
            for (var at = Math.Min(i, noun) + 1; at <= Math.Max(i, noun); at++)
            {
                if ((text.Words[at].Gap & Gap.Stop) != Gap.None)
                    return true;
            }

            return false;
        }

        // "Slide the panel", "the panel slides".
        // "Quelqu'un a tordu l'un des étriers": nothing but small words stands between.
        bool IsDone(int i)
        {
            for (var at = i + 1; at < noun; at++)
            {
                if (!Has(text.Words[at], WordRole.Determiner | WordRole.Preposition) && !IsOne(text, at))
                    return false;
            }

            return i == noun + 1 || (i < noun - 1 && i > noun - NearPronoun);
        }

        // "It was a weight; it is of brass".
        bool IsSaidOfIt(int i)
        {
            // "Something silver glints: it's a buckle", إنه إبزيم.
            for (var at = noun - 1; i < noun && at > i && at > noun - AndBefore; at--)
            {
                if (words.Signs.IsPronoun(text.Words[at].Id) && !Has(text.Words[at], WordRole.Determiner))
                    return (text.Words[at].Gap & (Gap.Stop | Gap.Comma)) != Gap.None;
            }

            // "Hold it to the light: paper" speaks of what the sentence before names.
            var isStopped = false;
            for (var at = noun + 1; at < i; at++)
            {
                isStopped |= (text.Words[at].Gap & Gap.Stop) != Gap.None;
                if ((isStopped || (text.Words[at].Gap & Gap.Comma) != Gap.None) && words.Signs.IsPronoun(text.Words[at].Id) && i - at < NearPronoun)
                    return true;
            }

            return false;
        }

        // "The skull stares from its label".
        bool IsItsOwn(int i) => i < noun && noun > 0 && noun - i < NearPronoun + 3 && words.Signs.IsPossessive(text.Words[noun - 1].Id) && !IsStopped(i);

        // "Greasepaint came in tins".
        bool IsInOne(int i) =>
            i < noun && noun - i < AndBefore && text.Bare(text.Words[noun - 1]) is "in" or "en" or "dans" && !IsStopped(i);

        // "El jade del mortero".
        bool IsOf(int i) => isHeadFirst && i < noun && i >= noun - 3 && Has(text.Words[i + 1], WordRole.Preposition);
    }

    // "The brass shines, and a bee flies past": the second clause is about something else.
    private bool IsBehindAnd(WordReader text, int last, int first)
    {
        for (var i = last; i > first + 1 && i > last - AndBefore; i--)
        {
            if ((text.Words[i].Gap & Gap.Stop) != Gap.None)
                return false;
            if (Has(text.Words[i - 1], WordRole.And))
                return !words.Signs.IsPronoun(text.Words[i].Id);
        }

        return false;
    }

    private bool IsDenied(WordReader text, int at)
    {
        for (var i = at; i > 0 && i > at - NotBefore && (text.Words[i].Gap & Gap.Stop) == Gap.None; i--)
        {
            if (Has(text.Words[i - 1], WordRole.Not))
                return true;
        }

        return false;
    }

    // "A flat stone lies behind the bar": what describes one noun says nothing of another.
    private bool IsOfAnother(WordReader text, int at) =>
        !isHeadFirst
        && at + 1 < text.Words.Length
        && text.Words[at + 1].Gap is Gap.Space or Gap.Hyphen
        && !IsOne(text, at + 1)
        && !Has(text.Words[at + 1], Small | WordRole.Link | WordRole.Not | WordRole.And | WordRole.Handling | WordRole.Setting);

    // "The watch in his pocket" stands there; "a flag in green" is green.
    private bool IsPlace(WordReader text, int at, WordRole role) =>
        (role & WordRole.Preposition) != WordRole.None
        && text.Bare(text.Words[at]) is "in" or "on"
        && at + 1 < text.Words.Length
        && Has(text.Words[at + 1], WordRole.Determiner);

    private bool IsListed(WordReader text, int at) =>
        at + 1 >= text.Words.Length
        || (text.Words[at + 1].Gap & (Gap.Comma | Gap.Stop | Gap.Paragraph)) != Gap.None
        || Has(text.Words[at + 1], WordRole.And | WordRole.Not);

    // "Flag, signal, red and white": as lists of parts turn names about.
    private static bool IsEntry(WordReader text, int noun, int at) =>
        at == noun + 1
        && (at + 1 < text.Words.Length ? (text.Words[at + 1].Gap & Gap.Comma) != Gap.None || IsCounted(text, noun, at) : IsCounted(text, noun, at))
        && (noun == 0 || (text.Words[noun].Gap & (Gap.Line | Gap.Stop | Gap.Paragraph)) != Gap.None || char.IsAsciiDigit(text.Bare(text.Words[noun - 1])[0]));

    // "1 tongs, ebony", and the end of the line: the figure before it says that it is one entry and not two.
    private static bool IsCounted(WordReader text, int noun, int at) =>
        noun > 0 && char.IsAsciiDigit(text.Bare(text.Words[noun - 1])[0])
        && (at + 1 >= text.Words.Length || (text.Words[at + 1].Gap & (Gap.Line | Gap.Stop | Gap.Paragraph)) != Gap.None);

    // "The paper ones".
    private bool IsOne(WordReader text, int at) => at < text.Words.Length && words.FigureOf(text.Words[at].Id) is { Value: 1 };

    private bool Has(in Word word, WordRole role) => (words.RoleOf(word.Id) & role) != WordRole.None;
}

/// <summary>How the noun of a name and what describes it belong together.</summary>
/// <param name="Secret">Whose name it is.</param>
/// <param name="IsTied">Whether a preposition ties the two in the name itself, so that any other may.</param>
/// <param name="IsWithout">Whether it says that something is lacking.</param>
/// <param name="IsForm">Whether the describing word is only made of that of the name.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Tie(int Secret, bool IsTied = false, bool IsWithout = false, bool IsForm = false);
