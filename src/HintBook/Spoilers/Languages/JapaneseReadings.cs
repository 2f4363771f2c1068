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

    // What words for a lock of letters are made of: beasts, plants, the sky.
    private const string Natural =
        "燕/つばめ 雀/すずめ 千鳥/ちどり 鶴/つる 亀/かめ 鷹/たか 鷲/わし 鳩/はと 烏/からす 鴉/からす 兎/うさぎ 狐/きつね 狸/たぬき 猫/ねこ 犬/いぬ 馬/うま 牛/うし 鹿/しか 熊/くま 猿/さる 虎/とら "
        + "龍/りゅう 竜/りゅう 鯉/こい 鯛/たい 鮎/あゆ 鯨/くじら 蛙/かえる 蛇/へび 蝶/ちょう 蛍/ほたる 蜻蛉/とんぼ 蝉/せみ 蜂/はち 蟻/あり 蜘蛛/くも 鶯/うぐいす 鴨/かも 鶏/にわとり 雁/かり 鴎/かもめ "
        + "桜/さくら 梅/うめ 松/まつ 竹/たけ 菊/きく 藤/ふじ 蓮/はす 椿/つばき 牡丹/ぼたん 朝顔/あさがお 紅葉/もみじ 楓/かえで 柳/やなぎ 杉/すぎ 桐/きり 欅/けやき 檜/ひのき 柿/かき 桃/もも 栗/くり 麦/むぎ 稲/いね "
        + "芒/すすき 薄/すすき 萩/はぎ 苔/こけ 柚子/ゆず 蜜柑/みかん 林檎/りんご 葡萄/ぶどう 雪/ゆき 雨/あめ 霞/かすみ 霧/きり 霜/しも 雷/かみなり 稲妻/いなずま 嵐/あらし 虹/にじ 雲/くも 月/つき 星/ほし "
        + "太陽/たいよう 三日月/みかづき 満月/まんげつ 時雨/しぐれ 夕立/ゆうだち 吹雪/ふぶき 氷/こおり 波/なみ 海/うみ 川/かわ 滝/たき 泉/いずみ 湖/みずうみ 島/しま 山/やま 森/もり 林/はやし 野原/のはら 春/はる "
        + "夏/なつ 秋/あき 冬/ふゆ 朝日/あさひ 夕日/ゆうひ 夜明け/よあけ 祭り/まつり 心/こころ 夢/ゆめ 命/いのち 光/ひかり 影/かげ 炎/ほのお 宝/たから 旅/たび 港/みなと 灯台/とうだい 故郷/ふるさと 手鞠/てまり "
        + "轆轤/ろくろ 漏斗/じょうご/ろうと 分銅/ふんどう 磁石/じしゃく 風呂敷/ふろしき 手綱/たづな 絵馬/えま 数珠/じゅず 三味線/しゃみせん 尺八/しゃくはち 鼓/つづみ 鉦/かね 絣/かすり 藍/あい 紅/べに 染料/せんりょう "
        + "引き出し/ひきだし/抽斗 隠し/かくし 二重底/にじゅうぞこ 留め金/とめがね 金具/かなぐ 革紐/かわひも 鐙/あぶみ 鞍/くら 手形/てがた 印籠/いんろう 根付/ねつけ 煙管/きせる/キセル 徳利/とっくり 猪口/ちょこ 湯呑/ゆのみ "
        + "鉄瓶/てつびん 火箸/ひばし 火打石/ひうちいし 砥石/といし 巻尺/まきじゃく 物差し/ものさし 算盤/そろばん 天秤/てんびん 虫籠/むしかご 花瓶/かびん 置物/おきもの 絵皿/えざら 絵筆/えふで 白墨/はくぼく 撥/ばち 鞠/まり "
        + "狼/おおかみ 鼠/ねずみ 鮪/まぐろ 鰯/いわし 蟹/かに 海老/えび 蛸/たこ 風/かぜ 空/そら 土/つち 水/みず 花火/はなび 月夜/つきよ 雪道/ゆきみち 淡雪/あわゆき 初雪/はつゆき 粉雪/こなゆき "
        + "夕焼け/ゆうやけ 朝焼け/あさやけ 朝露/あさつゆ 春風/はるかぜ 木枯らし/こがらし 枯葉/かれは 若葉/わかば 青葉/あおば 木の葉/このは 都/みやこ 里/さと 道/みち 橋/はし 庭/にわ 城/しろ 寺/てら 社/やしろ "
        + "鳥居/とりい 狛犬/こまいぬ 歌/うた 踊り/おどり 煙/けむり 湯気/ゆげ 泡/あわ 灰/はい 炭/すみ 香り/かおり 味噌/みそ 醤油/しょうゆ 茶/ちゃ 餅/もち 団子/だんご 飴/あめ 饅頭/まんじゅう 羊羹/ようかん 暦/こよみ "
        + "秤/はかり 雨宿り/あまやどり 子守唄/こもりうた 折り紙/おりがみ 花札/はなふだ 風車/かざぐるま 水車/すいしゃ 竹馬/たけうま 鬼/おに 天狗/てんぐ 河童/かっぱ 畳/たたみ 虫/むし 煉瓦/れんが";

    private static readonly Dictionary<string, string[]> Spellings = $"{Words} {Natural}".Split(' ')
        .Select(group => group.Split('/'))
        .DistinctBy(forms => forms[0])
        .ToDictionary(forms => forms[0], forms => forms[1..], StringComparer.Ordinal);

    private static readonly ILookup<string, string> Read =
        (from word in Spellings from reading in word.Value select (SaidLetters.Hiragana(reading), word.Key)).ToLookup(pair => pair.Item1, pair => pair.Key);

    /// <summary>The words of Chinese letters that are read so, in either kana; none if no such word is known.</summary>
    public static IEnumerable<string> ReadAs(string kana) => Read[SaidLetters.Hiragana(kana)];

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
