namespace HintBook.Spoilers.Languages;

/// <summary>Japanese: no spaces part its words, so that each letter is a word here and a name is a run of them.</summary>
internal static class Japanese
{
    public static SearchLanguage Language { get; } = new()
    {
        Code = "ja",
        Clock = ClockWords.Japanese,
        Pieces = PieceWords.Japanese,
        Objects = ObjectWords.Japanese,
        Reckoning = ReckonWords.Japanese,
        Functions = "の は が を に で と も へ や",
        InNumbers = "の と",
        And = "と",
        Tie = "の",
        Everyday =
            "鍵 箱 小箱 蓋 扉 戸 引き出し 引出し 抽斗 穴 歯車 車輪 ボタン カード 手紙 文字 番号 数字 言葉 単語 暗号 メモ 紙 木 錠 錠前 掛け金 取っ手 蝶番 パネル 横 上 下 前 後ろ 底 角 端 壁 床 屋根 カバー 盆 溝 フック 輪 指輪 棒 "
            + "栓 コイン 硬貨 玉 鎖 紐 糸 針金 ばね 磁石 鏡 ガラス 写真 絵 文 行 詩 謎 ヒント 答え 記号 印 矢印 色 形 星 円 丸 四角 道具 部品 物 札 地図 本 頁 ページ 机 ランプ 蝋燭 スイッチ 文字盤 時計 針 手 指 目 頭 体 尾 "
            + "小さい 大きい 長い 短い 丸い 古い 新しい 左 右 最初 最後 赤 青 緑 黄 白 黒 秘密 隠し 名前 時間 日 年 順番 場所 音 重さ ねじ 釘 板 枠",
        Figures =
        [
            .. "〇一二三四五六七八九".Select((letter, i) => ($"{letter}", new Figure(i, FigureKind.Small))),
            ("零", new(0, FigureKind.Small)),
            ("十", new(10, FigureKind.Scale)),
            ("百", new(100, FigureKind.Scale)),
            ("千", new(1000, FigureKind.Scale)),
            ("万", new(10_000, FigureKind.Scale)),
        ],
        Counting = new(AfterTen: 1),
        HasNoSpaces = true,
        ShortestName = 2,
    };
}
