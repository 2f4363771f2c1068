namespace HintBook.Ciphers.WaysOfReading;

/// <summary>What a word says in a time of day.</summary>
[Flags]
internal enum ClockRole
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>An article.</summary>
    Article = 1,

    /// <summary>Fifteen minutes.</summary>
    Quarter = 1 << 1,

    /// <summary>Thirty minutes.</summary>
    Half = 1 << 2,

    /// <summary>Forty-five minutes.</summary>
    ThreeQuarters = 1 << 3,

    /// <summary>Twenty minutes.</summary>
    Third = 1 << 4,

    /// <summary>Minutes before an hour.</summary>
    To = 1 << 5,

    /// <summary>Minutes after an hour.</summary>
    Past = 1 << 6,

    /// <summary>The same as <see cref="To"/> or <see cref="Past"/>, but only where minutes or a quarter are named: <c>ten before two</c> is no time.</summary>
    Named = 1 << 7,

    /// <summary>Minutes that are taken off the hour before: <c>moins</c>.</summary>
    Minus = 1 << 8,

    /// <summary>Between an hour and its minutes.</summary>
    And = 1 << 9,

    /// <summary>A number beside it is an hour.</summary>
    Hour = 1 << 10,

    /// <summary>A number before it is minutes.</summary>
    Minute = 1 << 11,

    /// <summary>Twelve in the day.</summary>
    Noon = 1 << 12,

    /// <summary>Twelve at night.</summary>
    Midnight = 1 << 13,

    /// <summary>Before noon.</summary>
    Morning = 1 << 14,

    /// <summary>After noon.</summary>
    Afternoon = 1 << 15,

    /// <summary>From evening to morning.</summary>
    Night = 1 << 16,

    /// <summary>Stands before the part of the day.</summary>
    Between = 1 << 17,

    /// <summary>A hand of a clock.</summary>
    Hand = 1 << 18,

    /// <summary>Which hand tells the hours.</summary>
    Small = 1 << 19,

    /// <summary>Which hand tells the minutes.</summary>
    Big = 1 << 20,
}

/// <summary>How times of day are said in a language. All words are from memory.</summary>
internal sealed record ClockWords
{
    private Dictionary<string, ClockRole> Roles { get; init; } = [];

    /// <summary>The number that begins at a token.</summary>
    public required Func<Token[], int, (int Number, int Words)?> NumberAt { get; init; }

    /// <summary>Hours by their own names, where they aren't numbers.</summary>
    public Func<Token[], int, (int Number, int Words)?>? HourAt { get; init; }

    /// <summary>What a word says, by its role; the words parted by spaces.</summary>
    public required (ClockRole Role, string Words)[] Words
    {
        init
        {
            foreach (var (role, words) in value)
            {
                foreach (var word in words.Split(' ').Select(Accents.Folded))
                    Roles[word] = Roles.GetValueOrDefault(word) | role;
            }
        }
    }

    /// <summary>Whether “half eleven” is half past ten.</summary>
    public bool IsHalfOfNext { get; init; }

    /// <summary>Whether minutes may follow an hour without any word between: <c>ten forty-five</c>.</summary>
    public bool HasBareMinutes { get; init; }

    /// <summary>Whether “and” and the article are written as one with the next word.</summary>
    public bool HasPrefixes { get; init; }

    /// <summary>The role of a word.</summary>
    public ClockRole RoleOf(string word) => Roles.GetValueOrDefault(HasPrefixes ? ArabicNumbers.Bare(word, Roles.ContainsKey) : word);

    /// <summary>All languages.</summary>
    public static ClockWords[] All { get; } =
    [
        new()
        {
            NumberAt = NumberNames.English.At,
            HasBareMinutes = true,
            Words =
            [
                (ClockRole.Article, "a the"), (ClockRole.Quarter, "quarter"), (ClockRole.Half, "half"),
                (ClockRole.To, "to till"), (ClockRole.Past, "past"), (ClockRole.To | ClockRole.Named, "before of"), (ClockRole.Past | ClockRole.Named, "after"),
                (ClockRole.Hour, "o'clock oclock sharp"),
                (ClockRole.Minute, "minutes minute"), (ClockRole.Noon, "noon midday"), (ClockRole.Midnight, "midnight"),
                (ClockRole.Morning, "am morning"), (ClockRole.Afternoon, "pm afternoon evening"), (ClockRole.Night, "night"),
                (ClockRole.Between, "in the at of"), (ClockRole.Hand, "hand hands"), (ClockRole.Small, "small short little hour"),
                (ClockRole.Big, "big long large minute"),
            ],
        },
        new()
        {
            NumberAt = NumberNames.German.At,
            IsHalfOfNext = true,
            Words =
            [
                (ClockRole.Quarter, "viertel"), (ClockRole.Half, "halb halbe"), (ClockRole.ThreeQuarters, "dreiviertel"), (ClockRole.To, "vor"),
                (ClockRole.Past, "nach"), (ClockRole.Hour, "uhr"), (ClockRole.Minute, "minuten minute"), (ClockRole.Noon, "mittag"),
                (ClockRole.Midnight, "mitternacht"), (ClockRole.Morning, "morgens früh morgen vormittags vormittag"),
                (ClockRole.Afternoon, "mittags nachmittags nachmittag abends abend"), (ClockRole.Night, "nachts nacht"), (ClockRole.Between, "am in der des"),
                (ClockRole.Hand, "zeiger stundenzeiger minutenzeiger"), (ClockRole.Small, "kleine kleiner kurze kurzer stundenzeiger"),
                (ClockRole.Big, "große großer lange langer minutenzeiger"),
            ],
        },
        new()
        {
            NumberAt = NumberNames.French.At,
            Words =
            [
                (ClockRole.Article, "le la les l un une"), (ClockRole.Quarter, "quart"), (ClockRole.Half, "demi demie"),
                (ClockRole.To | ClockRole.Named, "avant"), (ClockRole.Past | ClockRole.Named, "après"), (ClockRole.Minus, "moins"),
                (ClockRole.And, "et"), (ClockRole.Hour, "heures heure h"), (ClockRole.Minute, "minutes minute"), (ClockRole.Noon, "midi"),
                (ClockRole.Midnight, "minuit"), (ClockRole.Morning, "matin"), (ClockRole.Afternoon, "soir après"), (ClockRole.Night, "nuit"),
                (ClockRole.Between, "du de la l"), (ClockRole.Hand, "aiguille aiguilles"), (ClockRole.Small, "petite courte"),
                (ClockRole.Big, "grande longue"),
            ],
        },
        new()
        {
            NumberAt = NumberNames.Spanish.At,
            Words =
            [
                (ClockRole.Article, "la las el un"), (ClockRole.Quarter, "cuarto"), (ClockRole.Half, "media"), (ClockRole.To, "para"),
                (ClockRole.Minus, "menos"), (ClockRole.And, "y"), (ClockRole.Hour, "horas hora h punto"), (ClockRole.Minute, "minutos minuto"),
                (ClockRole.Noon, "mediodía"), (ClockRole.Midnight, "medianoche"), (ClockRole.Morning, "mañana madrugada"),
                (ClockRole.Afternoon, "tarde"), (ClockRole.Night, "noche"), (ClockRole.Between, "de la en por"),
                (ClockRole.Hand, "manecilla manecillas aguja agujas saeta"), (ClockRole.Small, "pequeña corta chica"), (ClockRole.Big, "grande larga"),
            ],
        },
        new()
        {
            NumberAt = ArabicNumbers.At,
            HourAt = Ordinals.ArabicAt,
            HasPrefixes = true,
            Words =
            [
                (ClockRole.Quarter, "ربع ربعا"), (ClockRole.Half, "نصف نصفا"), (ClockRole.Third, "ثلث ثلثا"),
                (ClockRole.Minus, "إلا"), (ClockRole.Hour, "ساعة"),
                (ClockRole.Minute, "دقيقة دقائق"), (ClockRole.Morning, "صباحا صباح فجرا"), (ClockRole.Afternoon, "ظهرا عصرا مساء ظهر عصر"),
                (ClockRole.Night, "ليلا ليل"), (ClockRole.Between, "في"), (ClockRole.Hand, "عقرب عقربا عقارب"),
                (ClockRole.Small, "قصير صغير ساعات"), (ClockRole.Big, "طويل كبير دقائق"),
            ],
        },
    ];
}
