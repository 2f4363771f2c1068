using System.Text.RegularExpressions;

namespace HintBook.Audit.Mentions;

/// <summary>
/// Katakana by themselves, each of which spells a letter of a code: 一の輪はヌ, タを二つ, ヌノのヌ. What is told again (ツの次にホ) or denied (「オ」ではなく) isn't among
/// them. No word is so short.
/// </summary>
internal static partial class LoneKana
{
    /// <summary>All of them in a text, twice where it says so, with their places.</summary>
    public static List<(string Said, int Start, int End)> In(string source)
    {
        List<(string Said, int Start, int End)> all = [];
        foreach (Match match in Lone().Matches(source))
        {
            var letter = match.Groups["said"];
            if (match.Groups["denied"].Success || (match.Groups["again"].Success && all.Count > 0 && all[^1].Said == letter.Value))
                continue;
            var times = match.Groups["twice"].Success || match.Groups["both"].Success ? 2 : 1;
            for (var i = 0; i < times; i++)
                all.Add((letter.Value, letter.Index, letter.Index + 1));
        }

        // 最初がコで最後がク、あいだにハ.
        var isMiddleLast = all.Count > 2 && Stands(AtTheEnd(), source, all[0].End, all[1].Start) && Stands(InTheMiddle(), source, all[1].End, all[2].Start);
        return isMiddleLast ? [all[0], .. all[2..], all[1]] : all;
    }

    private static bool Stands(Regex words, string source, int from, int to) => from < to && words.IsMatch(source.AsSpan(from..to));

    [GeneratedRegex("最後|終わり|末尾|右端?", RegexOptions.None, 10_000)]
    private static partial Regex AtTheEnd();

    [GeneratedRegex("あいだ|間|真ん中|中央", RegexOptions.None, 10_000)]
    private static partial Regex InTheMiddle();

    [GeneratedRegex(
        @"(?<both>目も[^、。]{1,6}[目も]も)?(?<![ァ-ヺー])(?<said>[ァ-ヺ])(?![ァ-ヺー])((?<denied>[」』]?(では|で|じゃ)な)|(?<again>の(次|後|下|隣|右|左|あと))"
        + "|(?<twice>[をが]?(二つ|二回|二度|2つ|2回|２つ|２回)|を重ね))?",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Lone();
}
