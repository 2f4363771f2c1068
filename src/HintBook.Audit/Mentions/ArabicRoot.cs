namespace HintBook.Audit.Mentions;

/// <summary>
/// The consonants that words of one Arabic family share: without the article, prefixes and endings of nouns and verbs, and long vowels.
/// School grammar, from memory; good enough for names of which two words must agree.
/// </summary>
internal static class ArabicRoot
{
    private const string Vowels = "اوي";
    private static readonly string[] Joined = ["وال", "فال", "بال", "كال", "لل", "ال", "و", "ف", "ب", "ك", "ل"];
    private static readonly string[] Forms = ["است", "ان", "م", "ت", "ي", "ن", "ا"];
    private static readonly string[] Endings = ["اتها", "اته", "ات", "ان", "ين", "ون", "يه", "ها", "هم", "تان", "تين", "ه", "ت", "ي", "ا"];

    /// <summary>The consonants of a word of bare letters.</summary>
    public static string Of(ReadOnlySpan<char> word)
    {
        word = Without(word, Joined, 3, atEnd: false);
        word = Without(word, Endings, 3, atEnd: true);
        var all = Consonants(word);
        var short_ = Consonants(Without(word, Forms, 3, atEnd: false));
        return short_.Length >= 3 ? short_ : all.Length >= 2 ? all : word.ToString();
    }

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

    private static string Consonants(ReadOnlySpan<char> word)
    {
        Span<char> letters = stackalloc char[word.Length];
        var length = 0;
        foreach (var letter in word)
        {
            if (!Vowels.Contains(letter, StringComparison.Ordinal))
                letters[length++] = letter;
        }

        return letters[..length].ToString();
    }
}
