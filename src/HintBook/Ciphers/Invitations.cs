using System.Text.RegularExpressions;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers;

/// <summary>
/// What a clue invites a solver to do with what was read: words and signs that say so, in English, German, French, Spanish and Japanese (chosen by hand, no
/// source).
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

    /// <summary>Whether it is one word of a script that is read from the right: its figures may be set under its letters.</summary>
    public static bool IsFromTheRight(string start) =>
        start.Trim() is { Length: > 1 } word && word.All(letter => letter is >= '\u0590' and <= '\u06FF');

    /// <summary>The text with elided words parted from the next, <c>l' hiver</c>; null if it has none.</summary>
    public static string? WithElisionsApart(string text) => Elided().IsMatch(text) ? Elided().Replace(text, "${article} ") : null;

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
        + @"|(?:turn|turned|turns|turning|other way|wrong way)(?: \w+){0,3} (?:a?round|about|over)|from the bottom|in retreat|retrace\w*"
        + @"|rückwärts|spiegel\w*|verkehrt|umgekehrt|von hinten|von rechts|miroirs?|à l['’]envers|à rebours|de droite à gauche|espejos?|al revés)\b|逆|鏡|さかさ",
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
        + @"|del (?:más|menos) \w+ al|de menor a mayor|de mayor a menor|en orden|ordena\w*)\b|小さい順|大きい順",
        Options)]
    private static partial Regex Sorting();

    // Where several are named, the first is where one begins: “from the smallest to the greatest”.
    private static int First(Regex words, string clue) => words.Match(clue) is { Success: true, Index: var at } ? at : int.MaxValue;

    [GeneratedRegex(
        @"\b(?:ascending|rising|upwards?|smallest|least|lowest|shortest|youngest|lightest|fewest|(?<!lined? )up the \w+"
        + @"|cheapest|aufsteigend|kleinsten?|billigsten?|croissante?|plus petit|du moins|menor)\b|小さい順",
        Options)]
    private static partial Regex Up();

    [GeneratedRegex(
        @"\b(?:descending|falling|downwards?|largest|biggest|greatest|highest|tallest|longest|eldest|oldest|heaviest|most"
        + @"|dearest|absteigend|größten?|teuersten?|décroissante?|plus grand|du plus|mayor)\b|大きい順",
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
        + @"|summe|zusammen|insgesamt|addier\w*|somme|additionn\w*|en tout|suma|sumar?|en total)\b|合計|足す|足して",
        Options)]
    private static partial Regex Adding();

    [GeneratedRegex(
        @"\b(?:phone\w*|telephone\w*|ring|rings|call|calls|dial|dials|dialled|keypad|mobile|text|texts|texted"
        + @"|telefon\w*|téléphon\w*|teléfono|llama|appelle\w*)\b|[☎☏📞📱]|電話",
        Options)]
    private static partial Regex Telephoning();

    [GeneratedRegex(
        @"\b(?:cards?|ace|aces|jack|joker|spades|hearts|diamonds|clubs|trumps?|Karten?|Ass|Herz|Pik|Kreuz|Karo|cartes?|as de|cartas?|naipes?)\b"
        + @"|[♠♥♦♣♤♡♢♧]|\uD83C[\uDCA0-\uDCDF]",
        Options)]
    private static partial Regex Playing();

    [GeneratedRegex(
        @"\b(?:railways?|timetable|station(?:master)?|military|24|twenty-four|Bahn|Bahnhof|Fahrplan"
        + @"|gare|horaires?|estación|horario|militärisch)\b|駅|時刻表|24時", Options)]
    private static partial Regex Railway();

    [GeneratedRegex(@"\b(?:day|Tag|jour|día)\b|日", Options)]
    private static partial Regex DayWanted();

    [GeneratedRegex(@"\b(?:month|Monat|mois|mes)\b|月と日|日と月", Options)]
    private static partial Regex MonthWanted();

    [GeneratedRegex(@"\b(?<article>[ldcjmnst]|qu|jusqu|lorsqu|puisqu)['’](?=\p{L}{2})", Options)]
    private static partial Regex Elided();

    [GeneratedRegex(@"\b(?:bees?|bee-?keep\w*|queens?|hives?|apiar\w*|Bienen?|Imker\w*|abeilles?|ruches?|abejas?)\b|🐝|蜂", Options)]
    private static partial Regex Beekeeping();

    [GeneratedRegex(@"\b(?:count\w*|how many|zähl\w*|wie viele?|compte\w*|combien|cuenta\w*|cuánt[oa]s)\b|数え", Options)]
    private static partial Regex Counting();

    [GeneratedRegex(@"\b(?:first|erste[nrs]?|premi(?:er|ère)|primer[oa]?)\b", Options)]
    private static partial Regex First();

    [GeneratedRegex(@"\b(?:last|letzte[nrs]?|derni(?:er|ère)|últim[oa])\b", Options)]
    private static partial Regex Last();
}
