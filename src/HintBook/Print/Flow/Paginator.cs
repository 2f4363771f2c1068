using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Flow;

/// <summary>
/// Fills pages with pieces. A page ends as late as it can: before a piece that no <see cref="Piece.WithNext"/> ties to the one above it. What would be left
/// for the next page and fits with its photos made lower stands there with lower ones, so that no half of a page is left empty before a photo. What is tied
/// together and higher than a page is split all the same.
/// </summary>
internal static class Paginator
{
    private const double Tolerance = 1e-6;

    /// <summary>The pages, without what stands on every page.</summary>
    /// <param name="pieces">What is set, in order.</param>
    /// <param name="frame">The pages' size and margins.</param>
    /// <param name="headFor">What stands once more at the top of a page that begins with the piece of a number; null for nothing.</param>
    public static ImmutableArray<PaperPage> Fill(IReadOnlyList<Piece> pieces, PageFrame frame, Func<int, Piece?>? headFor = null)
    {
        var pages = ImmutableArray.CreateBuilder<PaperPage>();
        Piece[] set = [.. pieces];
        for (var first = 0; first < set.Length;)
        {
            Piece[] head = headFor?.Invoke(first) is { } again ? [again] : [];
            var room = frame.Text.Height - head.Sum(piece => piece.Height + set[first].Before);
            var end = EndOfPage(set, first, room);
            while (end < set.Length && LowersPhotos(set, first, end, room))
                end = EndOfPage(set, first, room);
            pages.Add(new(frame, Place([.. head, .. set[first..end]], frame.Text), []));
            first = end;
        }

        return pages.ToImmutable();
    }

    /// <summary>How high some pieces are, one below the other from the top of a page.</summary>
    public static double HeightOf(IEnumerable<Piece> pieces)
    {
        var height = 0.0;
        foreach (var (index, piece) in pieces.Index())
            height += piece.Height + (index == 0 ? 0 : piece.Before);
        return height;
    }

    /// <summary>The pieces of one page, one below the other.</summary>
    public static ImmutableArray<PlacedPiece> Place(IEnumerable<Piece> pieces, Rect room)
    {
        var placed = ImmutableArray.CreateBuilder<PlacedPiece>();
        var y = room.Y;
        foreach (var piece in pieces)
        {
            y += placed.Count == 0 ? 0 : piece.Before;
            placed.Add(new(room.X, y, piece));
            y += piece.Height;
        }

        return placed.ToImmutable();
    }

    // Makes the photos lower of what is tied together behind a page's end, if all of that comes onto the page then: all alike, and as little as will do.
    private static bool LowersPhotos(Piece[] pieces, int first, int end, double room)
    {
        var after = end + 1;
        while (after < pieces.Length && pieces[after - 1].WithNext)
            after++;
        var (above, tied) = (pieces[first..end], pieces[end..after]);
        if (above[^1].WithNext || tied.Any(piece => piece.OnNewPage))
            return false;
        for (var step = 0; step < tied.Max(piece => piece.Lower.Length); step++)
        {
            Piece[] lower = [.. tied.Select(piece => Lowered(piece, step))];
            if (HeightOf(above.Concat(lower)) > room + Tolerance)
                continue;
            lower.CopyTo(pieces, end);
            return true;
        }

        return false;
    }

    /// <summary>A photo made lower by some steps; all else as it is.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="step">How much lower, from 0.</param>
    public static Piece Lowered(Piece piece, int step) => piece.Lower.IsEmpty
        ? piece
        : piece with { Height = At(piece.Lower, step).Height, Things = At(piece.Lower, step).Things, Lower = [] };

    // One that can't be made so much lower is as low as it can be.
    private static (double Height, ImmutableArray<Printed> Things) At(ImmutableArray<(double Height, ImmutableArray<Printed> Things)> lower, int step) =>
        lower[Math.Min(step, lower.Length - 1)];

    private static int EndOfPage(Piece[] pieces, int first, double room)
    {
        var (height, breakable) = (0.0, -1);
        for (var i = first; i < pieces.Length; i++)
        {
            if (i > first && !pieces[i - 1].WithNext)
                breakable = i;
            if (i > first && pieces[i].OnNewPage)
                return i;
            height += pieces[i].Height + (i == first ? 0 : pieces[i].Before);
            if (height <= room + Tolerance)
                continue;
            return breakable > first ? breakable : Math.Max(first + 1, i);
        }

        return pieces.Length;
    }
}
