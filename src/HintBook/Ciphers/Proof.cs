using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>What one step of a working made of its text.</summary>
/// <param name="Way">The way's name with what it was told, as the author would write it.</param>
/// <param name="From">The text that it read.</param>
/// <param name="Rows">Piece by piece; empty where the text was read as a whole.</param>
/// <param name="To">What it gave.</param>
public sealed record WorkedStep(string Way, string From, ImmutableArray<Row> Rows, string To)
{
    /// <summary>The block of letters that a mask was laid on, or null.</summary>
    public MaskedBlock? Block { get; init; }
}

/// <summary>A block of letters with a mask on it.</summary>
/// <param name="Lines">The lines of the block, each as its letters.</param>
/// <param name="Holes">The row and the column, from 0, that each hole shows in the mask's first position.</param>
public sealed record MaskedBlock(ImmutableArray<ImmutableArray<string>> Lines, ImmutableArray<(int Row, int Column)> Holes)
{
    /// <summary>Whether a hole shows a place.</summary>
    public bool Shows(int row, int column) => Holes.Contains((row, column));
}

/// <summary>How another reading of a clue differs from the author's.</summary>
public enum ReadingKind
{
    /// <summary>Another habit of writing, or of reading the same way.</summary>
    Habit,

    /// <summary>A cipher that is turned the other way.</summary>
    OtherWayRound,

    /// <summary>Without one of the author's steps, or without all from one of them on.</summary>
    StepLeftOut,

    /// <summary>With another way in place of one of the author's steps.</summary>
    StepReplaced,

    /// <summary>With one other way alone.</summary>
    AnotherWay,

    /// <summary>The author's symbols in another order, or added up.</summary>
    Rearranged,

    /// <summary>What stands in the clue as it is.</summary>
    StandsThere,
}

/// <summary>Another setting that fits the lock and that a solver may read from the same clue.</summary>
/// <param name="Setting">What would be set.</param>
/// <param name="How">How it is read, in a few words.</param>
/// <param name="Kind">How it differs from the author's reading.</param>
/// <param name="Likely">Whether the clue itself suggests it; otherwise it is the right symbols in another order, or a longer shot.</param>
/// <param name="RuledOut">Why the author says that it is clearly wrong, or null.</param>
public sealed record OtherReading(string Setting, string How, ReadingKind Kind, bool Likely, string? RuledOut);

/// <summary>What is known of a code and its clue.</summary>
/// <param name="Code">The code.</param>
/// <param name="Says">Whether its clue leads to its answer.</param>
/// <param name="Steps">Every step that could be read, with its intermediate value.</param>
/// <param name="Others">Other readings, the likeliest first.</param>
public sealed record Proof(Code Code, Verdict Says, ImmutableArray<WorkedStep> Steps, ImmutableArray<OtherReading> Others);

/// <summary>What is known of a code in one copy.</summary>
/// <param name="Copy">The copy.</param>
/// <param name="Proof">The proof, with the copy's own answer and clue.</param>
public sealed record CopyProof(Copy Copy, Proof Proof);

/// <summary>Whether a clue leads to its answer.</summary>
public abstract record Verdict
{
    private Verdict()
    {
    }

    /// <summary>Its steps give the answer, and the answer can be set on its lock if it has one.</summary>
    public sealed record Proved : Verdict;

    /// <summary>A step goes wrong, the end isn't the answer, or the answer can't be set.</summary>
    /// <param name="Finding">What is wrong and where.</param>
    public sealed record Refuted(Finding Finding) : Verdict;

    /// <summary>There is nothing to prove it by.</summary>
    /// <param name="Why">What is missing.</param>
    public sealed record NotProved(string Why) : Verdict;

    /// <summary>It has an answer or a clue of its own in each copy.</summary>
    /// <param name="Copies">One proof for each copy, in the author's order.</param>
    public sealed record ByCopy(ImmutableArray<CopyProof> Copies) : Verdict;

    /// <summary><c>proved</c>, <c>refuted</c> or <c>not proved</c>.</summary>
    public string Word => this switch
    {
        Proved => "proved",
        Refuted => "refuted",
        ByCopy(var copies) when copies.All(copy => copy.Proof.Says is Proved) => "proved",
        ByCopy(var copies) when copies.Any(copy => copy.Proof.Says is Refuted) => "refuted",
        _ => "not proved",
    };
}
