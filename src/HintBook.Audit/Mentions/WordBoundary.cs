namespace HintBook.Audit.Mentions;

/// <summary>Whether letters go on as the same word, where no spaces part the words: by the script of what stands beside them.</summary>
internal static class WordBoundary
{
    private const int ShortestAlone = 4;

    /// <summary>Whether a few letters of katakana are surely part of a longer word: "pin" in "pink".</summary>
    public static bool IsPartOfWord(string text, int start, int end) =>
        end - start < ShortestAlone
        && ((start > 0 && IsKatakana(text[start - 1]) && IsKatakana(text[start]))
            || (end < text.Length && IsKatakana(text[end - 1]) && IsKatakana(text[end])));

    /// <summary>Whether they may be part of one.</summary>
    public static bool MayBePartOfWord(string text, int start, int end) =>
        (start > 0 && AreAlike(text[start - 1], text[start])) || (end < text.Length && AreAlike(text[end - 1], text[end]));

    private static bool AreAlike(char one, char other) => (IsKatakana(one) && IsKatakana(other)) || (IsChinese(one) && IsChinese(other));

    private static bool IsKatakana(char letter) => letter is >= '\u30A1' and <= '\u30FE';

    private static bool IsChinese(char letter) => letter is >= '\u4E00' and <= '\u9FFF';
}
