namespace HintBook.Spoilers.Languages;

/// <summary>
/// How texts use the word for a thing without meaning one: "patience is the key", "click the button below", "thanks to Mr Key". Lists are words parted by
/// spaces, phrases parted by semicolons. Chosen by hand: common practice, no source.
/// </summary>
internal sealed record NotMeant
{
    private static NotMeant English { get; } = new()
    {
        Copulas = "is are was were be being remains becomes became",
        Abstract = "patience practice care calm time silence order thought luck trust teamwork persistence observation attention focus logic skill love",
        AbstractEndings = "ance ence ness ity tion sion ship hood ism",
        Screens =
            "click the; click on; click here; screen; website; web page; this page; of the page; browser; forum; online; download; e-mail; email; "
            + "scroll; hyperlink; the menu; internet; "
            + "connection; for the next hint; another hint; next hint",
        Titles = "mr mrs ms miss dr sir lady lord master",
        Topics =
            "first class post; postage; courier; by post; in the post; refund; invoice; discount; voucher; in our shop; gift shop; museum; "
            + "shop window; haberdasher; the price; per cent off; free of charge; newsletter; warranty; customs duty; delivery; our stall; "
            + "at the market; market stall; e-shop; credit card; bank transfer; spare parts; replacement part; visitors' book; visitors’ book; "
            + "guest book; as a child; childhood; apprentic; grew up; retired; years ago; her first; in those days; on the radio; wedding; "
            + "birthday; football; holiday; the newspaper; allerg; batteries",
        Reader = "you your yours youll youve",
    };

    private static NotMeant German { get; } = new()
    {
        Copulas = "ist sind war waren wird werden bleibt bleiben heißt",
        Abstract = "geduld übung ruhe sorgfalt zeit stille ordnung glück mut liebe fleiß ausdauer logik vertrauen beobachten nachdenken humor",
        AbstractEndings = "heit keit ung schaft tion tät mus enz anz",
        Screens =
            "klicken sie; klick auf; klicke auf; bildschirm; webseite; website; dieser seite; auf der seite; der seite unten; browser; forum; "
            + "online; herunterladen; e-mail; scrollen; "
            + "internet; nächsten hinweis; nächsten tipp; verbindung",
        Titles = "herr herrn frau familie meister doktor dr",
        Topics =
            "porto; paket; versand; lieferung; bestell; auf rechnung; rabatt; gutschein; im laden; museum; schaufenster; kundendienst; "
            + "garantie; retoure; rückgabe; newsletter; am stand; ersatzteil; als kind; kindheit; lehrling; lehrzeit; aufgewachsen; damals; "
            + "hochzeit; geburtstag; urlaub; landstraße; bitte langsam fahren; zeitung; brandfall; besucherbuch; gästebuch; spülmaschine",
        Reader = "sie ihnen ihr ihre ihren ihrem ihrer du dich dir dein deine deinen euch euer",
    };

    private static NotMeant French { get; } = new()
    {
        Copulas = "est sont était étaient sera reste devient voilà",
        Abstract = "patience calme temps silence ordre chance amour logique soin courage travail pratique",
        AbstractEndings = "ance ence esse ité tion sion isme tude",
        Screens =
            "clique; écran; site web; page web; cette page; de la page; navigateur; forum; en ligne; télécharge; courriel; défiler; internet; ci-dessous; "
            + "indice suivant; connexion",
        Titles = "m monsieur madame mme mademoiselle maître",
        Topics =
            "colis; frais de port; livraison; passé commande; passer commande; bon de commande; facture; remise de; rabais; bon d'achat; "
            + "boutique; musée; en vitrine; mercerie; garantie; newsletter; service client; pièces de rechange; au marché; enfance; apprenti; "
            + "l'an dernier; à l'époque; mariage; anniversaire; vacances; le journal; livre d'or",
        Reader = "vous votre vos tu te ton ta tes toi",
    };

    private static NotMeant Spanish { get; } = new()
    {
        Copulas = "es son era eran será sigue queda",
        Abstract = "paciencia calma tiempo silencio orden suerte amor lógica práctica trabajo esfuerzo cuidado",
        AbstractEndings = "ancia encia anza dad tad ción sión miento ismo ez",
        Screens =
            "clic; pantalla; sitio web; página web; esta página; de la página; navegador; foro; en línea; descarga; correo electrónico; internet; "
            + "pista siguiente; "
            + "siguiente pista; conexión",
        Titles = "señor señora don doña sr sra maestro",
        Topics =
            "gastos de envío; envío; pedido; factura; descuento; vale de; en la tienda; museo; escaparate; mercería; garantía; devolución; "
            + "boletín; atención al cliente; recambio; mercado; de niño; de niña; infancia; aprendiz; en aquella época; boda; cumpleaños; "
            + "vacaciones; periódico; libro de visitas; se vende; de postre",
        Reader = "usted ustedes tú te tu tus su sus",
    };

    private static NotMeant Japanese { get; } = new()
    {
        Screens = "画面; ページ; サイト; クリック; タップ; ブラウザ; 次のヒント; リンク; ネット",
        Topics =
            "資料館; 博物館; 販売; 送料; 郵送; 返品; 百円; 千円; 価格; 注文; お土産; 領収; 子どものころ; 子供の頃; 手を洗って; お便り; 誕生日; 雑誌で; 屋号",
    };

    private static NotMeant Arabic { get; } = new()
    {
        Copulas = "هو هي هما",
        Abstract = "صبر وقت حب هدوء عمل تركيز حظ علم",
        Screens = "هذه الصفحة; الشاشة; الموقع; المتصفح; انقر; التلميح التالي; الإنترنت",
        Titles = "السيد السيدة الشيخ الأستاذ المعلم",
        SonOf = "بن ابن بنت",
        Topics =
            "الطرد; البريد; الشحن; التوصيل; السعر; الفاتورة; خصم; متجر; متحف; واجهة المحل; الضمان; في طفولتي; العرس; عيد ميلاد; فطوره",
    };

    /// <summary>That of a language.</summary>
    public static NotMeant Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ja" => Japanese,
        "ar" => Arabic,
        _ => new(),
    };

    /// <summary>What stands between what something is said to be and what it is said of.</summary>
    public string Copulas { get; init; } = "";

    /// <summary>What can't be a thing, so that whatever it is said to be isn't one either.</summary>
    public string Abstract { get; init; } = "";

    /// <summary>How such words end.</summary>
    public string AbstractEndings { get; init; } = "";

    /// <summary>What speaks of the page on which a text is read.</summary>
    public string Screens { get; init; } = "";

    /// <summary>What stands before the name of a person.</summary>
    public string Titles { get; init; } = "";

    /// <summary>What stands behind one.</summary>
    public string SonOf { get; init; } = "";

    /// <summary>What speaks of post, shops, museums and the author's life.</summary>
    public string Topics { get; init; } = "";

    /// <summary>Words for who reads: a sentence that has one may tell something all the same.</summary>
    public string Reader { get; init; } = "";
}
