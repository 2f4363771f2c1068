using System.Collections.Immutable;

namespace HintBook.Publishing.Visits;

/// <summary>Something that is wrong where the site lives.</summary>
/// <param name="Address">What was asked for.</param>
/// <param name="Card">The card that fails by it; null where no card leads there.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Help">What to do, or what to tell the host.</param>
public sealed record VisitFault(Uri Address, string? Card, string Message, string Help);

/// <summary>What came of a visit.</summary>
/// <param name="Base">Where the site was asked for.</param>
/// <param name="Asked">How many addresses were asked for.</param>
/// <param name="Of">How many there were to ask for.</param>
/// <param name="Bytes">How many bytes came back.</param>
/// <param name="Faults">In the order in which was asked.</param>
/// <param name="Ended">Why the visit ended before everything was asked; null where it didn't.</param>
public sealed record VisitReport(Uri Base, int Asked, int Of, long Bytes, ImmutableArray<VisitFault> Faults, string? Ended)
{
    /// <summary>The cards that would fail, each once.</summary>
    public IEnumerable<string> FailingCards => Faults.Select(fault => fault.Card).OfType<string>().Distinct(StringComparer.Ordinal);
}

/// <summary>How far a visit may go.</summary>
public sealed record VisitBounds
{
    /// <summary>How many requests are under way at a time: more would be a burden to a small host.</summary>
    public const int AtATime = 2;

    /// <summary>For the whole visit.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromMinutes(10);

    /// <summary>For one address, redirects included.</summary>
    public TimeSpan Each { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>For all that comes back, in bytes.</summary>
    public long Bytes { get; init; } = 1L << 30;

    /// <summary>Of a file larger than this, in bytes, only the beginning is fetched.</summary>
    public int Whole { get; init; } = 8 << 20;
}
