using System.Collections.Immutable;

namespace HintBook.Sittings;

/// <summary>How long a stage takes people.</summary>
/// <param name="Count">How many times were noted, at least one.</param>
/// <param name="Median">The middle one, in minutes; of an even number the mean of the middle two.</param>
/// <param name="Quarter">A quarter took no longer than this, in minutes.</param>
/// <param name="ThreeQuarters">Three quarters took no longer than this, in minutes.</param>
/// <param name="Bounds">
/// The median of all people lies between these with a certainty of 95 in 100 at least; null where so few times don't tell that.
/// </param>
public sealed record MiddleMinutes(int Count, double Median, double Quarter, double ThreeQuarters, (double Low, double High)? Bounds)
{
    private const double Uncertain = 0.05;

    /// <summary>What some times say; null where there are none.</summary>
    /// <param name="minutes">The times, in any order.</param>
    public static MiddleMinutes? Of(IEnumerable<double> minutes)
    {
        ImmutableArray<double> sorted = [.. minutes.Order()];
        return sorted.IsEmpty ? null : new(sorted.Length, At(sorted, 0.5), At(sorted, 0.25), At(sorted, 0.75), BoundsOf(sorted));
    }

    // Hyndman and Fan, The American Statistician 50, 1996, definition 7: between the two nearest, by their distance.
    private static double At(ImmutableArray<double> sorted, double share)
    {
        var place = share * (sorted.Length - 1);
        var below = (int)place;
        return below + 1 < sorted.Length ? sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below])) : sorted[below];
    }

    // The k-th from either end: the median of all lies outside with twice the chance of fewer than k heads in n throws of a coin
    // (W. J. Conover, Practical Nonparametric Statistics, 3.2). It asks nothing of the shape of the times.
    private static (double Low, double High)? BoundsOf(ImmutableArray<double> sorted)
    {
        var (fewer, chance) = (0.0, Math.Pow(2, -sorted.Length));
        var from = 0;
        for (var heads = 0; heads < sorted.Length / 2; heads++)
        {
            fewer += chance;
            if (2 * fewer > Uncertain)
                break;
            from = heads + 1;
            chance *= (double)(sorted.Length - heads) / (heads + 1);
        }

        return from == 0 ? null : (sorted[from - 1], sorted[^from]);
    }
}
