namespace HintBook.Spoilers.Languages;

/// <summary>
/// What stands around numbers that are no codes: years, units, numbering, counts. Patterns of regular expressions, which begin behind the number or end
/// before it. Chosen by hand: common practice, no source.
/// </summary>
internal sealed record CommonNumbers
{
    /// <summary>Symbols of units, in every language.</summary>
    public const string Symbols =
        "[mk]?V|[mkM]?W|[kM]?Wh|VA|[mµμ]?A|m?Ah|[kMG]?Hz|dBA?|k?Nm?|[hkM]?Pa|psi|PSI|bar|lux|lx|lm|cd|[kKMGT]i?B|[kMG]?bit|[MG]bps|px|dpi|ppi|lpi|rpm"
            + "|RPM|bpm|BPM"
        + "|fps|gsm|[µμn]m|k?cal|k?J|[kM]?Ω|mol|ppm|lbs?|[mµμ]g|ha|t|hp|PS|K|°[CF]?";

    /// <summary>What stands before numbers of things, models and standards in every language.</summary>
    public const string Numbering = @"(?:№|\bRAL|\bISO|\bDIN|\bEN|\bIEC|\bASTM|\bANSI|\bAISI|\bSAE|\bBS|\bISBN|\bSKU|\bS/N|\bPantone|\b1\s?:|\b[Pp]ostal"
        + @"|\b(?:Postcode|postcode|PLZ|Postleitzahl|ZIP)|郵便番号[は：]?|البريدي)\s?:?\s?";

    public static CommonNumbers English { get; } = new()
    {
        Years =
            @"\b(?!need|feed|speed)(?:\w{2,}ed|made|built|born|begun|began|sold|won|lost|drawn|written|wrote|cut|cast|sewn|woven|bought|brought|gave"
            + @"|left|came"
            + @"|went|stood|grew|fell|fought|struck|dates?|dating|back)\s+(?:(?!to\b|put\b|type\b|key\b|dial\b|enter\b)[\w’'-]+\s+){0,3}"
            + @"(?:in|since|around|about|circa|before|after|until|during)\s+"
            + @"|(?:^|[.!?\n:*#>“""(]\s*)(?-i:In|Since|By|During|Around|Until)\s+"
            + @"|\b(?:anno(?: domini)?|A\.?D\.?|C\.?E\.?|circa|ca?\.|est\.?|copyright|between)\s*|©\s*|\(c\)\s*|\bbetween \d{4} and\s+"
            + @"|\b(?:spring|summer|autumn|fall|winter|christmas|easter|season|storm|flood|fire|war|frost|harvest|vintage|year)(?: of)?\s+",
        MaybeYears = @"\b(?:in|since|by|from|until|till|before|after|during|around|about|of)\s+(?:the |early |late |mid-?|year )*\s*",
        AfterYears =
            @"\s+(?:A\.?D\b|C\.?E\b|B\.?C)|\s?[–—-]\s?\d{2,4}\b|\s+(?:and|to|until|till)\s+\d{4}\b|\s+(?:was|saw|brought|came|had)\b"
            + @"|\s+(?:season|edition|model|vintage|harvest|catalogue|fair|flood|storm|census|coin|penny|festival)\b",
        Units =
            "volts?|watts?|kilowatts?|amps?|amperes?|k?hertz|kilohertz|decibels?|newtons?|pascals?|microns?|lumens?|candelas?|bytes|bits|kilobytes?"
            + "|megabytes?"
            + "|gigabytes?|pixels?|k?calories|kilocalories|joules?|ohms?|horsepower|revolutions|revs|grit|gauge|mesh|tonnes?|tons?|acres?|hectares?"
            + "|knots|bushels?"
            + "|fathoms?|furlongs?|leagues?|quarts?|carats?|karats?|teaspoons?|tablespoons?|dots per inch|beats per minute|sq|square",
        Things = "beats?|dots?|sheets?|words?|letters?|characters|lines?|stitches|threads?|bees|leaves|volumes|votes|points|members|seats|bricks|tiles|nails",
        Counted = @"\s+(?:[a-z]+\s+)?[a-z]{2,}(?<!s|ou|thi)s\b",
        BeforeCounted =
            @"\b(?:there (?:are|were|is)|there’re|has|have|had|with|of|for|contains?|holds?|held|needs?|uses?|used|took|takes|made|counted|over|all"
            + @"|these|those"
            + @"|his|her|my|our|some|their|than|about|nearly|almost|and|keeps?|kept|sold|built|printed|owns?|in|by|on|see|saw|wrote)\s+",
        Numbers =
            @"\b(?:nos?\.?|nr\.?|number|item|serial|copy|copies|edition of|edition|box|bus|tram|train|flight|route|highway|hwy\.?|interstate|motorway"
            + @"|road|room"
            + @"|apartment|apt\.?|flat|suite|unit|house|street|lot|locker|plot|p\.?\s?o\.? box|shelf|seat|platform|gate|channel|ref\.?|part|opus|op\."
            + @"|psalm|hymn|(?<=(?:^|\b(?:the|a|this|our|your) ))form|leaflet|receipt|radio(?: station)?"
            + @"|track|size|plate|ticket|catalogue|cat\.|grit|invoice|patent|mk\.?|population|print run|parcel|batch)\s*(?:no\.?|number|nr\.?|#)?\s*"
            + @"|(?-i:\p{Lu}\p{L}+ (?:Row|Street|St\.|Road|Rd\.?|Lane|Avenue|Ave\.?|Square|Close|Way|Drive|Place|Court|Terrace|Hill|Gardens|Crescent)) "
            + @"|(?-i:\bP)",
        AfterNumbers =
            @"\s?/\s?\d+|,?\s+(?-i:(?:\p{Lu}\p{L}+\s+){1,3}(?:Row|Street|St\b|Road|Rd\b|Lane|Avenue|Square|Close|Way|Drive|Place|Court|Terrace|Hill))",
        Places =
            @"\b(?:rooms?|floors?|flats?|apartments?|apt\.?|suites?|houses?|cottages?)\s*(?:no\.|nr\.|#)?\s*"
            + @"|(?-i:\p{Lu}\p{L}+ (?:Row|Street|St\.|Road|Rd\.?|Lane|Avenue|Ave\.?|Terrace|Gardens|Crescent)) "
            + @"|\b(?:liv(?:e|es|ed|ing)|dwell\w*|dwelt|resid\w+|lodg(?:e|es|ed|ing)|grew up|brought up)\s+(?:at|in)\s+(?:no\.?|nr\.?|number)?\s*",
        AfterPlaces = @",?\s+(?-i:(?:\p{Lu}\p{L}+\s+){1,3}(?:Row|Street|St\b|Road|Rd\b|Lane|Avenue|Terrace|Gardens|Crescent)\b)",
        Counts =
            @"\b(?:made|sold|built|printed|produced|over|more than|fewer than|less than|nearly|almost|about|around|some|up to|at least|there (?:are|were)"
            + @"|a total of|room for|space for|limited to|costs?|weighs?|worth|paid|scored|population of)\s+(?:only |just |about |some )?"
            + @"|\b(?:population|print run|circulation|visitors|members):\s*",
        AfterCounts = @"\s+(?:of (?:them|these|those|us|which|our|its|the)|(?:were|have been|are) (?:made|sold|built|left|printed|born|lost|\w+ed))\b",
        Phones = @"\b(?:call|phone|telephone|tel\.?|ring|fax|mobile|whatsapp)(?: us| me)?(?: on| at)?[:.]?\s*[\d()+ /-]*",
        Instruments = @"\b(?:scales?|balance|gauge|meter|counter|pan|dial|pointer|needle|ruler|weights?|slider|weighing)\b",
        Showing =
            @"\b(?:must|has to|have to|should|needs? to|reads?|reading|says?|shows?|shown|opens?|releases|lets go|gives way"
            + @"|until|till|set|turn|slide|load|wind|push|put|lay|stop|exactly|clicks?)\b",
        Spans = @"\b(?:since|after|before)\s+(?:the year )?|(?:^|[.!?؟\n]\s*)until\s+|\bfrom \d{4} (?:to|until|till)\s+",
        AfterSpans = @"\s+(?:to|until|till)\s+\d{4}\b",
        Telling =
            @"\b(?:clocks?|hands?|wants?|needs?|try|gives?|put|must|has to|have to|had better|should|until|drops?|springs?|sprung|lets? go|loose|yields?"
            + @"|falls?|pops? (?:up|open|out)|move|pull|push|press|facing|pointer|gauge|drawer|hatch|flap|hasp|safe|chest|vault|cash ?box|padlock|ledger"
            + @"|precisely|exactly|sharp|on the dot|secret|correct|mind your|in place|says?|said|written|engraved|carved"
            + @"|scratched|stamped)\b|^\s*(?:(?:it|that)(?:[’']s| is)|is (?:it|that))\b|:\s*$",
        Setting =
            @"(?<!\b(?:a|the|this|each|full|of) )\bset\b|\b(?:sets|setting|dial\w*|turn|turns|rotate\w*|spin|enter|enters|typ(?:e|ing)|key in|punch|input"
            + @"|combinations?|codes?|passcode|digits?|wheels?|rings|discs?|tumblers?|lock|locks|padlocks?|opens|works|releases|frees|unlocks?"
            + @"|answers?|solution"
            + @"|opened|unlocked|the numbers?|numbers|figures|click|clicks|spell|align|line up|reads?|opening)\b|\bto open\b|\bopen (?:it|them|the"
            + @"|with|by)\b",
        Never =
            @"\b(?:put(?:ting)?|dial\w*|typ(?:e|es|ed|ing)|key(?:ed)?|enter\w*|punch\w*|tap\w*|turn\w*|set|click\w*|feed|lock\w*|spell\w*|press\w*|write)"
            + @"\s+(?:it |them )?(?:in|to|at)\s+",
        BeforeDates = @"\b(?:on|of|from|until|till|dated)\s+",
        Sold =
            @"\s+(?:pre-?orders|orders|copies|boxes|sets|kits|parcels|customers|visitors|guests|people|members|backers|subscribers|readers|reviews"
            + @"|e-?mails|inhabitants|employees)\b",
    };

    public static CommonNumbers German { get; } = new()
    {
        Years =
            @"\b(?:gebaut|gegründet|geboren|gemacht|hergestellt|gefertigt|errichtet|erbaut|entstanden|entstand|begonnen|begann|gestorben|starb"
            + @"|vergangen|verkauft"
            + @"|gekauft|gefunden|gemalt|geschrieben|gedruckt|eröffnet|wurde)\s+(?:im Jahre? |anno |um |seit |vor |nach )?|\bstammt\s+(?:von"
            + @"|aus)\s+(?:dem jahr )?"
            + @"|\b(?:anno|n\. ?chr\.|copyright|circa|ca\.|zwischen|seit|frühling|frühjahr|sommer|herbst|winter|ostern|weihnachten|jahrgang|saison|sturm"
            + @"|im jahre?)(?: von| des jahres)?\s+|©\s*|\bzwischen \d{4} und\s+",
        MaybeYears = @"\b(?:um|vor|nach|ab|von|aus|(?:war|stand|kam|gehörte|baute|gründete)(?: \p{L}+){0,2})\s+(?:jahr |jahre )?",
        AfterYears =
            @"\s+(?:n\. ?Chr|v\. ?Chr)|\s?[–—-]\s?\d{2,4}\b|\s+(?:und|bis)\s+\d{4}\b|\s+(?:war|wurde|stand|kam|baute|gab|ging|begann|starb|entstand|hatte|zog"
            + @"|machte|fand)\b|(?:er\b)|\s+(?:[\p{L}]+\s+){0,3}(?:ge\w{2,}(?:t|en)|erbaut|gegründet|geboren)\b",
        Units =
            "er Körnung|er Papier|Volt|Watt|Kilowatt|Ampere|Hertz|Kilohertz|Dezibel|Newton|Pascal|Mikrometer|Mikron|Lumen|Lux|Candela|Bytes?"
            + "|Kilobytes?|Megabytes?"
            + "|Pixel|Kalorien|Kilokalorien|Joule|Ohm|Umdrehungen|Körnung|Tonnen?|Pfund|Zentner|Hektar|Karat|Knoten|Quadratmeter|Kubikmeter|Faden|Schläge",
        Things = "Wörter|Worte|Buchstaben|Punkte|Blatt|Blätter|Bögen|Bienen|Stück|Stiche|Zeilen|Zeichen|Mal|Stimmen|Plätze",
        Counted = @"\s+(?-i:(?!Sie\b|Ihr\b|Ihnen\b|Räder|Ringe|Ziffern|Zahlen|Scheiben|Walzen|Und\b|Auf\b)\p{Lu}\p{Ll}+)",
        BeforeCounted = "",
        Numbers =
            @"\b(?:nr\.?|nummer|no\.?|artikel|stück|serie|seriennummer|exemplar|auflage(?: von)?|kiste|schachtel|bus|linie|tram|zug|flug|bundesstraße"
            + @"|autobahn"
            + @"|landstraße|route|zimmer|raum|wohnung|haus|hausnummer|postfach|regal|platz|gleis|kanal|ref\.?|teil|opus|größe|los|charge|katalog"
            + @"|einwohner|körnung|norm|farbe)"
            + @"\s*(?:nr\.?|nummer|no\.?)?\s*|\p{L}+(?:straße|strasse|str\.|weg|gasse|platz|allee|ufer|damm|zeile)\s+|(?-i:\b[BAP]\s?)",
        AfterNumbers = @"\s?/\s?\d+|,\s*\d{5}\b",
        Places =
            @"\b(?:zimmer|raum|wohnung|haus|hausnummer|stockwerk|etage|apartment|appartement)\s+(?:nr\.?)?\s*"
            + @"|(?-i:\b\p{Lu})\p{L}+(?:straße|strasse|str\.|weg|gasse|platz|allee|ufer|damm|zeile)\s+"
            + @"|\b(?:wohn(?:e|st|t|en|ten?)|leb(?:e|st|t|en|ten?)|gewohnt|aufgewachsen)\b[^.!?;:,\d]{0,40}\s(?:in|auf)\s+(?:der\s+)?(?:nummer|nr\.?)?\s*",
        Counts =
            @"\b(?:über|mehr als|weniger als|fast|beinahe|etwa|rund|ungefähr|bis zu|mindestens|insgesamt|gibt es|sind es|platz für|kostet|wiegt|wert|verkauft"
            + @"|gebaut|gemacht|alle|diese|nur noch)\s+|\b(?:einwohner|auflage|besucher|mitglieder|stückzahl):\s*",
        AfterCounts = @"\s+(?:davon|von ihnen|dieser|unserer|solcher|(?:wurden|sind) (?:verkauft|gebaut|gemacht|\p{L}*ge\w+))\b",
        Phones = @"\b(?:tel\.?|telefon|ruf\p{L}*(?: sie| uns)?(?: an)?|fax|mobil|handy)[:.]?\s*(?:unter )?[\d()+ /-]*",
        Instruments =
            @"\b(?:\w*waage|zähler|zählwerk|zeiger|schale|gewicht|laufgewicht|skala|scheibe|lineal|anzeige|messer"
            + @"|manometer)\b|angezeigt",
        Showing =
            @"\b(?:muss|müssen|soll(?:en)?|zeigen|zeigt|anzeigt|angezeigt|öffnet|stell\w*|dreh\w*|schieb\w*|kurbel\w*"
            + @"|gehör\w*|bis|leg\w*|klickt|stehen|steht|genau)\b",
        Spans = @"\b(?:seit|nach|vor)\s+(?:dem jahr )?|(?:^|[.!?؟\n]\s*)bis\s+|\bvon \d{4} bis\s+",
        AfterSpans = @"\s+(?:bis|und)\s+\d{4}\b",
        Telling =
            @"\b(?:(?:die|der|eine|\p{L}{3,})(?-i: Uhr|uhr)|zeiger|will|wollen|muss|müssen|soll|sollen|gehört|gehören|probier\w*|versuch\w*|klappt"
            + @"|springt|geht (?:\p{L}+ )*auf"
            + @"|nur bei|fällt|löst|genau|exakt|luke|kassette|truhe|koffer|tresor|safe|trommel|waage|klappe|geheim\w*|verrat\w*"
            + @"|geschrieben|geritzt|graviert|eingebrannt)\b|^\s*(?:(?:es|das) ist|ist (?:es|das))\b|:\s*$",
        Setting =
            @"\b(?:stell\w*|dreh\w*|setz\w*|gib|geben sie|eingeben|tipp\w*|wähl\w*|code|codes|kombination"
            + @"|(?-i:\p{Lu}\p{L}*schloss|Schloss)|schlösser|rad|räder|ringe?"
            + @"|ziffern?|scheiben?"
            + @"|walzen?|öffnet|öffnen|öffne|lösung|antwort|die zahl|zahlen|zahl|einstell\w*|eingestellt|drück\w*|lautet|heißt)\b",
        Never = @"\b(?:\p{L}*gestellt|\p{L}*gedreht|eingegeben|gewählt|\p{L}*gesetzt|gedrückt|getippt|geöffnet)\s+(?:auf |mit )?",
        BeforeDates = @"\b(?:am|vom|zum|bis)\s+",
        Sold =
            @"\s+(?:(?:vor|nach)?bestellungen|kästen|schachteln|exemplare|kund(?:inn)?en|besucher\w*|gäste|leute|personen|mitglieder"
            + @"|unterstützer|leser|bewertungen|mails|einwohner|mitarbeiter)\b",
    };

    public static CommonNumbers French { get; } = new()
    {
        Years =
            @"\b(?:circa|anno|entre|an|l’an|l'an|copyright|printemps|été|automne|hiver|noël|pâques|saison|tempête|millésime|année)(?: de)?\s+|©\s*"
            + @"|\bentre \d{4} et\s+|\b(?:construite?s?|née?s?|faite?s?|vendue?s?|bâtie?s?|fabriquée?s?|fondée?s?|créée?s?|imprimée?s?)\s+(?:ici "
            + @"|vers )?en\s+"
            + @"|(?:^|[.!?\n]\s*)(?-i:En|Depuis)\s+",
        MaybeYears = @"\b(?:de|du|dès|en|depuis|vers|avant|après|jusqu’en|jusqu'en)\s+",
        AfterYears = @"\s?[–—-]\s?\d{2,4}\b|\s+(?:et|à|jusqu)\s+\d{4}\b|\s+(?:apr\.|av\.|fut|vit|était)",
        Units =
            "volts?|watts?|kilowatts?|ampères?|hertz|kilohertz|décibels?|newtons?|pascals?|microns?|lumens?|octets|kilo-?octets|[kM]o|pixels?"
            + "|calories|joules?|ohms?"
            + "|tours|grains?|tonnes?|livres|hectares?|carats?|nœuds|chevaux|battements|tr/min",
        Things = "mots?|lettres?|points?|feuilles?|caractères|lignes?|abeilles|pièces|exemplaires|voix|places|fois",
        Counted = @"\s+(?:[\p{Ll}]+\s+)?(?!roues|molettes|anneaux|cadrans|chiffres)\p{Ll}{2,}[sx]\b",
        BeforeCounted =
            @"(?:\b(?:il y a|y avait|avec|de|des|contient|compte|a|ont|avait|avons|pour|ses|les|nos|que|environ|près de|fait|vendu|fabriqué|produit"
            + @"|dans|sur|par)\s+"
            + @"|d['’])",
        Numbers =
            @"(?:\bn[°o]\.?|\bnuméro|\bformulaire|\bimprimé|\bradio|\barticle|\bsérie|\bexemplaire|\bédition(?: de)?"
            + @"|\bboîte(?: postale)?|\bcaisse|\bbus|\bligne|\btram|\btrain"
            + @"|\bvol|\broute|\bautoroute"
            + @"|\bnationale|\bchambre|\bsalle|\bappartement|\bappt?\.?|\bmaison|\brue|\bb\.?p\.?|\bplace|\bvoie|\bcanal|\bréf\.?|\bopus|\btaille"
            + @"|\blot|\bgrain|\bnorme)"
            + @"\s*(?:n[°o]\.?|numéro)?\s*|(?-i:\b[ANP]\s?)",
        AfterNumbers = @"\s?/\s?\d+|,?\s+(?:bis,? |ter,? )?(?:rue|avenue|boulevard|place|allée|chemin|quai|impasse|route)\b",
        Places =
            @"\b(?:chambre|salle|appartement|appt?\.|étage|bureau|maison|logement|studio)\s+(?:n[°o]\.?)?\s*"
            + @"|\b(?:habit\w+|vit|vis|viv(?:ent|ons|ez|ait|aient|ions)|vécu|log(?:e|ent|eons|eait|eaient)|demeur\w+|grandi)\b[^.!?;:,\d]{0,40}\sau\s+"
            + @"(?:n[°o]\.?|numéro)?\s*",
        AfterPlaces = @",?\s+(?:bis,? |ter,? )?(?:rue|avenue|boulevard|allée|chemin|quai|impasse|(?:place|route) d(?:e|u|es))\b",
        Counts =
            @"\b(?:plus de|moins de|près de|presque|environ|quelque|jusqu’à|jusqu'à|au moins|au total|il y (?:a|avait|en a)|coûte|pèse|vaut|fabriqué"
            + @"|fait|vendu"
            + @"|produit|de la place pour|les|ces)\s+|\b(?:habitants|tirage|visiteurs|membres)\s?:\s*",
        AfterCounts = @"\s+(?:d’entre|d'entre|de (?:ces|ceux|nos|celles)|(?:ont été|sont|furent) \p{L}+)",
        Phones = @"\b(?:tél\.?|téléphone|appel\p{L}*(?:-nous)?(?: au)?|fax|portable)\s*[:.]?\s*[\d()+ /-]*",
        Instruments = @"\b(?:balance|compteur|aiguille|plateau|poids|curseur|cadran|jauge|règle|bascule|pesons?)\b|affich",
        Showing =
            @"\b(?:doit|doivent|marque\w*|affich\w*|s['’]ouvre|jusqu\w*|tourne\w*|pose\w*|pousse\w*|gliss\w*|montez|réglez"
            + @"|clique|arrêter|exactement)\b",
        Spans = @"\b(?:depuis|après|avant|dès)\s+(?:l['’]an )?|(?:^|[.!?؟\n]\s*)jusqu['’]en\s+|\bde \d{4} à\s+",
        AfterSpans = @"\s+à\s+\d{4}\b",
        Telling =
            @"\b(?:horloge|pendule|aiguilles?|veut|réclame|demande|doit|doivent|essayez|faut|cède|saute|tombe|jusqu|exactement|précises?|coffre\w*"
            + @"|casier|tiroir"
            + @"|trappe|cadenas|réglez|amenez|mettez|tournez|marque\w*|composez|secret|glisse|ni plus ni moins"
            + @"|écrits?|gravée?s?|inscrits?)\b|^\s*(?:c[’']est|est-ce)\b|:\s*$",
        Setting =
            @"\b(?:règl(?!ement)\w*|tourn\w*|compos\w*|entre[rz]|mett(?:ez|re)|mets|tap(?:ez|e|er)|codes?|combinaison|serrure|cadenas|roues?|molettes?"
            + @"|anneaux?|cadrans?"
            + @"|chiffres?|ouvre\w*|ouvrir|réponse|solution|le nombre|le numéro est|place[rz]|affich\w*|form(?:ez|e))\b",
        Never = @"\b(?:réglée?s?|tournée?s?|composée?s?|mise?s?)\s+(?:sur|à|en)\s+",
        BeforeDates = @"\b(?:le|du|au)\s+",
        Sold =
            @"\s+(?:(?:pré)?commandes|coffrets|boîtes|exemplaires|clients|visiteurs|personnes|membres|lecteurs|avis|messages|habitants)\b",
    };

    public static CommonNumbers Spanish { get; } = new()
    {
        Years =
            @"\b(?:circa|anno|entre|año|copyright|primavera|verano|otoño|invierno|navidad|temporada|tormenta|cosecha)(?: de)?\s+|©\s*|\bentre \d{4} y\s+"
            + @"|\b(?:hech[oa]s?|naci\p{L}+|fund\p{L}+|constru\p{L}+|fabricad[oa]s?|vendid[oa]s?|impres[oa]s?|cread[oa]s?)\s+(?:aquí )?(?:en|hacia)\s+"
            + @"|(?:^|[.!?\n]\s*)(?-i:En|Desde)\s+",
        MaybeYears = @"\b(?:de|del|en|desde|hacia|hasta|antes de|después de)\s+",
        AfterYears = @"\s?[–—-]\s?\d{2,4}\b|\s+(?:y|a|hasta)\s+\d{4}\b|\s+(?:d\. ?C|a\. ?C|fue|era|trajo)",
        Units =
            "voltios?|vatios?|kilovatios?|amperios?|hercios|kilohercios|decibelios|newtons?|pascales|micras?|lúmenes|bytes|bits|píxeles|calorías"
            + "|julios|ohmios"
            + "|revoluciones|granos?|toneladas?|libras|hectáreas?|quilates|nudos|caballos|latidos|kilobytes",
        Things = "palabras?|letras?|puntos?|hojas?|caracteres|líneas?|abejas|piezas|ejemplares|votos|plazas|veces",
        Counted = @"\s+(?:[\p{Ll}]+\s+)?(?!ruedas|anillos|discos|cifras|dígitos)\p{Ll}{2,}s\b",
        BeforeCounted =
            @"\b(?:hay|había|tiene|tienen|tenía|con|de|para|los|las|unos|unas|casi|contiene|lleva|hicimos|vendimos|fabricamos|que|sus|nuestros"
            + @"|nuestras|en|por)\s+",
        Numbers =
            @"(?:\bn\.?[º°o]\.?|\bnúmero|\bnúm\.?|\bimpreso|\bformulario|\bemisora|\bartículo|\bserie|\bejemplar"
            + @"|\bedición(?: de)?|\bcaja|\bautobús|\blínea|\btren|\btranvía|\bvuelo"
            + @"|\bruta|\bcarretera"
            + @"|\bautopista|\bhabitación|\bsala|\bapartamento|\bapto\.?|\bpiso|\bcasa|\bapartado|\bplaza|\bandén|\bcanal|\bref\.?|\bopus|\btalla"
            + @"|\blote|\bgrano|\bnorma)"
            + @"\s*(?:n\.?[º°o]\.?|número|núm\.?)?\s*|\b(?:calle|avenida|avda\.?|plaza|paseo"
            + @"|camino)\s+(?:[\p{L}.]+\s+){0,3}[\p{L}.]+,?\s+(?:n\.?º\s*)?|(?-i:\b[ANP]-?)",
        AfterNumbers = @"\s?/\s?\d+|,\s*\d{5}\b",
        Places =
            @"\b(?:habitación|sala|apartamento|apto\.?|piso|casa|planta|despacho|oficina)\s+(?:n\.?[º°o]\.?)?\s*"
            + @"|\b(?:calle|avenida|avda\.?|plaza|paseo|camino)\s+(?:(?:de|del|la|las|los|el)\s+)*(?-i:\p{Lu}\p{L}+)"
            + @"(?:\s+(?:de|del|la|las|los|el|(?-i:\p{Lu}\p{L}+))){0,3},?\s+(?:n\.?[º°o])?\s*"
            + @"|\b(?:viv(?:o|e|es|en|imos|ía|ían|íamos|ió|ieron|ido)|resid\w+|habit(?:a|an|amos|aba|aban)|creci\w+)\b[^.!?;:,\d]{0,40}\sen\s+(?:el\s+)?"
            + @"(?:número|n\.?[º°o])?\s*",
        Counts =
            @"\b(?:más de|menos de|casi|cerca de|unos|unas|hasta|al menos|en total|hay|había|cuesta|pesa|vale|fabricamos|hicimos|vendimos|hecho"
            + @"|vendido|sitio para"
            + @"|los|estos|estas)\s+|\b(?:habitantes|tirada|visitantes|socios):\s*",
        AfterCounts = @"\s+(?:de (?:ellos|ellas|estos|estas|los|las|nuestr)|(?:se|fueron|están|han sido) \p{L}+)",
        Phones = @"\b(?:tel\.?|tfno\.?|teléfono|llam\p{L}*(?: al)?|fax|móvil)\s*[:.]?\s*[\d()+ /-]*",
        Instruments = @"\b(?:balanza|contador|aguja|plato|pesa|cursor|esfera|dial|regla|báscula|medidor|romana|indicador)\b|se vean",
        Showing = @"\b(?:debe|deben|tiene que|marca\w*|hasta|se abre|gire|suba|empuje|corra|ponga|justos|clic|quedarse)\b",
        Spans = @"\b(?:desde|después de|antes de)\s+(?:el año )?|(?:^|[.!?؟\n]\s*)hasta\s+|\bde \d{4} a\s+",
        AfterSpans = @"\s+a\s+\d{4}\b",
        Telling =
            @"\b(?:reloj|agujas?|pide|quiere|debe|deben|tienes? que|pruebe|prueba|hay que|cede|salta|cae|exacto|en punto|justo|cofre|caja fuerte"
            + @"|cajón|trampilla"
            + @"|balanza|ponga|marque|adelante|suelta|secreto|ni uno más|escrit[oa]s?|grabad[oa]s?|tallad[oa]s?)\b"
            + @"|^\s*¿?(?:es|son)\b|:\s*$",
        Setting =
            @"\b(?:pon(?!en?\b)\w*|se ponen?|gir\w*|marc(?:a|ar|que|as)|introdu\w*|tecle\w*"
            + @"|códigos?|combinación|candado|cerradura|ruedas?|anillos?|dial\w*|discos?"
            + @"|cifras?|dígitos?"
            + @"|abre\w*|abrir|respuesta|solución|el número (?:es|que)|coloc\w*|ajust\w*|escrib\w*|clave)\b",
        Never = @"\b(?:pon\w*|gira\w*|ajusta\w*|marca\w*|coloca\w*)\s+(?:en|a)\s+",
        BeforeDates = @"\b(?:el|del|al)\s+",
        Sold = @"\s+(?:pedidos|reservas|cajas|ejemplares|clientes|visitantes|personas|socios|lectores|reseñas|mensajes|habitantes)\b",
    };

    public static CommonNumbers Japanese { get; } = new()
    {
        Years = "西暦|昭和|大正|明治|平成|令和|©\\s*|(?:春|夏|秋|冬)の?",
        AfterYears = "\\s?[~〜～–—-]\\s?\\d{2,4}|に?(?:建て|建築|創業|製作|作られ|生まれ|設立)|年|から\\d{4}",
        Units = "ボルト|ワット|アンペア|ヘルツ|デシベル|ニュートン|パスカル|ミクロン|マイクロ|ルクス|ルーメン|バイト|キロバイト|ビット|ピクセル|カロリー|ジュール|オーム|回転|馬力|トン|番手|カラット|坪|拍",
        Things = "匹|羽|枚|人|頭|台|歩|回|件|通|杯|席|部|粒|語|文字|点|名|足|着|軒|棟|株|体|組|箱|袋|巻|話|曲|票|番地|号室|丁目|番線|ドット|シート|セット限定|個",
        Numbers = "(?:品番|型番|製造番号|部屋番号|商品番号|整理番号|通し番号|シリアル(?:番号)?|番号札|国道|県道|バス|路線|箱番号|私書箱|規格|No\\.?|№|部屋|第)\\s*",
        AfterNumbers = "\\s?/\\s?\\d+|番地|号室|丁目|号線|番線|番のバス|番バス|系統",
        Places = "部屋\\s*",
        AfterPlaces = "\\s?(?:号室|番地|丁目|階(?!段)|番?[にへ](?:住[まみむんめ]|暮らし|暮らす|引っ越|移り住))",
        Counts = "(?:約|およそ|合計|全部で|全|限定|計|残り)",
        AfterCounts = "(?:以上|余り|ほど|個?以下|近く)(?:が|を|の|も)?(?:売れ|作|あ)|(?:を|も)?(?:作り|売れ)",
        Phones = "(?:電話(?:番号)?|TEL|℡|ファックス|FAX)[は:：]?\\s*[\\d()+ /-]*",
        Instruments = @"秤|はかり|目盛|針|皿|おもり|メーター|つまみ|計|天秤",
        Showing = @"指|合わせ|開|回|のせ|載せ|まで|止め|動か|出る|鳴",
        AfterSpans = @"\s?年(?:から|まで|以来|以降|以前)",
        Telling =
            @"時計|針|目盛|ぴったり|ちょうど|引き出し|答|桁|輪|文字盤|秘密|外れ|押|入力|書いて|書かれ|刻ま|彫|[:：→]\s*$",
        Setting = "合わせ|合せ|合う|回し|回す|回せ|揃え|入れ|入力|(?<!での)番号は|暗証|錠|ダイヤル|リング|数字|答え|開く|開け|開き|設定|セットし|押し|押す",
        Sold = "箱|冊|セット|件|名様|人",
    };

    public static CommonNumbers Arabic { get; } = new()
    {
        Years =
            @"(?:عام|سنة|شتاء|صيف|ربيع|خريف|موسم|العام|السنة|عاصفة)\s+|©\s*|بين \d{4} و\s?|(?:بني|بنيت|تأسس|تأسست|ولد|ولدت|صنع|صنعت)\s+(?:\p{L}+\s+)?في\s+",
        MaybeYears = @"(?:في|منذ|حتى|بين|حوالي|قبل|بعد|نحو)\s+",
        AfterYears = @"\s?[–—-]\s?\d{2,4}\b|\s*(?:م|هـ|ميلادي|هجري)(?!\p{L})|\s+و\s?\d{4}",
        Units =
            "فولت|واط|وات|كيلوواط|أمبير|هرتز|كيلوهرتز|ديسيبل|نيوتن|باسكال|ميكرون|لومن|لوكس|بايت|كيلوبايت|ميغابايت|بكسل|سعرة|جول|أوم|دورة|حصان|طن"
            + "|أطنان|رطل|فدان|قيراط|عقدة|نبضة",
        Things = "كلمة|كلمات|حرفا|حرفًا|نقطة|ورقة|نحلة|قطعة|نسخة|صوتا|مقعدا|مرة|سطرا|شخصا|رجلا|كتابا",
        Counted = @"\s+(?!عجل|حلق|قرص|أرقام|على|في|من)\p{L}{2,}",
        BeforeCounted =
            @"(?:هناك|يوجد|توجد|فيه|فيها|به|بها|له|لها|من|نحو|حوالي|صنعنا|بعنا|لدينا|عددها|كان|على|عنده|معه|تتسع ل|يتسع ل)\s*",
        Numbers =
            @"(?:رقم|بند|نسخة|طبعة|صندوق(?: بريد)?|حافلة|الحافلة|خط|قطار|رحلة|طريق|الطريق|غرفة|الغرفة|شقة|بيت|منزل|شارع|ص\.ب\.?|مقعد|رصيف|مقاس|قياس"
            + @"|سلسلة|تسلسلي|القطعة|قطعة)"
            + @"(?: رقم| بريد)?\s*|شارع(?: \p{L}+){1,3}،?\s*",
        AfterNumbers = @"\s?/\s?\d+",
        Places =
            @"(?<!\p{L})[وفبل]?(?:ال|ل)?(?:غرفة|شقة|بيت|منزل|طابق|جناح|مكتب)\s+(?:رقم\s+)?|(?<!\p{L})[وفبل]?شارع(?: \p{L}+){1,2}،?\s+(?:رقم\s+)?"
            + @"|(?<!\p{L})(?:[أنيت]سكن|[أنيت]عيش|[أنيت]قيم|[أنيت]قطن|سكن|عاش|أقام)\p{L}*\s[^.!؟؛،:\d٠-٩]{0,40}(?<!\p{L})في\s+(?:رقم\s+)?",
        Counts = @"(?:أكثر من|أقل من|نحو|حوالي|قرابة|زهاء|صنعنا|بعنا|هناك|يوجد|توجد|سعره|وزنه|يتسع|كل)\s+(?:من )?",
        AfterCounts = @"\s+(?:منها|منهم|منه|من هذه|من هؤلاء)",
        Phones = @"(?:هاتف|الهاتف|اتصل(?: بنا)?(?: على)?|جوال|فاكس)[:：]?\s*[\d٠-٩()+ /-]*",
        Instruments = @"ميزان|عداد|عدّاد|مؤشر|كفة|كفّة|الثقل|قرص|مسطرة|حتى يظهر",
        Showing = @"يجب|ينبغي|يشير|حتى|ينفتح|أدر|ضع|ارفع|حرك|حرّك|ادفع|يظهر|يقف|نقرة",
        Spans = @"(?:منذ|بعد|قبل)\s+(?:عام |سنة )?|(?:^|[.!?؟\n]\s*)حتى\s+|من \d{4} إلى\s+",
        AfterSpans = @"\s+إلى\s+\d{4}",
        Telling =
            @"ساعة الحائط|عقرب|عقارب|يطلب|تطلب|تريد|يريد|جر[ّ]?ب|يجب|حتى يبلغ|خزنة|الدرج|قفل|السر|اجعل|ابدأ|بالضبط|تماما|ينفتح|تنفتح|ينفرج"
            + @"|مكتوب|منقوش|محفور|:\s*$",
        Setting =
            "اضبط|اضبطي|أدر|ادر|أدخل|ادخل|ضع|ضعي|اكتب|الرمز|رمز|القفل|قفل|العجل|عجل|حلقة|حلقات|الحلق|قرص|الأقراص|الرقم هو|الأرقام|أرقام|يفتح|تفتح"
            + "|افتح|الجواب|الحل(?!\\p{L})|(?<!\\p{L})[وف]?لف(?!\\p{L})",
        Sold = @"\s+(?:علب|علبة|صندوقا|صندوقًا|صندوقاً|نسخة|طلبا|طلبًا|زبونا|زائرا|شخصا)(?!\p{L})",
    };

    /// <summary>Before a number of four figures: surely a year.</summary>
    public string Years { get; init; } = "";

    /// <summary>Before a number of four figures: a year where nothing is set.</summary>
    public string MaybeYears { get; init; } = "";

    /// <summary>Behind a number of four figures: a year where nothing is set.</summary>
    public string AfterYears { get; init; } = "";

    /// <summary>Units in words.</summary>
    public string Units { get; init; } = "";

    /// <summary>What is counted, where nothing is set.</summary>
    public string Things { get; init; } = "";

    /// <summary>What any counted noun looks like.</summary>
    public string Counted { get; init; } = "";

    /// <summary>What stands before the number of a counted noun.</summary>
    public string BeforeCounted { get; init; } = "";

    /// <summary>What stands before the number of one thing of many.</summary>
    public string Numbers { get; init; } = "";

    /// <summary>What stands behind such a number.</summary>
    public string AfterNumbers { get; init; } = "";

    /// <summary>Before the number of a room, a floor, a flat or a house, or of where somebody lives, whatever else the sentence speaks of.</summary>
    public string Places { get; init; } = "";

    /// <summary>What stands behind such a number.</summary>
    public string AfterPlaces { get; init; } = "";

    /// <summary>What stands before a number of things that aren't named.</summary>
    public string Counts { get; init; } = "";

    /// <summary>What stands behind such a number.</summary>
    public string AfterCounts { get; init; } = "";

    /// <summary>What stands before telephone numbers.</summary>
    public string Phones { get; init; } = "";

    /// <summary>
    /// What speaks of something that is opened or set, besides <see cref="Setting"/>. A number without any of these in its sentence may be one of a thousand
    /// others, and is told as a doubt.
    /// </summary>
    public string Telling { get; init; } = "";

    /// <summary>What a sentence has that speaks of setting a lock.</summary>
    public string Setting { get; init; } = "";

    /// <summary>Before a year from which or up to which something was so, whatever else the sentence speaks of.</summary>
    public string Spans { get; init; } = "";

    /// <summary>Behind such a year.</summary>
    public string AfterSpans { get; init; } = "";

    /// <summary>What shows a measure, as a lock may: a scale, a counter.</summary>
    public string Instruments { get; init; } = "";

    /// <summary>What says that it has to show one.</summary>
    public string Showing { get; init; } = "";

    /// <summary>What stands before a number that is set, whatever else it looks like.</summary>
    public string Never { get; init; } = "";

    /// <summary>Nouns that a shop or a club counts, behind the number: no code, where nothing is set.</summary>
    public string Sold { get; init; } = "";

    /// <summary>What stands before the day, month and year of a date.</summary>
    public string BeforeDates { get; init; } = "";

    /// <summary>What is known of a language; null for others.</summary>
    public static CommonNumbers? Of(string code) => code switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => null,
    };
}
