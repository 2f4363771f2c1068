namespace HintBook.Audit.Mentions;

/// <summary>
/// The consonants that words of one Arabic family share: without the article, prefixes and endings of nouns and verbs, and long vowels.
/// School grammar, from memory; good enough for names of which two words must agree.
/// </summary>
internal static class ArabicRoot
{
    private const string Vowels = "اوي";
    private static readonly string[] Articles = ["وال", "فال", "بال", "كال", "ولل", "لل", "ال"];
    private static readonly string[] Forms = ["است", "ان", "م", "ت", "ي", "ن", "ا"];
    private static readonly string[] Endings =
        ["اتها", "اته", "تان", "تين", "تاه", "تيه", "ات", "ان", "ين", "ون", "يه", "ها", "هم", "ه", "ت", "ي", "ا"];

    /// <summary>The consonants of a word of bare letters.</summary>
    public static string Of(ReadOnlySpan<char> word)
    {
        word = Without(word, Articles, 3, atEnd: false);
        // فضة and فضي: two consonants are left.
        if (word is [_, _, 'ه' or 'ي'])
            return word[..2].ToString();
        word = Without(word, Endings, 3, atEnd: true);
        var bare = Without(word, Forms, 3, atEnd: false);
        if (Consonants(bare, Vowels) is { Length: >= 3 } root)
            return root;
        if (Consonants(word, Vowels) is { Length: >= 3 } whole)
            return whole;
        // A weak root: one of its letters is a long vowel.
        return Consonants(Without(word, Forms, 2, atEnd: false), "ا") is { Length: >= 2 } weak ? weak : word.ToString();
    }

    /// <summary>The same without a conjunction or a preposition of one letter; null if the word begins with none.</summary>
    public static string? WithoutFirst(ReadOnlySpan<char> word) => word.Length > 3 && word[0] is 'و' or 'ف' or 'ب' or 'ك' or 'ل' ? Of(word[1..]) : null;

    private static ReadOnlySpan<char> Without(ReadOnlySpan<char> word, string[] parts, int shortest, bool atEnd)
    {
        foreach (var part in parts)
        {
            if (word.Length - part.Length < shortest)
                continue;
            if (atEnd ? word.EndsWith(part) : word.StartsWith(part))
                return atEnd ? word[..^part.Length] : word[part.Length..];
        }

        return word;
    }

    private static string Consonants(ReadOnlySpan<char> word, string vowels)
    {
        Span<char> letters = stackalloc char[word.Length];
        var length = 0;
        foreach (var letter in word)
        {
            if (!vowels.Contains(letter, StringComparison.Ordinal))
                letters[length++] = letter;
        }

        return letters[..length].ToString();
    }
}
