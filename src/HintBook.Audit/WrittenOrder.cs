namespace HintBook.Audit;

/// <summary>
/// Brings words that were found on a line from left to right into the order in which they are read: a stretch of words in letters that run from right to
/// left is turned round, words and letters. Good enough to look for words in; it is no layout of a paragraph.
/// </summary>
internal static class WrittenOrder
{
    /// <summary>The words in reading order.</summary>
    /// <param name="words">Words of one line from left to right.</param>
    public static IEnumerable<string> Of(IReadOnlyList<string> words)
    {
        for (var i = 0; i < words.Count;)
        {
            var end = i;
            while (end < words.Count && words[end].Any(RunsLeft))
                end++;
            for (var at = end - 1; at >= i; at--)
                yield return Turned(words[at]);
            if (end == i)
                yield return words[end++];
            i = end;
        }
    }

    // Hebrew and Arabic with their presentation forms (The Unicode Standard, blocks).
    private static bool RunsLeft(char letter) => letter is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFC');

    // Lam with alef is one letter in print and two in what is looked for (Arabic Presentation Forms-B).
    private static string Turned(string word) => string.Concat(word.Reverse().Select(letter => letter switch
    {
        '\uFEF5' or '\uFEF6' => "\u0644\u0622",
        '\uFEF7' or '\uFEF8' => "\u0644\u0623",
        '\uFEF9' or '\uFEFA' => "\u0644\u0625",
        '\uFEFB' or '\uFEFC' => "\u0644\u0627",
        _ => letter.ToString(),
    }));
}
