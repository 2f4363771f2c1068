using System.Collections.Immutable;
using System.Text;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>Finds the mentions of all secrets in a text, reading it once. Not thread-safe: buffers are reused for the next text.</summary>
internal sealed class Finder
{
    private const int ShortestCode = 2;
    private const int ShortestWordCode = 4;
    private const int SureCode = 3;
    private const int ShortestPhrase = 6;
    private const int Nobody = -2;
    private readonly WordList words;
    private readonly WordReader reader;
    private readonly Phrases phrases;
    private readonly NumberRuns runs;
    private readonly Pieces pieces;
    private readonly SaidLetters letters;
    private readonly PlacedFigures placed;
    private readonly RelatedFigures related;
    private readonly ClockTimes times;
    private readonly NameJudge own;
    private readonly NameJudge others;
    private readonly bool readsUntranslated;
    private readonly HashSet<int> codes = [];
    private readonly HashSet<int> settings = [];
    private readonly OpeningHours opening;
    private readonly OrdinaryNumbers ordinary = new();
    private readonly NumbersAround numbers;
    private readonly UndoneThings undone;
    private readonly List<Mention> found = [];
    private readonly Dictionary<int, int> lastKept = [];
    private readonly List<NotSought> unlooked = [];
    private readonly List<SoughtSpelling> looked = [];

    /// <summary>Makes the secrets ready to be looked for.</summary>
    /// <param name="secrets">All of them, in the order of their numbers.</param>
    /// <param name="language">The language of the texts.</param>
    /// <param name="openTexts">Texts that anyone may read, such as the book's title: their words alone give no title or word away.</param>
    public Finder(ImmutableArray<Secret> secrets, string language = "en", params IEnumerable<string> openTexts)
        : this(secrets, SearchLanguage.For(language), SearchLanguage.For(language), readsUntranslated: false, openTexts)
    {
    }

    /// <summary>Makes the secrets ready to be looked for.</summary>
    /// <param name="secrets">All of them, in the order of their numbers.</param>
    /// <param name="language">The language of the texts.</param>
    /// <param name="other">The language of the spellings that aren't in it.</param>
    /// <param name="readsUntranslated">Whether the texts are those that nobody has translated.</param>
    /// <param name="openTexts">Texts that anyone may read.</param>
    public Finder(ImmutableArray<Secret> secrets, SearchLanguage language, SearchLanguage other, bool readsUntranslated, IEnumerable<string> openTexts)
    {
        this.readsUntranslated = readsUntranslated;
        words = new WordList(language);
        reader = new WordReader(words);
        phrases = new Phrases(words);
        runs = new NumberRuns(words);
        pieces = new Pieces(words);
        (letters, placed, related) = (new(words), new(words), new(words));
        times = new ClockTimes(words);
        opening = new(language);
        numbers = NumbersAround.For(language);
        string[] open = [.. openTexts, .. secrets.Where(secret => secret.Open).SelectMany(secret => secret.Spellings)];
        phrases.AddWords([.. open, .. secrets.SelectMany(secret => secret.Spellings)]);
        own = new NameJudge(words, phrases, open);
        others = other == language ? own : NameJudge.Build(other, open);
        foreach (var secret in secrets)
        {
            foreach (var spelling in secret.Spellings)
                Add(secret, spelling);
            if (language.HasNoSpaces && secret.Kind == SecretKind.Name && !secret.Open)
                AddReadings(secret);
        }

        undone = new(language, secrets);
        phrases.AddHeads(number => secrets[number] is { Open: false, IsHeld: true }, own.IsOpen);
        if (!secrets.Any(secret => secret.Kind == SecretKind.Name))
            return;
        string[] names = [.. secrets.Where(secret => secret.Kind == SecretKind.Name).SelectMany(secret => secret.Spellings)];
        var idioms = $"{language.Objects.Idioms}; {Idioms.Of(language.Code)}; {Sayings.Of(language.Code)}";
        foreach (var idiom in idioms.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            // What is the name of a thing is no turn of speech in its book: 石鹸の缶 has 石鹸 in it.
            phrases.AddIdiom(idiom, phrase => Array.Exists(names, name => name.Contains(phrase, StringComparison.OrdinalIgnoreCase)));
        }
    }

    /// <summary>What can't be looked for, and why.</summary>
    public IReadOnlyList<NotSought> NotSought => unlooked;

    /// <summary>What is looked for, and how surely it is met.</summary>
    public IReadOnlyList<SoughtSpelling> Sought => looked;

    /// <summary>Every mention in a text, by place, the longest first; valid until the next text.</summary>
    public IReadOnlyList<Mention> In(string text)
    {
        found.Clear();
        reader.Read(text);
        phrases.In(reader, text, found);
        runs.In(reader, text, found);
        pieces.In(reader, text, found);
        letters.In(reader, text, found);
        placed.In(reader, text, found);
        related.In(reader, text, found);
        times.In(reader, text, found);
        undone.In(reader, found);
        if (found.Count > 0)
        {
            if (found.Exists(mention => codes.Contains(mention.Secret)))
                RemoveOrdinary(text);
            KeepOneOfEach();
        }

        return found;
    }

    private void Add(Secret secret, string spelling)
    {
        if (secret.Kind is SecretKind.Answer or SecretKind.CopyAnswer)
        {
            codes.Add(secret.Number);
            AddCode(secret, spelling);
            return;
        }

        var judge = secret.Untranslated.Contains(spelling) == readsUntranslated ? own : others;
        var (telling, everyday, _, allOpen) = judge.Judge(spelling);
        var shortest = words.Language.ShortestName;
        if (judge != own)
        {
            var bare = judge.WithoutDeterminers(spelling);
            // Without its article "Le Four" would be the "four" of English.
            if (telling == 1 && bare.Length < spelling.Length && !bare.Contains(' ', StringComparison.Ordinal) && (everyday == 0 || secret.IsHeld))
            {
                AddWithArticle(secret, spelling, everyday == 0 ? Sureness.Sure : Sureness.Likely);
                return;
            }

            spelling = bare;
        }

        if (phrases.IsAccented(spelling))
        {
            if (!secret.Open && secret.IsHeld)
                AddName(secret, spelling, Sureness.Likely, Casing.Object, isOther: judge != own);
        }
        else if (secret.Kind == SecretKind.Title)
        {
            if (telling > 1 && everyday < telling && !allOpen)
                AddName(secret, spelling, Sureness.Likely, isOther: judge != own);
        }
        else if (telling > 1 && spelling.Length >= shortest && !(words.Language.HasNoSpaces && everyday == telling))
        {
            AddName(secret, spelling, everyday == telling || IsOneShortWord(spelling) ? Sureness.Likely : Sureness.Sure, isOther: judge != own);
        }
        else if (telling == 1 && everyday == 0 && spelling.Count(char.IsLetterOrDigit) >= shortest)
        {
            AddName(secret, spelling, Sureness.Sure, Casing.Alone, isOther: judge != own);
        }
        else if (!secret.Open)
        {
            if (telling > 0 && secret.IsHeld)
                AddName(secret, spelling, Sureness.Likely, Casing.Object, isOther: judge != own);
            unlooked.Add(new(secret, spelling, telling == 0 ? "has no word that tells anything" : everyday > 0 ? "is an everyday word" : "is too short"));
        }
    }

    // A lone noun of another language, only as it is written with its article there.
    private void AddWithArticle(Secret secret, string spelling, Sureness sureness)
    {
        if (secret.Open || secret.Kind == SecretKind.Title)
            return;
        phrases.Add(secret.Number, spelling, sureness, Casing.Any, isTurned: false);
        looked.Add(new(secret, spelling, SoughtAs.Name, sureness) { IsUntranslated = !readsUntranslated });
    }

    // 石鹸, 手ぬぐい: words of any household, while 風見鶏 and 銀の鈴 are rare.
    private bool IsOneShortWord(string spelling) =>
        words.Language.HasNoSpaces && !spelling.Contains(words.Language.Tie, StringComparison.Ordinal)
        && (spelling.Length <= ShortestCode || spelling.AsSpan().ContainsAnyInRange('ぁ', 'ヶ'));

    // Who writes kana for 鍵 means the same key. Likely mentions only: kana are many words.
    private void AddReadings(Secret secret)
    {
        var tie = words.Language.Tie;
        string[] read = [.. secret.Spellings, .. secret.Spellings.SelectMany(JapaneseReadings.Of), .. secret.Spellings.SelectMany(JapaneseReadings.ReadAs)];
        // 石鹸缶 for 石鹸の缶.
        var joined = secret.Spellings.Where(name => name.Contains(tie, StringComparison.Ordinal))
            .Select(name => name.Replace(tie, "", StringComparison.Ordinal));
        foreach (var other in read.Concat(joined.Where(name => name.Length > ShortestCode)).Distinct().Except(secret.Spellings))
        {
            var isOneWord = other.Length < ShortestPhrase && !other.Contains(tie, StringComparison.Ordinal);
            if (!isOneWord || secret.IsHeld)
                phrases.AddReading(secret.Number, other, isOneWord ? Casing.Object : Casing.Any);
        }
    }

    private void AddCode(Secret secret, string answer)
    {
        reader.Read(answer);
        var symbols = new StringBuilder();
        foreach (var word in reader.Words)
            symbols.Append(reader.Bare(word));
        var text = symbols.ToString();
        var odd = answer.EnumerateRunes().Any(rune =>
            !Rune.IsLetterOrDigit(rune)
            && !Rune.IsWhiteSpace(rune)
            && rune.Value is not ('-' or '.' or ',' or ':' or '/' or '_' or '\''));
        if (odd || text.Length < ShortestCode)
        {
            unlooked.Add(new(secret, answer, odd ? "has signs that are neither letters nor figures" : "is too short"));
            return;
        }

        var sure = text.Length < SureCode ? Sureness.Likely : Sureness.Sure;
        // Without capitals a code is written like any other word.
        var isCaseless = SaidLetters.IsCaseless(text);
        letters.Add(secret.Number, isCaseless && words.Language.HasNoSpaces ? string.Concat(answer.Where(char.IsLetter)) : text);
        placed.Add(secret.Number, text);
        related.Add(secret.Number, text);
        if (!isCaseless || !words.Language.HasNoSpaces)
            runs.Add(secret.Number, text, sure);
        // A time before ten may have a nought before its hour.
        if (text.Length == SureCode && ClockTimes.TimeOf(answer) is not null)
            runs.Add(secret.Number, $"0{text}", sure);
        pieces.Add(secret.Number, text, secret.Clue);
        times.Add(secret.Number, answer);
        // 燕 for ツバメ.
        if (isCaseless && words.Language.HasNoSpaces)
        {
            foreach (var word in JapaneseReadings.ReadAs(answer))
                phrases.Add(secret.Number, word, Sureness.Likely, Casing.Spelled, isTurned: false);
        }

        if (ClockTimes.TimeOf(answer) is not null)
            settings.Add(secret.Number);
        looked.Add(new(secret, text, SoughtAs.Symbols, sure));
        if (!answer.Any(char.IsLetter))
            return;
        var plain = text.Length < ShortestWordCode || own.Judge(answer).AllPlain;
        if (!isCaseless)
            AddName(secret, answer, Sureness.Sure, Casing.Capitals);
        AddName(secret, answer, Sureness.Likely, isCaseless || Speech.IsSpeakable(text) ? Casing.Spelled : Casing.Exact);
        if (plain)
            unlooked.Add(new(secret, answer, "is an everyday word unless it is written in capitals"));
    }

    private void AddName(Secret secret, string spelling, Sureness sureness, Casing rule = Casing.Any, bool isOther = false)
    {
        phrases.Add(secret.Number, spelling, sureness, rule, isTurned: secret.Kind != SecretKind.Title);
        var soughtAs = rule == Casing.Capitals ? SoughtAs.Capitals : SoughtAs.Name;
        looked.Add(new(secret, spelling, soughtAs, sureness) { IsUntranslated = isOther != readsUntranslated });
    }

    private void RemoveOrdinary(string text)
    {
        ordinary.Read(text);
        found.RemoveAll(mention => codes.Contains(mention.Secret)
            && (ordinary.Holds(mention) || (settings.Contains(mention.Secret) && opening.Has(text, mention.Start))));
        var isDoubted = false;
        for (var i = 0; i < found.Count; i++)
        {
            var mention = found[i];
            if (!codes.Contains(mention.Secret))
                continue;
            if (mention.Sureness != Sureness.Sure)
            {
                // "7/4, puis le 26" is a doubt by its own signs, and a date.
                if (numbers.Of(text, mention, settings.Contains(mention.Secret)) == Measured.Surely)
                    (found[i], isDoubted) = (mention with { Secret = Nobody }, true);
                continue;
            }

            if (settings.Contains(mention.Secret) && opening.IsTimetable(text, mention))
            {
                found[i] = mention with { Sureness = Sureness.Likely };
                continue;
            }

            var measured = numbers.Of(text, mention, settings.Contains(mention.Secret));
            isDoubted |= measured == Measured.Surely;
            found[i] = measured switch
            {
                Measured.No => mention,
                Measured.Surely => mention with { Secret = Nobody },
                _ => mention with { Sureness = Sureness.Likely },
            };
        }

        if (isDoubted)
            found.RemoveAll(static mention => mention.Secret == Nobody);
    }

    private static int InOrder(Mention left, Mention right) =>
        left.Start != right.Start ? left.Start.CompareTo(right.Start)
        : left.End != right.End ? right.End.CompareTo(left.End)
        : left.Sureness != right.Sureness ? right.Sureness.CompareTo(left.Sureness)
        : left.Secret.CompareTo(right.Secret);

    // A likely mention that only touches a figure of speech is part of it: "driving yourself … take the weight off".
    // A code is told beside figures of speech as well: "the third wheel is 0".
    private bool IsSilenced(Mention mention, Mention idiom) =>
        // "Green flag" is the thing's own name.
        (idiom.Covers(mention) && !(mention.Sureness == Sureness.Sure && mention.Covers(idiom)))
        || (mention.Sureness == Sureness.Likely && !codes.Contains(mention.Secret) && idiom.Start < mention.End && idiom.End > mention.Start);

    // One secret may be met in several ways at one place: the surest counts, and of equals the longest.
    private void KeepOneOfEach()
    {
        found.Sort(InOrder);
        lastKept.Clear();
        var (kept, isChanged) = (0, false);
        var idiom = found.FindAll(static mention => mention.Secret == Phrases.Idiom);
        for (var i = 0; i < found.Count; i++)
        {
            var mention = found[i];
            if (mention.Secret == Phrases.Idiom || idiom.Exists(one => IsSilenced(mention, one)))
                continue;
            // Of two that only overlap each says something of its own, but for times, of which each part is told again in others.
            if (lastKept.TryGetValue(mention.Secret, out var at) && mention.Start < found[at].End
                && (found[at].Sureness == mention.Sureness || settings.Contains(mention.Secret) || found[at].Covers(mention) || mention.Covers(found[at])))
            {
                if (found[at].Sureness < mention.Sureness)
                {
                    (found[at], isChanged) = (mention, true);
                    continue;
                }

                if (mention.Sureness == Sureness.Likely || mention.End <= found[at].End)
                    continue;
            }

            lastKept[mention.Secret] = kept;
            found[kept++] = mention;
        }

        found.RemoveRange(kept, found.Count - kept);
        if (isChanged)
            found.Sort(InOrder);
    }
}

/// <summary>A name or code that can't be looked for.</summary>
/// <param name="Secret">Whose it is.</param>
/// <param name="Spelling">As it is written.</param>
/// <param name="Why">The rest of a sentence that begins with it.</param>
internal sealed record NotSought(Secret Secret, string Spelling, string Why);

/// <summary>A spelling that is looked for.</summary>
/// <param name="Secret">Whose it is.</param>
/// <param name="Spelling">As it is written; of symbols the figures and small letters alone.</param>
/// <param name="As">How it may be written.</param>
/// <param name="Sureness">How sure its mentions are.</param>
public sealed record SoughtSpelling(Secret Secret, string Spelling, SoughtAs As, Sureness Sureness)
{
    /// <summary>Whether it is a name in the language from which the book was translated.</summary>
    public bool IsUntranslated { get; init; }
}

/// <summary>The ways in which a spelling is met.</summary>
public enum SoughtAs
{
    /// <summary>As words.</summary>
    Name,

    /// <summary>As words in capitals.</summary>
    Capitals,

    /// <summary>Symbol by symbol: in figures, number words and lone letters.</summary>
    Symbols,
}
