using HintBook.Books;

namespace HintBook.Maps;

/// <summary>Finds the stages in which the box is solved.</summary>
internal static class Goals
{
    /// <summary>
    /// The stages with a move that attains a condition of the goal. Where no stage does, the box does it by itself or by plain
    /// handling: then the stages that set this off, however many steps back the nearest are. Empty if there are none.
    /// </summary>
    public static HashSet<Stage> Find(Book book)
    {
        var wanted = Positions(book.Goal).ToHashSet();
        while (true)
        {
            var stages = book.Stages.Where(stage => stage.Moves.Any(move => Attains(move.Changes, wanted))).ToHashSet();
            if (stages.Count > 0)
                return stages;

            var earlier =
                book.Box.Reactions.Where(reaction => Attains(reaction.Changes, wanted)).SelectMany(reaction => reaction.When)
                .Concat(book.Box.Moves.Where(move => Attains(move.Changes, wanted)).SelectMany(move => move.Needs));
            var before = wanted.Count;
            wanted.UnionWith(Positions(earlier));
            if (wanted.Count == before)
                return [];
        }
    }

    private static bool Attains(IEnumerable<Change> changes, HashSet<(string Name, string? Position)> wanted) =>
        changes.Any(change => wanted.Contains((change.Name.Value, change.Position.Value)) || wanted.Contains((change.Name.Value, null)));

    // A bare name asks for the thing in hand or the fact known; null stands for "whatever attains it".
    private static IEnumerable<(string Name, string? Position)> Positions(IEnumerable<Condition> conditions) =>
        conditions.SelectMany(condition => condition switch
        {
            InPosition { Positions: [] } bare => [(bare.Name.Value, null)],
            InPosition some => some.Positions.Select(position => (some.Name.Value, (string?)position.Value)),
            AnyOf any => Positions(any.Alternatives.SelectMany(conjunction => conjunction)),
            _ => [],
        });
}
