using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Dials the long way round: each is turned through every one of its positions. A turn among positions that the book doesn't name counts as no step of its
/// own, since a person turns past them in one.
/// </summary>
internal sealed partial class NaiveExplorer
{
    /// <summary>The positions after the first that tell something apart: of a dial those that the book names, and the first of each run between them.</summary>
    public IEnumerable<string> Telling(Named name) => name is Part { Turns: true } dial
        ? dial.Positions.Skip(1).Where((position, before) => IsNamed(dial, position) || IsNamed(dial, dial.Positions[before]))
        : name.Positions.Skip(1);

    private void AddTurns(Part dial)
    {
        foreach (var by in new[] { 1, -1 })
        {
            acts.Add((
                $"turn/{dial.Id.Value}/{by}",
                s => Neighbour(dial, s.At[dial.Id.Value], by) is { } to && All(s, dial.Needs) && CanReach(s.At, With(s.At, dial.Id.Value, to)),
                s => s.At[dial.Id.Value] = Neighbour(dial, s.At[dial.Id.Value], by) ?? s.At[dial.Id.Value],
                null,
                -1));
        }
    }

    private static string? Neighbour(Part dial, string at, int by)
    {
        var (count, to) = (dial.Positions.Length, dial.Positions.IndexOf(at) + by);
        return to >= 0 && to < count ? dial.Positions[to] : dial.Round ? dial.Positions[(to + count) % count] : null;
    }

    private int Steps(string act, State from, State to) =>
        book.Box.Parts.Any(dial => act.StartsWith($"turn/{dial.Id.Value}/", StringComparison.Ordinal)
            && !IsNamed(dial, from.At[dial.Id.Value])
            && !IsNamed(dial, to.At[dial.Id.Value])) ? 0 : 1;

    private bool IsNamed(Part dial, string position) => position == dial.Positions[0] || inTheBook.Contains((dial.Id.Value, position));

    // Every position that a condition or a change speaks of.
    private static HashSet<(string, string)> PositionsIn(Book book)
    {
        var found = new HashSet<(string, string)>();
        Asked(book.Goal);
        foreach (var name in book.Box.Names)
        {
            Asked(name.Behind ?? []);
            Asked(name is Part part ? part.Needs : []);
        }

        foreach (var reaction in book.Box.Reactions)
        {
            Asked(reaction.When);
            Changed(reaction.Changes);
        }

        foreach (var move in book.Box.Moves.Concat(book.Stages.SelectMany(stage => stage.Moves)))
        {
            Asked(move.Needs);
            Changed(move.Changes);
            foreach (var step in move.Undo is { } undo ? undo.Steps : [])
            {
                Asked(step.Needs);
                Changed(step.Changes);
            }
        }

        return found;

        void Changed(IEnumerable<Change> changes) => found.UnionWith(changes.Select(change => (change.Name.Value, change.Position.Value)));

        void Asked(IEnumerable<Condition> conditions)
        {
            foreach (var condition in conditions)
            {
                if (condition is InPosition need)
                    found.UnionWith(need.Positions.Select(position => (need.Name.Value, position.Value)));
                else if (condition is AnyOf any)
                    any.Alternatives.ToList().ForEach(alternative => Asked(alternative));
            }
        }
    }
}
