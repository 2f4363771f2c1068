using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Pages;

/// <summary>What stands in the list of the reset page: a line to be carried out, or a note.</summary>
internal abstract record ResetItem;

/// <summary>What hands do at once, to be ticked off.</summary>
internal sealed record ResetLine : ResetItem
{
    /// <summary>The step of the plan that it belongs to; null where there is no plan.</summary>
    public Step? Step { get; init; }

    /// <summary>The stage that is put back, or made again; null for handling.</summary>
    public Stage? Stage { get; init; }

    /// <summary>What is moved and told by a label and its name.</summary>
    public ImmutableArray<Placed> Labels { get; init; } = [];

    /// <summary>How, in the author's words.</summary>
    public string? Says { get; init; }

    /// <summary>The step of an undo that has those words; null where there are none.</summary>
    public UndoStep? SaidBy { get; init; }

    /// <summary>What is moved and named by those words.</summary>
    public ImmutableArray<Placed> Named { get; init; } = [];

    /// <summary>The names of all that moves with it, by hand or by itself.</summary>
    public ImmutableArray<string> Moved { get; init; } = [];

    /// <summary>Whether it moves nothing and only says how what stands above it is done.</summary>
    public bool IsOnlyHow => Says is not null && Named.IsEmpty && Labels.IsEmpty;
}

/// <summary>What the author says of putting a stage back, beside what is done for it.</summary>
internal sealed record ResetNote : ResetItem
{
    /// <summary>Whose note it is.</summary>
    public required Stage Stage { get; init; }

    /// <summary>A step of an undo that the plan doesn't need: its sentence is the note.</summary>
    public UndoStep? Step { get; init; }

    /// <summary>Why something never goes back.</summary>
    public Located<string>? Never { get; init; }

    /// <summary>The sentence of either; null where there is none.</summary>
    public string? Says => Step?.Says ?? Never?.Value;

    /// <summary>What stands under <c># Reset</c>.</summary>
    public Prose? Text { get; init; }

    /// <summary>Whether the stage's photos for this page stand with it.</summary>
    public bool HasPhotos { get; init; }
}

/// <summary>Lines and notes under one heading.</summary>
/// <param name="Stage">The stage whose title is the heading; null where all there is is handling.</param>
/// <param name="Cautions">The dangers that are met in it, each once.</param>
/// <param name="Items">What is done and said, in its order.</param>
internal sealed record ResetEntry(Stage? Stage, ImmutableArray<Caution> Cautions, ImmutableArray<ResetItem> Items);
