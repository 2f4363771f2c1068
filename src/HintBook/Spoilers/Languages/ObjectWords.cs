namespace HintBook.Spoilers.Languages;

/// <summary>
/// How people speak of things that one can hold, and how they don't. Lists are words parted by spaces, <see cref="Idioms"/> phrases parted by
/// semicolons. Chosen by hand: common practice, no source.
/// </summary>
internal sealed record ObjectWords
{
    public static ObjectWords English { get; } = new()
    {
        Links =
            "for which that who whose where made turned cast carved cut from with without as holding containing kept is are was it of full on "
            + "in has like painted coloured colored called named belonging meant used labelled labeled marked by",
        Not = "not no never nor or neither isnt arent wasnt dont without",
        Handling =
            "take takes took taking taken find finds found finding pick picks picked hold holds held holding use uses used using insert lies "
            + "lie lying hidden hide hides hiding hang hangs hung hanging wait waits waiting fall falls fell falling drop drops dropped dropping "
            + "come comes came coming slide slides slid roll rolls lift lifts lifted pull pulls pulled push pushes turn turns turned put puts "
            + "fit fits reach reaches fetch grab keep keeps kept give gives given hand hands handed receive receives need needs look looks "
            + "search under behind inside beneath below tucked stuck taped glued tied stored rests resting sits sit sitting discover reveals "
            + "reveal revealed get gets got gain collect retrieve carry bring remove shake tip try tries grip place placed slip slips stick "
            + "sticks touch touches tilt aim shine lay lays laid loose free hook hooks fish lower with there this that your against into onto "
            + "through possession next meet see spot notice have has had own photograph swing swings set peer want wants without reads shows "
            + "show budge",
        Idioms =
            "key to ~; key to this; key to it; key point; key word; low key; key role; key stage; ring a bell; ring any bells; "
            + "clear as a bell; mint condition; mirror image; smoke and mirrors; pins and needles; light as a feather; other side of the coin; "
            + "two sides of the same coin; coin a phrase; flip a coin; toss a coin; in light of; come to light; bring to light; light of day; "
            + "to the letter; letter of the law; on the cards; house of cards; full moon; over the moon; once in a blue moon; spoon feed; "
            + "silver spoon; put a cork in it; chain of events; weakest link; loose thread; lose the thread; thread of thought; "
            + "needle in a haystack; lens of time; magnet for; moral compass; by hook or by crook; off the hook; burn the candle at both ends; "
            + "not worth the candle; hold a candle; skeleton key; under lock and key; lock stock and barrel; steal the show; walk the plank; "
            + "tip the scales; turn over a new leaf; drop anchor; anchor point; rope in; learn the ropes; know the ropes; whistle stop; "
            + "clean as a whistle; wet your whistle; blow the whistle; under pressure; at the drop of a hat; a feather in your cap; "
            + "birds of a feather; keep it under your hat; eat my hat; pull the strings; no strings attached; second string; on the button; "
            + "push your buttons; hot button; bright as a button; penny for your thoughts; the penny drops; the penny dropped; pretty penny; "
            + "a stitch in time; glove fits; hand in glove; fits like a glove; turn the page; same page; pearl of wisdom; pearls of wisdom; "
            + "ball is in your court; get the ball rolling; weight off; pull your weight; throw your weight; worth its weight; put a cork in; in a flap; "
            + "get in a flap; off the chart; off the charts; top of the charts; drop anchor; dropped anchor; hatch a plan; down the hatch; batten down "
            + "the hatches; holy grail; crown jewel; magic wand; crystal ball; poisoned chalice; nail in the coffin; second fiddle; fit as a fiddle; "
            + "spanner in the works; loose cannon; brass tacks; cloak and dagger; silver bullet; bite the bullet; pass the baton; thorn in; olive branch; "
            + "on your laurels; on a pedestal; to the grindstone; touchstone of; the cornerstone of; under the microscope; ivory tower; into the spotlight; "
            + "in the spotlight; in the limelight; raise the curtain; behind the curtain; curtain up; pull the rug; sweep under the carpet; over a barrel; "
            + "in the doghouse; in the driving seat; the tip of the iceberg; tie the knot; gordian knot; sound the trumpet; deserve a medal; deserves "
            + "a medal; think me cuckoo; over the moon; once in a moon; on a tablet; phone or tablet; add salt to taste; one stop",
        Similes = "like as",
        Pronouns = "it its this that theyre they",
        BeforeVerb = "should to will would can could must may might shall cannot dont didnt doesnt not never",
        Possessive = "its his her their whose",
        Indefinite = "a an any some every each",
        Of = "of",
    };

    public static ObjectWords German { get; } = new()
    {
        Links =
            "für mit aus von der die das dem den welche welcher welches wo worin womit ohne voller voll wie ist sind war gemacht gefertigt "
            + "gedreht gegossen enthält gehört",
        Not = "nicht kein keine keinen keinem nie oder weder ohne",
        Handling =
            "wirf wirft werfen nimm nimmt nehmen nehmt genommen find finde findet finden gefunden fund such suche sucht suchen halt halte hält halten "
                + "leg lege "
            + "legt legen liegt liegen lag steck stecke steckt stecken hängt hängen hing fällt fallen gefallen rutscht rutschen rollt kommt "
            + "kommen gleitet ziehen zieh zieht gezogen schieb schieben schiebt dreh drehen dreht setz setzen setzt stell stellen passt passen "
            + "brauchen brauchst braucht benutz benutze benutzen verwende verwenden gib gibt geben bekommt bekommst bekommen erhältst erhalten "
            + "hast habt haben hat hol holen holt greif greifen versteckt verborgen verbirgt klebt klebend geklebt wartet unter hinter darin "
            + "darunter dahinter daran im hinein heraus hebt heb heben halten richte drück drücken mit zeigt entdecken entdeckst da hier sieh "
            + "sehen schaut klappt lös löst führ führe lass wozu gehört gehören ruht blas läute streich streiche streichst streicht streif streife "
            + "streift schüttel schüttle schütteln schüttelt",
        Idioms =
            "auf den Zeiger; unter die Lupe; Schlüssel zum ~; Schlüssel zur ~; der Schlüssel dazu; goldene Schlüssel; "
            + "zwei Seiten derselben Medaille; die Kehrseite der Medaille; hinter den Spiegel stecken; den Spiegel vorhalten; "
            + "im Spiegel der Zeit; im Lichte; ans Licht; grünes Licht; am seidenen Faden; roter Faden; rote Faden; den Faden verlieren; "
            + "wie ein roter Faden; auf die Goldwaage; das Kind mit dem Bade; Nadel im Heuhaufen; auf der Karte; alles auf eine Karte; "
            + "die Karten auf den Tisch; eine Münze werfen; bare Münze; bei der Stange; den Löffel abgeben; mit dem goldenen Löffel; "
            + "über den Löffel; an die große Glocke; weiß wo die Glocken hängen; leicht wie eine Feder; sich mit fremden Federn schmücken; "
            + "aus den Federn; ins Horn; vor Anker; nach Strich und Faden; den Hut ziehen; unter einen Hut; ins Netz; Strick drehen",
        Similes = "wie",
        Pronouns = "er sie es diese dieser dieses",
        Indefinite = "ein eine einen einem einer eines",
        Of = "von des",
        Possessive = "sein seine seinen seinem seiner seines ihr ihre ihren ihrem ihrer ihres",
    };

    public static ObjectWords French { get; } = new()
    {
        Links =
            "de a ont en pour avec sans à qui que dont où dans est sont fait faite tout toute comme couleur contenant rempli remplie plein "
            + "pleine sur sous",
        Not = "pas ni jamais aucun aucune ou non sans",
        Handling =
            "prend prends prenez prendre pris prise trouve trouvez trouver trouvé trouvée cherche cherchez chercher tiens tient tenez tenir "
            + "pose posez poser mets mettez mettre glisse glissez glisser tombe tombent tomber tire tirez pousse poussez tourne tournez tourner "
            + "pend pendue pendu accroché accrochée caché cachée cache cachent dort attend attendent utilise utilisez utiliser insère insérez "
            + "introduis introduisez enfonce enfoncez passe passez approche approchez donne reçois recevez obtenez avez aurez as auras faut "
            + "besoin sous derrière dedans dessous voilà voici logé logée collé collée sort sortez apparaît récupérez ramassez saisissez "
            + "attrapez perdu perd manque regardez vois voyez sers servez avec y soulevez dévissez accrochée suspendue repose gît livre "
            + "libère libérez découvrez main tiendrez trouverez verrez découvrirez obtiendrez prendrez mettrez poserez",
        Idioms =
            "la clé de tout; clé de tout; clé de voûte; clef de voûte; clé du succès; mot clé; mots clés; sous clé; à la loupe; passer à la loupe; la "
                + "clé du mystère; "
            + "clé de sol; clef de sol; perdre la boussole; perd la boussole; perd vite la boussole; perdu la boussole; au fil de; fil du temps; de "
            + "fil en aiguille; perdre le fil; "
            + "le revers de la médaille; miroir aux alouettes; jouer cartes sur table; cartes sur table; château de cartes; "
            + "brouiller les cartes; l'argent du beurre; pile ou face; rendre la monnaie de sa pièce; de toutes pièces; "
            + "économies de bouts de chandelle; le jeu n'en vaut pas la chandelle; laissé des plumes; laisser des plumes; ont loupé; avez loupé; "
            + "devoir une fière chandelle; léger comme une plume; sonner les cloches; son de cloche; tirer sur la corde; "
            + "plusieurs cordes à son arc; jeter l'ancre; jeté l'ancre; jeta l'ancre; jetons l'ancre; lever l'ancre; chercher une aiguille; une botte "
            + "de foin; tomber le masque; à la clé; "
            + "à la clef; fermer à clé",
        Similes = "comme tel telle",
        Pronouns = "il elle celui celle",
        Indefinite = "un une",
        Of = "de",
        Possessive = "son sa ses leur leurs",
    };

    public static ObjectWords Spanish { get; } = new()
    {
        Links = "de en para con sin que cual donde a está es son hecho hecha lleno llena como color bajo sobre tras se",
        Not = "no ni nunca ningún ninguna o sin",
        Handling =
            "toma tome tomar coge coja coger encuentra encuentre encontrar encontrará encontrado hallará halla busca busque buscar usa use "
            + "usar utilice mete meta meter saca saque sacar cae caen caerá caer cuelga colgada colgado escondida escondido esconde oculta "
            + "oculto guarda guarde gira gire girar tira tire empuja empuje aparece aparecerá asoma espera pon ponga poner acerca acerque lleva "
            + "lleve necesita necesitará hay tiene tendrá tenga mira mire bajo tras detrás debajo dentro junto con introduzca introduce encaja "
            + "encaje desliza deslice recoge recoja suelta suelte sale salga pegada pegado dé da levanta levante mano agarra agarre sujeta "
            + "sujete apoya apoye pasa pase está descansa duerme aguarda",
        Idioms =
            "la llave de todo; en vela; a la vela; llave de paso; la llave del éxito; palabra clave; bajo llave; llave inglesa; a cal y canto; "
            + "la otra cara de la moneda; pagar con la misma moneda; caer como una losa; perder el hilo; pender de un hilo; al hilo; "
            + "castillo de naipes; cartas en el asunto; tomar cartas; espejo del alma; dar la campanada; echar las campanas al vuelo; "
            + "aguja en un pajar; echar anclas; echamos el ancla; echar el ancla; echó el ancla; levar anclas; perder la brújula; cara o cruz; a vela; "
            + "encender una vela; ni una vela; la misma moneda; "
            + "que una pluma; vela en este entierro; pluma ligera; como una pluma; con lupa; mirar con lupa",
        Similes = "como cual",
        Pronouns = "este esta ese esa él ella",
        Indefinite = "un una",
        Of = "de",
        Possessive = "su sus",
    };

    public static ObjectWords Japanese { get; } = new()
    {
        Links = "の で が は に と を な い た る",
        Not = "無",
        Handling = "取 使 探 見 隠 入 持 出 落 差 回 掛 置 開 拾 引 押 下 裏 中 奥 手 受 貼 吊 転 挿 渡 必 要 眠 待 潜 現 当 映 照 有 あ",
        Idioms = "鍵を握る; 鍵となる; 鍵になる; 鍵は根気; 成功の鍵; 鏡のよう; 心の鏡; 合わせ鏡; 鈴なり; 針の穴; 糸口; 糸目",
        Similes = "",
    };

    public static ObjectWords Arabic { get; } = new()
    {
        Links = "من في ذو ذات الذي التي حيث به بها فيه فيها لـ مصنوع مصنوعة مملوء هو هي على مثل ل ب",
        Not = "ليس ليست لا لم لن غير أو بدون بلا دون",
        Handling =
            "خذ خذه خذها تجد ستجد وجدت ابحث ضع أدخل أدر استعمل استخدم يسقط تسقط سقط سقطت معلق معلقة مخبأ مخبأة مخفي مخفية مختبئ يختبئ تختبئ "
            + "ملصوق ملصوقة مربوط مربوطة تحت خلف داخل في بين فوق وراء ينتظر تنتظر يخرج تخرج تنزلق ينزلق اسحب ارفع أمسك قرب وجه ب أخرج التقط هناك "
            + "تحتاج يظهر تظهر موجود موجودة انظر بيدك معك يقع تقع",
        Idioms = "مفتاح الفرج; مفتاح النجاح; مفتاح السر; مرآة القلب; مرآة الروح; حجر الزاوية; رأس الخيط",
        Similes = "مثل ك كأن",
    };

    /// <summary>What ties a noun to what describes it behind it.</summary>
    public string Links { get; init; } = "";

    /// <summary>What says that something isn't so, or that it is one of several.</summary>
    public string Not { get; init; } = "";

    /// <summary>What one does with a thing, where it is, and how it comes to hand.</summary>
    public string Handling { get; init; } = "";

    /// <summary>Phrases in which a word means no thing.</summary>
    public string Idioms { get; init; } = "";

    /// <summary>What speaks of a thing that was named before.</summary>
    public string Pronouns { get; init; } = "";

    /// <summary>The articles of things that aren't known yet.</summary>
    public string Indefinite { get; init; } = "";

    /// <summary>What stands before the owner of what is named before it.</summary>
    public string Of { get; init; } = "";

    /// <summary>What a verb stands behind.</summary>
    public string BeforeVerb { get; init; } = "";

    /// <summary>Says that what follows is something's own.</summary>
    public string Possessive { get; init; } = "";

    /// <summary>What stands before a thing to which something is likened.</summary>
    public string Similes { get; init; } = "";
}
