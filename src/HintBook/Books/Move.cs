using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Books;

/// <summary>What a solver does: needs and changes.</summary>
public sealed record Move
{
    /// <summary>What a person would call it: <c>turn the dial to north</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>All of these must hold first.</summary>
    public ImmutableArray<Condition> Needs { get; init; } = [];

    /// <summary>What changes: <c>does</c>, <c>gives</c> and <c>takes</c> in one list.</summary>
    public ImmutableArray<Change> Changes { get; init; } = [];

    /// <summary>Whether the way back is open under the same needs.</summary>
    public bool Reversible { get; init; }

    /// <summary>
    /// Whether it takes and moves what lies behind something without going through there (<c>behind: []</c>): a chute, a string, a magnet from
    /// outside.
    /// </summary>
    public bool FromOutside { get; init; }

    /// <summary>How the maker or owner puts it back.</summary>
    public Undo? Undo { get; init; }
}

/// <summary>A move that the box makes by itself as soon as its conditions hold.</summary>
/// <param name="When">All of these must hold.</param>
/// <param name="Changes">What changes.</param>
/// <param name="At">Where it is written.</param>
public sealed record Reaction(ImmutableArray<Condition> When, ImmutableArray<Change> Changes, Span At);

/// <summary>One part, thing or fact goes to one position.</summary>
/// <param name="Name">What changes.</param>
/// <param name="Position">Where it goes; for <c>gives</c> and <c>takes</c> the position that the word implies.</param>
public sealed record Change(Located<string> Name, Located<string> Position)
{
    /// <summary>
    /// Whether it was written as <c>gives</c>: a thing is then taken from where it is hidden, or out of a slot that the move's own needs name;
    /// elsewhere it stays.
    /// </summary>
    public bool Given { get; init; }
}

/// <summary>What must hold before something happens.</summary>
public abstract record Condition
{
    /// <summary>Where it is written.</summary>
    public required Span At { get; init; }
}

/// <summary>A name is in one of some positions.</summary>
public sealed record InPosition : Condition
{
    /// <summary>The part, thing, fact or code.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>The positions that will do; empty for a bare name, which asks for the thing in hand or the fact known.</summary>
    public required ImmutableArray<Located<string>> Positions { get; init; }
}

/// <summary>At least one of several conjunctions holds.</summary>
public sealed record AnyOf : Condition
{
    /// <summary>The alternatives; all conditions of one of them must hold.</summary>
    public required ImmutableArray<ImmutableArray<Condition>> Alternatives { get; init; }
}

/// <summary>How a stage or a move is put back.</summary>
/// <param name="Steps">What is done, one after the other; nothing comes between. Written as a map it is one step.</param>
/// <param name="Never">Why what the stage moved isn't meant to go back, as far as the steps don't put it back; or null.</param>
/// <param name="At">Where it is written.</param>
public sealed record Undo(ImmutableArray<UndoStep> Steps, Located<string>? Never, Span At)
{
    /// <summary>An undo of one step.</summary>
    public Undo(ImmutableArray<Located<string>> putBack, ImmutableArray<Change> changes, string? says, Span at)
        : this([new UndoStep { PutBack = putBack, Changes = changes, Says = says, At = at }], null, at)
    {
    }
}

/// <summary>What is done at once in putting something back.</summary>
public sealed record UndoStep
{
    /// <summary>All of these must hold first.</summary>
    public ImmutableArray<Condition> Needs { get; init; } = [];

    /// <summary>Things that go from the hand to where they started, or come back if the stage used them up.</summary>
    public ImmutableArray<Located<string>> PutBack { get; init; } = [];

    /// <summary>What goes to a stated position.</summary>
    public ImmutableArray<Change> Changes { get; init; } = [];

    /// <summary>How, in the author's words.</summary>
    public string? Says { get; init; }

    /// <summary>Where it is written.</summary>
    public required Span At { get; init; }
}
