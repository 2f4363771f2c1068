namespace HintBook.Spoilers.Languages;

/// <summary>
/// Japanese words for things, what they are made of and how they look, each with its other spellings: in kana, or in other Chinese letters. Whoever writes
/// for children, or isn't sure, writes kana. Common words, from memory.
/// </summary>
internal static class JapaneseReadings
{
    private const int MostSpellings = 12;

    private const string Words =
        "鍵/かぎ/カギ 鈴/すず/スズ 鏡/かがみ/カガミ 針/はり/ハリ 糸/いと 紐/ひも/ヒモ 縄/なわ 鎖/くさり 櫛/くし/クシ 札/ふだ 錘/おもり/重り/オモリ 重り/おもり/錘/オモリ "
        + "箱/はこ 蓋/ふた/フタ 瓶/びん/ビン 壺/つぼ/ツボ 甕/かめ 皿/さら 盃/さかずき/杯 杯/さかずき/盃 匙/さじ/スプーン 箸/はし 刀/かたな 鋏/はさみ/ハサミ 鋸/のこぎり 鑿/のみ "
        + "鉋/かんな 槌/つち 金槌/かなづち/かなずち/カナヅチ 木槌/きづち 釘/くぎ/クギ 螺子/ねじ/ネジ 発条/ばね/バネ/ぜんまい 歯車/はぐるま/ギア 輪/わ 指輪/ゆびわ 簪/かんざし 扇/おうぎ 扇子/せんす "
        + "団扇/うちわ 傘/かさ 帽子/ぼうし 手袋/てぶくろ 眼鏡/めがね/メガネ 虫眼鏡/むしめがね/ルーペ 羅針盤/らしんばん 地図/ちず 手紙/てがみ 封筒/ふうとう 筆/ふで 墨/すみ 硯/すずり 判子/はんこ/ハンコ "
        + "太鼓/たいこ 笛/ふえ 横笛/よこぶえ 琴/こと 鐘/かね 駒/こま 独楽/こま 碁石/ごいし 賽子/さいころ/サイコロ/賽 仮面/かめん 面/めん 人形/にんぎょう 提灯/ちょうちん 行灯/あんどん 灯籠/とうろう 時計/とけい "
        + "砂時計/すなどけい 錨/いかり 舵/かじ 帆/ほ 網/あみ 棒/ぼう 板/いた 玉/たま/珠/球 珠/たま/玉 球/たま/玉 栓/せん 羽/はね/羽根 羽根/はね/羽 花/はな 葉/は 種/たね 豆/まめ 袋/ふくろ 籠/かご/カゴ 桶/おけ "
        + "柄杓/ひしゃく 臼/うす 杵/きね 刷毛/はけ/ハケ 箒/ほうき 布/ぬの 帯/おび 着物/きもの 足袋/たび 下駄/げた 草履/ぞうり 枕/まくら 盆/ぼん/お盆 茶碗/ちゃわん 急須/きゅうす 蝋燭/ろうそく/ロウソク "
        + "木札/きふだ/木の札 型紙/かたがみ 栞/しおり 小瓶/こびん 小箱/こばこ 小槌/こづち 巻物/まきもの 掛け軸/かけじく/掛軸 屏風/びょうぶ 簾/すだれ 暖簾/のれん 風鈴/ふうりん 短冊/たんざく 紙縒り/こより "
        + "真鍮/しんちゅう/真ちゅう/黄銅 銅/どう/あかがね 鉄/てつ 銀/ぎん 金/きん 錫/すず/スズ 鉛/なまり 木/き 竹/たけ 石/いし 紙/かみ 革/かわ/皮 皮/かわ/革 骨/ほね 角/つの 貝/かい 真珠/しんじゅ "
        + "珊瑚/さんご/サンゴ 瑪瑙/めのう/メノウ 琥珀/こはく/コハク 翡翠/ひすい/ヒスイ 水晶/すいしょう 象牙/ぞうげ 漆/うるし 硝子/がらす/ガラス ガラス/硝子/がらす 陶器/とうき 磁器/じき 絹/きぬ 麻/あさ 綿/わた/めん "
        + "赤い/あかい/紅い 青い/あおい/蒼い 白い/しろい 黒い/くろい 黄色い/きいろい 緑/みどり 丸い/まるい/円い 四角い/しかくい 長い/ながい 短い/みじかい 小さな/ちいさな/小さい 大きな/おおきな/大きい 古い/ふるい 新しい/あたらしい "
        + "割れた/われた 欠けた/かけた 折れた/おれた 曲がった/まがった 破れた/やぶれた 錆びた/さびた 焦げた/こげた 濡れた/ぬれた";

    private static readonly Dictionary<string, string[]> Spellings = Words.Split(' ')
        .Select(group => group.Split('/'))
        .ToDictionary(forms => forms[0], forms => forms[1..], StringComparer.Ordinal);

    private static readonly int Longest = Spellings.Keys.Max(word => word.Length);

    /// <summary>A name in its other spellings, a dozen of them at most; none if no word of it is known.</summary>
    public static IEnumerable<string> Of(string name)
    {
        List<string> spelt = [""];
        for (var at = 0; at < name.Length;)
        {
            var length = Math.Min(Longest, name.Length - at);
            while (length > 1 && !Spellings.ContainsKey(name.Substring(at, length)))
                length--;
            var part = name.Substring(at, length);
            string[] forms = Spellings.TryGetValue(part, out var others) ? [part, .. others] : [part];
            spelt = [.. spelt.SelectMany(start => forms.Select(form => start + form)).Take(MostSpellings)];
            at += length;
        }

        return spelt.Where(other => other != name);
    }
}
