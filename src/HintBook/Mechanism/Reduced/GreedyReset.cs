using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>Plans for putting back a box that is too large to look at state by state.</summary>
/// <param name="back">The machine of putting back.</param>
/// <param name="opening">The names of the moves that opened it, in order: what was done last is put back first.</param>
internal sealed class GreedyReset(Machine back, IReadOnlyList<Step> opening)
{
    private const int MostTried = 20_000;
    private const int MostTriedForMany = 1_000;
    private readonly Stepper stepper = new(back);
    private readonly ulong[] shipped = Shipped(back);

    // Some free parts must go back while what lets them move is still there, others are of use to the end: both are tried.
    private readonly int[][] orders =
    [
        Ranked(back, opening, int.MinValue),
        Ranked(back, opening, int.MaxValue),
    ];

    /// <summary>
    /// A plan, or null if none was found: the next act is one that puts something right without more going wrong, and where there is none
    /// the nearest state where there is is looked for. What turns out not to be needed is left out at the end.
    /// Once one order has found a plan, the other isn't searched much longer for a shorter one.
    /// </summary>
    public List<int>? Plan(int[] solved)
    {
        var (shortest, mostTried) = ((List<int>?)null, MostTried);
        foreach (var ranked in orders)
        {
            if (Plan(solved, ranked, mostTried) is not { } found)
                continue;
            mostTried = Math.Max(MostTriedForMany, found.Tried);
            if (shortest is null || found.Acts.Count < shortest.Count)
                shortest = found.Acts;
        }

        return shortest;
    }

    /// <summary>The first plan that is found in the same way, or null: whoever asks makes it shorter.</summary>
    /// <param name="solved">The state.</param>
    /// <param name="soon">Whether to give up soon.</param>
    public List<int>? AnyPlan(int[] solved, bool soon) =>
        orders.Select(ranked => Way(solved, ranked, soon ? MostTriedForMany : MostTried)?.Acts).FirstOrDefault(plan => plan is not null);

    /// <summary>
    /// Whether a plan is found in the same way from another state. States from which one was found are remembered, as far as what they
    /// have in common with other states decides.
    /// </summary>
    /// <param name="solved">The state.</param>
    /// <param name="good">States from which there is a plan; those on the way are added.</param>
    public bool LeadsBack(int[] solved, HashSet<Positions> good) => Array.Exists(orders, ranked =>
    {
        var passed = new List<Positions>();
        for (var state = solved; Wrong(state) > 0;)
        {
            passed.Add(new Positions(state));
            if (good.Contains(passed[^1]))
                break;
            if (Nearer(state, ranked, MostTriedForMany) is not { } found)
                return false;
            state = found.State;
        }

        good.UnionWith(passed);
        return true;
    });

    // Tried: how many states its hardest step took.
    private (List<int> Acts, int Tried)? Plan(int[] solved, int[] ranked, int mostTried) => Way(solved, ranked, mostTried) is { } found
        ? (PlanShortening.Shorten(back with { Start = [.. solved] }, found.Acts, back.Goal, thorough: true), found.Tried)
        : null;

    private (List<int> Acts, int Tried)? Way(int[] solved, int[] ranked, int mostTried)
    {
        var (plan, tried) = (new List<int>(), 0);
        var leading = new LeadingActs(back, ranked, shipped, solved);
        while (leading.Wrong > 0)
        {
            if (leading.First is >= 0 and var act)
            {
                leading.Make(act);
                plan.Add(act);
                tried = Math.Max(tried, 1);
                continue;
            }

            if (Nearer(leading.State, ranked, mostTried) is not { } found)
                return null;
            plan.AddRange(found.Way.Acts());
            leading.GoOnFrom(found.State);
            tried = Math.Max(tried, found.Tried);
        }

        return (plan, tried);
    }

    /// <summary>No plan has fewer steps: so many things are out of place that no two of them are put right by the same act.</summary>
    public int Bound(int[] solved)
    {
        var reacting = back.Rules.SelectMany(rule => rule.Effects).Select(effect => effect.Variable).ToHashSet();
        var givers = back.Variables.Select(_ => new List<int>()).ToArray();
        for (var a = 0; a < back.Acts.Length; a++)
        {
            foreach (var effect in back.Acts[a].Effects.Where(effect => (shipped[effect.Variable] >> effect.Position & 1) != 0))
                givers[effect.Variable].Add(a);
        }

        var wrong = back.Goal[0].Literals
            .Where(literal => !literal.Takes(solved[literal.Variable]) && !reacting.Contains(literal.Variable))
            .Select(literal => givers[literal.Variable])
            .OrderBy(acts => acts.Count);
        var (taken, bound) = (new HashSet<int>(), 0);
        foreach (var acts in wrong.Where(acts => !acts.Exists(taken.Contains)))
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
    /// <param name="movable">Free parts that may still move wherever they aren't as shipped, as long as nothing else has been put back.</param>
    public bool PutsBackAnything(IReadOnlyList<ulong> attainable, IReadOnlySet<int> movable) =>
        Array.Exists(orders, ranked => PutsBackAnything(attainable, movable, ranked));

    private bool PutsBackAnything(IReadOnlyList<ulong> attainable, IReadOnlySet<int> movable, int[] ranked)
    {
        var may = attainable.ToArray();
        foreach (var v in movable)
            may[v] = 1UL << BitOperations.TrailingZeroCount(shipped[v]);
        React(may);
        for (var settled = false; !settled;)
        {
            settled = true;
            foreach (var act in ranked)
            {
                if (back.Acts[act].Effects.All(effect => (may[effect.Variable] & ~shipped[effect.Variable]) == 0)
                    || Try(act, may) is not { } next
                    || Sum(next) >= Sum(may))
                {
                    continue;
                }

                (may, settled) = (next, false);
            }
        }

        return back.Goal[0].Literals.All(literal => (may[literal.Variable] & ~literal.Accepts) == 0);
    }

    // The acts in the order in which they are tried. Free: the rank of moving a free part.
    private static int[] Ranked(Machine back, IReadOnlyList<Step> opening, int free)
    {
        var last = new Dictionary<(string? Stage, int Move), int>();
        for (var i = opening.Count - 1; i >= 0; i--)
        {
            if (opening[i].Kind is StepKind.StageMove or StepKind.BookMove)
                last.TryAdd((opening[i].Stage, opening[i].Move), i);
        }

        return [.. Enumerable.Range(0, back.Acts.Length).OrderBy(a => Rank(back.Acts[a].Step)).ThenBy(a => a)];

        int Rank(Step step)
        {
            if (step.Kind is not (StepKind.PutBack or StepKind.WayBack))
                return step.Kind == StepKind.FreeMove ? free : int.MaxValue - 1;
            return last.TryGetValue((step.Stage, step.Move), out var done) ? -done : 1;
        }
    }

    private int Wrong(int[] state)
    {
        var wrong = 0;
        foreach (var literal in back.Goal[0].Literals)
            wrong += literal.Takes(state[literal.Variable]) ? 0 : 1;
        return wrong;
    }

    private (int[] State, Trail Way, int Tried)? Nearer(int[] from, int[] ranked, int mostTried)
    {
        var wrong = Wrong(from);
        // Most often the first state leads on at once: then no state needs to be known again.
        HashSet<Positions>? seen = null;
        var open = new Queue<(int[] State, Trail Way)>([(from, Trail.Start)]);
        while (open.TryDequeue(out var at) && (seen?.Count ?? 1) < mostTried)
        {
            // An act that puts nothing right where nothing reacts can't lead nearer by itself: what becomes of it is asked only if no other does.
            var later = new List<(int Act, int[]? State)>();
            foreach (var act in ranked)
            {
                if (!Changes(act, at.State) || !Stepper.Holds(back.Acts[act].When, at.State))
                    continue;
                if (back.Rules.IsEmpty && !PutsRight(act, at.State))
                {
                    later.Add((act, null));
                    continue;
                }

                if (stepper.After(act, at.State) is not { } next)
                    continue;
                if (Wrong(next) < wrong)
                    return (next, at.Way.Then(act), seen?.Count ?? 1);
                later.Add((act, next));
            }

            seen ??= [new(from)];
            var taken = 0;
            foreach (var (act, state) in later)
            {
                if ((state ?? (taken < mostTried ? stepper.After(act, at.State) : null)) is not { } next)
                    continue;
                taken++;
                if (seen.Add(new Positions(next)))
                    open.Enqueue((next, at.Way.Then(act)));
            }
        }

        return null;
    }

    private bool Changes(int act, int[] state)
    {
        foreach (var effect in back.Acts[act].Effects)
        {
            if (state[effect.Variable] != effect.Position && effect.Applies(state[effect.Variable]))
                return true;
        }

        return false;
    }

    private bool PutsRight(int act, int[] state)
    {
        foreach (var effect in back.Acts[act].Effects)
        {
            if ((shipped[effect.Variable] >> state[effect.Variable] & 1) == 0 && effect.Applies(state[effect.Variable]))
                return true;
        }

        return false;
    }

    private static ulong[] Shipped(Machine back)
    {
        var accepts = back.Variables.Select(_ => ulong.MaxValue).ToArray();
        foreach (var literal in back.Goal[0].Literals)
            accepts[literal.Variable] = literal.Accepts;
        return accepts;
    }

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
            var stays = may[effect.Variable] & ~effect.From;
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
            var possible = back.Rules.Where(rule =>
                rule.When.Any(clause => clause.Literals.All(literal => (may[literal.Variable] & literal.Accepts) != 0)));
            foreach (var rule in possible)
            {
                foreach (var effect in rule.Effects)
                {
                    changed |= (may[effect.Variable] >> effect.Position & 1) == 0;
                    may[effect.Variable] |= 1UL << effect.Position;
                }
            }
        }
    }

    private int Sum(ulong[] may)
    {
        var sum = 0;
        foreach (var literal in back.Goal[0].Literals)
            sum += BitOperations.PopCount(may[literal.Variable] & ~literal.Accepts);
        return sum;
    }
}
