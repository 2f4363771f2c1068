using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// A series of handlings that tests a whole box: every move is made, every free part stands in every position that matters, every reaction happens, every
/// lock and latch is tried once while it must hold, and the box ends as it left the maker.
/// </summary>
public sealed record TestWalk
{
    /// <summary>The handlings, in order.</summary>
    public required ImmutableArray<WalkStep> Steps { get; init; }

    /// <summary>What is known of its length.</summary>
    public required WalkLength Length { get; init; }

    /// <summary>Why the box isn't as shipped at the end, as a sentence; null where it is.</summary>
    public required string? EndsOpen { get; init; }

    /// <summary>What isn't tested.</summary>
    public required ImmutableArray<LeftOut> LeftOut { get; init; }

    /// <summary>The things that the walk uses up, one name for each time: a fresh one must lie ready.</summary>
    public required ImmutableArray<string> Fresh { get; init; }

    /// <summary>How many moves are tested.</summary>
    public required int Moves { get; init; }

    /// <summary>How many positions of free parts are tested.</summary>
    public required int Positions { get; init; }

    /// <summary>How many locks and latches are tried while they must hold.</summary>
    public int Refusals => Steps.Count(step => step.MustHold);

    /// <summary>How many reactions are seen.</summary>
    public required int Reactions { get; init; }

    /// <summary>Plans the walk of a book: shortest where the box is small, otherwise with its lower bound. The replayer has carried it out.</summary>
    /// <param name="book">The book.</param>
    /// <param name="limits">What may be used.</param>
    /// <param name="stop">Ends it at once; what was found until then is told.</param>
    public static TestWalk Plan(Book book, SolveLimits limits, CancellationToken stop = default) =>
        new TourPlanner(book, new Budget(limits, TimeProvider.System, progress: null, stop)).Plan();
}

/// <summary>One handling of a walk.</summary>
public sealed record WalkStep
{
    /// <summary>What is done, or tried.</summary>
    public required Step Step { get; init; }

    /// <summary>Whether the box must hold: it is tried, gently, and nothing may move.</summary>
    public required bool MustHold { get; init; }

    /// <summary>What isn't so where the box must hold; empty where it is made.</summary>
    public ImmutableArray<Condition> Lacks { get; init; } = [];

    /// <summary>Whether something is tested by it; otherwise it only leads on or back.</summary>
    public required bool Tests { get; init; }

    /// <summary>Where hands leave what they move, facts and codes aside.</summary>
    public ImmutableArray<Placed> ByHand { get; init; } = [];

    /// <summary>Where the box itself leaves what moves by itself.</summary>
    public ImmutableArray<Placed> ByItself { get; init; } = [];

    /// <summary>What hands use up.</summary>
    public ImmutableArray<string> UsesUp { get; init; } = [];
}

/// <summary>Something that a walk doesn't test.</summary>
/// <param name="What">What it is.</param>
/// <param name="Step">The move that isn't made, or isn't tried; null for a reaction.</param>
/// <param name="Lacks">For a lock or a latch: what would have to be not so.</param>
/// <param name="At">Where it is written.</param>
/// <param name="Why">Why not, as a clause.</param>
/// <param name="IsProved">Whether no walk can test it.</param>
public sealed record LeftOut(string What, Step? Step, ImmutableArray<Condition> Lacks, Span At, string Why, bool IsProved);
