using System.Collections.Immutable;

namespace HintBook.Maps;

/// <summary>Puts the pieces of a drawing beside and below each other.</summary>
internal static class Shelves
{
    private const double Gap = 48;

    /// <summary>
    /// The upper left corner of each piece, and the size of the whole. Pieces go from left to right in the order given, and a new
    /// shelf begins where the sheet would become wider than the widest piece or than a sheet of three to two.
    /// </summary>
    public static (ImmutableArray<Point> Corners, Extent Size) Place(ImmutableArray<Extent> pieces)
    {
        var area = pieces.Sum(piece => (piece.Width + Gap) * (piece.Height + Gap));
        var widest = Math.Max(pieces.Select(piece => piece.Width).DefaultIfEmpty(0).Max(), Math.Sqrt(area * 1.5));
        var corners = ImmutableArray.CreateBuilder<Point>(pieces.Length);
        double left = 0, top = 0, shelf = 0, right = 0;
        foreach (var piece in pieces)
        {
            if (left > 0 && left + piece.Width > widest)
            {
                top += shelf + Gap;
                left = shelf = 0;
            }

            corners.Add(new(left, top));
            right = Math.Max(right, left + piece.Width);
            shelf = Math.Max(shelf, piece.Height);
            left += piece.Width + Gap;
        }

        return (corners.MoveToImmutable(), new(right, top + shelf));
    }
}
