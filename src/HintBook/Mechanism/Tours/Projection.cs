using System.Collections.Immutable;
using System.Runtime.InteropServices;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// A box of which only a few variables are looked at. Whatever happens in the box happens there too: each walk of the box is one from state to state there,
/// and comes by where its duties are done. A set of states is a number with a bit for each of them.
/// </summary>
internal sealed class Projection
{
    /// <summary>The most states that one may have.</summary>
    public const int MostStates = 64;
    private readonly TourMachine machine;
    private readonly ImmutableArray<int> variables;
    private readonly List<int[]> states = [];
    private readonly List<Step> steps = [];
    private readonly HashSet<int> stays = [];

    // By variable of the box: its place here, or -1.
    private readonly int[] places;

    /// <summary>Looks at a few variables of a box.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="variables">The variables, which have at most <see cref="MostStates"/> states together.</param>
    /// <param name="events">The numbers of what moves any of them: acts, and behind them reactions.</param>
    /// <param name="home">Whether walks end as shipped.</param>
    public Projection(TourMachine machine, ImmutableArray<int> variables, IReadOnlyCollection<int> events, bool home)
    {
        (this.machine, this.variables) = (machine, variables);
        places = new int[machine.Back.Variables.Length];
        Array.Fill(places, -1);
        foreach (var (place, variable) in variables.Index())
            places[variable] = place;
        Explore(events);
        Ends = Where(state => machine.Back.Goal.Any(clause => MayHold(clause, state)));
        if (home)
            LeaveOutDeadEnds();
        else
            Ends = Where(_ => true);
    }

    /// <summary>How many states there are; 0 is the box as shipped.</summary>
    public int Count => states.Count;

    /// <summary>What leads from one state to another.</summary>
    public IReadOnlyList<Step> Steps => steps;

    /// <summary>The states in which a walk may end.</summary>
    public ulong Ends { get; private set; }

    /// <summary>Something that happens and moves what is looked at.</summary>
    /// <param name="Event">The number of an act, or behind them of a reaction.</param>
    /// <param name="From">The state before.</param>
    /// <param name="To">The state after.</param>
    [StructLayout(LayoutKind.Auto)]
    public readonly record struct Step(int Event, int From, int To);

    /// <summary>Whether something that may move what is looked at may also happen without.</summary>
    public bool MayStay(int happening) => stays.Contains(happening);

    /// <summary>The states in which a duty may be done.</summary>
    public ulong Region(Duty duty)
    {
        switch (duty)
        {
            case Duty.Make make:
                var act = machine.Back.Acts[make.Act];
                var moved = machine.MovedBy(make.Act);
                return Where(state => IsAtRest(state) && act.When.Any(clause => MayHold(clause, state) && (moved.IsEmpty || MayMove(clause, moved, state))));
            case Duty.See see:
                var rule = machine.Back.Rules[see.Rule];
                return Where(state => rule.When.Any(clause => MayHold(clause, state) && MayMove(clause, rule.Effects, state)));
            case Duty.Refuse refuse:
                return Where(state => IsAtRest(state) && !refuse.Needs.Any(clause => Holds(clause, state))
                    && refuse.Others.Any(clause => MayHold(clause, state) && (refuse.Moves.IsEmpty || MayMove(clause, refuse.Moves, state))));
            default:
                return Where(_ => true);
        }
    }

    private void Explore(IReadOnlyCollection<int> events)
    {
        var numbers = new Dictionary<int, int>();
        Met([.. variables.Select(v => machine.Start[v])]);
        for (var from = 0; from < states.Count; from++)
        {
            var state = states[from];
            var rests = IsAtRest(state);
            foreach (var happening in events)
            {
                var isAct = happening < machine.Back.Acts.Length;
                var (when, effects) = isAct ? (machine.Back.Acts[happening].When, machine.Back.Acts[happening].Effects)
                    : (machine.Back.Rules[happening - machine.Back.Acts.Length].When, machine.Back.Rules[happening - machine.Back.Acts.Length].Effects);
                if (isAct && !rests)
                    continue;

                // What moves nothing does no duty, unless it only tells something. A shortest walk does without.
                var tells = isAct && machine.MovedBy(happening).IsEmpty;
                if (!when.Any(clause => MayHold(clause, state) && (tells || MayMove(clause, effects, state))))
                    continue;
                var next = After(effects, state);
                if (next.AsSpan().SequenceEqual(state))
                    stays.Add(happening);
                else
                    steps.Add(new(happening, from, Met(next)));
            }
        }

        int Met(int[] state)
        {
            var key = 0;
            for (var i = 0; i < state.Length; i++)
                key = (key * machine.Back.Variables[variables[i]].Positions.Length) + state[i];
            if (!numbers.TryGetValue(key, out var number))
            {
                numbers[key] = number = states.Count;
                states.Add(state);
            }

            return number;
        }
    }

    // From where no way leads home no walk has been.
    private void LeaveOutDeadEnds()
    {
        var leads = Ends;
        for (var before = 0UL; before != leads;)
        {
            before = leads;
            foreach (var step in steps)
                leads |= (leads >> step.To & 1) << step.From;
        }

        steps.RemoveAll(step => (leads >> step.To & 1) == 0);
    }

    private ulong Where(Func<int[], bool> isIn)
    {
        var set = 0UL;
        for (var s = 0; s < states.Count; s++)
            set |= isIn(states[s]) ? 1UL << s : 0;
        return set;
    }

    // Where it is seen that a reaction would happen, nothing is done by hand.
    private bool IsAtRest(int[] state)
    {
        foreach (var rule in machine.Back.Rules)
        {
            if (MovesHere(rule.Effects, state) && rule.When.Any(clause => Holds(clause, state)))
                return false;
        }

        return true;
    }

    private bool MovesHere(ImmutableArray<Effect> effects, int[] state)
    {
        foreach (var effect in effects)
        {
            if (places[effect.Variable] is >= 0 and var i && state[i] != effect.Position && effect.Applies(state[i]))
                return true;
        }

        return false;
    }

    private int[] After(ImmutableArray<Effect> effects, int[] state)
    {
        var next = (int[])state.Clone();
        foreach (var effect in effects)
        {
            if (places[effect.Variable] is >= 0 and var i && effect.Applies(state[i]))
                next[i] = effect.Position;
        }

        return next;
    }

    private bool Holds(Clause clause, int[] state)
    {
        foreach (var each in clause.Literals)
        {
            if (places[each.Variable] < 0 || !each.Takes(state[places[each.Variable]]))
                return false;
        }

        return true;
    }

    private bool MayHold(Clause clause, int[] state)
    {
        foreach (var each in clause.Literals)
        {
            if (places[each.Variable] >= 0 && !each.Takes(state[places[each.Variable]]))
                return false;
        }

        return true;
    }

    private bool MayMove(Clause clause, ImmutableArray<Effect> effects, int[] state)
    {
        foreach (var effect in effects)
        {
            var at = places[effect.Variable] is >= 0 and var i ? 1UL << state[i] : machine.Back.Variables[effect.Variable].All;
            foreach (var literal in clause.Literals)
                at &= literal.Variable == effect.Variable ? literal.Accepts : ulong.MaxValue;
            if ((at & effect.From & ~(1UL << effect.Position)) != 0)
                return true;
        }

        return false;
    }
}
