using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>Plans for putting back a box that is too large to look at state by state.</summary>
/// <param name="back">The machine of putting back.</param>
/// <param name="opening">The names of the moves that opened it, in order: what was done last is put back first.</param>
internal sealed class GreedyReset(Machine back, IReadOnlyList<Step> opening)
{
    private const int MostTried = 20_000;
    private readonly Stepper stepper = new(back);

    // Some free parts must go back while what lets them move is still there, others are of use to the end: both are tried.
    private readonly int[][] orders =
    [
        [.. Enumerable.Range(0, back.Acts.Length).OrderBy(a => Rank(back.Acts[a].Step, opening, int.MinValue)).ThenBy(a => a)],
        [.. Enumerable.Range(0, back.Acts.Length).OrderBy(a => Rank(back.Acts[a].Step, opening, int.MaxValue)).ThenBy(a => a)],
    ];

    /// <summary>
    /// A plan, or null if none was found: the next act is one that puts something right without more going wrong, and where there is none
    /// the nearest state where there is is looked for. What turns out not to be needed is left out at the end.
    /// </summary>
    public List<int>? Plan(int[] solved) =>
        orders.Select(ranked => Plan(solved, ranked)).OfType<List<int>>().OrderBy(plan => plan.Count).FirstOrDefault();

    private List<int>? Plan(int[] solved, int[] ranked)
    {
        var plan = new List<int>();
        var state = solved;
        while (Wrong(state) > 0)
        {
            if (Nearer(state, ranked) is not { } found)
                return null;
            plan.AddRange(found.Way.Acts());
            state = found.State;
        }

        return Shortened.Of(back with { Start = [.. solved] }, plan, back.Goal, thorough: true);
    }

    /// <summary>No plan has fewer steps: so many things are out of place that no two of them are put right by the same act.</summary>
    public int Bound(int[] solved)
    {
        var reacting = back.Rules.SelectMany(rule => rule.Effects).Select(effect => effect.Variable).ToHashSet();
        var givers = back.Goal[0].Literals
            .Where(literal => !literal.Takes(solved[literal.Variable]) && !reacting.Contains(literal.Variable))
            .Select(literal => Enumerable.Range(0, back.Acts.Length)
                .Where(a => back.Acts[a].Effects.Any(effect => effect.Variable == literal.Variable && literal.Takes(effect.Position))).ToHashSet())
            .OrderBy(acts => acts.Count);
        var (taken, bound) = (new HashSet<int>(), 0);
        foreach (var acts in givers.Where(acts => !acts.Overlaps(taken)))
        {
            taken.UnionWith(acts);
            bound++;
        }

        return Math.Max(bound, Wrong(solved) > 0 ? 1 : 0);
    }

    /// <summary>
    /// Whether one plan puts back every box, whatever state it is in: it is carried out on all positions at once that each part may have,
    /// steps that aren't possible being left out. A reaction counts wherever its conditions may hold.
    /// </summary>
    /// <param name="attainable">By variable: the positions that it may have.</param>
    public bool PutsBackAnything(IReadOnlyList<ulong> attainable) => Array.Exists(orders, ranked => PutsBackAnything(attainable, ranked));

    private bool PutsBackAnything(IReadOnlyList<ulong> attainable, int[] ranked)
    {
        var may = attainable.ToArray();
        React(may);
        for (var settled = false; !settled;)
        {
            settled = true;
            foreach (var act in ranked)
            {
                if (Try(act, may) is not { } next || Sum(next) >= Sum(may))
                    continue;
                (may, settled) = (next, false);
            }
        }

        return back.Goal[0].Literals.All(literal => (may[literal.Variable] & ~literal.Accepts) == 0);
    }

    private static int Rank(Step step, IReadOnlyList<Step> opening, int free)
    {
        if (step.Kind is not (StepKind.PutBack or StepKind.WayBack))
            return step.Kind == StepKind.FreeMove ? free : int.MaxValue - 1;
        for (var i = opening.Count - 1; i >= 0; i--)
        {
            if (opening[i].Stage == step.Stage && opening[i].Move == step.Move && opening[i].Kind is StepKind.StageMove or StepKind.BookMove)
                return -i;
        }

        return 1;
    }

    private int Wrong(int[] state) => back.Goal[0].Literals.Count(literal => !literal.Takes(state[literal.Variable]));

    private (int[] State, Trail Way)? Nearer(int[] from, int[] ranked)
    {
        var wrong = Wrong(from);
        var seen = new HashSet<BigInteger> { Number(from) };
        var open = new Queue<(int[] State, Trail Way)>([(from, Trail.Start)]);
        while (open.TryDequeue(out var at) && seen.Count < MostTried)
        {
            foreach (var act in ranked)
            {
                if (!Stepper.Holds(back.Acts[act].When, at.State) || stepper.After(act, at.State) is not { } next || next.AsSpan().SequenceEqual(at.State))
                    continue;
                if (Wrong(next) < wrong)
                    return (next, at.Way.Then(act));
                if (seen.Add(Number(next)))
                    open.Enqueue((next, at.Way.Then(act)));
            }
        }

        return null;
    }

    private static BigInteger Number(int[] state) => new(System.Runtime.InteropServices.MemoryMarshal.AsBytes<int>(state), isUnsigned: true);

    // The act is made by those whose needs hold and left out by the others. If only one thing decides which, the others are known by it.
    private ulong[]? Try(int act, ulong[] may)
    {
        if (back.Acts[act].When is not [var clause])
            return null;
        var open = clause.Literals.Where(literal => (may[literal.Variable] & ~literal.Accepts) != 0).ToArray();
        if (open.Length > 1)
            return null;
        var next = (ulong[])may.Clone();
        foreach (var effect in back.Acts[act].Effects)
        {
            var gone = back.Variables[effect.Variable].Gone;
            var stays = gone >= 0 && !back.Acts[act].Restores ? may[effect.Variable] & (1UL << gone) : 0;
            var others = open.Length == 0 ? 0 : open[0].Variable == effect.Variable ? may[effect.Variable] & ~open[0].Accepts : may[effect.Variable];
            next[effect.Variable] = (1UL << effect.Position) | stays | others;
        }

        React(next);
        return next;
    }

    private void React(ulong[] may)
    {
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var rule in back.Rules.Where(rule => rule.When.Any(clause => clause.Literals.All(literal => (may[literal.Variable] & literal.Accepts) != 0))))
            {
                foreach (var effect in rule.Effects)
                {
                    changed |= (may[effect.Variable] >> effect.Position & 1) == 0;
                    may[effect.Variable] |= 1UL << effect.Position;
                }
            }
        }
    }

    private int Sum(ulong[] may) => back.Goal[0].Literals.Sum(literal => BitOperations.PopCount(may[literal.Variable] & ~literal.Accepts));
}
