using System.Collections.Immutable;
using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Parts that need not be remembered: free parts, doors that open and shut, dials. Once such a part has been moved it can be put, without
/// moving anything but parts of the same kind, in any of the positions that it is ever moved to, and for ever. It gets one position
/// more, "anywhere", which every condition accepts that accepts one of those, and whatever moves it leads there.
/// </summary>
internal sealed class FreeParts
{
    private readonly Machine machine;
    private readonly Moves moves;
    private readonly Dictionary<int, int> order = [];
    private readonly Dictionary<int, ulong> places = [];
    private readonly HashSet<int> forLater;

    /// <summary>Finds them.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="moves">What moves its variables.</param>
    /// <param name="remembered">Variables whose positions are asked about, which therefore must be remembered.</param>
    /// <param name="without">Acts that may not be there: a part is free only if it is so with them and without them.</param>
    public FreeParts(Machine machine, Moves moves, IReadOnlySet<int> remembered, IReadOnlySet<int> without)
    {
        (this.machine, this.moves) = (machine, moves);
        var open = Enumerable.Range(0, machine.Variables.Length)
            .Where(v =>
                !remembered.Contains(v)
                && moves.Of(v).Count > 0
                && !moves.MovedByRules(v)
                && machine.Variables[v].Positions.Length < Machine.MostPositions
                && moves.MayReactEarly(v))
            .ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var v in open.ToList())
            {
                if (Roams(v, NoActs) is not { } found || (Loses(v, without) && Roams(v, without) != found))
                    continue;
                open.Remove(v);
                places[v] = found;
                order[v] = order.Count;
                changed = true;
            }
        }

        forLater = [.. order.Keys.Where(CanWait)];
        Reduced = order.Count == 0 ? machine : Freed();
    }

    /// <summary>The machine in which they may be anywhere; acts have the same numbers.</summary>
    public Machine Reduced { get; }

    /// <summary>No acts.</summary>
    public static IReadOnlySet<int> NoActs { get; } = new HashSet<int>();

    /// <summary>How many there are.</summary>
    public int Count => order.Count;

    /// <summary>Whether a variable is one of them.</summary>
    public bool Contains(int variable) => order.ContainsKey(variable);

    /// <summary>Whether all of them would still be free, as they are, if some acts were never made.</summary>
    /// <param name="acts">The acts.</param>
    public bool AreFreeWithout(IReadOnlySet<int> acts) => acts.SelectMany(act => machine.Acts[act].Effects)
        .Select(effect => effect.Variable).Where(Contains).Distinct().All(v => Roams(v, acts) == places[v]);

    /// <summary>Whether all of them would still be free if one of them were never put in a position.</summary>
    public bool AreFreeWithout(int variable, int position) =>
        Roams(variable, NoActs, position) is not null
        && !order.Keys.Any(other => moves.Of(other).Any(edge => edge.Rest.Any(literal => literal.Variable == variable)));

    /// <summary>The real way that a way of the reduced machine stands for: free parts are moved as soon as something asks for their position.</summary>
    /// <param name="way">Acts of the reduced machine.</param>
    /// <param name="then">What must hold at the end beside.</param>
    public List<int> Real(IEnumerable<int> way, ImmutableArray<Clause> then) => order.Count == 0 ? [.. way] : new Carrying(this).Out(way, then);

    private bool Loses(int variable, IReadOnlySet<int> without) => without.Count > 0 && moves.Of(variable).Any(edge => without.Contains(edge.Act));

    // Where a variable can be whenever that is wanted once it has been moved; null if it isn't so.
    private ulong? Roams(int variable, IReadOnlySet<int> without, int never = -1)
    {
        var edges = moves.Of(variable).Where(edge => !without.Contains(edge.Act) && edge.To != never).ToList();
        var start = 1UL << machine.Start[variable];
        var (met, targets) = (start, 0UL);
        for (var before = 0UL; before != met;)
        {
            before = met;
            foreach (var edge in edges.Where(edge => (edge.From & before) != 0))
                (met, targets) = (met | (1UL << edge.To), targets | (1UL << edge.To));
        }

        if (BitOperations.PopCount(targets) < 2)
            return null;
        var alone = edges.FindAll(edge => edge.Alone && edge.Rest.All(literal => Lasts(literal, variable)));
        foreach (var moved in edges.Where(edge => (edge.From & met) != 0).GroupBy(edge => new Given(edge)))
        {
            var usable = alone.FindAll(edge => edge.Rest.All(literal => IsGiven(literal, moved.Key.Edge)));
            foreach (var to in moved.Select(edge => edge.To).Distinct())
            {
                if ((targets & ~Reached(to, usable)) != 0)
                    return null;
            }
        }

        return targets;
    }

    // Whether nobody notices if it isn't moved before one of its positions is wanted: what lets it move lasts, and no earlier one moves by it.
    private bool CanWait(int variable) =>
        moves.Of(variable).All(edge => edge.Alone && edge.Rest.All(literal => Lasts(literal, variable)))
        && !order.Any(other => other.Value < order[variable] && moves.Of(other.Key).Any(edge => edge.Rest.Any(literal => literal.Variable == variable)));

    private static ulong Reached(int from, List<Edge> edges)
    {
        var reached = 1UL << from;
        for (var before = 0UL; before != reached;)
        {
            before = reached;
            foreach (var edge in edges)
            {
                if ((edge.From & reached) != 0)
                    reached |= 1UL << edge.To;
            }
        }

        return reached;
    }

    // Whether what holds once holds for ever, those parts being put where they are wanted that were found to be free before.
    private bool Lasts(Literal literal, int variable) =>
        places.TryGetValue(literal.Variable, out var anywhere)
        && (!order.TryGetValue(variable, out var place) || order[literal.Variable] < place)
        ? (anywhere & literal.Accepts) != 0
        : (moves.Written[literal.Variable] & ~literal.Accepts) == 0;

    // Whether something that lasts holds after a move at the latest.
    private bool IsGiven(Literal literal, Edge after) =>
        literal.Takes(machine.Start[literal.Variable])
        || after.Rest.Any(asked => asked.Variable == literal.Variable && (asked.Accepts & machine.Variables[asked.Variable].All & ~literal.Accepts) == 0)
        || machine.Acts[after.Act].Effects.Any(effect =>
            effect.Variable == literal.Variable && literal.Takes(effect.Position) && (machine.Variables[effect.Variable].All & ~effect.From) == 0);

    private ImmutableArray<Clause> Widened(ImmutableArray<Clause> when) => [.. when.Select(clause => new Clause([.. clause.Literals.Select(Widened)]))];

    private Literal Widened(Literal literal) => places.TryGetValue(literal.Variable, out var anywhere) && (anywhere & literal.Accepts) != 0
        ? literal with { Accepts = literal.Accepts | (1UL << Anywhere(literal.Variable)) }
        : literal with { Accepts = literal.Accepts & machine.Variables[literal.Variable].All };

    private int Anywhere(int variable) => machine.Variables[variable].Positions.Length;

    private Effect Freed(Effect effect) => !Contains(effect.Variable) ? effect : new Effect(
        effect.Variable,
        Anywhere(effect.Variable),
        effect.From & machine.Variables[effect.Variable].All & ~(1UL << effect.Position));

    private Machine Freed() => machine with
    {
        Variables =
        [
            .. machine.Variables.Select((variable, v) => Contains(v) ? variable with { Positions = variable.Positions.Add("anywhere") } : variable),
        ],
        Acts = [.. machine.Acts.Select(act => act with { When = Widened(act.When), Effects = [.. act.Effects.Select(Freed)] })],
        Rules = [.. machine.Rules.Select(rule => rule with { When = Widened(rule.When) })],
        Goal = Widened(machine.Goal),
    };

    /// <summary>What holds after an edge has been followed, as far as it decides which others can be.</summary>
    private readonly record struct Given(Edge Edge)
    {
        public bool Equals(Given other) => Edge.Alone == other.Edge.Alone && (Edge.Alone || Edge.Act == other.Edge.Act) && Edge.Rest.SequenceEqual(other.Edge.Rest);

        public override int GetHashCode() => HashCode.Combine(Edge.Alone, Edge.Alone ? 0 : Edge.Act, Edge.Rest.Length);
    }

    /// <summary>Carries out one way of the reduced machine on the box beside, moving free parts in between.</summary>
    private sealed class Carrying
    {
        private readonly FreeParts free;
        private readonly Machine machine;
        private readonly Stepper stepper;
        private readonly Stepper wide;
        private readonly int[] state;
        private readonly int[] anywhere;
        private readonly List<int> real = [];

        public Carrying(FreeParts free)
        {
            (this.free, machine) = (free, free.machine);
            (stepper, wide) = (new Stepper(machine), new Stepper(free.Reduced));
            (state, anywhere) = (stepper.Start()!, wide.Start()!);
        }

        public List<int> Out(IEnumerable<int> way, ImmutableArray<Clause> then)
        {
            React();
            foreach (var act in way)
            {
                if (!IsForLater(act))
                {
                    Ensure(free.Reduced.Acts[act].When);
                    Make(act);
                }

                wide.Make(act, anywhere);
                React();
            }

            Ensure(free.Widened(then));
            return real;
        }

        // What only moves a part that can be moved whenever that is wanted.
        private bool IsForLater(int act) => machine.Acts[act].Effects is [{ Variable: var v }] && free.Contains(v) &&
            (free.forLater.Contains(v) || anywhere[v] == free.Anywhere(v));

        private void Make(int act)
        {
            real.Add(act);
            stepper.Make(act, state);
        }

        // Reactions to free parts happen in the reduced machine as soon as they can.
        private void React()
        {
            while (Array.FindIndex([.. machine.Rules], IsMissing) is >= 0 and var missing)
                Ensure(free.Reduced.Rules[missing].When);
        }

        private bool IsMissing(Rule rule) =>
            rule.Effects.Any(effect => state[effect.Variable] != effect.Position && anywhere[effect.Variable] == effect.Position)
            && free.Reduced.Rules[rule.Number].When.Any(clause => clause.Literals.All(literal => literal.Takes(anywhere[literal.Variable]) && HoldsIfFixed(literal)));

        private bool HoldsIfFixed(Literal literal) => free.Contains(literal.Variable) || literal.Takes(state[literal.Variable]);

        // Later ones may need earlier ones somewhere in order to move, so they go first.
        private void Ensure(ImmutableArray<Clause> when)
        {
            var clause = when.First(clause => clause.Literals.All(literal => literal.Takes(anywhere[literal.Variable]) && HoldsIfFixed(literal)));
            Ensure(clause.Literals);
        }

        private void Ensure(IEnumerable<Literal> literals)
        {
            foreach (var literal in literals.Where(literal => free.Contains(literal.Variable)).OrderByDescending(literal => free.order[literal.Variable]))
            {
                if (!literal.Takes(state[literal.Variable]))
                    Move(literal);
            }
        }

        private void Move(Literal wanted)
        {
            foreach (var edge in Path(wanted))
            {
                Ensure(edge.Rest);
                Make(edge.Act);
            }
        }

        private List<Edge> Path(Literal wanted)
        {
            var v = wanted.Variable;
            var by = new Edge?[machine.Variables[v].Positions.Length];
            var from = new int[by.Length];
            var usable = free.moves.Of(v).Where(edge => edge.Alone && edge.Rest.All(literal => MayBeEnsured(literal, v))).ToList();
            var open = new Queue<int>([state[v]]);
            while (open.TryDequeue(out var at))
            {
                if (wanted.Takes(at))
                    return Back(at);
                foreach (var edge in usable.Where(edge => (edge.From >> at & 1) != 0 && edge.To != state[v] && by[edge.To] is null))
                {
                    (by[edge.To], from[edge.To]) = (edge, at);
                    open.Enqueue(edge.To);
                }
            }

            throw new InvalidOperationException($"a free part can't be moved as it was proved that it can: {machine.Variables[v].Id}");

            List<Edge> Back(int at)
            {
                var path = new List<Edge>();
                for (; by[at] is { } edge; at = from[at])
                    path.Add(edge);
                path.Reverse();
                return path;
            }
        }

        private bool MayBeEnsured(Literal literal, int before) => free.order.TryGetValue(literal.Variable, out var place)
            ? place < free.order[before] && free.Widened(literal).Takes(anywhere[literal.Variable])
            : literal.Takes(state[literal.Variable]);
    }
}
