using HintBook.Audit.Mentions.Languages;

namespace HintBook.Audit.Mentions;

/// <summary>What a word does in a text, as far as that matters.</summary>
[Flags]
internal enum WordUse : byte
{
    /// <summary>It may be part of a name.</summary>
    Plain = 0,

    /// <summary><c>the</c>, <c>your</c>: no part of a name.</summary>
    Determiner = 1,

    /// <summary><c>of</c>, <c>under</c>: determiners may follow it within a name.</summary>
    Preposition = 1 << 1,

    /// <summary><c>and</c>, <c>then</c>: said between the figures of a code.</summary>
    Between = 1 << 2,

    /// <summary><c>is</c>, <c>when</c>: any other word of grammar.</summary>
    Grammar = 1 << 3,
}

/// <summary>Gives each word that matters a number: all forms of a word have the same.</summary>
internal sealed class WordNumbers
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> lookup;
    private readonly List<WordUse> uses = [];
    private readonly Dictionary<int, int> repeats = [];

    public WordNumbers(AuditLanguage language)
    {
        Language = language;
        lookup = numbers.GetAlternateLookup<ReadOnlySpan<char>>();
        UseAs(WordUse.Determiner, language.Determiners);
        UseAs(WordUse.Preposition, language.Prepositions);
        UseAs(WordUse.Between, language.Between);
        UseAs(WordUse.Grammar, language.Grammar);
        foreach (var same in language.Same)
        {
            var words = FoldedText.BareWords(same).ToArray();
            foreach (var word in words)
            {
                uses[Number(words[0])] |= UseOf(Of(word));
                numbers[word] = Number(words[0]);
                foreach (var before in language.BeforeNumbers)
                    numbers[FoldedText.BareWords(before + word).First()] = Number(words[0]);
            }
        }

        Spoken = new(language, Add);
        foreach (var (i, words) in language.Repeats.Index())
        {
            foreach (var word in FoldedText.BareWords(words))
                repeats[Number(word)] = i + 2;
        }
    }

    /// <summary>The language of the texts.</summary>
    public AuditLanguage Language { get; }

    /// <summary>Numbers as they are said.</summary>
    public SpokenNumbers Spoken { get; }

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

    /// <summary>How often a word says the next figure: <c>double</c>; 0 for other words.</summary>
    public int RepeatsOf(int number) => number < 0 ? 0 : repeats.GetValueOrDefault(number);

    /// <summary>Whether a word is said in numbers.</summary>
    public bool IsSaidInNumbers(int number) => number >= 0 && (Spoken.Has(number) || repeats.ContainsKey(number));

    private void UseAs(WordUse use, string words)
    {
        foreach (var word in FoldedText.BareWords(words))
            uses[Number(word)] |= use;
    }

    private int Number(string word)
    {
        if (numbers.TryGetValue(word, out var number))
            return number;
        numbers[word] = uses.Count;
        uses.Add(WordUse.Plain);
        return uses.Count - 1;
    }
}
