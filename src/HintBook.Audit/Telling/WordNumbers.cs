namespace HintBook.Audit.Telling;

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
    private readonly bool english;

    public WordNumbers(bool english)
    {
        this.english = english;
        lookup = numbers.GetAlternateLookup<ReadOnlySpan<char>>();
        if (!english)
            return;
        foreach (var (words, use) in (ReadOnlySpan<(string, WordUse)>)
            [
                ("the a an this that these those my your his her its our their", WordUse.Determiner),
                ("of under in inside on from with behind at to over beneath below above beside near", WordUse.Preposition),
                ("and then next", WordUse.Between),
            ])
        {
            foreach (var word in words.Split(' '))
                uses[Number(word)] = use;
        }

        foreach (var (word, value) in NumberWord.All)
            values[Number(word)] = value;
    }

    /// <summary>How many words matter.</summary>
    public int Count => uses.Count;

    /// <summary>A word's number, or -1 if it doesn't matter.</summary>
    public int Of(ReadOnlySpan<char> word) => lookup.TryGetValue(word, out var number) ? number : -1;

    /// <summary>Makes a word matter, with all its forms.</summary>
    public int Add(string word)
    {
        var forms = english ? EnglishForms.Of(word) : [word];
        var known = forms.Where(numbers.ContainsKey).Select(form => numbers[form]).Append(-1).First();
        var number = numbers.TryGetValue(word, out var own) ? own : known >= 0 ? known : Number(word);
        foreach (var form in forms)
            numbers.TryAdd(form, number);
        return number;
    }

    /// <summary>What a word does.</summary>
    public WordUse UseOf(int number) => number < 0 ? WordUse.Plain : uses[number];

    /// <summary>What a number word counts; null for other words.</summary>
    public NumberWord? ValueOf(int number) => number < 0 ? null : values[number];

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
