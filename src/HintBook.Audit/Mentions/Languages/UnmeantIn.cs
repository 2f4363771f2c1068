namespace HintBook.Audit.Mentions.Languages;

/// <summary>
/// Talk in which the word for a thing means none: what something like patience is, what is pressed on the page itself, a person's name, and hours at which
/// somebody is there. Words are parted by spaces, phrases by commas. From memory.
/// </summary>
/// <param name="Qualities">Nouns that name no thing.</param>
/// <param name="QualityEndings">How such nouns end.</param>
/// <param name="OnScreen">Phrases about the page or the device on which a text is read.</param>
/// <param name="BeforeNames">What stands before a person's name.</param>
/// <param name="InNames">What stands behind the first of two names.</param>
/// <param name="Hours">Phrases about opening hours.</param>
/// <param name="Days">Days of the week, two of which mean opening hours as well.</param>
internal sealed record UnmeantIn(
    string Qualities, string QualityEndings, string OnScreen, string BeforeNames, string InNames, string Hours, string Days)
{
    /// <summary>Phrases about post, shops, museums and the author's life.</summary>
    public string Topics { get; init; } = "";

    /// <summary>Words for who reads: a sentence that has one may tell something all the same.</summary>
    public string Reader { get; init; } = "";

    private static UnmeantIn English { get; } = new(
        "patience practice perseverance care calmness quiet time luck order trust teamwork humour humor logic skill love focus curiosity",
        "ness ance ence tion sion ity ship hood",
        "this page, of the page, on the screen, your screen, website, web page, browser, click on, click the, click here, online, forum, hyperlink, next hint, "
        + "another hint, internet, connection, e-mail, email, download, scroll",
        "mr mrs ms miss dr sir madam",
        "",
        "opening hours, opening times, open from, we are open, office hours, by appointment, we open, we close, "
        + "on mondays, on tuesdays, on wednesdays, on thursdays, on fridays, on saturdays, on sundays, trains leave, call us, ring us, phone us",
        "mon tue wed thu fri sat sun monday tuesday wednesday thursday friday saturday sunday")
    {
        Topics =
            "first class post, postage, courier, by post, in the post, refund, invoice, discount, voucher, in our shop, gift shop, museum, "
            + "shop window, haberdasher, the price, per cent off, free of charge, newsletter, warranty, customs duty, delivery, our stall, "
            + "at the market, market stall, e-shop, credit card, bank transfer, spare parts, replacement part, visitors' book, visitors’ book, "
            + "guest book, as a child, childhood, apprentic, grew up, retired, years ago, her first, in those days, on the radio, wedding, "
            + "birthday, football, holiday, the newspaper, allerg, batteries",
        Reader = "you your yours you’ll you’ve",
    };

    private static UnmeantIn German { get; } = new(
        "geduld übung ruhe zeit glück mut liebe fleiß humor logik neugier vertrauen ausdauer",
        "heit keit ung schaft tion tät",
        "dieser seite, auf der seite, bildschirm, webseite, website, browser, klicken sie, klick auf, online, forum, nächsten hinweis, "
        + "nächsten tipp, internet, "
        + "verbindung, e-mail, herunterladen, scrollen",
        "herr herrn frau familie dr fräulein",
        "",
        "öffnungszeit, geöffnet, sprechzeit, wir öffnen, wir schließen, züge fahren, montags, dienstags, mittwochs, donnerstags, freitags, samstags, sonntags, "
        + "nach vereinbarung, sprechstunde, besuchszeit, rufen sie, ruft uns, anrufen",
        "mo di mi do fr sa so montag dienstag mittwoch donnerstag freitag samstag sonntag")
    {
        Topics =
            "porto, paket, versand, lieferung, bestell, auf rechnung, rabatt, gutschein, im laden, museum, schaufenster, kundendienst, "
            + "garantie, retoure, rückgabe, newsletter, am stand, ersatzteil, als kind, kindheit, lehrling, lehrzeit, aufgewachsen, damals, "
            + "hochzeit, geburtstag, urlaub, landstraße, bitte langsam fahren, zeitung, brandfall, besucherbuch, gästebuch, spülmaschine",
        Reader = "sie ihnen ihr ihre ihren ihrem ihrer du dich dir dein deine deinen euch euer",
    };

    private static UnmeantIn French { get; } = new(
        "patience calme temps silence chance amour logique soin courage pratique confiance",
        "ance ence esse ité tion sion isme",
        "cette page, de la page, écran, site web, page web, navigateur, cliquez, cliquer, en ligne, forum, indice suivant, internet, connexion, "
        + "courriel, ci-dessous",
        "m monsieur madame mme mademoiselle maître",
        "",
        "heures d'ouverture, heures d’ouverture, horaires, nous ouvrons, nous fermons, tournée, trains partent, "
        + "est ouvert, ouvert de, ouverte de, ouvert du, ouverte du, sur rendez-vous, appelez, téléphone",
        "lundi mardi mercredi jeudi vendredi samedi dimanche")
    {
        Topics =
            "colis, frais de port, livraison, passé commande, passer commande, bon de commande, facture, remise de, rabais, bon d'achat, "
            + "boutique, musée, en vitrine, mercerie, garantie, newsletter, service client, pièces de rechange, au marché, enfance, apprenti, "
            + "l'an dernier, à l'époque, mariage, anniversaire, vacances, le journal, livre d'or",
        Reader = "vous votre vos tu te ton ta tes toi",
    };

    private static UnmeantIn Spanish { get; } = new(
        "paciencia calma tiempo silencio suerte amor lógica práctica esfuerzo cuidado",
        "ancia encia anza dad tad ción sión",
        "esta página, de la página, pantalla, sitio web, página web, navegador, clic, en línea, foro, pista siguiente, siguiente pista, internet, conexión, "
        + "correo electrónico",
        "señor señora don doña sr sra",
        "",
        "horario, los lunes, los martes, los miércoles, los jueves, los viernes, los sábados, los domingos, "
        + "abierto de, abierta de, abre de, abrimos, cerramos, trenes salen, cita previa, no llame, llámenos, llame a, teléfono",
        "lunes martes miércoles jueves viernes sábado domingo")
    {
        Topics =
            "gastos de envío, envío, pedido, factura, descuento, vale de, en la tienda, museo, escaparate, mercería, garantía, devolución, "
            + "boletín, atención al cliente, recambio, mercado, de niño, de niña, infancia, aprendiz, en aquella época, boda, cumpleaños, "
            + "vacaciones, periódico, libro de visitas, se vende, de postre",
        Reader = "usted ustedes tú te tu tus su sus",
    };

    private static UnmeantIn Arabic { get; } = new(
        "الصبر صبر الوقت الهدوء التركيز الحظ العمل الحب",
        "",
        "هذه الصفحة, الشاشة, الموقع, المتصفح, انقر, التلميح التالي, الإنترنت",
        "السيد السيدة الشيخ الأستاذ",
        "بن ابن بنت",
        "ساعات العمل, أوقات استقبال, مواعيد, مفتوحة من, تنطلق القطارات, مفتوح من, أوقات الدوام, يفتح من, تتصل, اتصل",
        "الأحد الاثنين الثلاثاء الأربعاء الخميس الجمعة السبت")
    {
        Topics =
            "الطرد, البريد, الشحن, التوصيل, السعر, الفاتورة, خصم, متجر, متحف, واجهة المحل, الضمان, في طفولتي, العرس, عيد ميلاد, فطوره",
    };

    private static UnmeantIn Japanese { get; } = new(
        "",
        "",
        "画面, ページ, サイト, クリック, タップ, ブラウザ, 次のヒント, リンク",
        "",
        "",
        "営業, 平日, 閉店, 列車は, 開館, 定休, 受付時間, 開店, 開いて, 開けて, 時に開き, 時に閉ま, 分に閉ま, お待たせ, 店を閉め, 電話",
        "")
    {
        Topics =
            "資料館, 博物館, 販売, 送料, 郵送, 返品, 百円, 千円, 価格, 注文, お土産, 領収, 子どものころ, 子供の頃, 手を洗って, お便り, 誕生日, 雑誌で, 屋号",
    };

    private static UnmeantIn None { get; } = new("", "", "", "", "", "", "");

    /// <summary>That of a language.</summary>
    public static UnmeantIn Of(string language) => language switch
    {
        "en" => English,
        "de" => German,
        "fr" => French,
        "es" => Spanish,
        "ar" => Arabic,
        "ja" => Japanese,
        _ => None,
    };
}
