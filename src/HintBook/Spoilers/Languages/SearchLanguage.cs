namespace HintBook.Spoilers.Languages;

/// <summary>Folds the forms of a word of bare small letters onto one, in place.</summary>
/// <returns>How many of its letters are left.</returns>
internal delegate int Folding(Span<char> word);

/// <summary>
/// What is known of a language: the words that a reader skips, stops at or counts with, and how words change. Lists are words parted by spaces, in
/// any spelling. All of them are chosen by hand: common practice, no source.
/// </summary>
internal sealed record SearchLanguage
{
    /// <summary>A language of which nothing is known: words count as they are written, and codes in figures.</summary>
    public static SearchLanguage Unknown { get; } = new() { Code = "" };

    /// <summary>The languages of which something is known.</summary>
    public static IReadOnlyList<SearchLanguage> Known { get; } =
    [
        English.Language,
        German.Language,
        French.Language,
        Spanish.Language,
        Japanese.Language,
        Arabic.Language,
    ];

    /// <summary>The first part of its tag (BCP 47), in small letters.</summary>
    public required string Code { get; init; }

    /// <summary>Words that may stand before any noun and add nothing.</summary>
    public string Determiners { get; init; } = "";

    /// <summary>Words that tie two nouns to one name.</summary>
    public string Prepositions { get; init; } = "";

    /// <summary>Other words that never describe a noun, so that no name goes on behind them.</summary>
    public string Functions { get; init; } = "";

    /// <summary>Words that people say between the figures of a number.</summary>
    public string InNumbers { get; init; } = "";

    /// <summary>The one that makes two numbers of "325 and 14".</summary>
    public string And { get; init; } = "";

    /// <summary>Where no spaces part the words, a letter that may stand between those of a name.</summary>
    public string Tie { get; init; } = "";

    /// <summary>Words that the texts of any puzzle box are full of.</summary>
    public string Everyday { get; init; } = "";

    /// <summary>Number words with what they count.</summary>
    public IEnumerable<(string Word, Figure Figure)> Figures { get; init; } = [];

    /// <summary>How people say times by the clock.</summary>
    public ClockWords Clock { get; init; } = new();

    /// <summary>How people tell a code piece by piece.</summary>
    public PieceWords Pieces { get; init; } = new();

    /// <summary>How people reckon in words.</summary>
    public ReckonWords Reckoning { get; init; } = new();

    /// <summary>How people speak of things that one can hold.</summary>
    public ObjectWords Objects { get; init; } = new();

    /// <summary>Further forms of a word of a name, given in bare letters and whether it only describes.</summary>
    public Func<string, bool, IEnumerable<string>> FormsOf { get; init; } = static (_, _) => [];

    /// <summary>Words that mean the same in a name, parted by strokes: <c>gold/golden</c>, <c>grey/gray</c>.</summary>
    public string Variants { get; init; } = "";

    /// <summary>How number words make one number; null for the rules of English.</summary>
    public NumberGrammar? Counting { get; init; }

    /// <summary>How the forms of a word become one.</summary>
    public Folding Fold { get; init; } = static word => word.Length;

    /// <summary>What loses its vowel and is written with an apostrophe before the next word, in small letters: <c>l d qu</c>.</summary>
    public string Elided { get; init; } = "";

    /// <summary>What is written together with the word behind it, and taken off where the whole isn't known; the longest first.</summary>
    public string Prefixes { get; init; } = "";

    /// <summary>How the forms of a lone noun become one, where nouns are written with a capital and as one with others; null elsewhere.</summary>
    public Folding? FoldNoun { get; init; }

    /// <summary>Number words that look like a form of a noun: <c>Sieben</c> and <c>Sieb</c>.</summary>
    public string NumberNouns { get; init; } = "";

    /// <summary>Whether an accent on the last letter makes another word: <c>loupé</c> and <c>loupe</c>.</summary>
    public bool HasFinalAccents { get; init; }

    /// <summary>Whether nouns are written with a capital, and as one with others.</summary>
    public bool HasCompounds => FoldNoun is not null;

    /// <summary>Whether two words of bare letters are forms of one noun.</summary>
    public bool AreForms(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        if (FoldNoun is null || one.SequenceEqual(other))
            return true;
        Span<char> left = stackalloc char[one.Length];
        Span<char> right = stackalloc char[other.Length];
        one.CopyTo(left);
        other.CopyTo(right);
        return left[..FoldNoun(left)].SequenceEqual(right[..FoldNoun(right)]);
    }

    /// <summary>Whether no spaces part the words, so that each letter stands for itself and a name is a run of them.</summary>
    public bool HasNoSpaces { get; init; }

    /// <summary>Whether a noun stands before what describes it.</summary>
    public bool HeadFirst { get; init; }

    /// <summary>Whether a hyphen makes a name of a verb and a noun, as in <c>tire-bouchon</c>.</summary>
    public bool HyphensTell { get; init; }

    /// <summary>How many letters a name has at least that is looked for.</summary>
    public int ShortestName { get; init; } = 3;

    /// <summary>What is known of a language.</summary>
    /// <param name="language">Its tag, such as <c>fr-CH</c>.</param>
    public static SearchLanguage For(string language)
    {
        var end = language.IndexOf('-', StringComparison.Ordinal);
        var code = end < 0 ? language : language[..end];
        return Known.FirstOrDefault(language => string.Equals(language.Code, code, StringComparison.OrdinalIgnoreCase)) ?? Unknown;
    }
}

/// <summary>How number words make one number, where a language differs from its neighbours.</summary>
/// <param name="ByTwenties">Whether 97 is four twenties, ten and seven.</param>
/// <param name="AfterTen">The least unit that may follow ten: seven in French, where 17 is ten and seven; 10 if none does.</param>
/// <param name="UnitsFirst">Whether 73 is three and seventy.</param>
/// <param name="TensAlone">Whether 73 is one word, so that no unit goes on behind seventy.</param>
internal sealed record NumberGrammar(bool ByTwenties = false, int AfterTen = 10, bool UnitsFirst = false, bool TensAlone = false)
{
    /// <summary>Takes one more number word into a number, if it can go on with it.</summary>
    /// <param name="number">Grows by the word.</param>
    /// <param name="next">The word.</param>
    public bool GoesOn(ref int number, Figure next)
    {
        var (value, part, units) = (next.Value, number % 1000, number % 100);
        if (next.Kind == FigureKind.Again || value <= 0)
            return false;
        if (next.Kind == FigureKind.Scale && (part % value > 0 || (value == 1000 && part > 0)))
            return Multiplies(ref number, value);
        if (ByTwenties && value == 20 && units == 4)
            return Add(ref number, 76);
        if (ByTwenties && value is > 9 and < 20 && units is 60 or 80)
            return Add(ref number, value);
        if (UnitsFirst && units is > 0 and < 10 && value is >= 10 and < 100 && value % 10 == 0)
            return Add(ref number, value);
        var room = value < 10 ? 10 : value < 100 ? 100 : 1000;
        var fits = number > 0 && number % room == 0 && !(value < 10 && units == 10 && value < AfterTen) && !(TensAlone && value < 10 && units > 0);
        return fits && Add(ref number, value);
    }

    // "Five thousand", "three hundred", and in Japanese "three ten": what is multiplied is what stands below.
    private bool Multiplies(ref int number, int by)
    {
        var times = by == 10_000 || (by == 1000 && AfterTen > 1) ? number : number % 10;
        if (times == 0 || number % by != times || times > (by == 10_000 ? 9999 : 999))
            return false;
        number += times * (by - 1);
        return true;
    }

    private static bool Add(ref int number, int more)
    {
        number += more;
        return true;
    }
}
