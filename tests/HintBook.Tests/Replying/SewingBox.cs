using HintBook.Tests.Reading;

namespace HintBook.Tests.Replying;

/// <summary>A small book that is written in each of the six languages, of one box: a bolt, a lid, a needle, and a drawer in the bottom.</summary>
internal static class SewingBox
{
    /// <summary>The languages that it is there in.</summary>
    public static IReadOnlyCollection<string> Languages => Written.Keys;

    // The book's words, in the order of the gaps of Of.
    private static Dictionary<string, string[]> Written { get; } = new()
    {
        ["en"] =
        [
            "The Sewing Box", "the bolt", "shut", "drawn", "the lid", "closed", "open", "the hidden drawer",
            "pushed in", "pulled out",
            "silver needle", "under the lid", "thimble", "in the hidden drawer",
            "The front", "A small box with a bolt at the front.", "Look at the front.", "The bolt slides to one side.",
            "Draw the bolt and open the lid.", "Close the lid.",
            "The inside", "The lid is open.", "Something shines in there.", "Look along the edge of the lid.",
            "Take the silver needle from under the lid.",
            "Lay the silver needle back under the lid.", "Its point is sharp. Hold it away from your hand.",
            "The bottom", "You hold the silver needle.", "The bottom is thicker than it has to be.",
            "There is a small hole in the bottom.",
            "Push the silver needle into the hole. The hidden drawer comes out. Take the thimble.",
            "Lay the thimble back and push the hidden drawer in.",
        ],
        ["de"] =
        [
            "Das Nähkästchen", "der Riegel", "zu", "gezogen", "der Deckel", "geschlossen", "offen", "das Geheimfach",
            "hineingeschoben", "herausgezogen",
            "silberne Nadel", "unter dem Deckel", "Fingerhut", "im Geheimfach",
            "Die Vorderseite", "Ein kleines Kästchen mit einem Riegel vorn.", "Sieh dir die Vorderseite an.",
            "Der Riegel gleitet zur Seite.",
            "Zieh den Riegel und öffne den Deckel.", "Schließ den Deckel.",
            "Das Innere", "Der Deckel ist offen.", "Darin glänzt etwas.", "Sieh am Rand des Deckels entlang.",
            "Nimm die silberne Nadel unter dem Deckel hervor.",
            "Leg die silberne Nadel wieder unter den Deckel.", "Die Spitze ist scharf. Halte sie von der Hand weg.",
            "Der Boden", "Du hältst die silberne Nadel.", "Der Boden ist dicker, als er sein müsste.",
            "Im Boden ist ein kleines Loch.",
            "Schieb die silberne Nadel in das Loch. Das Geheimfach kommt heraus. Nimm den Fingerhut.",
            "Leg den Fingerhut zurück und schieb das Geheimfach hinein.",
        ],
        ["fr"] =
        [
            "La boîte à couture", "le verrou", "fermé", "tiré", "le couvercle", "baissé", "levé", "le tiroir secret",
            "rentré", "sorti",
            "aiguille d’argent", "sous le couvercle", "dé à coudre", "dans le tiroir secret",
            "Le devant", "Une petite boîte avec un verrou sur le devant.", "Regardez le devant.",
            "Le verrou glisse sur le côté.", "Tirez le verrou et levez le couvercle.",
            "Baissez le couvercle.",
            "L’intérieur", "Le couvercle est levé.", "Quelque chose brille.", "Regardez le long du bord du couvercle.",
            "Prenez l’aiguille d’argent sous le couvercle.",
            "Remettez l’aiguille d’argent sous le couvercle.", "La pointe pique. Tenez-la loin de la main.",
            "Le fond", "Vous tenez l’aiguille d’argent.", "Le fond est plus épais qu’il ne devrait.",
            "Il y a un petit trou dans le fond.",
            "Poussez l’aiguille d’argent dans le trou. Le tiroir secret sort. Prenez le dé à coudre.",
            "Remettez le dé à coudre et rentrez le tiroir secret.",
        ],
        ["es"] =
        [
            "El costurero", "el cerrojo", "echado", "corrido", "la tapa", "cerrada", "abierta", "el cajón secreto",
            "metido", "sacado",
            "aguja de plata", "bajo la tapa", "dedal", "en el cajón secreto",
            "El frente", "Una caja pequeña con un cerrojo delante.", "Mira el frente.",
            "El cerrojo se desliza a un lado.", "Corre el cerrojo y abre la tapa.",
            "Cierra la tapa.",
            "El interior", "La tapa está abierta.", "Algo brilla dentro.", "Mira a lo largo del borde de la tapa.",
            "Toma la aguja de plata de debajo de la tapa.",
            "Deja la aguja de plata bajo la tapa.", "La punta pincha. Mantenla lejos de la mano.",
            "El fondo", "Tienes la aguja de plata.", "El fondo es más grueso de lo necesario.",
            "Hay un agujero pequeño en el fondo.",
            "Mete la aguja de plata en el agujero. El cajón secreto sale. Toma el dedal.",
            "Deja el dedal y mete el cajón secreto.",
        ],
        ["ja"] =
        [
            "裁縫箱", "かんぬき", "閉", "引いてある", "ふた", "閉じている", "開いている", "隠し引き出し",
            "しまってある", "出ている",
            "銀の針", "ふたの裏", "指ぬき", "隠し引き出しの中",
            "正面", "正面にかんぬきのある小さな箱です。", "正面を見てください。", "かんぬきは横に動きます。",
            "かんぬきを引いて、ふたを開けます。", "ふたを閉じます。",
            "内側", "ふたが開いています。", "中で何かが光っています。", "ふたのふちをよく見てください。",
            "ふたの裏から銀の針を取ります。",
            "銀の針をふたの裏に戻します。", "先がとがっています。手に向けないでください。",
            "底", "銀の針を持っています。", "底が必要以上に厚いようです。", "底に小さな穴があります。",
            "銀の針を穴に差し込みます。隠し引き出しが出てきます。指ぬきを取ります。",
            "指ぬきを戻し、隠し引き出しをしまいます。",
        ],
        ["ar"] =
        [
            "علبة الخياطة", "المزلاج", "مغلق", "مسحوب", "الغطاء", "منزّل", "مرفوع", "الدرج السري", "في الداخل",
            "في الخارج",
            "إبرة فضية", "تحت الغطاء", "كشتبان", "في الدرج السري",
            "الواجهة", "علبة صغيرة في واجهتها مزلاج.", "انظر إلى الواجهة.", "المزلاج ينزلق إلى الجانب.",
            "اسحب المزلاج وارفع الغطاء.", "أنزل الغطاء.",
            "الداخل", "الغطاء مرفوع.", "شيء يلمع هناك.", "انظر على طول حافة الغطاء.", "خذ الإبرة الفضية من تحت الغطاء.",
            "أعد الإبرة الفضية إلى تحت الغطاء.", "الطرف حاد. أبعده عن يدك.",
            "القاع", "في يدك الإبرة الفضية.", "القاع أسمك مما يلزم.", "في القاع ثقب صغير.",
            "أدخل الإبرة الفضية في الثقب. يخرج الدرج السري. خذ الكشتبان.", "أعد الكشتبان وأدخل الدرج السري.",
        ],
    };

    /// <summary>Writes the book in a language.</summary>
    public static BookOnDisk In(string language)
    {
        var text = Written[language];
        var book = new BookOnDisk().Without("stages/01-the-lid.md");
        book.With("book.yaml", $$"""
            format: 2
            title: "{{text[0]}}"
            maker: { name: Alder Row Workshop, help: mailto:help@alder-row.example }
            language: {{language}}
            address: https://alder-row.example/sewing/
            goal: [ thimble ]
            parts:
              bolt: { positions: { shut: "{{text[2]}}", drawn: "{{text[3]}}" }, name: "{{text[1]}}", free: true, seen: true }
              lid: { positions: { closed: "{{text[5]}}", open: "{{text[6]}}" }, name: "{{text[4]}}", seen: true }
              drawer: { positions: { in: "{{text[8]}}", out: "{{text[9]}}" }, name: "{{text[7]}}" }
            things:
              needle: { name: "{{text[10]}}", place: "{{text[11]}}", behind: { lid: open } }
              thimble: { name: "{{text[12]}}", place: "{{text[13]}}", behind: { drawer: out } }

            """);
        book.With("stages/01-the-front.yaml", $$"""
            title: "{{text[14]}}"
            sign: "{{text[15]}}"
            needs: [ { bolt: drawn } ]
            does: { lid: open }
            undo: { does: { lid: closed }, says: "{{text[19]}}" }
            nudge: "{{text[16]}}"
            clue: "{{text[17]}}"
            answer: "{{text[18]}}"

            """);
        book.With("stages/02-the-inside.yaml", $$"""
            title: "{{text[20]}}"
            sign: "{{text[21]}}"
            gives: [ needle ]
            undo: { put-back: [ needle ], says: "{{text[25]}}" }
            cautions: [ { kind: sharp-edge, note: "{{text[26]}}" } ]
            nudge: "{{text[22]}}"
            clue: "{{text[23]}}"
            answer: "{{text[24]}}"

            """);
        book.With("stages/03-the-bottom.yaml", $$"""
            title: "{{text[27]}}"
            sign: "{{text[28]}}"
            needs: [ needle ]
            does: { drawer: out }
            gives: [ thimble ]
            undo: { put-back: [ thimble ], does: { drawer: in }, says: "{{text[32]}}" }
            nudge: "{{text[29]}}"
            clue: "{{text[30]}}"
            answer: "{{text[31]}}"

            """);
        return book;
    }
}
