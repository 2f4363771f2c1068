namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Words of a language by which a reader puts the pieces of a code or of a time together: where they stand, what is reckoned, what has gone by. Lists of words
/// parted by spaces, phrases by commas. From memory.
/// </summary>
internal sealed record RemarksIn
{
    public static RemarksIn English { get; } = new()
    {
        Tallies = "stroke strokes notch notches scratch scratches mark marks tick ticks dot dots line lines bar bars dash dashes knock knocks tap "
            + "taps chime chimes hole holes",
        Rows = "order ahead front behind back between middle centre center end ends beginning flanked either sides left right precedes preceded rear "
            + "followed straight directly stop pause "
            + "head tail "
            + "close closes shuffle shuffled rearrange anagram jumbled scrambled before opposite around sandwiched finish outer inner top bottom upper lower",
        Mirrored = "back to front, backwards, backward, reversed, in reverse, right to left, from the right, wrong way round, from the end, in a mirror",
        Initials = "initials, initial, first letters, first letter, acrostic, initial letters",
        Doubles = "twice double doubled",
        Times = "times",
        Trebles = "thrice triple treble",
        Halves = "half halve",
        Multiplied = "times multiplied",
        Added = "plus more above beyond greater larger bigger",
        Taken = "minus less fewer below under short shy smaller",
        Joined = "add sum total adding",
        Parted = "subtract take difference deduct",
        Squared = "squared square",
        Itself = "itself",
        Dozens = "dozen",
        Since = "wait waiting more late after past since on later passed gone elapsed ago forward plus go by add passes pass further ahead advance",
        Until = "early in until till before to left remaining wanting wants lacking short earlier back less minus from",
        Other = "other fellow companion partner mate twin",
        Lower = "down",
        Upper = "up upright",
        NoTimes = "voted vote against odds score won lost beat majority scale ratio",
        Copulas = "is are was were be",
        Certain = "the its his her your their that this",
        Possible = "a an",
        Belongs = "of",
        VerbsAhead = "should to will would can could must may might not never dont don’t didn’t didnt doesn’t cannot",
        ShortVerbs = "turn fit open slide move lie fall come go hang stay stick spin work do float",
        Ordinary = "jar tin bottle cup bowl pot pan dish bag sack bucket barrel box case chest trunk drawer door lid panel plate board bar rod ring "
            + "chain key lock "
            + "label card paper letter note book page picture map coin button hook pin peg bolt screw nail wheel gear spring magnet mirror glass lens lamp "
            + "light candle bell horn whistle clock watch hand face dial weight balance scale scales spoon fork knife brush pen ink tool piece part "
            + "thing object "
            + "bird dog cat bee fish horse king queen prince princess man woman boy girl keeper master moon sun star sea oil water wax salt stone rock "
            + "tree leaf "
            + "flower seed root wood gold silver brass copper iron steel flag hat shoe coat belt ball die dice doll toy game stick staff pole rope "
            + "cord thread "
            + "ribbon tape table chair bench shelf stair step window gate roof wall floor tower bridge house room garden bob eye eyeglass head body "
            + "tail foot leg "
            + "arm tooth heart skin bone cell clip tray cover slot hole line word number code symbol sign mark arrow end side top bottom edge corner "
            + "base point map tongs pliers crystal lever honey pellet lump",
    };

    public static RemarksIn German { get; } = new()
    {
        Tallies = "strich striche kerbe kerben punkt punkte schlag schläge klopfer rille rillen ritze ritzen loch löcher kommt steht folgt gehört "
            + "bildet beginnt schließt",
        Rows = "reihenfolge vorn vorne hinten davor dahinter dazwischen zwischen mitte ende schluss anfang vor hinter vertauscht geschüttelt "
            + "hintendran voran weiter hintereinander anschließend direkt abzusetzen anschluss links "
            + "mittlere mittleren mittlerer mittleres äußeren rechts außen innen rand daneben oben unten oberen unteren",
        Mirrored = "von hinten, rückwärts, umgekehrt, von rechts, falsch herum, im spiegel, von rechts nach links",
        Initials = "anfangsbuchstaben, anfangsbuchstabe, initialen, ersten buchstaben, erste Buchstabe, ersten Buchstaben, erste Buchstaben, ersten Buchstabe",
        Doubles = "doppelte doppelt doppel verdopple zweimal",
        Times = "mal",
        Trebles = "dreifache",
        Halves = "hälfte",
        Multiplied = "mal malgenommen multipliziert",
        Added = "plus mehr größer",
        Taken = "minus weniger kleiner",
        Joined = "addiere summe",
        Parted = "differenz",
        Squared = "quadrat",
        Itself = "selbst",
        Dozens = "dutzend",
        Since = "warten warte wartet nach vergangen später vorbei seit weiter plus vergehen verstreichen verstrichen dazu weiterdrehen vorrücken",
        Until = "in noch bis fehlen fehlt vor ehe zurück minus weniger",
        Other = "andere anderer",
        Lower = "unten",
        Upper = "oben",
        NoTimes = "stimmen gegen maßstab massstab verhältnis",
        Copulas = "ist sind war waren",
        Certain = "vom zum am im beim zur ins der die das den dem des sein seine seinen seinem ihr ihre ihren dein deine deinen diese dieser diesen dieses",
        Possible = "ein eine einen einem einer",
        Belongs = "von des",
        Ordinary = "dose kiste kasten truhe schrank fach lade schublade tür deckel platte brett stab stange ring kette schlüssel schloss zettel karte "
            + "papier brief buch "
            + "seite bild münze knopf haken stift bolzen schraube nagel rad feder magnet spiegel glas linse lampe kerze glocke horn uhr zeiger waage "
            + "löffel messer "
            + "werkzeug teil ding vogel hund katze biene könig königin mond sonne stern öl wasser wachs stein holz gold silber fahne hut ball würfel "
            + "stock seil "
            + "faden band tisch stuhl fenster dach wand turm brücke haus garten auge kopf hand fuß herz loch zeile wort zahl zeichen seite ecke kante "
            + "boden klemme zange hebel honig kristall topf karte",
        NumberNouns = "sieben elf acht drei neun zehn",
    };

    public static RemarksIn French { get; } = new()
    {
        Tallies = "trait traits encoche encoches marque marques point points coup coups cran crans entaille entailles trou trous",
        Rows = "ordre avant devant derrière entre milieu tête queue fin début bout suite enchaînez enchaîner collés gauche droite précède "
            + "mélangez désordre abord ouvre ferme premier dernier haut bas",
        Mirrored = "à l’envers, à rebours, de droite à gauche, par la fin, dans un miroir",
        Initials = "initiales, premières lettres, initiale, première lettre",
        Doubles = "double",
        Times = "fois",
        Trebles = "triple",
        Halves = "moitié",
        Multiplied = "fois multiplié multipliés",
        Added = "plus",
        Taken = "moins",
        Joined = "somme ajoutez",
        Parted = "différence",
        Squared = "carré",
        Itself = "même",
        Dozens = "douzaine",
        Since = "attendez attends attendre après passé passées depuis plus tard écoulées avancez avance avancer passer laissez ajoutez",
        Until = "dans avant encore manque reste moins",
        Other = "autre",
        Lower = "bas",
        Upper = "haut",
        NoTimes = "contre voix échelle rapport",
        Copulas = "est sont était",
        Certain = "du au le la les l son sa ses ton ta votre vos ce cet cette",
        Possible = "un une",
        Belongs = "de d du des gauche droit droite supérieur inférieur supérieure inférieure",
        Ordinary = "boîte coffre coffret caisse tiroir porte couvercle panneau plaque planche barre anneau chaîne clé serrure carte papier lettre "
            + "livre page image pièce "
            + "bouton crochet cheville vis clou roue ressort aimant miroir verre loupe lampe bougie cloche corne horloge aiguille balance cuillère "
            + "couteau outil chose "
            + "oiseau chien chat abeille roi reine lune soleil étoile huile eau cire pierre bois or argent drapeau chapeau balle dé bâton corde fil "
            + "ruban table chaise "
            + "fenêtre toit mur tour pont maison jardin oeil tête main pied coeur trou ligne mot nombre signe côté coin fond tabac pince levier "
            + "cristal miel pot",
        ClockHands = "aiguille aiguilles",
        OfDials = "petite grande courte longue heures minutes horloge pendule cartel montre",
    };

    public static RemarksIn Spanish { get; } = new()
    {
        Tallies = "raya rayas muesca muescas marca marcas punto puntos golpe golpes corte cortes línea líneas agujero agujeros",
        Rows = "orden antes delante detrás entre medio cabeza cola fin final principio extremo seguido seguidos seguidas "
            + "pegado izquierda derecha precede mezcla primero último arriba abajo empezar terminar",
        Mirrored = "al revés, de derecha a izquierda, hacia atrás, desde el final, en un espejo",
        Initials = "iniciales, primeras letras, inicial, primera letra",
        Doubles = "doble",
        Times = "veces",
        Trebles = "triple",
        Halves = "mitad",
        Multiplied = "veces por multiplicado",
        Added = "más",
        Taken = "menos",
        Joined = "suma sume",
        Parted = "diferencia",
        Squared = "cuadrado",
        Itself = "mismo",
        Dozens = "docena",
        Since = "espera espere esperar pasaban pasan pasaron después pasado pasados tarde transcurridos más pasar adelante avance añada deje",
        Until = "dentro faltan falta quedan antes menos para",
        Other = "otra",
        Lower = "abajo",
        Upper = "arriba",
        NoTimes = "contra votos escala proporción",
        Copulas = "es son era",
        Certain = "del al el la los las su sus tu este esta ese esa",
        Possible = "un una",
        Belongs = "de del izquierdo derecho izquierda derecha superior inferior",
        Ordinary = "caja cofre baúl cajón puerta tapa panel placa tabla barra anillo cadena llave cerradura carta papel nota libro página imagen "
            + "moneda botón gancho clavija "
            + "tornillo clavo rueda muelle imán espejo vidrio lupa lámpara vela campana cuerno reloj aguja balanza cuchara cuchillo herramienta pieza "
            + "cosa pájaro perro "
            + "gato abeja rey reina luna sol estrella aceite agua cera piedra madera oro plata bandera sombrero bola dado palo cuerda hilo cinta mesa "
            + "silla ventana "
            + "techo pared torre puente casa jardín ojo cabeza mano pie corazón agujero línea palabra número signo lado esquina fondo mapa pinza nuez "
            + "miel palanca cristal tarro",
        ClockHands = "aguja agujas",
        OfDials = "corta larga pequeña grande horas minutos reloj",
    };

    public static RemarksIn Japanese { get; } = new()
    {
        Rows = "続 次 最 先 頭 前 後 尾 初 左 右 間 順 逆 端 目 上 下 中 残 両",
        Mirrored = "逆, 後ろから, うしろから, 右から, さかさ",
        Added = "大 多 足",
        Taken = "小 少 引",
        Multiplied = "倍 掛",
        Squared = "乗",
        Since = "足 待 過 後 経 ら 進",
        NoTimes = "縮 尺 対 敗",
        Until = "前 あ で 後",
    };

    public static RemarksIn Arabic { get; } = new()
    {
        Tallies = "خط خطوط شرطة شرطات نقطة نقاط طرقة طرقات حز حزوز",
        Initials = "الحرف الأول, أول حرف, الحروف الأولى, أوائل",
        Rows = "بينهما تبدأ يبدأ تنتهي ينتهي طرفين طرفيها أعلى أسفل قبل بعد بين وسط ترتيب أول آخر يمين يسار بداية نهاية قبلها قبله بعدها يسبقها "
            + "أيسر أيمن عليا سفلى وسطى",
        Mirrored = "بالعكس, من اليسار إلى اليمين, من النهاية, معكوس",
        Doubles = "ضعف مرتين مكررة مكرر مكررا",
        Times = "مرات",
        Halves = "نصف",
        Squared = "مربع تربيع",
        Itself = "نفسها نفسه",
        Multiplied = "ضرب مضروبا مضروبة مضروب",
        Added = "زائد أكثر أكبر",
        Taken = "ناقص أقل أصغر",
        Joined = "مجموع",
        Parted = "فرق",
        Since = "انتظر بعد مضى مضت مر مرت تمر يمر تمضي دع أضف قدم",
        NoTimes = "مقياس بمقياس المقياس",
        Until = "بعد قبل بقي بقيت إلا باق",
        Copulas = "هو هي",
    };

    public static RemarksIn None { get; } = new();

    /// <summary>What the hands of a clock are called, where that is a needle as well.</summary>
    public string ClockHands { get; init; } = "";

    /// <summary>What stands beside such a word where a clock's hand is meant: "petite aiguille".</summary>
    public string OfDials { get; init; } = "";

    /// <summary>Number words that look like a form of a noun: "die Sieben" and "Sieb".</summary>
    public string NumberNouns { get; init; } = "";

    /// <summary>Those of a language.</summary>
    public static RemarksIn Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => None,
    };

    /// <summary>Where a piece stands among others.</summary>
    public string Rows { get; init; } = "";

    /// <summary>Phrases that say that something is read from its end.</summary>
    public string Mirrored { get; init; } = "";

    /// <summary>Phrases that mean the first letters of words.</summary>
    public string Initials { get; init; } = "";

    public string Doubles { get; init; } = "";

    /// <summary>What makes as many as the number before it says: "two times".</summary>
    public string Times { get; init; } = "";

    public string Trebles { get; init; } = "";

    public string Halves { get; init; } = "";

    public string Multiplied { get; init; } = "";

    /// <summary>What adds the numbers beside it.</summary>
    public string Added { get; init; } = "";

    /// <summary>What takes one of the numbers beside it from the other.</summary>
    public string Taken { get; init; } = "";

    /// <summary>What adds the two numbers behind it.</summary>
    public string Joined { get; init; } = "";

    /// <summary>What takes one of the two numbers behind it from the other.</summary>
    public string Parted { get; init; } = "";

    public string Squared { get; init; } = "";

    /// <summary>What makes a number the one that it is multiplied by.</summary>
    public string Itself { get; init; } = "";

    public string Dozens { get; init; } = "";

    /// <summary>Minutes have gone by since an hour.</summary>
    public string Since { get; init; } = "";

    /// <summary>Minutes go by until an hour.</summary>
    public string Until { get; init; } = "";

    /// <summary>The other of two hands of a clock.</summary>
    public string Other { get; init; } = "";

    /// <summary>Where the long hand says half past.</summary>
    public string Lower { get; init; } = "";

    /// <summary>Where it says the hour.</summary>
    public string Upper { get; init; } = "";

    /// <summary>Words beside numbers that are no time.</summary>
    public string NoTimes { get; init; } = "";

    /// <summary>"Is".</summary>
    public string Copulas { get; init; } = "";

    /// <summary>Articles and the like before a thing that is known.</summary>
    public string Certain { get; init; } = "";

    /// <summary>Articles before any thing.</summary>
    public string Possible { get; init; } = "";

    /// <summary>What stands before an owner.</summary>
    public string Belongs { get; init; } = "";

    /// <summary>What stands before a verb.</summary>
    public string VerbsAhead { get; init; } = "";

    /// <summary>Verbs that things do, without an ending.</summary>
    public string ShortVerbs { get; init; } = "";

    /// <summary>What is counted to tell a figure, or says of a figure where it stands: behind a number none of them makes it an amount.</summary>
    public string Tallies { get; init; } = "";

    /// <summary>Nouns that alone tell nothing, though one stands in a longer name.</summary>
    public string Ordinary { get; init; } = "";
}
