using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Tours;

namespace HintBook.Tests.Mechanism;

/// <summary>What every test walk keeps, asked of the book's records and of the replayer alone.</summary>
internal static class WalkLaws
{
    /// <summary>The first law that is broken, as a sentence, or null.</summary>
    public static string? Broken(Book book, TestWalk walk)
    {
        var box = new Replayer(book);
        var (made, stood) = (new HashSet<string>(), new HashSet<Placed>());
        if (walk.Length is WalkLength.NotProved)
            return walk.Steps.IsEmpty ? null : "nothing is known of a walk that is there";
        foreach (var step in walk.Steps)
        {
            var before = box.Positions;
            var why = box.Make(step.Step);
            if (step.MustHold && (why is null || !box.Positions.SequenceEqual(before)))
                return $"it gives way: {step.Step}";
            if (step.MustHold && step.Step.Kind is StepKind.StageMove or StepKind.BookMove && IsMadeAlready(book, step.Step, box))
                return $"it is tried where it would move nothing: {step.Step}";
            if (!step.MustHold && why is not null)
                return $"{step.Step} isn't possible: {why}";
            if (!step.MustHold && step.Step.Kind is StepKind.StageMove or StepKind.BookMove && Moves(book, step.Step, box))
                made.Add(NameOf(step.Step));
            else if (!step.MustHold && step.Step is { Kind: StepKind.FreeMove, Leaves: [var leaves] }
                && box.ByHand.GetValueOrDefault(leaves.Name) == leaves.Position)
                stood.Add(leaves);
        }

        if (walk.EndsOpen is null && !walk.Steps.IsEmpty && !box.Shipped)
            return "the box isn't as shipped at the end";
        var left = walk.LeftOut.Where(each => each.Step is not null && !each.What.StartsWith("that it holds", StringComparison.Ordinal))
            .Select(each => NameOf(each.Step!)).ToHashSet();
        var missing = All(book).Select(NameOf).Where(move => !made.Contains(move) && !left.Contains(move)).ToList();
        if (missing.Count > 0)
            return $"nobody makes {missing[0]}, and it isn't left out";
        var places = walk.LeftOut.Where(each => each.Step is null).Select(each => each.What).ToHashSet();
        foreach (var part in book.Box.Parts.Where(part => part.Free && part.Positions.Length <= 16))
        {
            bool Stood(string position) => stood.Contains(new(part.Id.Value, position)) || places.Contains($"{part.Name}: {position}");
            if (part.Positions.FirstOrDefault(position => !Stood(position)) is { } never)
                return $"{part.Id.Value} is never moved to {never}, and it isn't left out";
        }

        var seen = walk.Reactions + walk.LeftOut.Count(each => each.Step is null && each.What.StartsWith("what happens by itself", StringComparison.Ordinal));
        return seen == book.Box.Reactions.Length ? null : $"{seen} of {book.Box.Reactions.Length} reactions are seen or left out";
    }

    private static IEnumerable<Step> All(Book book) =>
    [
        .. from stage in book.Stages
           from move in stage.Moves.Index()
           select new Step { Kind = StepKind.StageMove, Says = "", Stage = stage.Id.Value, Move = move.Index },
        .. book.Box.Moves.Index().Select(move => new Step { Kind = StepKind.BookMove, Says = "", Move = move.Index }),
    ];

    // A move that has something to move must have moved it.
    private static bool Moves(Book book, Step step, Replayer box)
    {
        var move = step.Stage is { } id ? book.Stages.First(stage => stage.Id.Value == id).Moves[step.Move] : book.Box.Moves[step.Move];
        var moved = book.Box.Parts.Select(part => part.Id.Value).Concat(book.Box.Things.Select(thing => thing.Id.Value)).ToHashSet();
        return !move.Changes.Any(change => moved.Contains(change.Name.Value)) || box.ByHand.Keys.Any(moved.Contains);
    }

    private static bool IsMadeAlready(Book book, Step step, Replayer box)
    {
        var move = step.Stage is { } id ? book.Stages.First(stage => stage.Id.Value == id).Moves[step.Move] : book.Box.Moves[step.Move];
        return !move.Changes.Any(change => box.Positions.TryGetValue(change.Name.Value, out var at) && at != change.Position.Value
            && book.Box.Parts.Select(part => part.Id.Value).Concat(book.Box.Things.Select(thing => thing.Id.Value)).Contains(change.Name.Value));
    }

    private static string NameOf(Step step) => $"{step.Kind}/{step.Stage}/{step.Move}";
}
