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
    };

    private static NotMeant Japanese { get; } = new()
    {
        Screens = "画面; ページ; サイト; クリック; タップ; ブラウザ; 次のヒント; リンク; ネット",
    };

    private static NotMeant Arabic { get; } = new()
    {
        Copulas = "هو هي هما",
        Abstract = "صبر وقت حب هدوء عمل تركيز حظ علم",
        Screens = "هذه الصفحة; الشاشة; الموقع; المتصفح; انقر; التلميح التالي; الإنترنت",
        Titles = "السيد السيدة الشيخ الأستاذ المعلم",
        SonOf = "بن ابن بنت",
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
}
