using System.Collections.Immutable;

namespace HintBook.Print.Clues;

/// <summary>
/// Draws the flags for A to Z of the International Code of Signals, the mast at the left, in millimetres. The designs are a public standard; they are drawn
/// from memory and our own in their proportions.
/// </summary>
internal static class SignalFlag
{
    /// <summary>From one flag to the next.</summary>
    public const double Width = 30;

    /// <summary>From one line to the next.</summary>
    public const double Height = 25;

    private const double Wide = 24;
    private const double High = 19;
    private static readonly (double X, double Y) Corner = ((Width - Wide) / 2, (Height - High) / 2);

    /// <summary>The flag of a letter from A to Z.</summary>
    public static ImmutableArray<Drawn> Of(char letter) => [.. Parts(letter), .. letter is 'A' or 'B' ? Outline(Tail) : Outline(Whole)];

    private static ImmutableArray<(double X, double Y)> Whole { get; } = [(0, 0), (1, 0), (1, 1), (0, 1)];

    private static ImmutableArray<(double X, double Y)> Tail { get; } = [(0, 0), (1, 0), (0.75, 0.5), (1, 1), (0, 1)];

    // Everything in shares of the flag's width and height.
    private static IEnumerable<Drawn> Parts(char letter) => letter switch
    {
        'A' => [Box("white", 0, 0, 0.5, 1), Area("blue", (0.5, 0), (1, 0), (0.75, 0.5), (1, 1), (0.5, 1))],
        'B' => [Area("red", Tail)],
        'C' => Bars(["blue", "white", "red", "white", "blue"]),
        'D' => [Area("yellow", Whole), Box("blue", 0, 0.2, 1, 0.6)],
        'E' => Bars(["blue", "red"]),
        'F' => [Area("white", Whole), Area("red", (0.5, 0), (1, 0.5), (0.5, 1), (0, 0.5))],
        'G' => Pales(["yellow", "blue", "yellow", "blue", "yellow", "blue"]),
        'H' => Pales(["white", "red"]),
        'I' => [Area("yellow", Whole), new DrawnDisc(X(0.5), Y(0.5), High * 0.28, Inks.Of("black"), "flag")],
        'J' => Bars(["blue", "white", "blue"]),
        'K' => Pales(["yellow", "blue"]),
        'L' => Checks(2, "yellow", "black"),
        'M' => [Area("blue", Whole), .. Saltire("white")],
        'N' => Checks(4, "blue", "white"),
        'O' => [Area("red", Whole), Area("yellow", (0, 0), (1, 1), (0, 1))],
        'P' => [Area("blue", Whole), Box("white", 0.3, 0.3, 0.4, 0.4)],
        'Q' => [Area("yellow", Whole)],
        'R' => [Area("red", Whole), .. Cross("yellow")],
        'S' => [Area("white", Whole), Box("blue", 0.3, 0.3, 0.4, 0.4)],
        'T' => Pales(["red", "white", "blue"]),
        'U' => Checks(2, "red", "white"),
        'V' => [Area("white", Whole), .. Saltire("red")],
        'W' => [Area("blue", Whole), Box("white", 0.18, 0.18, 0.64, 0.64), Box("red", 0.36, 0.36, 0.28, 0.28)],
        'X' => [Area("white", Whole), .. Cross("blue")],
        'Y' => Bends("yellow", "red"),
        _ => [.. Quarters(["yellow", "blue", "red", "black"])],
    };

    private static IEnumerable<Drawn> Bars(string[] colours) =>
        colours.Select((colour, place) => Box(colour, 0, (double)place / colours.Length, 1, 1.0 / colours.Length));

    private static IEnumerable<Drawn> Pales(string[] colours) =>
        colours.Select((colour, place) => Box(colour, (double)place / colours.Length, 0, 1.0 / colours.Length, 1));

    private static IEnumerable<Drawn> Checks(int each, string first, string second) =>
        from row in Enumerable.Range(0, each)
        from column in Enumerable.Range(0, each)
        select Box((row + column) % 2 == 0 ? first : second, (double)column / each, (double)row / each, 1.0 / each, 1.0 / each);

    private static IEnumerable<Drawn> Cross(string colour) => [Box(colour, 0.4, 0, 0.2, 1), Box(colour, 0, 0.4, 1, 0.2)];

    private static IEnumerable<Drawn> Saltire(string colour) =>
    [
        Area(colour, (0, 0), (0.14, 0), (1, 0.86), (1, 1), (0.86, 1), (0, 0.14)),
        Area(colour, (1, 0), (1, 0.14), (0.14, 1), (0, 1), (0, 0.86), (0.86, 0)),
    ];

    // Ten stripes that rise towards the fly, the first one at the upper corner of the mast.
    private static IEnumerable<Drawn> Bends(string first, string second)
    {
        for (var stripe = 9; stripe >= 0; stripe--)
        {
            // All that lies above the stripe's lower edge, so that later ones cover earlier ones.
            var far = (stripe + 1) / 5.0;
            var colour = stripe % 2 == 0 ? first : second;
            yield return far <= 1
                ? Area(colour, (0, 0), (far, 0), (0, far))
                : Area(colour, (0, 0), (1, 0), (1, far - 1), (far - 1, 1), (0, 1));
        }
    }

    // By the diagonals: above, at the fly, below and at the mast.
    private static IEnumerable<Drawn> Quarters(string[] colours) =>
        colours.Select((colour, place) => Area(colour, Whole[place], Whole[(place + 1) % 4], (0.5, 0.5)));

    private static DrawnShape Box(string colour, double x, double y, double width, double height) =>
        Area(colour, (x, y), (x + width, y), (x + width, y + height), (x, y + height));

    private static DrawnShape Area(string colour, params ImmutableArray<(double X, double Y)> corners) =>
        new([.. corners.Select(at => (X(at.X), Y(at.Y)))], Inks.Of(colour), "flag");

    private static IEnumerable<Drawn> Outline(ImmutableArray<(double X, double Y)> corners) =>
        corners.Select((at, place) => (at, next: corners[(place + 1) % corners.Length]))
            .Select(side => new DrawnLine(X(side.at.X), Y(side.at.Y), X(side.next.X), Y(side.next.Y)));

    private static double X(double share) => Corner.X + (share * Wide);

    private static double Y(double share) => Corner.Y + (share * High);
}
