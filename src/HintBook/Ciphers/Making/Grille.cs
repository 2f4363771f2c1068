using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace HintBook.Ciphers.Making;

/// <summary>A mask of card with square holes, in millimetres. It is laid on a block of letters whose cells are <see cref="Pitch"/> apart.</summary>
/// <param name="Width">From its left to its right edge.</param>
/// <param name="Height">From its upper to its lower edge; a mask that is turned is a square.</param>
/// <param name="Clockwise">Which way it is turned, by a quarter three times; null for a mask that stays.</param>
/// <param name="Holes">The holes, row by row.</param>
public sealed record Grille(double Width, double Height, bool? Clockwise, ImmutableArray<Hole> Holes)
{
    /// <summary>From the middle of one letter to that of the next (common practice, no source: large enough to cut out by hand).</summary>
    public const double Pitch = 10;

    /// <summary>The side of a hole; what remains between two is 3 mm of card.</summary>
    public const double HoleSide = 7;

    /// <summary>Card around the outermost cells.</summary>
    public const double Rim = 10;

    /// <summary>A mask for a block, with holes over cells that count from 0.</summary>
    public static Grille Over(int rows, int columns, bool? clockwise, IEnumerable<(int Row, int Column)> cells) => new(
        (columns * Pitch) + (2 * Rim),
        (rows * Pitch) + (2 * Rim),
        clockwise,
        [.. cells.Order().Select(cell => new Hole(At(cell.Column), At(cell.Row)))]);

    /// <summary>The row and column of every hole as ways of reading are told them, worked out from the millimetres alone.</summary>
    public ImmutableArray<string> Places => [.. Holes.Select(hole => $"{CellAt(hole.Y)}-{CellAt(hole.X)}")];

    private static double At(int cell) => Rim + (cell * Pitch) + ((Pitch - HoleSide) / 2);

    private static int CellAt(double edge) => (int)Math.Floor((edge + (HoleSide / 2) - Rim) / Pitch) + 1;
}

/// <summary>A square hole of <see cref="Grille.HoleSide"/>.</summary>
/// <param name="X">From the mask's left edge to the hole's, in millimetres.</param>
/// <param name="Y">From the mask's upper edge to the hole's, in millimetres.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Hole(double X, double Y);
