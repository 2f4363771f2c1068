using System.Collections.Immutable;
using HintBook.Cards;

namespace HintBook.Print.Flow;

/// <summary>
/// Fills pages with pieces. A page ends as late as it can: before a piece that no <see cref="Piece.WithNext"/> ties to the one above it. What is tied
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
        for (var first = 0; first < pieces.Count;)
        {
            Piece[] head = headFor?.Invoke(first) is { } again ? [again] : [];
            var end = EndOfPage(pieces, first, frame.Text.Height - head.Sum(piece => piece.Height + pieces[first].Before));
            pages.Add(new(frame, Place([.. head, .. pieces.Skip(first).Take(end - first)], frame.Text), []));
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

    private static int EndOfPage(IReadOnlyList<Piece> pieces, int first, double room)
    {
        var (height, breakable) = (0.0, -1);
        for (var i = first; i < pieces.Count; i++)
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

        return pieces.Count;
    }
}
