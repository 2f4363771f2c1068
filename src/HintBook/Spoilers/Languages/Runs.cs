namespace HintBook.Spoilers.Languages;

/// <summary>How a run of letters stands among others where no spaces part the words.</summary>
internal enum Standing
{
    /// <summary>As a word of its own, as far as letters tell.</summary>
    Alone,

    /// <summary>Perhaps as part of a longer word: another letter of its kind stands beside it.</summary>
    Perhaps,

    /// <summary>As part of a longer word.</summary>
    Part,
}

/// <summary>Tells words of Japanese by the kinds of their letters: a word rarely ends between two of one kind. Common practice, no source.</summary>
internal static class Runs
{
    private const int ShortestBorrowed = 4;
    private const string Containers = "袋箱缶瓶筒籠壺皿包入";
    private static readonly string[] MadeOf = Materials.Of("ja").Split(' ');

    /// <summary>Whether a name says what the thing is made of, or calls a container.</summary>
    public static bool IsMadeOf(string name) =>
        Containers.Contains(name[^1], StringComparison.Ordinal) || Array.Exists(MadeOf, material => name.StartsWith(material, StringComparison.Ordinal));

    /// <summary>Whether の and what a thing is made of stand before it: 木綿の袋.</summary>
    public static bool IsOfMaterial(string text, int start) =>
        start > 1 && text[start - 1] == 'の'
        && Array.Exists(MadeOf, material => text.AsSpan(0, start - 1).EndsWith(material, StringComparison.Ordinal));

    /// <summary>Whether a text begins with any of several.</summary>
    public static bool StartsWithAny(ReadOnlySpan<char> text, string[] all)
    {
        foreach (var one in all)
        {
            if (text.StartsWith(one, StringComparison.Ordinal))
                return true;
        }

        return false;
    }

    /// <summary>Whether any of several stands in a text.</summary>
    public static bool HasAny(ReadOnlySpan<char> text, string[] all)
    {
        foreach (var one in all)
        {
            if (text.Contains(one, StringComparison.Ordinal))
                return true;
        }

        return false;
    }

    /// <summary>How a stretch of a text stands there.</summary>
    public static Standing StandingOf(string text, int start, int end)
    {
        var before = start > 0 && KindOf(text[start - 1]) is var left && left != Kind.Other && left == KindOf(text[start]);
        var behind = end < text.Length && KindOf(text[end]) is var right && right != Kind.Other && right == KindOf(text[end - 1]);
        if (!before && !behind)
            return Standing.Alone;
        var isBorrowed = (before ? KindOf(text[start]) : KindOf(text[end - 1])) == Kind.Katakana;
        return isBorrowed && end - start < ShortestBorrowed ? Standing.Part : Standing.Perhaps;
    }

    /// <summary>
    /// Whether a short everyday word stands by itself: 鈴木 and 鏡台 are other words, and はり or カギ is one only between signs, small words and letters of
    /// another kind.
    /// </summary>
    public static bool IsOneWord(string text, int start, int end)
    {
        var (before, behind) = (start > 0 ? text[start - 1] : '。', end < text.Length ? text[end] : '。');
        if (KindOf(text[end - 1]) == Kind.Chinese)
            return KindOf(behind) != Kind.Chinese;
        return !IsHiragana(text[start]) || ((!IsHiragana(before) || Before.Contains(before)) && (!IsHiragana(behind) || Behind.Contains(behind)));
    }

    private static readonly System.Buffers.SearchValues<char> Before = System.Buffers.SearchValues.Create("のをはがにでともへやるたい");

    private static readonly System.Buffers.SearchValues<char> Behind = System.Buffers.SearchValues.Create("のをはがにでともへやだ");

    private static bool IsHiragana(char letter) => letter is >= '\u3041' and <= '\u3096';

    private static Kind KindOf(char letter) => letter switch
    {
        >= '\u30A0' and <= '\u30FF' => Kind.Katakana,
        >= '\u3400' and <= '\u9FFF' => Kind.Chinese,
        _ => Kind.Other,
    };

    private enum Kind
    {
        Other,
        Katakana,
        Chinese,
    }
}
