using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Finds parts that people are told to bring into a position for which the author has no words.</summary>
internal static class PositionWordsCheck
{
    /// <summary>Each part once, with the first of its positions that stands on the reset page. The positions of a range are words themselves.</summary>
    /// <param name="book">The book.</param>
    /// <param name="plan">How the box is put back.</param>
    public static IEnumerable<Finding> In(Book book, ImmutableArray<Step> plan)
    {
        var parts = book.Box.Parts.DistinctBy(part => part.Id.Value).ToDictionary(part => part.Id.Value);
        var stages = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);
        return
            from placed in plan.SelectMany(step => Told(book.Box, stages, step)).DistinctBy(placed => placed.Name)
            where parts.ContainsKey(placed.Name)
            let part = parts[placed.Name]
            where !part.Round && part.Details.GetValueOrDefault(placed.Position)?.Says is null
            select HandlingFindings.NoWords(part, placed.Position);
    }

    // The author's own sentence stands for a step of an undo, and the name of a move for the move.
    private static IEnumerable<Placed> Told(Box box, Dictionary<string, Stage> stages, Step step) => step.Kind switch
    {
        StepKind.FreeMove or StepKind.WayBack => step.Leaves,
        StepKind.PutBack when UndoOf(box, stages, step)?.Steps[step.Part] is { Says: null } part =>
            part.Changes.Select(change => new Placed(change.Name.Value, change.Position.Value)),
        _ => [],
    };

    private static Undo? UndoOf(Box box, Dictionary<string, Stage> stages, Step step) =>
        (step.Stage is { } stage ? stages[stage].Moves : box.Moves)[step.Move].Undo;
}
