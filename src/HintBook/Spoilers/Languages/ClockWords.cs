namespace HintBook.Spoilers.Languages;

/// <summary>How people say times by the clock. Lists are words parted by spaces. Chosen by hand: common practice, no source.</summary>
internal sealed record ClockWords
{
    public static ClockWords English { get; } = new()
    {
        Before = "to before till until of off shy short ere",
        After = "past after gone",
        Half = "half",
        Quarter = "quarter",
        Hour = "oclock h hr",
        Lasting = "hour",
        Minute = "minute min",
        Twelve = "noon midday midnight",
        Hand = "hand pointer",
        HourLabel = "hour hours",
        MinuteLabel = "minute minutes",
        HourHand = "hour short small little shorter smaller stubby",
        MinuteHand = "minute long large big longer larger tall bigger",
        Down = "down",
        Up = "up upright",
        Third = "third",
        Later = "wait more later after past on passed gone elapsed since ago forward add plus further onward onwards beyond",
        Earlier = "in until till before to left remaining short early earlier back wanting wants lacking lacks missing shy ahead less minus from now",
        OtherHand = "other fellow companion partner mate twin counterpart sibling brother sister neighbor neighbour",
        Both = "both",
        NoTime = "against vote voted votes score scored won lost beat odds ratio majority aged ages scale",
    };

    public static ClockWords German { get; } = new()
    {
        Before = "vor",
        After = "nach",
        Half = "halb halbe",
        Quarter = "viertel viertelstunde",
        ThreeQuarters = "dreiviertel dreiviertelstunde",
        Hour = "uhr h",
        Lasting = "stunde",
        Minute = "minute min",
        Twelve = "mittag mittags mitternacht",
        Hand = "zeiger",
        HourLabel = "stunde stunden stundenzeiger stundenring stundenrad stundenscheibe",
        MinuteLabel = "minute minuten minutenzeiger minutenring minutenrad minutenscheibe",
        HourHand = "kleine kurze stundenzeiger",
        MinuteHand = "große lange minutenzeiger",
        Down = "unten",
        Up = "oben",
        HalfOfNext = true,
        Third = "drittel drittelstunde",
        Later = "warten warte wartet gewartet nach später vergangen vergangene vorbei weiter dazu seit her danach plus verstrichen",
        Earlier = "in noch bis fehlen fehlt vor ehe früher zurück minus weniger",
        OtherHand = "andere anderer bruder gefährte kollege",
        Both = "beide",
        NoTime = "stimmen gegen verhältnis gewonnen verloren maßstab massstab",
    };

    public static ClockWords French { get; } = new()
    {
        Before = "moins avant",
        After = "après passé",
        Half = "demi demie",
        Quarter = "quart",
        Hour = "heure h",
        Minute = "minute min mn",
        Twelve = "midi minuit",
        Hand = "aiguille",
        HourLabel = "heure heures",
        MinuteLabel = "minute minutes",
        HourHand = "petite courte",
        MinuteHand = "grande longue",
        Down = "bas",
        Up = "haut",
        HasArticles = true,
        HasMinutesBehind = true,
        Third = "tiers",
        Later = "attendez attends attendre après plus passé passées passés depuis tard écoulées écoulé sonné avancez",
        Earlier = "dans avant encore manque manquent reste moins d'ici plus tôt",
        OtherHand = "autre compagne sœur",
        Both = "deux",
        NoTime = "contre voix échelle rapport",
    };

    public static ClockWords Spanish { get; } = new()
    {
        Before = "menos para",
        After = "pasadas",
        Half = "media",
        Quarter = "cuarto",
        Hour = "hora h",
        Minute = "minuto min",
        Twelve = "mediodía medianoche",
        Hand = "manecilla aguja saeta",
        HourLabel = "hora horas",
        MinuteLabel = "minuto minutos",
        HourHand = "pequeña corta chica horaria",
        MinuteHand = "grande larga minutera minutero",
        Down = "abajo",
        Up = "arriba",
        HasArticles = true,
        HasMinutesBehind = true,
        Third = "tercio",
        Later = "espera espere esperar más después pasado pasados pasadas más tarde transcurridos hace desde pasan pasaban pasaron",
        Earlier = "en dentro faltan falta quedan queda antes menos para",
        OtherHand = "otra compañera hermana",
        Both = "ambas dos",
        NoTime = "contra votos escala proporción",
    };

    public static ClockWords Japanese { get; } = new()
    {
        Before = "前 で",
        After = "過",
        Half = "半",
        Hour = "時",
        Minute = "分",
        Hand = "針",
        HourLabel = "時",
        MinuteLabel = "分",
        HourHand = "短",
        MinuteHand = "長",
        Down = "下",
        Up = "上",
        HasMinutesBehind = true,
        Later = "待 足 加 過 経 後 進 ら",
        NoTime = "縮 尺 対 勝 負 敗",
        Earlier = "あ 前 で 後 戻",
    };

    public static ClockWords Arabic { get; } = new()
    {
        Before = "إلا على قبل",
        After = "بعد",
        Half = "نصف النصف",
        Quarter = "ربع ربعا الربع",
        Third = "ثلث ثلثا الثلث",
        Hour = "ساعة",
        Minute = "دقيقة دقائق",
        Hand = "عقرب",
        HourLabel = "ساعة ساعات",
        MinuteLabel = "دقيقة دقائق",
        HourHand = "قصير صغير",
        MinuteHand = "طويل كبير",
        Down = "أسفل",
        Up = "أعلى",
        Hours = "واحدة ثانية ثالثة رابعة خامسة سادسة سابعة ثامنة تاسعة عاشرة",
        First = "حادية",
        Ten = "عشرة",
        HasArticles = true,
        HasMinutesBehind = true,
        Later = "انتظر أضف بعد مضى مضت مر مرت زائد مرور",
        Earlier = "بعد قبل بقي بقيت إلا باق يبقى تبقى خلال",
        OtherHand = "آخر أخرى",
        Both = "كلا",
        NoTime = "مقياس",
    };

    /// <summary>What minutes are that are taken off an hour.</summary>
    public string Before { get; init; } = "";

    /// <summary>What minutes are that are added to an hour.</summary>
    public string After { get; init; } = "";

    public string Half { get; init; } = "";

    public string Quarter { get; init; } = "";

    public string ThreeQuarters { get; init; } = "";

    /// <summary>Twenty minutes.</summary>
    public string Third { get; init; } = "";

    /// <summary>What says that an amount of minutes has passed since an hour.</summary>
    public string Later { get; init; } = "";

    /// <summary>What says that it passes before an hour comes.</summary>
    public string Earlier { get; init; } = "";

    /// <summary>What one of two hands is called beside the other.</summary>
    public string OtherHand { get; init; } = "";

    /// <summary>Both of two hands.</summary>
    public string Both { get; init; } = "";

    /// <summary>Words beside numbers that only look like a time: <c>voted five to two</c>.</summary>
    public string NoTime { get; init; } = "";

    /// <summary>What stands beside an hour.</summary>
    public string Hour { get; init; } = "";

    /// <summary>What makes a length of time of a number before it, and minutes of a half and a quarter.</summary>
    public string Lasting { get; init; } = "";

    public string Minute { get; init; } = "";

    /// <summary>Noon and midnight.</summary>
    public string Twelve { get; init; } = "";

    /// <summary>The hands of a clock.</summary>
    public string Hand { get; init; } = "";

    /// <summary>What a number beside it makes an hour: <c>hours: 7</c>.</summary>
    public string HourLabel { get; init; } = "";

    /// <summary>The same for minutes.</summary>
    public string MinuteLabel { get; init; } = "";

    public string HourHand { get; init; } = "";

    public string MinuteHand { get; init; } = "";

    /// <summary>Where the minute hand points at half past.</summary>
    public string Down { get; init; } = "";

    /// <summary>Where it points on the hour.</summary>
    public string Up { get; init; } = "";

    /// <summary>Ordinals that say hours, from one; empty where number words do.</summary>
    public string Hours { get; init; } = "";

    /// <summary>The first part of eleven, where that isn't the word for one.</summary>
    public string First { get; init; } = "";

    /// <summary>The second part of eleven and twelve.</summary>
    public string Ten { get; init; } = "";

    /// <summary>Whether "half eleven" is half past ten, and "quarter eleven" a quarter past ten.</summary>
    public bool HalfOfNext { get; init; }

    /// <summary>Whether hours have articles.</summary>
    public bool HasArticles { get; init; }

    /// <summary>Whether minutes that are taken off stand behind the hour as well.</summary>
    public bool HasMinutesBehind { get; init; }
}
