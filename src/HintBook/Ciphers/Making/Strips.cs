using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Ciphers.Making;

/// <summary>Strips of signs and of colours.</summary>
internal static class Strips
{
    private static readonly string[] Resistor = ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"];
    private static readonly string[] Queen = ["blue", "white", "yellow", "red", "green"];

    public static ClueWay Morse { get; } = new()
    {
        Name = "morse",
        Says = "A strip of Morse signs.",
        Carries = Carries.Both,
        Make = wish => Draft.By(MorseSigns.ToSigns, [], wish.Answer, new MadeStep("morse", []), ClueLook.Signs),
    };

    public static ClueWay Braille { get; } = new()
    {
        Name = "braille",
        Says = "Cells of Braille, at the size in which they are embossed.",
        Carries = Carries.Both,
        Make = wish => new Draft.Text(BrailleCells.Of(wish.Answer), [new MadeStep("braille", [])], ClueLook.Cells),
    };

    public static ClueWay Dice { get; } = new()
    {
        Name = "dice",
        Says = "Faces of dice: the figures 1 to 6.",
        Carries = Carries.Figures,
        Make = wish => wish.Answer.FirstOrDefault(figure => figure is < '1' or > '6') is not '\0' and var bare
            ? new Draft.None($"No die shows {bare}. “resistor-colours” and “number-words” can say every figure.")
            : new Draft.Text(string.Concat(wish.Figures.Select(Games.FaceOf)), [new MadeStep("dice", [])], ClueLook.Dice),
    };

    public static ClueWay Resistors { get; } = new()
    {
        Name = "resistor-colours",
        Says = "A strip of the colours of a resistor.",
        Carries = Carries.Figures,
        Make = wish => new Draft.Text(
            string.Join(", ", wish.Figures.Select(figure => Resistor[figure])), [new MadeStep("resistor-colours", [])], ClueLook.Colours),
    };

    public static ClueWay Queens { get; } = new()
    {
        Name = "queen-colours",
        Says = "A strip of the colours that mark queen bees by their years: the figures 1 to 5, or 6 to 9 and 0.",
        Carries = Carries.Figures,
        Make = wish =>
        {
            var low = wish.Figures.Count(figure => figure is >= 1 and <= 5);
            return low > 0 && low < wish.Answer.Length
                ? new Draft.None(
                    "Each colour of a queen stands for two figures, 1 and 6, 2 and 7, 3 and 8, 4 and 9, 5 and 0: "
                    + "a code needs figures from 1 to 5 alone, or from 6 to 0 alone. “resistor-colours” has ten.")
                : new Draft.Text(
                    string.Join(", ", wish.Figures.Select(figure => Queen[figure % 5])),
                    [new MadeStep("queen-colours", low > 0 ? [] : ["6-0"])],
                    ClueLook.Colours);
        },
    };
}
