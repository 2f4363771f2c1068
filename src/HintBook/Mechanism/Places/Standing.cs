using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>States of a box that show the same, in which the same is next and the same is certain: where a reader may stand who asks “where am I?”.</summary>
internal sealed record Standing
{
    /// <summary>
    /// The position of each name that can be asked about, in the order of <see cref="Standings.Asked"/>; below 0 where it isn't known or can't be seen.
    /// </summary>
    public required ImmutableArray<int> Shows { get; init; }

    /// <summary>The stages that are next, by number.</summary>
    public required Bits Next { get; init; }

    /// <summary>What has been attained on every way to all of these states, by the numbers of <see cref="Attainable"/>.</summary>
    public required Bits Known { get; init; }

    /// <summary>Whether a stage that is next may be told here. If not, <see cref="Next"/> holds whatever may be told.</summary>
    public bool IsFound { get; init; } = true;

    /// <summary>How much of a solver's time is spent here; only the ratios count.</summary>
    public required double Weight { get; init; }

    /// <summary>What <see cref="Shows"/> has where the position isn't known.</summary>
    public const int Unknown = -1;

    /// <summary>What <see cref="Shows"/> has where the name can't be seen.</summary>
    public const int OutOfSight = -3;

    /// <summary>What <see cref="Shows"/> has where it is known only that the name isn't in its first position any more.</summary>
    public const int Moved = -2;
}

/// <summary>All that a reader may stand before whose box can still be opened.</summary>
/// <param name="Things">Numbers what can be certain.</param>
/// <param name="Asked">The names that can be asked about, as variables of the machine.</param>
/// <param name="All">Where a reader may stand. Dead ends aren't among them: they can't be recognised from inside.</param>
/// <param name="Exact">Whether these are the box's own states. If not, there may be some here that it hasn't, and more may be certain.</param>
internal sealed record Standings(Attainable Things, ImmutableArray<int> Asked, ImmutableArray<Standing> All, bool Exact)
{
    /// <summary>None, since there are too many.</summary>
    public static Standings NotKnown(Model.Machine machine) => new(new(machine), [], [], Exact: false);

    /// <summary>What is known wherever a stage is next, by stage: only then may its sign be shown.</summary>
    public ImmutableArray<Bits> KnownWhereNext { get; } = Meet(Things, All);

    private static ImmutableArray<Bits> Meet(Attainable things, ImmutableArray<Standing> all)
    {
        var met = things.Machine.StageActs.Select(_ => Bits.All(things.Count)).ToImmutableArray();
        foreach (var standing in all)
        {
            foreach (var stage in standing.Next.Members())
                met[stage].And(standing.Known);
        }

        return met;
    }
}
