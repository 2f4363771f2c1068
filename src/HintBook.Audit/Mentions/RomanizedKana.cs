using System.Collections.Frozen;
using System.Text;

namespace HintBook.Audit.Mentions;

/// <summary>Latin letters read as Japanese (Hepburn's spelling, from memory).</summary>
internal static class RomanizedKana
{
    private const int LongestSyllable = 3;

    private static readonly FrozenDictionary<string, string> Syllables = (
        "a あ i い u う e え o お ka か ki き ku く ke け ko こ sa さ shi し si し su す se せ so そ ta た chi ち ti ち tsu つ tu つ te て to と na な ni に nu ぬ "
        + "ne ね no の ha は hi ひ fu ふ hu ふ he へ ho ほ ma ま mi み mu む me め mo も ya や yu ゆ yo よ ra ら ri り ru る re れ ro ろ wa わ wo を n ん "
        + "ga が gi ぎ gu ぐ ge げ go ご za ざ ji じ zi じ zu ず ze ぜ zo ぞ da だ de で do ど ba ば bi び bu ぶ be べ bo ぼ pa ぱ pi ぴ pu ぷ pe ぺ po ぽ "
        + "kya きゃ kyu きゅ kyo きょ sha しゃ shu しゅ sho しょ cha ちゃ chu ちゅ cho ちょ nya にゃ nyu にゅ nyo にょ hya ひゃ hyu ひゅ hyo ひょ "
        + "mya みゃ myu みゅ myo みょ rya りゃ ryu りゅ ryo りょ gya ぎゃ gyu ぎゅ gyo ぎょ ja じゃ ju じゅ jo じょ bya びゃ byu びゅ byo びょ").Split(' ')
        .Chunk(2).ToFrozenDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);

    /// <summary>The same in hiragana; null where the letters spell nothing Japanese.</summary>
    public static string? Of(string latin)
    {
        var letters = latin.Trim().ToLowerInvariant();
        var kana = new StringBuilder();
        for (var at = 0; at < letters.Length;)
        {
            // KITTE: the first of two consonants stops short.
            if (at + 1 < letters.Length && letters[at] == letters[at + 1] && letters[at] is 'k' or 's' or 't' or 'p')
            {
                kana.Append('っ');
                at++;
                continue;
            }

            var length = Math.Min(LongestSyllable, letters.Length - at);
            while (length > 0 && !Syllables.ContainsKey(letters.Substring(at, length)))
                length--;
            if (length == 0)
                return null;
            kana.Append(Syllables[letters.Substring(at, length)]);
            at += length;
        }

        return kana.ToString();
    }
}
