namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// German sentences with subjects in the plural, which need no article and give their adjectives the ending -e in the nominative and in the accusative, and
/// requests. All prepositions take the accusative.
/// </summary>
internal static class German
{
    private const string Steps = """
        start adj described
        start noun subject
        start pron subject
        start call object
        start go done
        start addressed asked
        asked ,call object
        asked ,go done
        described adj described
        described noun subject
        subject took object
        subject slept done
        object adj object-described
        object noun done
        object mass done
        object name done
        object lab labelled
        object-described adj object-described
        object-described noun done
        labelled letter done
        done adv described-done
        described-done prep object
        described-done conj clause
        described-done ,name spoken-to
        done prep object
        done conj clause
        done ,name spoken-to
        clause adj described
        clause noun subject
        clause pron subject
        """;

    private const string Names =
        "Ada Anton Bea Bruno Cora Clemens Dora Detlev Edda Emil Flora Felix Greta Gustav Hanna Hugo Ida Ingo Jana Jonas Karla Kurt Lena Leo Mira Max "
        + "Nora Norbert Olga Otto Paula Paul Quirin Rosa Rolf Sara Samuel Tilda Tim Uta Udo Vera Viktor Wanda Willi Xenia Xaver Yara York Zora Zeno Jo "
        + "Benedikta Alexander";

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done described-done spoken-to",
        ("adj", """
            alte arme bunte braune blasse clevere dunkle dicke ernste edle feine frische freche goldene graue gute helle hohe harte indische irdene
            junge kalte kluge kleine laute leise liebe milde müde matte neue nasse nackte offene ovale prächtige platte quirlige rote runde rasche
            stille süße schöne tiefe treue trockene uralte unreife violette volle vage warme wilde weiße wertvolle zarte zahme zornige gefährliche
            """),
        ("noun", """
            Ameisen Alben Bienen Blumen Bücher Birnen Chöre Clowns Diebe Dohlen Drohnen Eulen Eier Erbsen Esel Falter Farben Felder Frauen Gärten
            Gäste Gläser Hummeln Hasen Imker Igel Inseln Jäger Jahre Jungen Kerzen Käfer Karten Könige Lampen Leitern Laternen Männer Monde Motten
            Nüsse Nester Nachbarn Ochsen Orgeln Orte Pilze Pappeln Pfade Quellen Quitten Raben Rosen Ringe Schwärme Sterne Steine Tauben Tore Türme
            Uhren Ufer Vögel Veilchen Waben Wespen Wiesen Xylophone Yaks Zimmer Zaunpfähle Zäune Blüten Schlüssel Apfelbäume Sommerbienen
            """),
        ("name", Names),
        ("addressed", Names),
        ("mass", "Honig Wachs Tee Tau Eis Öl Most Ysop Joghurt Wasser"),
        ("pron", "wir sie"),
        ("took", """
            ahnen bauen bringen brauchen chauffieren decken drehen ehren erben essen finden fangen führen grüßen geben holen hören hüten impfen
            jagen kaufen kennen küssen lieben loben lesen malen meiden mögen nehmen nennen necken opfern ordnen ölen pflücken prüfen quälen retten
            rufen rauben sehen suchen sammeln tragen treffen tauschen umarmen verlassen vergessen wecken wählen wollen zählen zeigen ziehen
            bewundern beobachten
            """),
        ("slept", """
            arbeiten altern bleiben brummen beten campen danken dösen erwachen eilen fliegen feiern fallen gehen glühen gähnen hoffen husten irren
            jubeln jammern kommen klettern lachen leben lauschen marschieren murmeln naschen nicken niesen pausieren pfeifen quaken quasseln rasten
            reifen ruhen summen singen schlafen tanzen träumen turnen unken verschwinden verblühen warten wandern weinen zittern zögern überlegen
            """),
        ("call", """
            achte bringe baue chauffiere drehe decke ehre finde fange frage grüße gib hole höre hebe impfe jage kaufe küsse lies löse lobe male miss
            nimm nenne opfere ordne öffne pflücke prüfe quäle rufe rette suche sammle teile trage tausche umarme vergiss verlasse wecke wähle wiege
            zähle zeige ziehe iss
            """),
        ("go", """
            arbeite atme bleibe bete campe danke döse eile erwache fliege feiere gehe gähne hoffe husche irre jubele jammere komme klettere lache
            lausche marschiere nicke niese pausiere pfeife quake raste ruhe singe schlafe tanze träume turne unke verschwinde warte wandere weine
            zittere zögere
            """),
        ("lab", "Fach Tor Kiste Lade Haus Raum Zelle Schrank"),
        ("letter", Letters),
        ("adv", """
            abends bald dort einsam früh gern heute hier immer jetzt kaum langsam leise manchmal munter nachts niemals oft pünktlich ruhig schnell
            stets täglich unten vorsichtig wieder zusammen da
            """),
        ("prep", "durch für gegen ohne um"),
        ("conj", "und aber oder denn"));

    /// <summary>Everything for clues in German.</summary>
    public static Language Language { get; } = new(
        "de",
        Sentences,
        ["null", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun"],
        "und",
        [
            new("eine Königin", "Königinnen", "Königinnen"), new("eine Drohne", "Drohnen", "Drohnen"), new("ein Schwarm", "Schwärme", "Schwärme"),
            new("eine Wabe", "Waben", "Waben"), new("ein Glas", "Gläser", "Gläser"), new("ein Rähmchen", "Rähmchen", "Rähmchen"),
            new("ein Falter", "Falter", "Falter"), new("ein Kleeblatt", "Kleeblätter", "Kleeblätter"), new("ein Apfelbaum", "Apfelbäume", "Apfelbäume"),
            new("eine Glocke", "Glocken", "Glocken"), new("eine Kerze", "Kerzen", "Kerzen"),
            new("ein Tor", "Tore", "Tore"), new("eine Laterne", "Laternen", "Laternen"),
        ],
        [
            ("wartet hinter der alten Mauer", "warten hinter der alten Mauer"), ("steht im Garten", "stehen im Garten"),
            ("ist auf den Deckel gemalt", "sind auf den Deckel gemalt"), ("kam vor Mittag heim", "kamen vor Mittag heim"),
            ("blieb im Regen", "blieben im Regen"), ("versteckt sich unter dem Dach", "verstecken sich unter dem Dach"),
        ]);
}
