namespace HintBook.Spoilers.Languages;

/// <summary>
/// Names of Japanese that call a thing by what it holds: the end of such a name, what is done with what it holds, and what such a thing is, so that
/// 朱肉を入れた丸い器 is a 朱肉入れ. Chosen by hand: common practice, no source.
/// </summary>
internal static class Holders
{
    private static readonly string[] Vessels = ["器", "箱", "缶", "袋", "皿", "壺", "瓶", "筒", "籠", "椀", "けーす", "入れ物", "いれもの", "うつわ"];
    private static readonly string[] Stands = ["筒", "台", "器", "壺", "瓶", "缶", "枠"];

    /// <summary>The ends, with the beginnings of verbs and the things, in hiragana for katakana.</summary>
    public static IReadOnlyList<(string Ending, string[] Verbs, string[] Things)> OfRuns { get; } =
    [
        ("入れ", ["入れ", "いれ", "入っ", "はいっ", "収め", "納め", "収まっ", "詰め", "しまっ", "しまう"], Vessels),
        ("いれ", ["入れ", "いれ", "入っ", "はいっ", "収め", "納め", "収まっ", "詰め", "しまっ", "しまう"], Vessels),
        ("立て", ["立て", "立っ", "立つ", "差し", "さし", "挿し"], Stands),
        ("差し", ["差し", "差す", "さし", "挿し", "挿す", "立て"], Stands),
        ("挿し", ["差し", "差す", "さし", "挿し", "挿す", "立て"], Stands),
        ("置き", ["置い", "置く", "置け", "のせ", "載せ"], ["台", "皿", "板", "器", "枕"]),
        ("掛け", ["掛け", "かけ", "掛かっ", "吊る", "吊し", "下げ"], ["台", "棒", "釘", "鉤", "枠", "板"]),
    ];
}
