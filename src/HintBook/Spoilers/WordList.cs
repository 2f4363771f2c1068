namespace HintBook.Spoilers;

/// <summary>The words that matter: those of the secrets, and those of the <see cref="Lexicon"/>. All others are just words.</summary>
internal sealed class WordList
{
    private const int LongestWord = 64;
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly List<WordRole> roles = [];
    private readonly List<Figure?> figures = [];
    private readonly bool english;

    /// <summary>Starts with the words of a language; only English has any yet.</summary>
    /// <param name="english">Whether the book is written in English.</param>
    public WordList(bool english)
    {
        this.english = english;
        lookup = numbers.GetAlternateLookup<ReadOnlySpan<char>>();
        if (!english)
            return;
        foreach (var (word, role) in Lexicon.Roles)
            roles[Add(word)] |= role;
        foreach (var (word, figure) in Lexicon.NumberWords)
            figures[Add(word)] = figure;
    }

    /// <summary>The number of a word of bare letters, in any of its forms; -1 if it doesn't matter.</summary>
    public int NumberOf(ReadOnlySpan<char> bare)
    {
        if (bare.Length > LongestWord)
            return -1;
        Span<char> folded = stackalloc char[LongestWord];
        bare.CopyTo(folded);
        return lookup.TryGetValue(folded[..Folded(folded[..bare.Length])], out var number) ? number : -1;
    }

    /// <summary>The number of a word, which matters from now on.</summary>
    public int Add(ReadOnlySpan<char> bare)
    {
        var length = Math.Min(bare.Length, LongestWord);
        Span<char> folded = stackalloc char[LongestWord];
        bare[..length].CopyTo(folded);
        var word = folded[..Folded(folded[..length])];
        if (lookup.TryGetValue(word, out var number))
            return number;
        lookup[word] = roles.Count;
        roles.Add(WordRole.None);
        figures.Add(null);
        return roles.Count - 1;
    }

    /// <summary>What kind of word it is.</summary>
    public WordRole RoleOf(int number) => number < 0 ? WordRole.None : roles[number];

    /// <summary>What it counts, if it is a number word.</summary>
    public Figure? FigureOf(int number) => number < 0 ? null : figures[number];

    private int Folded(Span<char> word) => english ? Inflection.Fold(word) : word.Length;
}
