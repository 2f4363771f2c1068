using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace HintBook.Print.Flow;

/// <summary>
/// Fills pages with sections that begin with headings, so that as few sections as possible are parted and no page is left half empty for that. All ways to
/// end the pages are weighed against each other, from the last page back: time grows with the number of pieces times the number of pieces on a page.
/// </summary>
internal static class EvenPages
{
    private const double Tolerance = 1e-6;

    // What a page costs: itself, the room that it leaves empty beyond a share of its height, photos made lower (by the square of the steps), a section
    // parted at its end, more than that one parted from a picture that follows, and a list or a table parted besides. Weighed by
    // looking at the example's leaflet.
    private const double OfPage = 0.2, OfEmptiness = 4, Bearable = 0.12, OfLowering = 0.02;
    private const double OfParting = 0.12, OfPartingFromPicture = 0.35, OfPartingList = 0.3;

    // What is tied together or stands alone and is higher than a page has to be split somewhere.
    private const double OfSplitting = 100;

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Way(double Cost, int End, int Lowered);

    /// <summary>The pages, without what stands on every page.</summary>
    /// <param name="pieces">What is set, in order.</param>
    /// <param name="frame">The pages' size and margins.</param>
    public static ImmutableArray<PaperPage> Fill(ImmutableArray<Piece> pieces, PageFrame frame)
    {
        var best = new Way[pieces.Length + 1];
        for (var first = pieces.Length - 1; first >= 0; first--)
            best[first] = Ways(pieces, frame.Text.Height, first, best).MinBy(way => way.Cost);

        var pages = ImmutableArray.CreateBuilder<PaperPage>();
        for (var first = 0; first < pieces.Length; first = best[first].End)
            pages.Add(new(frame, Paginator.Place(Lowered(pieces[first..best[first].End], best[first].Lowered), frame.Text), []));
        return pages.ToImmutable();
    }

    // At least one: what is too high is split where the page is full.
    private static IEnumerable<Way> Ways(ImmutableArray<Piece> pieces, double room, int first, Way[] best)
    {
        var splits = first + 1;
        for (var end = first + 1; end <= pieces.Length; end++)
        {
            if (end - 1 > first && pieces[end - 1].OnNewPage)
                break;
            if (Steps(pieces[first..end], room) is not { } steps)
                break;
            splits = end;
            if (end < pieces.Length && pieces[end - 1].WithNext)
                continue;
            yield return new(CostOf(pieces, room, first, end, steps) + best[end].Cost, end, steps);
        }

        yield return new(OfSplitting + best[splits].Cost, splits, 0);
    }

    private static double CostOf(ImmutableArray<Piece> pieces, double room, int first, int end, int steps)
    {
        var isLast = end == pieces.Length;
        var empty = isLast ? 0 : Math.Max(0, 1 - (Paginator.HeightOf(Lowered(pieces[first..end], steps)) / room) - Bearable);
        return OfPage + (OfEmptiness * empty * empty) + (OfLowering * steps * steps) + (isLast ? 0 : OfEnding(pieces, end));
    }

    private static double OfEnding(ImmutableArray<Piece> pieces, int end)
    {
        if (pieces[end].Role == Role.Heading)
            return 0;
        var rest = pieces.Skip(end).TakeWhile(piece => piece.Role != Role.Heading);
        var isList = !pieces[end - 1].Parts.IsEmpty && !pieces[end].Parts.IsEmpty;
        return (rest.Any(piece => piece.Role == Role.Figure) ? OfPartingFromPicture : OfParting) + (isList ? OfPartingList : 0);
    }

    // How often photos have to be made lower for some pieces to fit; null where they never do.
    private static int? Steps(ImmutableArray<Piece> pieces, double room)
    {
        var most = pieces.Max(piece => piece.Lower.Length);
        for (var steps = 0; steps <= most; steps++)
        {
            if (Paginator.HeightOf(Lowered(pieces, steps)) <= room + Tolerance)
                return steps;
        }

        return null;
    }

    private static IEnumerable<Piece> Lowered(ImmutableArray<Piece> pieces, int steps) =>
        steps == 0 ? pieces : pieces.Select(piece => Paginator.Lowered(piece, steps - 1));
}
