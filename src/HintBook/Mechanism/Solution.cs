using System.Collections.Immutable;
using System.Numerics;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>All that <c>solve</c> says of a book.</summary>
public sealed record Solution
{
    /// <summary>Whether the box can be opened; proved with a way.</summary>
    public required Claim Opens { get; init; }

    /// <summary>Whether the way of <see cref="Opens"/> has the fewest moves.</summary>
    public required Claim Shortest { get; init; }

    /// <summary>No way has fewer moves than this.</summary>
    public required int AtLeast { get; init; }

    /// <summary>
    /// How many states the box has, or null where that isn't known. Of states that differ only by exchanges of alike things one is looked at.
    /// </summary>
    public required long? BoxStates { get; init; }

    /// <summary>The stages in the author's order.</summary>
    public required ImmutableArray<StageAnswer> Stages { get; init; }

    /// <summary>Moves that can never be made.</summary>
    public required ImmutableArray<Step> NeverPossible { get; init; }

    /// <summary>Whether the box can't trap anyone; refuted with the shortest way into a dead end.</summary>
    public required Claim NoDeadEnds { get; init; }

    /// <summary>One way for each move that closes the door for good, the last step being that move; at most twenty.</summary>
    public required ImmutableArray<ImmutableArray<Step>> DeadEnds { get; init; }

    /// <summary>Stages that aren't optional and that the box opens without.</summary>
    public required ImmutableArray<Shortcut> Shortcuts { get; init; }

    /// <summary>Whether there are no shortcuts beside these.</summary>
    public required Claim NoOtherShortcuts { get; init; }

    /// <summary>Every lock that is set.</summary>
    public required ImmutableArray<Trying> ByTrying { get; init; }

    /// <summary>Stages on every way to the goal, in the author's order.</summary>
    public required ImmutableArray<string> Bottlenecks { get; init; }

    /// <summary>The most stages open at once.</summary>
    public required Widest Widest { get; init; }

    /// <summary>In how many orders the stages can be completed first.</summary>
    public required Orders Orders { get; init; }

    /// <summary>States stored for all of this.</summary>
    public required long States { get; init; }

    /// <summary><c>all</c>, <c>reduced</c> or <c>partial</c>.</summary>
    public required string Explored { get; init; }

    /// <summary>How long it took.</summary>
    public required double Seconds { get; init; }

    /// <summary>What the author should know.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Whether a claim is refuted: that the box opens, that each stage is reached, that nobody gets stuck, that no stage can be left out.</summary>
    public bool AnyRefuted =>
        Opens is Claim.Refuted || NoDeadEnds is Claim.Refuted || !Shortcuts.IsEmpty || Stages.Any(stage => stage.Reachable is Claim.Refuted);
}

/// <summary>What is known of one stage.</summary>
public sealed record StageAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Whether one of its moves is ever possible; proved with a way to where it is.</summary>
    public required Claim Reachable { get; init; }

    /// <summary>Stages done on every way there, in the author's order: all moves of theirs made.</summary>
    public required ChosenSet<string> CertainBefore { get; init; }

    /// <summary>Things in hand at some time, and facts known, on every way there.</summary>
    public required ChosenSet<string> Facts { get; init; }

    /// <summary>Positions other than the shipped ones attained at some time on every way there.</summary>
    public required ChosenSet<Placed> Attained { get; init; }

    /// <summary>Whether nothing else is certain; otherwise there may be more that is.</summary>
    public required bool Exact { get; init; }
}

/// <summary>A way to the goal that leaves out a stage which isn't optional.</summary>
/// <param name="Without">The stage's id.</param>
/// <param name="Path">The way.</param>
public sealed record Shortcut(string Without, ImmutableArray<Step> Path);

/// <summary>What comes of trying a lock's settings one by one.</summary>
/// <param name="Lock">The code's id.</param>
/// <param name="Settings">How many settings there are.</param>
/// <param name="Seconds">How long it takes to try them all.</param>
/// <param name="Skips">If that is within the book's patience: stages that are then no longer needed, in the author's order.</param>
public sealed record Trying(string Lock, BigInteger Settings, double Seconds, ImmutableArray<string> Skips);

/// <summary>The most stages that are open and not done at the same time.</summary>
/// <param name="Count">How many; at least this many if not exact.</param>
/// <param name="Stages">Which, in the author's order.</param>
/// <param name="Exact">Whether there is no wider moment.</param>
public sealed record Widest(int Count, ImmutableArray<string> Stages, bool Exact);

/// <summary>The number of different orders in which stages are first completed on ways that end when the box is solved.</summary>
/// <param name="Count">How many; at least this many if not exact.</param>
/// <param name="Exact">Whether there are no more.</param>
public sealed record Orders(BigInteger Count, bool Exact)
{
    /// <inheritdoc/>
    public override string ToString() => Exact ? $"{Count}" : $"more than {BigInteger.Max(0, Count - 1)}";
}
