using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Plays the rehearsals that an author keeps: each step must still be possible, and lead where it led.</summary>
public static class RehearsalCheck
{
    /// <summary>What doesn't come out any more. A rehearsal ends at its first step that isn't possible.</summary>
    /// <param name="book">The book; its names must be in order (<see cref="NameCheck"/>).</param>
    /// <param name="opens">
    /// Whether the box may open. In one that can't, a rehearsal stops where the box does, so only steps are told that the book hasn't.
    /// </param>
    public static IEnumerable<Finding> Run(Book book, bool opens = true)
    {
        if (book.Rehearsals.IsEmpty)
            return [];
        var box = new Replayer(book);
        return book.Rehearsals.SelectMany(kept => In(book, kept, box.Fresh(), opens));
    }

    /// <summary>The steps of the book that a written one may mean, in the book's order; empty where it has none.</summary>
    /// <param name="book">The book.</param>
    /// <param name="written">The step as it is written.</param>
    public static ImmutableArray<Step> Meant(Book book, PlayedStep written) => written switch
    {
        PlayedStep.Moved moved when PartOf(book, moved) is { } part && part.Positions.Contains(moved.To.Value) =>
        [
            new() { Kind = StepKind.FreeMove, Says = $"{part.Name}: {moved.To}", Leaves = [new(moved.Part.Value, moved.To.Value)] },
        ],
        PlayedStep.Made made =>
        [
            .. from move in MovesOf(book, made).Index()
               where made.Move is not { } name || move.Item.Name.Value == name.Value
               select new Step
               {
                   Kind = !made.Back.IsEmpty ? StepKind.WayBack : made.Stage is null ? StepKind.BookMove : StepKind.StageMove,
                   Says = made.Back.IsEmpty ? move.Item.Name.Value : $"back: {move.Item.Name}",
                   Stage = made.Stage?.Value,
                   Move = move.Index,
                   Leaves = [.. made.Back.Select(change => new Placed(change.Name.Value, change.Position.Value))],
               },
        ],
        _ => [],
    };

    private static List<Finding> In(Book book, KeptRehearsal kept, Replayer box, bool opens)
    {
        var strange = kept.Steps.Where(written => Meant(book, written).IsEmpty).Select(written => NotInTheBook(book, written)).ToList();
        if (strange.Count > 0 || !opens)
            return strange;
        foreach (var (number, written) in kept.Steps.Index())
        {
            var meant = Meant(book, written);
            var refused = meant.Select(step => box.Make(step)).TakeWhile(why => why is not null).ToArray();
            if (refused.Length == meant.Length)
                return [RehearsalFindings.NotPossible(written, number, meant[0], refused[0] ?? "", Missing(book, meant[0], box))];
        }

        return [.. kept.Then.Where(condition => !box.Stands(condition)).Select(condition => RehearsalFindings.EndsElsewhere(condition, box.Positions))];
    }

    private static Finding NotInTheBook(Book book, PlayedStep written) => written switch
    {
        PlayedStep.Moved moved when PartOf(book, moved) is { } part => RehearsalFindings.Strange(moved.To, $"position of “{moved.Part}”", part.Positions),
        PlayedStep.Moved moved => RehearsalFindings.Strange(moved.Part, "free part", book.Box.Parts.Where(IsFree).Select(part => part.Id.Value)),
        PlayedStep.Made { Move: { } move } made when MovesOf(book, made).Any() =>
            RehearsalFindings.Strange(move, "move", MovesOf(book, made).Select(each => each.Name.Value)),
        PlayedStep.Made { Stage: { } stage } => RehearsalFindings.Strange(stage, "stage", book.Stages.Select(each => each.Id.Value)),
        PlayedStep.Made { Move: { } move } => RehearsalFindings.Strange(move, "move", []),
        _ => throw new ArgumentOutOfRangeException(nameof(written), written, "A step names a stage, a move or a part."),
    };

    // What the step asks for and the box hasn't.
    private static Condition? Missing(Book book, Step step, Replayer box)
    {
        var needs = step switch
        {
            { Kind: StepKind.FreeMove } => book.Box.Parts.First(part => part.Id.Value == step.Leaves[0].Name).Needs,
            { Stage: { } id } => book.Stages.First(stage => stage.Id.Value == id).Moves[step.Move].Needs,
            _ => book.Box.Moves[step.Move].Needs,
        };
        return step.Kind == StepKind.WayBack ? null : needs.FirstOrDefault(condition => !box.Stands(condition));
    }

    private static ImmutableArray<Move> MovesOf(Book book, PlayedStep.Made made) => made.Stage is not { } id
        ? book.Box.Moves
        : book.Stages.FirstOrDefault(stage => stage.Id.Value == id.Value)?.Moves ?? [];

    private static Part? PartOf(Book book, PlayedStep.Moved moved) => book.Box.Parts.FirstOrDefault(part => part.Id.Value == moved.Part.Value && IsFree(part));

    private static bool IsFree(Part part) => part.Free || part.Turns;
}
