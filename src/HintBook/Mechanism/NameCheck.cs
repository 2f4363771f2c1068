using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism;

/// <summary>Finds every name and position in <c>needs</c>, <c>does</c> and the like that the book doesn't declare.</summary>
public static class NameCheck
{
    /// <summary>All dangling names of a book.</summary>
    public static IEnumerable<Finding> Run(Book book)
    {
        var names = new Dictionary<string, Named>();
        foreach (var named in book.Box.Names)
            names.TryAdd(named.Id.Value, named);
        var stages = book.Stages.Select(stage => stage.Id.Value).ToHashSet();
        var moves = book.Box.Moves.Concat(book.Stages.SelectMany(stage => stage.Moves)).ToArray();

        IEnumerable<Finding> all =
        [
            .. InConditions(book.Goal, names),
            .. book.Box.Parts.SelectMany(part => InConditions(part.Needs, names)),
            .. book.Box.Names.SelectMany(named => InConditions(named.Behind ?? [], names)),
            .. book.Box.Parts.SelectMany(part => InConditions(part.ShowsWhen, names)),
            .. BehindCheck.Circles(book, names),
            .. moves.SelectMany(move => InConditions(move.Needs, names)),
            .. moves.SelectMany(move => InChanges(move.Changes, names)),
            .. moves.Select(move => move.Undo).OfType<Undo>().Distinct().SelectMany(undo => undo.Steps).SelectMany(step => InUndo(step, names)),
            .. book.Box.Reactions.SelectMany(reaction => InConditions(reaction.When, names)),
            .. book.Box.Reactions.SelectMany(reaction => InChanges(reaction.Changes, names)),
            .. book.Box.Things.SelectMany(InStart),
            .. book.Stages.SelectMany(stage => stage.After)
                .Where(id => book.KnowsAllStages && !stages.Contains(id.Value))
                .Select(id => NameFindings.NoStage(id, stages)),
            .. book.AllPhotos.SelectMany(photo => photo.Shows)
                .Where(shown => !names.ContainsKey(shown.Value)).Select(shown => NameFindings.Unknown(shown, names)),
        ];
        return all;
    }

    private static IEnumerable<Finding> InConditions(ImmutableArray<Condition> conditions, Dictionary<string, Named> names) =>
        conditions.SelectMany(condition => condition switch
        {
            AnyOf any => any.Alternatives.SelectMany(all => InConditions(all, names)),
            InPosition one => InPosition(one, names),
            _ => [],
        });

    private static IEnumerable<Finding> InPosition(InPosition condition, Dictionary<string, Named> names)
    {
        if (!names.TryGetValue(condition.Name.Value, out var named))
            return [NameFindings.Unknown(condition.Name, names)];
        if (condition.Positions.IsEmpty && named.Attained is null)
            return [NameFindings.BarePart(condition.Name, named)];
        return condition.Positions.Where(position => !named.Positions.Contains(position.Value))
            .Select(position => NameFindings.NoPosition(position, named));
    }

    private static IEnumerable<Finding> InChanges(ImmutableArray<Change> changes, Dictionary<string, Named> names) =>
        changes.SelectMany<Change, Finding>(change =>
            !names.TryGetValue(change.Name.Value, out var named) ? [NameFindings.Unknown(change.Name, names)]
            : named.Positions.Contains(change.Position.Value) ? []
            : change.Position.At == change.Name.At ? [NameFindings.NoThing(change.Name, named, named.Positions[^1])]
            : [NameFindings.NoPosition(change.Position, named)]);

    private static IEnumerable<Finding> InUndo(UndoStep step, Dictionary<string, Named> names) =>
    [
        .. InConditions(step.Needs, names),
        .. from name in step.PutBack
           where names.GetValueOrDefault(name.Value) is not Thing
           select names.TryGetValue(name.Value, out var named) ? NameFindings.NoThing(name, named, named.Positions[0]) : NameFindings.Unknown(name, names),
        .. InChanges(step.Changes, names),
    ];

    private static IEnumerable<Finding> InStart(Thing thing) =>
        thing.Starts is Thing.Hidden or Thing.InHand || thing.Fits.Any(place => place.Value == thing.Starts)
            ? []
            : [NameFindings.NoStart(thing)];
}
