using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// How far each position seems to be from a state, if nothing that was once so ever stopped being so: what an act asks for is added up (Bonet and Geffner,
/// "Planning as heuristic search", 2001). It says where to look first, and proves nothing.
/// </summary>
internal sealed class RelaxedCosts
{
    /// <summary>The cost of what never comes about.</summary>
    public const int Never = 1 << 20;
    private readonly int[][] costs;

    /// <summary>Estimates from a state.</summary>
    public RelaxedCosts(Machine machine, int[] state)
    {
        costs = [.. machine.Variables.Select(variable => Enumerable.Repeat(Never, variable.Positions.Length).ToArray())];
        for (var v = 0; v < state.Length; v++)
            costs[v][state[v]] = 0;
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var act in machine.Acts)
                changed |= Spread(act.When, act.Effects, 1);
            foreach (var rule in machine.Rules)
                changed |= Spread(rule.When, rule.Effects, 0);
        }
    }

    /// <summary>The cost of what holds if one of some clauses does.</summary>
    public int Of(ImmutableArray<Clause> when)
    {
        var least = Never;
        foreach (var clause in when)
        {
            var sum = 0;
            foreach (var literal in clause.Literals)
                sum = Math.Min(Never, sum + Of(literal.Variable, literal.Accepts));
            least = Math.Min(least, sum);
        }

        return least;
    }

    /// <summary>The cost of the nearest of some positions.</summary>
    public int Of(int variable, ulong positions)
    {
        var least = Never;
        for (var p = 0; p < costs[variable].Length; p++)
        {
            if ((positions >> p & 1) != 0)
                least = Math.Min(least, costs[variable][p]);
        }

        return least;
    }

    private bool Spread(ImmutableArray<Clause> when, ImmutableArray<Effect> effects, int own)
    {
        var cost = Of(when);
        var changed = false;
        if (cost >= Never)
            return false;
        foreach (var effect in effects)
        {
            ref var known = ref costs[effect.Variable][effect.Position];
            var through = Math.Min(Never, cost + own + Of(effect.Variable, effect.From));
            if (through >= known)
                continue;
            known = through;
            changed = true;
        }

        return changed;
    }
}
