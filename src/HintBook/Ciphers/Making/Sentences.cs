using System.Globalization;

namespace HintBook.Ciphers.Making;

/// <summary>Words and sentences that already give the answer. The maker writes a story around them.</summary>
internal static class Sentences
{
    private static readonly string[] Numbers = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

    private static readonly (string One, string Many)[] Counted =
    [
        ("hive", "hives"), ("queen", "queens"), ("drone", "drones"), ("swarm", "swarms"),
        ("comb", "combs"), ("jar", "jars"), ("frame", "frames"), ("moth", "moths"),
        ("clover leaf", "clover leaves"), ("apple tree", "apple trees"), ("bell", "bells"), ("candle", "candles"), ("gate", "gates"), ("lantern", "lanterns"),
    ];

    private static readonly string[] ByLetter =
    [
        "apple alder autumn", "bees barrow bright", "clover candle comb", "dew drones dusk",
        "evening elder east", "frames fields fern", "garden gate gold", "honey hives heather",
        "ivy inkwell indigo", "jars june jasmine", "kettle keys kindling", "lavender lantern ladder",
        "meadow moss moths", "nectar noon north", "orchard oaks owls", "pollen pear path",
        "quince queens quiet", "rose rain roof", "swarms smoke stone", "thyme tools thatch",
        "under upland umber", "violet veil valley", "wax willow wind", "xylem xebec xenon",
        "yarrow yellow yew", "zinnia zinc zephyr",
    ];

    private static readonly string[] ByLength =
    [
        "a I O", "we in by", "bee wax hum", "hive comb moth", "honey swarm queen",
        "clover garden meadow", "lantern orchard candles", "lavender blossoms", "beekeeper marigolds",
    ];

    private static readonly string[] Tails = ["in the rain", "by the old wall", "at the gate", "under the eaves", "along the lane", "before noon"];

    public static ClueWay NumberWords { get; } = new()
    {
        Name = "number-words",
        Says = "A sentence that counts things: the frame of a letter, say.",
        Carries = Carries.Figures,
        Make = wish =>
        {
            var things = wish.Choices.Shuffled(Counted);
            var counted = wish.Figures.Select((figure, place) =>
            {
                var (one, many) = things[place % things.Length];
                return $"{Numbers[figure]} {(figure == 1 ? one : many)}";
            });
            return Draft.Of(Sentence(string.Join(", ", counted)), "number-words");
        },
    };

    public static ClueWay WordLengths { get; } = new()
    {
        Name = "word-lengths",
        Says = "Words of as many letters as the figures say.",
        Carries = Carries.Figures,
        Make = wish => wish.Answer.Contains('0', StringComparison.Ordinal)
            ? new Draft.None("No word has 0 letters. “number-words” and “resistor-colours” can say 0.")
            : Draft.Of(Sentence(string.Join(' ', wish.Figures.Select(figure => wish.Choices.Pick(ByLength[figure - 1].Split(' '))))), "word-lengths"),
    };

    public static ClueWay Acrostic { get; } = new()
    {
        Name = "acrostic",
        Says = "Lines whose first letters give the answer: the frame of a verse.",
        Carries = Carries.Letters,
        Make = wish => Draft.Of(string.Join('\n', wish.Answer.Select(letter => $"{Capital(WordWith(letter, wish))} {wish.Choices.Pick(Tails)}")), "acrostic"),
    };

    public static ClueWay FirstLetters { get; } = new()
    {
        Name = "first-letters",
        Says = "Words whose first letters give the answer.",
        Carries = Carries.Letters,
        Make = wish => Draft.Of(Sentence(string.Join(' ', wish.Answer.Select(letter => WordWith(letter, wish)))), "first-letters"),
    };

    public static ClueWay Keypad { get; } = new()
    {
        Name = "keypad",
        Says = "Words whose first letters stand on the telephone keys of the figures 2 to 9.",
        Carries = Carries.Figures,
        Make = wish =>
        {
            if (wish.Answer.FirstOrDefault(figure => figure is '0' or '1') is not '\0' and var bare)
                return new Draft.None($"No letter stands on the key {bare} of a telephone. “number-words” and “resistor-colours” can say every figure.");
            var letters = wish.Figures.Select(figure => wish.Choices.Pick(WaysOfReading.Keypad.LettersOn(figure).ToCharArray()));
            return new Draft.Text(
                Sentence(string.Join(' ', letters.Select(letter => WordWith(letter, wish)))),
                [new MadeStep("first-letters", []), new MadeStep("keypad", [])]);
        },
    };

    private static string WordWith(char letter, Wish wish) => wish.Choices.Pick(ByLetter[letter - 'A'].Split(' '));

    private static string Sentence(string words) => Capital(words) + ".";

    private static string Capital(string words) => string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(words[0])}{words[1..]}");
}
