using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Which acts and reactions can get into each other's way, found once from what they ask for and change. Two of them conflict if one may
/// take away what the other asks for, or if they leave something in different positions. Acts come first, then reactions.
/// </summary>
internal sealed class Independence
{
    private readonly Machine machine;
    private readonly int acts;

    /// <summary>Compares all pairs that share a variable.</summary>
    public Independence(Machine machine)
    {
        this.machine = machine;
        acts = machine.Acts.Length;
        var count = acts + machine.Rules.Length;
        Written = new ulong[machine.Variables.Length];
        foreach (var effect in Enumerable.Range(0, count).SelectMany(EffectsOf))
            Written[effect.Variable] |= 1UL << effect.Position;

        Conflicts = new int[count][];
        var readers = ByVariable(count, e => WhenOf(e).SelectMany(clause => clause.Literals).Select(literal => literal.Variable));
        var writers = ByVariable(count, e => EffectsOf(e).Select(effect => effect.Variable));
        for (var e = 0; e < count; e++)
        {
            var near = EffectsOf(e).SelectMany(effect => readers[effect.Variable].Concat(writers[effect.Variable]))
                .Concat(WhenOf(e).SelectMany(clause => clause.Literals).SelectMany(literal => writers[literal.Variable]));
            Conflicts[e] = [.. near.Where(f => f != e).Distinct().Order().Where(f => Conflict(e, f))];
        }

        Triggers = new int[count][];
        for (var e = 0; e < count; e++)
        {
            var found = new SortedSet<int>();
            var open = new Stack<int>([e]);
            while (open.TryPop(out var from))
            {
                foreach (var rule in EffectsOf(from).SelectMany(effect => readers[effect.Variable]).Where(f => f >= acts && found.Add(f)))
                    open.Push(rule);
            }

            Triggers[e] = [.. found];
        }

        AgainstGoal = [.. Enumerable.Range(0, count).Select(e => EffectsOf(e).Any(effect => Refuses(machine.Goal, effect)))];
        TouchesGoal = [.. Enumerable.Range(0, count).Select(e => EffectsOf(e).Any(effect => Reads(machine.Goal, effect.Variable)))];
    }

    /// <summary>By variable: the positions that anything ever puts it in.</summary>
    public ulong[] Written { get; }

    /// <summary>By act or reaction: those that it conflicts with.</summary>
    public int[][] Conflicts { get; }

    /// <summary>By act or reaction: the reactions that it can set off, directly or by others.</summary>
    public int[][] Triggers { get; }

    /// <summary>By act or reaction: whether it may take away what the goal asks for.</summary>
    public bool[] AgainstGoal { get; }

    /// <summary>By act or reaction: whether it changes anything that the goal speaks of.</summary>
    public bool[] TouchesGoal { get; }

    /// <summary>Whether an act or reaction can never change anything again.</summary>
    public bool IsSpent(int e, int[] state)
    {
        foreach (var effect in e < acts ? machine.Acts[e].Effects : machine.Rules[e - acts].Effects)
        {
            var at = state[effect.Variable];
            var stays = at == machine.Variables[effect.Variable].Gone;
            if (!stays && (((1UL << at) | Written[effect.Variable]) & effect.From & ~(1UL << effect.Position)) != 0)
                return false;
        }

        return true;
    }

    /// <summary>What an act or reaction changes.</summary>
    public IEnumerable<Effect> EffectsOf(int e) => e < acts ? machine.Acts[e].Effects : machine.Rules[e - acts].Effects;

    private ImmutableArray<Clause> WhenOf(int e) => e < acts ? machine.Acts[e].When : machine.Rules[e - acts].When;

    private bool Conflict(int e, int f) =>
        EffectsOf(e).Any(effect => Refuses(WhenOf(f), effect)) ||
        EffectsOf(f).Any(effect => Refuses(WhenOf(e), effect)) ||
        EffectsOf(e).Any(one => EffectsOf(f).Any(other => Clash(one, other)));

    // A thing that is gone stays gone, whichever of the two comes first.
    private bool Clash(Effect one, Effect other) =>
        one.Variable == other.Variable && one.Position != other.Position &&
        machine.Variables[one.Variable].Gone is var gone && (gone < 0 || (one.Position != gone && other.Position != gone));

    private static bool Refuses(IEnumerable<Clause> when, Effect effect) =>
        when.Any(clause => clause.Literals.Any(literal => literal.Variable == effect.Variable && !literal.Takes(effect.Position)));

    private static bool Reads(IEnumerable<Clause> when, int variable) =>
        when.Any(clause => clause.Literals.Any(literal => literal.Variable == variable));

    private List<int>[] ByVariable(int count, Func<int, IEnumerable<int>> variables)
    {
        var by = Enumerable.Range(0, machine.Variables.Length).Select(_ => new List<int>()).ToArray();
        for (var e = 0; e < count; e++)
        {
            foreach (var v in variables(e).Distinct())
                by[v].Add(e);
        }

        return by;
    }
}
