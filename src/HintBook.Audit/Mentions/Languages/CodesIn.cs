using System.Collections.Immutable;
using System.Globalization;
using HintBook.Audit.Mentions.Signs;

namespace HintBook.Audit.Mentions.Languages;

/// <summary>The words in which codes are told piece by piece. From memory.</summary>
internal static class CodesIn
{
    public static ImmutableArray<Meaning> English { get; } =
    [
        .. Ordinals(
            "first, second, third, fourth, fifth, sixth, seventh, eighth, ninth, tenth, eleventh, twelfth, thirteenth, fourteenth, fifteenth, sixteenth, "
            + "seventeenth, eighteenth, nineteenth, twentieth, twenty-first, twenty-second, twenty-third, twenty-fourth, twenty-fifth, twenty-sixth"),
        .. Figures("zeros, ones, twos, threes, fours, fives, sixes, sevens, eights, nines"),
        .. Figures("zeroes"),
        .. Figures("noughts"),
        new(Sign.Ordinal, "start with, starts with, starting with, begin with, begins with, beginning with, leftmost, opens with, leads, begin, start", 1),
        new(Sign.Last, "last, lastly, final, finally, rightmost, end with, ends with, ending with, finish with, finishes with, finish on, end on, "
            + "finishing with, rear"),
        new(Sign.Next, "next, then, after that, followed by, afterwards"),
        new(Sign.Previous, "the one before, before it, before that, before those, just before it, preceding, previous"),
        new(Sign.Between, "in between, in the middle, between them, the middle one, middle wheel, middle drum, middle ring, middle dial, middle slider"),
        new(Sign.Left, "on its left, to its left, left of it, the one on its left, the one to its left, the one on the left, to the left of it, on "
            + "the left of it"),
        new(Sign.Right, "on its right, to its right, right of it, the one on its right, the one to its right, the one on the right, to the right of "
            + "it, on the right of it"),
        new(Sign.Backwards, "right to left, from the right, backwards, backward, back to front, in reverse, reversed, from the end"),
        new(Sign.More, "more, other"),
        new(Sign.Number, "pair of, couple of, twin", 2),
        new(Sign.Number, "empty place, blank, gap, nothing, nothing at all, zip, zilch, goose egg", 0, "0"),
        new(Sign.Number, "none, no stroke, no strokes, no notch, no mark, no dot, no line", 0, "0"),
        new(Sign.Number, "half a dozen, half dozen", 6, "6"),
        new(Sign.Number, "a dozen", 12, "12"),
        new(Sign.Number, "baker's dozen, unlucky number", 13, "13"),
        new(Sign.Number, "lucky number, days in a week, days of the week, deadly sins", 7, "7"),
        new(Sign.Number, "deuce, smallest prime", 2, "2"),
        new(Sign.Number, "musketeers, wise men, sides of a triangle", 3, "3"),
        new(Sign.Number, "the seasons, seasons of the year, seasons in a year, suits of cards, points of the compass, legs of a horse, legs of a dog, "
            + "corners of a square, sides of a square", 4, "4"),
        new(Sign.Number, "fingers on a hand, fingers of one hand, fingers of a hand, toes on a foot, senses", 5, "5"),
        new(Sign.Number, "legs of an insect, faces of a cube, faces of a die, sides of a hexagon, strings of a guitar", 6, "6"),
        new(Sign.Number, "wonders of the world, colours of the rainbow, colors of the rainbow, days in the week, dwarfs", 7, "7"),
        new(Sign.Number, "legs of a spider, legs on a spider, arms of an octopus, planets", 8, "8"),
        new(Sign.Number, "the muses, lives of a cat", 9, "9"),
        new(Sign.Number, "months in a year, months of the year, signs of the zodiac, apostles", 12, "12"),
        new(Sign.Code,
            "wheel, wheels, dial, dials, digit, digits, figure, figures, number, numbers, code, combination, ring, rings, lock, slider, sliders, set, turn, "
            + "enter, spell, spells, spelling, letter, letters, symbol, symbols, knob, knobs, punch, press, reads, show, shows, block, blocks, "
            + "counter, order, "
            + "disc, discs, disk, disks, drum, drums, tumbler, tumblers, position, dialled, type, flag, string, strings, window, windows, "
            + "left to right, in that order"),
    ];

    public static ImmutableArray<Meaning> German { get; } =
    [
        .. Ordinals("erste, zweite, dritte, vierte, fünfte, sechste, siebte, achte, neunte, zehnte"),
        .. Ordinals("ersten, zweiten, dritten, vierten, fünften, sechsten, siebten, achten, neunten, zehnten"),
        .. Ordinals("erster, zweiter, dritter, vierter, fünfter, sechster, siebter, achter, neunter, zehnter"),
        .. Ordinals("erstes, zweites, drittes, viertes, fünftes, sechstes, siebtes, achtes, neuntes, zehntes"),
        .. Ordinals("erstens, zweitens, drittens, viertens, fünftens, sechstens"),
        .. Figures("nullen, einsen, zweien, dreien, vieren, fünfen, sechsen, siebenen, achten, neunen"),
        .. Figures("nuller, einser, zweier, dreier, vierer, fünfer, sechser, siebener, achter, neuner"),
        new(Sign.Ordinal, "zuerst, beginnen, beginnt, beginne, beginnend, anfangs, fang mit, zuvorderst", 1),
        new(Sign.Last, "letzte, letzten, letzter, letztes, zuletzt, schließlich, zum schluss, am schluss, am ende, zum ende, endet"),
        new(Sign.Next, "dann, danach, darauf, nächste, nächsten, folgt, folgen, anschließend"),
        new(Sign.Previous, "davor, vorletzte, vorletzten, vorhergehende"),
        new(Sign.Between, "dazwischen, in der mitte, mittlere, mittleren, mittlerer, mittleres"),
        new(Sign.Left, "links davon, links daneben, linke daneben, links von ihm, links von ihr, links neben ihm, links neben ihr, links"),
        new(Sign.Right, "rechts davon, rechts daneben, rechte daneben, rechts von ihm, rechts von ihr, rechts neben ihm, rechts neben ihr, rechts"),
        new(Sign.Backwards, "von rechts, von hinten, rückwärts, von rechts nach links, umgekehrt"),
        new(Sign.More, "weiteres, weitere, weiterer"),
        new(Sign.Number, "unglückszahl", 13, "13"),
        new(Sign.Number, "halbes dutzend, halben dutzend", 6, "6"),
        new(Sign.Number, "gar nichts, nichts, leerstelle", 0, "0"),
        new(Sign.Number, "kleinste primzahl, kleinsten primzahl", 2, "2"),
        new(Sign.Number, "heiligen drei könige, musketiere, seiten eines dreiecks", 3, "3"),
        new(Sign.Number, "jahreszeiten, himmelsrichtungen, evangelisten, saiten einer geige", 4, "4"),
        new(Sign.Number, "finger einer hand, finger an einer hand, sinne", 5, "5"),
        new(Sign.Number, "seiten eines würfels, beine eines käfers, beine eines insekts, saiten einer gitarre", 6, "6"),
        new(Sign.Number, "wochentage, tage der woche, todsünden, zwerge, weltwunder, farben des regenbogens", 7, "7"),
        new(Sign.Number, "beine einer spinne, spinnenbeine, planeten", 8, "8"),
        new(Sign.Number, "musen, leben einer katze", 9, "9"),
        new(Sign.Number, "paar", 2),
        new(Sign.Number, "kein strich, keine kerbe, kein punkt, kein schlag", 0, "0"),
        new(Sign.Code,
            "rad, räder, rädchen, walze, walzen, scheibe, scheiben, ziffer, ziffern, zahl, zahlen, code, kombination, ring, ringe, ringen, schloss, "
            + "schieber, "
            + "stelle, stellen, stellt, drehe, drehen, buchstabe, buchstaben, buchstabiert, zeigt, zeigen, lies, lautet, "
            + "von links nach rechts, reihenfolge, position"),
    ];

    public static ImmutableArray<Meaning> French { get; } =
    [
        .. Ordinals("premier, deuxième, troisième, quatrième, cinquième, sixième, septième, huitième, neuvième, dixième"),
        .. Ordinals("première, seconde"),
        new(Sign.Ordinal, "second", 2),
        .. Figures("zéros"),
        new(Sign.Ordinal, "d’abord, commencez par, commence par, commencer par", 1),
        new(Sign.Last, "dernier, dernière, derniers, dernières, enfin, finissez par, finir par, termine par, terminez par, pour finir, à la fin"),
        new(Sign.Next, "puis, ensuite, suivant, suivante, après quoi, suivi de"),
        new(Sign.Previous, "précédent, précédente, avant-dernier, avant-dernière, juste avant"),
        new(Sign.Between, "entre les deux, au milieu, du milieu"),
        new(Sign.Left, "à sa gauche, à gauche de celui-ci"),
        new(Sign.Right, "à sa droite"),
        new(Sign.Backwards, "de droite à gauche, à l’envers, à rebours, en partant de la droite, en partant de la fin"),
        new(Sign.More, "autre"),
        new(Sign.Number, "paire de, paire", 2),
        new(Sign.Number, "demi-douzaine", 6, "6"),
        new(Sign.Number, "une douzaine", 12, "12"),
        new(Sign.Number, "rois mages, mousquetaires, côtés d’un triangle", 3, "3"),
        new(Sign.Number, "saisons, points cardinaux, évangélistes, cordes d’un violon", 4, "4"),
        new(Sign.Number, "doigts de la main, doigts d’une main", 5, "5"),
        new(Sign.Number, "faces d’un dé, pattes d’un insecte, cordes d’une guitare", 6, "6"),
        new(Sign.Number, "jours de la semaine, péchés capitaux, nains, merveilles du monde, couleurs de l’arc-en-ciel", 7, "7"),
        new(Sign.Number, "pattes d’une araignée, pattes de l’araignée, planètes", 8, "8"),
        new(Sign.Number, "muses", 9, "9"),
        new(Sign.Number, "rien du tout, rien", 0, "0"),
        new(Sign.Number, "aucun, aucune", 0, "0"),
        new(Sign.Code,
            "molette, molettes, roue, roues, chiffre, chiffres, nombre, code, combinaison, anneau, anneaux, bague, bagues, cadenas, serrure, curseur, "
            + "lettre, lettres, tournez, composez, réglez, mettez, entrez, formez, épelez, affiche, affichez, ordre, position, disque, disques"),
    ];

    public static ImmutableArray<Meaning> Spanish { get; } =
    [
        .. Ordinals("primero, segundo, tercero"),
        new(Sign.Ordinal, "quinto", 5),
        new(Sign.Ordinal, "sexto", 6),
        .. Ordinals("primera, segunda, tercera, cuarta, quinta, sexta, séptima, octava, novena, décima"),
        .. Ordinals("primer"),
        new(Sign.Ordinal, "tercer", 3),
        .. Figures("ceros, unos, doses, treses, cuatros, cincos, seises, sietes, ochos, nueves"),
        new(Sign.Ordinal, "empiece por, empieza por, comience por, empezando por, empiece con", 1),
        new(Sign.Last, "último, última, últimos, últimas, al final, finalmente, por último, termine con, termina en, acabe con, acabe en"),
        new(Sign.Next, "luego, después, siguiente, seguido de, sigue, siguen"),
        new(Sign.Previous, "anterior, penúltimo, penúltima"),
        new(Sign.Between, "entre medias, en medio, del medio, del centro"),
        new(Sign.Left, "a su izquierda"),
        new(Sign.Right, "a su derecha"),
        new(Sign.Backwards, "de derecha a izquierda, al revés, hacia atrás, empezando por el final"),
        new(Sign.More, "más, otra, otro"),
        new(Sign.Number, "par de", 2),
        new(Sign.Number, "media docena", 6, "6"),
        new(Sign.Number, "una docena", 12, "12"),
        new(Sign.Number, "nada, cero patatero, nada de nada", 0, "0"),
        new(Sign.Number, "reyes magos, mosqueteros, hijas de elena, lados de un triángulo", 3, "3"),
        new(Sign.Number, "estaciones del año, puntos cardinales, evangelistas, cuerdas de un violín", 4, "4"),
        new(Sign.Number, "dedos de la mano, dedos de una mano, sentidos", 5, "5"),
        new(Sign.Number, "caras de un dado, patas de un insecto, cuerdas de una guitarra", 6, "6"),
        new(Sign.Number, "días de la semana, pecados capitales, enanitos, maravillas del mundo, vidas de un gato", 7, "7"),
        new(Sign.Number, "patas de la araña, patas de una araña, planetas", 8, "8"),
        new(Sign.Number, "musas", 9, "9"),
        new(Sign.Number, "ninguno, ninguna", 0, "0"),
        new(Sign.Code,
            "rueda, ruedas, cifra, cifras, número, números, dígito, dígitos, código, combinación, anillo, anillos, cerradura, candado, disco, discos, "
            + "letra, letras, gire, ponga, marque, escriba, deletree, orden, posición"),
    ];

    public static ImmutableArray<Meaning> Japanese { get; } =
    [
        .. Ordinals("一番目, 二番目, 三番目, 四番目, 五番目, 六番目, 七番目, 八番目"),
        .. Ordinals("一つ目, 二つ目, 三つ目, 四つ目, 五つ目, 六つ目, 七つ目, 八つ目"),
        .. Ordinals("1番目, 2番目, 3番目, 4番目, 5番目, 6番目, 7番目, 8番目"),
        .. Ordinals("一つめ, 二つめ, 三つめ, 四つめ, 五つめ, 六つめ, 七つめ, 八つめ"),
        .. Ordinals("ひとつめ, ふたつめ, みっつめ, よっつめ, いつつめ, むっつめ"),
        .. Ordinals("ひとつ目, ふたつ目, みっつ目, よっつ目, いつつ目, むっつ目"),
        .. Ordinals("1つ目, 2つ目, 3つ目, 4つ目, 5つ目, 6つ目, 7つ目, 8つ目"),
        .. Ordinals("1つめ, 2つめ, 3つめ, 4つめ, 5つめ, 6つめ, 7つめ, 8つめ"),
        .. Ordinals("一枚目, 二枚目, 三枚目, 四枚目, 五枚目, 六枚目"),
        .. Ordinals("一文字目, 二文字目, 三文字目, 四文字目, 五文字目, 六文字目"),
        .. Ordinals("第一, 第二, 第三, 第四, 第五, 第六, 第七, 第八"),
        .. Ordinals("一桁目, 二桁目, 三桁目, 四桁目, 五桁目, 六桁目"),
        new(Sign.Ordinal, "先頭, 最初, まず, はじめ, 初め, 左端", 1),
        new(Sign.Last, "最後, 末尾, 右端, おしまい"),
        new(Sign.Next, "次, 次に, それから, 続いて, そして"),
        new(Sign.Previous, "その手前, 手前, その前, 一つ前"),
        new(Sign.Backwards, "右から, 逆に, 後ろから"),
        new(Sign.Number, "ゼロ, れい, 〇", 0, "0"),
        new(Sign.Code, "ダイヤル, 数字, 番号, 錠, 輪, 文字, 合わせ, 回, 順, 左から, 暗証"),
    ];

    public static ImmutableArray<Meaning> Arabic { get; } =
    [
        .. Ordinals("أول, ثاني, ثالث, رابع, خامس, سادس, سابع, ثامن, تاسع, عاشر"),
        new(Sign.Ordinal, "أولا, أولها, أوله, ابدأ, بداية", 1),
        new(Sign.Last, "آخرها, آخره, آخر, أخير, أخيرة, أخيرا, ختاما"),
        new(Sign.Next, "ثم, بعد, بعدها, بعده, تالي, تالية, يليه, تليها, يليها"),
        new(Sign.Previous, "قبلها, قبله, سابقة"),
        new(Sign.Backwards, "عكس, بالعكس, من اليسار إلى اليمين"),
        new(Sign.Figures, "صفران, صفرين, أصفار", 0, "0"),
        .. TwoLetters(),
        new(Sign.Code, "عجلة, عجلات, رقم, أرقام, قفل, حرف, حروف, حلقة, حلقات, قرص, أقراص, أدر, اضبط, اكتب, رمز, ترتيب, خانة"),
    ];

    /// <summary>
    /// Words that stand for their first letter when something is spelt: the international code of signals (ICAO), and what people say in the
    /// countries; from memory.
    /// </summary>
    public static string AlphabetOf(string language) => language switch
    {
        "en" => "alfa alpha bravo charlie delta echo foxtrot golf hotel india juliett juliet kilo lima mike november oscar papa quebec romeo sierra tango "
            + "uniform victor whiskey whisky xray yankee zulu",
        "de" => "anton berta cäsar dora emil friedrich gustav heinrich ida julius kaufmann konrad ludwig martha nordpol otto paula quelle richard samuel "
            + "siegfried theodor ulrich viktor wilhelm xanthippe ypsilon zacharias zeppelin aachen berlin chemnitz düsseldorf essen frankfurt goslar "
            + "hamburg ingelheim jena köln leipzig münchen nürnberg offenbach potsdam quickborn rostock salzwedel tübingen unna völklingen wuppertal zwickau",
        "fr" => "anatole berthe célestin désiré eugène françois gaston henri irma joseph kléber louis marcel nicolas oscar pierre quintal raoul suzanne "
            + "thérèse ursule victor william xavier yvonne zoé",
        "es" => "antonio barcelona burgos carmen cáceres domingo dolores enrique españa francia gerona granada historia huelva inés italia josé jaén kilo "
            + "lorenzo lugo león madrid málaga navarra oviedo parís queso ramón sevilla sábado toledo tarragona ulises valencia washington xilófono "
            + "yegua zaragoza zamora",
        _ => "",
    };

    /// <summary>The names of letters as they are written, the letter before each.</summary>
    public static string LetterNamesOf(string language) => language switch
    {
        "en" => "w double-u w double-you a ay b bee b be c cee c see c sea d dee e ee f ef f eff g gee h aitch i eye j jay k kay l el l ell m em "
        + "n en o oh o owe p pee p pea "
        + "q cue q queue "
            + "r ar r are s ess t tee t tea u you v vee x ex y wye y why z zed z zee",
        "es" => "f efes l eles m emes n enes r erres s eses "
            + "w uve-doble w doble-uve w doble-u y i-griega a a b be c ce d de e e f efe g ge h hache i i j jota k ka l ele m eme n ene o o p pe q "
        + "cu r erre r ere s ese t te u u v uve x equis z zeta",
        "fr" => "w double-vé w double-v y i-grec b bé c cé d dé f effe g gé h hache j ji k ka l elle m emme n enne p pé q cu r erre s esse t té v vé "
        + "x ixe z zède",
        "de" => "b be c ce d de f ef g ge h ha j jot k ka l el m em n en p pe q ku r er s es t te v vau w we x ix y ypsilon z zett",
        "ar" => "ا ألف ب باء ت تاء ث ثاء ج جيم ح حاء خ خاء د دال ذ ذال ر راء ز زاي س سين ش شين ص صاد ض ضاد ط طاء ظ ظاء ع عين غ غين ف فاء ق قاف ك كاف ل لام "
            + "م ميم ن نون ه هاء ه تاء-مربوطة ه التاء-المربوطة و واو ي ياء",
        _ => "",
    };

    // دالان, دالين: two of a letter.
    private static IEnumerable<Meaning> TwoLetters() =>
        from pair in LetterNamesOf("ar").Split(' ').Chunk(2)
        where pair[1].Length < 5
        from ending in (string[])["ان", "ين"]
        select new Meaning(Sign.Letter, pair[1] + ending, Symbols: pair[0] + pair[0]);

    private static IEnumerable<Meaning> Ordinals(string words) =>
        words.Split(", ").Select((word, i) => new Meaning(Sign.Ordinal, word, i + 1));

    private static IEnumerable<Meaning> Figures(string words) =>
        words.Split(", ").Select((word, i) => new Meaning(Sign.Figures, word, i, i.ToString(CultureInfo.InvariantCulture)));
}
