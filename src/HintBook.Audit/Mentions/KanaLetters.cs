using System.Text.RegularExpressions;

namespace HintBook.Audit.Mentions;

/// <summary>Codes of Latin letters in Japanese: by the letters' names, エヌ、エー、エックス、イー, or with dots between them, N・A・X・E. From memory.</summary>
internal sealed partial class KanaLetters(CodeTable codes)
{
    private const int MostApart = 16;

    private static readonly string[] Names =
    [
        "エー エイ", "ビー", "シー", "ディー デー", "イー", "エフ", "ジー", "エイチ エッチ", "アイ", "ジェー ジェイ", "ケー ケイ", "エル", "エム", "エヌ", "オー", "ピー", "キュー", "アール",
        "エス", "ティー テー", "ユー", "ブイ ヴィー", "ダブリュー ダブル", "エックス", "ワイ", "ゼット ゼッド",
    ];

    private static readonly Dictionary<string, char> Letters = Names
        .SelectMany((names, i) => names.Split(' ').Select(name => (name, letter: (char)('a' + i))))
        .ToDictionary(pair => pair.name, pair => pair.letter, StringComparer.Ordinal);

    private readonly List<(char Letter, int Start, int End)> said = [];

    /// <summary>Adds every mention in a text to a list.</summary>
    public void In(FoldedText text, string source, List<FoundSecret> found)
    {
        if (codes.Longest == 0)
            return;
        said.Clear();
        foreach (Match match in Written().Matches(source))
        {
            if (match.Groups["latin"] is { Success: true } latin)
                said.Add((char.ToLowerInvariant(latin.Value[0] is >= 'Ａ' ? (char)(latin.Value[0] - 0xFEE0) : latin.Value[0]), match.Index, match.Index + 1));
            else if (Letters.TryGetValue(match.Value, out var letter))
                said.Add((letter, match.Index, match.Index + match.Length));
        }

        for (var first = 0; first < said.Count; first++)
        {
            var whole = "";
            for (var last = first; last < said.Count && whole.Length < codes.Longest; last++)
            {
                if (last > first && said[last].Start - said[last - 1].End >= MostApart)
                    break;
                whole += said[last].Letter;
                if (whole.Length > 2)
                    Report(text, whole, said[first].Start, said[last].End, found);
            }
        }
    }

    private void Report(FoldedText text, string whole, int start, int end, List<FoundSecret> found)
    {
        foreach (var (secret, _) in codes.Of(whole))
        {
            var (first, last) = (-1, -1);
            for (var i = 0; i < text.Words.Length; i++)
            {
                if (text.Words[i].Start >= start && text.Words[i].End <= end)
                    (first, last) = (first < 0 ? i : first, i);
            }

            if (first >= 0)
                found.Add(new(secret, first, last, Sure: false, Words: 1, IsCode: true));
        }
    }

    [GeneratedRegex(@"[\u30A1-\u30FA\u30FC]+|(?<![A-Za-zＡ-Ｚ])(?<latin>[A-Za-zＡ-Ｚ])(?![A-Za-zＡ-Ｚ])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Written();
}
