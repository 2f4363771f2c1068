using System.Collections.Immutable;
using HintBook.Ciphers.WaysOfReading;

namespace HintBook.Print.Clues;

/// <summary>
/// Draws a cell of Braille at the size in which it is embossed: dots 2.5 mm apart, cells 6 mm, lines 10 mm (“Marburg medium”, from memory). Where a dot is
/// missing, a speck shows its place to eyes that don't know the alphabet by heart.
/// </summary>
internal static class BrailleCell
{
    /// <summary>From one cell to the next.</summary>
    public const double Width = 6;

    /// <summary>From one line to the next.</summary>
    public const double Height = 10;

    private const double Apart = 2.5;
    private const double Dot = 0.8;
    private const double Speck = 0.15;

    /// <summary>A cell of six dots: 1, 2, 3 down the left side, 4, 5, 6 down the right one.</summary>
    public static ImmutableArray<Drawn> Of(char cell)
    {
        var dots = BrailleCells.DotsOf(cell);
        return
        [
            .. from dot in Enumerable.Range(0, 6)
               let raised = dots.Contains((char)('1' + dot), StringComparison.Ordinal)
               let x = ((Width - Apart) / 2) + (dot / 3 * Apart)
               let y = ((Height - (2 * Apart)) / 2) + (dot % 3 * Apart)
               select new DrawnDisc(x, y, raised ? Dot : Speck, raised ? Inks.Of("black") : Inks.Of("grey"), raised ? "dot" : "blank"),
        ];
    }
}
