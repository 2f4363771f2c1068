using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What is certain even if nothing that was once so ever stopped being so (the landmarks of the delete relaxation; Zhu and Givan 2003,
/// Keyder, Richter and Helmert 2010). Every real way is a way there too, so what is certain there is certain here: sound, and cheap.
/// </summary>
internal sealed class RelaxedCertain
{
    private readonly Machine machine;
    private readonly Attainable things;
    private readonly Bits?[][] before;

    /// <summary>Finds the greatest solution: a position has itself before it, and what all its givers have before them.</summary>
    public RelaxedCertain(Machine machine)
    {
        this.machine = machine;
        things = new Attainable(machine);
        before = [.. machine.Variables.Select(variable => new Bits?[variable.Positions.Length])];
        for (var v = 0; v < machine.Variables.Length; v++)
            before[v][machine.Start[v]] = With(new Bits(things.Count), v, machine.Start[v]);
        for (var changed = true; changed;)
        {
            changed = false;
            for (var a = 0; a < machine.Acts.Length; a++)
                changed |= Give(machine.Acts[a].When, machine.Acts[a].Effects, a);
            foreach (var rule in machine.Rules)
                changed |= Give(rule.When, rule.Effects, -1);
        }
    }

    /// <summary>What is certain when one of some clauses holds; null if none ever does.</summary>
    public Bits? Of(IEnumerable<Clause> when)
    {
        Bits? common = null;
        foreach (var clause in when)
        {
            if (Of(clause) is not { } one)
                continue;
            if (common is null)
                common = one;
            else
                common.And(one);
        }

        return common;
    }

    private Bits? Of(Clause clause)
    {
        var all = new Bits(things.Count);
        foreach (var literal in clause.Literals)
        {
            Bits? either = null;
            for (var p = 0; p < machine.Variables[literal.Variable].Positions.Length; p++)
            {
                if (!literal.Takes(p) || before[literal.Variable][p] is not { } one)
                    continue;
                if (either is null)
                    either = one.Copy();
                else
                    either.And(one);
            }

            if (either is null)
                return null;
            all.Or(either);
        }

        return all;
    }

    private bool Give(IEnumerable<Clause> when, IEnumerable<Effect> effects, int act)
    {
        if (Of(when) is not { } certain)
            return false;
        if (act >= 0)
            certain[act] = true;
        var changed = false;
        foreach (var effect in effects)
        {
            var with = With(certain.Copy(), effect.Variable, effect.Position);
            ref var known = ref before[effect.Variable][effect.Position];
            if (known is null)
            {
                known = with;
                changed = true;
            }
            else
            {
                changed |= known.And(with);
            }
        }

        return changed;
    }

    private Bits With(Bits bits, int variable, int position)
    {
        if (machine.Variables[variable].Named is not null && !Passing(variable, position))
            bits[things.Of(variable, position)] = true;
        return bits;
    }

    // A reaction may move it on before the box comes to rest, and only what stands at rest counts as attained.
    private bool Passing(int variable, int position) =>
        machine.Rules.Any(rule => rule.Effects.Any(effect => effect.Variable == variable && effect.Position != position));
}
