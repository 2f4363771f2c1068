using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Looks for a way to the goal of a given length, depth first, and turns back where too few steps are left for what is still to come about. That is
/// counted so that no act counts twice, so nothing is missed (an admissible bound, as in A*: Hart, Nilsson and Raphael 1968; of landmarks: Karpas and
/// Domshlak 2009).
/// </summary>
internal sealed class DirectWay
{
    private const int MostStates = 50_000;
    private const int MostPlaces = 5_000_000;
    private readonly Machine machine;
    private readonly Moves moves;
    private readonly Stepper stepper;
    private readonly List<(Literal Wanted, int For)> wanted = [];
    private readonly HashSet<int> counted = [];

    /// <summary>Prepares the search.</summary>
    public DirectWay(Machine machine, Moves moves)
    {
        (this.machine, this.moves, stepper) = (machine, moves, new Stepper(machine));
        if (machine.Goal is [var goal])
            Want(goal, -1);
    }

    /// <summary>A way with at most so many steps, or null if none was found among the states looked at.</summary>
    public List<int>? Find(int steps, Budget budget)
    {
        if (stepper.Start() is not { } start)
            return null;
        var best = new Dictionary<Positions, int> { [new(start)] = 0 };
        var open = new Stack<(int[] State, int Made, Trail Way)>([(start, 0, Trail.Start)]);
        var most = Math.Min(MostStates, MostPlaces / Math.Max(1, machine.Variables.Length));
        while (open.TryPop(out var at) && best.Count < most && ((best.Count & 1023) != 0 || !budget.Spent(best.Count, open.Count, 0)))
        {
            if (Stepper.Holds(machine.Goal, at.State))
                return at.Way.Acts();
            if (best[new(at.State)] < at.Made)
                continue;
            var next = new List<(int[] State, int Left, int Act)>();
            for (var act = machine.Acts.Length - 1; act >= 0; act--)
            {
                if (!Stepper.Holds(machine.Acts[act].When, at.State) || stepper.After(act, at.State) is not { } after)
                    continue;
                var left = Left(after);
                var key = new Positions(after);
                if (at.Made + 1 + left > steps || best.GetValueOrDefault(key, int.MaxValue) <= at.Made + 1)
                    continue;
                best[key] = at.Made + 1;
                next.Add((after, left, act));
            }

            foreach (var (state, _, act) in next.OrderByDescending(one => one.Left))
                open.Push((state, at.Made + 1, at.Way.Then(act)));
        }

        return null;
    }

    // At least so many acts are still to be made.
    private int Left(int[] state)
    {
        var missing = new bool[wanted.Count];
        var left = 0;
        for (var i = 0; i < wanted.Count; i++)
        {
            var (literal, by) = wanted[i];
            missing[i] = !literal.Takes(state[literal.Variable]) && (by < 0 || missing[by]);
            left += missing[i] ? 1 : 0;
        }

        return left;
    }

    // What only one act gives is wanted together with all that this act asks for, as long as it hasn't been made.
    private void Want(Clause clause, int by)
    {
        foreach (var literal in clause.Literals.Where(literal => !moves.MovedByRules(literal.Variable)))
        {
            var givers = moves.Of(literal.Variable).Where(edge => literal.Takes(edge.To)).Select(edge => edge.Act).ToHashSet();
            if (givers.Count == 0 || givers.Overlaps(counted))
                continue;
            counted.UnionWith(givers);
            wanted.Add((literal, by));
            if (givers.Count == 1 && machine.Acts[givers.First()].When is [var needs])
                Want(needs, wanted.Count - 1);
        }
    }
}
