using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>Leaves out of a way what nothing later needs.</summary>
internal static class PlanShortening
{
    private const int MostToTry = 400;

    /// <summary>A way to the same end, at most as long, still carried out step by step.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="way">A way that is possible.</param>
    /// <param name="end">What holds at its end and must still hold.</param>
    /// <param name="thorough">Whether to try leaving out each act as well.</param>
    public static List<int> Shorten(Machine machine, List<int> way, ImmutableArray<Clause> end, bool thorough)
    {
        var stepper = new Stepper(machine);
        var kept = Causes(machine, stepper, way, end);
        if (!Leads(machine, stepper, kept, end))
            kept = way;
        for (var i = kept.Count - 1; thorough && kept.Count <= MostToTry && i >= 0; i--)
        {
            var without = kept.Where((_, j) => j != i).ToList();
            if (Leads(machine, stepper, without, end))
                kept = without;
            i = Math.Min(i, kept.Count);
        }

        return kept;
    }

    private static bool Leads(Machine machine, Stepper stepper, List<int> way, ImmutableArray<Clause> end)
    {
        var state = stepper.Start();
        foreach (var act in way)
        {
            if (state is null || !Stepper.Holds(machine.Acts[act].When, state) || !stepper.Make(act, state))
                return false;
        }

        return state is not null && Stepper.Holds(end, state);
    }

    // Backwards: an act is kept if it is the last to have changed something that is asked for later; then what it asks for is asked for too.
    private static List<int> Causes(Machine machine, Stepper stepper, List<int> way, ImmutableArray<Clause> end)
    {
        var (state, changes) = (stepper.Start()!, new List<List<(int Variable, int Before)>>());
        foreach (var act in way)
        {
            var next = stepper.After(act, state)!;
            changes.Add(Changes(machine, act, state, next));
            state = next;
        }

        var asked = new HashSet<int>();
        Ask(end);
        var kept = new List<int>();
        for (var i = way.Count - 1; i >= 0; i--)
        {
            var changed = changes[i].ConvertAll(change => change.Variable);
            var isAsked = changed.Exists(asked.Contains);
            var direct = machine.Acts[way[i]].Effects.Select(effect => effect.Variable).ToHashSet();
            // What reactions did besides came of other things that stood ready.
            var causes = isAsked && changed.Exists(v => !direct.Contains(v))
                ? machine.Rules.Where(rule => rule.Effects.Any(effect => changed.Contains(effect.Variable)) && Stepper.Holds(rule.When, state)).ToList()
                : [];
            foreach (var (v, position) in changes[i])
                state[v] = position;
            if (!isAsked)
                continue;
            kept.Add(way[i]);
            foreach (var v in changed)
                asked.Remove(v);
            Ask(machine.Acts[way[i]].When);
            asked.UnionWith(machine.Acts[way[i]].Effects.Where(effect => machine.Variables[effect.Variable].MayStay(effect)).Select(effect => effect.Variable));
            foreach (var rule in causes)
                asked.UnionWith(rule.When.SelectMany(clause => clause.Literals).Select(literal => literal.Variable).Where(v => !direct.Contains(v)));
        }

        kept.Reverse();
        return kept;

        void Ask(ImmutableArray<Clause> when)
        {
            var clause = when.First(clause => clause.Literals.All(literal => literal.Takes(state[literal.Variable])));
            asked.UnionWith(clause.Literals.Select(literal => literal.Variable));
        }
    }

    // What a step moved, and where it was before.
    private static List<(int Variable, int Before)> Changes(Machine machine, int act, int[] before, int[] after)
    {
        var changes = new List<(int, int)>();
        if (machine.Rules.IsEmpty)
        {
            foreach (var effect in machine.Acts[act].Effects)
                Compare(effect.Variable);
        }
        else
        {
            for (var v = 0; v < before.Length; v++)
                Compare(v);
        }

        return changes;

        void Compare(int v)
        {
            if (before[v] != after[v])
                changes.Add((v, before[v]));
        }
    }
}
