using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Pages;

/// <summary>What authors say of putting stages back beside what is done, and beside which line it stands.</summary>
internal static class ResetNotes
{
    /// <summary>The undos of a stage, each once: one that the stage has as a whole is shared by its moves.</summary>
    public static IEnumerable<Undo> UndosOf(Stage stage) => stage.Moves.Select(move => move.Undo).OfType<Undo>().Distinct();

    /// <summary>What a step of a plan that puts something back is written as.</summary>
    /// <param name="box">The box.</param>
    /// <param name="stages">The stages by id.</param>
    /// <param name="step">The step.</param>
    public static UndoStep? UndoOf(Box box, IReadOnlyDictionary<string, Stage> stages, Step step)
    {
        var moves = step.Stage is { } id ? stages[id].Moves : box.Moves;
        return moves[step.Move].Undo?.Steps[step.Part];
    }

    /// <summary>The notes of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="planned">The steps of undos that lines say already.</param>
    public static IEnumerable<ResetNote> Of(Stage stage, IReadOnlySet<UndoStep> planned)
    {
        foreach (var undo in UndosOf(stage))
        {
            foreach (var step in undo.Steps.Where(step => !planned.Contains(step) && step.Says is not null))
                yield return new() { Stage = stage, Step = step };
            if (undo.Never is not null)
                yield return new() { Stage = stage, Never = undo.Never };
        }

        var photos = stage.Photos.Any(photo => photo.Place == Place.Reset);
        if (stage.Reset is not null || photos)
            yield return new() { Stage = stage, Text = stage.Reset, HasPhotos = photos };
    }

    /// <summary>
    /// Where the notes of a stage stand: behind the line that puts back the last of what its moves moved. If they moved nothing that goes
    /// back, at the line that puts back the last of what they need: behind it for things, before it for parts, since that is when they
    /// still stand as the stage needs them. Null if there is no such line.
    /// </summary>
    public static NotePlace? PlaceOf(Stage stage, IReadOnlyDictionary<string, int> lastMoved, IReadOnlySet<string> things)
    {
        if (LastOf(MovedBy(stage)) is { } own)
            return new(own, Before: false);
        string[] needs = [.. stage.Moves.SelectMany(move => move.Needs).SelectMany(NamesIn).Distinct()];
        if (LastOf(needs.Where(things.Contains)) is { } thing)
            return new(thing, Before: false);
        return LastOf(needs) is { } part ? new(part, Before: true) : null;

        int? LastOf(IEnumerable<string> names) => names.Where(lastMoved.ContainsKey).Select(name => (int?)lastMoved[name]).Max();
    }

    /// <summary>The names of what a stage's moves move.</summary>
    public static IEnumerable<string> MovedBy(Stage stage) => stage.Moves.SelectMany(move => move.Changes).Select(change => change.Name.Value);

    private static IEnumerable<string> NamesIn(Condition condition) => condition switch
    {
        InPosition one => [one.Name.Value],
        AnyOf any => any.Alternatives.SelectMany(all => all).SelectMany(NamesIn),
        _ => [],
    };
}

/// <summary>A place in a list of lines.</summary>
/// <param name="Line">The number of the line.</param>
/// <param name="Before">Whether it is before the line, not behind it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct NotePlace(int Line, bool Before);
