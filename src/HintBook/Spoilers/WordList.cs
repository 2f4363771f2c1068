using System.Collections.Concurrent;
using System.Numerics;
using HintBook.Spoilers.Languages;

namespace HintBook.Spoilers;

/// <summary>The words that matter: those of the secrets, and those of a <see cref="SearchLanguage"/>. All others are just words.</summary>
internal sealed class WordList
{
    private const int LongestWord = 64;
    private const int ShortestStem = 2;
    private const int MostFolded = 3;
    private const uint HashStart = 2166136261;
    private static readonly ConcurrentDictionary<string, WordList> Made = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> numbers;
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly List<WordRole> roles;
    private readonly List<Figure?> figures;
    private readonly string[] prefixes;
    private readonly bool isEnglish;
    private ulong[] beginnings = [];
    private WordSigns signs = new();

    /// <summary>Starts with the words of a language.</summary>
    public WordList(SearchLanguage language)
        : this(Made.GetOrAdd(language.Code, static (_, given) => OfLanguage(given), language), language)
    {
    }

    private WordList(WordList? from, SearchLanguage language)
    {
        (Language, isEnglish) = (language, language == English.Language);
        numbers = from is null ? new(StringComparer.Ordinal) : new(from.numbers, StringComparer.Ordinal);
        roles = from is null ? [] : [.. from.roles];
        figures = from is null ? [] : [.. from.figures];
        lookup = numbers.GetAlternateLookup<ReadOnlySpan<char>>();
        prefixes = language.Prefixes.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        signs = from?.signs ?? signs;
    }

    /// <summary>The language.</summary>
    public SearchLanguage Language { get; }

    private static WordList OfLanguage(SearchLanguage language)
    {
        var list = new WordList(null, language);
        var reader = new WordReader(new WordList(null, SearchLanguage.Unknown));
        foreach (var (words, role) in RoledWords.Of(language))
            Give(words, role);
        foreach (var (word, figure) in language.Figures)
            list.figures[list.Add(BareOf(word, reader))] = figure;
        list.signs = new(language, word => list.Add(BareOf(word, reader)));
        // "Encontrarte", "cógelo", خذها: what stands behind verbs as one word with them.
        foreach (var verb in language.Objects.Handling.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (var pronoun in language.Objects.BehindVerbs.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                list.Alias(BareOf(verb + pronoun, reader), list.Add(BareOf(verb, reader)));
        }

        for (var number = 0; number < list.roles.Count; number++)
        {
            list.roles[number] |= (list.signs.PlaceOf(number) != 0 ? WordRole.Place : WordRole.None)
                | (list.signs.LetterOf(number) != '\0' ? WordRole.Letter : WordRole.None);
        }

        foreach (var group in language.Variants.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var forms = group.Split('/');
            var number = list.Add(BareOf(forms[0], reader));
            foreach (var form in forms[1..])
                list.Alias(BareOf(form, reader), number);
        }

        return list;

        void Give(string words, WordRole role)
        {
            foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                list.roles[list.Add(BareOf(word, reader))] |= role;
        }
    }

    /// <summary>The number of a word of bare letters, in any of its forms; -1 if it doesn't matter.</summary>
    public int NumberOf(ReadOnlySpan<char> bare)
    {
        if (bare.Length > LongestWord)
            return -1;
        Span<char> folded = stackalloc char[LongestWord];
        bare.CopyTo(folded);
        var number = NumberOfFolded(folded[..bare.Length]);
        return number >= 0 || prefixes.Length == 0 ? number : WithoutPrefix(bare, folded);
    }

    /// <summary>The number of a word written as one, which is folded in place; -1 if it doesn't matter.</summary>
    public int NumberOfFolded(Span<char> word) => lookup.TryGetValue(word[..Folded(word)], out var number) ? number : -1;

    /// <summary>The number of a word, which matters from now on.</summary>
    public int Add(ReadOnlySpan<char> bare)
    {
        var length = Math.Min(bare.Length, LongestWord);
        Span<char> folded = stackalloc char[LongestWord];
        bare[..length].CopyTo(folded);
        var word = folded[..Folded(folded[..length])];
        if (lookup.TryGetValue(word, out var number))
            return number;
        Span<char> room = stackalloc char[LongestWord];
        if (prefixes.Length > 0 && WithoutPrefix(bare[..length], room) is >= 0 and var known)
            return known;
        lookup[word] = roles.Count;
        Begin(word);
        roles.Add(WordRole.None);
        figures.Add(null);
        return roles.Count - 1;
    }

    /// <summary>Makes a further form of a word known by the number of that word, unless it is known as another one.</summary>
    public void Alias(ReadOnlySpan<char> bare, int number)
    {
        if (bare.Length is 0 or > LongestWord)
            return;
        Span<char> folded = stackalloc char[LongestWord];
        bare.CopyTo(folded);
        var word = folded[..Folded(folded[..bare.Length])];
        if (lookup.TryAdd(word, number))
            Begin(word);
    }

    /// <summary>
    /// Whether two words written as one could be a word that matters. Nearly always no, and then without writing them together: a filter (Bloom 1970, one
    /// hash) keeps the beginnings of all words that matter.
    /// </summary>
    public bool MayBegin(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        if (!isEnglish)
            return true;
        if (beginnings.Length == 0)
            BeginAll();
        var hash = HashStart;
        foreach (var letter in left)
            hash = Hash(hash, letter);
        // What may be folded away at the end isn't looked at.
        foreach (var letter in right[..Math.Max(0, right.Length - MostFolded)])
            hash = Hash(hash, letter);
        return (beginnings[(hash / 64) & (uint)(beginnings.Length - 1)] & (1UL << (int)(hash % 64))) != 0;
    }

    private void BeginAll()
    {
        beginnings = new ulong[(int)BitOperations.RoundUpToPowerOf2((uint)numbers.Count)];
        foreach (var word in numbers.Keys)
            Begin(word);
    }

    private void Begin(ReadOnlySpan<char> word)
    {
        if (beginnings.Length == 0)
            return;
        var hash = HashStart;
        foreach (var letter in word)
        {
            hash = Hash(hash, letter);
            beginnings[(hash / 64) & (uint)(beginnings.Length - 1)] |= 1UL << (int)(hash % 64);
        }
    }

    // FNV-1a, 32 bits (from memory).
    private static uint Hash(uint hash, char letter) => unchecked((hash ^ letter) * 16777619);

    /// <summary>Adds words of bare letters, each stem before the words that are made of it with a prefix, for those are longer.</summary>
    public void AddAll(IEnumerable<string> bare)
    {
        foreach (var word in bare.OrderBy(FoldedLength).ThenBy(word => word, StringComparer.Ordinal))
            Add(word);
    }

    /// <summary>What kind of word it is.</summary>
    public WordRole RoleOf(int number) => number < 0 ? WordRole.None : roles[number];

    /// <summary>What words stand for.</summary>
    public WordSigns Signs => signs;

    /// <summary>What it counts, if it is a number word.</summary>
    public Figure? FigureOf(int number) => number < 0 ? null : figures[number];

    /// <summary>Whether a text says that a word has so many letters.</summary>
    public bool SaysLength(WordReader text, int letters)
    {
        for (var i = 1; i < text.Words.Length; i++)
        {
            var before = text.Words[i - 1];
            if ((signs.HintOf(text.Words[i].Id) & PieceHint.Letter) != PieceHint.None
                && (FigureOf(before.Id)?.Value == letters || (int.TryParse(text.Bare(before), out var count) && count == letters)))
                return true;
        }

        return false;
    }

    /// <summary>Whether a word has the "and" written before it as one with it.</summary>
    public bool IsBehindAnd(ReadOnlySpan<char> bare)
    {
        if (prefixes.Length == 0 || !bare.StartsWith(Language.And) || bare.Length > LongestWord)
            return false;
        Span<char> folded = stackalloc char[LongestWord];
        bare.CopyTo(folded);
        return !lookup.ContainsKey(folded[..Folded(folded[..bare.Length])]);
    }

    private int WithoutPrefix(ReadOnlySpan<char> bare, Span<char> room)
    {
        foreach (var prefix in prefixes)
        {
            if (bare.Length < prefix.Length + ShortestStem || !bare.StartsWith(prefix))
                continue;
            var rest = room[..(bare.Length - prefix.Length)];
            bare[prefix.Length..].CopyTo(rest);
            if (lookup.TryGetValue(rest[..Folded(rest)], out var number))
                return number;
        }

        return -1;
    }

    // Asked for every word of every text: English without the detour.
    private int Folded(Span<char> word) => isEnglish ? EnglishForms.Fold(word) : Language.Fold(word);

    private int FoldedLength(string bare)
    {
        Span<char> room = stackalloc char[LongestWord];
        var length = Math.Min(bare.Length, LongestWord);
        bare.AsSpan(0, length).CopyTo(room);
        return Folded(room[..length]);
    }

    private static string BareOf(string word, WordReader reader)
    {
        reader.Read(word);
        var bare = "";
        foreach (var part in reader.Words)
            bare += reader.Bare(part).ToString();
        return bare;
    }
}
