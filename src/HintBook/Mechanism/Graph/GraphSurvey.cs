using System.Collections.Immutable;
using System.Numerics;
using HintBook.Books;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Graph;

/// <summary>
/// When each stage opens. The graph without losses says which stages give what a stage wants; what the mechanism proves certain
/// before it is added, since a part that must be closed again is a want that this graph can't see.
/// </summary>
internal static class GraphSurvey
{
    public static ImmutableDictionary<string, StageSurvey> Survey(GainGraph graph, GainReachability whole, ImmutableArray<StageAnswer> answers)
    {
        var stages = graph.Book.Stages;
        var certain = CertainStages.In(graph, whole);
        var ways = WaysTo(graph, whole);
        var wants = graph.Steps.Where(step => step.Stage is not null).ToLookup(step => step.Stage!.Value, step => step.Wants);

        var before = new BigInteger[stages.Length];
        var behind = new BigInteger[stages.Length];
        ImmutableArray<string> ids = [.. stages.Select(stage => stage.Id.Value)];
        var certainBefore = new ChosenSet<string>[stages.Length];
        for (var i = 0; i < stages.Length; i++)
        {
            var proved = Sum(answers[i].CertainBefore.Select(id => graph.StageNumbers[id]), stages.Length);
            before[i] = Without(proved | (certain.Before(new AnyWanted([.. wants[i]])) ?? BigInteger.Zero), i);
            // Nearly always the graph adds nothing, and the set that the solver made says the same.
            var indices = CertainStages.Indices(before[i]);
            certainBefore[i] = before[i] == proved && indices.Length == answers[i].CertainBefore.Count
                ? answers[i].CertainBefore
                : new(ids, SetOf(indices, stages.Length));
            behind[i] = Without(before[i] | (certain.Before(new AllWanted([.. wants[i]])) ?? BigInteger.Zero), i);
        }

        var farther = Array.ConvertAll(behind, stages => SetOf(CertainStages.Indices(stages), behind.Length));
        var opening = new ImmutableArray<BigInteger>[stages.Length];
        var closing = new ImmutableArray<BigInteger>[stages.Length];
        for (var i = 0; i < stages.Length; i++)
        {
            var singles = NearestOf(CertainStages.Indices(before[i]), farther).Select(one => BigInteger.One << one);
            opening[i] = Nearest([.. Groups(new AnyWanted([.. wants[i]]), i).Union(singles)], behind);
            closing[i] = [.. Groups(new AllWanted([.. wants[i]]), i), .. opening[i]];
        }

        var layers = Layers(opening, closing, graph, whole);
        return Enumerable.Range(0, stages.Length).DistinctBy(i => stages[i].Id.Value).ToImmutableDictionary(i => stages[i].Id.Value, i => new StageSurvey
        {
            Reachable = answers[i].Reachable is not Claim.Refuted,
            OpensAfter = [.. opening[i].Select(group => Ids(stages, group))],
            CertainBefore = certainBefore[i],
            Gained = answers[i].Facts,
            Attained = answers[i].Attained,
            Exact = answers[i].Exact,
            Layer = layers[i],
        });

        ImmutableArray<BigInteger> Groups(Want want, int stage) =>
            WaysOf(want, ways).Without(stage) is { IsNone: false } open ? open.Groups : [];
    }

    // For each gain the stages that give it; handling and reactions in between are followed to the stages behind them.
    private static Prerequisites[] WaysTo(GainGraph graph, GainReachability whole)
    {
        var ways = new Prerequisites[graph.Count];
        Array.Fill(ways, Prerequisites.None);
        foreach (var gain in graph.AtStart)
            ways[gain] = Prerequisites.Free;
        foreach (var step in whole.Order.Select(index => graph.Steps[index]).Where(step => step.Stage is not null))
        {
            foreach (var gain in step.Gains)
                ways[gain] = Prerequisites.Either(ways[gain], Prerequisites.By(step.Stage!.Value));
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
                    var now = Prerequisites.Either(ways[gain], here);
                    if (now.SameAs(ways[gain]))
                        continue;
                    ways[gain] = now;
                    changed = true;
                }
            }
        }

        return ways;
    }

    private static Prerequisites WaysOf(Want want, Prerequisites[] ways) => want.Fold(
        gain => ways[gain],
        Prerequisites.All,
        any => any.Aggregate(Prerequisites.None, Prerequisites.Either));

    // A group is implied by another if each stage of the other has one of the group behind it on every way to its being done.
    private static ImmutableArray<BigInteger> Nearest(ImmutableArray<BigInteger> groups, BigInteger[] behindEach)
    {
        // A group that meets nothing of what is certain before any of them can't be implied, which is the usual case.
        var all = groups.Select(group => CertainStages.Indices(group)).ToArray();
        var behind = all.SelectMany(group => group).Aggregate(BigInteger.Zero, (sum, stage) => sum | behindEach[stage]);
        return
        [
            .. groups.Where((group, i) =>
                (behind & group).IsZero || !all.Where((_, j) => j != i).Any(other => other.All(stage => !(behindEach[stage] & group).IsZero))),
        ];
    }

    // How many stages at the least, one after the other, until a stage is open: one more than until the stages before it are done.
    private static int[] Layers(ImmutableArray<BigInteger>[] opening, ImmutableArray<BigInteger>[] closing, GainGraph graph, GainReachability whole)
    {
        var depths = new int[closing.Length];
        Array.Fill(depths, closing.Length);
        var inOrder = whole.Order.Select(index => graph.Steps[index].Stage).OfType<int>().Distinct().ToArray();
        var members = closing.Select(Members).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var stage in inOrder)
            {
                var depth = After(members[stage]);
                if (depth >= depths[stage])
                    continue;
                depths[stage] = depth;
                changed = true;
            }
        }

        return [.. opening.Select(groups => Math.Min(closing.Length, After(Members(groups))))];

        int After(ImmutableArray<int>[] groups) => groups.Select(group => group.Min(other => depths[other]) + 1).DefaultIfEmpty(0).Max();
    }

    private static ImmutableArray<int>[] Members(ImmutableArray<BigInteger> groups) => [.. groups.Select(CertainStages.Indices)];

    // Of stages that are all certain, those that lie behind no other of them. What lies behind a stage lies behind all that it lies behind.
    private static IEnumerable<int> NearestOf(ImmutableArray<int> certain, Bits[] behindEach)
    {
        var covered = new Bits(behindEach.Length);
        foreach (var stage in certain.Reverse().Where(stage => !covered[stage]))
            covered.Or(behindEach[stage]);
        return certain.Where(stage => !covered[stage]);
    }

    private static Bits SetOf(ImmutableArray<int> stages, int size)
    {
        var set = new Bits(size);
        foreach (var stage in stages)
            set[stage] = true;
        return set;
    }

    private static BigInteger Sum(IEnumerable<int> stages, int size)
    {
        var bytes = new byte[(size / 8) + 1];
        foreach (var stage in stages)
            bytes[stage / 8] |= (byte)(1 << (stage % 8));
        return new BigInteger(bytes, isUnsigned: true);
    }

    private static BigInteger Without(BigInteger bits, int stage) =>
        CertainStages.Has(bits, stage) ? bits - (BigInteger.One << stage) : bits;

    private static ImmutableArray<string> Ids(ImmutableArray<Stage> stages, BigInteger bits) =>
        [.. CertainStages.Indices(bits).Select(index => stages[index].Id.Value)];
}
