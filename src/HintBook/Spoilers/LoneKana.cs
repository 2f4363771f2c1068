namespace HintBook.Spoilers;

/// <summary>
/// Katakana that stand by themselves: 一の輪はヌ、二の輪はロ; ネの次にツ; ヌノのヌ. Words in katakana are longer, so that single ones, one behind the other, spell
/// something. "タを二つ" is two of them.
/// </summary>
internal static class LoneKana
{
    private static readonly string[] Twice = ["を二つ", "が二つ", "を二回", "が二回", "を２つ", "を2つ", "が2つ", "を2回", "が2回", "二つ", "を二度", "を重ね"];
    private static readonly string[] Again = ["の次", "の後", "のあと", "の下", "の隣", "の右", "の左"];
    // 最初がヌで最後がム、あいだにヲとテ: what is told second stands at the end.
    private static readonly string[] Last = ["最後", "終わり", "おわり", "末", "右"];
    private static readonly string[] Between = ["あいだ", "間", "真ん中", "中央"];
    private static readonly string[] Denied = ["」ではな", "』ではな", "ではな", "」でな", "」じゃな"];

    /// <summary>Puts them into a list, in hiragana, with the place of each as its word.</summary>
    public static void Gather(string source, List<(string Letters, int Start, int End, int Word)> said)
    {
        said.Clear();
        for (var i = 0; i < source.Length; i++)
        {
            if (!IsKana(source[i]) || (i > 0 && IsKana(source[i - 1])) || (i + 1 < source.Length && IsKana(source[i + 1])))
                continue;
            var behind = source.AsSpan(i + 1);
            var letter = SaidLetters.Hiragana(source[i].ToString());
            // ツの次にホ, behind ネの次にツ: the one that was named.
            if (Begins(behind, Denied) || (said.Count > 0 && said[^1].Letters == letter && Begins(behind, Again)))
                continue;
            said.Add((letter, i, i + 1, i));
            // 一つ目も二つ目もタ.
            if (Begins(behind, Twice) || (i > 1 && source[i - 1] == 'も' && source[..i].Split('、', '。')[^1].Count(one => one == 'も') == 2))
                said.Add((letter, i, i + 1, i));
        }

        if (said.Count > 2 && Has(source, said[0].End, said[1].Start, Last) && Has(source, said[1].End, said[2].Start, Between))
        {
            said.Add(said[1]);
            said.RemoveAt(1);
        }
    }

    private static bool Has(string source, int from, int to, string[] words) =>
        from < to && Array.Exists(words, word => source.AsSpan(from..to).Contains(word, StringComparison.Ordinal));

    private static bool IsKana(char letter) => letter is >= 'ァ' and <= 'ヺ' or 'ー';

    private static bool Begins(ReadOnlySpan<char> text, string[] with)
    {
        foreach (var one in with)
        {
            if (text.StartsWith(one, StringComparison.Ordinal))
                return true;
        }

        return false;
    }
}
