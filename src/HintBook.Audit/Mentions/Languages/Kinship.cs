using System.Collections.Immutable;

namespace HintBook.Audit.Mentions.Languages;

/// <summary>How the words of one family are known: "golden" and "gold", "controlled" and "control", "broken" and "break". From memory.</summary>
internal sealed record Kinship
{
    /// <summary>A language in which only equal words are kin.</summary>
    public static Kinship None { get; } = new();

    /// <summary>Endings, parted by spaces, as bare letters.</summary>
    public string Endings { get; init; } = "";

    /// <summary>Beginnings that a word may lose: <c>ge</c>.</summary>
    public string Beginnings { get; init; } = "";

    /// <summary>Words of one family that no ending tells: <c>break broke broken</c>.</summary>
    public ImmutableArray<string> Families { get; init; } = [];

    /// <summary>Whether "ae" may stand for "ä".</summary>
    public bool HasDots { get; init; }

    /// <summary>Whether a stressed vowel is two: "remiendo" of "remendar".</summary>
    public bool HasDiphthongs { get; init; }

    /// <summary>Whether a word's family is in its consonants.</summary>
    public bool HasRoots { get; init; }

    /// <summary>Of English.</summary>
    public static Kinship English { get; } = new()
    {
        Endings = "s es ed d ing er ers or en n y ly ish less ful ness ie ies like shaped coloured colored tipped",
        Beginnings = "un re",
        Families =
        [
            "break broke broken breakage", "tear tore torn", "burn burnt", "hide hid hidden", "steal stole stolen", "freeze froze frozen",
            "sink sank sunk sunken",
            "bend bent", "blind blinded", "bind bound", "write wrote written", "weave wove woven", "carve carving carven", "sew sewn sewing",
            "drive drove driven",
            "silver silvery", "wool woollen woolen", "lose lost loss", "leave left", "cut cutting", "split splitting", "sweep swept",
            "fly flew flown flight", "melt molten", "shrink shrunk shrunken", "swear swore sworn", "light lit lighting", "hang hung hanging",
            "spin spun spinning", "wind wound winding", "grind ground", "sing sang sung song", "stick stuck", "tooth teeth toothed", "foot feet footed",
            "knife knives", "gray grey", "sulfur sulphur", "mold mould", "plow plough", "tire tyre", "ax axe", "curb kerb", "disc disk",
            "jewel jewelry jewellery",
            "aluminum aluminium", "whiskey whisky", "pajama pyjama", "gauge gage", "theater theatre", "center centre", "fiber fibre", "caliper calliper",
            "keeper keep kept", "oil oily oiled", "rust rusty rusted", "storm stormy", "bronze bronzed", "brass brassy brazen", "iron ironed",
            "glass glazed glassy",
            "poison poisonous", "thief thieves", "leaf leaves", "wolf wolves", "shelf shelves", "eye eyed eyeless sightless", "blue bluish",
            "red reddish", "moon moonlit lunar", "sun sunny solar",
        ],
    };

    /// <summary>Of German.</summary>
    public static Kinship German { get; } = new()
    {
        HasDots = true,
        Endings = "e en em er es n s st t te ten ter tes tem ern erne ernen erner ig ige igen iger ich isch ische ischen lich los lose losen loser "
            + "chen lein ung heit et end ende",
        Beginnings = "ge zer ver be ab an auf aus ein",
        Families =
        [
            "brechen gebrochen gebrochene zerbrochen zerbrochene bruch bricht brach", "reißen gerissen gerissene zerrissen zerrissene riss",
            "schneiden geschnitten schnitt",
            "biegen gebogen bog", "verlieren verloren verlorene", "stehlen gestohlen stahl", "schließen geschlossen schloss", "binden gebunden",
            "schreiben geschrieben",
            "blind blinder blinden", "holz hölzern hölzerne hölzernen", "gold golden goldene goldenen", "silber silbern silberne",
            "glas gläsern gläserne", "eisen eisern eiserne",
            "blau bläuen gebläut bläulich", "rot rötlich gerötet", "sprechen gesprochen spricht", "brennen gebrannt verbrannt", "frieren gefroren",
            "schmelzen geschmolzen",
        ],
    };

    /// <summary>Of French.</summary>
    public static Kinship French { get; } = new()
    {
        Endings = "s x e es ee ees er ez ons ent ait aient ant ante ement ment ir it ie ies is u ue ues eur euse al aux ale el elle ette ettes et eux "
            + "euse age ure ance ien ienne ique",
        Beginnings = "re de",
        Families =
        [
            "rompre rompu rompue", "casser cassé cassée cassure", "briser brisé brisée", "brûler brûlé brûlée brûlure", "perdre perdu perdue perte",
            "fendre fendu fendue fente",
            "tordre tordu tordue", "teindre teint teinte", "peindre peint peinte", "or doré dorée", "argent argenté argentée", "œil yeux",
            "sans dépourvu", "aveugle aveugler",
            "coudre cousu", "écrire écrit écrite", "bleu bleue bleuté bleutée", "blanc blanche", "cacher caché cachée cachette", "vieux vieil vieille",
            "clé clef",
        ],
    };

    /// <summary>Of Spanish.</summary>
    public static Kinship Spanish { get; } = new()
    {
        HasDiphthongs = true,
        Endings = "s es a o as os e ito ita itos itas cito cita illo illa ado ada ados adas ido ida idos idas ar er ir an en aba aban ia ian io iendo "
            + "ando ero era eria al oso osa ino ina on ote ura adura ecido",
        Beginnings = "des re en",
        Families =
        [
            "romper roto rota rotura", "abrir abierto abierta", "cubrir cubierto cubierta", "escribir escrito escrita", "freír frito",
            "oro dorado dorada", "plata plateado plateada",
            "hueso óseo", "ciego ciega cegar", "viejo vieja vejez", "fuego fogoso", "torcer torcido torcida tuerto", "quemar quemado quemada quema",
            "perder perdido perdida pierde",
            "puerta portal", "cobre cobrizo", "nueve noveno", "fondo fondos",
        ],
    };

    /// <summary>Of Arabic.</summary>
    public static Kinship Arabic { get; } = new() { HasRoots = true };
}
