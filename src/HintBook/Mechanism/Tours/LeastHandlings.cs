using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// How many handlings a walk has at the least. Of a few variables at a time the box is a small one (<see cref="Projection"/>), and each has its own flow: a
/// walk comes to each state as often as it leaves it, and at least once from outside into each set of states without which a duty can't be done. How often
/// each act is made is the same for all of them (the state equation; in planning: Bonet, "An admissible heuristic for SAS+ planning obtained from the state
/// equation", 2013; Bonet and van den Briel, "Flow-based heuristics for optimal planning: landmarks and merges", 2014).
/// </summary>
internal sealed class LeastHandlings
{
    private const int MostTogether = 3;
    private const int MostAsked = 8;
    private const int MostRounds = 12;
    private const double Gain = 1e-4;
    private static readonly Comparer<ImmutableArray<int>> InOrder = Comparer<ImmutableArray<int>>.Create((a, b) => a.AsSpan().SequenceCompareTo(b.AsSpan()));
    private readonly TourMachine machine;
    private readonly bool home;
    private readonly Duty[] duties;
    private readonly ILookup<int, int> moving;
    private readonly ILookup<int, Duty> asking;
    private readonly SortedDictionary<ImmutableArray<int>, SeenBox> seen = new(InOrder);

    private LeastHandlings(TourMachine machine, IReadOnlyList<int> wanted, bool home)
    {
        (this.machine, this.home) = (machine, home);
        duties = [.. wanted.Select(duty => machine.Duties[duty])];
        moving = machine.Back.Acts.Select(act => act.Effects).Concat(machine.Back.Rules.Select(rule => rule.Effects)).Index()
            .SelectMany(each => each.Item.Select(effect => (effect.Variable, each.Index))).ToLookup(each => each.Variable, each => each.Index);
        asking = duties.SelectMany(duty => VariablesOf(duty).Select(variable => (variable, duty))).ToLookup(each => each.variable, each => each.duty);
    }

    /// <summary>The bound.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="wanted">The duties that the walk does.</param>
    /// <param name="home">Whether it ends as shipped.</param>
    /// <param name="budget">What may be used.</param>
    public static int Of(TourMachine machine, IReadOnlyList<int> wanted, bool home, Budget budget)
    {
        var counted = wanted.Count(duty => machine.Duties[duty] is not Duty.See);
        return Math.Max(counted, new LeastHandlings(machine, wanted, home).Bound(budget));
    }

    // Variables are looked at together where that is worth more than looking at fewer of them at a time.
    private int Bound(Budget budget)
    {
        List<ImmutableArray<int>> together = [.. Enumerable.Range(0, machine.Back.Variables.Length).Select(v => ImmutableArray.Create(v))];
        var least = Programme(together).Least;
        for (var count = 2; count <= MostTogether && least > 0; count++)
        {
            foreach (var set in AskedTogether(count))
            {
                if (budget.Spent(0, 0, 0))
                    return Tried(least);
                if (Programme([set]).Value > Programme([.. set.Select(v => set.Remove(v))]).Value + Gain)
                    together.Add(set);
            }

            least = Math.Max(least, Programme(together).Least);
        }

        return Tried(least);

        int Tried(int made) => made + duties.Count(duty => duty is Duty.Refuse);
    }

    private SeenBox Seen(ImmutableArray<int> set)
    {
        if (seen.TryGetValue(set, out var known))
            return known;
        var box = new Projection(machine, set, [.. set.SelectMany(v => moving[v]).Distinct().Order()], home);
        return seen[set] = new(box, [.. set.SelectMany(v => asking[v]).Distinct().Select(box.Region).Where(region => (region & 1) == 0).Distinct()]);
    }

    private (double Value, int Least) Programme(IReadOnlyList<ImmutableArray<int>> together)
    {
        var programme = new HandlingProgramme(machine, duties);
        foreach (var set in together)
            programme.Look(Seen(set));
        return programme.Solve(MostRounds);
    }

    // What a duty asks about and moves.
    private SortedSet<ImmutableArray<int>> AskedTogether(int count)
    {
        var found = new SortedSet<ImmutableArray<int>>(InOrder);
        foreach (var (when, moved) in duties.Select(AskedBy))
        {
            foreach (var clause in when)
            {
                int[] all =
                [
                    .. clause.Literals.Select(literal => literal.Variable).Concat(moved).Distinct()
                        .Where(v => !machine.Back.Variables[v].IsKnowledge).Order(),
                ];
                if (all.Length <= MostAsked)
                    found.UnionWith(Sets(all, count).Where(set => SizeOf(set) <= Projection.MostStates));
            }
        }

        return found;
    }

    private int SizeOf(ImmutableArray<int> set) => set.Aggregate(1, (size, v) => size * machine.Back.Variables[v].Positions.Length);

    private IEnumerable<int> VariablesOf(Duty duty)
    {
        var (when, moved) = AskedBy(duty);
        return when.SelectMany(clause => clause.Literals).Select(literal => literal.Variable).Concat(moved).Distinct();
    }

    private (ImmutableArray<Clause> When, IEnumerable<int> Moved) AskedBy(Duty duty) => duty switch
    {
        Duty.Make make => (machine.Back.Acts[make.Act].When, machine.MovedBy(make.Act).Select(effect => effect.Variable)),
        Duty.See see => (machine.Back.Rules[see.Rule].When, machine.Back.Rules[see.Rule].Effects.Select(effect => effect.Variable)),
        Duty.Refuse refuse => (refuse.Others, refuse.Needs.SelectMany(clause => clause.Literals).Select(literal => literal.Variable)
            .Concat(refuse.Moves.Select(effect => effect.Variable))),
        _ => ([], []),
    };

    private static IEnumerable<ImmutableArray<int>> Sets(int[] all, int count) => count == 0 ? [[]]
        : all.Index().SelectMany(first => Sets(all[(first.Index + 1)..], count - 1).Select(rest => rest.Insert(0, first.Item)));
}
