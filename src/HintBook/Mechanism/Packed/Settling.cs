using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>How the box comes to rest after a move.</summary>
internal enum Rest
{
    /// <summary>In one state, in whatever order the reactions happen.</summary>
    Settled,

    /// <summary>Never: the same state comes back.</summary>
    Loops,

    /// <summary>In different states, by the order of the reactions.</summary>
    Disagrees,
}

/// <summary>Lets reactions happen until nothing changes any more.</summary>
internal sealed class Settling<T>(Machine machine, Layout layout)
    where T : struct, IPackedState<T>
{
    private const int MostOrders = 4096;
    private readonly bool clash = ReactionConflicts.Any(machine);

    private readonly bool[] setsOff = SetsOff(machine);

    /// <summary>Whether there is anything to do at all.</summary>
    public bool Any { get; } = !machine.Rules.IsEmpty;

    /// <summary>Whether there may be anything to do after an act made at rest: whether a reaction reads or moves what it changes.</summary>
    public bool MayFollow(int act) => setsOff[act];

    /// <summary>Brings a state to rest: the first reaction of the book that changes anything, again and again.</summary>
    public Rest Settle(ref T state)
    {
        var (marked, steps, power) = (state, 0, 1);
        while (true)
        {
            var (next, ready) = (state, 0);
            foreach (var rule in machine.Rules)
            {
                if (!layout.Holds(state, rule.When))
                    continue;
                var after = After(state, rule);
                if (after.Equals(state))
                    continue;
                if (ready++ == 0)
                    next = after;
                else if (!clash)
                    break;
            }

            if (ready == 0)
                return Rest.Settled;
            if (ready > 1 && clash && EveryOrder(state) is not Rest.Settled and var rest)
                return rest;
            state = next;
            if (state.Equals(marked))
                return Rest.Loops;

            // Brent's way of finding a cycle: the mark moves up at every power of two.
            if (++steps == power)
                (marked, power) = (state, checked(power * 2));
            if (steps > 1 << 20)
                return Rest.Loops;
        }
    }

    /// <summary>The reactions that would change a state.</summary>
    public IEnumerable<int> Ready(T state) =>
        machine.Rules.Where(rule => layout.Holds(state, rule.When) && !After(state, rule).Equals(state)).Select(rule => rule.Number);

    private static bool[] SetsOff(Machine machine)
    {
        var read = machine.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).ToHashSet();
        var always = machine.Rules.Any(rule => rule.When.Any(clause => clause.Literals.IsEmpty));
        var given = machine.Rules.SelectMany(rule => rule.Effects).Select(effect => effect.Variable).ToHashSet();
        return [.. machine.Acts.Select(act => act.Effects.Any(effect => always || read.Contains(effect.Variable) || given.Contains(effect.Variable)))];
    }

    private T After(T state, Rule rule)
    {
        var next = state;
        foreach (var effect in rule.Effects)
        {
            var (bit, mask) = layout.Fields[effect.Variable];
            if (effect.Applies(state.Field(bit, mask)))
                next = next.With(bit, mask, effect.Position);
        }

        return next;
    }

    private Rest EveryOrder(T start)
    {
        var seen = new HashSet<T> { start };
        var open = new Stack<T>([start]);
        var rests = new HashSet<T>();
        while (open.TryPop(out var state))
        {
            var still = true;
            foreach (var rule in machine.Rules)
            {
                if (!layout.Holds(state, rule.When) || After(state, rule) is var next && next.Equals(state))
                    continue;
                still = false;
                if (seen.Add(next))
                    open.Push(next);
            }

            if (still)
                rests.Add(state);
            if (rests.Count > 1)
                return Rest.Disagrees;
            if (seen.Count > MostOrders)
                return Rest.Loops;
        }

        return rests.Count == 1 ? Rest.Settled : Rest.Loops;
    }
}
