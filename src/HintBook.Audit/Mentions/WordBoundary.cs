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

    /// <summary>Whether a name in kana stands between signs, letters of another kind, or small words.</summary>
    public static bool IsApart(string text, int start, int end) =>
        (start == 0 || !IsHiragana(text[start - 1]) || !IsHiragana(text[start]) || "のをはがにでともへやたいる".Contains(text[start - 1], StringComparison.Ordinal))
        && (end >= text.Length || !IsHiragana(text[end]) || !IsHiragana(text[end - 1]) || "のをはがにでともへやだ".Contains(text[end], StringComparison.Ordinal));

    /// <summary>Whether two letters of hiragana go on from the Chinese letter before them: 固いと感じたら.</summary>
    public static bool MayEndAnother(string text, int start, int end) =>
        end - start == 2 && start > 0 && IsChinese(text[start - 1]) && IsHiragana(text[start]);

    /// <summary>Whether letters are those of a word in either kana, with their dots: か isn't が.</summary>
    public static bool IsWrittenAs(string text, int start, int end, string word)
    {
        if (end - start != word.Length)
            return false;
        for (var i = 0; i < word.Length; i++)
        {
            if (InHiragana(text[start + i]) != InHiragana(word[i]))
                return false;
        }

        return true;
    }

    /// <summary>Whether it is a Chinese letter (Unicode 15.0: CJK Unified Ideographs).</summary>
    public static bool IsChinese(char letter) => letter is >= '\u4E00' and <= '\u9FFF';

    private static char InHiragana(char letter) => letter is >= '\u30A1' and <= '\u30F6' ? (char)(letter - 0x60) : letter;

    private static bool IsHiragana(char letter) => letter is >= '\u3041' and <= '\u3096';

    private static bool AreAlike(char one, char other) => (IsKatakana(one) && IsKatakana(other)) || (IsChinese(one) && IsChinese(other));

    private static bool IsKatakana(char letter) => letter is >= '\u30A1' and <= '\u30FE';
}
