using System.Text.RegularExpressions;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers;

/// <summary>
/// What a clue invites a solver to do with what was read: words and signs that say so, in English, German, French, Spanish, Arabic and Japanese (chosen by
/// hand, no source).
/// </summary>
internal static partial class Invitations
{
    /// <summary>Whether it says to read the other way round: an arrow to the left, “backwards”, “turn round”, a mirror.</summary>
    public static bool ToReverse(string clue) => Reversing().IsMatch(clue);

    /// <summary>Whether it says to put in order: “in order”, “from the smallest”, “rising”.</summary>
    public static bool ToSort(string clue) => Sorting().IsMatch(clue);

    /// <summary>Whether it says to put in order with the smallest first, or doesn't say which comes first.</summary>
    public static bool ToSortUp(string clue) => ToSort(clue) && First(Up(), clue) <= First(Down(), clue);

    /// <summary>Whether it says to put in order with the greatest first, or doesn't say which comes first.</summary>
    public static bool ToSortDown(string clue) => ToSort(clue) && First(Down(), clue) <= First(Up(), clue);

    /// <summary>
    /// Whether the lengths of its words come to mind: words on one line. Where figures stand among them, or somebody's title and name, they are a message and
    /// not a row of words.
    /// </summary>
    public static bool ToMeasureWords(string clue) =>
        TextPieces.Lines(clue).Count() == 1 && TextPieces.Words(clue).Any(word => word.End - word.Start > 2)
        && !clue.Any(char.IsAsciiDigit) && !Naming().IsMatch(clue);

    /// <summary>Whether a number word stands in it that isn't part of a time, as “twenty” is of “twenty past four”.</summary>
    public static bool HasNumbersBesideTimes(string clue) =>
        HasAnyOutside(NumberWords.In(clue).Select(word => word.Read), ClockTimes.In(clue).Select(time => time.Written));

    /// <summary>Whether figures stand in it that aren't those of a date with its month in letters.</summary>
    public static bool HasFiguresBesideDates(string clue) =>
        HasAnyOutside(TextPieces.Figures(clue), Dates.In(clue).Select(date => date.Written).Where(written => written.Any(char.IsLetter)));

    /// <summary>Whether it says to add up.</summary>
    public static bool ToAdd(string clue) => Adding().IsMatch(clue);

    /// <summary>Whether it speaks of a telephone.</summary>
    public static bool ToTelephone(string clue) => Telephoning().IsMatch(clue);

    /// <summary>Whether it speaks of bees or queens.</summary>
    public static bool ToBees(string clue) => Beekeeping().IsMatch(clue);

    /// <summary>Whether it speaks of counting.</summary>
    public static bool ToCount(string clue) => Counting().IsMatch(clue);

    /// <summary>Whether it speaks of the first, or of the last, of several; null for neither or both.</summary>
    public static bool? ToTheLast(string clue) => (First().IsMatch(clue), Last().IsMatch(clue)) switch
    {
        (true, false) => false,
        (false, true) => true,
        _ => null,
    };

    /// <summary>Whether it speaks of playing cards.</summary>
    public static bool ToCards(string clue) => Playing().IsMatch(clue);

    /// <summary>Whether it says that hours are counted to 24: as railways do.</summary>
    public static bool ToRailwayTime(string clue) => Railway().IsMatch(clue);

    /// <summary>Whether it says which parts of a date are wanted: “day and month”.</summary>
    public static bool ToPartsOfDate(string clue) => DayWanted().IsMatch(clue) && MonthWanted().IsMatch(clue);

    /// <summary>Whether a date in it may be read month first: as in English, where the clue doesn't say otherwise.</summary>
    public static bool MayPutMonthFirst(string clue) => Dates.In(clue).Any(date => Dates.MayHaveMonthFirst(date.Written)) && !ToPartsOfDate(clue);

    /// <summary>
    /// Whether what is read is one word of a script that is read from the right, so that its figures may be set under its letters, and the clue doesn't say
    /// which letter is the first.
    /// </summary>
    public static bool IsFromTheRight(string start, string clue) =>
        !clue.Contains("الأول", StringComparison.Ordinal) && start.Trim() is { Length: > 1 } word && word.All(letter => letter is >= '\u0590' and <= '\u06FF');

    /// <summary>The text with elided words parted from the next, <c>l' hiver</c>; null if it has none.</summary>
    public static string? WithElisionsApart(string text) => Elided().IsMatch(text) ? Elided().Replace(text, "${article} ") : null;

    /// <summary>Whether it says what number A has: “with A as nought”.</summary>
    public static bool ToBeginWithA(string clue) => CountedFromA().IsMatch(clue);

    /// <summary>Whether it speaks of the alphabet, or says what number A has.</summary>
    public static bool ToAlphabet(string clue) => Alphabetical().IsMatch(clue) || ToBeginWithA(clue);

    /// <summary>Whether it speaks of a resistor, so that somebody who knows them reads what it is worth.</summary>
    public static bool ToResistors(string clue) => Resisting().IsMatch(clue);

    /// <summary>Whether it says in which order the Arabic letters are counted: the abjad or that of the schools.</summary>
    public static bool ToArabicOrder(string clue) => ArabicOrder().IsMatch(clue);

    /// <summary>Whether it speaks of queens and doesn't say of which years: no figure stands in it.</summary>
    public static bool ToQueensOfAnyYear(string clue) => ToBees(clue) && !clue.Any(char.IsDigit);

    /// <summary>Whether a hyphen joins two words in it.</summary>
    public static bool HasHyphens(string clue) => Figures.Hyphens().IsMatch(clue);

    // Whether one of the pieces is written in none of the wholes.
    private static bool HasAnyOutside(IEnumerable<string> pieces, IEnumerable<string> wholes)
    {
        var written = wholes.ToArray();
        return pieces.Any(piece => !Array.Exists(written, whole => whole.Contains(piece, StringComparison.Ordinal)));
    }

    private const string Extreme =
        "(?:cheapest|dearest|smallest|largest|biggest|greatest|longest|fewest|lightest|heaviest|lowest|highest|shortest|tallest|youngest|eldest|oldest)";

    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    [GeneratedRegex(
        @"[←⇐⟵⬅↩↶⤺◄◀]|<[-–—=]|\b(?:backwards?|revers\w*|mirror\w*|upside|back to front|right to left|from the right|from the end|last to first"
        + @"|(?:begin|start|read)\w*(?: \w+){0,2} (?:at|from) the (?:end|tail|back)"
        + @"|(?:turn|turned|turns|turning|other way|wrong way)(?: \w+){0,3} (?:a?round|about|over)|from the bottom|in retreat|retrace\w*"
        + @"|rückwärts|spiegel\w*|verkehrt|umgekehrt|von hinten|von rechts|vom Ende|hinten an|am Ende an\w*"
        + @"|miroirs?|à l['’]envers|à rebours|à reculons|de droite à gauche|par la fin|depuis la fin"
        + @"|espejos?|al revés|por el final|desde el final|de atrás|hacia atrás|de derecha a izquierda)\b|逆|鏡|さかさ|後ろから|終わりから|おわりから|右から"
        + "|من الآخر|من النهاية|من الخلف|بالعكس|معكوس|مرآة|من اليمين إلى اليسار",
        Options)]
    private static partial Regex Reversing();

    [GeneratedRegex(
        @"\b(?:in(?:to)? (?:good |the right |proper |due |rising |falling |their |its |your )?order(?! of)|in (?:a )?rank"
        + "|order of (?:size|age|height|weight|rank|length|value|price|worth|number)|ordered|sort\\w*|ascending|descending|rising"
        // “In the smallest hand” puts nothing in order; “from the smallest” does.
        + "|(?:from|with|at|by|after|before|to) (?:the |their |your )?" + Extreme + "|" + Extreme
        + @",?(?: \w+)? (?:first|last|to|before|leads?|comes?|goes|begins?|ends?)|by (?:size|age|height|rank)|line up|lined up"
        + "|der (?:Größe|Reihe) nach|sortier\\w*|aufsteigend|absteigend|kleinsten?|größten?|par ordre|en ordre|croissante?|décroissante?|plus petit|plus grand"
        + @"|(?:zu |an|ge)ordne[nt]|nach (?:dem|der) (?:Preis|Alter|Gewicht|Größe|Höhe|Länge)|rang(?:er|ez|és|ées)|du (?:plus|moins) \w+ au (?:plus|moins)"
        + @"|del (?:más|menos) \w+ al|de menor a mayor|de mayor a menor|en orden|ordena\w*)\b|(?:小さ|大き|若)い順|順に並べ|(?:小さ|大き|少な|多|若)い\w{0,3}から"
        + "|بالترتيب|رتّ?ب|تصاعدي|تنازلي|من الأصغر|من الأكبر",
        Options)]
    private static partial Regex Sorting();

    // Where several are named, the first is where one begins: “from the smallest to the greatest”.
    private static int First(Regex words, string clue) => words.Match(clue) is { Success: true, Index: var at } ? at : int.MaxValue;

    [GeneratedRegex(
        @"\b(?:ascending|rising|upwards?|smallest|least|lowest|shortest|youngest|lightest|fewest|(?<!lined? )up the \w+"
        + @"|cheapest|aufsteigend|kleinsten?|billigsten?|croissante?|plus petit|du moins|menor)\b|(?:小さ|若)い順|(?:小さ|少な|若)い\w{0,3}から|تصاعدي|الأصغر",
        Options)]
    private static partial Regex Up();

    [GeneratedRegex(
        @"\b(?:descending|falling|downwards?|largest|biggest|greatest|highest|tallest|longest|eldest|oldest|heaviest|most"
        + @"|dearest|absteigend|größten?|teuersten?|décroissante?|plus grand|du plus|mayor)\b|大きい順|(?:大き|多)い\w{0,3}から|تنازلي|الأكبر",
        Options)]
    private static partial Regex Down();

    // A title and a name, or a first name and a family name within a sentence.
    [GeneratedRegex(
        @"\b(?:Captain|Miss|Mrs|Mr|Ms|Lady|Lord|Sir|Dame|Doctor|Dr|Professor|Uncle|Aunt|Queen|King|Prince|Princess|Saint|St|Sister|Brother|Father|Mother)"
        + @"\.? \p{Lu}"
        + @"|(?<=\p{Ll},? )\p{Lu}\p{Ll}+ \p{Lu}\p{Ll}+",
        RegexOptions.CultureInvariant)]
    private static partial Regex Naming();

    [GeneratedRegex(
        @"\+|\b(?:sum|sums|add|adds|added|plus|total|altogether|all told|together|in all"
        + @"|summe|zusammen|insgesamt|addier\w*|somme|additionn\w*|en tout|suma|sumar?|en total)\b|合計|足す|足して|اجمع|مجموع|الجمع|معًا|معا",
        Options)]
    private static partial Regex Adding();

    [GeneratedRegex(
        @"\b(?:phone\w*|telephone\w*|ring|rings|call|calls|dial|dials|dialled|keypad|mobile|text|texts|texted"
        + @"|telefon\w*|téléphon\w*|teléfono|llama|appelle\w*)\b|[☎☏📞📱]|電話|هاتف|تلفون|اتصل",
        Options)]
    private static partial Regex Telephoning();

    [GeneratedRegex(
        @"\b(?:cards?|ace|aces|jack|joker|spades|hearts|diamonds|clubs|trumps?|Karten?|Ass|Herz|Pik|Kreuz|Karo|cartes?|as de|cartas?|naipes?)\b|トランプ|ورق اللعب"
        + @"|[♠♥♦♣♤♡♢♧]|\uD83C[\uDCA0-\uDCDF]",
        Options)]
    private static partial Regex Playing();

    [GeneratedRegex(
        @"\b(?:railways?|timetable|station(?:master)?|military|24|twenty-four|Bahn|Bahnhof|Fahrplan"
        + @"|gare|horaires?|estación|horario|militärisch)\b|駅|時刻表|24時|قطار|محطة", Options)]
    private static partial Regex Railway();

    [GeneratedRegex(@"\b(?:day|Tag|jour|día)\b|日|يوم", Options)]
    private static partial Regex DayWanted();

    [GeneratedRegex(@"\b(?:month|Monat|mois|mes)\b|月と日|日と月|شهر", Options)]
    private static partial Regex MonthWanted();

    [GeneratedRegex(@"\b(?<article>[ldcjmnst]|qu|jusqu|lorsqu|puisqu)['’](?=\p{L}{2})", Options)]
    private static partial Regex Elided();

    [GeneratedRegex(@"\b(?:bees?|bee-?keep\w*|queens?|hives?|apiar\w*|Bienen?|Imker\w*|abeilles?|ruches?|abejas?)\b|🐝|蜂|نحل|ملكات", Options)]
    private static partial Regex Beekeeping();

    [GeneratedRegex(@"\b(?:count\w*|how many|zähl\w*|wie viele?|compte\w*|combien|cuenta\w*|cuánt[oa]s)\b|数え|いくつ|عُدّ?|احسب|كم ", Options)]
    private static partial Regex Counting();

    [GeneratedRegex(
        @"\bA (?:as|is|be|for|stands for|counts as|als|ist|gleich|zählt|vaut|est|vale|es)"
        + @" (?:el |la |le |la |die |the )?(?:nought|naught|zero|null|nothing|zéro|cero|one|eins|un|uno|[01])\b"
        + @"|\bA ?= ?[01]\b",
        RegexOptions.CultureInvariant)]
    private static partial Regex CountedFromA();

    [GeneratedRegex(@"\b(?:alphabet\w*|abecedario|alfabeto|ABC)\b|五十音|いろは|[أا]بجد|هجا", Options)]
    private static partial Regex Alphabetical();

    [GeneratedRegex(@"\b(?:resist(?:or|ors|encias?|ances?)|\w*widerst[aä]nde?\w*|résistances?|ohms?)\b|抵抗|مقاومة", Options)]
    private static partial Regex Resisting();

    [GeneratedRegex("جمّ?ل|[أا]بجد|هجا|المدرس")]
    private static partial Regex ArabicOrder();

    [GeneratedRegex(@"\b(?:first|erste[nrs]?|premi(?:er|ère)|primer[oa]?)\b" + NotOfPart + "|最初|أول ", Options)]
    private static partial Regex First();

    [GeneratedRegex(@"\b(?:last|letzte[nrs]?|derni(?:er|ère)|últim[oa])\b" + NotOfPart + "|最後|آخر ", Options)]
    private static partial Regex Last();

    // “The last figure of each” is part of a number and not one of several.
    private const string NotOfPart = @"(?!\s+(?:figure|digit|letter|wheel|Ziffer|Stelle|Buchstabe|chiffre|lettre|cifra|letra))";
}
