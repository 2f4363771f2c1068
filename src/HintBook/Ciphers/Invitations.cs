using System.Text.RegularExpressions;

namespace HintBook.Ciphers;

/// <summary>What a clue invites a solver to do with what was read: words and signs that say so, in English (chosen by hand, no source).</summary>
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

    private const RegexOptions Options = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    [GeneratedRegex(
        @"[←⇐⟵⬅↩↶⤺◄◀]|<[-–—=]|\b(?:backwards?|revers\w*|mirror\w*|upside|back to front|right to left|from the right|from the end|last to first"
        + @"|(?:turn|turned|turns|turning|other way|wrong way)(?: \w+){0,3} (?:a?round|about|over)|from the bottom|in retreat|retrace\w*)\b",
        Options)]
    private static partial Regex Reversing();

    [GeneratedRegex(
        @"\b(?:in (?:good |the right |proper |due |rising |falling )?order|in (?:a )?rank|order of|ordered|sort\w*|ascending|descending|rising"
        + "|smallest|largest|biggest|greatest|longest|fewest|lightest|heaviest"
        + @"|lowest|highest|shortest|tallest|youngest|eldest|oldest|by (?:size|age|height|rank)|line up|lined up)\b",
        Options)]
    private static partial Regex Sorting();

    // Where several are named, the first is where one begins: “from the smallest to the greatest”.
    private static int First(Regex words, string clue) => words.Match(clue) is { Success: true, Index: var at } ? at : int.MaxValue;

    [GeneratedRegex(@"\b(?:ascending|rising|upwards?|smallest|least|lowest|shortest|youngest|lightest|fewest|up the \w+)\b", Options)]
    private static partial Regex Up();

    [GeneratedRegex(@"\b(?:descending|falling|downwards?|largest|biggest|greatest|highest|tallest|longest|eldest|oldest|heaviest|most)\b", Options)]
    private static partial Regex Down();

    // A title and a name, or a first name and a family name within a sentence.
    [GeneratedRegex(
        @"\b(?:Captain|Miss|Mrs|Mr|Ms|Lady|Lord|Sir|Dame|Doctor|Dr|Professor|Uncle|Aunt|Queen|King|Prince|Princess|Saint|St|Sister|Brother|Father|Mother)"
        + @"\.? \p{Lu}"
        + @"|(?<=\p{Ll},? )\p{Lu}\p{Ll}+ \p{Lu}\p{Ll}+",
        RegexOptions.CultureInvariant)]
    private static partial Regex Naming();

    [GeneratedRegex(@"\+|\b(?:sum|sums|add|adds|added|plus|total|altogether|all told|together|in all)\b", Options)]
    private static partial Regex Adding();

    [GeneratedRegex(@"\b(?:phone\w*|telephone\w*|ring|rings|call|calls|dial|dials|dialled|keypad|mobile|text|texts|texted)\b|[☎☏📞📱]", Options)]
    private static partial Regex Telephoning();

    [GeneratedRegex(@"\b(?:bees?|bee-?keep\w*|queens?|hives?|apiar\w*)\b|🐝", Options)]
    private static partial Regex Beekeeping();

    [GeneratedRegex(@"\b(?:count\w*|how many)\b", Options)]
    private static partial Regex Counting();

    [GeneratedRegex(@"\bfirst\b", Options)]
    private static partial Regex First();

    [GeneratedRegex(@"\blast\b", Options)]
    private static partial Regex Last();
}
