namespace HintBook.Audit.Mentions.Languages;

/// <summary>What tells the number of a room, a house or a home from a code. From memory; nothing is shared with the check of the source.</summary>
internal sealed record PlacesIn
{
    private static readonly PlacesIn Nothing = new();

    private static readonly PlacesIn English = new()
    {
        Rooms = "room rooms floor flat flats apartment apartments apt suite house houses cottage studio",
        Between = "no nr",
        Number = "number",
        At = "at in as",
        Living = "live lives lived living dwell dwells dwelt reside resides resided residing lodge lodged lodging grew raised",
        Moving = "move moves moved moving",
        MovedTo = "to into in",
        StreetsBehind = "Row Street St Road Rd Lane Avenue Ave Terrace Gardens Crescent",
        HasNamesBeforeStreets = true,
        Setting =
            "set sets setting dial dials wheel wheels ring rings lock locks padlock open opens opened turn turns enter code digit digits answer slider scale",
    };

    private static readonly PlacesIn German = new()
    {
        Rooms = "zimmer raum wohnung haus hausnummer stockwerk etage apartment appartement",
        Between = "nr",
        Number = "nummer",
        At = "in auf der als",
        Living = "wohne wohnst wohnt wohnen wohnte wohnten gewohnt lebe lebst lebt leben lebte lebten aufgewachsen",
        Moving = "zog zogen ziehen zieht gezogen umgezogen",
        MovedTo = "in die",
        StreetEndings = ["straße", "strasse", "weg", "gasse", "platz", "allee", "ufer", "damm", "zeile"],
        Setting = "stell stelle stellen stellt dreh drehe drehen ring ringe rad räder schloss öffnet öffnen code ziffer ziffern lösung antwort zahl gib geben",
    };

    private static readonly PlacesIn French = new()
    {
        Rooms = "chambre salle appartement appt étage bureau maison logement studio",
        Between = "n no",
        Number = "numéro",
        At = "au comme",
        Living =
            "habite habites habitons habitez habitent habitait habitaient habité vit vis vivons vivez vivent vivait vivaient vécu loge logent logeons logeait "
            + "demeure demeurent demeurait demeurons grandi",
        Moving = "emménagé emménage emménagent emménageons déménagé",
        MovedTo = "au",
        StreetsBehind = "rue avenue boulevard allée chemin quai impasse",
        Setting = "réglez tournez composez mettez roue roues molette molettes anneau anneaux serrure cadenas ouvre code chiffre chiffres réponse nombre",
    };

    private static readonly PlacesIn Spanish = new()
    {
        Rooms = "habitación sala apartamento apto piso casa planta despacho oficina",
        Between = "n nº",
        Number = "número",
        At = "en el como",
        Living =
            "vivo vive vives viven vivimos vivía vivían vivíamos vivió vivieron vivido reside residen residía habita habitan habitamos creció crecimos crecí",
        Moving = "mudó mudaron mudamos mudado",
        MovedTo = "al",
        StreetsBefore = "calle avenida avda plaza paseo camino",
        InStreets = "de del la las los el",
        Setting = "pon ponga gire gira marque marca rueda ruedas anillo anillos candado cerradura abre código cifra cifras respuesta",
    };

    private static readonly PlacesIn Japanese = new()
    {
        RunsBefore = ["部屋"],
        RunsBehind = ["号室", "番地", "丁目", "階に", "階の", "階で", "に住", "番に住", "に暮ら", "番に暮ら", "に引っ越", "へ引っ越", "に移り住"],
    };

    private static readonly PlacesIn Arabic = new()
    {
        Rooms = "غرفة الغرفة بالغرفة شقة الشقة بالشقة بيت البيت بالبيت منزل المنزل بالمنزل طابق الطابق جناح الجناح مكتب المكتب",
        Between = "رقم",
        At = "في",
        Living = "أسكن نسكن يسكن تسكن يسكنون سكن سكنت سكنا سكنوا أعيش نعيش يعيش تعيش يعيشون عاش عاشت عشنا عاشوا نقيم يقيم تقيم نقطن يقطن تقطن",
        StreetsBefore = "شارع بشارع",
        Setting = "اضبط أدر أدخل ضع القفل قفل العجلات الأقراص يفتح تفتح ينفتح الرمز الجواب",
    };

    /// <summary>Words before the number of one room, floor, flat or house of many.</summary>
    public string Rooms { get; private init; } = "";

    /// <summary>Short words for "number" that may stand between.</summary>
    public string Between { get; private init; } = "";

    /// <summary>The word for "number": before a code as well.</summary>
    public string Number { get; private init; } = "";

    /// <summary>Words before the number of a house that is named by it alone.</summary>
    public string At { get; private init; } = "";

    /// <summary>Forms of verbs of living somewhere.</summary>
    public string Living { get; private init; } = "";

    /// <summary>Forms of verbs of moving house, which sliders do as well.</summary>
    public string Moving { get; private init; } = "";

    /// <summary>Words between these and the number.</summary>
    public string MovedTo { get; private init; } = "";

    /// <summary>What streets are called, before a name and the number.</summary>
    public string StreetsBefore { get; private init; } = "";

    /// <summary>Small words within the names of streets. Where there are none, two words are a name.</summary>
    public string InStreets { get; private init; } = "";

    /// <summary>What the names of streets end in, right before the number.</summary>
    public string[] StreetEndings { get; private init; } = [];

    /// <summary>What streets are called, behind the number.</summary>
    public string StreetsBehind { get; private init; } = "";

    /// <summary>Whether the name of the street stands between, with a capital.</summary>
    public bool HasNamesBeforeStreets { get; private init; }

    /// <summary>Letters right before a number, where no spaces part words.</summary>
    public string[] RunsBefore { get; private init; } = [];

    /// <summary>Letters right behind one.</summary>
    public string[] RunsBehind { get; private init; } = [];

    /// <summary>Words with which a number that is only called so is one that is set.</summary>
    public string Setting { get; private init; } = "";

    /// <summary>What is known of a language.</summary>
    public static PlacesIn Of(string code) => code switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => Nothing,
    };
}
