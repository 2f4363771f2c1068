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
