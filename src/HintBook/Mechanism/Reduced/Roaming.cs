using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Free parts that need not be remembered. Once such a part may move it may always move, nothing else moves it and no reaction looks at it; so
/// from then on it is wherever it is wanted. It gets one position more, "anywhere", which every condition on it accepts, and its free
/// acts lead there.
/// </summary>
internal sealed class Roaming
{
    private readonly Machine machine;
    private readonly List<int> order = [];

    /// <summary>Finds them.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="fixedVariables">Variables whose positions are asked about, which therefore must be remembered.</param>
    public Roaming(Machine machine, IReadOnlySet<int> fixedVariables)
    {
        this.machine = machine;
        Reduced = machine;
        var movers = machine.Acts.Where(act => act.Step.Kind == StepKind.FreeMove).GroupBy(act => act.Effects[0].Variable)
            .ToDictionary(group => group.Key, group => group.First().When);
        var moved = machine.Acts.Where(act => act.Step.Kind != StepKind.FreeMove).SelectMany(act => act.Effects)
            .Concat(machine.Rules.SelectMany(rule => rule.Effects)).Select(effect => effect.Variable).ToHashSet();
        var watched = machine.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).ToHashSet();
        var open = movers.Keys.Order()
            .Where(v => !moved.Contains(v) && !watched.Contains(v) && !fixedVariables.Contains(v) && machine.Variables[v].Positions.Length < Machine.MostPositions)
            .ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var v in open.Where(v => Stays(movers[v], v)).ToList())
            {
                open.Remove(v);
                order.Add(v);
                Reduced = Freed(Reduced, v);
                changed = true;
            }
        }
    }

    /// <summary>The machine in which they may be anywhere; acts have the same numbers.</summary>
    public Machine Reduced { get; }

    /// <summary>The real way that a way of the reduced machine stands for: free parts are moved as soon as something asks for their position.</summary>
    /// <param name="way">Acts of the reduced machine.</param>
    /// <param name="then">What must hold at the end beside.</param>
    public List<int> Real(IEnumerable<int> way, ImmutableArray<Clause> then)
    {
        var real = new List<int>();
        var stepper = new Stepper(machine);
        var wide = new Stepper(Reduced);
        var (state, anywhere) = (stepper.Start()!, wide.Start()!);
        foreach (var act in way)
        {
            if (!order.Contains(machine.Acts[act].Effects is [var only, ..] ? only.Variable : -1))
            {
                Ensure(Reduced.Acts[act].When);
                Make(act);
            }

            anywhere = wide.After(act, anywhere)!;
        }

        Ensure(Widened(then));
        return real;

        void Make(int act)
        {
            real.Add(act);
            state = stepper.After(act, state)!;
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
        [.. when.Select(clause => new Clause([.. clause.Literals.Select(literal => order.Contains(literal.Variable) ? Wide(literal, machine) : literal)]))];

    // Whether something that holds once holds for ever: nothing ever puts what it asks about in a position that it doesn't accept.
    private bool Stays(ImmutableArray<Clause> needs, int variable)
    {
        var asked = needs.SelectMany(clause => clause.Literals).ToList();
        if (asked.Exists(literal => literal.Variable == variable))
            return false;
        asked = [.. asked.Select(literal => order.Contains(literal.Variable) ? Wide(literal, machine) : literal)];
        return Reduced.Acts.SelectMany(act => act.Effects).Concat(Reduced.Rules.SelectMany(rule => rule.Effects))
            .All(effect => asked.TrueForAll(literal => literal.Variable != effect.Variable || literal.Takes(effect.Position)));
    }

    private static Literal Wide(Literal literal, Machine machine) =>
        literal with { Accepts = literal.Accepts | (1UL << machine.Variables[literal.Variable].Positions.Length) };

    private static Machine Freed(Machine machine, int v)
    {
        var anywhere = machine.Variables[v].Positions.Length;
        return machine with
        {
            Variables = machine.Variables.SetItem(v, machine.Variables[v] with { Positions = machine.Variables[v].Positions.Add("anywhere") }),
            Acts =
            [
                .. machine.Acts.Select(act => act with
                {
                    When = On(act.When),
                    Effects = [.. act.Effects.Select(effect => effect.Variable == v ? new Effect(v, anywhere) : effect)],
                }),
            ],
            Goal = On(machine.Goal),
        };

        ImmutableArray<Clause> On(ImmutableArray<Clause> when) =>
            [.. when.Select(clause => new Clause([.. clause.Literals.Select(literal => literal.Variable == v ? Wide(literal, machine) : literal)]))];
    }
}
