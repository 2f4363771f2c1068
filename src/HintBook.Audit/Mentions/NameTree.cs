using System.Buffers;
using System.Runtime.InteropServices;
using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>All names as one tree of words: a text is searched in one pass, whatever the number of names.</summary>
internal sealed class NameTree(WordNumbers numbers, TurnedNames turned, Objects objects, WordCodes wordCodes)
{
    private const char FirstCaseless = '\u0590';
    private const int ShortestInCompound = 6, ShortestBeside = 3, ShortestNoun = 3, LongestCommon = 3, ShortestEnd = 4, ShortestSmall = 4, MostWords = 32;
    private static readonly SearchValues<char> Umlauts = SearchValues.Create("äöüÄÖÜ");
    private readonly Dictionary<(int Node, int Word), int> children = [];
    private readonly Dictionary<string, Owners> nouns = new(StringComparer.Ordinal);
    private readonly HashSet<string> ordinary = [.. FoldedText.BareWords(RemarksIn.Of(numbers.Language.Code).Ordinary)];
    private readonly HashSet<string> fixtures = [.. FoldedText.BareWords(ActsIn.Of(numbers.Language.Code).Fixtures)];
    private readonly HashSet<string> beforeNouns = [.. FoldedText.BareWords(SynonymsIn.BeforeNouns(numbers.Language.Code))];
    private readonly HashSet<string> holders = [.. FoldedText.BareWords(ActsIn.Of(numbers.Language.Code).Holders)];
    private readonly Dictionary<string, (SortedSet<int> Secrets, string Written)> ends = new(StringComparer.Ordinal);
    private readonly UnspacedNouns unspaced = new();

    private readonly List<List<Ending>?> endings = [null];
    private readonly Dictionary<string, (FoldedText Text, HashSet<string> Determiners)> readers = new(StringComparer.Ordinal);

    /// <summary>Adds a name.</summary>
    /// <param name="secret">Its place in the table.</param>
    /// <param name="spelling">The name.</param>
    /// <param name="canTurn">Whether its words may stand apart.</param>
    /// <returns>Whether it has a word to look for.</returns>
    public bool Add(int secret, AuditSpelling spelling, bool canTurn) => Add(secret, spelling, canTurn, isRewritten: false);

    private bool Add(int secret, AuditSpelling spelling, bool canTurn, bool isRewritten)
    {
        var language = spelling.Language is { } tag ? AuditLanguages.For(tag) : numbers.Language;
        if (!readers.TryGetValue(language.Code, out var reader))
            readers[language.Code] = reader = (new(language), FoldedText.BareWords(language.Determiners).ToHashSet(StringComparer.Ordinal));
        var (folded, determiners) = reader;
        folded.Read(spelling.Text, isProse: false);
        List<string> words = [], all = [];
        string? accented = null;
        foreach (var word in folded.Words)
        {
            var bare = folded.Of(word).ToString();
            var isAccented = IsAccented(spelling.Text.AsSpan(word.Start..word.End));
            // "Le" is no part of a name, "lé" is.
            if (bare.Length > 0 && (isAccented || !determiners.Contains(bare)))
                words.Add(bare);
            if (bare.Length > 0)
                all.Add(bare);
            if (isAccented && numbers.UseOf(numbers.Of(bare)) != WordUse.Plain)
                accented ??= spelling.Text[word.Start..word.End];
        }

        if (words.Count == 0)
            return false;
        // Without its article "Le Four" would be the "four" of English.
        if (words.Count == 1 && language.Code != numbers.Language.Code)
            words = all;
        // So many words tell a name; each more would be another spelling, with two words written as one, of all of them.
        if (words.Count > MostWords)
            words.RemoveRange(MostWords, words.Count - MostWords);
        var noun = language.HasCompounds && words.Count == 1 && char.IsUpper(spelling.Text.FirstOrDefault(letter => char.IsUpper(letter))) ? words[0] : null;
        var ending = new Ending(secret, spelling.Sure && (accented is null || words.Count > 1), words.Count, spelling.As, noun, spelling.Text)
        {
            Accented = words.Count == 1 ? accented : null,
        };
        if (spelling.IsExact || spelling.As == SpelledAs.Letters)
            language = language with { Forms = language.Kinship.HasRoots && spelling.As == SpelledAs.Letters ? WithArticle : static (word, _) => [word] };
        if (spelling.As == SpelledAs.Thing)
            language = language with { Forms = WithDiminutives(language) };
        Insert(words, ending, language);
        // "Bone thimble" for a thimble of bone.
        if (language.Code == "en" && words is [var thing, "of", var stuff])
            Insert([stuff, thing], ending, language);
        // 銅の板 for a 銅板.
        if (language.IsUnspaced && words is [[>= '\u4E00' and <= '\u9FFF'], [>= '\u4E00' and <= '\u9FFF']])
            Insert([words[0], "の", words[1]], ending with { Sure = false }, language);
        if (language.IsUnspaced && spelling.As is SpelledAs.Words or SpelledAs.Thing)
        {
            foreach (var other in KanaOf.Name(string.Concat(spelling.Text.Where(letter => !char.IsWhiteSpace(letter)))))
                Insert([.. other.Select(letter => $"{letter}")], ending with { Sure = false, Written = other, IsReading = true }, language);
        }

        if (language.IsUnspaced && spelling.As is SpelledAs.Words or SpelledAs.Thing)
        {
            foreach (var other in KanaOf.WordsFor(string.Concat(words)))
                Insert([.. other.Select(letter => $"{letter}")], ending with { Sure = false, Written = other, IsReading = true }, language);
        }

        if (words.Count > 2 && !language.IsUnspaced)
            Insert([string.Concat(words)], ending, language);
        // "Embudito" for an embudo; a small one may be another thing.
        if (words.Count == 1 && spelling.As == SpelledAs.Words && spelling.Sure && !spelling.IsExact && language.Code == numbers.Language.Code
            && words[0].Length >= ShortestSmall && language.Diminutives.Length > 0)
            Insert(words, ending with { Sure = false, Noun = null }, language with { Forms = Diminutives(language) });
        if (noun is not null && canTurn && spelling.As == SpelledAs.Words && spelling.Sure && language.Code == numbers.Language.Code)
            Ends(secret, noun, spelling.Text, isRewritten);
        if (canTurn && spelling.As == SpelledAs.Words && language.Code == numbers.Language.Code)
        {
            if (!isRewritten)
                Turn(secret, words, language);
            Noun(secret, words, spelling, folded, language.HasCompounds ? OwnerAt(folded, words) : 0);
            if (language.IsUnspaced)
                unspaced.Add(secret, spelling.Text);
        }

        for (var i = 0; i + 1 < words.Count && !language.IsUnspaced; i++)
            Insert([.. words[..i], words[i] + words[i + 1], .. words[(i + 2)..]], ending, language);
        // In addresses "moerser" is a Mörser. Last, for the reader of names has read another one then.
        if (language.HasCompounds && !isRewritten && WithoutUmlauts(spelling.Text) is { } plain)
            Add(secret, spelling with { Text = plain }, canTurn, isRewritten: true);
        return true;
    }

    // "Write الصقيع without its article."
    private static IEnumerable<string> WithArticle(string word, bool isAlone) =>
        isAlone ? [word, $"ال{word}", $"وال{word}", $"فال{word}", $"بال{word}", $"لل{word}"] : [word];

    private static Func<string, bool, IEnumerable<string>> WithDiminutives(AuditLanguage language) => (word, isAlone) =>
        language.Forms(word, isAlone).Concat(Diminutives(language)(word, isAlone)).Distinct();

    private static Func<string, bool, IEnumerable<string>> Diminutives(AuditLanguage language) => (word, _) =>
        language.Diminutives.SelectMany(ending => (string[])[word + ending, word[..^1] + ending]).Distinct();

    private static bool HasRewritten(ReadOnlySpan<char> word) =>
        word.Contains("ae", StringComparison.Ordinal) || word.Contains("oe", StringComparison.Ordinal) || word.Contains("ue", StringComparison.Ordinal);

    // Null for a name without any.
    private static string? WithoutUmlauts(string name) => !name.AsSpan().ContainsAny(Umlauts)
        ? null
        : name.Replace("ä", "ae", StringComparison.Ordinal).Replace("ö", "oe", StringComparison.Ordinal).Replace("ü", "ue", StringComparison.Ordinal)
            .Replace("Ä", "Ae", StringComparison.Ordinal).Replace("Ö", "Oe", StringComparison.Ordinal).Replace("Ü", "Ue", StringComparison.Ordinal);

    // The noun of a name of several words: the last, or the one before a preposition, or in some languages the first.
    private void Noun(int secret, List<string> words, AuditSpelling spelling, FoldedText folded, int owner)
    {
        if (words.Count is < 2 or > 4 || numbers.Language.IsUnspaced || !spelling.Sure || !spelling.Text.Contains(' ', StringComparison.Ordinal))
            return;
        var tie = words.FindIndex(word => (numbers.UseOf(numbers.Of(word)) & WordUse.Preposition) != WordUse.Plain);
        var isTied = tie > 0 && tie < words.Count - 1;
        var first = Math.Max(0, words.FindIndex(word => !beforeNouns.Contains(word)));
        var noun = words[owner > 0 ? owner - 1 : isTied ? tie - 1 : numbers.Language.Code is "fr" or "es" or "ar" ? first : words.Count - 1];
        if (holders.Contains(noun) && ContentOf(words, words.IndexOf(noun)) is { } content && !fixtures.Contains(content))
            Own(secret, content, words, spelling, folded, isContent: true);
        var isOfGrammar = numbers.UseOf(numbers.Of(noun)) != WordUse.Plain;
        if ((isOfGrammar ? !IsAccented(AsWritten(folded, spelling.Text, noun)) : noun.Length < ShortestNoun) || fixtures.Contains(noun))
            return;
        Own(secret, noun, words, spelling, folded, isContent: false);
    }

    private void Own(int secret, string noun, List<string> words, AuditSpelling spelling, FoldedText folded, bool isContent)
    {
        if (!nouns.TryGetValue(noun, out var owners))
            nouns[noun] = owners = new([], [], AsWritten(folded, spelling.Text, noun));
        owners.IsContent &= isContent;
        owners.Secrets.Add(secret);
        owners.Others.UnionWith(words.Where(word => word != noun && numbers.UseOf(numbers.Of(word)) == WordUse.Plain));
    }

    // "Bottle of ox gall", "fiole de musc", "Topf mit Papp", "Rolle Messingdraht": what is in it.
    private string? ContentOf(List<string> words, int holder)
    {
        var rest = words.Skip(holder + 1).Where(word => numbers.UseOf(numbers.Of(word)) == WordUse.Plain).ToArray();
        var isTied = holder + 1 < words.Count && numbers.UseOf(numbers.Of(words[holder + 1])) != WordUse.Plain;
        if (rest.Length == 0 || (!isTied && numbers.Language.Code is not ("de" or "ar")))
            return null;
        return numbers.Language.Code is "fr" or "es" or "ar" ? rest[0] : rest[^1];
    }

    private static bool IsAccented(ReadOnlySpan<char> word) => word.ContainsAnyInRange('\u00C0', '\u024F');

    // "Dé" is a thimble, "de" is a word of grammar.
    private static bool IsWithItsAccents(ReadOnlySpan<char> said, string accented) =>
        said.StartsWith(accented, StringComparison.OrdinalIgnoreCase) && said.Length - accented.Length <= 1;

    // With the accents that the author gave it.
    private static string AsWritten(FoldedText name, string text, string noun)
    {
        foreach (var word in name.Words)
        {
            if (name.Of(word).SequenceEqual(noun))
                return text[word.Start..word.End];
        }

        return noun;
    }

    // "Der Ritter" for a Zinnritter: of all ends of a compound only words stand in texts.
    private void Ends(int secret, string noun, string written, bool isRewritten)
    {
        for (var cut = ShortestBeside; cut <= noun.Length - ShortestEnd; cut++)
        {
            // "Erste" is the end of "buerste" only as it is rewritten.
            if (fixtures.Contains(noun[cut..]) || (isRewritten && !HasRewritten(noun.AsSpan(cut))))
                continue;
            if (!ends.TryGetValue(noun[cut..], out var owners))
                ends[noun[cut..]] = owners = ([], written);
            owners.Secrets.Add(secret);
        }
    }

    /// <summary>Makes the nouns count by themselves that only one name has; called once, behind the last name.</summary>
    public void Freeze()
    {
        foreach (var (noun, owners) in nouns.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            if (owners.Secrets.Count > 1 || IsAnotherName(noun, owners.Secrets.First()))
                continue;
            var ending = new Ending(owners.Secrets.First(), Sure: false, 1, SpelledAs.Words, null, owners.Noun, owners.Others)
            {
                IsCommon = owners.IsContent || ordinary.Contains(noun) || noun.Length <= LongestCommon,
                Accented = numbers.UseOf(numbers.Of(noun)) != WordUse.Plain ? owners.Noun : null,
            };
            Insert([noun], ending, noun.Length < ShortestSmall ? numbers.Language : numbers.Language with { Forms = WithDiminutives(numbers.Language) });
        }

        foreach (var (end, owners) in ends.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            if (owners.Secrets.Count == 1 && !nouns.ContainsKey(end))
                Insert([end], new(owners.Secrets.First(), Sure: false, 1, SpelledAs.Words, null, owners.Written, []) { IsCommon = true }, numbers.Language);
        }

        unspaced.Freeze();
    }

    // "Smoker" is the whole name of another thing, and so no "bee smoker".
    private bool IsAnotherName(string noun, int secret) =>
        numbers.Of(noun) is >= 0 and var word && children.TryGetValue((0, word), out var node)
        && endings[node] is { } here && here.Exists(ending => ending.Secret != secret && !ending.IsNoun);

    // "Taktstock des Kapellmeisters": how many words stand before the article of the owner; 0 if there is none.
    private static int OwnerAt(FoldedText name, List<string> words)
    {
        var before = 0;
        foreach (var word in name.Words)
        {
            var bare = name.Of(word);
            if (before > 0 && bare is "des" or "der" or "eines" or "einer")
                return before;
            before += before < words.Count && bare.SequenceEqual(words[before]) ? 1 : 0;
        }

        return 0;
    }

    private void Turn(int secret, List<string> words, AuditLanguage language)
    {
        if (language.IsUnspaced)
        {
            foreach (var name in UnspacedParts.InBothKana(string.Concat(words)))
                turned.AddStretches(secret, UnspacedParts.Of(name), areWords: true);
            if (UnspacedParts.Singly(string.Concat(words)) is { Length: > 2 } single)
                turned.AddStretches(secret, single, areWords: false);
            return;
        }

        string[] telling = [.. words.Where((word, i) =>
            (i == 0 && language.Code == "es") || (numbers.UseOf(numbers.Of(word)) & (WordUse.Preposition | WordUse.Between)) == WordUse.Plain)];
        var isNegative = words.Exists(word => word is "ohne" or "without" or "sans" or "sin" or "بلا" or "بدون")
            || Array.Exists(telling, word => word.EndsWith("less", StringComparison.Ordinal) || word.EndsWith("los", StringComparison.Ordinal));
        if (telling.Length > 1 || (language.HasCompounds && words is [{ Length: >= ShortestBeside + ShortestEnd }]))
            turned.Add(secret, telling, isNegative);
    }

    /// <summary>Adds every mention in a text to a list.</summary>
    /// <param name="text">The text as words.</param>
    /// <param name="ids">The number of each word.</param>
    /// <param name="source">The text as it is written.</param>
    /// <param name="isPicture">Whether it is the address of a picture, where a noun is what it shows.</param>
    /// <param name="found">Gets the mentions.</param>
    public void In(FoldedText text, ReadOnlySpan<int> ids, string source, bool isPicture, List<FoundSecret> found)
    {
        unspaced.In(text, source, isPicture, found);
        for (var first = 0; first < ids.Length; first++)
        {
            Step(0, first, first, text, ids, source, isPicture, found);
            if (numbers.Language.HasCompounds && ids[first] < 0)
                Within(first, text, found);
        }
    }

    // A name that is part of a longer word may be one: "Rauchgerätdeckel".
    private void Within(int at, FoldedText text, List<FoundSecret> found)
    {
        var word = text.Of(text.Words[at]);
        for (var cut = ShortestBeside; cut <= word.Length - ShortestBeside; cut++)
        {
            if (cut >= ShortestInCompound)
                Part(numbers.Of(word[..cut]), at, found);
            if (word.Length - cut >= ShortestInCompound)
                Part(numbers.Of(word[cut..]), at, found);
        }
    }

    private void Part(int part, int at, List<FoundSecret> found)
    {
        if (part >= 0 && children.TryGetValue((0, part), out var node))
        {
            found.AddRange(
                from ending in endings[node] ?? []
                where ending.As == SpelledAs.Words && !ending.IsNoun
                select new FoundSecret(ending.Secret, at, at, Sure: false, ending.Words, IsCode: false));
        }
    }

    // Takes the word at a place, or the word that it makes with the one behind its hyphen.
    private void Step(int node, int first, int at, FoldedText text, ReadOnlySpan<int> ids, string source, bool isPicture, List<FoundSecret> found)
    {
        if (ids[at] >= 0 && children.TryGetValue((node, ids[at]), out var next))
            Arrive(next, first, at, text, ids, source, isPicture, found);
        if (at + 1 < ids.Length && text.Words[at + 1].Parting == Parting.Hyphen
            && Joined(text, at) is >= 0 and var joined && children.TryGetValue((node, joined), out next))
            Arrive(next, first, at + 1, text, ids, source, isPicture, found);
    }

    private void Arrive(int node, int first, int last, FoldedText text, ReadOnlySpan<int> ids, string source, bool isPicture, List<FoundSecret> found)
    {
        foreach (var ending in endings[node] ?? [])
        {
            var (start, end) = (text.Words[first].Start, text.Words[last].End);
            // Without capitals a code is written like any other word.
            var isCaseless = !source.AsSpan(start..end).ContainsAnyInRange('A', 'z') && source[start] >= FirstCaseless;
            if (ending.As is SpelledAs.Capitals or SpelledAs.Letters && (isCaseless || !IsCapital(source.AsSpan(start..end))))
            {
                if ((isCaseless || ending.As == SpelledAs.Letters) && wordCodes.IsSet(text, source, first))
                    found.Add(new(ending.Secret, first, last, Sure: false, Words: 1, IsCode: true));
                continue;
            }

            if (ending.Accented is { } accented && !IsWithItsAccents(source.AsSpan(start..end), accented))
                continue;
            if (isPicture && (ending.IsNoun || ending.As == SpelledAs.Thing))
            {
                if (objects.NamePicture(text, source, first, last, ending.Written))
                    found.Add(new(ending.Secret, first, last, Sure: false, ending.Words, IsCode: false));
                continue;
            }

            // Where another word of its name is said as well, the search for names apart judges.
            if (ending.Others is { } others && !objects.StandHandled(text, ids, source, first, ending.Written)
                && (IsPartedFrom(others, text, first) || !objects.StandPut(text, ids, source, first, ending.Written, ending.IsCommon))
                && !objects.StandShown(text, ids, source, first, ending.Written, ending.IsCommon)
                && (ending.IsCommon || HasAny(text, others) || !objects.StandAlone(text, ids, source, first, ending.Written)))
                continue;
            if (ending.As == SpelledAs.Thing && !objects.Stand(text, ids, source, first, last, ending.Written))
                continue;
            if (ending.As == SpelledAs.Words && objects.AreInIdiom(text, first, last))
                continue;
            // German nouns are written with a capital; without one only the name itself may be meant, in an address or by mistake.
            var isSmall = ending.Noun is not null && char.IsLower(source[start]);
            if (isSmall && !text.Of(text.Words[first]).SequenceEqual(ending.Noun))
                continue;
            // خاتمة, an epilogue, is no خاتم; خاتمه is his ring.
            if (source[end - 1] == 'ة' && ending.Words == 1 && ending.Written[^1] is not ('ة' or 'ه' or 'ي'))
                continue;
            if (numbers.Language.IsUnspaced && WordBoundary.IsPartOfWord(source, start, end))
                continue;
            if (ending.IsReading && (!WordBoundary.IsWrittenAs(source, start, end, ending.Written) || !WordBoundary.IsApart(source, start, end)
                || WordBoundary.MayEndAnother(source, start, end)))
                continue;
            var isCertain = ending.Words > 1 || last > first || ending.As is SpelledAs.Capitals or SpelledAs.Letters
                || (objects.IsCertain(text, ids, first) && !objects.AreAnySeveral(text, ids, first, ending.Written)
                    && !objects.AreOfCompound(text, ids, source, first, last));
            var isSure = ending.Sure && !isSmall && isCertain && !(numbers.Language.IsUnspaced && WordBoundary.MayBePartOfWord(source, start, end));
            found.Add(new(ending.Secret, first, last, isSure, ending.Words, IsCode: false));
        }

        var at = last + 1;
        var isBehindPreposition = numbers.UseOf(ids[last]).HasFlag(WordUse.Preposition);
        while (isBehindPreposition && at < ids.Length && GoesOn(text.Words[at]) && numbers.UseOf(ids[at]).HasFlag(WordUse.Determiner))
            at++;
        if (at < ids.Length && GoesOn(text.Words[at]))
            Step(node, first, at, text, ids, source, isPicture, found);
    }

    // "A hive, tool in hand": a mark parts the words of a name.
    private static bool IsPartedFrom(HashSet<string> others, FoldedText text, int at) =>
        at > 0 && text.Words[at].Parting >= Parting.Comma && others.Contains(text.Of(text.Words[at - 1]).ToString());

    private static bool HasAny(FoldedText text, HashSet<string> words)
    {
        var bySpan = words.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var word in text.Words)
        {
            if (bySpan.Contains(text.Of(word)))
                return true;
        }

        return false;
    }

    private static bool GoesOn(in FoldedWord word) => word.Parting < Parting.Comma;

    private static bool IsCapital(ReadOnlySpan<char> letters)
    {
        foreach (var letter in letters)
        {
            if (char.IsLower(letter))
                return false;
        }

        return true;
    }

    private int Joined(FoldedText text, int at)
    {
        var (left, right) = (text.Words[at], text.Words[at + 1]);
        Span<char> both = stackalloc char[64];
        if (left.Length + right.Length > both.Length)
            return -1;
        text.Of(left).CopyTo(both);
        text.Of(right).CopyTo(both[left.Length..]);
        return numbers.Of(both[..(left.Length + right.Length)]);
    }

    private void Insert(List<string> words, Ending ending, AuditLanguage language)
    {
        var node = 0;
        foreach (var word in words)
        {
            var key = (node, numbers.Add(word, language.Forms(word, words.Count == 1)));
            if (!children.TryGetValue(key, out node))
            {
                node = endings.Count;
                endings.Add(null);
                children[key] = node;
            }
        }

        (endings[node] ??= []).Add(ending);
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Ending(int Secret, bool Sure, int Words, SpelledAs As, string? Noun, string Written, HashSet<string>? Others = null)
    {
        public bool IsNoun => Others is not null;

        /// <summary>Whether it is a noun that many texts have.</summary>
        public bool IsCommon { get; init; }

        /// <summary>As it is written, if it differs from a word of grammar by its accents alone.</summary>
        public string? Accented { get; init; }

        /// <summary>Whether it is another spelling of a name in Japanese.</summary>
        public bool IsReading { get; init; }
    }

    // The secrets whose noun a word is, and the other words of their names.
    private sealed record Owners(SortedSet<int> Secrets, HashSet<string> Others, string Noun)
    {
        /// <summary>Whether it is what a bottle or the like holds.</summary>
        public bool IsContent { get; set; } = true;
    }
}
