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
        start|clause adjt who-beast
        start|clause tiere beast
        who-weak adjpn who-weak-adj
        who-weak adjtn who-weak-beast
        who adjp who-adj
        who adjt who-beast
        who-weak|who-weak-adj|who|who-adj leute subject
        who-weak|who-weak-beast|who|who-beast tiere beast
        subject took object
        subject fetched fetching
        subject greeted whom
        subject opened openable
        subject slept|sang slept
        beast slept slept
        start|clause name single
        asked ,name single
        single schläft slept
        single grüßt whom
        beast chased whom
        start front asking
        asking slept|sang asking-slept
        asking slept asking-beast
        asking chased asking-chased
        asking took asking-took
        asking fetched asking-fetched
        asking greeted asking-greeted
        asking-slept pron|leute done
        asking-slept adjp asking-slept-adj
        asking-slept-adj leute done
        asking-beast tiere done
        asking-beast adjt asking-beast-adj
        asking-beast-adj tiere done
        asking-chased tiere whom-adv
        asking-chased adjt asking-chased-adj
        asking-chased-adj tiere whom-adv
        asking-took pron|leute object-adv
        asking-took adjp asking-took-adj
        asking-took-adj leute object-adv
        asking-fetched pron|leute fetching-adv
        asking-greeted pron|leute whom-adv
        whom adv whom-adv
        whom|whom-adv name done
        whom|whom-adv der whom-weak
        whom|whom-adv viele whom-viele
        whom-weak|whom-viele leute|tiere done
        whom-weak adjpn whom-weak-adj
        whom-weak-adj leute done
        whom-weak adjtn whom-weak-beast
        whom-weak-beast tiere done
        object adv object-adv
        object|object-adv der object-weak
        object|object-adv viele object-viele
        object|object-adv adj object-adj
        object|object-adv dinge done
        fetching adv fetching-adv
        fetching|fetching-adv masse done
        object-weak adjn object-weak-adj
        object-viele adj object-adj
        object-weak|object-weak-adj|object-viele|object-adj dinge done
        openable adv openable-adv
        openable|openable-adv lab labelled
        labelled letter done
        slept adv|how slept-adv
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
        + "Nora Norbert Olga Otto Paula Paul Quirin Rosa Rolf Sara Samuel Tilda Tim Uta Udo Vera Viktor Wanda Willi Xenia Xaver Yara Yvonne Zora Zeno Zoe Jo "
        + "Benedikta Alexander";

    private const string People = """
        alte arme brave clevere ernste edle freche freundliche fröhliche gute heitere höfliche hungrige junge kluge kleine laute leise liebe müde muntere nette
        nervöse ordentliche pfiffige ruhige reiche sanfte stille stolze scheue schnelle starke treue traurige vornehme verliebte weise zornige
        irische quirlige träge uralte unruhige wache zarte
        """;

    private const string Beasts = """
        alte braune brave clevere dicke freche graue große hungrige junge kluge kleine laute leise liebe müde muntere nervöse ruhige scheue schlaue schnelle
        schwarze starke stille treue träge uralte unruhige wilde wache weiße zahme edle neugierige
        """;

    private const string Kinds = """
        alte bunte blaue braune edle eckige eiserne feine goldene graue grüne große helle kleine kostbare leichte lange neue ovale prächtige rote runde
        silberne schöne schwere saubere seltene teure uralte verzierte wertvolle weiße zerbrechliche hübsche ganze indische japanische unbekannte violette
        """;

    private const string Letters = "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z";

    private static readonly Grammar Sentences = new(
        Steps,
        "done slept slept-adv placed ordered ordered-all ordered-by ordered-end",
        ("der", "die diese jene alle meine deine seine ihre unsere eure"),
        ("viele", "viele einige mehrere | wenige"),
        ("adjp", People),
        ("adjpn", Weak(People)),
        ("adjt", Beasts),
        ("adjtn", Weak(Beasts)),
        ("adj", Kinds),
        ("adjn", Weak(Kinds)),
        ("leute", """
            Ahnen Bauern Brüder Bäcker Clowns Damen Diebe Detektive Dichter Eltern Enkel Frauen Freunde Fischer Förster Gäste Gärtner Geschwister
            Hirten Handwerker Imker Ingenieure Jäger Jungen Juweliere Kinder Könige Köche Lehrer Leute Männer Maler Mönche Mädchen Nachbarn Nonnen
            Nichten Neffen Onkel Omas Opas Piraten Prinzen Pfarrer Ritter Reiter Räuber Schmiede Schüler Schneider Tanten Tänzer Touristen Urenkel
            Uhrmacher Verwandte Väter Wächter Wanderer Wirte Zwerge Zauberer Großväter Königinnen Zauberlehrlinge Artisten Erben
            """),
        ("tiere", """
            Ameisen Affen Bienen Bären Drohnen Dohlen Esel Eulen Enten Elstern Falken Frösche Füchse Gänse Hasen Hummeln Hunde Igel Insekten Katzen
            Käfer Löwen Mäuse Motten Möwen Nachtigallen Ochsen Otter Pferde Ponys Quallen Raben Rehe Schafe Schwäne Spinnen Tauben Tiger Uhus Vögel
            Wespen Wölfe Yaks Ziegen Zebras Holzwürmer Tagfalter
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
            bringen brauchen besitzen betrachten bewundern bewachen borgen entdecken erben ersetzen finden haben holen hüten kaufen kennen lieben
            leihen malen mögen nehmen nutzen ordnen prüfen putzen packen rauben reparieren sammeln sehen suchen säubern sortieren stehlen tragen
            tauschen teilen untersuchen verkaufen verstecken vergessen verlieren wählen wollen zeigen zählen zeichnen | bemalen basteln drehen
            entwerfen fotografieren färben heben inspizieren messen mieten opfern polieren quetschen reinigen tarnen waschen wiegen
            """),
        ("fetched", """
            bringen brauchen finden haben holen kaufen mögen nehmen suchen sammeln stehlen tauschen teilen verkaufen verstecken wollen wiegen | erben
            lieben
            """),
        ("greeted", """
            begleiten begrüßen besuchen bewundern ehren erkennen finden fragen grüßen hören ignorieren kennen küssen lieben loben mögen meiden necken
            pflegen retten rufen sehen suchen stören treffen trösten umarmen verlassen vergessen verstehen warnen wecken | fangen holen malen zeichnen
            """),
        ("chased", """
            begleiten beobachten finden fürchten hören ignorieren jagen kennen meiden sehen suchen stören treffen verfolgen warnen wecken necken
            lieben mögen
            """),
        ("opened", "öffnen prüfen suchen finden leeren wählen nehmen untersuchen zeigen verriegeln"),
        ("slept", """
            baden bleiben dösen erwachen fliehen gähnen hüpfen kommen klettern lauschen leben naschen niesen rasten ruhen schlafen schweigen trinken
            verschwinden warten wandern zittern zögern essen | altern husten jammern nicken
            """),
        ("sang", """
            arbeiten beten campen feiern flüstern faulenzen grübeln hoffen jubeln kichern lachen lesen marschieren murmeln pausieren pfeifen plaudern
            reden reisen singen summen tanzen träumen turnen üben verreisen weinen zaubern überlegen | improvisieren quasseln
            """),
        ("schläft", """
            arbeitet badet bleibt betet döst eilt erwacht feiert flieht flüstert gähnt grübelt hofft hüpft isst jubelt kommt klettert kichert lacht
            lauscht liest lebt marschiert murmelt nickt niest nascht pausiert pfeift plaudert rastet ruht redet reist singt schläft schweigt summt
            tanzt träumt turnt trinkt übt überlegt verschwindet verreist wartet wandert weint zaubert zögert zittert
            """),
        ("grüßt", """
            begleitet begrüßt besucht bewundert ehrt erkennt findet fragt grüßt hört ignoriert kennt küsst liebt lobt mag meidet neckt pflegt ruft
            rettet sieht sucht stört trifft tröstet umarmt vergisst verlässt versteht warnt weckt
            """),
        ("call", """
            betrachte bewundere bringe bewache drehe entdecke ersetze finde hebe hole kaufe male miss nimm nutze ordne poliere prüfe putze repariere
            sammle sortiere suche säubere tausche teile trage untersuche verkaufe verstecke wasche wiege wähle zähle zeichne zeige | fotografiere
            färbe inspiziere quetsche reinige
            """),
        ("hail", """
            begleite begrüße besuche ehre frage finde grüße höre ignoriere küsse lobe male meide necke pflege rufe rette suche störe triff tröste umarme
            vergiss verlasse wecke warne zeichne
            """),
        ("go", """
            arbeite bleibe bete bade eile feiere fliehe geh gähne hoffe hüpfe jubele komme klettere lache lausche lies marschiere nicke pausiere
            pfeife raste ruhe rede singe schlafe schweige tanze träume turne übe verschwinde warte wandere zaubere zögere iss | atme campe döse
            erwache husche improvisiere jammere niese quassele weine
            """),
        ("try", "öffne prüfe suche finde leere wähle nimm untersuche zeige"),
        ("lab", "Fach Tor Kiste Lade Haus Raum Zelle Schrank"),
        ("letter", Letters),
        ("front", """
            abends bald dort draußen endlich freitags gern heute hier immer irgendwann jetzt jährlich kürzlich langsam leise manchmal morgens nachts nun oft
            plötzlich ruhig rasch selten stets täglich unten unterwegs vormittags wieder wöchentlich zusammen zuerst da
            """),
        ("adv", """
            abends bald dort draußen endlich freitags gern heute hier immer irgendwo jetzt jährlich kaum manchmal morgens nachts nie niemals
            nun oft selten stets täglich unten unterwegs vormittags wieder wöchentlich da
            | langsam leise pünktlich ruhig rasch schnell vorsichtig zusammen einsam
            """),
        ("how", "allein gern langsam leise pünktlich ruhig rasch schnell still vorsichtig zusammen einsam"),
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
