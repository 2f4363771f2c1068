using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>What a word does in a text, as far as that matters.</summary>
internal enum WordUse : byte
{
    /// <summary>It may be part of a name.</summary>
    Plain,

    /// <summary><c>the</c>, <c>your</c>: no part of a name.</summary>
    Determiner,

    /// <summary><c>of</c>, <c>under</c>: determiners may follow it within a name.</summary>
    Preposition,

    /// <summary><c>and</c>, <c>then</c>: said between the figures of a code.</summary>
    Between,
}

/// <summary>Gives each word that matters a number: all forms of a word have the same.</summary>
internal sealed class WordNumbers
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly List<WordUse> uses = [];
    private readonly List<NumberWord?> values = [];

    public WordNumbers(AuditLanguage language)
    {
        Language = language;
        lookup = numbers.GetAlternateLookup<ReadOnlySpan<char>>();
        UseAs(WordUse.Determiner, language.Determiners);
        UseAs(WordUse.Preposition, language.Prepositions);
        UseAs(WordUse.Between, language.Between);

        foreach (var same in language.Same)
        {
            var words = FoldedText.BareWords(same).ToArray();
            foreach (var word in words[1..])
                numbers[word] = Number(words[0]);
        }

        foreach (var (word, value) in language.NumberWords)
            values[Number(word)] = value;
        Spoken = language.Numbers is { } spoken ? new(spoken(), language.AndBefore, Add) : null;
    }

    /// <summary>The language of the texts.</summary>
    public AuditLanguage Language { get; }

    /// <summary>Numbers as they are said; null where they are made by the rules of English.</summary>
    public SpokenNumbers? Spoken { get; }

    /// <summary>How many words matter.</summary>
    public int Count => uses.Count;

    /// <summary>A word's number, or -1 if it doesn't matter.</summary>
    public int Of(ReadOnlySpan<char> word) => lookup.TryGetValue(word, out var number) ? number : -1;

    /// <summary>Makes a word matter, with all its forms.</summary>
    /// <param name="word">A word of small bare letters.</param>
    /// <param name="forms">All its forms.</param>
    public int Add(string word, IEnumerable<string> forms)
    {
        string[] all = [.. forms];
        var known = all.Where(numbers.ContainsKey).Select(form => numbers[form]).Append(-1).First();
        var number = numbers.TryGetValue(word, out var own) ? own : known >= 0 ? known : Number(word);
        foreach (var form in all)
            numbers.TryAdd(form, number);
        return number;
    }

    /// <summary>What a word does.</summary>
    public WordUse UseOf(int number) => number < 0 ? WordUse.Plain : uses[number];

    /// <summary>What a number word counts; null for other words.</summary>
    public NumberWord? ValueOf(int number) => number < 0 ? null : values[number];

    private void UseAs(WordUse use, string words)
    {
        foreach (var word in FoldedText.BareWords(words))
            uses[Number(word)] = use;
    }

    private int Number(string word)
    {
        if (numbers.TryGetValue(word, out var number))
            return number;
        numbers[word] = uses.Count;
        uses.Add(WordUse.Plain);
        values.Add(null);
        return uses.Count - 1;
    }
}
