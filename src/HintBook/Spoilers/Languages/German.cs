namespace HintBook.Spoilers.Languages;

/// <summary>German.</summary>
internal static class German
{
    private const int ShortestStem = 3;

    // Nouns whose plural is in -er, in bare letters; they end many compounds.
    private static readonly string[] InEr =
        ("bild brett buch dach fach glas rad schild schloss band blatt haus holz licht loch kind mann wort feld "
            + "kleid korn kraut lied nest tuch wald wurm rand schwert horn huhn bad dorf amt ei geld gespenst tal volk grab gras").Split(' ');

    // The longest first; what is left must be a stem.
    private static readonly string[] Endings = ["ern", "en", "em", "es", "er", "e", "n", "s"];

    private static readonly string[] Units =
        (" ein zwei drei vier fünf sechs sieben acht neun zehn "
            + "elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn").Split(' ');

    private static readonly string[] Tens = "  zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig".Split(' ');

    public static SearchLanguage Language { get; } = new()
    {
        Code = "de",
        Clock = ClockWords.German,
        Pieces = PieceWords.German,
        Objects = ObjectWords.German,
        Reckoning = ReckonWords.German,
        Variants =
            "holz/hölzern photo/foto delphin/delfin portemonnaie/portmonee grammophon/grammofon",
        FormsOf = WordForms.German,
        Determiners =
            "der die das den dem des ein eine einen einem einer eines dieser diese dieses diesen diesem jener jene jenes jeder jede jedes jeden jedem "
            + "mein meine meinen meinem meiner dein deine deinen deinem deiner sein seine seinen seinem seiner ihr ihre ihren ihrem ihrer unser "
            + "unsere unseren euer eure",
        Prepositions = "aus von vom mit in im ins unter auf an am ans bei beim hinter vor über neben zwischen zu zum zur für ohne durch gegen um nach",
        Functions =
            "und oder aber doch denn wenn als ob dass weil damit ist sind war waren wird werden wurde sei hat haben hatte kann können muss "
            + "müssen soll sollen darf dürfen will wollen mag "
            + "nicht kein keine nie nichts ich du er sie es wir man mich dich ihn uns euch mir dir ihm ihnen wer was welcher welche welches wo "
            + "wann warum wie hier dort da nun jetzt noch schon "
            + "nur auch sehr ganz so dann danach davor dahinter darunter darin daran darauf damit wieder immer mehr weniger alle alles "
            + "geht gehen ging kommt kommen kam nimm nimmt nehmen nehmt leg lege legt legen setz setze setzt setzen stell stelle stellt stellen "
            + "dreh drehe dreht drehen zieh ziehe zieht ziehen "
            + "drück drücke drückt drücken schieb schiebe schiebt schieben halt halte hält halten heb hebe hebt heben öffne öffnet öffnen "
            + "schließ schließe schließt schließen sieh seht sehen sieht "
            + "such suche sucht finde findet finden gib gebt gibt geben lies lest liest zeigt zeige zeigen liegt liegen steht stehen steckt "
            + "stecken passt passen braucht brauchen brauchst",
        InNumbers = "und dann danach die der zuletzt schließlich gefolgt von",
        And = "und",
        Everyday =
            "kasten kiste schachtel dose schlüssel deckel tür schublade lade stift loch rad knopf karte brief buchstabe nummer zahl wort code "
            + "zettel papier holz schloss riegel griff knauf scharnier "
            + "platte seite boden rand ecke kante wand dach fach schlitz nut haken ring stab stange zapfen stöpsel münze kugel kette schnur "
            + "draht feder magnet spiegel glas bild foto text zeile "
            + "vers reim rätsel hinweis lösung antwort ziffer zeichen symbol marke pfeil farbe form stern kreis quadrat werkzeug teil stück ding "
            + "gegenstand marke plan buch blatt etikett tisch lampe "
            + "kerze schalter zifferblatt uhr zeiger hand finger auge kopf körper schwanz klein kleine groß große lang kurz rund flach alt alte "
            + "neu neue links rechts linke rechte oben unten vorn "
            + "hinten erste zweite letzte rot rote blau blaue grün grüne gelb gelbe weiß weiße schwarz schwarze geheim geheime versteckt innere "
            + "äußere name zeit tag jahr reihe platz lücke ende anfang "
            + "schritt ton gewicht schraube nagel brett rahmen block",
        NumberNouns = "sieben elf acht drei neun zehn",
        Figures = [.. Numbers()],
        Counting = new(TensAlone: true),
        Fold = Fold,
        FoldNoun = word => Fold(word, isNoun: true),
    };

    // A number below ten thousand is one word.
    private static IEnumerable<(string, Figure)> Numbers()
    {
        for (var number = 0; number < 10_000; number++)
        {
            foreach (var said in Said(number))
                yield return (said, new(number, FigureKind.Small));
        }

        (string, int)[] others = [("ein", 1), ("eine", 1), ("einem", 1), ("zwo", 2)];
        foreach (var (word, number) in others)
            yield return (word, new(number, FigureKind.Small));
        yield return ("doppel", new(2, FigureKind.Again));
    }

    private static IEnumerable<string> Said(int number)
    {
        if (number == 0)
            return ["null"];
        var (thousands, hundreds, rest) = (number / 1000, number / 100 % 10, number % 100);
        var start =
            (thousands > 1 ? Units[thousands] : "")
            + (thousands > 0 ? "tausend" : "")
            + (hundreds > 1 ? Units[hundreds] : "")
            + (hundreds > 0 ? "hundert" : "")
            + Below(rest);
        return thousands != 1 && hundreds != 1 ? [start]
            : [start, (thousands > 0 ? Units[thousands] + "tausend" : "") + (hundreds > 0 ? Units[hundreds] + "hundert" : "") + Below(rest)];
    }

    private static string Below(int rest) => rest switch
    {
        0 => "",
        1 => "eins",
        < 20 => Units[rest],
        _ when rest % 10 == 0 => Tens[rest / 10],
        _ => Units[rest % 10] + "und" + Tens[rest / 10],
    };

    // The vowels of the stem have lost their dots already: "Bücher" is "bucher" here. Ending by ending, so that "Rahmens" and "Rahmen" meet.
    private static int Fold(Span<char> word) => Fold(word, isNoun: false);

    private static int Fold(Span<char> word, bool isNoun)
    {
        var length = Undotted(word);
        while (true)
        {
            var stem = StemOf(word[..length], isNoun);
            if (stem == length)
                return length;
            length = stem;
        }
    }

    // Who has no dots on the keyboard writes "ae" for "ä"; "neue" and "bauen" have an e of their own.
    private static int Undotted(Span<char> word)
    {
        var length = 0;
        for (var i = 0; i < word.Length; i++)
        {
            if (word[i] == 'e' && i > 0 && (word[i - 1] is 'a' or 'o' || (word[i - 1] == 'u' && (i < 2 || word[i - 2] is not ('a' or 'e' or 'q')))))
                continue;
            word[length++] = word[i];
        }

        return length;
    }

    private static int StemOf(ReadOnlySpan<char> word, bool isNoun)
    {
        foreach (var ending in Endings)
        {
            var stem = word.Length - ending.Length;
            if (stem >= ShortestStem && word[stem..].SequenceEqual(ending) && (!isNoun || ending is not ("er" or "ern") || HasPluralInEr(word[..stem])))
                return stem;
        }

        return word.Length;
    }

    private static bool HasPluralInEr(ReadOnlySpan<char> stem)
    {
        foreach (var noun in InEr)
        {
            if (stem.EndsWith(noun))
                return true;
        }

        return false;
    }
}
