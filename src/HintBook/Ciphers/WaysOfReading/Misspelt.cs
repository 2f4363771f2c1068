using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Ciphers.WaysOfReading;

/// <summary>
/// Slips of the pen in number words: <c>fourteeen</c>, <c>eigth</c>, <c>fourty</c>, <c>ninty</c>. Story may stand around number words, so only what is hardly
/// another word counts: letters doubled or halved, two neighbours exchanged, and in longer words one letter too many, missing or wrong. The everyday words
/// that are as near to a number word are from memory.
/// </summary>
internal sealed class Misspelt
{
    private const int ShortestKnown = 4;
    private readonly ImmutableArray<string> names;
    private readonly ImmutableHashSet<string> known;
    private readonly int anyEditFrom;

    /// <summary>Number words, everyday words that are near to them, and how many letters a number word needs for any edit to be a slip.</summary>
    private Misspelt(IEnumerable<string> names, string everyday, int anyEditFrom)
    {
        this.anyEditFrom = anyEditFrom;
        this.names = [.. names.Where(name => name.Length >= ShortestKnown).Order(StringComparer.Ordinal)];
        known = [.. everyday.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries), .. names];
    }

    /// <summary>In English.</summary>
    public static Misspelt English { get; } = new(
        EnglishNumbers.Names,
        """
        there thirsty mighty weighty nicety seventh sevenths eighth eighths weight weights height heights freight sleight even tree thee fort sevens
        eights threes fives fours nines zeros zeroes twelves elevens eighties nineties thirties twenties fifties sixties forties seventies eleventh
        twelfth sixteenth sixteens fifteens seventeens fourteens thousandth hundredth thousands hundreds naught noughts severn steven ninth fifth
        sixth fifths sixths ninths fourth fourths righty nighty bought sought fought nougat
        """,
        6);

    /// <summary>In German.</summary>
    public static Misspelt German { get; } = new(NumberNames.German.Words, "hunderte hundertem hunderten tausende siebten siebter", 7);

    /// <summary>In French.</summary>
    public static Misspelt French { get; } = new(NumberNames.French.Words, "quatrain quatres treizes", 7);

    /// <summary>In Spanish.</summary>
    public static Misspelt Spanish { get; } = new(NumberNames.Spanish.Words, "tercero cuarenton quinientas veintena treintena", 7);

    /// <summary>The number word that a word may be meant for, or null.</summary>
    public string? Meant(string word)
    {
        var small = Accents.Folded(word);
        return small.Length < ShortestKnown || known.Contains(small) ? null : names.FirstOrDefault(name => IsSlip(small, name));
    }

    private bool IsSlip(string word, string name)
    {
        if (Math.Abs(word.Length - name.Length) > 2)
            return false;
        if (Halved(word) == Halved(name))
            return true;
        if (Math.Abs(word.Length - name.Length) > 1 || Nearest.Edits(word, name) != 1)
            return false;
        var isExchange = word.Length == name.Length && word.Order().SequenceEqual(name.Order());
        return isExchange || name.Length >= anyEditFrom || (name.Length == anyEditFrom - 1 && word.Length != name.Length);
    }

    // Every doubled letter once.
    private static string Halved(string word) => string.Concat(word.Where((letter, at) => at == 0 || word[at - 1] != letter));
}
