using System.Text;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>Tells whether an everyday word stands as an object: "a key lies there", not "the key to this is patience" or "a key question".</summary>
internal sealed class Objects
{
    private const int Around = 7, ShortestNoun = 5;
    private readonly WordNumbers numbers;
    private readonly Unmeant unmeant;
    private readonly Presented presented;
    private readonly Steps steps;
    private readonly Dictionary<string, string[]> idioms;
    private readonly Dictionary<string, string[]>.AlternateLookup<ReadOnlySpan<char>> idiomsBySpan;
    private readonly bool hasCertain;
    private readonly HashSet<string> belongsWritten, certainWritten, possibleWritten;
    private readonly HashSet<string> likenesses, copulas, verbsAhead, shortVerbs, acts, addressed, certain, belongs, recalls, relatives;
    private readonly HashSet<string> clockHands, ofDials, numberNouns;
    private readonly HashSet<string> beforeCompounds, behindCompounds, icons, signs;

    public Objects(WordNumbers numbers)
    {
        (this.numbers, unmeant, presented, steps) = (numbers, new(numbers.Language.Code), new(numbers), new(numbers));
        var folded = new FoldedText(numbers.Language);
        idioms = (
            from list in (string[])[IdiomsIn.Of(numbers.Language.Code), ProverbsIn.Of(numbers.Language.Code), SayingsIn.Of(numbers.Language.Code)]
            from phrase in list.Split(", ", StringSplitOptions.RemoveEmptyEntries).Distinct()
            let idiom = Spaced(folded, phrase)
            from word in numbers.Language.IsUnspaced ? idiom.Select(letter => $"{letter}") : idiom.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            group idiom by word).ToDictionary(each => each.Key, each => each.Distinct().ToArray(), StringComparer.Ordinal);
        idiomsBySpan = idioms.GetAlternateLookup<ReadOnlySpan<char>>();
        var remarks = RemarksIn.Of(numbers.Language.Code);
        copulas = [.. FoldedText.BareWords(remarks.Copulas)];
        hasCertain = remarks.Certain.Length > 0;
        belongsWritten = [.. remarks.Belongs.Split(' ')];
        (certainWritten, possibleWritten) = ([.. remarks.Certain.Split(' ')], [.. remarks.Possible.Split(' ')]);
        verbsAhead = [.. FoldedText.BareWords(remarks.VerbsAhead)];
        shortVerbs = [.. FoldedText.BareWords(remarks.ShortVerbs)];
        var done = ActsIn.Of(numbers.Language.Code);
        (acts, addressed) = ([.. FoldedText.BareWords(done.Acts)], [.. FoldedText.BareWords(done.Addressed)]);
        (recalls, relatives) = (FoldedText.SetOf(done.Recalls), FoldedText.SetOf(done.Relatives));
        (clockHands, ofDials, numberNouns) =
            (FoldedText.SetOf(remarks.ClockHands), FoldedText.SetOf(remarks.OfDials), FoldedText.SetOf(remarks.NumberNouns));
        (certain, belongs) = ([.. FoldedText.BareWords(remarks.Certain)], [.. FoldedText.BareWords(remarks.Belongs)]);
        var compounds = CompoundsIn.Of(numbers.Language.Code);
        (beforeCompounds, behindCompounds) = (FoldedText.SetOf(compounds.Before), FoldedText.SetOf(compounds.Behind));
        var pictures = PicturesIn.Of(numbers.Language.Code);
        (icons, signs) = (FoldedText.SetOf(pictures.Icons), FoldedText.SetOf(pictures.Signs));
        likenesses = [.. FoldedText.BareWords(numbers.Language.Likenesses)];
    }

    /// <summary>Whether the words from one to another stand as an object.</summary>
    public bool Stand(FoldedText text, ReadOnlySpan<int> ids, string source, int first, int last, string name)
    {
        // What belongs to a step of this box is no talk of shops.
        if (steps.Follow(text, ids, source, last))
        {
            return !IsIdiom(text, first, last) && !IsPartOfCompound(text, source, first, last)
                && !HasOtherAccents(source, text.Words[first].Start, text.Words[last].End, name, numbers.Language.HasCompounds);
        }

        if (unmeant.Is(text, source, first, last, name) || (numbers.Language.IsUnspaced && IsLikenessBehind(source.AsSpan(text.Words[last].End))))
            return false;
        if (first == last && text.Has(numberNouns, first) && !name.AsSpan().Equals(text.Of(text.Words[first]), StringComparison.OrdinalIgnoreCase))
            return false;
        if (IsClockHand(text, first, last) || IsPartOfCompound(text, source, first, last)
            || HasOtherAccents(source, text.Words[first].Start, text.Words[last].End, name, numbers.Language.HasCompounds))
            return false;
        if (IsLikeness(text, ids, first) || IsMetaphor(text, ids, first, last) || IsBehindModal(text, ids, first, last))
            return false;
        if (numbers.Language.HasVerbsAlike && (IsName(text, source, first, last, name) || IsOfWhich(text, ids, source, first, last)))
            return false;
        if (numbers.Language.Code == "fr" && first == last && IsParticiple(text, ids, first))
            return false;
        if (first > 0 && text.Words[first].Parting < Parting.Comma && IsSubject(text.Of(text.Words[first - 1])))
            return false;
        return !IsIdiom(text, first, last)
            && !(numbers.Language.HasVerbsAlike
                && (IsVerb(text, ids, first, last) || IsDoneToSomebody(text, first, last)
                    || IsWhatSomethingDoes(text, ids, first, last, name) || IsFirstOfTwo(text, ids, source, last)));
    }

    // "Petite aiguille", "grande aiguille", "aiguille des minutes": of a clock, and no needle.
    private bool IsClockHand(FoldedText text, int first, int last) =>
        text.Has(clockHands, first) && (IsOfDial(text, first - 1) || IsOfDial(text, last + 1) || IsOfDial(text, last + 2) || IsOfDial(text, last + 3));

    private bool IsOfDial(FoldedText text, int at) => at >= 0 && at < text.Words.Length && text.Has(ofDials, at);

    // "Toute personne aimant les énigmes".
    private bool IsParticiple(FoldedText text, ReadOnlySpan<int> ids, int at) =>
        text.Of(text.Words[at]).EndsWith("ant") && at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Comma
        && (numbers.UseOf(ids[at + 1]) & WordUse.Determiner) != WordUse.Plain
        && (at == 0 || (numbers.UseOf(ids[at - 1]) & (WordUse.Determiner | WordUse.Preposition)) == WordUse.Plain);

    // 磁石のように, 鏡みたいな.
    private static bool IsLikenessBehind(ReadOnlySpan<char> behind) =>
        behind.StartsWith("のよう") || behind.StartsWith("みたい") || behind.StartsWith("のごと") || behind.StartsWith("ほど") || behind.StartsWith("並み");

    // "Je balance encore", "que te alumbre".
    private bool IsSubject(ReadOnlySpan<char> word) => numbers.Language.Code switch
    {
        "fr" => word is "je" or "j" or "tu" or "il" or "elle" or "on" or "ils" or "elles" or "me" or "te" or "se" or "ne" or "n" or "s" or "m",
        "es" => word is "yo" or "me" or "te" or "se" or "le" or "les" or "nos" or "os" or "usted" or "ustedes",
        _ => false,
    };

    // "Patience is the key to every riddle": what something is said to be, with what it is that of. "It is the key to the drawer" tells.
    private bool IsMetaphor(FoldedText text, ReadOnlySpan<int> ids, int first, int last)
    {
        if (last + 1 >= ids.Length || text.Words[last + 1].Parting >= Parting.Comma || (numbers.UseOf(ids[last + 1]) & WordUse.Preposition) == WordUse.Plain)
            return false;
        var at = first - 1;
        while (at >= 0 && (numbers.UseOf(ids[at]) & WordUse.Determiner) != WordUse.Plain)
            at--;
        return at > 0 && at < first - 1 && copulas.Contains(text.Of(text.Words[at]).ToString()) && numbers.UseOf(ids[at - 1]) == WordUse.Plain
            && text.Of(text.Words[at - 1]).Length >= ShortestNoun;
    }

    // "should mirror what you saw", "no need to needle your partner".
    private bool IsBehindModal(FoldedText text, ReadOnlySpan<int> ids, int first, int last)
    {
        if (first == 0 || text.Words[first].Parting >= Parting.Comma || !verbsAhead.Contains(text.Of(text.Words[first - 1]).ToString()))
            return false;
        return text.Of(text.Words[first - 1]) is not "to"
            || (last + 1 < ids.Length && (numbers.UseOf(ids[last + 1]) & WordUse.Determiner) != WordUse.Plain);
    }

    // "near Cork": within a sentence a word with a capital is a name of its own.
    private static bool IsName(FoldedText text, string source, int first, int last, string name) =>
        first > 0 && text.Words[first].Parting < Parting.Comma && char.IsLower(name[0])
        && char.IsUpper(source[text.Words[first].Start]) && char.IsLower(source[text.Words[last].End - 1])
        && source[text.Words[first].Start - 1] == ' ';

    // "Cork tiles are easier on the knees."
    private bool IsOfWhich(FoldedText text, ReadOnlySpan<int> ids, string source, int first, int last) =>
        IsCommand(text, first, last) ||
        last + 2 < ids.Length && (first == 0 || text.Words[first].Parting >= Parting.Stop) && text.Words[last + 1].Parting == Parting.Space
        && numbers.UseOf(ids[last + 1]) == WordUse.Plain && text.Of(text.Words[last + 1]).EndsWith("s") && source[text.Words[last].End] == ' '
        && text.Of(text.Words[last + 2]) is "are" or "were" or "have" or "can" or "will";

    // "Button up, it's draughty"; not "lantern out of its bracket", "bell off the hook" below a photo.
    private bool IsCommand(FoldedText text, int first, int last) =>
        !(last + 2 < text.Words.Length && text.Words[last + 2].Parting < Parting.Comma && (text.Of(text.Words[last + 2]) is "of" || IsKnown(text, last + 2)))
        && last + 1 < text.Words.Length && (first == 0 || text.Words[first].Parting >= Parting.Stop) && text.Words[last + 1].Parting == Parting.Space
        && text.Of(text.Words[last + 1]) is "up" or "down" or "off" or "out" or "away" or "over";

    private bool IsPartOfCompound(FoldedText text, string source, int first, int last)
    {
        if (numbers.Language.IsUnspaced)
            return text.Words[last].End < source.Length && WordBoundary.IsChinese(source[text.Words[last].End])
                && WordBoundary.IsChinese(source[text.Words[last].End - 1]);
        return (first > 0 && text.Words[first].Parting == Parting.Hyphen && source[text.Words[first].Start - 1] == '-')
            || (last + 1 < text.Words.Length && text.Words[last + 1].Parting == Parting.Hyphen && source[text.Words[last].End] == '-');
    }

    /// <summary>Whether a lone noun is only part of another thing's: "lantern-lit", "the lantern parade", "le défilé aux lanternes".</summary>
    public bool AreOfCompound(FoldedText text, ReadOnlySpan<int> ids, string source, int first, int last)
    {
        if (IsPartOfCompound(text, source, first, last)
            || (last + 1 < ids.Length && text.Words[last + 1].Parting == Parting.Space && text.Has(behindCompounds, last + 1)))
            return true;
        var at = first - 1;
        while (at >= 0 && text.Words[at + 1].Parting < Parting.Comma && numbers.UseOf(ids[at]) != WordUse.Plain)
            at--;
        return at >= 0 && text.Words[at + 1].Parting < Parting.Comma && text.Has(beforeCompounds, at);
    }

    /// <summary>
    /// Whether the words from one to another say in the address of a picture what it shows: not in the name of a server, not as a page's own sign
    /// ("icon-bell"), not within another thing's ("lantern-festival").
    /// </summary>
    public bool NamePicture(FoldedText text, string source, int first, int last, string name)
    {
        var server = source.IndexOf("//", StringComparison.Ordinal);
        if (server >= 0 && source.IndexOf('/', server + 2) is var path && (path < 0 || text.Words[first].Start < path))
            return false;
        if (text.Has(signs, first) && text.HasAny(icons, 0, text.Words.Length))
            return false;
        return !unmeant.HasOtherSense(text, source, first, last, name) && !(last + 1 < text.Words.Length && text.Has(behindCompounds, last + 1))
            && !(first > 0 && text.Has(beforeCompounds, first - 1)) && !(first > 1 && text.Has(beforeCompounds, first - 2))
            && !(numbers.Language.IsUnspaced && IsPartOfCompound(text, source, first, last))
            && !HasOtherAccents(source, text.Words[first].Start, text.Words[last].End, name, numbers.Language.HasCompounds);
    }

    // "loupé" is no "loupe". What is written without any accent may have lost them.
    private static bool HasOtherAccents(string source, int start, int end, string name, bool hasDots)
    {
        var isSmall = hasDots && source.AsSpan(start, end - start) is var said && (said.EndsWith("chen") || said.EndsWith("lein"));
        foreach (var letter in source.AsSpan(start, end - start))
        {
            // "Körbchen" is a Korb.
            if (letter is > '\u007F' and < '\u0250' && !(isSmall && letter is 'ä' or 'ö' or 'ü') && !name.Contains(letter, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    // "like a feather", "as clear as a bell".
    private bool IsLikeness(FoldedText text, ReadOnlySpan<int> ids, int first)
    {
        var at = first - 1;
        while (at >= 0 && text.Words[at + 1].Parting < Parting.Comma && (numbers.UseOf(ids[at]) & WordUse.Determiner) != WordUse.Plain)
            at--;
        // كالريشة.
        if (numbers.Language.Code == "ar" && text.Of(text.Words[first]).StartsWith("كال"))
            return true;
        return at >= 0 && at < first - 1 && text.Words[at + 1].Parting < Parting.Comma && likenesses.Contains(text.Of(text.Words[at]).ToString())
            && (text.Of(text.Words[at]) is not "que" || IsCompared(text, at));
    }

    // "Plus léger que la plume"; "laissez que la bille roule" likens nothing.
    private static bool IsCompared(FoldedText text, int at)
    {
        for (var i = at - 1; i >= Math.Max(0, at - 4); i--)
        {
            if (text.Of(text.Words[i]) is "mas" or "menos" or "tan" or "igual" or "mayor" or "menor" or "mejor" or "peor" or "plus" or "moins" or "aussi"
                or "tel" or "telle" or "meme" or "mieux" or "autre" or "mismo" or "misma")
                return true;
        }

        return false;
    }

    /// <summary>Whether the words from one to another are only part of a turn of speech: "une main de fer dans un gant de velours".</summary>
    public bool AreInIdiom(FoldedText text, int first, int last) => first < last && IsIdiom(text, first, last, isWithin: true);

    private bool IsIdiom(FoldedText text, int first, int last, bool isWithin = false)
    {
        for (var i = first; i <= last; i++)
        {
            if (idiomsBySpan.TryGetValue(text.Of(text.Words[i]), out var all) && IsIn(all, text, first, last, isWithin))
                return true;
        }

        return false;
    }

    private bool IsIn(string[] all, FoldedText text, int first, int last, bool isWithin)
    {
        var (from, to) = (Math.Max(0, first - Around), Math.Min(text.Words.Length - 1, last + Around));
        var around = new StringBuilder(" ");
        var (start, end) = (0, 0);
        for (var i = from; i <= to; i++)
        {
            if (i == first)
                start = around.Length;
            around.Append(text.Of(text.Words[i]));
            if (i == last)
                end = around.Length;
            around.Append(numbers.Language.IsUnspaced ? "" : " ");
        }

        var said = around.ToString();
        foreach (var idiom in all)
        {
            for (var at = said.IndexOf(idiom, StringComparison.Ordinal); at >= 0; at = said.IndexOf(idiom, at + 1, StringComparison.Ordinal))
            {
                if (isWithin ? at < start && at + idiom.Length >= end && idiom.Trim().Length > end - start : at < end && at + idiom.Length > start)
                    return true;
            }
        }

        return false;
    }

    // "feather your oars": an article follows, and none stands before it.
    private bool IsVerb(FoldedText text, ReadOnlySpan<int> ids, int first, int last) =>
        last + 1 < ids.Length && text.Words[last + 1].Parting == Parting.Space
        && (numbers.UseOf(ids[last + 1]) & WordUse.Determiner) != WordUse.Plain
        && (first == 0 || text.Words[first].Parting >= Parting.Comma || (numbers.UseOf(ids[first - 1]) & WordUse.Determiner) == WordUse.Plain)
        && !IsAfterDeterminer(text, ids, first);

    // "My wife needles me."
    private static bool IsDoneToSomebody(FoldedText text, int first, int last) =>
        first == last && first > 0 && last + 1 < text.Words.Length
        && text.Words[first].Parting == Parting.Space && text.Words[last + 1].Parting == Parting.Space
        && text.Of(text.Words[last]).EndsWith("s") && text.Of(text.Words[last + 1]) is "me" or "you" or "him" or "us" or "them";

    // "Your energy flags", "the frame hooks neatly": a noun with its article is the subject, and it is the first verb of its clause.
    private bool IsWhatSomethingDoes(FoldedText text, ReadOnlySpan<int> ids, int first, int last, string name)
    {
        if (first != last || first < 2 || !IsPlural(text.Of(text.Words[first])) || name.EndsWith('s') || text.Words[first].Parting != Parting.Space
            || numbers.UseOf(ids[first - 1]) != WordUse.Plain || IsPlural(text.Of(text.Words[first - 1])) || text.Of(text.Words[first - 1]).Length < 3)
            return false;
        var hasArticle = false;
        for (var at = first - 2; at >= 0 && text.Words[at + 1].Parting < Parting.Comma; at--)
        {
            var isArticle = (numbers.UseOf(ids[at]) & WordUse.Determiner) != WordUse.Plain;
            hasArticle |= isArticle;
            // Before the article only a conjunction may stand: "If your energy flags".
            if (hasArticle && !isArticle && text.Of(text.Words[at]) is not ("if" or "when" or "and" or "but" or "this" or "that" or "until" or "as" or "while"))
                return false;
        }

        return hasArticle && (last + 1 == ids.Length || text.Words[last + 1].Parting >= Parting.Comma || text.Of(text.Words[last + 1]).EndsWith("ly")
            || (numbers.UseOf(ids[last + 1]) & (WordUse.Preposition | WordUse.Determiner)) != WordUse.Plain
            || text.Of(text.Words[last + 1]) is "well" or "out" or "up" or "every" or "above" or "again" or "along" or "away" or "down");
    }

    /// <summary>Whether a noun of a longer name stands for it: "the pestle", "it's a playbill"; not "a ledger of her own".</summary>
    public bool StandAlone(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name) =>
        IsAlone(text, ids, at, name) && Stand(text, ids, source, at, at, name);

    // "Ledgers" for a ledger: several are another thing.
    private bool AreSeveral(FoldedText text, int at, string name) =>
        text.Of(text.Words[at])[^1] == 's' && name[^1] is not ('s' or 'x') && !numbers.Language.HasCompounds;

    private bool IsAlone(FoldedText text, ReadOnlySpan<int> ids, int at, string name)
    {
        if (AreSeveral(text, at, name))
            return false;
        if (at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Comma && belongsWritten.Contains(text.Of(text.Words[at + 1]).ToString()))
            return false;
        if (!hasCertain || at == 0 || text.Words[at].Parting >= Parting.Comma)
            return text.Words[at].Parting >= Parting.Stop && at + 1 < ids.Length && text.Words[at + 1].Parting >= Parting.Comma;
        var before = text.Of(text.Words[at - 1]).ToString();
        if (certainWritten.Contains(before))
            return true;
        return possibleWritten.Contains(before) && at > 1
            && (copulas.Contains(text.Of(text.Words[at - 2]).ToString()) || text.Of(text.Words[at - 2]) is "it" or "this" or "that" or "c" or "of");
    }

    /// <summary>Whether a noun is put before the reader by few words: "a ladle rolls out"; see <see cref="Presented"/>.</summary>
    public bool StandPut(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name, bool isCommon) =>
        !numbers.Language.IsUnspaced && presented.Is(text, ids, source, at, isCommon)
        && (presented.IsPlaced(text, ids, source, at) || !GoesOn(text, ids, at)) && Stand(text, ids, source, at, at, name)
        && !AreSeveral(text, at, name);

    /// <summary>
    /// Whether a common noun is spoken of as a known thing, and beside it of what is done with it or where it is: "give the horse a shove", "the horse hides
    /// a key"; not "the horse box", "the house of my aunt".
    /// </summary>
    public bool StandHandled(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name) =>
        IsHandled(text, ids, source, at, name) && Stand(text, ids, source, at, at, name);

    private bool IsHandled(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name)
    {
        if (AreSeveral(text, at, name))
            return false;
        // "The owl's eyes unscrew."
        var isOwner = source[text.Words[at].End - 1] is 's' && source[text.Words[at].End - 2] is '\'' or '’';
        if (!isOwner && GoesOn(text, ids, at))
            return false;
        if (numbers.Language.Code == "ar")
            return (at > 0 ? text.Words[at].Parting < Parting.Comma : at + 1 < ids.Length && acts.Contains(text.Of(text.Words[1]).ToString()))
                && source.AsSpan(text.Words[at].Start..text.Words[at].End).Contains("ال", StringComparison.Ordinal)
                && (at == 0 || acts.Contains(text.Of(text.Words[at - 1]).ToString()) || IsFirst(text, at - 1));
        var article = at - 1;
        if (article > 0 && numbers.UseOf(ids[article]) == WordUse.Plain && text.Words[at].Parting < Parting.Comma)
            article--;
        if (article < 0 || !IsKnown(text, article) || text.Words[article + 1].Parting >= Parting.Comma)
            return false;
        if (IsFirst(text, article) || (!addressed.Contains(text.Of(text.Words[article - 1]).ToString())
            && !acts.Contains(text.Of(text.Words[article - 1]).ToString())
            && (numbers.UseOf(ids[article - 1]) & WordUse.Grammar) != WordUse.Plain))
            return at + 1 < ids.Length && text.Words[at + 1].Parting < Parting.Comma
                && (isOwner || acts.Contains(text.Of(text.Words[at + 1]).ToString()));
        var verb = article - 1;
        if (verb > 0 && addressed.Contains(text.Of(text.Words[verb]).ToString()))
            verb--;
        return acts.Contains(text.Of(text.Words[verb]).ToString()) || IsDone(text, ids, verb, verb < article - 1)
            // The word that a sentence begins with is what is to be done.
            || (IsFirst(text, verb) && (numbers.UseOf(ids[verb]) & (WordUse.Determiner | WordUse.Grammar | WordUse.Between)) == WordUse.Plain);
    }

    /// <summary>
    /// Whether a noun is all that a clause says: "What's under the panel? A saw.", "next item: the shell"; or, with a known article before it, what the reader
    /// has seen: "the hook you found". An uncommon one may also be what is found or lies somewhere: "you'll find a mallet".
    /// </summary>
    public bool StandShown(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name, bool isCommon) =>
        IsShown(text, ids, source, at, name, isCommon) && Stand(text, ids, source, at, at, name);

    private bool IsShown(FoldedText text, ReadOnlySpan<int> ids, string source, int at, string name, bool isCommon)
    {
        if (numbers.Language.IsUnspaced || AreSeveral(text, at, name))
            return false;
        var ends = at + 1 >= ids.Length || text.Words[at + 1].Parting >= Parting.Comma;
        if (numbers.Language.Code == "ar")
        {
            var isNamed = source.AsSpan(text.Words[at].Start..text.Words[at].End).Contains("ال", StringComparison.Ordinal);
            if (ends && at > 0 && text.Words[at].Parting >= Parting.Colon)
                return true;
            return isNamed && !ends && text.Words[at].Parting < Parting.Comma && recalls.Contains(text.Of(text.Words[at + 1]).ToString());
        }

        if (at == 0 || text.Words[at].Parting >= Parting.Comma)
            return ends && at > 0 && text.Words[at].Parting == Parting.Colon;
        var article = at - 1;
        if (IsKnown(text, article) && !ends && recalls.Contains(text.Of(text.Words[at + 1]).ToString()))
            return true;
        // "Den Magneten, den Sie eben gelöst haben".
        if (IsKnown(text, article) && text.Words[at].Parting < Parting.Comma && at + 2 < ids.Length && text.Words[at + 1].Parting == Parting.Comma
            && text.Has(relatives, at + 1) && addressed.Contains(text.Of(text.Words[at + 2]).ToString()))
            return true;
        var hasArticle = (numbers.UseOf(ids[article]) & WordUse.Determiner) != WordUse.Plain || text.Of(text.Words[article]) is "one";
        if (!hasArticle || !ends || article == 0)
            return false;
        if (text.Words[article].Parting >= Parting.Colon && text.Words[article].Parting != Parting.Item)
            return true;
        return !isCommon && acts.Contains(text.Of(text.Words[article - 1]).ToString());
    }

    // What somebody is told to do, whichever verb it is: "and polish", "polissez", "polieren Sie".
    private bool IsDone(FoldedText text, ReadOnlySpan<int> ids, int verb, bool isAddressed)
    {
        if (verb < 0 || (numbers.UseOf(ids[verb]) & (WordUse.Determiner | WordUse.Grammar | WordUse.Between | WordUse.Preposition)) != WordUse.Plain)
            return false;
        var word = text.Of(text.Words[verb]);
        return numbers.Language.Code switch
        {
            "de" => isAddressed && word.EndsWith("en"),
            "fr" => word.Length > 4 && (word.EndsWith("ez") || word.EndsWith("er")),
            "es" => word.Length > 4 && (word.EndsWith("ar") || word.EndsWith("er") || word.EndsWith("ir")),
            "en" => verb > 0 && text.Words[verb].Parting < Parting.Stop && text.Of(text.Words[verb - 1]) is "and" or "then" or "to" or "you" or "must" or "can"
                or "should" or "now" or "please" or "dont" or "don’t" or "never" or "just" or "ll" or "you’ll" or "youll",
            _ => false,
        };
    }

    /// <summary>Whether a word alone is surely a name there: behind an article or a number, or with nothing beside it.</summary>
    public bool IsCertain(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        if (numbers.Language.IsUnspaced)
            return true;
        var ends = at + 1 >= text.Words.Length || text.Words[at + 1].Parting >= Parting.Comma;
        if (ends && IsFirst(text, at))
            return true;
        if (numbers.Language.Code == "ar")
            return text.Of(text.Words[at]).StartsWith("ال") || ends || !text.Of(text.Words[at + 1]).StartsWith("ال");
        return IsAfterDeterminer(text, ids, at);
    }

    /// <summary>Whether it is any number of such things, with a bare preposition before it: "went through the village with lanterns".</summary>
    public bool AreAnySeveral(FoldedText text, ReadOnlySpan<int> ids, int at, string name)
    {
        if (at == 0 || text.Words[at].Parting >= Parting.Comma || text.Of(text.Words[at]).SequenceEqual(name))
            return false;
        var use = numbers.UseOf(ids[at - 1]);
        return use.HasFlag(WordUse.Preposition) && !use.HasFlag(WordUse.Determiner) && !IsKnown(text, at - 1);
    }

    private bool IsKnown(FoldedText text, int at) => certain.Contains(text.Of(text.Words[at]).ToString());

    private static bool IsFirst(FoldedText text, int at) => at == 0 || text.Words[at].Parting >= Parting.Stop;

    // A word behind it that says which one, or that it is part of another name.
    private bool GoesOn(FoldedText text, ReadOnlySpan<int> ids, int at)
    {
        if (at + 1 >= ids.Length || text.Words[at + 1].Parting >= Parting.Comma)
            return false;
        var next = text.Of(text.Words[at + 1]).ToString();
        if (belongs.Contains(next) || (numbers.Language.Code == "ar" && next.StartsWith("ال", StringComparison.Ordinal) && !recalls.Contains(next)))
            return true;
        if (numbers.Language.HasCompounds || numbers.UseOf(ids[at + 1]) != WordUse.Plain || acts.Contains(next))
            return false;
        if (numbers.Language.HasVerbsAlike)
            return !IsLikeVerb(next) && !shortVerbs.Contains(next)
                && next is not ("upside" or "back" or "free" or "round" or "again" or "sideways" or "home" or "clockwise"
                    or "anticlockwise" or "once" or "twice" or "first" or "shut" or "tight" or "loose" or "flat" or "upright" or "straight"
                    or "aside" or "halfway" or "fully" or "hard" or "please");
        return numbers.Language.Code is "fr" or "es" && !next.EndsWith("ment", StringComparison.Ordinal) && !next.EndsWith("mente", StringComparison.Ordinal);
    }

    private bool IsAfterDeterminer(FoldedText text, ReadOnlySpan<int> ids, int first)
    {
        for (var at = first - 1; at >= Math.Max(0, first - 3) && text.Words[at + 1].Parting < Parting.Comma; at--)
        {
            if ((numbers.UseOf(ids[at]) & (WordUse.Determiner | WordUse.Preposition)) != WordUse.Plain)
                return true;
        }

        return false;
    }

    // "a mirror image": a word follows that is neither one of grammar nor looks like a verb.
    private bool IsFirstOfTwo(FoldedText text, ReadOnlySpan<int> ids, string source, int last)
    {
        if (last + 1 >= ids.Length || text.Words[last + 1].Parting != Parting.Space || text.Words[last + 1].Start != text.Words[last].End + 1
            || (source[text.Words[last].End - 1] is 's' or 'S' && source[text.Words[last].End - 2] is '\'' or '’'))
            return false;
        var word = text.Of(text.Words[last]);
        var next = text.Of(text.Words[last + 1]);
        // "The magnet you've just had off".
        return numbers.UseOf(ids[last + 1]) == WordUse.Plain && !text.Has(recalls, last + 1) && !IsPlural(word)
            && !char.IsAsciiDigit(next[0]) && !IsLikeVerb(next)
            && !shortVerbs.Contains(next.ToString()) && !IsLetGo(text, last)
            && next is not ("upside" or "sideways" or "clockwise" or "anticlockwise" or "home" or "again" or "first");
    }

    // "Let the ball run": what it is let to do.
    private static bool IsLetGo(FoldedText text, int last)
    {
        for (var at = last - 1; at >= Math.Max(0, last - 3) && text.Words[at + 1].Parting < Parting.Comma; at--)
        {
            if (text.Of(text.Words[at]) is "let" or "lets" or "make" or "makes" or "watch" or "hear" or "help")
                return true;
        }

        return false;
    }

    private static bool IsLikeVerb(ReadOnlySpan<char> word) =>
        (word.EndsWith("s") && !word.EndsWith("ss"))
        || word.EndsWith("ed") || word.EndsWith("en") || word.EndsWith("ing") || word.EndsWith("ly") || word.EndsWith("ward");

    private static bool IsPlural(ReadOnlySpan<char> word) => word.Length > 3 && word[^1] == 's' && word[^2] != 's';

    private static string Spaced(FoldedText folded, string phrase)
    {
        folded.Read(phrase, isProse: false);
        var words = folded.Words.ToArray().Select(word => folded.Of(word).ToString());
        return phrase[0] >= '\u3000' ? string.Concat(words) : $" {string.Join(' ', words)} ";
    }
}
