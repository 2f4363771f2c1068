namespace HintBook.Audit.Mentions.Languages;

/// <summary>Japanese: each letter is read as a word.</summary>
internal static class AuditJapanese
{
    private const string Figures = "〇一二三四五六七八九";

    public static AuditLanguage Language { get; } = new()
    {
        Code = "ja",
        Between = "の と",
        Same = ["〇 零", "一 壱", "二 弐", "三 参"],
        Numbers = Numbers,
        Kinship = Kinship.None,
        Coordinators = "と や か",
        Anaphora = "",
        Negations = "",
        Likenesses = "",
        Setting = "文字 言葉 合言葉 綴り 読め 読み 回し 合わせ 入力 並べ 揃え 押し 打ち",
        Times = TimesIn.Japanese,
        Codes = CodesIn.Japanese,
        IsHourFirst = true,
        Thousand = "万",
        ThousandIs = 10_000,
        IsUnspaced = true,
    };

    private static IEnumerable<(string, int)> Numbers()
    {
        for (var number = 0; number < 10_000; number++)
        {
            var units = number % 10 > 0 || number == 0 ? $"{Figures[number % 10]}" : "";
            var said = Times(number / 1000, '千') + Times(number / 100 % 10, '百') + Times(number / 10 % 10, '十') + units;
            yield return (string.Join(' ', said.AsEnumerable()), number);
        }
    }

    private static string Times(int figure, char of) => figure switch { 0 => "", 1 => $"{of}", _ => $"{Figures[figure]}{of}" };
}
