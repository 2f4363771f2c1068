namespace HintBook.Ciphers.WaysOfReading;

/// <summary>Colours that stand for figures.</summary>
internal static class Colours
{
    private static readonly Lookup Resistor = Lookup.Parse(
        "black 0, brown 1, red 2, orange 3, yellow 4, green 5, blue 6, violet 7, purple 7, grey 8, gray 8, white 9");

    private static readonly Lookup QueenLow = Lookup.Parse("white 1, yellow 2, red 3, green 4, blue 5");
    private static readonly Lookup QueenHigh = Lookup.Parse("white 6, yellow 7, red 8, green 9, blue 0");

    public static Way Resistors { get; } = Way.Bare(
        "resistor-colours",
        "The figure of each colour on a resistor: black is 0, white is 9.",
        "IEC 60062:2016; purple is taken for violet, gray for grey.",
        text => Resistor.Read(text, $"no colour of a resistor stands in {TextPieces.Quoted(text)}"));

    /// <summary>Beekeepers mark a queen by the last figure of her year: white for 1 and 6, yellow 2 and 7, red 3 and 8, green 4 and 9, blue 5 and 0.</summary>
    public static Way Queens { get; } = new()
    {
        Name = "queen-colours",
        Says = "The figure of each colour that marks queen bees: white is 1, yellow 2, red 3, green 4, blue 5; with “6-0” 6, 7, 8, 9 and 0.",
        Source = "Common practice of beekeepers.",
        Told = new("“1-5” or “6-0”", "6-0", Needed: false),
        Conventions = told => told is ["6-0"]
            ? [new(["1-5"], "taking years that end in 1 to 5", Usual: false)]
            : [new(["6-0"], "taking years that end in 6 to 0", Usual: false)],
        Read = (text, told) => told switch
        {
            [] or ["1-5"] => QueenLow.Read(text, $"no colour of a queen stands in {TextPieces.Quoted(text)}"),
            ["6-0"] => QueenHigh.Read(text, $"no colour of a queen stands in {TextPieces.Quoted(text)}"),
            _ => new ReadingResult.BadArgument($"{TextPieces.Quoted(string.Join(", ", told))} is neither “1-5” nor “6-0”"),
        },
    };
}
