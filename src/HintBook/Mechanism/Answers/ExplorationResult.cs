using System.Collections.Immutable;

namespace HintBook.Mechanism.Answers;

/// <summary>What one way of exploring found out, in numbers of the machine. What is null it could not tell.</summary>
internal sealed record ExplorationResult
{
    /// <summary><c>all</c>, <c>reduced</c> or <c>partial</c>.</summary>
    public required string Explored { get; init; }

    /// <summary>Why not everything is known, or null.</summary>
    public required string? Why { get; init; }

    /// <summary>A way to the goal, or null if none was found.</summary>
    public List<int>? Way { get; init; }

    /// <summary>No way is shorter than this.</summary>
    public int AtLeast { get; init; }

    /// <summary>By act: whether it was possible somewhere.</summary>
    public required bool[] Possible { get; init; }

    /// <summary>By stage: a way to where one of its moves is possible, found when it is asked for; null if none was found.</summary>
    public required Lazy<List<int>>?[] WayToStage { get; init; }

    /// <summary>One way on which all moves are made that are possible at all, where there is one, or null.</summary>
    public Lazy<List<int>>? Tour { get; init; }

    /// <summary>Ways into dead ends, one for each act that closes a door, the shortest first; null if it isn't known whether there are any.</summary>
    public List<List<int>>? DeadEnds { get; init; }

    /// <summary>Whether the ways into dead ends are the shortest there are.</summary>
    public bool DeadEndsShortest { get; init; }

    /// <summary>By stage: what is certain before it.</summary>
    public required Bits[] Before { get; init; }

    /// <summary>What is certain when the box is solved.</summary>
    public required Bits BeforeGoal { get; init; }

    /// <summary>A way to the goal on which an act is never made, or null if none was found.</summary>
    public required Func<int, List<int>?> WayWithout { get; init; }

    /// <summary>Whether what isn't in <see cref="Before"/> and <see cref="BeforeGoal"/> is known not to be certain.</summary>
    public required bool Exact { get; init; }

    /// <summary>
    /// By stage, and last for the goal: the stages that must be done first and need only be done first; null where the stages aren't ordered
    /// so simply.
    /// </summary>
    public Lazy<ImmutableArray<Bits>?>? Precedence { get; init; }
}
