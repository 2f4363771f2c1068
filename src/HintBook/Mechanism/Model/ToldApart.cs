using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>
/// The positions of a part that the explorers tell apart. What nothing in the book names is one with what it can't be told from: all such positions of a
/// part that jumps, and each run of them between two that are named on a dial. One of them, the first, stands for all.
/// </summary>
internal sealed class ToldApart
{
    private const int ManyPositions = 16;
    private readonly HashSet<(string Name, string Position)> named;

    /// <summary>Collects what a book names.</summary>
    public ToldApart(Book book)
    {
        var moves = book.Box.Moves.Concat(book.Stages.SelectMany(stage => stage.Moves)).ToArray();
        var steps = moves.Select(move => move.Undo).OfType<Undo>().SelectMany(undo => undo.Steps).ToArray();
        IEnumerable<Condition> conditions =
        [
            .. book.Goal,
            .. book.Box.Parts.SelectMany(part => part.Needs),
            .. book.Box.Parts.SelectMany(part => part.ShowsWhen),
            .. book.Box.Names.SelectMany(name => name.Behind ?? []),
            .. book.Box.Reactions.SelectMany(reaction => reaction.When),
            .. moves.SelectMany(move => move.Needs),
            .. steps.SelectMany(step => step.Needs),
        ];
        var changes = moves.SelectMany(move => move.Changes)
            .Concat(book.Box.Reactions.SelectMany(reaction => reaction.Changes))
            .Concat(steps.SelectMany(step => step.Changes));
        named =
        [
            .. conditions.SelectMany(Flat).SelectMany(one => one.Positions.Select(position => (one.Name.Value, position.Value))),
            .. changes.Select(change => (change.Name.Value, change.Position.Value)),
        ];
    }

    /// <summary>Whether a position that is kept stands for itself alone.</summary>
    public bool IsOne(Named name, string position) =>
        Of(name).Length == name.Positions.Length || position == name.Positions[0] || named.Contains((name.Id.Value, position));

    /// <summary>The positions that are kept, in their order.</summary>
    public ImmutableArray<string> Of(Named name)
    {
        var positions = name.Positions;
        if (name is not Part part || (!part.Turns && positions.Length <= ManyPositions))
            return positions;
        var kept = ImmutableArray.CreateBuilder<string>();
        var spare = false;
        foreach (var (index, position) in positions.Index())
        {
            var known = index == 0 || named.Contains((part.Id.Value, position));
            if (known || !spare)
                kept.Add(position);
            spare = part.Turns ? !known : spare || !known;
        }

        // The last run of a round dial goes on to the first position, which is named as shipped; so no two runs meet.
        return kept.ToImmutable();
    }

    private static IEnumerable<InPosition> Flat(Condition condition) => condition switch
    {
        AnyOf any => any.Alternatives.SelectMany(all => all.SelectMany(Flat)),
        InPosition one => [one],
        _ => [],
    };
}
