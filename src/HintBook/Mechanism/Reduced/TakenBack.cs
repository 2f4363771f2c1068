using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Whether every act can be taken back on the spot: from wherever it leads, acts of putting back lead to where it was made, whatever else is so. Then
/// every state that can be reached leads back to the shipped one, by taking back the way there from its end; nothing has to be explored. An act that sets
/// off reactions doesn't count as one that can be.
/// </summary>
internal sealed class TakenBack
{
    private const int MostOrigins = 256;
    private const int MostTried = 200;
    private readonly Machine machine;
    private readonly Machine back;
    private readonly ulong[] attainable;
    private readonly bool[] setsOff;
    private readonly List<int>[] movers;

    /// <summary>Prepares the check.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="back">Its machine of putting back, whose first variables are those of the box.</param>
    /// <param name="attainable">By variable of <paramref name="back"/>: the positions that it may have.</param>
    public TakenBack(Machine machine, Machine back, ulong[] attainable)
    {
        (this.machine, this.back, this.attainable) = (machine, back, attainable);
        setsOff = new bool[back.Variables.Length];
        foreach (var literal in back.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals))
            setsOff[literal.Variable] = true;
        foreach (var effect in back.Rules.SelectMany(rule => rule.Effects))
            setsOff[effect.Variable] = true;
        movers = [.. back.Variables.Select(_ => new List<int>())];
        foreach (var (number, act) in back.Acts.Index())
        {
            foreach (var effect in act.Effects)
                movers[effect.Variable].Add(number);
        }
    }

    /// <summary>Whether it is so of all acts.</summary>
    public bool All() => machine.Acts.All(act => act.When.All(clause => CanBeTakenBack(act, clause)));

    private bool CanBeTakenBack(Act act, Clause clause)
    {
        var before = (ulong[])attainable.Clone();
        foreach (var literal in clause.Literals)
            before[literal.Variable] &= literal.Accepts;
        if (before.Contains(0UL))
            return true;

        if (act.Effects.Any(effect => setsOff[effect.Variable] && MayChange(before, effect)))
            return false;

        // What is known may have come to be known since.
        for (var v = 0; v < machine.Variables.Length; v++)
        {
            if (machine.Variables[v].IsKnowledge)
                before[v] |= attainable[v] & ~1UL;
        }

        var learnt = act.Effects.Where(effect => machine.Variables[effect.Variable].IsKnowledge).ToImmutableArray();
        foreach (var effect in learnt.Where(effect => effect.From == machine.Variables[effect.Variable].NotGone))
            before[effect.Variable] = 1UL << effect.Position;
        var moved = act.Effects.Except(learnt).ToImmutableArray();
        return Origins(before, moved) is { } origins && origins.TrueForAll(origin => Leads(before, moved, origin));
    }

    private static bool MayChange(ulong[] state, Effect effect) => (state[effect.Variable] & effect.From & ~(1UL << effect.Position)) != 0;

    // By effect: the position that the act takes something from, or -1 if the act changes nothing there. Null if there are too many.
    private static List<int[]>? Origins(ulong[] before, ImmutableArray<Effect> moved)
    {
        var origins = new List<int[]> { Array.Empty<int>() };
        foreach (var effect in moved)
        {
            var target = 1UL << effect.Position;
            var from = before[effect.Variable] & effect.From & ~target;
            var each = Enumerable.Range(0, 64).Where(p => (from >> p & 1) != 0).ToList();
            if ((before[effect.Variable] & ~from) != 0)
                each.Add(-1);
            origins = [.. origins.SelectMany(known => each.Select(p => known.Append(p).ToArray()))];
            if (origins.Count > MostOrigins)
                return null;
        }

        return origins;
    }

    private bool Leads(ulong[] before, ImmutableArray<Effect> moved, int[] origin)
    {
        var held = (ulong[])before.Clone();
        var wanted = new Dictionary<int, int>();
        foreach (var (effect, from) in moved.Zip(origin))
        {
            var v = effect.Variable;
            held[v] = from < 0 ? before[v] & ((1UL << effect.Position) | ~effect.From) : 1UL << effect.Position;
            if (from >= 0)
                wanted[v] = from;
        }

        if (wanted.Count == 0)
            return true;
        for (var v = machine.Variables.Length; v < back.Variables.Length; v++)
            wanted[v] = 0;
        return Search(held, wanted);
    }

    private bool Search(ulong[] held, Dictionary<int, int> wanted)
    {
        var acts = wanted.Keys.SelectMany(v => movers[v]).Distinct().Order().ToArray();
        var changing = wanted.Keys.Order().ToArray();
        var seen = new HashSet<Positions> { At(held) };
        var open = new Queue<ulong[]>([held]);
        while (open.TryDequeue(out var at) && seen.Count < MostTried)
        {
            if (wanted.All(want => at[want.Key] == 1UL << want.Value))
                return true;
            foreach (var act in acts)
            {
                if (After(back.Acts[act], at) is { } next && seen.Add(At(next)))
                    open.Enqueue(next);
            }
        }

        return false;

        Positions At(ulong[] state) => new([.. changing.Select(v => System.Numerics.BitOperations.TrailingZeroCount(state[v]))]);

        // Null if the act may not be possible, or may change anything else.
        ulong[]? After(Act act, ulong[] at)
        {
            if (!act.When.Any(clause => clause.Literals.All(literal => (at[literal.Variable] & ~literal.Accepts) == 0)))
                return null;
            var next = (ulong[])at.Clone();
            foreach (var effect in act.Effects)
            {
                var (v, target) = (effect.Variable, 1UL << effect.Position);
                if (!MayChange(at, effect))
                    continue;
                if (setsOff[v])
                    return null;
                if (v < machine.Variables.Length && back.Variables[v].IsKnowledge)
                    continue;
                if (!wanted.ContainsKey(v))
                    return null;
                next[v] = target;
            }

            return next;
        }
    }
}
