using System.Collections.Frozen;

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
        "uùúûüũūŭůűųưǔǖǘǚǜȕȗṳṵṷṹṻụủứừửữự", "vṽṿ", "wŵẁẃẅẇẉẘ", "xẋẍ", "yýÿŷȳẏẙỳỵỷỹ", "zźżžẑẓẕ", "æǣǽ", "ſẛ", "ʒǯ", "αά", "εέ",
        "ηή", "ιΐίϊ", "οό", "σς", "υΰϋύ", "ωώ", "ϒϓϔ", "аӑӓ", "гѓ", "еѐёӗ", "жӂӝ", "зӟ", "ийѝӣӥ", "кќ", "оӧ", "уўӯӱӳ", "чӵ", "ыӹ",
        "эӭ", "ії", "ѵѷ", "әӛ", "өӫ",
    ];

    private static readonly FrozenDictionary<char, char> Bare = BareLetterFirst
        .SelectMany(letters => letters[1..].Select(letter => KeyValuePair.Create(letter, letters[0])))
        .ToFrozenDictionary();

    // Letters, digits and signs in the width of a Chinese character stand in the same order as in ASCII.
    private const char FirstWide = '\uFF01', LastWide = '\uFF5E', FirstNarrow = '!';

    /// <summary>A small letter without its accent; any other character as it is.</summary>
    public static char Without(char letter) => letter switch
    {
        <= '\x7F' => letter,
        >= FirstWide and <= LastWide => (char)(letter - FirstWide + FirstNarrow),
        _ => Bare.GetValueOrDefault(letter, letter),
    };
}
