namespace HintBook.Mechanism.Tours;

/// <summary>
/// A linear programme whose columns are how often each act is made, and how often it leads from one state to another in some projections of the box. A walk
/// that does all duties is a solution; the least sum of its acts is no greater than theirs.
/// </summary>
/// <param name="machine">The box.</param>
/// <param name="duties">What walks do.</param>
internal sealed class HandlingProgramme(TourMachine machine, IReadOnlyList<Duty> duties)
{
    private const double Enough = 1 - 1e-6;
    private readonly LinearBound programme = new();
    private readonly Dictionary<int, int> columns = [];
    private readonly List<(Projection Box, int[] Columns, ulong[] Regions)> boxes = [];

    /// <summary>Looks at a projection as well.</summary>
    public void Look(SeenBox seen)
    {
        var box = seen.Box;
        var own = new int[box.Steps.Count];
        foreach (var each in box.Steps.Index().GroupBy(step => step.Item.Event))
        {
            var whole = ColumnOf(each.Key);
            int[] steps = [.. each.Select(step => step.Index)];
            foreach (var step in steps)
                own[step] = steps.Length == 1 && !box.MayStay(each.Key) ? whole : programme.Column(0);
            if (own[steps[0]] == whole)
                continue;
            var parts = steps.Select(step => (own[step], -1)).Prepend((whole, 1));
            if (box.MayStay(each.Key))
                programme.AtLeast(0, parts);
            else
                programme.Exactly(0, parts);
        }

        // What comes in and what goes out is the same altogether; so if no state has less come in, none has more.
        for (var s = 0; s < box.Count; s++)
        {
            var terms = box.Steps.Index().Where(step => step.Item.From == s || step.Item.To == s)
                .Select(step => (own[step.Index], step.Item.To == s ? 1 : -1)).ToList();
            if (terms.Count > 0)
                programme.AtLeast(s == 0 && box.Ends != 1 ? -1 : 0, terms);
        }

        boxes.Add((box, own, seen.Regions));
        foreach (var region in seen.Regions)
            Enter(box, own, region);
    }

    /// <summary>Solves it again and again with more sets of states that must be entered; what it is worth, and what is proved of it.</summary>
    /// <param name="rounds">How often at most.</param>
    public (double Value, int Least) Solve(int rounds)
    {
        Ask();
        var least = 0;
        for (var more = true; more && rounds > 0 && programme.Solve(); rounds--)
        {
            least = Math.Max(least, programme.Least());
            var taken = programme.Columns();
            more = false;
            foreach (var (box, own, regions) in boxes)
            {
                foreach (var region in regions)
                {
                    if (Apart(box, [.. own.Select(column => taken[column])], region) is not { } apart)
                        continue;
                    Enter(box, own, apart);
                    more = true;
                }
            }
        }

        return (programme.Value, least);
    }

    private int ColumnOf(int happening)
    {
        if (!columns.TryGetValue(happening, out var column))
            columns[happening] = column = programme.Column(happening < machine.Back.Acts.Length ? 1 : 0);
        return column;
    }

    private void Ask()
    {
        foreach (var duty in duties)
        {
            var does = duty switch
            {
                Duty.Make make => [make.Act],
                Duty.See see => [machine.Back.Acts.Length + see.Rule],
                Duty.Stand stand => machine.Back.Acts.Index().Where(act => act.Item.Puts(stand.Variable, stand.Position)).Select(act => act.Index),
                _ => [],
            };
            (int, int)[] known = [.. does.Where(columns.ContainsKey).Select(each => (columns[each], 1))];
            if (known.Length > 0)
                programme.AtLeast(1, known);
        }
    }

    private void Enter(Projection box, int[] own, ulong set)
    {
        var into = box.Steps.Index().Where(step => (set >> step.Item.To & 1) != 0 && (set >> step.Item.From & 1) == 0);
        programme.AtLeast(1, into.Select(step => (own[step.Index], 1)));
    }

    // A set with all of a region in it into which less than one walk leads; null where a whole one leads there (the least cut is as much as flows: Ford and
    // Fulkerson, "Maximal flow through a network", 1956).
    private static ulong? Apart(Projection box, double[] taken, ulong region)
    {
        var left = new double[box.Count, box.Count];
        for (var i = 0; i < taken.Length; i++)
            left[box.Steps[i].From, box.Steps[i].To] += taken[i];
        for (var flows = 0.0; flows < Enough;)
        {
            var before = Reached(left);
            var end = Enumerable.Range(0, box.Count).FirstOrDefault(s => (region >> s & 1) != 0 && before[s] >= 0, -1);
            if (end < 0)
                return Enumerable.Range(0, box.Count).Aggregate(0UL, (set, s) => before[s] < 0 ? set | (1UL << s) : set);
            var most = 1.0;
            for (var s = end; s != 0; s = before[s])
                most = Math.Min(most, left[before[s], s]);
            for (var s = end; s != 0; s = before[s])
            {
                left[before[s], s] -= most;
                left[s, before[s]] += most;
            }

            flows += most;
        }

        return null;
    }

    // From which state each is reached, or -1.
    private static int[] Reached(double[,] left)
    {
        var before = new int[left.GetLength(0)];
        Array.Fill(before, -1);
        before[0] = 0;
        var open = new Queue<int>([0]);
        while (open.TryDequeue(out var s))
        {
            for (var t = 0; t < before.Length; t++)
            {
                if (before[t] >= 0 || left[s, t] <= 1e-9)
                    continue;
                before[t] = s;
                open.Enqueue(t);
            }
        }

        return before;
    }
}

/// <summary>A projection with what walks do there.</summary>
/// <param name="Box">The projection.</param>
/// <param name="Regions">Sets of its states without the first, of each of which a walk comes to one.</param>
internal sealed record SeenBox(Projection Box, ulong[] Regions);
