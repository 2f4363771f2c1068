namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// What a hand does to a thing, where a thing is, and what belongs to every box. From memory. Words are parted by spaces.
/// </summary>
/// <param name="Acts">What a reader is told to do, what things do, and places: beside the article they make a common noun a certain thing.</param>
/// <param name="Addressed">What stands between such a verb and the thing: <c>ziehen Sie</c>.</param>
/// <param name="Fixtures">Nouns that are never one thing, for every box has several of them, and units of time.</param>
internal sealed record ActsIn(string Acts, string Addressed, string Fixtures)
{
    /// <summary>What begins a clause behind a thing that the reader has met: "the pick you unclipped".</summary>
    public string Recalls { get; init; } = "";

    /// <summary>The same behind a comma, before the reader: "den Magneten, den Sie lösten".</summary>
    public string Relatives { get; init; } = "";

    /// <summary>Verbs before a thing that the reader hasn't met: "out falls a thimble", "it's gall".</summary>
    public string Shows { get; init; } = "";

    /// <summary>What follows a thing that is put somewhere in few words: "scissors out, lid back on".</summary>
    public string Ways { get; init; } = "";

    /// <summary>Articles of what is only part of a whole, and "no".</summary>
    public string Some { get; init; } = "";

    /// <summary>What follows a thing with which something is to be done or not: "den Draht bitte nicht abwickeln".</summary>
    public string Bids { get; init; } = "";

    /// <summary>What holds stuff, or how much of it there is: "bottle of ox gall" is gall.</summary>
    public string Holders { get; init; } = "";

    private static ActsIn English { get; } = new(
        "take find pick hold use turn lift pull push give wind shake tilt tip press rub stroke tap knock squeeze twist unscrew screw open close shut "
        + "place put lay set hang hook drop slide slip fit insert lower raise swing spin rotate roll flip move shift shove nudge poke prod tug draw "
        + "remove free loosen tighten light blow warm heat dip wet dry feel touch grip grab examine inspect search see mind keep catch bring fetch "
        + "behind under inside beneath into onto within through hides holds holding carries contains opens hiding with has sits stands stood lies",
        "",
        "box case chest drawer drawers door lid panel plate board lock key card label paper letter note book page piece part thing object line word "
        + "number code symbol sign mark arrow side end top bottom edge corner base point hole slot cover step hand face wall floor room house garden "
        + "table one other first last glass wood light year years month months week weeks day days hour hours minute minutes")
    {
        Shows = "is was s it it’s its that’s there’s theres find finds found discover hides hid holds held contains lies lay sits sat waits hangs "
            + "rests expect meet "
            + "drops falls rolls slides slips comes pops appears reveals gives yields sleeps sleeping be",
        Ways = "out in off up down back first next goes onto into under over",
        Some = "no some",
        Holders = "bottle jar tin pot tub phial vial flask bag sack packet pouch lump block cake bar ball roll reel spool bundle skein bunch handful "
            + "stick tube "
            + "pair",
        Recalls = "you youve you’ve youd you’d youll you’ll weve we’ve ive i’ve",
    };

    private static ActsIn German { get; } = new(
        "nimm nehmen nehmt such suchen suche find finden halte halten dreh drehe drehen heb hebe heben zieh ziehe ziehen schieb schiebe schieben gib geben "
        + "drück drücke drücken schüttle schütteln kipp kippe kippen leg lege legen stell stelle stellen setz setze setzen häng hänge hängen öffne öffnen "
        + "reib reibe reiben klopf klopfe klopfen löse lösen stoß stoße stoßen blas blase blasen zünde wärme tauche fühle fühlen greif greife greifen "
        + "bewege bewegen stecke stecken führe führen brauche brauchen brauchst hinter unter in auf mit ohne über vor an aus verbirgt enthält trägt "
        + "hält steckt ab "
        + "heraus hinein durch",
        "sie du ihr wir",
        "dose kiste kasten truhe schrank fach lade schublade tür deckel platte brett schlüssel schloss zettel karte papier brief buch seite teil ding loch "
        + "zeile wort zahl zeichen ecke kante boden hand tisch haus wand dach glas holz "
        + "jahr jahre monat monate woche wochen tag tage stunde stunden minute minuten")
    {
        Shows = "steckt liegt lag hängt rollt fällt rutscht findet finden fand steht sitzt klebt wartet verbirgt birgt enthält kommt ist sondern gibt "
            + "erscheint "
            + "purzelt schläft ruht kullert springt dazu",
        Ways = "raus rein hoch runter weg ab heraus hinein drauf drunter zuerst zu",
        Some = "kein keine keinen",
        Relatives = "den die das der dem",
        Bids = "bitte nicht nie niemals ruhig unbedingt",
        Holders = "flasche fläschchen glas dose topf tiegel beutel sack säckchen päckchen brocken klumpen stück block riegel knäuel rolle spule "
            + "bündel strang bund "
            + "handvoll stange tube paar",
    };

    private static ActsIn French { get; } = new(
        "prenez prends prendre cherchez trouvez tenez tournez tourne levez soulevez tirez tire poussez pousse donnez secouez penchez inclinez appuyez pressez "
        + "posez pose mettez mets glissez placez ouvrez frottez tapez frappez dévissez vissez soufflez allumez chauffez trempez touchez remuez déplacez "
        + "libérez suspendez accrochez baissez remontez derrière sous dans sur avec sans cache contient renferme porte",
        "",
        "boîte coffre coffret caisse tiroir porte couvercle panneau plaque planche clé serrure carte papier lettre livre page pièce chose ligne mot nombre "
        + "signe côté coin fond trou main table maison mur verre bois an ans année années mois semaine semaines jour jours heure heures "
        + "minute minutes")
    {
        Shows = "trouve trouverez trouvez voilà voici est récupère cache attend roule tombe sort contient renferme repose dort apparaît découvrez "
            + "pend était a",
        Ways = "dehors hors dedans dessus dessous d’abord ensuite",
        Some = "de du des d pas",
        Holders = "bouteille bocal pot fiole flacon tube sac sachet paquet pain bloc morceau boule pelote rouleau bobine botte écheveau poignée bâton paire",
        Recalls = "que qui",
    };

    private static ActsIn Spanish { get; } = new(
        "toma tome coge coja busca busque encuentra usa use gira gire levanta levante tira tire empuja empuje da dé sacude inclina aprieta apriete pon ponga "
        + "mete meta coloca coloque abre abra frota frote golpea golpee desenrosca sopla enciende calienta moja toca toque mueve mueva desliza deslice "
        + "suelta suelte cuelga baja baje sube sostén sujeta sujete agarra agarre tras bajo en con sin dentro detrás debajo esconde guarda contiene",
        "usted ustedes",
        "caja cofre baúl cajón puerta tapa panel placa tabla llave cerradura carta papel nota libro página pieza cosa línea palabra número signo lado esquina "
        + "fondo agujero mano mesa casa pared vidrio madera año años mes meses semana semanas día días hora horas minuto minutos")
    {
        Shows = "hay había es era sale cae aparece queda encuentra encontrarás dejado esconde guarda contiene espera duerme cuelga rueda asoma pues rodando",
        Ways = "fuera arriba abajo encima primero después",
        Some = "sin",
        Holders = "botella tarro lata bote frasco tubo saco bolsa saquito paquete pastilla bloque trozo pedazo bola ovillo rollo carrete manojo "
            + "madeja puñado barra par",
        Recalls = "que",
    };

    private static ActsIn Arabic { get; } = new(
        "خذ ضع اسحب ادفع ارفع أدر افتح هز اضغط انفخ افرك حرك فك علق المس أخرج أمسك اقلب اطرق استعمل استخدم ابحث تنفتح "
        + "ينفتح انفتحت تخفي يخفي تحمل يحمل تحت خلف داخل في وراء فوق هذا هذه ذلك تلك على إلى ستحتاج أدخل املأ خذ",
        "",
        "صندوق علبة درج باب غطاء لوح مفتاح قفل بطاقة ورقة رسالة كتاب صفحة قطعة شيء سطر كلمة رقم رمز علامة جانب ركن قاع يد طاولة بيت جدار زجاج خشب "
        + "سنة سنوات شهر أشهر أسبوع أسابيع يوم أيام ساعة ساعات دقيقة دقائق")
    {
        Shows = "تخرج يخرج فتخرج فيخرج تجد ستجد هناك توجد يوجد تسقط يسقط فتسقط فيسقط إنها إنه هي هو فيه فيها",
        Holders = "زجاجة قنينة كيس صرة كتلة قطعة لفة بكرة حزمة ربطة رزمة كرة عود",
        Recalls = "الذي التي اللذان اللتان",
    };

    private static ActsIn None { get; } = new("", "", "");

    /// <summary>Those of a language; of Japanese, where no article says that a thing is known, there are none.</summary>
    public static ActsIn Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        _ => None,
    };
}
