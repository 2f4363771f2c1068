using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What is certain even if nothing that was once so ever stopped being so (the landmarks of the delete relaxation; Zhu and Givan 2003,
/// Keyder, Richter and Helmert 2010). Every real way is a way there too, so what is certain there is certain here: sound, and cheap.
/// </summary>
internal sealed class RelaxedLandmarks
{
    private readonly Machine machine;
    private readonly Attainable things;
    private readonly bool gains;
    private readonly ulong[] byRules;
    private readonly bool[] usedUp;
    private readonly Bits?[][] before;

    /// <summary>Finds the greatest solution: a position has itself before it, and what all its givers have before them and do besides.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="gains">Whether the box only gains.</param>
    public RelaxedLandmarks(Machine machine, bool gains = false)
    {
        (this.machine, this.gains) = (machine, gains);
        things = new Attainable(machine);
        byRules = new ulong[machine.Variables.Length];
        foreach (var effect in machine.Rules.SelectMany(rule => rule.Effects))
            byRules[effect.Variable] |= 1UL << effect.Position;
        usedUp = new bool[machine.Variables.Length];
        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            usedUp[effect.Variable] |= effect.Position == machine.Variables[effect.Variable].Gone;
        before = [.. machine.Variables.Select(variable => new Bits?[variable.Positions.Length])];
        for (var v = 0; v < machine.Variables.Length; v++)
        {
            var start = new Bits(things.Count);
            if (Rests(v, machine.Start[v]))
                start[things.Of(v, machine.Start[v])] = true;
            before[v][machine.Start[v]] = start;
        }

        Spread();
    }

    /// <summary>What is certain when one of some clauses holds; null if none ever does.</summary>
    public Bits? Before(IEnumerable<Clause> when)
    {
        Bits? common = null;
        foreach (var clause in when)
        {
            if (Before(clause) is not { } one)
                continue;
            if (common is null)
                common = one;
            else
                common.And(one);
        }

        return common;
    }

    /// <summary>
    /// Whether, in a box that only gains, a position is certain only where it is found to be so here: nothing gives it but acts, and each that
    /// does gives it for sure.
    /// </summary>
    public bool IsExact(int variable, int position) => byRules[variable] == 0 && Gives(new Effect(variable, position));

    private Bits? Before(Clause clause)
    {
        var all = new Bits(things.Count);
        foreach (var literal in clause.Literals)
        {
            var (first, either) = (default(Bits), default(Bits));
            var places = before[literal.Variable];
            for (var p = 0; p < places.Length; p++)
            {
                if (!literal.Takes(p) || places[p] is not { } one)
                    continue;
                if (first is null)
                    first = one;
                else
                    (either ??= first.Copy()).And(one);
            }

            if (first is null)
                return null;
            all.Or(either ?? first);
        }

        return all;
    }

    private void Spread()
    {
        var count = machine.Acts.Length + machine.Rules.Length;
        var readers = machine.Variables.Select(_ => new List<int>()).ToArray();
        for (var e = 0; e < count; e++)
        {
            foreach (var v in WhenOf(e).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).Concat(Staying(e)).Distinct())
                readers[v].Add(e);
        }

        var open = new Queue<int>(Enumerable.Range(0, count));
        var waits = Enumerable.Repeat(true, count).ToArray();
        while (open.TryDequeue(out var e))
        {
            waits[e] = false;
            if (Before(WhenOf(e)) is not { } certain)
                continue;
            foreach (var v in Give(e, certain))
            {
                foreach (var reader in readers[v].Where(reader => !waits[reader]))
                {
                    waits[reader] = true;
                    open.Enqueue(reader);
                }
            }
        }
    }

    private ImmutableArray<Effect> EffectsOf(int e) => e < machine.Acts.Length ? machine.Acts[e].Effects : machine.Rules[e - machine.Acts.Length].Effects;

    private IEnumerable<int> Staying(int e) =>
        EffectsOf(e).Where(effect => machine.Variables[effect.Variable].MayStay(effect)).Select(effect => effect.Variable);

    private bool Applies(Effect effect) => before[effect.Variable].Index().Any(place => place.Item is not null && effect.Applies(place.Index));

    // What stays elsewhere was there before if it was on every way to where it stays.
    private bool Surely(Effect effect) => Gives(effect) && before[effect.Variable].Index().All(place =>
        place.Item is null || effect.Applies(place.Index) || place.Index == effect.Position || place.Index == machine.Variables[effect.Variable].Gone ||
        place.Item[things.Of(effect.Variable, effect.Position)]);

    private ImmutableArray<Clause> WhenOf(int e) => e < machine.Acts.Length ? machine.Acts[e].When : machine.Rules[e - machine.Acts.Length].When;

    private List<int> Give(int e, Bits certain)
    {
        var changed = new List<int>();
        var effects = EffectsOf(e).Where(Applies).ToArray();
        if (e < machine.Acts.Length)
            certain[e] = true;
        foreach (var effect in effects.Where(Surely))
            certain[things.Of(effect.Variable, effect.Position)] = true;
        foreach (var effect in effects)
        {
            var with = certain;
            if (Rests(effect.Variable, effect.Position) && !Surely(effect))
            {
                with = certain.Copy();
                with[things.Of(effect.Variable, effect.Position)] = true;
            }

            ref var known = ref before[effect.Variable][effect.Position];
            if (known is null || known.And(with))
                changed.Add(effect.Variable);
            known ??= with.Copy();
        }

        return changed;
    }

    // A reaction may move it on before the box comes to rest, and only what stands at rest counts as attained.
    private bool Rests(int variable, int position) => machine.Variables[variable].Named is not null && (byRules[variable] & ~(1UL << position)) == 0;

    // What is used up already isn't given again. It was there before, though, if it was hidden first and no reaction used it up.
    private bool Gives(Effect effect) =>
        Rests(effect.Variable, effect.Position) &&
        (!usedUp[effect.Variable] || effect.Position == machine.Variables[effect.Variable].Gone ||
            (gains && byRules[effect.Variable] == 0 && machine.Variables[effect.Variable].Positions[machine.Start[effect.Variable]] == Thing.Hidden));
}
