namespace HintBook.Audit.Mentions;

/// <summary>
/// The forms in which an English noun may stand in a text: the singular and the plural. A name may be given in either.
/// Rules and exceptions as school grammars list them; from memory.
/// </summary>
internal static class EnglishNouns
{
    private static readonly (string One, string Many)[] Irregular =
    [
        ("man", "men"), ("woman", "women"), ("foot", "feet"), ("tooth", "teeth"), ("goose", "geese"), ("mouse", "mice"), ("louse", "lice"),
        ("die", "dice"), ("ox", "oxen"), ("child", "children"), ("penny", "pence"), ("person", "people"), ("index", "indices"),
        ("vertex", "vertices"), ("matrix", "matrices"), ("craftsman", "craftsmen"),
    ];

    /// <summary>Every form of a word of small bare letters, the word itself first.</summary>
    public static IEnumerable<string> Forms(string word) =>
        word.Length < 3 ? [word] : [word, .. Plurals(word), .. Singulars(word).SelectMany(one => (string[])[one, .. Plurals(one)])];

    private static IEnumerable<string> Plurals(string word)
    {
        foreach (var (one, many) in Irregular)
        {
            if (word == one)
                yield return many;
        }

        yield return word + "s";
        if (word[^1] is 's' or 'x' or 'z' or 'o' || word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal))
            yield return word + "es";
        if (word[^1] == 'y' && !IsVowel(word[^2]))
            yield return word[..^1] + "ies";
        if (word[^1] == 'f')
            yield return word[..^1] + "ves";
        if (word.EndsWith("fe", StringComparison.Ordinal))
            yield return word[..^2] + "ves";
    }

    private static IEnumerable<string> Singulars(string word)
    {
        foreach (var (one, many) in Irregular)
        {
            if (word == many)
                yield return one;
        }

        if (word.Length < 4 || word[^1] != 's' || word[^2] is 's' or 'u' or 'i')
            yield break;
        yield return word[..^1];
        var before = word[..^2];
        if (word[^2] != 'e')
            yield break;
        if ((before.Length > 1 && before[^1] is 's' or 'x' or 'z' or 'o')
            || before.EndsWith("ch", StringComparison.Ordinal)
            || before.EndsWith("sh", StringComparison.Ordinal))
            yield return before;
        if (before.Length > 1 && before[^1] == 'i')
            yield return before[..^1] + "y";
        if (before.Length > 1 && before[^1] == 'v')
        {
            yield return before[..^1] + "f";
            yield return before[..^1] + "fe";
        }
    }

    private static bool IsVowel(char letter) => letter is 'a' or 'e' or 'i' or 'o' or 'u';
}
