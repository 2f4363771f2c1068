namespace HintBook.Spoilers;

/// <summary>Tells letters that could be a word from those that could not. By rule of thumb, for the languages of Latin letters.</summary>
internal static class Speech
{
    private static readonly HashSet<string> Onsets =
    [
        .. ("bl br ch cl cr dr dw fl fr gh gl gn gr kl kn kr ph pf pl pr ps qu rh sc sch scr sh shr sk sl sm sn sp spl "
            + "spr squ st str sw th thr tr ts tw tz wh wr zw ll").Split(' '),
    ];

    private static readonly System.Buffers.SearchValues<char> Vowels = System.Buffers.SearchValues.Create("aeiouy");

    /// <summary>Whether a word of small letters could be spoken: it has a vowel, and begins as words do. Letters that aren't Latin could always.</summary>
    public static bool IsSpeakable(ReadOnlySpan<char> word)
    {
        var vowel = word.IndexOfAny(Vowels);
        foreach (var letter in word)
        {
            if (!char.IsAsciiLetter(letter))
                return true;
        }

        if (vowel < 0)
            return false;
        var onset = word[..vowel];
        return onset.Length < 2 || Onsets.GetAlternateLookup<ReadOnlySpan<char>>().Contains(onset);
    }
}
