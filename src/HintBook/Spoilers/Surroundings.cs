using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>What stands around a word that could mean a thing or a code, or something else.</summary>
internal sealed class Surroundings(WordList words)
{
    private const int MostWords = 14;
    private const int MostSimile = 3;
    private const int MostToStep = 6;
    private const int MostToBracket = 24;
    private const Gap Beginning = Gap.Stop | Gap.Paragraph | Gap.Line;
    private const Gap Ending = Beginning | Gap.Comma;
    private const int MostToEach = 8;
    private const int MostToApart = 14;
    private const int MostLettersToApart = 24;
    private static readonly System.Buffers.SearchValues<char> Money = System.Buffers.SearchValues.Create("£$€¥￥円");
    private readonly SeveralSets several = SeveralSets.Of(words);
    private readonly bool hasPronouns = words.Language.Code is "fr" or "es";
    private readonly int reach = words.Language.HasNoSpaces ? 4 * MostWords : MostWords;

    /// <summary>Whether the clause is about handling a thing, or is nothing but its name, as in a list of parts.</summary>
    public bool IsHandled(WordReader text, int first, int last) =>
        Has(text, first, last, WordRole.Handling) || (IsAlone(text, first, last) && !IsAll(text, first, last));

    /// <summary>Whether the sentence is about setting or spelling a code; a colon doesn't end it.</summary>
    public bool IsSpelled(WordReader text, string source, int first, int last) =>
        Has(text, first, last, WordRole.Spelling) || (ColonBefore(text, source, first) is > 0 and var colon && Has(text, colon, colon - 1, WordRole.Spelling));

    /// <summary>Whether the paragraph speaks of letters or a lock: <c>Still stuck on the letters? It's the bird on the brooch, a plover.</c></summary>
    public bool IsOfLock(WordReader text, int first, int last)
    {
        for (var i = first - 1; i >= 0 && (text.Words[i + 1].Gap & Gap.Paragraph) == Gap.None; i--)
        {
            if (IsOfLock(text.Words[i].Id))
                return true;
        }

        for (var i = last + 1; i < text.Words.Length && (text.Words[i].Gap & Gap.Paragraph) == Gap.None; i++)
        {
            if (IsOfLock(text.Words[i].Id))
                return true;
        }

        return false;
    }

    private bool IsOfLock(int word) =>
        word >= 0 && ((words.Signs.HintOf(word) & PieceHint.Letter) != PieceHint.None || (!words.Language.HasNoSpaces && words.Signs.IsLock(word)));

    // "It's all one to the drums: heddle lifts them."
    private static int ColonBefore(WordReader text, string source, int first)
    {
        for (var i = first; i > 0 && i > first - MostWords; i--)
        {
            if (!IsWithin(text, i))
                return source.AsSpan(text.Words[i - 1].End, text.Words[i].Start - text.Words[i - 1].End).Contains(':') ? i : 0;
        }

        return 0;
    }

    /// <summary>Whether something is only likened to it: <c>as light as a feather</c>.</summary>
    public bool IsLikened(WordReader text, int first)
    {
        if (words.Language.HasNoSpaces)
            return IsLikenedBehind(text, first);
        // كالريشة; "as if", كأن, is read as the common أن.
        var hasPrefixes = words.Language.Prefixes.Length > 0;
        if (hasPrefixes && text.Bare(text.Words[first]).StartsWith("كال"))
            return true;
        for (var i = first - 1; i >= 0 && i >= first - MostSimile && IsWithin(text, i + 1); i--)
        {
            // "Comme l'aiguille est aimantée" says why.
            var isWhy = hasPronouns && (i == 0 || (text.Words[i].Gap & Beginning) != Gap.None) && i + 1 < first
                && !words.Signs.IsIndefinite(text.Words[i + 1].Id);
            if (words.Signs.IsSimile(text.Words[i].Id) && !isWhy && !(hasPrefixes && text.Bare(text.Words[i]) is "ان"))
                return true;
        }

        return false;
    }

    // スポンジのように, 鏡みたいな.
    private static bool IsLikenedBehind(WordReader text, int first)
    {
        for (var i = first + 1; i + 2 < text.Words.Length && i < first + MostWords && text.Words[i].Gap == Gap.None; i++)
        {
            if (text.Bare(text.Words[i]) is "の" && text.Bare(text.Words[i + 1]) is "よ" && text.Bare(text.Words[i + 2]) is "う")
                return true;
            if (text.Bare(text.Words[i])[0] is >= 'ぁ' and <= 'ん')
                return text.Bare(text.Words[i]) is "み" && text.Bare(text.Words[i + 1]) is "た" && text.Bare(text.Words[i + 2]) is "い";
        }

        return false;
    }

    /// <summary>Whether it is what someone does: <c>feather your oars</c>, <c>if your energy flags</c>.</summary>
    public bool IsVerb(WordReader text, int first, int last) =>
        words.Language == English.Language && (IsBeforeObject(text, first, last) || IsBehindSubject(text, first, last) || IsDoneToSomebody(text, first, last));

    // "My wife needles me."
    private bool IsDoneToSomebody(WordReader text, int first, int last) =>
        first == last && first > 0 && last + 1 < text.Words.Length && text.Words[first].Gap == Gap.Space && text.Words[last + 1].Gap == Gap.Space
        && text.Bare(text.Words[last])[^1] == 's' && text.Bare(text.Words[last + 1]) is "me" or "him" or "us" or "them"
        && (words.RoleOf(text.Words[first - 1].Id) & (WordRole.Determiner | WordRole.Handling)) == WordRole.None;

    // "Your energy flags", "the small box punches well": a noun with its article stands before it, and nobody handles anything.
    private bool IsBehindSubject(WordReader text, int first, int last)
    {
        if (first != last || first < 2 || text.Words[first].Gap != Gap.Space || text.Bare(text.Words[first])[^1] != 's' || text.Words[first - 1].Length < 3
            || words.FigureOf(text.Words[first - 1].Id) is not null || text.Bare(text.Words[first - 1])[^1] == 's' || IsUnfinished(text, last))
            return false;
        var isNamed = false;
        for (var i = first - 1; i >= 0 && (text.Words[i + 1].Gap & Ending) == Gap.None; i--)
        {
            var role = words.RoleOf(text.Words[i].Id);
            if ((role & (WordRole.Handling | WordRole.Preposition | WordRole.Link)) != WordRole.None && i > 0)
                return false;
            isNamed |= i < first - 1 && (role & WordRole.Determiner) != WordRole.None;
        }

        return isNamed;
    }

    // A word of grammar or a verb that goes on with it as a noun: "the signal flags are", "the oil lamps hang".
    private bool IsUnfinished(WordReader text, int last) =>
        last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None
        && (words.RoleOf(text.Words[last + 1].Id) & (WordRole.Link | WordRole.Function | WordRole.Handling)) != WordRole.None
        && !text.Bare(text.Words[last + 1]).StartsWith("a");

    private bool IsBeforeObject(WordReader text, int first, int last) =>
        last + 1 < text.Words.Length
        && text.Words[last + 1].Gap == Gap.Space
        && (words.RoleOf(text.Words[last + 1].Id) & WordRole.Determiner) != WordRole.None
        && !(first > 0 && (words.RoleOf(text.Words[first - 1].Id) & WordRole.Determiner) != WordRole.None);

    /// <summary>
    /// Whether it is spoken of as a certain thing: with "the" or "its" before it, or where something is handled; and not as another's, as "a ledger of
    /// her grievances" is; an ordinary noun not as a part of another's name, as "the horse race", nor as all of a title.
    /// </summary>
    public bool IsOnesOwn(WordReader text, int first, int last, bool isOrdinary)
    {
        if (IsInside(text, last + 1) && (IsAnothers(text, last) || (isOrdinary && IsBesideNoun(text, last))))
            return false;
        if (isOrdinary && IsAll(text, first, last))
            return false;
        // "Dropped anchor".
        var isSingular = words.Language == English.Language && text.Bare(text.Words[last])[^1] != 's';
        if (isSingular && !HasArticle(text, first) && (text.Words[first].Gap & Ending) == Gap.None)
            return false;
        // قفازات قطنية are any gloves; القفاز and قفازك are certain ones.
        if (words.Language.Prefixes.Length > 0 && !IsCertain(text.Bare(text.Words[last]))
            && !(last + 1 < text.Words.Length && text.Bare(text.Words[last + 1])[^1] is 'ك' or 'ه'))
            return false;
        if (IsHandled(text, first, last))
            return true;
        if (words.Language.HasNoSpaces)
        {
            // 中身は巾着ひとつ, 次の品は貝殻。
            var isTopic = first == 0 || text.Bare(text.Words[first - 1]) is "は" || (text.Words[first].Gap & Ending) != Gap.None;
            return (last + 1 < text.Words.Length && text.Bare(text.Words[last + 1]) is "を")
                || (isTopic && first > 0 && (last + 1 >= text.Words.Length || (text.Words[last + 1].Gap & Ending) != Gap.None
                    || text.Bare(text.Words[last + 1]) is "で" or "ひ" or "一" or "だ"));
        }

        var before = first - 1;
        if (before >= 0 && IsWithin(text, first) && HasArticle(text.Words[before], text))
            return true;
        if (before < 0 || !IsWithin(text, first) || (words.RoleOf(text.Words[before].Id) & WordRole.Determiner) == WordRole.None)
            return words.Language.Prefixes.Length > 0;
        // "It is a playbill."
        return !words.Signs.IsIndefinite(text.Words[before].Id)
            || (before > 0 && IsWithin(text, before) && (words.RoleOf(text.Words[before - 1].Id) & (WordRole.Link | WordRole.Preposition)) != WordRole.None)
            || (before > 0 && words.Signs.IsPronoun(text.Words[before - 1].Id));
    }

    /// <summary>
    /// Whether it is spoken of as something that the reader knows already, and beside it of what one does with it or where it is: <c>give the horse a
    /// shove</c>, <c>behind the horse</c>, <c>the horse hides a key</c>.
    /// </summary>
    public bool IsGiven(WordReader text, int first, int last)
    {
        if (last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None && (IsAnothers(text, last) || GoesOn(text, last)))
            return false;
        if (IsEach(text, first, last))
            return true;
        if (words.Language.Prefixes.Length > 0)
        {
            // هذا الحبل and فك الحبل; ذلك stands between.
            return IsCertain(text.Bare(text.Words[last])) && first > 0 && (text.Words[first].Gap & Ending) == Gap.None
                && (IsOneOf(text, first - 1, WordRole.Handling | WordRole.Determiner) || first == 1 || (text.Words[first - 1].Gap & Ending) != Gap.None);
        }

        var article = ArticleBefore(text, first);
        if (article < 0)
            return false;
        var begins = article == 0 || (text.Words[article].Gap & Ending) != Gap.None;
        if (begins || HasArticle(text.Words[article], text))
            return IsHandledNext(text, last) || (HasArticle(text.Words[article], text) && Has(text, first, last, WordRole.Handling));
        var before = article - 1;
        if (IsOneOf(text, before, WordRole.Handling))
            return true;
        // "Dale la vuelta a la taza", "donnez un coup à la tasse".
        if (hasPronouns && text.Bare(text.Words[before]) is "a")
            return Has(text, first, last, WordRole.Handling);
        // "Wind the mouse": the word that begins the sentence is a verb or a preposition. "Ziehen Sie das Pferd".
        if (words.Signs.IsAddressed(text.Words[before].Id) && before > 0)
            before--;
        if (before == 0 || (text.Words[before].Gap & Beginning) != Gap.None)
            return !IsOneOf(text, before, WordRole.Determiner | WordRole.Not) && !IsConjunction(text.Words[before].Id);
        return IsHandledNext(text, last) && IsConjunction(text.Words[before].Id);
    }

    /// <summary>
    /// Whether it is all that a clause says behind another one ("What's under the panel? A saw."), or is what the reader has met: "the pick you unclipped".
    /// </summary>
    public bool IsShown(WordReader text, int first, int last)
    {
        var isPrefixed = words.Language.Prefixes.Length > 0;
        var article = first - 1;
        var isCertain = isPrefixed ? IsCertain(text.Bare(text.Words[last])) : ArticleBefore(text, first) >= 0;
        if (isCertain && last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Beginning) == Gap.None
            && (IsRecalling(text, last + 1) || (!isPrefixed && IsPointedFrom(text, ArticleBefore(text, first), last + 1))))
            return true;
        if (last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None)
            return false;
        if (isPrefixed)
            return first > 0 && (text.Words[first].Gap & Beginning) != Gap.None;
        return article > 0 && IsSmall(text.Words[article]) && (text.Words[first].Gap & Ending) == Gap.None
            && (text.Words[article].Gap & (Gap.Stop | Gap.Paragraph)) != Gap.None;
    }

    /// <summary>
    /// Whether it is put before the reader: <c>goose onto the scale</c>, <c>scissors (silver)</c>, <c>there rolls a thimble</c>, <c>it's gall</c>,
    /// <c>no mould yet?</c>
    /// </summary>
    public bool IsPut(WordReader text, string source, int first, int last, bool isOrdinary)
    {
        if (words.Language.HasNoSpaces)
            return IsPutInRun(text, source, first, last);
        var hasNext = last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None;
        var isArabic = words.Language.Prefixes.Length > 0;
        if (hasNext && (IsAnothers(text, last) || (!isArabic && !IsBracketed(source, text.Words[last].End) && GoesOn(text, last))))
            return false;
        var determiner = DeterminerBefore(text, first);
        var start = determiner < 0 ? first : determiner;
        var begins = start == 0 || (text.Words[start].Gap & Ending) != Gap.None;
        var before = begins ? -1 : text.Words[start - 1].Id;
        if (isArabic)
            return !begins && words.Signs.IsPresenting(before);
        if (determiner < 0)
        {
            if (!begins)
                return IsPresented(text, start, isOrdinary);
            return IsBracketed(source, text.Words[last].End)
                || (hasNext && words.Signs.IsParticle(text.Words[last + 1].Id))
                || (hasNext && Is(text.Words[last + 1].Id, WordRole.Preposition) && IsInside(text, last + 2))
                || (!isOrdinary && Has(text, first, last, WordRole.Handling));
        }

        var article = text.Words[determiner].Id;
        if (Is(article, WordRole.Not))
            return !isOrdinary && (begins || start == 1 || (text.Words[start - 1].Gap & Ending) != Gap.None);
        if (!words.Signs.IsIndefinite(article))
            return isOrdinary && (Has(text, first, last, WordRole.Handling) || (begins && hasNext && IsBidden(text, last + 1)));
        return begins ? IsHandledNext(text, last) || (!hasNext && !isOrdinary && first > 1) : words.Signs.IsPresenting(before)
            || (!isOrdinary && !Is(before, WordRole.Preposition) && Has(text, first, last, WordRole.Handling));
    }

    // いま取り出した籠、逆さに; その笛の三つ目の穴; 中は笛です: behind what points at it, and before a small word or the end of the clause.
    private bool IsPutInRun(WordReader text, string source, int first, int last)
    {
        var before = source.AsSpan(0, text.Words[first].Start);
        var behind = source.AsSpan(text.Words[last].End);
        var isPointed = before.EndsWith("その") || before.EndsWith("この") || before.EndsWith("あの") || before.EndsWith("た") || before.EndsWith("る");
        var isSubject = behind is ['を' or 'が' or 'は', ..];
        var isSaid = behind.StartsWith("です") || behind.StartsWith("なん") || behind.StartsWith("でし") || behind.StartsWith("だっ");
        var isFirst = before.IsEmpty || before[^1] is 'は' or 'が' or 'に' or '、' or '。' or '\n' or '「' or 'り';
        var isTold = (isPointed || isFirst) && (isSubject || isSaid);
        return (isTold || (isPointed && (behind.IsEmpty || behind is ['、' or 'の', ..])))
            && (isSaid || Has(text, first, last, WordRole.Handling));
    }

    // "It's gall", "rutscht Blei heraus", "c'est du suif"; "the strap is leather" only describes.
    private bool IsPresented(WordReader text, int at, bool isOrdinary)
    {
        var before = text.Words[at - 1];
        if (text.Bare(before) is "it" && before.End - before.Start > "it".Length)
            return true;
        return words.Signs.IsPresenting(before.Id) && !Is(before.Id, WordRole.Preposition)
            && (!isOrdinary || !Is(before.Id, WordRole.Link) || (at > 1 && words.Signs.IsPronoun(text.Words[at - 2].Id)));
    }

    private static bool IsInside(WordReader text, int at) => at < text.Words.Length && (text.Words[at].Gap & Ending) == Gap.None;

    // "Den Draht bitte nicht abwickeln!"
    private bool IsBidden(WordReader text, int at) =>
        words.Language == German.Language && text.Bare(text.Words[at]) is "bitte" or "nicht" or "nie" or "niemals" or "ruhig" or "unbedingt";

    // "Ciseaux (argent)".
    private static bool IsBracketed(string source, int end) => source.AsSpan(end) is ['(', ..] or [' ', '(', ..];

    // An article, an owner or "no", with one describing word behind it at most; -1 if there is none.
    private int DeterminerBefore(WordReader text, int first)
    {
        for (var i = first - 1; i >= 0 && i >= first - 2 && (text.Words[i + 1].Gap & Ending) == Gap.None; i--)
        {
            var role = words.RoleOf(text.Words[i].Id);
            if ((role & (WordRole.Determiner | WordRole.Not)) != WordRole.None || HasArticle(text.Words[i], text))
                return i;
            if ((role & (WordRole.Function | WordRole.Handling)) != WordRole.None)
                return -1;
        }

        return -1;
    }

    private bool Is(int word, WordRole role) => (words.RoleOf(word) & role) != WordRole.None;

    // "That drum from the loft", "ce tambour du grenier": pointed at, with the place where it was.
    private bool IsPointedFrom(WordReader text, int article, int at)
    {
        var pointing = text.Bare(text.Words[article]);
        var from = text.Bare(text.Words[at]);
        return words.Language.Code switch
        {
            "en" => pointing is ("that" or "this") && from is "from",
            "de" => (pointing.StartsWith("diese") || pointing.StartsWith("jene")) && from is ("vom" or "aus" or "von"),
            "fr" => pointing is ("ce" or "cet" or "cette") && from is ("du" or "de" or "d"),
            "es" => pointing is ("ese" or "esa" or "este" or "esta" or "aquel" or "aquella") && from is ("del" or "de"),
            _ => false,
        };
    }

    // "You", "que", "den Sie", الذي.
    private bool IsRecalling(WordReader text, int at)
    {
        var bare = text.Bare(text.Words[at]);
        return words.Language.Code switch
        {
            "en" => bare is "you" or "youve",
            "de" => bare is "den" or "die" or "das" && at + 1 < text.Words.Length && text.Bare(text.Words[at + 1]) is "sie" or "du" or "ihr",
            "fr" => bare is "que" && at + 1 < text.Words.Length && text.Bare(text.Words[at + 1]) is "vous" or "tu",
            "es" => bare is "que",
            "ar" => bare is "الذي" or "التي",
            _ => false,
        };
    }

    /// <summary>Whether a short noun, which may be many words, has "the" before it where something is done.</summary>
    public bool IsCertainly(WordReader text, int first, int last) =>
        words.Language.HasNoSpaces || words.Language.Prefixes.Length > 0
        || (ArticleBefore(text, first) >= 0 && Has(text, first, last, WordRole.Handling));

    // The definite article, with one describing word behind it at most; -1 if there is none.
    private int ArticleBefore(WordReader text, int first)
    {
        for (var i = first - 1; i >= 0 && i >= first - 2 && (text.Words[i + 1].Gap & Ending) == Gap.None; i--)
        {
            var id = text.Words[i].Id;
            if (HasArticle(text.Words[i], text) || ((words.RoleOf(id) & WordRole.Determiner) != WordRole.None && !words.Signs.IsIndefinite(id)))
                return i;
            if ((words.RoleOf(id) & (WordRole.Function | WordRole.Determiner | WordRole.Handling)) != WordRole.None || words.FigureOf(id) is not null)
                return -1;
        }

        return -1;
    }

    // "De" is one word with "del" and "du", but has no article.
    private bool HasArticle(in Word word, WordReader text) => words.Signs.HasArticle(word.Id) && text.Bare(word) is not ("de" or "d" or "a");

    // "The horse race", with nothing but a space between.
    private bool IsBesideNoun(WordReader text, int last) =>
        words.Language == English.Language && text.Words[last + 1].Start == text.Words[last].End + 1
        && text.Words[last].End - text.Words[last].Start == text.Words[last].Length && GoesOn(text, last);

    // A word behind it that is part of what it is called: "the horse box".
    private bool GoesOn(WordReader text, int last)
    {
        var next = text.Words[last + 1];
        if (words.Language.HasCompounds || next.Gap == Gap.None || words.RoleOf(next.Id) != WordRole.None)
            return next.Gap == Gap.Hyphen;
        var bare = text.Bare(next);
        return words.Language == English.Language
            ? !(bare is "upside" or "back" or "home" or "free" or "open" or "shut" or "round" or "again" or "twice" or "once" or "hard" or "loose" or "facing"
                || bare.EndsWith("ly") || bare.EndsWith("ward") || bare.EndsWith("wards") || bare.EndsWith("ing") || bare.EndsWith("ed")
                || (bare[^1] == 's' && text.Bare(text.Words[last])[^1] != 's'))
            : !(bare.EndsWith("ment") || bare.EndsWith("mente"));
    }

    private bool IsHandledNext(WordReader text, int last) =>
        last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None && IsOneOf(text, last + 1, WordRole.Handling);

    private bool IsConjunction(int word) =>
        (words.RoleOf(word) & (WordRole.Function | WordRole.Preposition)) == WordRole.Function && (words.RoleOf(word) & WordRole.Handling) == WordRole.None;

    private bool IsOneOf(WordReader text, int at, WordRole role) => (words.RoleOf(text.Words[at].Id) & role) != WordRole.None;

    /// <summary>
    /// Whether nothing but a name can stand there: with an article or an owner before it, or by itself. "Balance ascendant Scorpion" and
    /// تحت عدسة الصحافة may mean something else.
    /// </summary>
    public bool IsNamed(WordReader text, int first, int last)
    {
        if (IsAlone(text, first, last))
            return true;
        // 石鹸で手を洗って.
        if (words.Language.HasNoSpaces)
            return false;
        if (words.Language.Prefixes.Length > 0)
            return text.Bare(text.Words[first]).Contains("ال", StringComparison.Ordinal) || last + 1 >= text.Words.Length
                || !text.Bare(text.Words[last + 1]).StartsWith("ال");
        if (hasPronouns)
        {
            // "Una marca paraguas", "un dedal de aguardiente".
            var isOfSome = first > 0 && words.Signs.IsIndefinite(text.Words[first - 1].Id) && last + 1 < text.Words.Length
                && words.Signs.IsOf(text.Words[last + 1].Id);
            return !isOfSome && first > 0 && (IsOneOf(text, first - 1, WordRole.Determiner) || HasArticle(text.Words[first - 1], text)
                || words.FigureOf(text.Words[first - 1].Id) is not null);
        }

        return HasArticle(text, first) || (first > 0 && words.FigureOf(text.Words[first - 1].Id) is not null);
    }

    /// <summary>
    /// Whether it is only part of another thing's noun: behind or before a hyphen, or with a word that makes one of it and none but words of grammar between:
    /// <c>el desfile de los faroles</c>.
    /// </summary>
    public bool IsOfCompound(WordReader text, int first, int last)
    {
        if (text.Words[first].Gap == Gap.Hyphen || (last + 1 < text.Words.Length && text.Words[last + 1].Gap == Gap.Hyphen))
            return true;
        var at = first - 1;
        while (at >= 0 && IsWithin(text, at + 1) && IsOneOf(text, at, WordRole.Determiner | WordRole.Preposition | WordRole.Function))
            at--;
        return at >= 0 && IsWithin(text, at + 1) && words.Signs.IsCompounding(text.Words[at].Id);
    }

    /// <summary>Whether a pronoun stands before it, so that it is a verb: <c>je balance</c>, <c>que te alumbre</c>.</summary>
    public bool IsDone(WordReader text, int first)
    {
        if (!hasPronouns || first == 0 || (text.Words[first].Gap & Ending) != Gap.None)
            return false;
        var before = text.Bare(text.Words[first - 1]);
        return words.Language.Code switch
        {
            "fr" => before is "je" or "j" or "tu" or "il" or "elle" or "on" or "ils" or "elles" or "me" or "te" or "se" or "ne" or "n" or "m" or "s",
            "es" => before is "yo" or "me" or "te" or "se" or "le" or "les" or "nos" or "os" or "usted" or "ustedes",
            _ => false,
        };
    }

    private static bool IsCertain(ReadOnlySpan<char> word) =>
        word.IndexOf("ال") is >= 0 and < 3 || word.StartsWith("لل") || word[^1] is 'ه' or 'ك' or 'ي' or 'ا' && !word.EndsWith("ات");

    private bool HasArticle(WordReader text, int first)
    {
        for (var i = first - 1; i >= 0 && i >= first - MostSimile && (text.Words[i + 1].Gap & Ending) == Gap.None; i--)
        {
            if ((words.RoleOf(text.Words[i].Id) & WordRole.Determiner) != WordRole.None || HasArticle(text.Words[i], text))
                return true;
        }

        return false;
    }

    private bool IsAnothers(WordReader text, int last) =>
        (words.Signs.IsOf(text.Words[last + 1].Id) && !IsFromPart(text, last + 1) && !IsInstrument(text, last))
        || (words.Language.Prefixes.Length > 0 && text.Bare(text.Words[last + 1]).StartsWith("ال") && !text.Bare(text.Words[last]).StartsWith("ال"));

    // "Avec la coquille du foin, vous avez tout": the clause begins with what one has by now, and "du" says where it was.
    private bool IsInstrument(WordReader text, int last)
    {
        if (!hasPronouns || text.Bare(text.Words[last + 1]) is not ("du" or "del"))
            return false;
        var article = ArticleBefore(text, last);
        return article > 0 && text.Bare(text.Words[article - 1]) is ("avec" or "con") && (article == 1 || (text.Words[article - 1].Gap & Ending) != Gap.None);
    }

    // "Les ciseaux du tiroir gauche", "el tarro del segundo cajón": which part of the box it comes from. "De bois" says what it is made of.
    private bool IsFromPart(WordReader text, int of)
    {
        if (!hasPronouns)
            return false;
        var at = of + 1;
        var hasArticle = text.Bare(text.Words[of]) is "du" or "del";
        for (; at < text.Words.Length && at <= of + 2 && (text.Words[at].Gap & Ending) == Gap.None; at++)
        {
            if (Is(text.Words[at].Id, WordRole.Everyday))
                return hasArticle;
            if (!Is(text.Words[at].Id, WordRole.Determiner | WordRole.Place))
                return false;
            hasArticle |= Is(text.Words[at].Id, WordRole.Determiner);
        }

        return false;
    }

    /// <summary>
    /// Whether a word only looks like an everyday one: a place that is called so ("near Cork"), what describes the next word ("Cork tiles"), a verb behind
    /// another ("should mirror").
    /// </summary>
    public bool IsNamesake(WordReader text, string source, int first, int last)
    {
        if (words.Language != English.Language)
            return false;
        var isArticled = first > 0 && (words.RoleOf(text.Words[first - 1].Id) & WordRole.Determiner) != WordRole.None;
        var begins = first == 0 || (text.Words[first].Gap & Ending) != Gap.None;
        if (!begins && !isArticled && char.IsUpper(source[text.Words[first].Start]) && char.IsLower(source[text.Words[first].End - 1]))
            return true;
        if (first > 0 && !begins && words.Signs.IsBeforeVerb(text.Words[first - 1].Id))
            return true;
        // "A lantern-jawed man."
        if (last + 1 < text.Words.Length && text.Words[last + 1].Gap == Gap.Hyphen && text.Bare(text.Words[last + 1]) is var joined
            && (joined.EndsWith("ed") || joined.EndsWith("like") || joined.EndsWith("less") || joined.EndsWith("free")
                || joined is "grey" or "gray" or "white" or "blue" or "green" or "red" or "yellow" or "black" or "brown" or "size" or "shape"))
            return true;
        // "Button up, it's draughty."
        if (begins && !isArticled && last + 1 < text.Words.Length && text.Words[last + 1].Gap == Gap.Space
            && text.Bare(text.Words[last + 1]) is var particle
            && (particle is "up" or "down" or "off" or "out" or "away" or "over" || (particle is "on" && !IsInside(text, last + 2)))
            && !IsPlaced(text, last + 2))
            return true;
        return begins && last + 1 < text.Words.Length && text.Words[last + 1].Gap == Gap.Space
            && text.Words[last + 1].Id < 0 && text.Words[last].End < text.Words[last + 1].Start && text.Bare(text.Words[last + 1])[^1] == 's';
    }

    // "Lantern out of its bracket", "whistle up by the bell", "button off its thread" say where it is.
    private bool IsPlaced(WordReader text, int at) =>
        IsInside(text, at)
        && (Is(text.Words[at].Id, WordRole.Preposition) || words.Signs.IsPossessive(text.Words[at].Id) || words.Signs.IsOf(text.Words[at].Id));

    /// <summary>Whether it is the hand of a clock: <c>petite aiguille</c>, <c>aguja de las horas</c>.</summary>
    public bool IsOfClock(WordReader text, int first, int last)
    {
        for (var i = Math.Max(0, first - 1); i < Math.Min(text.Words.Length, last + MostSimile + 1); i++)
        {
            if ((i < first || i > last) && (Is(text.Words[i].Id, WordRole.HourHand | WordRole.MinuteHand)
                || (words.Signs.HintOf(text.Words[i].Id) & (PieceHint.Hours | PieceHint.Minutes)) != PieceHint.None))
                return true;
        }

        return false;
    }

    /// <summary>Whether nothing but small words stands beside it up to the ends of the clause.</summary>
    public bool IsAlone(WordReader text, int first, int last, string? source = null)
    {
        var isBracket = source is not null && text.Words[last].End + 1 < source.Length && source[text.Words[last].End + 1] == '(';
        if (last + 1 < text.Words.Length && !isBracket && (text.Words[last + 1].Gap & Ending) == Gap.None)
            return false;
        for (var i = first; i >= 0; i--)
        {
            if (i == 0 || (text.Words[i].Gap & Beginning) != Gap.None)
                return true;
            if (!IsSmall(text.Words[i - 1]))
                return false;
        }

        return true;
    }

    /// <summary>
    /// Whether it is one of several that is set apart: <c>one of the pegs isn't like its brothers</c>. "One of the
    /// pegs broke" sets none apart.
    /// </summary>
    public bool IsOneOfSeveral(WordReader text, string source, int first, int last)
    {
        if (words.Language.HasNoSpaces)
        {
            var behind = source.AsSpan(text.Words[last].End, Math.Min(MostLettersToApart, source.Length - text.Words[last].End));
            return Runs.StartsWithAny(behind, several.OneOf) && Runs.HasAny(behind, several.ApartInRuns);
        }

        var before = source.AsSpan(0, text.Words[first].Start).TrimEnd();
        var isOne = false;
        foreach (var phrase in several.OneOf)
        {
            isOne |= before.EndsWith(phrase, StringComparison.OrdinalIgnoreCase)
                && (before.Length == phrase.Length || !char.IsLetter(before[before.Length - phrase.Length - 1]));
        }

        for (var i = last + 1; isOne && i < text.Words.Length && i <= last + MostToApart && (text.Words[i].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None; i++)
        {
            if (SeveralSets.Has(several.Apart, text, i))
                return true;
        }

        return false;
    }

    /// <summary>Whether it is an entry of a list of parts with what one costs: <c>insulators, green, £6 each</c>.</summary>
    public bool IsPriced(WordReader text, string source, int first, int last)
    {
        var isCounted = first > 0
            && (words.FigureOf(text.Words[first - 1].Id) is not null || char.IsAsciiDigit(text.Bare(text.Words[first - 1])[0]));
        var start = isCounted ? first - 1 : first;
        var before = source.AsSpan(0, text.Words[start].Start).TrimEnd();
        if ((start > 0 && (text.Words[start].Gap & Ending) == Gap.None && before is not [.., '،' or '、' or '・' or '：'])
            || (last + 1 < text.Words.Length && (text.Words[last + 1].Gap & Ending) == Gap.None
                && source[text.Words[last].End] is not ('،' or '、' or '（') && !IsBracketed(source, text.Words[last].End)))
            return false;
        var end = source.IndexOfAny(['\n', ';', '。'], text.Words[last].End);
        var line = source.AsSpan(text.Words[last].End, (end < 0 ? source.Length : end) - text.Words[last].End);
        if (words.Language.HasNoSpaces)
            return line.ContainsAny(Money) && Runs.HasAny(line, several.ApieceInRuns);
        var (isApiece, isMoney) = (false, line.ContainsAny(Money));
        for (var i = last + 1; i < text.Words.Length && text.Words[i].End <= text.Words[last].End + line.Length; i++)
        {
            isApiece |= SeveralSets.Has(several.Apiece, text, i);
            isMoney |= Is(text.Words[i].Id, WordRole.Unit);
        }

        return isApiece && isMoney;
    }

    /// <summary>Whether another stuff than that of its name stands beside it, so that it is another thing: <c>the linen bag</c>, 木綿の袋.</summary>
    public bool IsOfOtherStuff(WordReader text, string source, int first, int last)
    {
        if (words.Language.HasNoSpaces)
            return Runs.IsOfMaterial(source, text.Words[first].Start);
        if (!words.Language.HeadFirst)
            return first > 0 && text.Words[first].Gap == Gap.Space && Materials.Has(words.Language.Code, text.Bare(text.Words[first - 1]));
        var next = last + 1;
        if (hasPronouns && next < text.Words.Length && text.Bare(text.Words[next]) is "de" or "d" or "en")
            next++;
        return (next > last + 1 || !hasPronouns) && IsInside(text, next) && Materials.Has(words.Language.Code, text.Bare(text.Words[next]));
    }

    // "Put the rod and the mould each in its slot": two that are certain things share out something.
    private bool IsEach(WordReader text, int first, int last)
    {
        var article = ArticleBefore(text, first);
        var isCertain = words.Language.Prefixes.Length > 0 ? IsCertain(text.Bare(text.Words[last])) : article >= 0;
        var hasAnd = article > 0 && Is(text.Words[article - 1].Id, WordRole.And);
        for (var i = last + 1; isCertain && i < text.Words.Length && i <= last + MostToEach && (text.Words[i].Gap & Ending) == Gap.None; i++)
        {
            if (hasAnd && SeveralSets.Has(several.Each, text, i))
                return true;
            hasAnd |= Is(text.Words[i].Id, WordRole.And) || words.IsBehindAnd(text.Bare(text.Words[i]));
        }

        return false;
    }

    /// <summary>Whether a step stands in brackets behind it, as in a list of parts: <c>sponge (stage 2)</c>, <c>canard en buis (étape 4)</c>.</summary>
    public bool IsOfStep(WordReader text, string source, int last)
    {
        var bracket = source.AsSpan(text.Words[last].End, Math.Min(MostToBracket, source.Length - text.Words[last].End)).IndexOfAny('(', '（');
        if (bracket < 0)
            return false;
        var opening = text.Words[last].End + bracket;
        for (var i = last + 1; i < text.Words.Length && i <= last + MostToStep && (text.Words[i].Gap & (Beginning | Gap.Comma)) == Gap.None; i++)
        {
            var isWithin = text.Words[i].Start > opening && !source.AsSpan(opening, text.Words[i].Start - opening).ContainsAny(')', '）');
            if (isWithin && text.Words[i].Id >= 0 && words.Signs.IsStep(text.Words[i].Id))
                return true;
        }

        return false;
    }

    // A text that is nothing but the name is a title, and says nothing of a thing.
    private bool IsAll(WordReader text, int first, int last)
    {
        if (last + 1 < text.Words.Length)
            return false;
        for (var i = 0; i < first; i++)
        {
            if (!IsSmall(text.Words[i]))
                return false;
        }

        return true;
    }

    private bool IsSmall(in Word word) =>
        (words.RoleOf(word.Id) & WordRole.Determiner) != WordRole.None || words.FigureOf(word.Id) is not null || word.Length == 1;

    private bool Has(WordReader text, int first, int last, WordRole role)
    {
        for (var i = first - 1; i >= 0 && i >= first - reach && (i + 1 == first && last < first || IsWithin(text, i + 1)); i--)
        {
            if ((words.RoleOf(text.Words[i].Id) & role) != WordRole.None)
                return true;
        }

        for (var i = last + 1; i < text.Words.Length && i <= last + reach && IsWithin(text, i); i++)
        {
            if ((words.RoleOf(text.Words[i].Id) & role) != WordRole.None)
                return true;
        }

        return false;
    }

    // No stop and no empty line before the word.
    private static bool IsWithin(WordReader text, int at) => (text.Words[at].Gap & (Gap.Stop | Gap.Paragraph)) == Gap.None;
}
