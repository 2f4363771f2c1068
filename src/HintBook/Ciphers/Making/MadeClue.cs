using System.Collections.Immutable;

namespace HintBook.Ciphers.Making;

/// <summary>What came of making a clue.</summary>
public abstract record Attempt
{
    private Attempt()
    {
    }

    /// <summary>A clue that has been proved to give its answer.</summary>
    /// <param name="Clue">The clue.</param>
    /// <param name="Proof">Its proof, run on what was made, with what else a solver might set.</param>
    public sealed record Made(MadeClue Clue, Proof Proof) : Attempt;

    /// <summary>There is no clue of this kind.</summary>
    /// <param name="Why">A sentence or two: what stands in the way and what to do instead.</param>
    public sealed record Refused(string Why) : Attempt;
}

/// <summary>A clue for an answer.</summary>
public sealed record MadeClue
{
    /// <summary>The name by which it was asked for.</summary>
    public required string Way { get; init; }

    /// <summary>What it gives: figures, or capital letters.</summary>
    public required string Answer { get; init; }

    /// <summary>The text as a solver meets it, lines parted by <c>\n</c>.</summary>
    public required string Text { get; init; }

    /// <summary>The steps that read it, each with what it is told.</summary>
    public required ImmutableArray<MadeStep> Reads { get; init; }

    /// <summary>How it is drawn.</summary>
    public ClueLook Look { get; init; }

    /// <summary>The mask that is laid on it, or null where there is none.</summary>
    public Grille? Mask { get; init; }
}

/// <summary>One step of reading, as an author writes it.</summary>
/// <param name="Way">The name of a way of reading.</param>
/// <param name="Told">What stands after it; empty for a bare name.</param>
public sealed record MadeStep(string Way, ImmutableArray<string> Told)
{
    /// <summary>The step as it stands in a book.</summary>
    public string Written => Chain.Written(Way, Told);
}

/// <summary>How a clue looks on paper.</summary>
public enum ClueLook
{
    /// <summary>Lines of text.</summary>
    Lines,

    /// <summary>A block of letters of equal size, in rows and columns.</summary>
    Block,

    /// <summary>Dots and dashes as bars.</summary>
    Signs,

    /// <summary>Words that are colours, as bands.</summary>
    Colours,

    /// <summary>Pairs of arms, one a line, as signallers who face the reader.</summary>
    Arms,

    /// <summary>Names of signal flags, one a line, as flags.</summary>
    Flags,

    /// <summary>Cells of Braille, as dots.</summary>
    Cells,

    /// <summary>Faces of dice, as dice.</summary>
    Dice,
}
