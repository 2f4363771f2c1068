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
public sealed record Change(Located<string> Name, Located<string> Position);

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
/// <param name="PutBack">Things that go back to where they started.</param>
/// <param name="Changes">Parts that go back to a stated position.</param>
/// <param name="Note">How, in the author's words.</param>
/// <param name="At">Where it is written.</param>
public sealed record Undo(ImmutableArray<Located<string>> PutBack, ImmutableArray<Change> Changes, string? Note, Span At);
