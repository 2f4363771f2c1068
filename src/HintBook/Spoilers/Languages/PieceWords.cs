namespace HintBook.Spoilers.Languages;

/// <summary>
/// How people tell a code piece by piece. Lists are words parted by spaces, forms of one word by a stroke. Chosen by hand: common practice, no
/// source; the spelling alphabets of English (ICAO) and German (DIN 5009) from memory.
/// </summary>
internal sealed record PieceWords
{
    private const string Icao =
        "alfa alpha bravo charlie delta echo foxtrot golf hotel india juliett juliet kilo lima mike november oscar papa quebec romeo sierra tango uniform "
        + "victor whiskey whisky xray yankee zulu";

    public static PieceWords English { get; } = new()
    {
        Tallies = "stroke notch scratch mark tick dot line bar dash knock tap click peck chime nick groove dent hole pip",
        Ordinals =
            "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth "
            + "seventeenth eighteenth nineteenth twentieth",
        Last = "last final rightmost",
        BeforeLast = "penultimate",
        Wheel =
            "wheel dial ring digit figure disc disk letter position place window column drum cylinder tumbler knob block cell line string "
            + "barrel slot lever",
        Setting =
            "set turn turned show read number code lock spell dial enter type press push order left right middle center upper lower top bottom "
            + "outer inner neighbor neighbour alphabet other tune tuned bring brought want plain just add cross say call make row side whole "
            + "rest value click notch tick opens closes",
        Sequence =
            "then next followed follow finally lastly begin start end finish ending starting beginning below above beneath under thinnest "
            + "thickest largest smallest longest shortest outermost innermost topmost lowest highest nearest farthest",
        Previous = "previous preceding",
        Ends = "end ends ending finish finishes finishing close closing last lastly finally",
        Backwards = "backwards backward reverse reversed",
        Left = "left",
        Right = "right",
        Rest = "other others remaining",
        Twice = "twice pair",
        Times = "times",
        Again = "again",
        Alphabet =
            Icao
            + " ",
        Names =
            "ay:a bee:b cee:c see:c sea:c dee:d ee:e ef:f eff:f gee:g aitch:h eye:i jay:j kay:k el:l ell:l em:m en:n pee:p cue:q queue:q ess:s "
            + "tee:t tea:t you:u vee:v are:r why:y wye:y oh:o ex:x zed:z zee:z",
        Spelling =
            "spell spelled spelling spelt set dial enter type word letter lock code password write reads read wheels rings blocks answer shout "
            + "say says ring drum drums dials capitals lowercase uppercase case tumblers discs disks want wants stamp stamped engrave "
            + "engraved instead rather prefers",
        Stands = "for as in like is of",
        Units =
            "mm cm m km inch inche ft foot yard mile g kg gram gramme ounce oz lb pound grain dram drachm litre liter ml cl l pint "
            + "gill gallon percent degree euro dollar cent pence penny sixpence minute hour day week month year century page piece screw "
            + "nail part solver visitor people copy player try attempt time guest customer step mph coat photograph metre centimetre millimetre "
            + "meter centimeter millimeter",
        Pages = "scale page p pp fig figs figure vol chapter year circa since invoice model photograph photo patent",
        Months = "january february march april may june july august september october november december jan feb mar apr jun jul aug sep sept oct nov dec",
        Initials = "initial acrostic",
        Letters = "letter",
        Order =
            "order ahead front behind back between middle center centre either end row flank flanked left right side sides preceded precedes tail "
            + "rear outer inner "
            + "head lead leads close closes closed closing last shuffle shuffled rearrange rearranged anagram jumble jumbled scramble scrambled "
            + "reverse opposite before swap swapped around sandwiched bookends top bottom upper lower",
        Locks =
            "lock padlock wheel dial ring digit figure disc disk drum counter slider cylinder tumbler knob lever code combination set setting enter "
            + "press punch window something",
        Numbers = "order sequence number numbers count counts amount",
        BackPhrases = "back to front; wrong way round; other way round; from the end; last to first; right to left; in a mirror; from behind; end to start",
        OtherNumbers =
            "no stroke:0; no strokes:0; no notch:0; no mark:0; no dot:0; no line:0; no click:0; no knock:0; half a dozen:6; half dozen:6; "
            + "a dozen:12; baker's dozen:13; unlucky number:13; lucky number:7; nothing at all:0; nothing:0; none:0; zip:0; "
            + "zilch:0; goose egg:0; nowt:0; cipher:0; empty:0; blank:0; gap:0; alone:0; untouched:0; unmoved:0; duck:0; trio:3; quartet:4; quintet:5; "
            + "deuce:2; ace:1; trey:3; "
            + "days in a week:7; days in the week:7; days of the week:7; deadly sins:7; seasons in a year:4; seasons of the year:4; legs of a spider:8; "
            + "legs on a spider:8; arms of an octopus:8; lives of a cat:9; sides of a hexagon:6; sides of a triangle:3; sides of a square:4; "
            + "fingers on a hand:5; months in a year:12; months of the year:12; blind mice:3; musketeers:3; days of a week:7; "
            + "number of the seasons:4; number of seasons:4; number of the muses:9; "
            + ""
            + "toes on a foot:5; fingers of one hand:5; fingers of a hand:5; fingers of two hands:10; horsemen of the apocalypse:4; wise men:3; "
            + "wonders of the world:7; "
            + "points of the compass:4; suits in a pack:4; strings on a violin:4; strings of a violin:4; strings on a guitar:6; legs of an insect:6; "
            + "legs on an insect:6; "
            + "arms on an octopus:8; legs of a dog:4; legs of a horse:4; wheels of a cart:4; wheels on a tricycle:3; sides of a die:6; "
            + "faces of a die:6; faces of a cube:6; "
            + "corners of a square:4; corners of a triangle:3; sides of an octagon:8; sides of a pentagon:5; signs of the zodiac:12; planets:8; "
            + "senses:5; continents:7; "
            + "snow white's dwarfs:7; dwarfs:7; apostles:12; colours of the rainbow:7; colors of the rainbow:7; leaves of a clover:3; "
            + "smallest prime:2; "
            + "hours in a day:24; letters in the alphabet:26; players in a football team:11",
    };

    public static PieceWords German { get; } = new()
    {
        Tallies = "strich striche kerbe kerben punkt punkte schlag schläge klopfer klick klicks rille rillen ritze ritzen nagel loch löcher hieb hiebe",
        Ordinals =
            "erste/erster/erstes/ersten zweite/zweiter/zweites dritte/dritter/drittes vierte/vierter/viertes fünfte/fünfter/fünftes "
            + "sechste/sechster/sechstes siebte/siebter/siebtes achte/achter/achtes neunte/neunter/neuntes zehnte/zehnter elfte/elfter "
            + "zwölfte/zwölfter dreizehnte/dreizehnter vierzehnte/vierzehnter fünfzehnte/fünfzehnter sechzehnte/sechzehnter "
            + "siebzehnte/siebzehnter achtzehnte/achtzehnter neunzehnte/neunzehnter zwanzigste/zwanzigster",
        Last = "letzte letzter letztes hinterste hinterstes",
        BeforeLast = "vorletzte vorletzter vorletztes",
        Wheel = "rad rädchen ring walze scheibe ziffer stelle buchstabe buchstaben position fenster trommel zahl zeiger platz rolle hebel",
        Setting =
            "stell stellst stellen gehört gehören kommt kommen folgt folgen steht stehen zeigt zeigen auf links rechts mitte mittlere "
            + "mittleren oben unten außen innen alphabet drehen dreh dreht drehst ziffern zahlen code schloss lautet lauten reihenfolge wort "
            + "einstellen eingeben tippen brauchen brauchst braucht andere anderen nächste nächsten nächster nächstes gleich wieder hinten vorn "
            + "vorne bekommt heißt nachbar daneben klick klicks raste rasten fängt hört eröffnet schließt",
        Sequence =
            "dann danach darauf zuerst zunächst beginn beginne beginnt beginnen anfang fang fangen ende enden endet schluss zuletzt "
            + "schließlich gefolgt abschließend hinterher anschließend",
        Previous = "davor",
        Ends = "ende enden endet schluss zuletzt schließlich",
        Backwards = "rückwärts umgekehrt",
        Left = "links",
        Right = "rechts",
        Rest = "anderen andern übrigen restlichen",
        Twice = "zweimal paar",
        Times = "mal",
        Again = "nochmal nochmals",
        Alphabet =
            Icao
            + " anton ärger berta cäsar charlotte dora emil friedrich gustav heinrich ida julius kaufmann konrad ludwig martha nordpol otto "
            + "ökonom paula quelle richard samuel siegfried theodor ulrich viktor wilhelm xanthippe ypsilon zacharias zeppelin aachen berlin "
            + "chemnitz düsseldorf essen frankfurt goslar hamburg ingelheim jena köln leipzig münchen nürnberg offenbach potsdam quickborn "
            + "rostock salzwedel tübingen unna völklingen wuppertal xanten zwickau",
        Names = "be:b ce:c de:d ha:h eff:f ef:f ge:g jot:j ka:k ell:l el:l emm:m em:m enn:n en:n pe:p ku:q kuh:q ess:s te:t vau:v we:w ix:x ypsilon:y "
            + "zett:z zet:z",
        Spelling =
            "wort lösungswort buchstabe buchstaben buchstabiere buchstabiert buchstabieren schreib schreibe schreiben stell stelle stellt "
            + "stellen gib gebt geben tippe tippen lautet code schloss ringe ringen walzen stehen eintippen "
            + "buchstabenschloss zahlenschloss ring scheiben trommeln großbuchstaben kleinbuchstaben kleinschreibung groß klein gelesen lies liest lesen "
            + "ergibt drehen dreh drehe drücken sondern stattdessen lieber",
        Stands = "wie für",
        Units =
            "mm cm m km zoll g kg gramm kilo kilogramm pfund liter ml prozent grad euro cent mark minute minuten stunde stunden sekunde "
            + "sekunden tag tage woche wochen monat monate jahr jahre seite seiten teil teile stück schraube schrauben spieler versuch versuche "
            + "mal gast gäste kunden meter zentimeter millimeter",
        Pages =
            "maßstab massstab "
            + "modell typ artikel seite seiten s abb abbildung kapitel serie seriennummer bestellung bestellnummer jahr jahre seit anno rechnung "
            + "tafel bild",
        Months = "januar jänner februar märz april mai juni juli august september oktober november dezember",
        BigNumber = "tausend",
        Plurals = true,
        Initials = "anfangsbuchstabe anfangsbuchstaben initialen akrostichon",
        Letters = "buchstabe buchstaben",
        Order =
            "reihenfolge vorn vorne hinten davor dahinter dazwischen zwischen mitte rand ende schluss anfang umgekehrt rückwärts vor hinter "
            + "vertauscht geschüttelt durcheinander hintendran voran vorweg daneben links rechts außen innen beiderseits hintereinander nebeneinander "
            + "aneinander abstand zwischenraum oben unten obere oberen untere unteren äußeren inneren",
        Locks =
            "schloss kassette rad rädchen walze ring scheibe ziffer stelle code kombination zahl zahlen stell stelle stellen dreh drehe drehen "
            + "öffnet tippe schieber zahlenschloss etwas",
        Numbers = "reihenfolge anzahl anzahlen nummer nummern",
        BackPhrases = "von hinten; von rechts; falsch herum; von rechts nach links; im Spiegel; von hinten nach vorn; vom Ende",
        OtherNumbers =
            "kein strich:0; keine kerbe:0; kein punkt:0; kein schlag:0; kein klick:0; keiner:0; keine:0; halbes dutzend:6; halbe dutzend:6; "
            + "halben dutzend:6; dutzend:12; unglückszahl:13; glückszahl:7; gar nichts:0; nichts:0; leer:0; leere:0; "
            + "leerstelle:0; unberührt:0; tage der woche:7; tage hat die woche:7; wochentage:7; todsünden:7; jahreszeiten:4; monate hat das jahr:12; "
            + "quartett:4; trio:3; finger einer hand:5; finger an einer hand:5; finger hat eine hand:5; musen:9; beine einer spinne:8; spinnenbeine:8; "
            + "beine eines käfers:6; käferbeine:6; zwerge:7; kleinste primzahl:2; kleinsten primzahl:2; himmelsrichtungen:4; sinne:5; planeten:8; "
            + "weltwunder:7; monate eines jahres:12; apostel:12; tierkreiszeichen:12; evangelisten:4; heiligen drei könige:3; musketiere:3; "
            + "leben einer katze:9; saiten einer geige:4; saiten einer gitarre:6; augen eines würfels:21; seiten eines würfels:6; "
            + "seiten eines dreiecks:3; farben des regenbogens:7; arme einer krake:8; blätter eines kleeblatts:3; elemente:4; kontinente:7",
    };

    public static PieceWords French { get; } = new()
    {
        Tallies = "trait encoche marque point coup cran clic entaille rayure barre trou",
        Ordinals =
            "premier/première/1er second/seconde/deuxième troisième quatrième cinquième sixième septième huitième neuvième dixième onzième "
            + "douzième treizième quatorzième quinzième seizième dix-septième dix-huitième dix-neuvième vingtième",
        Last = "dernier dernière",
        BeforeLast = "avant-dernier avant-dernière pénultième",
        Wheel = "roue molette anneau bague chiffre lettre disque cadran position place fenêtre tambour rouleau cylindre levier",
        Setting =
            "est sont être reste vaut indique montre affiche porte va vient viennent mettez mets placez tournez réglez composez formez code "
            + "numéro mot ordre gauche droite milieu centre haut bas suivant suivante voisin voisine autre autres cadenas écrivez doit sur lit "
            + "lisez cran crans clic clics ouvre ferme débute",
        Sequence =
            "puis ensuite enfin après commence commencez commencer finit finis finissez finir termine terminez terminer suivi suivie suit "
            + "d'abord abord entre fin",
        Previous = "précédent précédente",
        Ends = "finit finis finissez finir termine terminez terminer",
        Backwards = "envers rebours",
        Left = "gauche",
        Right = "droite",
        Rest = "autres restantes restants restent reste",
        Twice = "paire",
        Times = "fois",
        Again = "encore",
        Alphabet =
            Icao
            + " anatole berthe célestin désiré eugène françois gaston henri irma joseph kléber louis marcel nicolas oscar pierre quintal raoul "
            + "suzanne thérèse ursule victor william xavier yvonne zoé",
        Names = "bé:b gé:g ji:j gi:g ka:k pé:p effe:f hache:h emme:m enne:n cu:q erre:r esse:s vé:v ixe:x zède:z",
        Spelling = "mot lettre lettres épelez épeler écrivez écrire composez formez former formé code cadenas tambour bagues anneaux tapez "
            + "anneau bague disques tambours majuscules minuscules serrure lit lisez lire donne donnent réponse tournez plutôt préfère donnez",
        Stands = "comme de",
        Units =
            "mm cm m km pouce g kg gramme kilo livre litre ml pour-cent degré euro centime franc minute heure seconde jour semaine mois an ans "
            + "année siècle page pièce vis joueur essai fois coup client mètre centimètre millimètre cents",
        Pages = "échelle modèle référence page pages p fig figure chapitre série commande année facture photo planche depuis",
        Months = "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
        Plurals = true,
        Initials = "initiale acrostiche",
        Letters = "lettre",
        Order =
            "ordre avant devant derrière entre milieu tête queue fin début bout côté gauche droite envers précède précédé désordre mélange "
            + "mélangez encadrent encadré autour abord ouvre ouvrent ferme fermant ensuite premier dernier haut bas",
        Locks =
            "cadenas serrure roue molette anneau bague chiffre disque cadran code combinaison composez réglez mettez tournez tambour rouleau ouvre "
            + "tapez quelque",
        Numbers = "ordre nombre nombres numéro numéros compte comptes",
        BackPhrases = "à l'envers; à rebours; de droite à gauche; de la fin; dans un miroir; par la fin; à l’envers",
        OtherNumbers =
            "aucun:0; aucune:0; demi douzaine:6; une douzaine:12; douzaine:12; dizaine:10; quinzaine:15; vingtaine:20; rien du tout:0; rien:0; "
            + "vide:0; néant:0; "
            + "jours de la semaine:7; péchés capitaux:7; saisons:4; mousquetaires:3; mois de l'année:12; trio:3; quatuor:4; immobile:0; "
            + "doigts de la main:5; doigts d'une main:5; muses:9; pattes d'une araignée:8; pattes de l'araignée:8; pattes d'un insecte:6; nains:7; "
            + "points cardinaux:4; sens:5; planètes:8; merveilles du monde:7; apôtres:12; signes du zodiaque:12; évangélistes:4; rois mages:3; "
            + "vies d'un chat:7; cordes d'un violon:4; cordes d'une guitare:6; faces d'un dé:6; côtés d'un triangle:3; couleurs de l'arc-en-ciel:7; "
            + "bras d'une pieuvre:8; feuilles d'un trèfle:3; grâces:3; parques:3; continents:5",
    };

    public static PieceWords Spanish { get; } = new()
    {
        Tallies = "raya muesca marca punto golpe clic toque corte línea agujero",
        Ordinals =
            "primero/primera/primer segundo/segunda tercero/tercera/tercer cuarto/cuarta quinto/quinta sexto/sexta séptimo/séptima "
            + "octavo/octava noveno/novena décimo/décima",
        Last = "último última",
        BeforeLast = "penúltimo penúltima",
        Wheel = "rueda anillo disco cifra dígito letra posición lugar ventana tambor cilindro rodillo palanca",
        Setting =
            "es son va van está están queda marca marque muestra pone ponga pon gira gire girad código número palabra orden izquierda derecha "
            + "medio centro arriba abajo siguiente otro otra otros vecina vecino candado escriba escribe anterior lee dice viene vienen al "
            + "quiere quieren clic clics muesca abre cierra",
        Sequence =
            "luego después entonces empieza empiece empezar comienza comience termina termine terminar acaba acabe seguido seguida sigue "
            + "siguen final fin finalmente primero tras",
        Previous = "anterior",
        Ends = "termina termine terminar acaba acabe final",
        Backwards = "revés",
        Left = "izquierda",
        Right = "derecha",
        Rest = "otros otras restantes",
        Twice = "par",
        Times = "veces",
        Again = "otra",
        Alphabet =
            Icao
            + " antonio barcelona carmen dolores enrique francia gerona historia inés josé lorenzo madrid navarra oviedo parís querido ramón "
            + "sábado tarragona ulises valencia zaragoza",
        Names = "be:b ce:c efe:f ge:g hache:h jota:j ele:l eme:m ene:n pe:p cu:q erre:r ere:r ese:s te:t uve:v equis:x zeta:z ka:k",
        Spelling = "palabra letra letras deletrea deletree deletrear escribe escriba escribir forma forme código candado anillos tapa ponga marque teclee "
            + "anillo discos tambores mayúsculas minúsculas cerradura pone poner pon lee lea leer lectura respuesta gire dice sino prefiere dele",
        Stands = "de como",
        Units =
            "mm cm m km pulgada g kg gramo kilo libra litro ml grado euro céntimo peseta minuto hora segundo día semana mes año siglo página "
            + "pieza tornillo jugador intento vez veces cliente metro centímetro milímetro ciento",
        Pages = "escala modelo referencia página páginas pág p fig figura capítulo serie pedido año factura foto lámina desde",
        Months = "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
        Plurals = true,
        Initials = "inicial iniciales acróstico",
        Letters = "letra letras",
        Order =
            "orden antes delante detrás entre medio mitad cabeza cola fin final principio extremo lado izquierda derecha revés precede "
            + "desordenadas mezcla alrededor flanquean primero último arriba abajo",
        Locks =
            "candado cerradura rueda anillo cifra dígito disco código combinación ponga marque gire gira pon marca cilindro rodillo abre teclee balanza algo",
        Numbers = "orden número números cantidad cantidades cuenta",
        BackPhrases = "al revés; de derecha a izquierda; hacia atrás; desde el final; por el final; en un espejo",
        OtherNumbers =
            "ninguna:0; ninguno:0; media docena:6; una docena:12; docena:12; decena:10; quincena:15; veintena:20; nada:0; vacío:0; vacía:0; "
            + "días de la semana:7; "
            + "pecados capitales:7; estaciones del año:4; meses del año:12; trío:3; cuarteto:4; "
            + "dedos de la mano:5; dedos de una mano:5; musas:9; patas de la araña:8; patas de una araña:8; patas de un insecto:6; enanitos:7; "
            + "puntos cardinales:4; sentidos:5; planetas:8; maravillas del mundo:7; apóstoles:12; signos del zodiaco:12; evangelistas:4; "
            + "reyes magos:3; vidas de un gato:7; vidas del gato:7; cuerdas de un violín:4; cuerdas de una guitarra:6; caras de un dado:6; "
            + "lados de un triángulo:3; colores del arcoíris:7; brazos de un pulpo:8; hojas de un trébol:3; hijas de elena:3; estaciones:4; "
            + "cero patatero:0; tres mosqueteros:3; continentes:5",
    };

    public static PieceWords Japanese { get; } = new()
    {
        Ordinals = "",
        Last = "",
        BeforeLast = "",
        Wheel = "輪 桁 盤 字 文 数 目 番 枚 個 段",
        Setting = "最 初 次 左 右 中 真 央 上 下 外 内 合 回 入 力 順 始 終 続 後 前 隣 揃 示 止 第 暗 号 鍵 錠 つ め が は を に と も の へ で す る し て い な ら ば く か そ れ り ま さ こ き け せ た ち ど ダ イ ヤ ル",
        Sequence = "次 始 終 続 最 後 番 第",
        Alphabet =
            Icao
            + " ",
        Units = "円 年 月 日 分 秒 時 頁 歳 度 個 冊 階 号 本 倍 箇 ペ セ ミ グ キ メ 世 週",
        Pages = "縮 尺 頁 図 第 約 年 西 暦",
        Spoken = "ゼロ:0 れい:0 まる:0 いち:1 に:2 にい:2 さん:3 よん:4 しい:4 ご:5 ごう:5 ろく:6 なな:7 しち:7 はち:8 きゅう:9 くう:9",
        Spelling = "綴 読 並 合 回 揃 入 文 字 言 葉 答 押 打",
        Order = "次 最 先 頭 前 後 目 尾 初 左 右 間 順 逆 端 並 終 上 下",
        Numbers = "順",
        Locks = "錠 鍵 輪 桁 盤 数 番 暗 ダ 合 回",
        BackPhrases = "逆; 後ろから; うしろから; 右から; さかさ; 反対",
        OtherNumbers = "半ダース:6; ダース:12; 空:0; なし:0; 無し:0",
    };

    public static PieceWords Arabic { get; } = new()
    {
        Tallies = "خط خطوط خطان شرطة شرطات نقطة نقاط طرقة طرقات حز حزوز",
        Ordinals = "أول/أولا/أولى/أولها/أوله ثان/ثاني/ثانيا/ثانية ثالث/ثالثا/ثالثة رابع/رابعا/رابعة خامس/خامسا/خامسة سادس/سادسا/سادسة سابع/سابعة "
            + "ثامن/ثامنة تاسع/تاسعة عاشر/عاشرة",
        Last = "أخير أخيرة آخر آخرها آخره",
        BeforeLast = "",
        Previous = "قبلها قبله",
        Backwards = "بالعكس معكوس",
        Twice = "مرتين مكررة مكرر",
        Left = "يسار",
        Right = "يمين",
        Wheel = "عجلة عجلات حلقة قرص رقم حرف خانة موضع نافذة مؤشر",
        Setting = "اضبط ضع أدر اكتب أدخل ترتيب يمين يسار وسط أعلى أسفل تالي تالية مجاور رمز كلمة قفل قبلها بعدها",
        Sequence = "بعدها بعده يتبعها يتبعه تتبعها تتبعه يليه يليها يليهما تليه تليها ثم بعد قبل يليه يليها تليها ابدأ يبدأ تبدأ ينتهي تنتهي اختم "
            + "نهاية بداية فبعده",
        Alphabet = "",
        Names =
            "ألف:ا باء:ب تاء:ت ثاء:ث جيم:ج حاء:ح خاء:خ دال:د ذال:ذ راء:ر زاي:ز زاء:ز سين:س شين:ش صاد:ص ضاد:ض طاء:ط ظاء:ظ عين:ع غين:غ فاء:ف قاف:ق كاف:ك "
            + "لام:ل ميم:م نون:ن هاء:ه واو:و ياء:ي همزة:ء",
        Units =
            "غراما غرامات كيلوغراما مترا أمتار كيلومتر كيلومترا كم لترا لترات ملم مليمترا رطل رطلا أرطال ريالا دينارا درهما دولارا دولارات "
            + "دراهم دنانير ريالات ليرة ليرات جنيه جنيهات قرش قرشا قروش فلس فلوس شلن روبية "
            + "سم مم متر سنتيمتر سنتيمترا مليمتر كيلو كيلوغرام غرام لتر درجة دينار درهم ريال دولار يورو دقيقة دقائق ساعة ساعات يوم أيام أسبوع "
            + "شهر سنة عام صفحة قطعة برغي لاعب مرة مرات زبون",
        Pages = "مقياس صفحة شكل سنة عام فصل صورة طلب فاتورة",
        Months = "يناير فبراير مارس أبريل مايو يونيو يوليو أغسطس سبتمبر أكتوبر نوفمبر ديسمبر",
        Spelling = "كلمة حرف حروف أحرف اكتب اكتبه اكتبها اكتبوا اكتبوه اكتبوها تهجّ رمز قفل حلقات حلقة لوح لوحة بل جواب أدخل تعريف",
        Stands = "مثل",
        Initials = "أوائل",
        Letters = "حرف حروف أحرف",
        Order = "أولا وبعدها ثم بعده ينتهي تنتهي بينهما بينها قبل بعد بين وسط ترتيب أول آخر يمين يسار بداية نهاية أمام خلف يسبق يسبقها يسبقه قبلها "
            + "قبله بعدها طرف عكس أيسر أيمن أعلى أسفل عليا سفلى بداية نهاية أوليان أخيرتان",
        Locks = "قفل عجلة حلقة قرص رقم خانة رمز اضبط ضع أدر كبرى صغرى وسطى كبيرة صغيرة",
        Numbers = "ترتيب الترتيب عدد أعداد الأعداد العدد رتب رتبها",
        BackPhrases = "بالعكس; من اليسار إلى اليمين; من النهاية; معكوس; مقلوب",
        OtherNumbers = "نصف دزينة:6; دزينة:12; لا شيء:0; فارغة:0; فارغ:0; أيام الأسبوع:7; "
            + "فصول السنة:4; أصابع اليد:5; أصابع يد واحدة:5; شهور السنة:12; أشهر السنة:12; أركان الإسلام:5; الصلوات الخمس:5; "
            + "أرجل العنكبوت:8; الجهات الأصلية:4; الحواس:5; عجائب الدنيا:7; ألوان قوس قزح:7; أضلاع المثلث:3; أضلاع المربع:4",
    };

    /// <summary>First, second …; the forms of each parted by strokes.</summary>
    public string Ordinals { get; init; } = "";

    public string Last { get; init; } = "";

    /// <summary>The one before the last.</summary>
    public string BeforeLast { get; init; } = "";

    /// <summary>The place before the one of which was spoken.</summary>
    public string Previous { get; init; } = "";

    /// <summary>What stands before the last piece, wherever that is told.</summary>
    public string Ends { get; init; } = "";

    /// <summary>What says that a code is told from its end.</summary>
    public string Backwards { get; init; } = "";

    /// <summary>The same in several words, parted by semicolons.</summary>
    public string BackPhrases { get; init; } = "";

    /// <summary>What means the first letters of words.</summary>
    public string Initials { get; init; } = "";

    /// <summary>The word for a letter.</summary>
    public string Letters { get; init; } = "";

    /// <summary>What says where a piece stands, so that pieces needn't be told in their order.</summary>
    public string Order { get; init; } = "";

    /// <summary>What speaks of a lock that is set.</summary>
    public string Locks { get; init; } = "";

    /// <summary>What speaks of numbers that were counted, or of their order.</summary>
    public string Numbers { get; init; } = "";

    /// <summary>Numbers said in other words, parted by semicolons: <c>half a dozen:6</c>.</summary>
    public string OtherNumbers { get; init; } = "";

    public string Left { get; init; } = "";

    public string Right { get; init; } = "";

    /// <summary>Parts of a lock that may have a number of their own.</summary>
    public string Wheel { get; init; } = "";

    /// <summary>What may stand between two pieces.</summary>
    public string Setting { get; init; } = "";

    /// <summary>What says that pieces follow each other.</summary>
    public string Sequence { get; init; } = "";

    /// <summary>What makes two figures of the next one, or of the last.</summary>
    public string Twice { get; init; } = "";

    /// <summary>What makes as many of a piece as the number before it says: <c>two times</c>.</summary>
    public string Times { get; init; } = "";

    /// <summary>What says the last piece again.</summary>
    public string Again { get; init; } = "";

    /// <summary>Words that stand for their first letters when one spells.</summary>
    public string Alphabet { get; init; } = "";

    /// <summary>What letters are called: <c>em:m</c>.</summary>
    public string Names { get; init; } = "";

    /// <summary>Words near which a code in small letters is meant as one.</summary>
    public string Spelling { get; init; } = "";

    /// <summary>What stands between a letter and a word that begins with it: "K as in kilo".</summary>
    public string Stands { get; init; } = "";

    /// <summary>Units of measure, money and time, and what a manual counts; a number before them is no code.</summary>
    public string Units { get; init; } = "";

    /// <summary>Words before a number that is no code.</summary>
    public string Pages { get; init; } = "";

    public string Months { get; init; } = "";

    /// <summary>What numbers of ten thousand and more have in them, where they are one word.</summary>
    public string BigNumber { get; init; } = "";

    /// <summary>Whether figures have a plural that needn't show: "deux zéros".</summary>
    public bool Plurals { get; init; }

    /// <summary>What means the wheels that are left: <c>the other two</c>.</summary>
    public string Rest { get; init; } = "";

    /// <summary>Marks that are counted to tell a figure: "three strokes, no stroke, four strokes".</summary>
    public string Tallies { get; init; } = "";

    /// <summary>Figures in letters of their own, where no spaces part the words: <c>いち:1</c>.</summary>
    public string Spoken { get; init; } = "";
}
