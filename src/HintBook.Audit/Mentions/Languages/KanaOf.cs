namespace HintBook.Audit.Mentions.Languages;

/// <summary>How words of Japanese that boxes are full of are read, and what other letters they have. From memory.</summary>
internal static class KanaOf
{
    private const int Most = 10, LongestWord = 4;

    private const string Things =
        "火鉢=ひばち 風鈴=ふうりん 暖簾=のれん 障子=しょうじ 屏風=びょうぶ 団子=だんご 枕=まくら 布団=ふとん 茶筅=ちゃせん 土鍋=どなべ "
        + "囲炉裏=いろり 炭=すみ 灰=はい 釜=かま 鍋=なべ 皿=さら 椀=わん 丼=どんぶり 凧=たこ 鼓=つづみ 面=めん 兜=かぶと 鎧=よろい 槍=やり 矢=や 弓=ゆみ 盾=たて "
        + "鍵=かぎ,カギ 鈴=すず 鏡=かがみ 針=はり 糸=いと 紐=ひも 縄=なわ 鎖=くさり,チェーン 櫛=くし 札=ふだ 錘=おもり,重り 重り=おもり,錘 箱=はこ 蓋=ふた,フタ 瓶=びん,ビン 壺=つぼ 甕=かめ 皿=さら "
        + "杯=さかずき 盃=さかずき 匙=さじ 箸=はし 刀=かたな 鋏=はさみ,ハサミ 鋸=のこぎり 鑿=のみ 鉋=かんな 槌=つち 金槌=かなづち,かなずち 木槌=きづち 釘=くぎ,クギ 螺子=ねじ,ネジ 発条=ばね,ぜんまい,バネ 歯車=はぐるま "
        + "指輪=ゆびわ 簪=かんざし 扇=おうぎ 扇子=せんす 団扇=うちわ 傘=かさ 帽子=ぼうし 手袋=てぶくろ 眼鏡=めがね,メガネ 虫眼鏡=むしめがね,ルーペ 羅針盤=らしんばん,コンパス 地図=ちず 手紙=てがみ 封筒=ふうとう 筆=ふで "
        + "硯=すずり 判子=はんこ,ハンコ 太鼓=たいこ 笛=ふえ 琴=こと 鐘=かね 独楽=こま,コマ 駒=こま 碁石=ごいし 賽子=さいころ,サイコロ 仮面=かめん,お面 人形=にんぎょう 提灯=ちょうちん 行灯=あんどん 灯籠=とうろう "
        + "時計=とけい 砂時計=すなどけい 錨=いかり 網=あみ 板=いた 栓=せん 羽根=はね,羽 羽=はね,羽根 豆=まめ 袋=ふくろ 籠=かご,カゴ 桶=おけ 柄杓=ひしゃく 臼=うす 杵=きね 刷毛=はけ,ハケ 箒=ほうき 布=ぬの 帯=おび "
        + "下駄=げた 草履=ぞうり 盆=ぼん,お盆 茶碗=ちゃわん 急須=きゅうす 蝋燭=ろうそく,ロウソク 木札=きふだ,木の札 型紙=かたがみ 栞=しおり 小瓶=こびん 小箱=こばこ 巻物=まきもの 風鈴=ふうりん 短冊=たんざく";

    private const string Stuffs =
        "真鍮=しんちゅう,真ちゅう,黄銅 銅=どう 鉄=てつ 銀=ぎん 金=きん 錫=すず 鉛=なまり 木=き 竹=たけ 石=いし 紙=かみ 革=かわ,皮 皮=かわ,革 骨=ほね 貝=かい 真珠=しんじゅ 珊瑚=さんご,サンゴ 瑪瑙=めのう,メノウ "
        + "琥珀=こはく 翡翠=ひすい 水晶=すいしょう 象牙=ぞうげ 漆=うるし 硝子=ガラス,がらす ガラス=硝子 陶器=とうき 磁器=じき 絹=きぬ 麻=あさ 赤い=あかい,紅い 青い=あおい 白い=しろい 黒い=くろい 黄色い=きいろい "
        + "緑=みどり 丸い=まるい,円い 長い=ながい 短い=みじかい 小さな=ちいさな,小さい 大きな=おおきな,大きい 古い=ふるい 割れた=われた 欠けた=かけた 折れた=おれた 破れた=やぶれた 錆びた=さびた";

    private const string Living =
        "燕=つばめ 雀=すずめ 千鳥=ちどり 鶴=つる 鷹=たか 鷲=わし 鳩=はと 烏=からす 兎=うさぎ 狐=きつね 狸=たぬき 猫=ねこ 犬=いぬ 馬=うま 牛=うし 鹿=しか 熊=くま 猿=さる 虎=とら 龍=りゅう 竜=りゅう 鯉=こい 鯛=たい "
        + "蛙=かえる 蛇=へび 蛍=ほたる 蝉=せみ 蜂=はち 鶯=うぐいす 鴎=かもめ 桜=さくら 梅=うめ 松=まつ 菊=きく 蓮=はす 椿=つばき 牡丹=ぼたん 朝顔=あさがお 紅葉=もみじ 楓=かえで 柳=やなぎ 柿=かき 桃=もも 栗=くり 稲=いね "
        + "雪=ゆき 雨=あめ 霞=かすみ 霧=きり 雷=かみなり 嵐=あらし 虹=にじ 雲=くも 月=つき 星=ほし 三日月=みかづき 時雨=しぐれ 吹雪=ふぶき 波=なみ 春=はる 夏=なつ 秋=あき 冬=ふゆ 心=こころ 夢=ゆめ 光=ひかり 宝=たから";

    private const string Tools =
        "轆轤=ろくろ 漏斗=じょうご,ろうと 分銅=ふんどう 磁石=じしゃく,マグネット 風呂敷=ふろしき 手綱=たづな 絵馬=えま 数珠=じゅず 三味線=しゃみせん 尺八=しゃくはち 鼓=つづみ 絣=かすり 藍=あい 引き出し=ひきだし,抽斗 隠し=かくし "
        + "留め金=とめがね 革紐=かわひも 鐙=あぶみ 鞍=くら 印籠=いんろう 煙管=きせる 徳利=とっくり 湯呑=ゆのみ 鉄瓶=てつびん 火箸=ひばし 砥石=といし 巻尺=まきじゃく 算盤=そろばん 天秤=てんびん 花瓶=かびん 横笛=よこぶえ 油=あぶら";

    // Words that are joined to longer ones; by themselves they would make too many spellings of names.
    private const string Joined =
        "道=みち 山=やま 川=かわ,がわ 海=うみ 空=そら,ぞら 風=かぜ 花=はな,ばな 草=くさ,ぐさ 森=もり 谷=たに 島=しま,じま 池=いけ 町=まち 村=むら 里=さと,ざと 橋=はし,ばし 坂=さか,ざか "
        + "門=かど 窓=まど 火=ひ,び 水=みず 土=つち 岩=いわ 砂=すな 夜=よる,よ 朝=あさ 昼=ひる 夕=ゆう 鳥=とり,どり 魚=さかな,うお 虫=むし 舟=ふね,ぶね 船=ふね,ぶね 車=くるま,ぐるま 畑=はたけ "
        + "田=た,だ 野=の 原=はら 葉=は,ば 実=み 根=ね 種=たね,だね 苔=こけ,ごけ 影=かげ 声=こえ,ごえ 音=おと 色=いろ 香=か 湯=ゆ 塩=しお 米=こめ 酒=さけ,ざけ 白=しろ,しら 赤=あか 青=あお 黒=くろ 霜=しも "
        + "氷=こおり 露=つゆ 鷺=さぎ 梟=ふくろう 鴨=かも 檜=ひのき 桧=ひのき 杉=すぎ 藤=ふじ 菫=すみれ 葦=あし 芒=すすき 向日葵=ひまわり 紫陽花=あじさい 蜻蛉=とんぼ 蝶=ちょう 蟻=あり 蟹=かに 亀=かめ 鮎=あゆ "
        + "畳=たたみ 簾=すだれ 暦=こよみ 硯=すずり 雪=ゆき 雨=あめ,あま 月=つき,づき 星=ほし,ぼし 雲=くも,ぐも 波=なみ 春=はる 秋=あき 冬=ふゆ 夏=なつ";

    private static readonly Dictionary<string, string[]> Joinable = Joined.Split(' ')
        .Select(entry => entry.Split('='))
        .ToDictionary(entry => entry[0], entry => entry[1].Split(','), StringComparer.Ordinal);

    private static readonly Dictionary<string, string[]> Readings = $"{Things} {Stuffs} {Living} {Tools}".Split(' ')
        .Select(entry => entry.Split('='))
        .DistinctBy(entry => entry[0])
        .ToDictionary(entry => entry[0], entry => entry[1].Split(','), StringComparer.Ordinal);

    /// <summary>Other spellings of a name.</summary>
    public static IEnumerable<string> Name(string name) => From(name, 0, "").Where(other => other != name).Take(Most);

    /// <summary>The words of Chinese letters that are read so, given in hiragana: 燕 for つばめ, 雪道 for ゆきみち.</summary>
    public static IEnumerable<string> WordsFor(string kana) => Single(kana)
        .Concat(from cut in Enumerable.Range(1, Math.Max(0, kana.Length - 1))
                from first in Single(kana[..cut])
                from second in Single(kana[cut..])
                select first + second)
        .Distinct();

    private static IEnumerable<string> Single(string kana) => Readings.Concat(Joinable).Where(word => word.Value.Contains(kana)).Select(word => word.Key);

    private static IEnumerable<string> From(string name, int at, string said)
    {
        if (at >= name.Length)
            return [said];
        for (var length = Math.Min(LongestWord, name.Length - at); length > 0; length--)
        {
            if (Readings.TryGetValue(name.Substring(at, length), out var others))
                return others.Append(name.Substring(at, length)).SelectMany(other => From(name, at + length, said + other));
        }

        return From(name, at + 1, said + name[at]);
    }
}
