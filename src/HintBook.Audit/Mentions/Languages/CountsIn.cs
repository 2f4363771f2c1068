namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Words by which things that are counted, and rows of labels and figures, are known as a code; and words of other talk of numbers. From memory. Phrases are
/// parted by commas and looked for at the beginnings of words, words by spaces.
/// </summary>
internal sealed record CountsIn
{
    /// <summary>Phrases that speak of a lock, of its setting, or of the numbers that were counted; behind a star they may end a compound.</summary>
    public string Locks { get; init; } = "";

    /// <summary>Phrases that only speak of an order.</summary>
    public string Orders { get; init; } = "";

    /// <summary>Words that may count one thing, besides the number words.</summary>
    public string Ones { get; init; } = "";

    /// <summary>Words that may count none.</summary>
    public string Noughts { get; init; } = "";

    /// <summary>Endings of nouns that say two.</summary>
    public string Duals { get; init; } = "";

    /// <summary>Words before a number that belongs to a part of a text and counts nothing: <c>hint 3</c>.</summary>
    public string Numbered { get; init; } = "";

    /// <summary>Words for a place in a row.</summary>
    public string Places { get; init; } = "";

    /// <summary>Words for what is set, as they head a column or name a row.</summary>
    public string Heads { get; init; } = "";

    /// <summary>Beginnings of words of kitchens, shops, families, streets and weekdays.</summary>
    public string Elsewhere { get; init; } = "";

    private static CountsIn English { get; } = new()
    {
        Locks =
            "lock, padlock, strongbox, safe, knobs, rotors, tumblers, opens, will open, unlock, dials, wheels, drums, rings, sliders, "
            + "counters, the dial, combination, the code, your code, setting, settings, set them, these numbers, those numbers, the numbers, "
            + "these figures, those figures, the figures, these counts, those counts, the counts, the digits, these digits, those digits, "
            + "your number, dial those, dial these, dial them, enter them, enter the, enter these, enter those, key them in",
        Orders = "in that order, in this order, in order, in the same order, the order, that order, from left to right, one after the other",
        Ones = "a an single lone",
        Noughts = "no",
        Numbered = "hint stage step photo picture page chapter figure no number part",
        Places =
            "top mid middle bottom left right upper lower inner outer centre center front back north south east west equator pole first second "
            + "third fourth fifth last",
        Heads =
            "figure figures digit digits number numbers setting settings set dial dials wheel ring drum knob needle pointer hand slider disc "
            + "disk tumbler lock position turn code stands",
        Elsewhere =
            "stir, mix, bake, oven, pan, recipe, egg, flour, sugar, serves, spoon, cup, price, cost, qty, quantity, piece, pcs, pack, parts, "
            + "item, order no, open from, opening, monday, tuesday, wednesday, thursday, friday, saturday, sunday, street, road, lane, avenue, "
            + "age, aged, children, sister, brother, daughter, son, grand, family, £, $, €",
    };

    private static CountsIn German { get; } = new()
    {
        Locks =
            "*schloss, tresor, truhe, öffnet, geht auf, springt auf, räder, rädchen, walzen, ringe, scheiben, schieber, kombination, der code, "
            + "den code, einstellung, stellung, stellen sie, stellt man, stell sie, diese zahlen, die zahlen, die zahl, diese anzahlen, "
            + "die anzahlen, diese ziffern, die ziffern, eingestellt, einstellen",
        Orders = "reihenfolge, der reihe nach, nacheinander, hintereinander, von links nach rechts",
        Ones = "einen einem einer",
        Noughts = "kein keine keinen",
        Numbered = "tipp stufe schritt foto bild seite kapitel abbildung nr nummer teil hinweis",
        Places =
            "oben mitte unten links rechts obere mittlere untere oberer mittlerer unterer obere oberes mittleres unteres linker rechter linke "
            + "rechte linkes rechtes innen außen vorn vorne hinten norden süden osten westen äquator pol erste zweite dritte vierte letzte "
            + "erster zweiter dritter vierter",
        Heads = "ziffer ziffern zahl zahlen stellung einstellung stellen walze scheibe rad ring zeiger nadel knopf schieber drehen schloss code",
        Elsewhere =
            "rühr, verrühr, misch, back, ofen, pfanne, rezept, eier, mehl, zucker, butter, löffel, tasse, preis, kost, menge, stück, "
            + "anzahl stück, packung, teile, artikel, öffnungs, geöffnet, montag, dienstag, mittwoch, donnerstag, freitag, samstag, sonntag, "
            + "straße, gasse, weg, allee, alter, jahre, kinder, enkel, schwester, bruder, tochter, sohn, familie, stunden, tage, €",
    };

    private static CountsIn French { get; } = new()
    {
        Locks =
            "serrure, cadenas, coffre-fort, boutons, ouvre, ouvrent, ouvrir, molettes, roues, anneaux, bagues, tambours, disques, combinaison, "
            + "le code, réglage, régler, réglez, ces nombres, les nombres, ces chiffres, les chiffres, le nombre, composez, saisissez",
        Orders = "dans cet ordre, dans l’ordre, dans l'ordre, dans le même ordre, l’ordre, de gauche à droite, l’un après l’autre",
        Ones = "seul seule",
        Noughts = "aucun aucune",
        Numbered = "indice étape photo image page chapitre figure n numéro partie",
        Places =
            "haut milieu bas gauche centre droite droit supérieur supérieure inférieur inférieure intérieur extérieur devant derrière nord sud "
            + "est ouest équateur pôle premier première deuxième troisième quatrième dernier dernière",
        Heads =
            "chiffre chiffres nombre nombres réglage position molette roue anneau bague tambour disque aiguille bouton curseur serrure code "
            + "régler",
        Elsewhere =
            "mélang, four, poêle, recette, oeuf, œuf, farine, sucre, beurre, cuill, tasse, prix, coût, quantité, pièces, paquet, article, "
            + "ouvert, ouverture, lundi, mardi, mercredi, jeudi, vendredi, samedi, dimanche, rue, quai, avenue, place, âge, ans, enfants, fille, "
            + "fils, soeur, sœur, frère, famille, jours, €",
    };

    private static CountsIn Spanish { get; } = new()
    {
        Locks =
            "cerradura, candado, caja fuerte, perillas, abre, abren, abrir, ruedas, ruedecillas, rodillos, anillos, discos, combinación, "
            + "el código, esos números, estos números, los números, el número, esas cifras, estas cifras, las cifras, ajuste, marque, ponga",
        Orders = "en ese orden, en este orden, por ese orden, por este orden, en el mismo orden, el orden, de izquierda a derecha, uno tras otro",
        Ones = "solo sola",
        Noughts = "ningún ninguna",
        Numbered = "pista paso foto imagen página capítulo figura n número parte etapa",
        Places =
            "arriba medio abajo izquierda centro derecha superior inferior interior exterior delante detrás norte sur este oeste ecuador polo "
            + "primero primera segundo segunda tercero tercera cuarto cuarta último última",
        Heads = "cifra cifras número números ajuste posición rueda anillo rodillo disco aguja botón cursor cerradura código girar",
        Elsewhere =
            "mezcl, horno, sartén, receta, huevo, harina, azúcar, sal, limon, cuchar, taza, precio, cuesta, cantidad, unidades, paquete, "
            + "artículo, abierto, horario, lunes, martes, miércoles, jueves, viernes, sábado, domingo, calle, plaza, avenida, edad, años, hijos, "
            + "hija, hermano, hermana, familia, hora, minutos, €",
    };

    private static CountsIn Arabic { get; } = new()
    {
        Locks = "القفل, قفل, رمز, يفتح, تفتح, الخزنة, العجلات, الحلقات, الأقراص, الأرقام, أرقام, الأعداد, أعداد, الرمز, التركيبة, اضبط, تضبط, أدخل",
        Orders = "بهذا الترتيب, بالترتيب, بنفس الترتيب, الترتيب نفسه, على الترتيب, تباعا",
        Duals = "ان ين",
        Numbered = "تلميح المرحلة الخطوة صورة صفحة رقم",
        Places =
            "الأعلى الأوسط الأسفل أعلى أوسط أسفل فوق تحت اليمين اليسار اليمنى اليسرى الوسطى يمين يسار وسط العليا السفلى الشمال الجنوب الشرق "
            + "الغرب الأول الثاني الثالث الرابع الأولى الثانية الثالثة الرابعة الأخير الأخيرة",
        Heads = "الرقم رقم العدد عدد الضبط العجلة عجلة القرص قرص الحلقة حلقة المؤشر مؤشر العقرب الزر القفل",
        Elsewhere =
            "بيض, سكر, دقيق, طحين, ملعقة, فرن, وصفة, اخلط, سعر, ثمن, كمية, قطع, المسامير, المفصلات, السبت, الأحد, الاثنين, الثلاثاء, الأربعاء, "
            + "الخميس, الجمعة, شارع, أولاد, بنات, للأسرة, عائلة, أخت, أخ, عمر",
    };

    private static CountsIn Japanese { get; } = new()
    {
        Locks = "錠, ダイヤル, 開, 金庫, 目盛, その数, 数を, 数字, 番号, 暗証, 輪を, つまみ",
        Orders = "順に, 順で, の順, 順番, 左から",
        Places = "上, 中, 下, 左, 右, 外, 内, 奥, 手前, 北, 南, 東, 西, 段目, 番目, つ目",
        Heads = "数字, 数, 目盛, ダイヤル, つまみ, 輪, 針, 番号, 円盤, 錠",
        Elsewhere = "混ぜ, 焼, 卵, 砂糖, 牛乳, 粉, 杯, 値段, 価格, 円, 数量, 個数, 部品, ねじ, 釘, 営業, 月曜, 火曜, 水曜, 木曜, 金曜, 土曜, 日曜, 丁目, 番地, 歳, 家族, 息子, 娘",
    };

    private static CountsIn None { get; } = new();

    /// <summary>Those of a language.</summary>
    public static CountsIn Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        "ja" => Japanese,
        _ => None,
    };
}
