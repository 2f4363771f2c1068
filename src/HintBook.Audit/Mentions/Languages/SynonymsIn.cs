namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Other words for the things that boxes hide: "the copper phial" for a copper flask. A word of a group stands for another only if the names of a book have
/// no other word of that group, and only beside a further word of its name. From memory. Words are parted by spaces, groups by commas.
/// </summary>
internal static class SynonymsIn
{
    private const string English =
        "flask bottle phial vial flagon ampoule, coin token disc disk medal penny counter, rod stick bar staff baton wand cane pole, "
        + "ball marble bead sphere orb globe, card note slip ticket, map chart plan, lens loupe magnifier, string cord thread twine lace rope cordage, "
        + "hammer mallet gavel, case tin box casket chest coffer canister caddy, ring hoop, pin peg dowel, bell gong chime, "
        + "cup goblet beaker mug tumbler chalice, "
        + "bowl dish basin saucer, bag pouch sack purse satchel, knife blade dagger, lamp lantern, candle taper, stone pebble rock, feather quill plume, "
        + "book booklet notebook ledger logbook diary, picture portrait painting engraving, statue figure figurine statuette doll puppet, watch timepiece, "
        + "scoop ladle spoon, jar pot urn, plug stopper cork bung, spool reel bobbin, wheel cog gear, whistle pipe flute, belt strap, hat cap bonnet, "
        + "boat ship, "
        + "tongs tweezers pincers pliers, awl bodkin, badge brooch, conductor bandmaster, carpet rug, shears scissors";

    private const string German =
        "flasche fläschchen flakon phiole ampulle, münze taler marke jeton medaille plakette plättchen, stab stock stange stecken, kugel murmel perle, "
        + "karte zettel billett kärtchen, plan landkarte, linse lupe, schnur faden kordel garn seil strick bindfaden, hammer schlegel klöpfel, "
        + "kästchen kiste dose schatulle büchse schachtel truhe kasten etui kassette, ring reif, stift bolzen dübel zapfen, glocke glöckchen schelle, "
        + "becher kelch pokal, schale schüssel napf, beutel sack säckchen, messer klinge dolch, lampe laterne leuchte, stein kiesel, feder federkiel, "
        + "buch heft büchlein, bild bildnis gemälde, figur puppe statue figürchen, löffel kelle, krug topf kanne, korken stöpsel pfropfen stopfen, "
        + "spule rolle, "
        + "pfeife flöte, riemen gurt gürtel, hut mütze kappe, boot schiff kahn, zange pinzette, ahle pfriem, dirigent kapellmeister, nadel ahle";

    private const string French =
        "flacon fiole bouteille ampoule flasque, jeton pièce médaille disque monnaie, bâton tige baguette canne barre, bille boule sphère perle, "
        + "carte billet fiche, loupe lentille, cordon ficelle fil corde cordelette lacet, marteau maillet, boîte coffret écrin cassette étui caisse, "
        + "anneau bague, "
        + "cheville goupille, cloche clochette grelot, gobelet coupe timbale, bol écuelle, sac sachet bourse besace, couteau lame canif, lampe lanterne, "
        + "pierre caillou galet, livre carnet cahier registre, portrait tableau gravure, figurine statue statuette poupée, cuillère cuiller louche, "
        + "pot cruche bocal vase, bobine fuseau, roue rouage, sifflet flûte, sangle courroie lanière ceinture, chapeau casquette bonnet, bateau navire barque, "
        + "pince tenailles, poinçon alêne";

    private const string Spanish =
        "frasco botella redoma ampolla, moneda ficha disco medalla, palo vara bastón varilla barra, bola canica esfera cuenta, tarjeta nota papelito billete, "
        + "mapa plano, lupa lente, cuerda cordel hilo cordón bramante, martillo mazo, caja cofre estuche arqueta lata, anillo aro argolla sortija, "
        + "clavija pasador, "
        + "campana campanilla cascabel, copa vaso cáliz, cuenco tazón, bolsa saco saquito, cuchillo navaja, lámpara farol linterna candil, piedra guijarro, "
        + "libro cuaderno libreta, cuadro retrato, figura estatuilla muñeco muñeca, cuchara cucharón cazo, jarra tarro vasija, corcho tapón, carrete bobina, "
        + "rueda engranaje, silbato pito flauta, correa cinturón, sombrero gorra, barco barca, pinza tenazas alicates, punzón lezna";

    private const string Japanese =
        "小瓶 瓶 びん ビン ボトル, コイン メダル 硬貨, 棒 杖 竿, 玉 球 ボール ビー玉, 札 カード 紙片, 地図 図面, 紐 ひも 糸 縄 綱, 木槌 槌 金槌 ハンマー, 箱 小箱 ケース, "
        + "輪 指輪 環 リング, 鈴 鐘 ベル, 杯 盃, 袋 巾着, 小刀 ナイフ 刀, 行灯 提灯 ランプ ランタン, 石 小石, 羽根 羽, 帳面 手帳 帳簿, 匙 スプーン, 栓 コルク, 帯 ベルト, "
        + "人形 像, レンズ 虫眼鏡 ルーペ, 釘 くぎ, 筆 ふで, 壺 甕 かめ";

    private const string Arabic =
        "قارورة قنينة زجاجة, قرش عملة فلس ميدالية قرص, عصا قضيب عود, كرة خرزة بلية, بطاقة قصاصة رقعة, خريطة مخطط, حبل خيط رباط, مطرقة مدقة شاكوش, "
        + "صندوق علبة, خاتم حلقة, مسمار وتد, جرس ناقوس, كأس قدح كوب, كيس جراب صرة, سكين خنجر, مصباح قنديل فانوس سراج, حجر حصاة, دفتر كراس, صورة لوحة, "
        + "تمثال دمية, ملعقة مغرفة, إبريق جرة, سدادة فلينة, عجلة دولاب, صافرة مزمار, حزام سير, قارب سفينة مركب, ملقط كماشة";

    /// <summary>The groups of a language.</summary>
    public static string[][] Of(string language) =>
    [
        .. from words in (language switch
           {
               "en" => English,
               "de" => German,
               "fr" => French,
               "es" => Spanish,
               "ja" => Japanese,
               "ar" => Arabic,
               _ => "",
           }).Split(", ", StringSplitOptions.RemoveEmptyEntries)
           select words.Split(' '),
    ];

    /// <summary>Words for a stuff that go without saying: "the mallet of beech" for one of beech wood.</summary>
    public static string Stuffs(string language) => language switch
    {
        "en" => "wood metal",
        "de" => "holz metall",
        "fr" => "bois métal",
        "es" => "madera metal",
        "ar" => "خشب معدن",
        _ => "",
    };

    /// <summary>Adjectives that stand before the noun where most stand behind it.</summary>
    public static string BeforeNouns(string language) => language switch
    {
        "fr" => "vieux vieil vieille petit petite grand grande gros grosse beau bel belle bon bonne nouveau nouvelle jeune long longue "
            + "premier première autre faux "
            + "fausse haut haute double demi demie ancien ancienne joli jolie",
        "es" => "viejo vieja pequeño pequeña gran grande buen bueno buena nuevo nueva primer primera falso falsa medio media doble antiguo antigua",
        _ => "",
    };
}
