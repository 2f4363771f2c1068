namespace HintBook.Spoilers.Languages;

/// <summary>
/// How people tell the turns of a combination lock: <c>right to 28, left past it to 46</c>. Lists are words parted by spaces, without spaces between the
/// words of a language parts of a text. Chosen by hand: common practice, no source.
/// </summary>
internal sealed record TurnWords
{
    /// <summary>Ways to turn to the one side.</summary>
    public string Left { get; init; } = "";

    /// <summary>Ways to turn to the other side.</summary>
    public string Right { get; init; } = "";

    /// <summary>What a number stands before that only says how often one turns.</summary>
    public string Turns { get; init; } = "";

    /// <summary>Parts of a lock, and what one does with them.</summary>
    public string Locks { get; init; } = "";

    /// <summary>What one passes on a way through a town, a house or a book, where left and right turn no lock.</summary>
    public string Ways { get; init; } = "";

    /// <summary>Those of a language.</summary>
    public static TurnWords Of(string language) => language switch
    {
        "en" => new()
        {
            Left = "left leftwards leftward anticlockwise counterclockwise widdershins",
            Right = "right rightwards rightward clockwise",
            Turns = "turn turns time times revolution revolutions rotation rotations circle circles lap laps",
            Locks = "lock padlock safe vault dial knob combination handle tumbler strongbox turn turns spin twist past",
            Ways = "street road lane avenue house corner junction traffic roundabout motorway exit station platform bridge church shop door floor "
                + "room corridor "
                + "hall aisle seat page column row shelf drawer stand table gate path trail crossing signpost bus tram parking ear eye hand foot",
        },
        "de" => new()
        {
            Left = "links linksherum linksrum linkswärts gegen",
            Right = "rechts rechtsherum rechtsrum rechtswärts uhrzeigersinn",
            Turns = "mal umdrehung umdrehungen drehung drehungen runde runden",
            Locks = "schloss tresor geldschrank safe wählscheibe scheibe drehknopf knauf kombination griff drehen drehe dreh",
            Ways = "straße gasse weg allee haus ecke kreuzung ampel kreisel kreisverkehr autobahn ausfahrt bahnhof gleis bahnsteig brücke kirche "
                + "laden tür stock "
                + "stockwerk zimmer flur halle gang platz seite spalte reihe regal schublade fach stand tisch tor pfad bus haltestelle parkplatz ohr auge hand "
                + "fuß hausnummer",
        },
        "fr" => new()
        {
            Left = "gauche antihoraire",
            Right = "droite horaire",
            Turns = "tour tours fois",
            Locks = "serrure cadenas coffre fort molette cadran bouton combinaison poignée tournez tourner tourne",
            Ways = "rue route avenue chemin maison coin carrefour feu feux rond autoroute sortie gare quai pont église boutique porte étage chambre "
                + "couloir salle "
                + "allée place page colonne rangée étagère tiroir stand table portail sentier bus arrêt parking oreille oeil main pied numéro",
        },
        "es" => new()
        {
            Left = "izquierda izquierdas antihorario",
            Right = "derecha derechas horario",
            Turns = "vuelta vueltas vez veces giro giros",
            Locks = "cerradura candado caja fuerte dial disco rueda perilla combinación manivela gire girar gira hasta",
            Ways = "calle carretera avenida camino casa esquina cruce semáforo rotonda autopista salida estación andén puente iglesia tienda puerta "
                + "piso planta "
                + "habitación pasillo sala asiento página columna fila estante cajón puesto mesa verja sendero autobús parada aparcamiento oreja ojo mano pie "
                + "portal",
        },
        "ja" => new()
        {
            Left = "左 反時計",
            Right = "右 時計回",
            Turns = "度 回 周 巻",
            Locks = "錠 金庫 ダイヤル 目盛 回 合わせ 番号 暗証",
            Ways = "通り 道路 交差点 信号 角を 曲が 番地 駅 ホーム 橋 店 階 号室 廊下 席 頁 ページ 列 棚 引き出し 門 バス 停留所 丁目 歩",
        },
        "ar" => new()
        {
            Left = "يسار يسارا اليسار لليسار شمالا",
            Right = "يمين يمينا اليمين لليمين",
            Turns = "مرة مرات دورة دورات لفة لفات",
            Locks = "قفل القفل خزنة الخزنة قرص القرص أدر أدره أدرها المقبض مقبض حتى",
            Ways = "شارع الشارع طريق الطريق زقاق بيت البيت دار زاوية تقاطع التقاطع إشارة الإشارة دوار محطة المحطة رصيف الرصيف جسر الجسر مسجد المسجد دكان "
                + "الدكان باب الباب طابق الطابق غرفة الغرفة ممر الممر قاعة مقعد صفحة الصفحة عمود صف رف الرف درج الدرج طاولة بوابة حافلة موقف أذن عين يد قدم",
        },
        _ => new(),
    };
}
