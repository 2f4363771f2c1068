using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Finds undos that can never be carried out, because what they ask for contradicts where their stage left things.</summary>
internal static class UndoCheck
{
    /// <summary>All of them, each at the place in the undo that contradicts.</summary>
    public static IEnumerable<Finding> Contradictions(Book book)
    {
        var names = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
        var reacting = book.Box.Reactions.SelectMany(reaction => reaction.Changes).Select(change => change.Name.Value).ToHashSet();
        var groups = book.Stages.Select(stage => stage.Moves).Concat(book.Box.Moves.Select(move => ImmutableArray.Create(move)));
        return
            from moves in groups
            from undo in moves.Select(move => move.Undo).OfType<Undo>().Distinct()
            from finding in In(undo, moves, names, reacting)
            select finding;
    }

    private static IEnumerable<Finding> In(Undo undo, ImmutableArray<Move> moves, Dictionary<string, Named> names, HashSet<string> reacting)
    {
        var touched = undo.Steps
            .SelectMany(step => step.PutBack.Select(thing => thing.Value).Concat(step.Changes.Select(change => change.Name.Value)))
            .ToHashSet();
        var usedUp = moves.SelectMany(move => move.Changes)
            .Where(change => change.Position.Value == Thing.UsedUp)
            .Select(change => change.Name.Value)
            .ToHashSet();
        var left = moves.SelectMany(move => move.Changes)
            .Where(change => touched.Contains(change.Name.Value) && !reacting.Contains(change.Name.Value));
        var at = new Dictionary<string, string>();
        foreach (var change in left)
            at[change.Name.Value] = change.Position.Value;
        foreach (var step in undo.Steps)
        {
            var contradicted = step.Needs.OfType<InPosition>()
                .Where(need => at.TryGetValue(need.Name.Value, out var position) && !Accepts(need, position, names));
            foreach (var need in contradicted)
                yield return HandlingFindings.UndoNeedsOtherwise(need, at[need.Name.Value]);
            foreach (var thing in step.PutBack.Where(thing => names.GetValueOrDefault(thing.Value) is Thing))
            {
                var start = names[thing.Value].Positions[0];
                if (at.TryGetValue(thing.Value, out var position)
                    && position != Thing.InHand
                    && position != start
                    && !(position == Thing.UsedUp && usedUp.Contains(thing.Value)))
                {
                    yield return HandlingFindings.PutBackFromElsewhere(thing, position);
                }

                at[thing.Value] = start;
            }

            foreach (var change in step.Changes.Where(change => at.GetValueOrDefault(change.Name.Value) != Thing.UsedUp))
                at[change.Name.Value] = change.Position.Value;
        }
    }

    private static bool Accepts(InPosition need, string position, Dictionary<string, Named> names) => need.Positions.IsEmpty
        ? !names.TryGetValue(need.Name.Value, out var named) || named.Attained == position
        : need.Positions.Any(each => each.Value == position);
}
