using System.Collections.Immutable;

namespace HintBook.Mechanism.Model;

/// <summary>Carries out acts on plain positions, one array a state: for the explorers that store few states.</summary>
internal sealed class Stepper(Machine machine)
{
    private const int MostReactions = 1 << 16;

    /// <summary>Whether one of some clauses holds.</summary>
    public static bool Holds(ImmutableArray<Clause> clauses, int[] state)
    {
        foreach (var clause in clauses)
        {
            var all = true;
            foreach (var literal in clause.Literals)
            {
                if (literal.Takes(state[literal.Variable]))
                    continue;
                all = false;
                break;
            }

            if (all)
                return true;
        }

        return false;
    }

    /// <summary>The box as shipped, at rest; null if it never rests.</summary>
    public int[]? Start() => Settle([.. machine.Start]);

    /// <summary>What an act that is possible makes of a state; null if the box never rests after it.</summary>
    /// <param name="act">The act.</param>
    /// <param name="state">The state, which stays as it is.</param>
    /// <param name="happened">Takes the numbers of the reactions that follow, in their order; null where nobody asks.</param>
    public int[]? After(int act, int[] state, ICollection<int>? happened = null)
    {
        var next = (int[])state.Clone();
        Put(machine.Acts[act].Effects, next);
        return Settle(next, happened);
    }

    /// <summary>Makes an act that is possible in the state itself; false if the box never rests after it.</summary>
    public bool Make(int act, int[] state)
    {
        Put(machine.Acts[act].Effects, state);
        return Settle(state) is not null;
    }

    private int[]? Settle(int[] state, ICollection<int>? happened = null)
    {
        for (var turns = 0; turns < MostReactions; turns++)
        {
            var still = true;
            foreach (var rule in machine.Rules)
            {
                if (!Holds(rule.When, state) || !Put(rule.Effects, state))
                    continue;
                happened?.Add(rule.Number);
                still = false;
                break;
            }

            if (still)
                return state;
        }

        return null;
    }

    private static bool Put(ImmutableArray<Effect> effects, int[] state)
    {
        var changed = false;
        foreach (var effect in effects)
        {
            if (state[effect.Variable] == effect.Position || !effect.Applies(state[effect.Variable]))
                continue;
            state[effect.Variable] = effect.Position;
            changed = true;
        }

        return changed;
    }
}
