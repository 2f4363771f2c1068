using System.Buffers;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>
/// Names in all the ways in which they are said, as a <see cref="NameTree"/>, so that one walk over a text meets all of them, however many there are. A name
/// is met with its words in order; its describing words may have up to two others between them, and "jar of honey" is "honey jar" too.
/// </summary>
internal sealed class Phrases(WordList words)
{
    private const int ShortestPart = 3;
    private const int ShortestInCompound = 6;
    private const int ShortestLoose = 4;
    private const int ShortestVerb = 4;
    private const int ShortestHead = 3;
    private const int ShortestTailHead = 4;
    private const int ShortestTail = 5;

    // Every two neighbours of a name may be written as one, so the tree grows with the square of its words, and a walk is as deep as a name has words.
    // Of a longer name the beginning is sought, as it is written: that many words tell it.
    private const int MostWords = 32;

    private const WordRole Grammar = WordRole.Function | WordRole.Preposition | WordRole.Determiner;
    private static readonly SearchValues<char> Accents = SearchValues.Create([.. Enumerable.Range('\u00C0', 0x190).Select(letter => (char)letter)]);

    /// <summary>The number that mentions of idioms have.</summary>
    public const int Idiom = -1;

    private readonly Dictionary<int, List<(int Secret, string Bare, string Plain, bool IsPart)>> heads = [];
    private readonly HashSet<int> ofMaterial = [];
    private readonly List<(int Secret, string Noun, bool IsMadeOf)> runNouns = [];
    private readonly NameTree tree = new();
    private readonly WordReader reader = new(words);
    private readonly TurnedNames turned = new(words);
    private readonly MisspeltNames misspelt = new(words);
    private readonly HashSet<int> named = [];
    private int owned;
    private readonly HashSet<int> figurative = [];
    private readonly NamesInRuns runs = new();
    private PhraseWalk? walk;
    private readonly bool hasCompounds = words.Language.HasCompounds;
    private readonly bool hasNoSpaces = words.Language.HasNoSpaces;
    private readonly bool hasFinalAccents = words.Language.HasFinalAccents;
    private readonly bool hasPrefixes = words.Language.Prefixes.Length > 0;

    /// <summary>
    /// Makes the words of texts known before any name is added. A language with prefixes needs that: a word is known by its stem only if
    /// the stem is known already, and a text may have the one where another text has the other.
    /// </summary>
    public void AddWords(IEnumerable<string> texts)
    {
        if (!hasPrefixes)
            return;
        var all = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in texts)
        {
            reader.Read(text);
            foreach (var word in reader.Words)
                all.Add(reader.Bare(word).ToString());
        }

        words.AddAll(all);
    }

    /// <summary>Adds a name with the other ways in which it is said.</summary>
    /// <param name="secret">Whose name it is.</param>
    /// <param name="name">As the author wrote it.</param>
    /// <param name="sureness">How sure its mentions are.</param>
    /// <param name="rule">What the letters must look like as well.</param>
    /// <param name="isTurned">Whether its words may be turned about.</param>
    public void Add(int secret, string name, Sureness sureness, Casing rule = Casing.Any, bool isTurned = true)
    {
        var written = Written(name, out var bare);
        if (written.Length == 0)
            return;
        owned = IndexOfOwner(name);
        named.UnionWith(written.Where(word => !Is(word, WordRole.Function | WordRole.Preposition)));
        var isExact = rule is Casing.Spelled or Casing.Capitals or Casing.Exact
            || (written.Length > 1 && !hasNoSpaces && name.Count(char.IsLetterOrDigit) < ShortestLoose);
        var isNoun = hasCompounds && written.Length == 1 && rule is Casing.Any or Casing.Alone && char.IsUpper(name.FirstOrDefault(char.IsLetter));
        var noun = isNoun ? bare[0] : null;
        var isProper = char.IsUpper(name.FirstOrDefault(char.IsLetter));
        var ending = new Ending(secret, sureness, rule, noun, isExact ? string.Concat(bare) : null, isProper)
        {
            IsMasculine = hasPrefixes && written.Length == 1 && name[^1] is not ('ة' or 'ه'),
            Plain = written.Length == 1 ? PlainOf(name, bare[0]) : "",
            Accented = Is(written[0], Grammar) ? AccentedIn(name, bare[0]) : "",
        };
        if (ending.Accented.Length > 0)
            named.Add(written[0]);
        tree.Insert(written.AsSpan(0, Math.Min(written.Length, MostWords)), ending);
        if (isExact || written.Length > MostWords)
            return;
        AddForms(written, bare);
        if (written.Length == 1 && rule is Casing.Alone or Casing.Object)
            misspelt.AddAlone(written[0], bare[0]);
        if (hasNoSpaces)
        {
            if (isTurned)
                runs.Add(secret, name, words.Language.Tie);
            if (isTurned && NamesInRuns.NounOf(name) is { Length: > 0 } spelt)
                runNouns.Add((secret, spelt, Runs.IsMadeOf(name)));
            return;
        }

        if (isTurned)
        {
            Turn(secret, name, written, bare);
            misspelt.Add(secret, written, bare);
        }

        var tie = Array.FindIndex(written, word => Is(word, WordRole.Preposition));
        if (tie < 0 && written.Length is 2 or 3 && words.NumberOf("of") is >= 0 and var of)
        {
            tree.Insert([written[^1], of, .. written[..^1]], ending with { Sureness = Sureness.Likely });
            tree.Insert([written[^1], words.Add("made"), of, .. written[..^1]], ending with { Sureness = Sureness.Likely });
        }

        if (tie > 0 && written[tie] == words.NumberOf("of") && tie < written.Length - 1 && !written[(tie + 1)..].Any(word => Is(word, WordRole.Preposition)))
        {
            tree.Insert([.. written[(tie + 1)..], .. written[..tie]], ending);
            InsertJoined([.. written[(tie + 1)..], .. written[..tie]], [.. bare[(tie + 1)..], .. bare[..tie]], ending);
        }

        InsertJoined(written, bare, ending);
    }

    /// <summary>Whether a name is one word that differs from a word of grammar by its accent alone: <c>dé</c>, a thimble, and <c>de</c>.</summary>
    public bool IsAccented(string name) => Written(name, out var bare) is [var word] && Is(word, Grammar) && AccentedIn(name, bare[0]).Length > 0;

    // A word of a name as it is written there, if it has an accent; else nothing.
    private string AccentedIn(string name, string bare)
    {
        reader.Read(name);
        foreach (var word in reader.Words)
        {
            if (reader.Bare(word).SequenceEqual(bare) && name.AsSpan(word.Start, word.End - word.Start).ContainsAny(Accents))
                return name[word.Start..word.End];
        }

        return "";
    }

    // A word of a name as it is written there, where an accent at the end makes another word.
    private string PlainOf(string name, string bare) => !hasFinalAccents ? "" : AccentedIn(name, bare) is { Length: > 0 } accented ? accented : bare;

    /// <summary>Adds a name as it is read aloud: other than in Latin letters, signs above a letter make another one, か and が.</summary>
    public void AddReading(int secret, string name, Casing rule)
    {
        var written = Written(name, out _);
        if (written.Length > 0)
            tree.Insert(written.AsSpan(0, Math.Min(written.Length, MostWords)), new(secret, Sureness.Likely, rule) { Reading = SaidLetters.Hiragana(name) });
    }

    // Spellings of other countries, feminines, what a thing's own verb is called: they are that word from now on, unless they are another one.
    private void AddForms(int[] written, string[] bare)
    {
        var noun = NounOf(written);
        for (var i = 0; i < written.Length; i++)
        {
            if (Is(written[i], WordRole.Function | WordRole.Preposition) || bare[i].Length < ShortestPart)
                continue;
            foreach (var form in words.Language.FormsOf(bare[i], words.Language.HeadFirst && written.Length > 1 && i != noun))
                words.Alias(form, written[i]);
        }

        if (written.Length > 1 || words.Language != English.Language || bare[0].Length < ShortestVerb)
            return;
        // "Lensed" speaks of no lens.
        if (Is(written[0], WordRole.Everyday))
            return;
        foreach (var verb in (string[])[$"un{bare[0]}", $"un{bare[0]}ed", $"{bare[0]}ed"])
            words.Alias(verb, written[0]);
    }

    // The word that says what it is: the last one, or the one before what ties it to others.
    private int NounOf(int[] written)
    {
        var tie = Array.FindIndex(written, word => Is(word, WordRole.Preposition | WordRole.Link));
        if (owned > 0)
            return owned - 1;
        return tie > 0 ? (words.Language.HeadFirst ? 0 : tie - 1) : words.Language.HeadFirst ? 0 : written.Length - 1;
    }

    // "Taktstock des Kapellmeisters": the number of words before the owner's article; 0 if there is none.
    private int IndexOfOwner(string name)
    {
        if (!hasCompounds)
            return 0;
        reader.Read(name);
        var before = 0;
        foreach (var word in reader.Words)
        {
            if (before > 0 && reader.Bare(word) is "des" or "der" or "eines" or "einer" or "meines" or "meiner")
                return before;
            before += Is(word.Id, WordRole.Determiner) ? 0 : 1;
        }

        return 0;
    }

    private void Turn(int secret, string name, int[] written, string[] bare)
    {
        if (hasCompounds)
        {
            TurnCompound(secret, name, bare);
            MakeCompound(secret, written, bare);
        }
        if (written.Length < 2)
            return;
        if (bare.Any(word => Materials.Has(words.Language.Code, word)))
            ofMaterial.Add(secret);
        var noun = NounOf(written);
        var accented = Is(written[noun], Grammar) ? AccentedIn(name, bare[noun]) : "";
        AddHead(written[noun], secret, accented.Length > 0 ? accented : bare[noun], PlainOf(name, bare[noun]), isPart: false);
        // "Lé de soie": "le" stands before any word of the text.
        if (accented.Length > 0)
            return;
        if (ContentOf(written, noun) is >= 0 and var content)
            AddHead(written[content], secret, bare[content], PlainOf(name, bare[content]), isPart: true);
        int[] describing =
        [
            .. Enumerable.Range(0, written.Length).Where(i => i != noun && !Is(written[i], WordRole.Function | WordRole.Preposition | WordRole.Link)),
        ];
        int[] telling = [.. describing.Where(i => !Is(written[i], WordRole.Everyday))];
        var isTied = Array.Exists(written, word => Is(word, WordRole.Preposition));
        foreach (var i in telling.Length > 0 ? telling : describing.Length == 1 ? describing : [])
        {
            var isWithout = i > 0 && Is(written[i - 1], WordRole.Not);
            turned.Add(written[noun], written[i], new(secret, isTied, isWithout));
            if (words.Language == English.Language && bare[i].EndsWith("less", StringComparison.Ordinal))
                turned.Add(written[noun], words.Add(bare[i].AsSpan(..^4)), new(secret, isTied, IsWithout: true));
            foreach (var form in words.Language.FormsOf(bare[i], true).Where(form => form.Length >= ShortestPart))
                turned.Add(written[noun], words.Add(form), new(secret, isTied, isWithout, IsForm: true));
        }
    }

    // "Bottle of ox gall", "Topf mit Papp", "Rolle Messingdraht" hold gall, Papp and Messingdraht; -1 if what a name names holds nothing.
    private int ContentOf(int[] written, int noun)
    {
        if (noun == written.Length - 1 && hasCompounds && words.Signs.IsContainer(written[0]))
            return noun;
        if (!words.Signs.IsContainer(written[noun]))
            return -1;
        var tie = Array.FindIndex(written, noun, word => Is(word, WordRole.Preposition | WordRole.Link));
        if (tie < 0 ? !hasPrefixes : tie != noun + 1 || tie == written.Length - 1)
            return -1;
        return tie < 0 ? (written.Length > 1 ? 1 : -1) : words.Language.HeadFirst ? tie + 1 : written.Length - 1;
    }

    private void AddHead(int noun, int secret, string bare, string plain, bool isPart)
    {
        if (!heads.TryGetValue(noun, out var owners))
            heads[noun] = owners = [];
        owners.Add((secret, bare, plain, isPart));
    }

    // "Sattelseifendose" for a "Dose mit Sattelseife", "verbogener Bügel" for a "verbogener Steigbügel".
    private void MakeCompound(int secret, int[] written, string[] bare)
    {
        if (written.Length is < 2 or > 3)
            return;
        if (written.Length == 3 && Is(written[1], WordRole.Preposition))
        {
            foreach (var between in (string[])["", "n", "s", "en", "er"])
                tree.Insert([words.Add(bare[2] + between + bare[0])], new(secret, Sureness.Likely, Casing.Any));
        }

        for (var cut = ShortestPart; written.Length == 2 && cut <= bare[1].Length - ShortestTail; cut++)
            tree.Insert([written[0], words.Add(bare[1].AsSpan(cut..))], new(secret, Sureness.Likely, Casing.Any));
    }

    // "Medaille aus Bronze" and "bronzene Medaille" for a Bronzemedaille, wherever its two words meet.
    private void TurnCompound(int secret, string name, string[] bare)
    {
        var last = bare[^1];
        if (!char.IsUpper(name.LastOrDefault(char.IsUpper)) || last.Length < ShortestInCompound)
            return;
        for (var cut = ShortestPart - 1; cut <= last.Length - ShortestPart; cut++)
        {
            var (describing, noun) = (words.Add(last.AsSpan(..cut)), words.Add(last.AsSpan(cut..)));
            turned.Add(noun, describing, new(secret));
            // "Der Ritter" for a Zinnritter: of all its ends only words stand in texts.
            if (last.Length - cut >= ShortestTailHead)
                AddHead(noun, secret, last[cut..], "", isPart: true);
            tree.Insert([describing, noun], new(secret, Sureness.Likely, Casing.Any));
            // "Der Stab des Dirigenten" for a Dirigentenstab.
            foreach (var owner in (string[])["des", "der"])
                tree.Insert([noun, words.Add(owner), describing], new(secret, Sureness.Likely, Casing.Any));
        }
    }

    /// <summary>
    /// Makes the nouns of names of several words count by themselves, if no other name has them and nobody knows them: "the pestle" for a brass pestle.
    /// Likely mentions only, where the thing is handled or somebody's; of a noun that many texts have, only where it is both. Called once, behind the
    /// last name.
    /// </summary>
    /// <param name="isThing">Whether a secret is a thing that can be held.</param>
    /// <param name="isOpen">Whether a word stands in what anyone may read.</param>
    public void AddHeads(Func<int, bool> isThing, Func<int, bool> isOpen)
    {
        AddHeadsOfRuns(isThing);
        foreach (var (noun, owners) in heads.OrderBy(head => head.Key))
        {
            var (secret, bare, plain, _) = owners[0];
            var accented = bare.AsSpan().ContainsAny(Accents) ? bare : "";
            if (bare.Length + accented.Length < ShortestHead || !isThing(secret) || owners.Exists(owner => owner.Secret != secret) || isOpen(noun)
                || (accented.Length == 0 && (Is(noun, WordRole.Function) || (Is(noun, WordRole.Everyday) && !words.Signs.IsHoldable(noun)))))
                continue;
            var isVerb = accented.Length == 0 && Is(noun, WordRole.Handling | WordRole.Setting);
            var isOrdinary = accented.Length > 0 || isVerb || words.Signs.IsHoldable(noun) || words.Signs.IsOrdinary(noun) || words.Signs.IsContainer(noun)
                || owners.TrueForAll(owner => owner.IsPart);
            var ending = new Ending(secret, Sureness.Likely, Casing.Head, hasCompounds ? bare : null)
            {
                Head = bare,
                IsOrdinary = isOrdinary,
                IsVerb = isVerb,
                IsMadeOf = words.Signs.IsContainer(noun) || ofMaterial.Contains(secret),
                Accented = accented,
                Plain = plain,
            };
            tree.Insert([noun], ending);
            if (!isOrdinary)
                misspelt.AddAlone(noun, bare);
        }
    }

    // 千鳥 for a 銀の千鳥; one Chinese letter, which is part of many words, only where it is put before the reader (Surroundings.IsPutInRun).
    private void AddHeadsOfRuns(Func<int, bool> isThing)
    {
        foreach (var owners in runNouns.Where(one => one.Noun is [_, _, ..] or [>= '\u4E00']).ToLookup(one => one.Noun))
        {
            var ((secret, _, isMadeOf), noun) = (owners.First(), owners.Key);
            var written = Written(noun, out var bare);
            if (!isThing(secret) || owners.Any(owner => owner.Secret != secret))
                continue;
            if (words.NumberOf(string.Concat(bare)) is var whole && Is(whole, WordRole.Everyday) && !words.Signs.IsHoldable(whole))
                continue;
            tree.Insert(written, new(secret, Sureness.Likely, Casing.Head) { Head = noun, IsOrdinary = noun.Length == 1, IsMadeOf = isMadeOf });
            foreach (var reading in JapaneseReadings.Of(noun).Where(other => other.Length >= ShortestHead))
                AddReading(secret, reading, Casing.Head);
        }
    }

    /// <summary>
    /// Adds a phrase in which no word means what it is called, with strokes between words of which it has one, if a name has a word of it; its mentions
    /// have the number of no secret. Called behind the last name.
    /// </summary>
    /// <param name="phrase">The phrase.</param>
    /// <param name="isNamed">Whether it stands in a name; asked of few.</param>
    public void AddIdiom(string phrase, Func<string, bool> isNamed)
    {
        if (phrase.IndexOf('/', StringComparison.Ordinal) is >= 0 and var stroke)
        {
            var from = phrase.LastIndexOf(' ', stroke) + 1;
            var to = phrase.IndexOf(' ', stroke) is >= 0 and var space ? space : phrase.Length;
            foreach (var one in phrase[from..to].Split('/'))
                AddIdiom(phrase[..from] + one + phrase[to..], isNamed);
            return;
        }

        reader.Read(phrase);
        var ofNames = new List<int>();
        foreach (var word in reader.Words)
        {
            if (words.NumberOf(reader.Bare(word)) is >= 0 and var number && named.Contains(number))
                ofNames.Add(number);
        }

        if (ofNames.Count == 0 || isNamed(phrase))
            return;
        figurative.UnionWith(ofNames);
        List<int> written = [];
        foreach (var word in reader.Words)
            written.Add(words.Add(reader.Bare(word)));
        tree.Insert([.. written], new(Idiom, Sureness.Sure, phrase.EndsWith('~') ? Casing.Open : Casing.Any));
    }

    // "hivetool" for a hive tool: any two neighbours written as one.
    private void InsertJoined(int[] written, string[] bare, Ending ending)
    {
        for (var i = 0; i + 1 < written.Length; i++)
        {
            // "Stage 1 2" is no "Stage 12".
            var areFigures = char.IsAsciiDigit(bare[i][^1]) && char.IsAsciiDigit(bare[i + 1][0]);
            if (!areFigures && !Is(written[i], WordRole.Preposition) && !Is(written[i + 1], WordRole.Preposition))
                tree.Insert([.. written[..i], words.Add(bare[i] + bare[i + 1]), .. written[(i + 2)..]], ending);
        }
    }

    /// <summary>Makes the words of a name matter, without looking for the name yet.</summary>
    public void Learn(string name) => Written(name, out _);

    /// <summary>The words of a name that tell something, in small letters.</summary>
    public IEnumerable<int> TellingWords(string name)
    {
        var all = Written(name, out _);
        return words.Language.HyphensTell && name.Contains('-', StringComparison.Ordinal)
            ? all
            : all.Where(word => !Is(word, WordRole.Determiner | WordRole.Function));
    }

    /// <summary>Adds every mention to a list. No name may be added afterwards.</summary>
    public void In(WordReader text, string source, List<Mention> found) =>
        (walk ??= new(words, tree, turned, misspelt, runs, figurative)).In(text, source, found);

    private bool Is(int word, WordRole role) => (words.RoleOf(word) & role) != WordRole.None;

    private int[] Written(string name, out string[] bare)
    {
        reader.Read(name);
        List<int> written = [];
        List<string> letters = [];
        foreach (var word in reader.Words)
        {
            var number = words.Add(reader.Bare(word));
            // The "a" of "a1" is no article, nor is the "lé" of "lé de soie".
            if (Is(number, WordRole.Determiner) && !IsGlued(word) && !name.AsSpan(word.Start, word.End - word.Start).ContainsAny(Accents))
                continue;
            written.Add(number);
            letters.Add(reader.Bare(word).ToString());
        }

        bare = [.. letters];
        return [.. written];
    }

    private bool IsGlued(in Word word)
    {
        foreach (var other in reader.Words)
        {
            if (other.Start == word.End && other.Gap == Gap.None)
                return true;
        }

        return false;
    }
}
