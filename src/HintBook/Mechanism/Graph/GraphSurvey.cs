using System.Collections.Immutable;
using System.Numerics;
using HintBook.Books;

namespace HintBook.Mechanism.Graph;

/// <summary>Fills the <see cref="Survey"/> from the graph without losses: exact for what can't be reached, sound for what is certain.</summary>
internal static class GraphSurvey
{
    public static Survey Of(GainGraph graph, Spread whole)
    {
        var stages = graph.Book.Stages;
        var certain = CertainStages.In(graph, whole);
        var ways = WaysTo(graph, whole);
        var wants = graph.Steps.Where(step => step.Stage is not null).ToLookup(step => step.Stage!.Value, step => step.Wants);

        var before = new BigInteger[stages.Length];
        for (var i = 0; i < stages.Length; i++)
            before[i] = Without(certain.Before(new AnyWanted([.. wants[i]])) ?? BigInteger.Zero, i);

        var groups = new ImmutableArray<BigInteger>[stages.Length];
        for (var i = 0; i < stages.Length; i++)
            groups[i] = Nearest(Groups(new AnyWanted([.. wants[i]]), i), before);

        var reachable = Enumerable.Range(0, stages.Length).Select(i => whole.Has(graph.Done(i))).ToArray();
        var layers = Layers(groups, graph, whole);
        return new Survey
        {
            Opens = whole.Holds(graph.Goal),
            Stages = Enumerable.Range(0, stages.Length).ToImmutableDictionary(i => stages[i].Id.Value, i => new StageOutlook
            {
                Reachable = reachable[i],
                OpensAfter = [.. groups[i].Select(group => Ids(stages, group))],
                CertainBefore = Ids(stages, before[i]),
                Layer = layers[i],
            }),
            First = [.. Enumerable.Range(0, stages.Length).Where(i => reachable[i] && groups[i].IsEmpty).Select(i => stages[i].Id.Value)],
        };

        ImmutableArray<BigInteger> Groups(Want want, int stage) =>
            WaysOf(want, ways).Without(stage) is { IsNone: false } open
                ? open.Groups
                // No way at all: what would be certain is the best that can be said.
                : [.. CertainStages.Indices(before[stage]).Select(one => BigInteger.One << one)];
    }

    // For each gain the stages that give it; handling and reactions in between are followed to the stages behind them.
    private static Ways[] WaysTo(GainGraph graph, Spread whole)
    {
        var ways = new Ways[graph.Count];
        Array.Fill(ways, Ways.None);
        foreach (var gain in graph.AtStart)
            ways[gain] = Ways.Free;
        foreach (var step in whole.Order.Select(index => graph.Steps[index]).Where(step => step.Stage is not null))
        {
            foreach (var gain in step.Gains)
                ways[gain] = Ways.Either(ways[gain], Ways.By(step.Stage!.Value));
        }

        var handling = whole.Order.Select(index => graph.Steps[index]).Where(step => step.Stage is null).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var step in handling)
            {
                var here = WaysOf(step.Wants, ways);
                foreach (var gain in step.Gains)
                {
                    var now = Ways.Either(ways[gain], here);
                    if (now.SameAs(ways[gain]))
                        continue;
                    ways[gain] = now;
                    changed = true;
                }
            }
        }

        return ways;
    }

    private static Ways WaysOf(Want want, Ways[] ways) => want.Fold(
        gain => ways[gain],
        Ways.All,
        any => any.Aggregate(Ways.None, Ways.Either));

    // A group is implied by another if each stage of the other has one of the group behind it on every way.
    private static ImmutableArray<BigInteger> Nearest(ImmutableArray<BigInteger> groups, BigInteger[] before)
    {
        // A group that meets nothing of what is certain before any of them can't be implied, which is the usual case.
        var all = groups.Select(group => CertainStages.Indices(group)).ToArray();
        var behind = all.SelectMany(group => group).Aggregate(BigInteger.Zero, (sum, stage) => sum | before[stage]);
        return
        [
            .. groups.Where((group, i) =>
                (behind & group).IsZero || !all.Where((_, j) => j != i).Any(other => other.All(stage => !(before[stage] & group).IsZero))),
        ];
    }

    private static int[] Layers(ImmutableArray<BigInteger>[] groups, GainGraph graph, Spread whole)
    {
        var layers = new int[groups.Length];
        Array.Fill(layers, groups.Length);
        var inOrder = whole.Order.Select(index => graph.Steps[index].Stage).OfType<int>().Distinct().ToArray();
        var members = groups.Select(all => all.Select(group => CertainStages.Indices(group)).ToArray()).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var stage in inOrder)
            {
                var layer = members[stage].Select(group => group.Min(other => layers[other]) + 1).DefaultIfEmpty(0).Max();
                if (layer >= layers[stage])
                    continue;
                layers[stage] = layer;
                changed = true;
            }
        }

        return layers;
    }

    private static BigInteger Without(BigInteger bits, int stage) =>
        CertainStages.Has(bits, stage) ? bits - (BigInteger.One << stage) : bits;

    private static ImmutableArray<string> Ids(ImmutableArray<Stage> stages, BigInteger bits) =>
        [.. CertainStages.Indices(bits).Select(index => stages[index].Id.Value)];
}
