namespace HintBook.Audit.Mentions.Languages;

/// <summary>German.</summary>
internal static class AuditGerman
{
    private static readonly string[] Units =
    [
        "", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun",
        "zehn", "elf", "zwölf", "dreizehn", "vierzehn", "fünfzehn", "sechzehn", "siebzehn", "achtzehn", "neunzehn",
    ];

    private static readonly string[] Tens = ["", "", "zwanzig", "dreißig", "vierzig", "fünfzig", "sechzig", "siebzig", "achtzig", "neunzig"];

    // Nouns with a plural in -er, and the last parts of compounds with one.
    private static readonly string[] WithEr =
    [
        "bild", "brett", "buch", "dach", "fach", "glas", "rad", "schild", "schloss",
        "band", "blatt", "haus", "holz", "licht", "loch", "kind", "mann", "wort",
        "feld", "kleid", "tuch", "nest", "wald", "horn", "huhn", "ei", "korn",
    ];

    private static readonly string[] Inflected = ["e", "en", "n", "es"];

    public static AuditLanguage Language { get; } = new()
    {
        Code = "de",
        Determiners =
            "der die das den dem des ein eine einen einem einer eines dieser diese dieses diesen diesem "
            + "mein meine meinen meinem dein deine deinen deinem sein seine seinen seinem ihr ihre ihren ihrem unser unsere euer eure",
        Prepositions = "aus von vom mit in im unter auf an am bei hinter vor über neben für ohne zu zum zur",
        Between = "und dann danach",
        Same = ["eins ein eine", "zwei zwo"],
        Forms = Forms,
        Numbers = Numbers,
        HasCompounds = true,
    };

    private static IEnumerable<string> Forms(string word, bool isAlone)
    {
        if (word.Length < 3)
            return [word];
        string[] stems =
        [
            word,
            .. from ending in Inflected
               where word.Length - ending.Length >= 4 && word.EndsWith(ending, StringComparison.Ordinal)
               select word[..^ending.Length],
        ];
        return stems.SelectMany(stem => Endings(stem, isAlone).Select(ending => stem + ending)).Prepend(word).Distinct();
    }

    // "Raucher" is no form of "Rauch", but "goldener" is one of "golden".
    private static string[] Endings(string stem, bool isAlone) =>
        !isAlone || Array.Exists(WithEr, noun => stem.EndsWith(noun, StringComparison.Ordinal))
            ? ["", "e", "en", "n", "s", "es", "em", "er", "ern"]
            : ["", "e", "en", "n", "s", "es"];

    private static IEnumerable<(string, int)> Numbers()
    {
        yield return ("null", 0);
        for (var number = 1; number < 10_000; number++)
        {
            var (thousands, hundreds, rest) = (number / 1000, number / 100 % 10, number % 100);
            foreach (var one in (string[])["ein", ""])
            {
                yield return (Times(thousands, one, "tausend") + Times(hundreds, one, "hundert") + Below(rest), number);
                if (thousands != 1 && hundreds != 1)
                    break;
            }
        }
    }

    private static string Times(int count, string one, string unit) => count == 0 ? "" : (count == 1 ? one : Units[count]) + unit;

    private static string Below(int number) => number switch
    {
        1 => "eins",
        < 20 => Units[number],
        _ when number % 10 == 0 => Tens[number / 10],
        _ => $"{Units[number % 10]}und{Tens[number / 10]}",
    };
}
