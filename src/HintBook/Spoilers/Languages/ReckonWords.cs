namespace HintBook.Spoilers.Languages;

/// <summary>How people reckon in words. Lists are words parted by spaces. Chosen by hand: common practice, no source.</summary>
internal sealed record ReckonWords
{
    public static ReckonWords English { get; } = new()
    {
        Twice = "twice double doubling doubled",
        Thrice = "thrice triple treble",
        Half = "half halve halved",
        Times = "times multiplied",
        Plus = "plus",
        Minus = "minus less take subtract deduct",
        More = "more above beyond over past greater larger higher bigger after up beats exceeds exceed tops",
        Less = "less below under short shy fewer smaller lower before down off",
        Squared = "squared itself",
        Sum = "sum add total adding together",
        Difference = "difference subtract take deduct taken subtracted",
        Multiples = "dozen:12 score:20 gross:144",
    };

    public static ReckonWords German { get; } = new()
    {
        Twice = "zweimal doppelte doppelt verdopple verdoppelt verdoppeln",
        Thrice = "dreimal dreifache",
        Half = "hälfte halbiert halbiere",
        Times = "mal",
        Plus = "plus",
        Minus = "minus weniger",
        More = "mehr größer über höher",
        Less = "weniger kleiner unter",
        Squared = "quadrat selbst sich",
        Sum = "summe addiere zusammen",
        Difference = "differenz zieh ziehe abgezogen fehlen fehlt",
        Reaching = "bis zu auf an",
        Multiples = "dutzend:12 schock:60",
    };

    public static ReckonWords French { get; } = new()
    {
        Twice = "double doublez doublé",
        Thrice = "triple",
        Half = "moitié",
        Times = "fois multiplié",
        Plus = "plus",
        Minus = "moins ôté",
        More = "plus",
        Less = "moins",
        Squared = "carré même",
        Sum = "somme ajoutez additionnez",
        Difference = "différence retranchez ôtez soustrayez manque manquent faut",
        Reaching = "faire atteindre arriver",
        Multiples = "douzaine:12 dizaine:10 vingtaine:20",
    };

    public static ReckonWords Spanish { get; } = new()
    {
        Twice = "doble",
        Thrice = "triple",
        Half = "mitad",
        Times = "veces por multiplicado",
        Plus = "más",
        Minus = "menos faltan falta",
        More = "más",
        Less = "menos",
        Squared = "cuadrado mismo",
        Sum = "suma sume",
        Difference = "diferencia reste resta faltan falta",
        Reaching = "llegar alcanzar hacer",
        Multiples = "docena:12 decena:10 veintena:20",
    };

    public static ReckonWords Japanese { get; } = new()
    {
        Times = "掛 倍 乗",
        Plus = "足 加",
        Minus = "引 減",
        More = "大 多",
        Less = "小 少",
        Short = "足 及",
    };

    public static ReckonWords Arabic { get; } = new()
    {
        Twice = "ضعف ضعفا",
        Half = "نصف",
        Times = "ضرب مضروبا مضروبة مرات",
        Plus = "زائد",
        Minus = "ناقص إلا",
        More = "أكثر أكبر يزيد فوقها فوقه",
        Less = "أقل أصغر ينقص",
        Squared = "نفسه نفسها تربيع",
        Sum = "مجموع اجمع",
        Difference = "فرق اطرح",
        Multiples = "دزينة:12",
    };

    /// <summary>What doubles the number behind it.</summary>
    public string Twice { get; init; } = "";

    public string Thrice { get; init; } = "";

    public string Half { get; init; } = "";

    /// <summary>What multiplies the numbers beside it.</summary>
    public string Times { get; init; } = "";

    public string Plus { get; init; } = "";

    public string Minus { get; init; } = "";

    /// <summary>What says that the number behind it is the smaller: "one more than".</summary>
    public string More { get; init; } = "";

    public string Less { get; init; } = "";

    /// <summary>What says that the number before it is multiplied by itself, alone or behind what multiplies.</summary>
    public string Squared { get; init; } = "";

    /// <summary>What adds two numbers behind it.</summary>
    public string Sum { get; init; } = "";

    /// <summary>What takes one of two numbers behind it from the other.</summary>
    public string Difference { get; init; } = "";

    /// <summary>What stands between what is lacking and the number that is reached: "two are lacking to reach 620".</summary>
    public string Reaching { get; init; } = "";

    /// <summary>What says, behind two numbers, that the first is lacking the second.</summary>
    public string Short { get; init; } = "";

    /// <summary>What multiplies the number before it: <c>dozen:12</c>.</summary>
    public string Multiples { get; init; } = "";
}
