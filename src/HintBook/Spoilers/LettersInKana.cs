namespace HintBook.Spoilers;

/// <summary>Latin letters as Japanese calls them: エヌ、エー、エックス、イー for NAXE. Common practice, no source.</summary>
internal static class LettersInKana
{
    private const string Names =
        "エー:a エイ:a ビー:b シー:c ディー:d デー:d イー:e エフ:f ジー:g エイチ:h エッチ:h アイ:i ジェイ:j ジェー:j ケー:k ケイ:k エル:l エム:m エヌ:n オー:o ピー:p キュー:q アール:r エス:s "
        + "ティー:t テー:t ユー:u ブイ:v ヴィー:v ダブリュー:w ダブル:w エックス:x ワイ:y ゼット:z ゼッド:z";

    private static readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Letters = Names.Split(' ')
        .ToDictionary(pair => pair[..^2], pair => pair[^1..], StringComparer.Ordinal)
        .GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Adds every letter that is called by its name, each run of katakana being one, to a list.</summary>
    /// <returns>Whether there are any.</returns>
    public static bool Gather(string source, List<(string Letters, int Start, int End, int Word)> said)
    {
        for (var at = 0; at < source.Length;)
        {
            if (!IsKatakana(source[at]))
            {
                at++;
                continue;
            }

            var end = at;
            while (end < source.Length && IsKatakana(source[end]))
                end++;
            if (Letters.TryGetValue(source.AsSpan(at, end - at), out var letter))
                said.Add((letter, at, end, at));
            at = end;
        }

        return said.Count > 0;
    }

    private static bool IsKatakana(char letter) => letter is >= 'ァ' and <= 'ヺ' or 'ー';
}
