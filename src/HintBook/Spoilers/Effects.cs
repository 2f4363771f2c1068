using HintBook.Books;

namespace HintBook.Spoilers;

/// <summary>What a stage has to do with the names of the box.</summary>
/// <param name="Needs">Every name in its needs, alternatives included, and in the handling that brings a part into the position it needs.</param>
/// <param name="Surely">Names that hold in some other position than the shipped one before any of its moves can be made.</param>
/// <param name="Moves">Parts and things that it changes without giving them.</param>
/// <param name="Gives">Things, facts and codes that come into the solver's hand or head.</param>
/// <param name="SetsOff">Names that reactions change behind it.</param>
internal sealed record Effects(HashSet<string> Needs, HashSet<string> Surely, HashSet<string> Moves, HashSet<string> Gives, HashSet<string> SetsOff)
{
    /// <summary>What one stage of a book does.</summary>
    public static Effects Derive(Stage stage, Book book, IReadOnlyDictionary<string, Named> names)
    {
        var needs = stage.Moves.SelectMany(move => move.Needs).SelectMany(Flat).ToArray();
        var changes = stage.Moves.SelectMany(move => move.Changes).ToArray();
        var gives = changes.Where(IsGiven).Select(change => change.Name.Value).ToHashSet();
        var needed = needs.Select(need => need.Name.Value).ToHashSet();
        foreach (var move in book.Box.Moves.Where(move => move.Changes.Any(change => needs.Any(need => Asks(need, change)))))
            needed.UnionWith(move.Needs.SelectMany(Flat).Select(need => need.Name.Value).Where(name => names.GetValueOrDefault(name) is Part));
        var surely = stage.Moves
            .Select(move => move.Needs.OfType<InPosition>().Where(HasChanged).Select(need => need.Name.Value).ToHashSet())
            .Aggregate((common, more) => [.. common.Intersect(more)]);
        return new Effects(
            needed,
            surely,
            [.. changes.Where(change => !IsGiven(change)).Select(change => change.Name.Value)],
            gives,
            SetOff(book, changes, needed, needs));

        bool IsGiven(Change change) => names.GetValueOrDefault(change.Name.Value)?.Attained == change.Position.Value;

        bool HasChanged(InPosition need) =>
            names.GetValueOrDefault(need.Name.Value) is { } named
            && (need.Positions.IsEmpty || need.Positions.All(position => position.Value != named.Positions[0]));
    }

    // A reaction belongs to a stage that brings about one of its conditions; to one without changes if all it waits for is spoken of there.
    private static HashSet<string> SetOff(Book book, Change[] changes, HashSet<string> needed, InPosition[] needs)
    {
        var done = changes.Select(change => (change.Name.Value, change.Position.Value)).ToHashSet();
        var free = book.Box.Parts.Where(part => part.Free).Select(part => part.Id.Value).ToHashSet();
        if (changes.Length == 0)
            done.UnionWith(needs.SelectMany(need => need.Positions.Select(position => (need.Name.Value, position.Value))));
        HashSet<string> set = [];
        for (var more = true; more;)
        {
            more = false;
            foreach (var reaction in book.Box.Reactions)
            {
                var when = reaction.When.SelectMany(Flat).ToArray();
                var begun = when.Any(one => one.Positions.Any(position => done.Contains((one.Name.Value, position.Value))))
                    || (changes.Length == 0 && when.All(one => needed.Contains(one.Name.Value) || free.Contains(one.Name.Value)));
                if (!begun)
                    continue;
                foreach (var change in reaction.Changes)
                {
                    set.Add(change.Name.Value);
                    more |= done.Add((change.Name.Value, change.Position.Value));
                }
            }
        }

        return set;
    }

    private static bool Asks(InPosition need, Change change) =>
        need.Name.Value == change.Name.Value && need.Positions.Any(position => position.Value == change.Position.Value);

    private static IEnumerable<InPosition> Flat(Condition condition) => condition switch
    {
        InPosition one => [one],
        AnyOf any => any.Alternatives.SelectMany(all => all.SelectMany(Flat)),
        _ => [],
    };
}
