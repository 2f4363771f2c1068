using System.Collections.Immutable;
using HintBook.Mechanism.Places;

namespace HintBook.Mechanism;

/// <summary>What is known of a box: all that the rooms which write need, however it was found out.</summary>
public sealed record Survey
{
    /// <summary>Whether the goal can be reached.</summary>
    public required Claim Opens { get; init; }

    /// <summary>Whether nobody gets stuck: whatever is tried, the box can still be opened.</summary>
    public Claim NoDeadEnds { get; init; } = new Claim.NotProved("it wasn't asked");

    /// <summary>How the solved box is put back, and whether it can be.</summary>
    public required ResetPlan WayBack { get; init; }

    /// <summary>What is known of each stage, by its id.</summary>
    public required ImmutableDictionary<string, StageSurvey> Stages { get; init; }

    /// <summary>The stages that are open before anything has been done, in the author's order.</summary>
    public required ImmutableArray<string> First { get; init; }

    /// <summary>Where a reader may stand who asks “where am I?”; null for a survey that doesn't come from a box.</summary>
    internal Standings? Standings { get; init; }
}

/// <summary>How one stage stands among the others.</summary>
public sealed record StageSurvey
{
    /// <summary>Whether any way leads to it.</summary>
    public required bool Reachable { get; init; }

    /// <summary>
    /// When it opens: of every group at least one stage has been done. No groups: it is open from the start. Only the
    /// nearest stages are named; what comes before them is implied.
    /// </summary>
    public required ImmutableArray<ImmutableArray<string>> OpensAfter { get; init; }

    /// <summary>The stages that have been done on every way to this one, in the author's order.</summary>
    public required ChosenSet<string> CertainBefore { get; init; }

    /// <summary>Things in hand at some time, and facts and codes known, on every way to it; there may be more unless <see cref="Exact"/>.</summary>
    public ChosenSet<string> Gained { get; init; } = [];

    /// <summary>Positions other than the shipped ones that were attained on every way to it; there may be more unless <see cref="Exact"/>.</summary>
    public ChosenSet<Placed> Attained { get; init; } = [];

    /// <summary>Whether nothing else is certain before it.</summary>
    public bool Exact { get; init; }

    /// <summary>How many stages, one after the other, must be done before it at the least; 0 for those open from the start.</summary>
    public required int Layer { get; init; }
}
