using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>Putting back the long way round: from each solved state everything is tried that putting back allows.</summary>
internal sealed partial class NaiveExplorer
{
    private const string NotBegun = "-";

    /// <summary>Whether every solved state can be put back as shipped; null where none is solved, reactions disagree or there is too much to try.</summary>
    public bool? AllGoBack(int most)
    {
        var solved = order.Where(Solved).ToList();
        if (Unrest || solved.Count == 0)
            return null;
        var found = new Dictionary<string, int>();
        var at = new List<(State State, string Begun)>();
        var cameFrom = new List<List<int>>();
        foreach (var state in solved)
            Number(new State(new(state.At), [.. state.Made]), NotBegun);
        for (var i = 0; i < at.Count; i++)
        {
            if (at.Count > most)
                return null;
            foreach (var (next, begun) in Onward(at[i].State, at[i].Begun))
            {
                if (!Settle(next))
                    return null;
                cameFrom[Number(next, begun)].Add(i);
            }
        }

        var back = new HashSet<int>();
        var open = new Stack<int>(Enumerable.Range(0, at.Count).Where(i => at[i].Begun == NotBegun && AsShipped(at[i].State.At)));
        while (open.TryPop(out var i))
        {
            if (!back.Add(i))
                continue;
            foreach (var from in cameFrom[i])
                open.Push(from);
        }

        return Enumerable.Range(0, solved.Count).All(i => back.Contains(Number(new State(new(solved[i].At), [.. solved[i].Made]), NotBegun)));

        int Number(State state, string begun)
        {
            var key = $"{state.Key} {begun}";
            if (!found.TryGetValue(key, out var number))
            {
                found[key] = number = at.Count;
                at.Add((state, begun));
                cameFrom.Add([]);
            }

            return number;
        }
    }

    private bool AsShipped(Dictionary<string, string> at)
    {
        var never =
            from move in book.Stages.SelectMany(s => s.Moves).Concat(book.Box.Moves)
            where move.Undo?.Never is not null
            from change in move.Changes
            where move.Undo?.Steps.Any(step => Back(step).ContainsKey(change.Name.Value)) == false
            select change.Name.Value;
        var staying = never.ToHashSet();
        var shipped = order[0].At;
        return named.Values.All(n => n is Fact or Code || staying.Contains(n.Id.Value) || at[n.Id.Value] == shipped[n.Id.Value]);
    }

    private IEnumerable<(State Next, string Begun)> Onward(State state, string begun)
    {
        var undos = Undos().ToList();
        if (begun == NotBegun)
        {
            foreach (var (_, _, make, stage, move) in acts.Where(a => a.Possible(state)))
            {
                var next = Copy(state);
                make(next);
                if (stage is not null)
                    next.Made.Add($"{stage}/{move}");
                yield return (next, NotBegun);
            }

            var putBack = undos.SelectMany(u => u.Undo.Steps.SelectMany(step => step.PutBack).Select(t => t.Value).Where(t => UsesUp(u.Moves, t))).ToHashSet();
            foreach (var thing in book.Box.Things.Where(t => state.At[t.Id.Value] == Thing.UsedUp && !putBack.Contains(t.Id.Value)))
            {
                var next = Copy(state);
                next.At[thing.Id.Value] = thing.Positions[0];
                if (CanReach(state.At, next.At))
                    yield return (next, NotBegun);
            }
        }

        for (var u = 0; u < undos.Count; u++)
        {
            var (undo, moves) = undos[u];
            var step = begun == NotBegun ? 0
                : begun.StartsWith($"{u}:", StringComparison.Ordinal) ? int.Parse(begun.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture)
                : -1;
            if (step < 0 || (step == 0 && !StandsAsLeft(state.At, undo, moves)) || Stepped(state.At, undo.Steps[step], moves) is not { } at)
                continue;
            yield return (new State(at, [.. state.Made]), step + 1 < undo.Steps.Length ? $"{u}:{step + 1}" : NotBegun);
        }
    }

    private IEnumerable<(Undo Undo, Move[] Moves)> Undos()
    {
        foreach (var moves in book.Stages.Select(s => s.Moves.ToArray()).Concat(book.Box.Moves.Select(m => new[] { m })))
        {
            foreach (var move in moves)
            {
                if (move.Undo is { } undo && undo.Steps.Any(step => Back(step).Count > 0))
                    yield return (undo, moves);
            }
        }
    }

    private Dictionary<string, string>? Stepped(Dictionary<string, string> at, UndoStep step, Move[] moves)
    {
        if (!All(at, step.Needs))
            return null;
        var after = new Dictionary<string, string>(at);
        foreach (var change in step.Changes.Where(c => at[c.Name.Value] != Thing.UsedUp))
            after[change.Name.Value] = change.Position.Value;
        foreach (var thing in step.PutBack.Select(t => t.Value))
        {
            var start = named[thing].Positions[0];
            if (at[thing] != Thing.InHand && at[thing] != start && !(at[thing] == Thing.UsedUp && UsesUp(moves, thing)))
                return null;
            after[thing] = start;
        }

        return CanReach(at, after) ? after : null;
    }

    private static bool UsesUp(Move[] moves, string thing) => moves.Any(m => m.Changes.Any(c => c.Name.Value == thing && c.Position.Value == Thing.UsedUp));

    private Dictionary<string, string> Back(UndoStep step)
    {
        var back = step.Changes.ToDictionary(c => c.Name.Value, c => c.Position.Value);
        foreach (var thing in step.PutBack)
            back[thing.Value] = named[thing.Value].Positions[0];
        return back;
    }

    // What is put back stands where all the moves together left it, or is back; what they told is known.
    private bool StandsAsLeft(Dictionary<string, string> at, Undo undo, Move[] moves)
    {
        foreach (var name in moves.SelectMany(m => m.Changes).Select(c => c.Name.Value).Distinct())
        {
            var left = moves.SelectMany(m => m.Changes).Last(c => c.Name.Value == name).Position.Value;
            var ends = undo.Steps.Select(Back).Where(b => b.ContainsKey(name)).Select(b => b[name]).ToList();
            if (ends.Count == 0 && named[name] is Part or Thing)
                continue;
            if (at[name] != left && (ends.Count == 0 || at[name] != ends[^1]))
                return false;
        }

        return true;
    }

    private static State Copy(State state) => new(new(state.At), [.. state.Made]);
}
