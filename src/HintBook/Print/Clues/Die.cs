using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Clues;

/// <summary>Draws the face of a die, in millimetres.</summary>
internal static class Die
{
    /// <summary>From the left edge of one die to that of the next.</summary>
    public const double Width = 20;

    private const double Side = 16;
    private const double Point = 1.6;

    // The places of the points on a grid of three by three, row by row.
    private static readonly string[] Faces = ["4", "26", "246", "0268", "02468", "023568"];

    /// <summary>The face that a symbol from ⚀ to ⚅ shows.</summary>
    public static ImmutableArray<Drawn> Of(char symbol) =>
    [
        new DrawnBox(new Rect((Width - Side) / 2, (Width - Side) / 2, Side, Side), null, "die"),
        .. from place in Faces[symbol - '⚀']
           select new DrawnDisc(At((place - '0') % 3), At((place - '0') / 3), Point, Inks.Of("black"), "point"),
    ];

    private static double At(int step) => (Width / 2) + ((step - 1) * Side / 4);
}
