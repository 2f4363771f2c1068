using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Free parts that need not be remembered. Once such a part may move it may always move, nothing else moves it and no reaction looks at it; so
/// from then on it is wherever it is wanted. It gets one position more, "anywhere", which every condition on it accepts, and its free
/// acts lead there.
/// </summary>
internal sealed class FreeParts
{
    private readonly Machine machine;
    private readonly List<int> order = [];
    private readonly HashSet<int> freeParts = [];
    private readonly ulong[] written;

    /// <summary>Finds them.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="fixedVariables">Variables whose positions are asked about, which therefore must be remembered.</param>
    public FreeParts(Machine machine, IReadOnlySet<int> fixedVariables)
    {
        this.machine = machine;
        written = new ulong[machine.Variables.Length];
        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            written[effect.Variable] |= 1UL << effect.Position;
        var movers = machine.Acts.Where(act => act.Step.Kind == StepKind.FreeMove).GroupBy(act => act.Effects[0].Variable)
            .ToDictionary(group => group.Key, group => group.First().When);
        var moved = machine.Acts.Where(act => act.Step.Kind != StepKind.FreeMove).SelectMany(act => act.Effects)
            .Concat(machine.Rules.SelectMany(rule => rule.Effects)).Select(effect => effect.Variable).ToHashSet();
        var watched = machine.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).ToHashSet();
        var open = movers.Keys.Order()
            .Where(v =>
                !moved.Contains(v)
                && !watched.Contains(v)
                && !fixedVariables.Contains(v)
                && machine.Variables[v].Positions.Length < Machine.MostPositions)
            .ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var v in open.Where(v => Stays(movers[v], v)).ToList())
            {
                open.Remove(v);
                order.Add(v);
                freeParts.Add(v);
                changed = true;
            }
        }

        Reduced = order.Count == 0 ? machine : Freed();
    }

    /// <summary>The machine in which they may be anywhere; acts have the same numbers.</summary>
    public Machine Reduced { get; }

    /// <summary>The real way that a way of the reduced machine stands for: free parts are moved as soon as something asks for their position.</summary>
    /// <param name="way">Acts of the reduced machine.</param>
    /// <param name="then">What must hold at the end beside.</param>
    public List<int> Real(IEnumerable<int> way, ImmutableArray<Clause> then)
    {
        if (order.Count == 0)
            return [.. way];
        var real = new List<int>();
        var stepper = new Stepper(machine);
        var wide = new Stepper(Reduced);
        var (state, anywhere) = (stepper.Start()!, wide.Start()!);
        foreach (var act in way)
        {
            if (machine.Acts[act].Effects is not [var only] || !freeParts.Contains(only.Variable))
            {
                Ensure(Reduced.Acts[act].When);
                Make(act);
            }

            wide.Make(act, anywhere);
        }

        Ensure(Widened(then));
        return real;

        void Make(int act)
        {
            real.Add(act);
            stepper.Make(act, state);
        }

        void Ensure(ImmutableArray<Clause> when)
        {
            var clause = when.First(clause => clause.Literals.All(literal => literal.Takes(anywhere[literal.Variable])));

            // Later ones may need earlier ones somewhere in order to move, so they go first.
            foreach (var v in Enumerable.Reverse(order))
            {
                var literal = clause.Literals.FirstOrDefault(literal => literal.Variable == v, new Literal(v, ulong.MaxValue));
                if (literal.Takes(state[v]))
                    continue;
                var act = Enumerable.Range(0, machine.Acts.Length).First(a =>
                    machine.Acts[a].Effects is [var effect] && effect.Variable == v && literal.Takes(effect.Position));
                Ensure(Reduced.Acts[act].When);
                Make(act);
            }
        }
    }

    private ImmutableArray<Clause> Widened(ImmutableArray<Clause> when) =>
        [.. when.Select(clause => new Clause([.. clause.Literals.Select(literal => freeParts.Contains(literal.Variable) ? Wide(literal) : literal)]))];

    // Whether something that holds once holds for ever: nothing ever puts what it asks about in a position that it doesn't accept.
    private bool Stays(ImmutableArray<Clause> needs, int variable)
    {
        var asked = needs.SelectMany(clause => clause.Literals).Where(literal => !freeParts.Contains(literal.Variable)).ToList();
        if (asked.Count == 0)
            return true;
        return !asked.Exists(literal => literal.Variable == variable) &&
            asked.TrueForAll(literal => (written[literal.Variable] & ~literal.Accepts) == 0);
    }

    private Literal Wide(Literal literal) =>
        literal with { Accepts = literal.Accepts | (1UL << machine.Variables[literal.Variable].Positions.Length) };

    private Machine Freed() => machine with
    {
        Variables =
        [
            .. machine.Variables.Select((variable, v) =>
                freeParts.Contains(v) ? variable with { Positions = variable.Positions.Add("anywhere") } : variable),
        ],
        Acts =
        [
            .. machine.Acts.Select(act => act with
            {
                When = Widened(act.When),
                Effects =
                [
                    .. act.Effects.Select(effect => freeParts.Contains(effect.Variable)
                        ? effect with { Position = machine.Variables[effect.Variable].Positions.Length }
                        : effect),
                ],
            }),
        ],
        Goal = Widened(machine.Goal),
    };
}
