using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Graph;

/// <summary>Finds what nothing gives and what nobody needs, and stages that stand where they can't be done yet.</summary>
internal static class GraphCheck
{
    public static IEnumerable<Finding> In(GainGraph graph, GainReachability whole, ImmutableDictionary<string, StageSurvey> outlooks)
    {
        return [.. NothingGives(graph), .. Unneeded(graph), .. Trail(graph, whole, outlooks)];
    }

    private static IEnumerable<Finding> NothingGives(GainGraph graph)
    {
        var given = graph.AtStart.Concat(graph.Steps.SelectMany(step => step.Gains)).Select(number => graph[number]).ToHashSet();
        given.UnionWith(WaysBack(graph.Book));
        return
            from condition in Conditions(graph.Book).SelectMany(Flat)
            where graph.Names.ContainsKey(condition.Name.Value)
            let positions = condition.Positions.IsEmpty
                ? [graph.Names[condition.Name.Value].Attained]
                : condition.Positions.Select(position => (string?)position.Value).ToArray()
            where !positions.Any(position => given.Contains(new Gain(condition.Name.Value, position)))
            let held = graph.Names[condition.Name.Value].Attained is { } attained && positions.Contains(attained)
            let name = condition.Name.Value
            group condition.At by (
                Described: held ? $"“{name}”" : $"“{name}” to be {Words.List(positions!, "or")}",
                Change: held ? $"gives: [ {name} ]" : $"does: {{ {name}: {positions[0]} }}") into missing
            select GraphFindings.NothingGives([.. missing.Distinct()], missing.Key.Described, missing.Key.Change);
    }

    // Where a reversible move may lead back to: what its needs ask of the parts that it changes.
    private static IEnumerable<Gain> WaysBack(Book book) =>
        from move in book.Box.Moves.Concat(book.Stages.SelectMany(stage => stage.Moves))
        where move.Reversible
        from need in move.Needs.SelectMany(Flat)
        where move.Changes.Any(change => change.Name.Value == need.Name.Value)
        from position in need.Positions
        select new Gain(need.Name.Value, position.Value);

    private static IEnumerable<Finding> Unneeded(GainGraph graph)
    {
        var book = graph.Book;
        // A code that is set on a lock needs to be known; a thing put into a place has been of use even if no needs say so.
        var needed = Conditions(book).SelectMany(Flat).Select(condition => condition.Name.Value)
            .Concat(AllChanges(book).Where(change => !IsFirstHold(graph, change)).Select(change => change.Name.Value))
            .ToHashSet();
        return book.Box.Names
            .Where(named => named is Thing { RedHerring: false } or Fact { RedHerring: false } or Code)
            .Where(named => !needed.Contains(named.Id.Value) && !IsTreat(book, named))
            .Select(GraphFindings.Unneeded);
    }

    // What only optional stages give is there for its own sake: a treat. A code that nothing is set to stays a mistake.
    private static bool IsTreat(Book book, Named named)
    {
        var givers = book.Stages.Where(stage => stage.Moves.SelectMany(move => move.Changes).Any(IsHeld)).ToArray();
        return named is Thing or Fact
            && givers.Length > 0
            && givers.All(stage => stage.Optional)
            && !book.Box.Moves.SelectMany(move => move.Changes).Concat(book.Box.Reactions.SelectMany(reaction => reaction.Changes)).Any(IsHeld);

        bool IsHeld(Change change) => change.Name.Value == named.Id.Value && change.Position.Value == named.Attained;
    }

    private static bool IsFirstHold(GainGraph graph, Change change) =>
        graph.Names.GetValueOrDefault(change.Name.Value)?.Attained == change.Position.Value;

    // Goes through the stages in the author's order, granting what a misplaced one would give, so that one mistake is said once.
    private static IEnumerable<Finding> Trail(GainGraph graph, GainReachability whole, ImmutableDictionary<string, StageSurvey> outlooks)
    {
        var stages = graph.Book.Stages;
        var steps = Enumerable.Range(0, graph.Steps.Length).ToLookup(index => graph.Steps[index].Stage ?? -1);
        var soFar = new GainReachability(graph);
        var told = new HashSet<int>();
        for (var i = 0; i < stages.Length; i++)
        {
            soFar.Allow(steps[i]);
            var done = graph.Done(i);
            if (!whole.Has(done))
                continue;
            if (soFar.Has(done))
            {
                var before = outlooks[stages[i].Id.Value].CertainBefore.Select(id => graph.StageNumbers[id]).ToList();
                if (before.Find(other => other > i) is > 0 and var later && !before.Exists(told.Contains))
                {
                    told.Add(i);
                    yield return GraphFindings.TrailByWays(stages[i], stages[later]);
                }

                continue;
            }

            told.Add(i);
            var lacking = Lack.In(new AllWanted([.. steps[i].Select(step => graph.Steps[step].Wants)]), soFar)!.Value;
            yield return GraphFindings.Trail(stages[i], Lack.Described(graph, lacking), Giver(graph, whole, lacking, i));
            soFar.Grant(steps[i].SelectMany(step => graph.Steps[step].Gains));
        }
    }

    // The first later stage that gives it, or that leads to it through handling.
    private static Stage? Giver(GainGraph graph, GainReachability whole, int lacking, int after) =>
        whole.Order.Select(index => graph.Steps[index])
            .Where(step => step.Stage > after && step.Gains.Contains(lacking))
            .Select(step => graph.Book.Stages[step.Stage!.Value])
            .FirstOrDefault();

    private static IEnumerable<Condition> Conditions(Book book) =>
    [
        .. book.Goal,
        .. book.Box.Parts.SelectMany(part => part.Needs),
        .. book.Box.Names.SelectMany(named => named.Behind ?? []),
        .. book.Box.Moves.SelectMany(move => move.Needs),
        .. book.Box.Reactions.SelectMany(reaction => reaction.When),
        .. book.Stages.SelectMany(stage => stage.Moves).SelectMany(move => move.Needs).Distinct(),
    ];

    private static IEnumerable<Change> AllChanges(Book book) =>
    [
        .. book.Box.Moves.SelectMany(move => move.Changes),
        .. book.Box.Reactions.SelectMany(reaction => reaction.Changes),
        .. book.Stages.SelectMany(stage => stage.Moves).SelectMany(move => move.Changes),
    ];

    private static IEnumerable<InPosition> Flat(Condition condition) => condition switch
    {
        AnyOf any => any.Alternatives.SelectMany(all => all.SelectMany(Flat)),
        InPosition one => [one],
        _ => [],
    };
}
