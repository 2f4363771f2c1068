namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Colours that stand for figures.</summary>
internal static class Colours
{
    // Black to white, in the order of the figures 0 to 9; in English, German, French, Spanish, Arabic and Japanese, from memory.
    private static readonly string[] Names =
    [
        "black schwarz noir noire negro negra أسود سوداء 黒 黒い",
        "brown braun brun brune marron marrón بني بنية 茶 茶色",
        "red rot rouge rojo roja أحمر حمراء 赤 赤い",
        "orange naranja برتقالي برتقالية 橙 オレンジ",
        "yellow gelb jaune amarillo amarilla أصفر صفراء 黄 黄色 黄色い",
        "green grün vert verte verde أخضر خضراء 緑",
        "blue blau bleu bleue azul أزرق زرقاء 青 青い",
        "violet purple violett lila violette violeta morado morada بنفسجي بنفسجية 紫",
        "grey gray grau gris grise رمادي رمادية 灰 灰色",
        "white weiß weiss blanc blanche blanco blanca أبيض بيضاء 白 白い",
    ];

    private static readonly string[] GermanEndings = ["e", "er", "es", "en", "em"];
    private static readonly string[] German = ["schwarz", "braun", "rot", "gelb", "grün", "blau", "violett", "grau", "weiß"];

    private static readonly Lookup Resistor = Table("0123456789", figures: "0123456789");
    private static readonly Lookup QueenLow = Table("94256", figures: "12345");
    private static readonly Lookup QueenHigh = Table("94256", figures: "67890");

    private const string Ohms = "ohms";

    /// <summary>
    /// The figures of a resistor's colours, or its value in ohms: of three or four bands two figures, of five or six three, and as many noughts as the next one
    /// says (IEC 60062:2016); what stands behind is the tolerance.
    /// </summary>
    public static Way Resistors { get; } = new()
    {
        Name = "resistor-colours",
        Says = "The figure of each colour on a resistor: black is 0, white is 9; with “ohms” what three to six bands are worth: yellow, violet, red is 4700.",
        Source = "IEC 60062:2016; purple is taken for violet, gray for grey; names in six languages.",
        Told = new("nothing or “ohms”", Ohms, Needed: false),
        Conventions = told => told is [Ohms]
            ? [new([], "taking a figure for each ring") { When = Invitations.ToResistors }]
            : [new([Ohms], "reckoning what the resistor is worth in ohms") { When = Invitations.ToResistors }],
        Read = (text, told) => (told, Resistor.Read(text, $"no colour of a resistor stands in {TextPieces.Quoted(text)}")) switch
        {
            ([], var read) => read,
            ([Ohms], ReadingResult.Gave { Rows.Length: < 3 or > 6 } gave) =>
                new ReadingResult.Stuck($"a resistor has three to six rings, and {gave.Rows.Length} stand there"),
            ([Ohms], ReadingResult.Gave gave) => Worth(gave),
            ([Ohms], ReadingResult.Unread { Rest.Rows.Length: >= 3 and <= 6 } unread) => unread with { Rest = Worth(unread.Rest) },
            ([Ohms], var read) => read,
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} isn't “{Ohms}”"),
        },
    };

    /// <summary>Beekeepers mark a queen by the last figure of her year: white for 1 and 6, yellow 2 and 7, red 3 and 8, green 4 and 9, blue 5 and 0.</summary>
    public static Way Queens { get; } = new()
    {
        Name = "queen-colours",
        Says = "The figure of each colour that marks queen bees: white is 1, yellow 2, red 3, green 4, blue 5; with “6-0” 6, 7, 8, 9 and 0.",
        Source = "Common practice of beekeepers.",
        Told = new("“1-5” or “6-0”", "6-0", Needed: false),
        Conventions = told => told is ["6-0"]
            ? [new(["1-5"], "taking years that end in 1 to 5") { When = Invitations.ToQueensOfAnyYear }]
            : [new(["6-0"], "taking years that end in 6 to 0") { When = Invitations.ToQueensOfAnyYear }],
        Read = (text, told) => told switch
        {
            [] or ["1-5"] => QueenLow.Read(text, $"no colour of a queen stands in {TextPieces.Quoted(text)}"),
            ["6-0"] => QueenHigh.Read(text, $"no colour of a queen stands in {TextPieces.Quoted(text)}"),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is neither “1-5” nor “6-0”"),
        },
    };

    private static ReadingResult.Gave Worth(ReadingResult.Gave bands)
    {
        var figures = bands.Rows.Length < 5 ? 2 : 3;
        var noughts = bands.Rows[figures].Gives[0] - '0';
        var ohms = bands.Text[..figures] + new string('0', noughts);
        return bands with { Text = ohms, ForNext = ohms };
    }

    // Which colours, by their figures on a resistor, stand for which figures.
    private static Lookup Table(string colours, string figures) => new(
        from pair in colours.Zip(figures)
        from name in Names[pair.First - '0'].Split(' ')
        from form in German.Contains(name, StringComparer.Ordinal) ? GermanEndings.Select(ending => name + ending).Prepend(name) : [name]
        select (form, pair.Second.ToString()));
}
