using System.Collections.Immutable;

namespace HintBook.Mechanism;

/// <summary>Where a step of a way comes from.</summary>
public enum StepKind
{
    /// <summary>A move of a stage.</summary>
    StageMove,

    /// <summary>A move of <c>book.yaml</c>.</summary>
    BookMove,

    /// <summary>A free part goes to one of its positions.</summary>
    FreeMove,

    /// <summary>A reversible move is taken back.</summary>
    WayBack,

    /// <summary>The maker or owner puts back what an <c>undo</c> says.</summary>
    PutBack,

    /// <summary>A thing that was used up is replaced by a new one.</summary>
    Replace,
}

/// <summary>One thing that a person does: enough to say it, and enough to do it again from the book alone.</summary>
public sealed record Step
{
    /// <summary>Where it comes from.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>What a person would call it.</summary>
    public required string Says { get; init; }

    /// <summary>The stage's id, where it belongs to one.</summary>
    public string? Stage { get; init; }

    /// <summary>The number of the move in its stage or in the book, from 0; -1 where there is none.</summary>
    public int Move { get; init; } = -1;

    /// <summary>The number of the step in an <c>undo</c> of several, from 0.</summary>
    public int Part { get; init; }

    /// <summary>Where the step itself leaves the parts, reactions aside: for free parts, ways back and what is put back.</summary>
    public ImmutableArray<Placed> Leaves { get; init; } = [];

    /// <inheritdoc/>
    public override string ToString() => Says;
}

/// <summary>A name and a position of it.</summary>
public readonly record struct Placed(string Name, string Position);
