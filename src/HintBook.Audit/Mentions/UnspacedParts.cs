using System.Text.RegularExpressions;

namespace HintBook.Audit.Mentions;

/// <summary>The telling parts of a Japanese name: what stands before の, and adjectives and verbs without their endings in kana.</summary>
internal static partial class UnspacedParts
{
    /// <summary>The parts of a name, in its order.</summary>
    public static string[] Of(string name) =>
    [
        .. from piece in name.Split('の')
           from match in Part().Matches(piece)
           let isTold = match.Groups["root"].Success
           select isTold ? match.Groups["root"].Value : match.Value,
    ];

    /// <summary>The letters of a name each by itself, what is written in kana as words: 馬, 毛 and ふるい of 馬毛のふるい.</summary>
    public static string[] Singly(string name) => [.. Single().Matches(name).Select(match => match.Value).Distinct()];

    [GeneratedRegex(@"[\u4E00-\u9FFF]|[\u30A1-\u30FE]{2,}|(?<=の)[\u3041-\u3096]{2,}$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Single();

    /// <summary>A name as it is written, in hiragana and in katakana.</summary>
    public static IEnumerable<string> InBothKana(string name) => new[]
    {
        name,
        string.Concat(name.Select(letter => letter is >= '\u30A1' and <= '\u30F6' ? (char)(letter - 0x60) : letter)),
        string.Concat(name.Select(letter => letter is >= '\u3041' and <= '\u3096' && letter != 'の' ? (char)(letter + 0x60) : letter)),
    }.Distinct(StringComparer.Ordinal);

    // A root with an ending that leads on to a noun, or all that is left: "割れた鈴" is 割 and 鈴; 三角べら is 三角 and べら.
    [GeneratedRegex(
        @"(?<root>[\u4E00-\u9FFF]+(け[\u4E00-\u9FFF]+)?)[\u3041-\u3096]*[ただないるくう](?=[\u4E00-\u9FFF\u30A1-\u30FE])|[\u4E00-\u9FFF]+(?=[\u3041-\u30FE]{2,}$)|.+",
        RegexOptions.ExplicitCapture,
        10_000)]
    private static partial Regex Part();
}
