using System.Collections.Frozen;
using System.Text;

namespace HintBook.Audit;

/// <summary>
/// Letters without their accents. The program runs without cultures, and there the framework's own normal forms leave every
/// letter outside ASCII as it is: the letters are listed here instead.
/// </summary>
internal static class Accents
{
    // The small letters of Latin, Greek and Cyrillic that Unicode takes apart into a letter and marks (UnicodeData.txt, version
    // 14.0, decomposition mappings), each behind its bare letter; ø, ł, đ, ħ and ı, which it does not take apart but which
    // people write without their strokes; İ, which has no small letter of its own; and ς, which is σ at a word's end.
    private static readonly string[] BareLetterFirst =
    [
        "aàáâãäåāăąǎǟǡǻȁȃȧḁạảấầẩẫậắằẳẵặ", "bḃḅḇ", "cçćĉċčḉ", "dďđḋḍḏḑḓ", "eèéêëēĕėęěȅȇȩḕḗḙḛḝẹẻẽếềểễệ", "fḟ", "gĝğġģǧǵḡ",
        "hĥħȟḣḥḧḩḫẖ", "iìíîïĩīĭįıİǐȉȋḭḯỉị", "jĵǰ", "kķǩḱḳḵ", "lĺļľłḷḹḻḽ", "mḿṁṃ", "nñńņňǹṅṇṉṋ",
        "oòóôõöøōŏőơǒǫǭǿȍȏȫȭȯȱṍṏṑṓọỏốồổỗộớờởỡợ", "pṕṗ", "rŕŗřȑȓṙṛṝṟ", "sśŝşšșṡṣṥṧṩ", "tţťțṫṭṯṱẗ",
        "uùúûüũūŭůűųưǔǖǘǚǜȕȗṳṵṷṹṻụủứừửữự", "vṽṿ", "wŵẁẃẅẇẉẘ", "xẋẍ", "yýÿŷȳẏẙỳỵỷỹ", "zźżžẑẓẕ", "ſẛ", "ʒǯ", "αά", "εέ",
        "ηή", "ιΐίϊ", "οό", "σς", "υΰϋύ", "ωώ", "ϒϓϔ", "аӑӓ", "гѓ", "еѐёӗ", "жӂӝ", "зӟ", "ийѝӣӥ", "кќ", "оӧ", "уўӯӱӳ", "чӵ", "ыӹ",
        "эӭ", "ії", "ѵѷ", "әӛ", "өӫ",
        // Arabic letters that people write for each other.
        "اآأإ", "وؤ", "يىئ", "هة",
    ];

    // Letters that are written as several, and the ligatures of printers (UnicodeData.txt, compatibility decompositions; CaseFolding.txt).
    private static readonly FrozenDictionary<char, string> Several = new Dictionary<char, string>
    {
        ['ß'] = "ss",
        ['ẞ'] = "ss",
        ['æ'] = "ae",
        ['ǣ'] = "ae",
        ['ǽ'] = "ae",
        ['œ'] = "oe",
        ['þ'] = "th",
        ['ĳ'] = "ij",
        ['ﬀ'] = "ff",
        ['ﬁ'] = "fi",
        ['ﬂ'] = "fl",
        ['ﬃ'] = "ffi",
        ['ﬄ'] = "ffl",
        ['ﬅ'] = "st",
        ['ﬆ'] = "st",
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<char, char> BareOf = BareLetterFirst
        .SelectMany(letters => letters[1..].Select(letter => KeyValuePair.Create(letter, letters[0])))
        .ToFrozenDictionary();

    // Letters, digits and signs in the width of a Chinese character stand in the same order as in ASCII.
    private const char FirstWide = '\uFF01', LastWide = '\uFF5E', FirstNarrow = '!';

    /// <summary>Writes the bare small letters of a letter, three at the most.</summary>
    /// <returns>How many.</returns>
    public static int Bare(Rune letter, Span<char> to)
    {
        if (Disguised(letter.Value) is { } plain)
        {
            to[0] = plain;
            return 1;
        }

        var small = Rune.ToLowerInvariant(letter);
        if (!small.IsBmp)
            return small.EncodeToUtf16(to);
        if (Several.TryGetValue((char)small.Value, out var several))
        {
            several.CopyTo(to);
            return several.Length;
        }

        to[0] = Without((char)small.Value);
        return 1;
    }

    /// <summary>Whether a sign that Unicode doesn't count among the letters is read as one: letters in circles and boxes.</summary>
    public static bool IsLetterInDisguise(Rune letter) => Disguised(letter.Value) is not null;

    private static char Without(char letter) => letter switch
    {
        <= '\x7F' => letter,
        >= FirstWide and <= LastWide => char.ToLowerInvariant((char)(letter - FirstWide + FirstNarrow)),
        _ => BareOf.GetValueOrDefault(letter, letter),
    };

    // Runs of the alphabet in its order: in circles, in boxes, and in the styles of mathematics.
    private static char? Disguised(int letter) => letter switch
    {
        >= 0x24B6 and <= 0x24E9 => (char)('a' + ((letter - 0x24B6) % 26)),
        >= 0x1F130 and <= 0x1F149 => (char)('a' + (letter - 0x1F130)),
        >= 0x1F150 and <= 0x1F169 => (char)('a' + (letter - 0x1F150)),
        >= 0x1F170 and <= 0x1F189 => (char)('a' + (letter - 0x1F170)),
        >= 0x1D400 and <= 0x1D6A3 => (char)('a' + ((letter - 0x1D400) % 26)),
        _ => null,
    };
}
