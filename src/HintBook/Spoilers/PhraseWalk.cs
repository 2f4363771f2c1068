using System.Buffers;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// One walk over a text that meets all names of a <see cref="NameTree"/>, and decides by what stands around each whether it is meant.
/// </summary>
internal sealed class PhraseWalk(WordList words, NameTree tree, TurnedNames turned, MisspeltNames misspelt, NamesInRuns runs, HashSet<int> figurative)
{
    private const int MostBetween = 2;
    private const int ShortestPart = 3;
    private const int ShortestInCompound = 6;
    private const int ShortestAloneInCompound = 8;
    private const int ShortestHead = 3;
    private const int ShortestTailHead = 4;
    private const int ShortestReading = 2;
    private static readonly SearchValues<char> Quotes = SearchValues.Create("\"'*_`“”„‘’‚«»‹›「」『』");
    private readonly Surroundings around = new(words);
    private readonly Figurative figures = new(words);
    private readonly HashSet<string> numberNouns = [.. words.Language.NumberNouns.Split(' ')];
    private readonly bool hasCompounds = words.Language.HasCompounds;
    private readonly bool hasNoSpaces = words.Language.HasNoSpaces;
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;

    /// <summary>Adds every mention to a list.</summary>
    public void In(WordReader text, string source, List<Mention> found)
    {
        var all = text.Words;
        if (hasNoSpaces)
            runs.In(source, found);
        for (var i = 0; i < all.Length; i++)
        {
            if (all[i].Id >= 0)
                Step(0, all[i].Id, i, i);
            else if (misspelt.Meant(text.Bare(all[i])) is >= 0 and var meant && tree.Next(0, meant) is > 0 and var near)
                Arrive(near, i, i, gaps: 1, afterTie: false, isMisspelt: true);
            if (i + 1 < all.Length && MayBeOne(all[i], all[i + 1]) && words.MayBegin(text.Bare(all[i]), text.Bare(all[i + 1]))
                && text.Joined(all[i], all[i + 1]) is >= 0 and var joined)
                Step(0, joined, i, i + 1);
            if (i + 1 < all.Length && IsPossessive(source, all[i]) && text.Joined(all[i], all[i + 1], "s") is >= 0 and var possessed)
                Step(0, possessed, i, i + 1);
            if (all[i].Id < 0 && hasCompounds)
                Within(i);
            if (all[i].Id >= 0)
                misspelt.Beside(text, i, found);
            if (all[i].Id >= 0 && turned.IsNoun(all[i].Id))
            {
                turned.Behind(text, i, found);
                turned.Near(text, i, found);
            }
        }

        void Step(int node, int word, int first, int last)
        {
            if (tree.Next(node, word) is > 0 and var next)
                Arrive(next, first, last, gaps: last > first && !IsHyphenated(text.Words[last].Gap) ? 1 : 0, afterTie: Is(word, WordRole.Preposition));
        }

        void Arrive(int node, int first, int last, int gaps, bool afterTie, bool isMisspelt = false, bool hasSkipped = false)
        {
            var read = text.Words;
            foreach (var ending in tree.EndingsAt(node))
            {
                var (start, end) = (read[first].Start, read[last].End);
                if (ending.Casing == Casing.Capitals && !IsCapital(source.AsSpan(start, end - start)))
                    continue;
                if (ending.Reading.Length > 0 && !IsRead(source.AsSpan(start, end - start), ending.Reading))
                    continue;
                // 固いと感じたら: the end of the word that begins with the Chinese letter before it, and a small word.
                if (ending.Reading.Length == ShortestReading && start > 0 && source[start - 1] is >= '\u4E00' and <= '\u9FFF'
                    && source[start] is >= 'ぁ' and <= 'ん')
                    continue;
                if (ending.Accented.Length > 0 && !HasAccents(source.AsSpan(start..read[first].End), ending.Accented))
                    continue;
                if (ending.Plain.Length > 0 && EndsInOtherAccent(source.AsSpan(start, end - start), ending.Plain))
                    continue;
                if (ending.Exact is not null && !IsExactly(text, first, last, ending.Exact))
                    continue;
                // "Con la lupa" is no "con lupa".
                if (ending.Secret == Phrases.Idiom && (gaps > 0 || hasSkipped))
                    continue;
                // خاتمة, an epilogue, is no خاتم, a ring; خاتمه is his ring.
                if (ending.IsMasculine && source[end - 1] == 'ة')
                    continue;
                if (ending.Casing == Casing.Open && last + 1 < read.Length && Is(read[last + 1].Id, WordRole.Determiner))
                    continue;
                if (ending.Casing is Casing.Object or Casing.Head && Is(read[first].Id, WordRole.Hand) && around.IsOfClock(text, first, last))
                    continue;
                if (ending.Casing == Casing.Spelled && !IsMeant(text, source, first, last))
                    continue;
                if (ending.Casing is Casing.Alone or Casing.Object or Casing.Head && around.IsDone(text, first))
                    continue;
                var isOfStep = ending.Casing is Casing.Alone or Casing.Object && around.IsOfStep(text, source, last);
                var isHandled = ending.Casing is not (Casing.Alone or Casing.Object) || isOfStep || around.IsHandled(text, first, last);
                if (ending.Casing == Casing.Object && !isHandled && around.IsAlone(text, first, last))
                    continue;
                if (ending.Casing is Casing.Alone or Casing.Object or Casing.Head && (around.IsLikened(text, first) || around.IsVerb(text, first, last)))
                    continue;
                if (ending.Casing is Casing.Alone or Casing.Object or Casing.Head && !ending.IsProper && around.IsNamesake(text, source, first, last))
                    continue;
                // 手ぬぐい: a short word without spaces counts as a name of several.
                var isLone = ending.Casing is Casing.Alone or Casing.Object or Casing.Head
                    || (hasNoSpaces && ending.Casing == Casing.Any && ending.Sureness == Sureness.Likely);
                var isSetApart = ending.Casing == Casing.Head
                    && (around.IsOneOfSeveral(text, source, first, last) || around.IsPriced(text, source, first, last));
                if (isLone && !isOfStep && !isSetApart && figures.Has(text, source, first, last))
                    continue;
                if (hasNoSpaces && ending.Casing is Casing.Object or Casing.Head && !Runs.IsOneWord(source, start, end))
                    continue;
                if (ending is { Casing: Casing.Head, IsMadeOf: true } && around.IsOfOtherStuff(text, source, first, last))
                    continue;
                if (ending.Casing == Casing.Head && !isSetApart && (IsSeveral(text.Bare(read[last]), ending.Head)
                    || (ending.IsVerb && !around.IsShown(text, first, last))
                    || !IsHeadMeant(text, source, first, last, ending)))
                    continue;
                var isSmall = ending.Noun is not null && char.IsLower(source[start]);
                // "klemmen" is what one does, "klemme" perhaps a careless word for what is called "Klemme".
                if (ending.Noun is not null && last == first && IsOtherNumber(text.Bare(read[first]), ending.Noun))
                    continue;
                if (ending.Noun is { } noun && last == first && (isMisspelt ? isSmall : !IsNoun(text.Bare(read[first]), noun, isSmall)))
                    continue;
                // 練り棒, a stirring rod, is another thing than a 棒.
                if (hasNoSpaces && ending is { Casing: Casing.Head, IsOrdinary: true } && start > 1
                    && source[start - 1] == 'り' && source[start - 2] >= '\u4E00')
                    continue;
                // 大風呂敷, a boast, is no 風呂敷.
                if (hasNoSpaces && ending.Casing == Casing.Head && Runs.StandingOf(source, start, end) != Standing.Alone)
                    continue;
                var standing = hasNoSpaces ? Runs.StandingOf(source, start, end) : Standing.Alone;
                if (standing != Standing.Part)
                {
                    var isDoubtful = ending.Casing == Casing.Alone && (figurative.Contains(read[first].Id)
                        || !around.IsNamed(text, first, last) || around.IsOfCompound(text, first, last));
                    var isLikely = gaps > 0 || isSmall || !isHandled || isDoubtful || standing == Standing.Perhaps;
                    found.Add(new(ending.Secret, start, end, isLikely ? Sureness.Likely : ending.Sureness));
                }
            }

            if (tree.GoesOn(node))
                Continue(node, first, last, gaps, afterTie, hasSkipped);
        }

        // A name within a longer word: "Rauchgerätdeckel", "Kupferrauchgerät".
        void Within(int at)
        {
            var word = text.Words[at];
            var letters = text.Bare(word);
            for (var cut = ShortestPart; cut <= letters.Length - ShortestPart; cut++)
            {
                if (cut >= ShortestInCompound)
                    Tell(words.NumberOf(letters[..cut]), word);
                if (letters.Length - cut >= ShortestInCompound)
                    Tell(words.NumberOf(letters[cut..]), word);
            }
        }

        void Tell(int part, in Word word)
        {
            if (part < 0 || tree.Next(0, part) is not (> 0 and var node))
                return;
            foreach (var ending in tree.EndingsAt(node))
            {
                // "Esslöffel", "Karriereleiter": a short word by itself is part of many.
                if ((ending.Casing == Casing.Any || (ending.Casing == Casing.Alone && ending.Noun is { Length: >= ShortestAloneInCompound }))
                    && ending.Secret != Phrases.Idiom)
                    found.Add(new(ending.Secret, word.Start, word.End, Sureness.Likely));
            }
        }

        // "Am geflochtenen Lederriemen" for a "geflochtener Riemen": the name's noun ends a longer one.
        void AtTail(int node, int first, int at, int gaps)
        {
            var letters = text.Bare(text.Words[at]);
            for (var cut = ShortestPart; cut <= letters.Length - ShortestTailHead; cut++)
            {
                if (words.NumberOf(letters[cut..]) is >= 0 and var tail && tree.Next(node, tail) is > 0 and var child)
                {
                    Arrive(child, first, at, gaps + 1, afterTie: false);
                    return;
                }
            }
        }

        // From a word to the next of the name: past determiners behind "of" and the like, past describing words behind others.
        void Continue(int node, int first, int last, int gaps, bool afterTie, bool hasSkipped)
        {
            var read = text.Words;
            var between = 0;
            for (var next = last + 1; next < read.Length; next++)
            {
                var word = read[next];
                if ((word.Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None)
                    return;
                if (hasPrefixes && words.IsBehindAnd(text.Bare(word)))
                    return;
                var comma = (word.Gap & Gap.Comma) != Gap.None;
                if (word.Id >= 0 && !comma && tree.Next(node, word.Id) is > 0 and var child)
                    Arrive(child, first, next, gaps + between, Is(word.Id, WordRole.Preposition), hasSkipped: hasSkipped);
                if (hasCompounds && word.Id < 0 && !comma)
                    AtTail(node, first, next, gaps + between);
                if (!comma && next + 1 < read.Length && MayBeOne(word, read[next + 1])
                    && words.MayBegin(text.Bare(word), text.Bare(read[next + 1])) && text.Joined(word, read[next + 1]) is >= 0 and var joined
                    && tree.Next(node, joined) is > 0 and var both)
                    Arrive(both, first, next + 1, gaps + between, afterTie: false);
                if ((afterTie && Is(word.Id, WordRole.Determiner)) || (hasNoSpaces && between == 0 && Is(word.Id, WordRole.Tie)))
                {
                    hasSkipped |= !hasNoSpaces;
                    continue;
                }

                if (hasNoSpaces && word.Gap == Gap.None)
                    return;
                // A number describes nothing: "Stage 2 12" is no "Stage 12".
                // "The hollowed-out bit".
                var isJoined = (word.Gap & Gap.Hyphen) != Gap.None && !hasNoSpaces;
                var isSmall = Is(word.Id, WordRole.Function | WordRole.Determiner) && !isJoined && !words.Signs.IsDegree(word.Id);
                if (isSmall || char.IsAsciiDigit(text.Bare(word)[0]) || gaps + ++between > MostBetween)
                    return;
            }
        }
    }

    // A word that is a code as well: in quotes, by itself, or where something is spelt.
    private bool IsMeant(WordReader text, string source, int first, int last)
    {
        var (start, end) = (text.Words[first].Start, text.Words[last].End);
        return around.IsSpelled(text, source, first, last) || around.IsOfLock(text, first, last) || around.IsAlone(text, first, last, source)
            || (start > 0 && end < source.Length && Quotes.Contains(source[start - 1]) && Quotes.Contains(source[end]))
            || (start > 1 && end + 1 < source.Length && source[start - 2] == '«' && source[end + 1] == '»');
    }

    // The noun of a longer name: put before the reader, or spoken of as a certain thing.
    private bool IsHeadMeant(WordReader text, string source, int first, int last, Ending ending) =>
        around.IsPut(text, source, first, last, ending.IsOrdinary)
        || (ending.IsOrdinary && (around.IsGiven(text, first, last) || around.IsShown(text, first, last)))
        || (around.IsOnesOwn(text, first, last, ending.IsOrdinary) && (ending.Head.Length > ShortestHead || around.IsCertainly(text, first, last)));

    // "Dé" and "dés", not "de".
    private static bool HasAccents(ReadOnlySpan<char> said, string accented) =>
        said.StartsWith(accented, StringComparison.OrdinalIgnoreCase) && (said.Length == accented.Length || said[accented.Length..] is "s" or "x");

    // "Loupé", missed, is no "loupe"; "veló", watched over, no "vela". What is written without any accent may have lost them.
    private static bool EndsInOtherAccent(ReadOnlySpan<char> said, string name)
    {
        said = said.TrimEnd('s');
        return said.Length > 1 && said[^1] is 'é' or 'á' or 'í' or 'ó' && name.TrimEnd('s') is var written
            && written.Length == said.Length && written[^1] is 'e' or 'a' or 'i' or 'o' or 'E' or 'A' or 'I' or 'O';
    }

    // "Die Sieben", a figure, is no form of "Sieb".
    private bool IsOtherNumber(ReadOnlySpan<char> word, string noun) =>
        !word.SequenceEqual(noun) && numberNouns.GetAlternateLookup<ReadOnlySpan<char>>().Contains(word);

    // Small words may stand between: 青い木の札 for 青い札.
    private static bool IsRead(ReadOnlySpan<char> said, string reading)
    {
        var at = 0;
        foreach (var letter in SaidLetters.Hiragana(said.ToString()))
        {
            if (at < reading.Length && letter == reading[at])
                at++;
        }

        return at == reading.Length;
    }

    private bool IsExactly(WordReader text, int first, int last, string exact)
    {
        // "It is the amber, so write it without its article": العنبر for a word عنبر.
        if (hasPrefixes && first == last && text.Bare(text.Words[first]) is var whole && whole.EndsWith(exact) && whole.Length > exact.Length)
            return whole[..^exact.Length] is "ال" or "بال" or "وال" or "فال" or "ب" or "و" or "ف" || whole[..^exact.Length] is "ك";
        var at = 0;
        for (var i = first; i <= last; i++)
        {
            var bare = text.Bare(text.Words[i]);
            if (!exact.AsSpan(at).StartsWith(bare) || (i > first && (text.Words[i].Gap & ~Gap.Hyphen) != Gap.None))
                return false;
            at += bare.Length;
        }

        return at == exact.Length;
    }

    // "bull’s-eye" for a bullseye.
    private static bool IsPossessive(string source, in Word word) =>
        word.End - word.Start > word.Length && source[word.End - 1] is 's' or 'S' && source[word.End - 2] is '\'' or '’';

    private static bool IsHyphenated(Gap gap) => (gap & ~(Gap.Line | Gap.Space)) == Gap.Hyphen && (gap & (Gap.Line | Gap.Space)) != Gap.Space;

    // "Ponga los sellos que hagan falta": several of a thing of which there is one.
    // بكرات الأوتار for a وتر: the plurals of Arabic break the word.
    private bool IsSeveral(ReadOnlySpan<char> word, string head) =>
        hasPrefixes ? !word.Contains((head.StartsWith("ال", StringComparison.Ordinal) ? head.AsSpan(2) : head).TrimEnd("هة"), StringComparison.Ordinal)
            || (word.EndsWith("ات") && !head.EndsWith("ات", StringComparison.Ordinal))
        : word[^1] == 's' && head.Length > 0 && head[^1] != 's' && word.Length > head.Length && word.StartsWith(head);

    // A noun in small letters must be spelled exactly as declared; with its capital, any of its forms will do.
    private bool IsNoun(ReadOnlySpan<char> word, string noun, bool isSmall) =>
        isSmall ? word.SequenceEqual(noun) : words.Language.AreForms(noun, word) || word.EndsWith("chen") || word.EndsWith("lein");

    // "pen knife" for a penknife: only words that could stand alone, so that no "drag on" makes a dragon.
    private bool MayBeOne(in Word left, in Word right) =>
        IsHyphenated(right.Gap)
        || (right.Gap == Gap.Space
            && left.Length >= ShortestPart
            && right.Length >= ShortestPart
            && !Is(left.Id, WordRole.Function | WordRole.Determiner)
            && !Is(right.Id, WordRole.Function));

    private static bool IsCapital(ReadOnlySpan<char> letters)
    {
        foreach (var letter in letters)
        {
            if (char.IsLower(letter))
                return false;
        }

        return true;
    }

    private bool Is(int word, WordRole role) => (words.RoleOf(word) & role) != WordRole.None;
}
