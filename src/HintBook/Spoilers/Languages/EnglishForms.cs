namespace HintBook.Spoilers.Languages;

/// <summary>
/// English plurals folded onto their singulars. Lighter than a stemmer on purpose: what it makes is compared with nothing but other
/// words that went through it, and it leaves verbs and adjectives alone, so that <c>locked</c> never becomes a mention of a lock.
/// </summary>
internal static class EnglishForms
{
    private static readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Irregular = new Dictionary<string, string>
    {
        ["men"] = "man",
        ["women"] = "woman",
        ["feet"] = "foot",
        ["teeth"] = "tooth",
        ["geese"] = "goose",
        ["mice"] = "mous",
        ["dice"] = "die",
        ["oxen"] = "ox",
        ["children"] = "child",
        ["pence"] = "penny",
        ["people"] = "person",
        ["indices"] = "index",
        ["vertices"] = "vertex",
        ["matrices"] = "matrix",
        ["craftsmen"] = "craftsman",
    }.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Folds a word of small letters in place.</summary>
    /// <returns>How many of its letters are left.</returns>
    public static int Fold(Span<char> word)
    {
        var length = word.Length;
        if (length < 3)
            return length;
        if (word[length - 1] is 'n' or 't' or 'h' or 'e' or 's' && Irregular.TryGetValue(word, out var singular))
        {
            singular.CopyTo(word);
            length = singular.Length;
        }
        else if (length > 3 && word[length - 1] == 's' && word[length - 2] != 's')
            length--;
        return WithoutEnding(word, length);
    }

    // What is left of "boxes", "knives" and "pennies" must meet what is left of "box", "knife" and "penny".
    private static int WithoutEnding(Span<char> word, int length)
    {
        if (length > 3 && word[length - 1] == 'e')
        {
            var last = word[length - 2];
            if (last == 'i' || last is 's' or 'x' or 'z' || (last == 'h' && word[length - 3] is 's' or 'c'))
                return length - 1;
            if (last is 'v' or 'f')
            {
                word[length - 2] = 'f';
                return length - 1;
            }

            if (last == 'o')
                return length - 1;
        }

        if (length > 2 && word[length - 1] == 'y' && !IsVowel(word[length - 2]))
            word[length - 1] = 'i';
        else if (length > 3 && word[length - 1] == 'v')
            word[length - 1] = 'f';
        return length;
    }

    private static bool IsVowel(char letter) => letter is 'a' or 'e' or 'i' or 'o' or 'u';
}
