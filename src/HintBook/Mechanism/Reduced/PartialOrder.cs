using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Explores with as few states as it can: an act that nothing can get in the way of, and that gets in the way of nothing, is made at once and
/// alone (a persistent set of one: Godefroid 1996; a stubborn set: Valmari 1989). States in between are not stored. Why this loses
/// none of the answers that are asked of it stands in the room's own page.
/// </summary>
internal sealed class PartialOrder
{
    /// <summary>As how many states one counts here: between two that are stored many are passed.</summary>
    public const int EachCounts = 16;

    private readonly Machine machine;
    private readonly Independence independence;
    private readonly Question question;
    private readonly Stepper stepper;
    private readonly bool[] held;
    private readonly bool[] wanted;
    private readonly List<Node> nodes = [];
    private readonly Dictionary<Positions, int> numbers = [];

    /// <summary>Prepares one exploration.</summary>
    /// <param name="machine">The machine, already with its free parts anywhere.</param>
    /// <param name="independence">Of that machine.</param>
    /// <param name="question">What is left out.</param>
    /// <param name="wanted">By act: whether it matters if it is ever possible.</param>
    public PartialOrder(Machine machine, Independence independence, Question question, bool[] wanted)
    {
        (this.machine, this.independence, this.question, this.wanted) = (machine, independence, question, wanted);
        stepper = new Stepper(machine);
        Possible = new bool[machine.Acts.Length];
        WayTo = new Trail?[machine.Acts.Length];
        var behind = question.Variable >= 0 ? machine.WithCauses([question.Variable]) : [];
        held = [.. Enumerable.Range(0, machine.Acts.Length).Select(a => Held(a, behind))];
    }

    /// <summary>Whether everything was looked at; otherwise what wasn't found may still be there.</summary>
    public bool Complete { get; private set; }

    /// <summary>Whether the box is somewhere without rest.</summary>
    public bool Unrest { get; private set; }

    /// <summary>By act: whether it was possible somewhere.</summary>
    public bool[] Possible { get; }

    /// <summary>By act: the way to where it was first possible.</summary>
    public Trail?[] WayTo { get; }

    /// <summary>A way to the goal, or null.</summary>
    public Trail? Goal { get; private set; }

    /// <summary>How many states were stored.</summary>
    public int Stored => nodes.Count;

    /// <summary>Explores.</summary>
    /// <param name="budget">Time and memory.</param>
    /// <param name="most">The most states to store.</param>
    public void Run(Budget budget, int most)
    {
        if (stepper.Start() is not { } start)
        {
            Unrest = true;
            return;
        }

        if (Left(start))
        {
            Complete = true;
            return;
        }

        Reach(start, Trail.Start, -1);
        for (var n = 0; n < nodes.Count; n++)
        {
            if (Unrest
                || nodes.Count > most
                || ((n & 63) == 0 && budget.Spent(nodes.Count, nodes.Count - n, nodes.Count * 8L * machine.Variables.Length, EachCounts)))
            {
                return;
            }

            if (question.GoalOnly && Goal is not null)
                return;
            var node = nodes[n];
            if (question.CutAtGoal && node.Solved)
                continue;
            for (var act = 0; act < machine.Acts.Length && !Unrest; act++)
            {
                if (act == question.WithoutAct || !Stepper.Holds(machine.Acts[act].When, node.State))
                    continue;
                if (After(act, node.State) is { } next && !next.AsSpan().SequenceEqual(node.State) && !Left(next))
                    Reach(next, node.Trail.Then(act), n);
            }
        }

        Complete = !Unrest;
    }

    /// <summary>The states from which the goal can't be reached any more, each with a way; only after everything was looked at.</summary>
    public IEnumerable<Trail> DeadEnds()
    {
        var live = nodes.Select(node => node.Solved).ToArray();
        for (var changed = true; changed;)
        {
            changed = false;
            for (var n = nodes.Count - 1; n >= 0; n--)
                changed |= !live[n] && (live[n] = nodes[n].Next.Exists(next => live[next]));
        }

        return nodes.Where((_, n) => !live[n]).Select(node => node.Trail);
    }

    private void Reach(int[] state, Trail trail, int from)
    {
        var solved = Stepper.Holds(machine.Goal, state);
        if (solved)
            Goal ??= trail;
        if (!(question.CutAtGoal && solved))
            (state, trail, solved) = Onward(state, trail, solved);
        if (Unrest)
            return;
        var key = new Positions(state);
        if (!numbers.TryGetValue(key, out var number))
        {
            number = nodes.Count;
            numbers[key] = number;
            nodes.Add(new Node(state, trail));
        }

        nodes[number].Solved |= solved;
        if (from >= 0)
            nodes[from].Next.Add(number);
    }

    private (int[] State, Trail Trail, bool Solved) Onward(int[] state, Trail trail, bool solved)
    {
        Look(state, trail);
        for (var found = true; found;)
        {
            found = false;
            for (var act = 0; act < machine.Acts.Length; act++)
            {
                if (act == question.WithoutAct || held[act] || !Stepper.Holds(machine.Acts[act].When, state) || !Alone(act, state))
                    continue;
                if (After(act, state) is not { } next)
                    return (state, trail, solved);
                if (next.AsSpan().SequenceEqual(state))
                    continue;
                Note(act, trail);
                (state, trail, found) = (next, trail.Then(act), true);
                if (Stepper.Holds(machine.Goal, state))
                {
                    Goal ??= trail;
                    solved = true;
                }
            }

            if (found)
                Look(state, trail);
        }

        return (state, trail, solved);
    }

    // What is possible stays possible while other acts are made alone, so it is enough to look now and then.
    private void Look(int[] state, Trail trail)
    {
        for (var act = 0; act < machine.Acts.Length; act++)
        {
            if (!Possible[act] && Stepper.Holds(machine.Acts[act].When, state))
                Note(act, trail);
        }
    }

    private void Note(int act, Trail trail)
    {
        Possible[act] = true;
        WayTo[act] ??= trail;
    }

    private int[]? After(int act, int[] state)
    {
        var next = stepper.After(act, state);
        Unrest |= next is null;
        return next;
    }

    private bool Left(int[] state) => question.Variable >= 0 && state[question.Variable] == question.Position;

    private bool Alone(int act, int[] state)
    {
        if (!Clear(act, state))
            return false;
        foreach (var rule in independence.Triggers[act])
        {
            if (!Clear(rule, state))
                return false;
        }

        return true;
    }

    private bool Clear(int e, int[] state)
    {
        foreach (var other in independence.Conflicts[e])
        {
            // An act that is left out can change nothing, but it may still be asked whether it would be possible.
            if (other < Possible.Length && wanted[other] && !Possible[other])
                return false;
            if (other != question.WithoutAct && !independence.IsSpent(other, state))
                return false;
        }

        return true;
    }

    private bool Held(int act, HashSet<int> behind)
    {
        foreach (var e in independence.Triggers[act].Prepend(act))
        {
            if (independence.AgainstGoal[e] || (question.CutAtGoal && independence.TouchesGoal[e]))
                return true;
            if (independence.EffectsOf(e).Any(effect => behind.Contains(effect.Variable)))
                return true;
        }

        return false;
    }

    private sealed class Node(int[] state, Trail trail)
    {
        public int[] State { get; } = state;

        public Trail Trail { get; } = trail;

        public List<int> Next { get; } = [];

        public bool Solved { get; set; }
    }
}

/// <summary>A way that shares its beginning with others.</summary>
internal sealed class Trail
{
    private readonly Trail? before;
    private readonly int act;

    private Trail(Trail? before, int act) => (this.before, this.act) = (before, act);

    /// <summary>The way that has no acts yet.</summary>
    public static Trail Start { get; } = new(null, -1);

    /// <summary>The same with one act more.</summary>
    public Trail Then(int next) => new(this, next);

    /// <summary>The acts in order.</summary>
    public List<int> Acts()
    {
        var acts = new List<int>();
        for (var at = this; at.before is not null; at = at.before)
            acts.Add(at.act);
        acts.Reverse();
        return acts;
    }
}
