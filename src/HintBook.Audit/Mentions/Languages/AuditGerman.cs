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
        Diminutives = ["chen", "lein", "chens", "leins"],
        Kinship = Kinship.German,
        Coordinators = "und oder",
        Anaphora = "er sie es ihn ihm ihr ihre sein seine seinen seiner dieser diese dieses diesen davon darin dahinter darunter dazu damit dort hier "
            + "ding dinger teil was welche welcher welches",
        Ties = "aus von vom für fürs",
        OwnersAhead = "des eines",
        Negations = "nicht kein keine keinen keiner nie ohne",
        Likenesses = "wie als",
        Setting = "schreib geben einstellen eingestellt einzustellen stell stell dreh gib wort wörter buchstabe buchstaben buchstabiert "
            + "buchstabieren lautet heißt schreibt "
            + "schreiben schreibe "
            + "geschrieben lösung lösungswort stelle stellen stellt eingeben gib tippe "
            + "lies liest lesen ring ringe walzen scheiben code passwort ergibt bildet ringen trommeln "
            + "schloss buchstabenschloss groß klein großbuchstaben kleinbuchstaben hören",
        Times = TimesIn.German,
        Codes = CodesIn.German,
        Thousand = "tausend",
        GluedThousand = "tausend",
        Repeats = ["doppel doppelte doppelt zweimal", "dreifach dreifache dreimal"],
        HasCompounds = true,
        Grammar =
            "ist sind war waren sein wird werden wurde hat haben hatte kann können muss müssen soll sollen will wollen darf nicht kein keine keinen "
            + "oder aber "
            + "wenn als wie wo wer was wann warum weil dass denn doch noch nur schon auch so sehr man sich er sie es wir ihr ich ihm ihn ihnen uns euch "
            + "hier dort da jetzt nun bitte durch gegen bis seit nach zwischen ab an ein los hin her heraus hinein geht steht liegt hängt öffnet passt "
            + "gehört fällt springt sobald damit indem während sonst falls",
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
        for (var number = 1; number < 2000; number++)
        {
            // "siebzehnhundert" is said of years, "tausendsiebenhundert" is read as two words.
            var (hundreds, rest) = (number / 100, number % 100);
            if (hundreds == 10)
                continue;
            foreach (var one in (string[])["ein", ""])
            {
                var start = hundreds == 0 ? "" : (hundreds == 1 ? one : Units[hundreds]) + "hundert";
                yield return (start + Below(rest), number);
                if (start.Length > 0 && rest > 0)
                    yield return ($"{start}und{Below(rest)}", number);
                if (start.Length == 0 && number > 0)
                    yield return ("und" + Below(rest), number);
                if (hundreds != 1)
                    break;
            }
        }
    }

    private static string Below(int number) => number switch
    {
        0 => "",
        1 => "eins",
        < 20 => Units[number],
        _ when number % 10 == 0 => Tens[number / 10],
        _ => $"{Units[number % 10]}und{Tens[number / 10]}",
    };
}
