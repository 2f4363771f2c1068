namespace HintBook.Ciphers.Making.Frames;

/// <summary>
/// German sentences with subjects in the plural, requests, and sentences that begin with an adverb. Without an article and behind <c>viele</c> an adjective
/// ends in -e, in the nominative and in the accusative, behind <c>die</c> in -en. Only people and animals do something; each kind of verb has the objects
/// that go with it. Places stand in the dative of the plural.
/// </summary>
internal static class German
{
    private const string Steps = """
        start|clause der who-weak
        start|clause viele who
        start|clause adjp who-adj
        start|clause leute|pron subject
        who-weak adjpn who-weak-adj
        who adjp who-adj
        who-weak|who-weak-adj|who|who-adj leute subject
        subject took object
        subject fetched fetching
        subject greeted whom
        subject opened openable
        subject slept slept
        start front asking
        asking slept asking-slept
        asking took asking-took
        asking greeted asking-greeted
        asking-slept pron|leute done
        asking-slept adjp asking-slept-adj
        asking-slept-adj leute done
        asking-took pron|leute object-adv
        asking-took adjp asking-took-adj
        asking-took-adj leute object-adv
        asking-greeted pron|leute whom-adv
        whom adv whom-adv
        whom|whom-adv name done
        whom|whom-adv der whom-weak
        whom|whom-adv viele whom-viele
        whom-weak|whom-viele leute done
        whom-weak adjpn whom-weak-adj
        whom-weak-adj leute done
        object adv object-adv
        object|object-adv|fetching der object-weak
        object|object-adv|fetching viele object-viele
        object|object-adv|fetching adj object-adj
        object|object-adv|fetching dinge done
        fetching adv fetching-adv
        fetching|fetching-adv masse done
        object-weak adjn object-weak-adj
        object-viele adj object-adj
        object-weak|object-weak-adj|object-viele|object-adj dinge done
        openable adv openable-adv
        openable|openable-adv lab labelled
        labelled letter done
        slept adv slept-adv
        done|slept|slept-adv prep where
        where orte placed
        done|slept|slept-adv|placed und clause
        done|slept|slept-adv|placed ,aber clause
        start call order
        start hail hailed
        start go ordered
        start try opening
        start addressed asked
        asked ,call order
        asked ,hail hailed
        asked ,try opening
        asked ,go ordered
        order advc order-adv
        order|order-adv dinge ordered-all
        order|order-adv adj order-adj
        order|order-adv der order-weak
        order|order-adv viele order-viele
        order-weak adjn order-weak-adj
        order-viele adj order-adj
        order-adj|order-weak|order-weak-adj|order-viele dinge ordered-all
        hailed advc hailed-adv
        hailed|hailed-adv name ordered-end
        hailed|hailed-adv der hailed-weak
        hailed-weak leute ordered-all
        opening advc opening-adv
        opening|opening-adv lab opening-lab
        opening-lab letter ordered-all
        ordered advc ordered-all
        ordered|ordered-all prep order-by
        order-by orte ordered-by
        ordered|ordered-all|ordered-by ,name ordered-end
        """;

    private const string Names =
        "Ada Anton Bea Bruno Cora Clemens Dora Detlev Edda Emil Flora Felix Greta Gustav Hanna Hugo Ida Ingo Jana Jonas Karla Kurt Lena Leo Mira Max "
        + "Nora Norbert Olga Otto Paula Paul Quirin Rosa Rolf Sara Samuel Tilda Tim Uta Udo Vera Viktor Wanda Willi Xenia Xaver Yara York Zora Zeno Zoe Jo "
        + "Benedikta Alexander";

    private const string People = """
        alte arme brave dicke clevere ernste edle freche fröhliche gute heitere höfliche hungrige irische junge kluge kleine laute leise liebe müde muntere
        nette nervöse ordentliche pfiffige quirlige ruhige reiche sanfte stille stolze scheue schnelle starke treue träge traurige uralte unruhige vornehme
        verliebte wilde weise wache zahme zarte zornige
        """;

    private const string Kinds = """
        alte bunte blaue braune blasse breite chinesische dunkle edle eckige eiserne feine flache frische goldene graue grüne große helle hohe harte
        indische irdene japanische kalte kleine kostbare leere leichte lange lose matte neue nasse ovale prächtige platte quadratische rote runde rostige
        silberne schöne schwere saubere teure trockene uralte unreine violette volle verzierte weiße wertvolle warme zarte zerbrechliche
        """;

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done slept slept-adv placed ordered ordered-all ordered-by ordered-end",
        ("der", "die diese jene alle meine deine seine ihre unsere eure"),
        ("viele", "viele einige mehrere wenige"),
        ("adjp", People),
        ("adjpn", Weak(People)),
        ("adj", Kinds),
        ("adjn", Weak(Kinds)),
        ("leute", """
            Ameisen Affen Bienen Bären Bauern Brüder Clowns Damen Diebe Drohnen Dohlen Dichter Esel Eulen Enten Enkel Elstern Falken Frauen Freunde Frösche
            Füchse Gäste Gärtner Gänse Hasen Hirten Hummeln Hunde Imker Igel Insekten Jäger Jungen Juweliere Katzen Kinder Könige Käfer Köche Löwen Lehrer
            Leute Männer Mäuse Motten Maler Möwen Nachbarn Nonnen Nichten Neffen Onkel Ochsen Otter Piraten Pferde Prinzen Quallen Raben Ritter Rehe Reiter
            Schafe Schwäne Spinnen Schmiede Tauben Tanten Tiger Tänzer Uhus Urenkel Uhrmacher Vögel Väter Wespen Wölfe Wächter Yaks Ziegen Zwerge
            Zauberer Zebras Großväter Königinnen Holzwürmer Zauberlehrlinge Tagfalter
            """),
        ("dinge", """
            Apfelkerne Alben Blumen Bücher Birnen Becher Chrysanthemen Dosen Decken Eier Erbsen Eimer Federn Früchte Flaschen Fässer Gläser Glocken Gurken
            Hüte Hefte Hemden Instrumente Ikonen Jacken Juwelen Kerzen Karten Körbe Kisten Lampen Laternen Lichter Löffel Münzen Muscheln Möbel Nüsse Nadeln
            Netze Orangen Oliven Ohrringe Pilze Perlen Puppen Quitten Quarze Rosen Ringe Räder Rüben Schlüssel Steine Schalen Scheren Teller Töpfe Truhen
            Tische Uhren Urnen Veilchen Vasen Violinen Waben Waagen Würfel Xylophone Yachten Zettel Zitronen Zangen Zäune Schatullen Edelsteine Werkzeuge
            Tassen
            """),
        ("name", Names),
        ("addressed", Names),
        ("masse", "Honig Wachs Tee Eis Öl Most Joghurt Wasser Brot Gold Salz Silber Zucker Nektar Reis Ysop"),
        ("pron", "wir sie"),
        ("took", """
            bringen brauchen bemalen besitzen betrachten bewundern bewachen borgen basteln chiffrieren drehen entdecken erben ersetzen entwerfen finden
            fotografieren färben haben heben holen hüten inspizieren kaufen kennen lieben leihen malen mögen messen mieten nehmen nutzen ordnen opfern
            polieren prüfen putzen packen quetschen reinigen rauben reparieren sammeln sehen suchen säubern sortieren stehlen tragen tauschen teilen tarnen
            untersuchen verkaufen verstecken vergessen verlieren waschen wiegen wählen wollen zeigen zählen zeichnen
            """),
        ("fetched", "bringen brauchen erben finden haben holen kaufen lieben mögen nehmen suchen sammeln stehlen tauschen teilen verkaufen wollen"),
        ("greeted", """
            begleiten begrüßen besuchen bewundern ehren erkennen finden fangen fragen grüßen holen hören ignorieren kennen küssen lieben loben malen mögen
            meiden necken pflegen retten rufen sehen suchen stören treffen trösten umarmen verlassen vergessen verstehen warnen wecken zeichnen
            """),
        ("opened", "öffnen prüfen suchen finden leeren wählen nehmen untersuchen zeigen verriegeln"),
        ("slept", """
            arbeiten altern beten baden bleiben campen dösen erwachen fliehen feiern flüstern faulenzen gähnen grübeln hoffen husten hüpfen improvisieren
            jubeln jammern kommen klettern kichern lachen lauschen leben lesen marschieren murmeln naschen nicken niesen pausieren pfeifen plaudern quasseln
            rasten ruhen reden reisen schlafen singen summen schweigen tanzen träumen trinken turnen üben verschwinden verreisen warten wandern weinen
            zittern zaubern zögern essen überlegen
            """),
        ("call", """
            betrachte bewundere bringe bewache drehe entdecke ersetze finde fotografiere färbe hebe hole kaufe male miss nimm nutze ordne poliere prüfe
            putze quetsche reinige repariere sammle sortiere suche säubere tausche teile trage untersuche verkaufe verstecke wasche wiege wähle zähle
            zeichne zeige
            """),
        ("hail", """
            begleite begrüße besuche ehre frage finde grüße höre ignoriere küsse lobe male meide necke pflege rufe rette suche störe triff tröste umarme
            vergiss verlasse wecke warne zeichne
            """),
        ("go", """
            arbeite atme bleibe bete bade campe döse erwache eile feiere fliehe geh gähne hoffe hüpfe husche improvisiere jubele jammere komme klettere
            lache lausche lies marschiere nicke niese pausiere pfeife quassele raste ruhe rede singe schlafe schweige tanze träume turne übe verschwinde
            warte wandere weine zaubere zögere iss
            """),
        ("try", "öffne prüfe suche finde leere wähle nimm untersuche zeige"),
        ("lab", "Fach Tor Kiste Lade Haus Raum Zelle Schrank"),
        ("letter", Letters),
        ("front", """
            abends bald dort draußen endlich freitags gern heute hier immer irgendwann jetzt jährlich kürzlich langsam leise manchmal morgens nachts nun oft
            plötzlich ruhig rasch selten stets täglich unten unterwegs vormittags wieder wöchentlich zusammen zuerst da
            """),
        ("adv", """
            abends bald dort draußen endlich freitags gern heute hier immer irgendwo jetzt jährlich kaum langsam leise manchmal morgens nachts nie niemals
            nun oft pünktlich ruhig rasch schnell selten stets täglich unten unterwegs vorsichtig vormittags wieder wöchentlich zusammen da einsam
            """),
        ("advc", """
            abends bald dort draußen endlich freitags heute hier immer irgendwo jetzt jährlich langsam leise manchmal morgens nachts nun oft pünktlich ruhig
            rasch schnell stets täglich unten unterwegs vorsichtig vormittags wieder wöchentlich zusammen
            """),
        ("prep", "bei hinter neben vor zwischen"),
        ("orte", """
            Ahornbäumen Apfelbäumen Bäumen Bergen Brücken Büschen Dünen Dörfern Eichen Eiben Felsen Fichten Gärten Gräbern Häusern Hecken Hügeln Höfen
            Jurten Kirchen Kapellen Linden Leuchttürmen Mauern Mühlen Nussbäumen Obstbäumen Palmen Pappeln Quellen Ruinen Rosen Scheunen Statuen Türmen
            Toren Tannen Ulmen Ufern Villen Weiden Wäldern Yachten Zelten Zäunen
            """),
        ("und", "und"),
        ("aber", "aber denn doch"));

    // Behind an article every adjective ends in -en.
    private static string Weak(string adjectives) =>
        string.Join(' ', adjectives.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(adjective => adjective.Trim() + "n"));

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
