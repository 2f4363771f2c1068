using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>Carries out one way of the reduced machine on the box beside, moving free parts in between.</summary>
internal sealed class Carrying
{
    private readonly FreeParts free;
    private readonly Machine machine;
    private readonly Stepper stepper;
    private readonly Stepper wide;
    private readonly int[] state;
    private readonly int[] anywhere;
    private readonly List<int> real = [];

    /// <summary>Begins with the shipped box.</summary>
    public Carrying(FreeParts free, Machine machine)
    {
        (this.free, this.machine) = (free, machine);
        (stepper, wide) = (new Stepper(machine), new Stepper(free.Reduced));
        (state, anywhere) = (stepper.Start()!, wide.Start()!);
    }

    /// <summary>Makes the acts in their order.</summary>
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

    /// <summary>Makes the acts in whatever order moves free parts least; only in a box that only gains.</summary>
    public List<int> Gathered(List<int> left, ImmutableArray<Clause> then)
    {
        while (left.Count > 0)
        {
            if (left.RemoveAll(DoneAsItStands) > 0)
                continue;
            if (left.FindIndex(act => CanBeEnsured(free.Reduced.Acts[act].When)) is >= 0 and var next)
            {
                Ensure(free.Reduced.Acts[left[next]].When);
                Take(left[next]);
                left.RemoveAt(next);
            }
            else
            {
                React(once: true);
            }
        }

        while (!CanBeEnsured(free.Widened(then)))
            React(once: true);
        Ensure(free.Widened(then));
        return real;

        bool DoneAsItStands(int act)
        {
            if (IsForLater(act) && CanBeEnsured(free.Reduced.Acts[act].When))
                wide.Make(act, anywhere);
            else if (Stepper.Holds(machine.Acts[act].When, state))
                Take(act);
            else
                return false;
            return true;
        }

        void Take(int act)
        {
            Make(act);
            wide.Make(act, anywhere);
        }
    }

    // What only moves a part that can be moved whenever that is wanted.
    private bool IsForLater(int act) => machine.Acts[act].Effects is [{ Variable: var v }] && free.Contains(v) &&
        (free.CanWait(v) || anywhere[v] == free.Anywhere(v));

    private void Make(int act)
    {
        real.Add(act);
        stepper.Make(act, state);
    }

    // Reactions to free parts happen in the reduced machine as soon as they can.
    private void React(bool once = false)
    {
        while (machine.Rules.FirstOrDefault(IsMissing) is { } missing)
        {
            Ensure(free.Reduced.Rules[missing.Number].When);
            if (once)
                return;
        }

        if (once)
            throw new InvalidOperationException("free parts can't be moved as it was proved that they can");
    }

    private bool IsMissing(Rule rule) =>
        rule.Effects.Any(effect =>
            state[effect.Variable] != effect.Position && effect.Applies(state[effect.Variable]) && anywhere[effect.Variable] == effect.Position)
        && free.Reduced.Rules[rule.Number].When.Any(CanBeEnsured);

    private bool HoldsIfFixed(Literal literal) => free.Contains(literal.Variable) || literal.Takes(state[literal.Variable]);

    // Later ones may need earlier ones somewhere in order to move, so they go first.
    private void Ensure(ImmutableArray<Clause> when)
    {
        var clause = when.First(CanBeEnsured);
        Ensure(clause.Literals);
    }

    private bool CanBeEnsured(ImmutableArray<Clause> when) => when.Any(CanBeEnsured);

    private bool CanBeEnsured(Clause clause) => clause.Literals.All(literal => literal.Takes(anywhere[literal.Variable]) && HoldsIfFixed(literal));

    private void Ensure(IEnumerable<Literal> literals)
    {
        foreach (var literal in literals.Where(literal => free.Contains(literal.Variable)).OrderByDescending(literal => free.PlaceOf(literal.Variable)))
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
        var usable = free.EdgesOf(v).Where(edge => free.MayBeMade(edge) && edge.Rest.All(literal => MayBeEnsured(literal, v))).ToList();
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

    private bool MayBeEnsured(Literal literal, int before) =>
        literal.Takes(state[literal.Variable])
        || (free.Contains(literal.Variable)
            && free.PlaceOf(literal.Variable) < free.PlaceOf(before)
            && free.Widened(literal).Takes(anywhere[literal.Variable]));
}
