namespace HintBook.Spoilers.Languages;

/// <summary>The English words that a reader skips, stops at, or counts with. Chosen by hand: common practice, no source.</summary>
internal static class English
{
    private const string Determiners = "a an the this that these those my your his her its our their some any each every both";

    private const string Prepositions =
        "of under in inside on from with behind about for at to by over beneath below above between beside near into onto off per";

    private const string Functions =
        "and or but nor so yet if then than as is are was were be been being am has have had do does did can could will would shall should may might must "
        + "not no never i you he she it we they me him them us who whom whose which what when where why how there here out up down through until while "
        + "because although though before after again also too very just only even once now still more most less least all none back away goes "
        + "go went come comes came get gets got let lets put puts take takes took make makes made turn turns hold holds held look looks see sees saw "
        + "find finds found fit fits need needs want wants keep keeps give gives gave lie lies lay stand stands stood open opens close closes shut shuts "
        + "say says said move moves lift lifts pull pulls push pushes press presses use uses slide slides point points show shows hide hides "
        + "wear wears hang hangs "
        + "dont doesnt didnt isnt arent wasnt werent cant cannot wont wouldnt couldnt shouldnt hasnt havent hadnt youre youve youll theyre "
        + "theyve weve ive im thats theres lets";

    private const string InNumbers = "and then a an the by next followed finally lastly";

    private const string EverydayWords =
        "box key lid door drawer pin hole wheel button card letter number word code note paper wood lock latch catch handle knob hinge panel side top bottom "
        + "front back base foot corner edge wall floor roof cover tray case slot groove hook ring rod bar peg plug cap coin ball chain string "
        + "wire spring magnet "
        + "mirror glass picture photo image text line verse rhyme riddle clue hint answer figure digit symbol sign mark arrow colour color shape star circle "
        + "square tool part piece thing object item token ticket map book page label table light lamp candle switch dial clock hand finger eye head body tail "
        + "small large big little long short round flat old new left right first second last red blue green yellow white black secret hidden inner outer main "
        + "way name time day year order place gap space end start step move turn click sound weight bolt screw nail board block frame";

    private static readonly Dictionary<string, (int Value, int Kind)> Figures = Numbers();

    public static SearchLanguage Language { get; } = new()
    {
        Code = "en",
        Clock = ClockWords.English,
        Pieces = PieceWords.English,
        Objects = ObjectWords.English,
        Reckoning = ReckonWords.English,
        Variants =
            "gold/golden/gilded/gilt wood/wooden wool/woollen/woolen silk/silken wax/waxen lead/leaden flax/flaxen birch/birchen beech/beechen "
            + "earth/earthen oak/oaken grey/gray "
            + "sulphur/sulfur plough/plow axe/ax aluminium/aluminum jewellery/jewelry cheque/check moustache/mustache draught/draft "
            + "pyjamas/pajamas kerb/curb gauge/gage whisky/whiskey aeroplane/airplane tyre/tire cosy/cozy programme/program "
            + "manoeuvre/maneuver phial/vial disc/disk theatre/theater",
        FormsOf = WordForms.English,
        Determiners = Determiners,
        Prepositions = Prepositions,
        Functions = Functions,
        InNumbers = InNumbers,
        And = "and",
        Everyday = EverydayWords,
        Figures = [.. Figures.Select(pair => (pair.Key, new Figure(pair.Value.Value, (FigureKind)pair.Value.Kind)))],
        Fold = EnglishForms.Fold,
    };

    private static Dictionary<string, (int, int)> Numbers()
    {
        var figures = new Dictionary<string, (int, int)>();
        string[] small = ("zero one two three four five six seven eight nine ten "
            + "eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen").Split(' ');
        string[] tens = "twenty thirty forty fifty sixty seventy eighty ninety".Split(' ');
        foreach (var (value, word) in small.Index())
            figures[word] = (value, (int)FigureKind.Small);
        foreach (var (index, word) in tens.Index())
            figures[word] = ((index + 2) * 10, (int)FigureKind.Tens);
        foreach (var word in new[] { "oh", "nought", "naught", "nil", "null" })
            figures[word] = (0, (int)FigureKind.Small);
        figures["fourty"] = (40, (int)FigureKind.Tens);
        figures["hundred"] = (100, (int)FigureKind.Scale);
        figures["thousand"] = (1000, (int)FigureKind.Scale);
        figures["double"] = (2, (int)FigureKind.Again);
        figures["triple"] = (3, (int)FigureKind.Again);
        figures["treble"] = (3, (int)FigureKind.Again);
        return figures;
    }
}
