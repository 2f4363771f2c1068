using System.Collections.Immutable;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// How many steps any way to the goal has at least. Each act that moves one variable alone counts for that variable, so that the numbers of all of them
/// add up. For one variable there are two bounds: the acts of its own that are certain, and how far it must go to stand, one after the other,
/// where a chain of certain events wants it (ordered landmarks: Porteous, Sebastia and Hoffmann 2001; their costs shared out: Karpas and Domshlak 2009).
/// </summary>
internal sealed class FewestSteps
{
    private const int Far = int.MaxValue / 4;
    private readonly Machine machine;
    private readonly Moves moves;
    private readonly RelaxedLandmarks landmarks;
    private readonly Attainable things;
    private readonly Bits certain;
    private readonly int[] owner;
    private readonly int[] counted;
    private readonly int[] chained;
    private readonly int others;

    /// <summary>Counts.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="moves">What moves its variables.</param>
    /// <param name="landmarks">What is certain before what.</param>
    /// <param name="certain">What is certain before the goal.</param>
    public FewestSteps(Machine machine, Moves moves, RelaxedLandmarks landmarks, Bits certain)
    {
        (this.machine, this.moves, this.landmarks, this.certain) = (machine, moves, landmarks, certain);
        things = new Attainable(machine);
        owner = [.. machine.Acts.Select(act => act.Effects is [var only] ? only.Variable : -1)];
        counted = new int[machine.Variables.Length];
        foreach (var act in certain.Members().TakeWhile(number => number < machine.Acts.Length))
        {
            if (owner[act] < 0)
                others++;
            else
                counted[owner[act]]++;
        }

        chained = Chained();
    }

    /// <summary>The bound.</summary>
    public int Count => Math.Max(Apart, others + Enumerable.Range(0, counted.Length).Sum(AtLeast));

    // Certain acts, and certain positions that no act gives which is counted already: each needs an act more.
    private int Apart
    {
        get
        {
            var taken = certain.Members().TakeWhile(number => number < machine.Acts.Length).ToHashSet();
            var count = taken.Count;
            var givers = certain.Members().SkipWhile(number => number < machine.Acts.Length).Select(things.PlaceOf)
                .Where(place => machine.Start[place.Variable] != place.Position && !moves.MovedByRules(place.Variable))
                .Select(place => moves.Of(place.Variable).Where(edge => edge.To == place.Position).Select(edge => edge.Act).ToHashSet());
            foreach (var acts in givers.OrderBy(acts => acts.Count))
            {
                if (acts.Count == 0 || acts.Overlaps(taken))
                    continue;
                taken.UnionWith(acts);
                count++;
            }

            return count;
        }
    }

    /// <summary>Whether a way might have fewer acts that move the variable which an act moves alone; always if it moves several.</summary>
    /// <param name="act">The act.</param>
    /// <param name="way">The way.</param>
    public bool MightBeFewer(int act, List<int> way) => owner[act] < 0 || way.Count(other => owner[other] == owner[act]) > AtLeast(owner[act]);

    /// <summary>The bound if some acts more are known to be certain.</summary>
    /// <param name="acts">Acts that weren't known to be certain.</param>
    public int CountWith(IReadOnlyCollection<int> acts)
    {
        var more = acts.Where(act => owner[act] >= 0).CountBy(act => owner[act]).ToDictionary();
        var shared = others + acts.Count(act => owner[act] < 0)
            + Enumerable.Range(0, counted.Length).Sum(v => Math.Max(chained[v], counted[v] + more.GetValueOrDefault(v)));
        return Math.Max(Apart, shared);
    }

    private int AtLeast(int variable) => Math.Max(chained[variable], counted[variable]);

    private int[] Chained()
    {
        var events = Events().Select(number => (Number: number, Asked: AskedBy(number), Before: BeforeOf(number)))
            .OrderBy(e => e.Before.Count()).Append((Number: -1, Asked: Union(machine.Goal), Before: certain)).ToList();
        var furthest = new int[machine.Variables.Length];
        var by = events.SelectMany(e => e.Asked.Select(literal => (Event: e, Literal: literal))).GroupBy(asked => asked.Literal.Variable);
        foreach (var asked in by.Where(asked => moves.Of(asked.Key).Any(edge => edge.Alone)))
            furthest[asked.Key] = Furthest(asked.Key, [.. asked.Select(one => (one.Event.Number, one.Literal.Accepts, one.Event.Before))]);
        return furthest;
    }

    // Acts, and positions that only reactions give.
    private IEnumerable<int> Events() => certain.Members().Where(number =>
        number < machine.Acts.Length || (things.PlaceOf(number) is var (v, p) && machine.Start[v] != p && moves.Of(v).All(edge => edge.To != p)));

    private Bits BeforeOf(int number) => number < machine.Acts.Length
        ? landmarks.Before(machine.Acts[number].When) ?? new Bits(things.Count)
        : landmarks.Before([new Clause([new Literal(things.PlaceOf(number).Variable, 1UL << things.PlaceOf(number).Position)])]) ?? new Bits(things.Count);

    private List<Literal> AskedBy(int number)
    {
        if (number < machine.Acts.Length)
            return Union(machine.Acts[number].When);
        var (v, p) = things.PlaceOf(number);
        return Union([.. machine.Rules.Where(rule => rule.Effects.Any(effect => effect.Variable == v && effect.Position == p)).SelectMany(rule => rule.When)]);
    }

    // What all alternatives ask about, and what at least one of them accepts.
    private static List<Literal> Union(ImmutableArray<Clause> when) => when.IsEmpty ? []
        : [.. when.SelectMany(clause => clause.Literals).GroupBy(literal => literal.Variable)
            .Where(literals => literals.Count() == when.Length)
            .Select(literals => new Literal(literals.Key, literals.Aggregate(0UL, (all, literal) => all | literal.Accepts)))];

    // The cost of being in each position when an event happens is at least that of the dearest event before it and the way from there.
    private int Furthest(int variable, List<(int Number, ulong Accepts, Bits Before)> events)
    {
        var distance = Distances(variable);
        var start = machine.Start[variable];
        var cost = new List<int[]>();
        foreach (var (_, accepts, before) in events)
        {
            var earlier = cost.Where((_, e) => before[events[e].Number]).ToList();
            var own = new int[distance.Length];
            for (var p = 0; p < own.Length; p++)
            {
                own[p] = (accepts >> p & 1) == 0 ? Far : distance[start][p];
                foreach (var one in earlier)
                    own[p] = Math.Max(own[p], Enumerable.Range(0, own.Length).Min(q => one[q] + distance[q][p]));
                own[p] = Math.Min(own[p], Far);
            }

            cost.Add(own);
        }

        return cost[^1].Min() is < Far and var toTheGoal && events[^1].Number < 0 ? toTheGoal : cost.Max(own => own.Min() is < Far and var least ? least : 0);
    }

    // In acts that move the variable alone; what moves others too counts for them, and reactions cost nothing.
    private int[][] Distances(int variable)
    {
        var count = machine.Variables[variable].Positions.Length;
        int[][] distance = [.. Enumerable.Range(0, count).Select(p => Enumerable.Range(0, count).Select(q => p == q ? 0 : Far).ToArray())];
        var byRules = machine.Rules.SelectMany(rule => rule.Effects).Where(effect => effect.Variable == variable);
        var edges = moves.Of(variable).Select(edge => (edge.From, edge.To, Cost: edge.Alone ? 1 : 0))
            .Concat(byRules.Select(effect => (effect.From, To: effect.Position, Cost: 0)))
            .Distinct().ToList();
        foreach (var row in distance)
        {
            for (var changed = true; changed;)
            {
                changed = false;
                foreach (var (from, to, cost) in edges)
                {
                    for (var p = 0; p < count; p++)
                    {
                        if ((from >> p & 1) == 0 || row[p] + cost >= row[to])
                            continue;
                        row[to] = row[p] + cost;
                        changed = true;
                    }
                }
            }
        }

        return distance;
    }
}
