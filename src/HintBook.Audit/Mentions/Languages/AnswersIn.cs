namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Words with which an answer is given, letters of it are told, and wheels share a figure. Words are parted by spaces. From memory.
/// </summary>
/// <param name="Not">What denies the answers that are none.</param>
/// <param name="But">What leads from them to the right one: "not crow but raven".</param>
/// <param name="Instead">What sets one answer against another: "raven instead of crow".</param>
/// <param name="Is">What stands before an answer: "it's a raven".</param>
/// <param name="Surely">What may stand between: "of course".</param>
/// <param name="Setting">What is done with an answer, besides <see cref="AuditLanguage.Setting"/>.</param>
internal sealed record AnswersIn(string Not, string But, string Instead, string Is, string Surely, string Setting)
{
    /// <summary>"Letters", as they are counted: "of five letters".</summary>
    public string Letters { get; init; } = "";

    /// <summary>What says that letters stand in another order.</summary>
    public string Shuffled { get; init; } = "";

    /// <summary>Where letters are put beside a word.</summary>
    public string Beside { get; init; } = "";

    /// <summary>What leaves a part of a word out.</summary>
    public string Without { get; init; } = "";

    /// <summary>Two wheels that have the same figure.</summary>
    public string Both { get; init; } = "";

    /// <summary>What gives every one of several wheels the same figure.</summary>
    public string Each { get; init; } = "";

    /// <summary>What takes a number from another, wherever it stands beside them: "fifty-three are wanting to three thousand".</summary>
    public string Lacking { get; init; } = "";

    /// <summary>Those of <see cref="Instead"/> that may stand directly before the right answer: "lieber die Lärche".</summary>
    public string Rather { get; init; } = "";

    /// <summary>What stands between such a word and an answer that is none: "instead of".</summary>
    public string OfOne { get; init; } = "";

    /// <summary>Prepositions with an article in them, and articles that lost their vowel.</summary>
    public string WithArticle { get; init; } = "";

    /// <summary>What any form of a verb of writing has in it, where they are many; else empty.</summary>
    public string SettingStem { get; init; } = "";

    /// <summary>What means the wheels or figures that are left: "the other two".</summary>
    public string Others { get; init; } = "";

    private static AnswersIn English { get; } = new(
        "not isn’t isnt wasn’t wasnt no nor neither never",
        "but",
        "instead rather",
        "is it’s its was that’s thats be",
        "of course clearly obviously simply just",
        "tubes turn")
    {
        Letters = "letter letters lettered",
        Shuffled = "shuffle shuffled reshuffle reshuffled shuffling rearrange rearranged anagram jumbled jumble scrambled unscramble stirred mixed order "
            + "rearranging reordered",
        Beside = "front before behind after ahead either end beginning start back add adding put stick tail",
        Without = "without minus less drop lose leave",
        Both = "both",
        Each = "each apiece",
        Lacking = "short shy less fewer minus under below lacking lacks wanting missing off away subtract deduct take remove small low too",
        OfOne = "of than",
        Others = "other others remaining remain left",
    };

    private static AnswersIn German { get; } = new(
        "nicht kein keine keinen keiner weder nein",
        "sondern",
        "statt stattdessen anstelle lieber",
        "ist sind war es",
        "natürlich selbstverständlich einfach klar",
        "buchstaben drehen dreht stellen einstellen eintragen gesucht geben eingeben")
    {
        Letters = "buchstaben buchstabe",
        Shuffled = "durcheinandergeschüttelt geschüttelt durcheinander vertauscht umgestellt anagramm gemischt durchgeschüttelt schütteln schüttle reihenfolge "
            + "verdreht",
        Beside = "davor dahinter vor hinter vorne hinten vorn anfang ende voran hintan dazu",
        Without = "ohne minus weg",
        Both = "beide beiden",
        Each = "je jeweils jede jedes",
        Lacking = "weniger minus fehlen fehlt fehlten unter weg ab abziehen ziehen ziehe zieh abzüglich wenig abgezogen",
        Rather = "lieber",
        OfOne = "von des der",
        Others = "anderen übrigen bleiben",
    };

    private static AnswersIn French { get; } = new(
        "pas non ni point",
        "mais",
        "plutôt lieu",
        "est sont c’est était",
        "bien sûr évidemment simplement donc",
        "lettres composez mettez cases casiers tournez il")
    {
        Letters = "lettre lettres",
        Shuffled = "mélangez mélangé mélangées mélangée désordre anagramme remuez secouez secoué brassez retournez ordre",
        Beside = "devant derrière avant après début fin tête queue ajoutez",
        Without = "sans moins ôtez enlevez",
        Both = "toutes tous ensemble",
        Each = "chacune chacun chaque",
        Lacking = "moins manque manquent manquait ôtez ôter ôtes ôté retire retirez retirer retiré enlevez enlever soustrayez soustraire sous",
        Rather = "plutôt",
        OfOne = "de d du des",
        WithArticle = "du d",
        Others = "autres restent reste restantes",
    };

    private static AnswersIn Spanish { get; } = new(
        "no ni tampoco",
        "sino",
        "mejor lugar vez",
        "es son era",
        "claro evidentemente naturalmente simplemente pues",
        "ponlo ponla póngalo póngala póngalas márquelo márquela escríbalo escríbala escríbelo escríbela gírelo casillas letras")
    {
        Letters = "letra letras",
        Shuffled = "revueltas revuelto revuelta mezcla mezcladas mezclado desordenadas desordenado anagrama barajadas orden baraja",
        Beside = "delante detrás antes después principio final cabeza cola añada",
        Without = "sin menos quite",
        Both = "ambas ambos",
        Each = "cada",
        Lacking = "menos falta faltan faltaban quita quite quítele quítale quitar resta reste restan restar restas restamos descuente bajo",
        Rather = "mejor",
        OfOne = "de",
        Others = "otras otros restantes quedan",
    };

    private static AnswersIn Arabic { get; } = new(
        "ليس ليست لا وليس وليست",
        "بل",
        "بدل بدلا",
        "هو هي إنه إنها إنّه إنّها",
        "طبعا",
        "جواب جوابها جوابه أحرف الأحرف حلقات الحلقات الحلقة ضعها ضعه أدر أدرها لوح اللوح القفل")
    {
        Letters = "حرف أحرف حروف الأحرف الحروف",
        Shuffled = "مبعثرة مبعثر بعثر خلط اخلط مخلوطة ترتيب",
        Beside = "قبل قبلها قبله بعد بعدها بعده أول آخر أمام خلف",
        Without = "بلا بدون دون",
        Both = "كلاهما كلتاهما كلا كلتا كليهما كلتيهما الأخريان والأخريان الأخريين الأخيرتان والأخيرتان الأخيرتين الباقيتين الباقيتان الآخران والآخران",
        Each = "لكل منهما",
        Lacking = "إلا ناقص أقل اطرح ينقص تنقص ينقصها ينقصه احذف أنقص",
        OfOne = "من",
        SettingStem = "اكتب",
    };

    private static AnswersIn Japanese { get; } = new("", "", "", "", "", "") { Both = "", Lacking = "引 少 足 欠" };

    private static AnswersIn None { get; } = new("", "", "", "", "", "");

    /// <summary>Those of a language.</summary>
    public static AnswersIn Of(string language) => language switch
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
