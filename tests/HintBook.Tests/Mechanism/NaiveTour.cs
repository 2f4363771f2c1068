using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// The shortest test walk the long way round: breadth first over pairs of a state, as text, and the set of what has been tested. It reads the book's records
/// itself, as the rest of this explorer does.
/// </summary>
internal sealed partial class NaiveExplorer
{
    private const int MostPlaces = 100;
    private readonly HashSet<string> homes = [];

    /// <summary>
    /// How many handlings the shortest walk has that tests all that can be tested and ends as shipped; -1 where no walk does both, null where there is
    /// too much to try.
    /// </summary>
    public int? ShortestTour(int most)
    {
        if (Unrest || order.Count == 0)
            return null;
        var begin = new State(new(order[0].At), []);
        if (Reached(begin) is not { } edges)
            return null;
        var possible = edges.Values.SelectMany(at => at).SelectMany(edge => edge.Tests).ToHashSet();
        var alone = possible.Where(test => test.StartsWith("alone/", StringComparison.Ordinal)).Select(test => test.Split('|')[1]).ToHashSet();
        var wanted = possible.Where(test => !test.StartsWith("any/", StringComparison.Ordinal) || !alone.Contains(test.Split('|')[1])).Order().ToList();
        if (wanted.Count > 60)
            return null;
        var numbers = wanted.Index().ToDictionary(each => each.Item, each => 1UL << each.Index);
        var all = numbers.Values.Aggregate(0UL, (set, bit) => set | bit);
        var steps = new Dictionary<(string, ulong), int> { [(Place(begin, NotBegun), 0)] = 0 };
        var open = new Queue<(string At, ulong Done)>([(Place(begin, NotBegun), 0)]);
        while (open.TryDequeue(out var at))
        {
            if (at.Done == all && homes.Contains(at.At))
                return steps[at];
            if (steps.Count > most)
                return null;
            foreach (var (to, tests) in edges[at.At])
            {
                var next = (to, tests.Aggregate(at.Done, (done, test) => done | numbers.GetValueOrDefault(test)));
                if (steps.TryAdd(next, steps[at] + 1))
                    open.Enqueue(next);
            }
        }

        return -1;
    }

    private static string Place(State state, string begun) => $"{state.Key} {begun}";

    private Dictionary<string, List<(string To, List<string> Tests)>>? Reached(State begin)
    {
        var edges = new Dictionary<string, List<(string, List<string>)>>();
        var open = new Queue<(State State, string Begun)>([(begin, NotBegun)]);
        while (open.TryDequeue(out var at))
        {
            var place = Place(at.State, at.Begun);
            if (edges.ContainsKey(place))
                continue;
            if (edges.Count > MostPlaces)
                return null;
            if (at.Begun == NotBegun && AsShipped(at.State.At))
                homes.Add(place);
            var list = edges[place] = [];
            if (at.Begun == NotBegun)
            {
                foreach (var (act, possible, make, stage, move) in acts.Where(act => act.Possible(at.State)))
                {
                    var next = Copy(at.State);
                    make(next);
                    var moved = at.State.At.Any(each => named[each.Key] is Part or Thing && next.At[each.Key] != each.Value);
                    var tests = act.EndsWith("/back", StringComparison.Ordinal) ? new List<string>()
                        : act.StartsWith("free/", StringComparison.Ordinal) || act.StartsWith("turn/", StringComparison.Ordinal)
                            ? moved ? [$"stand/{At(at.State, next)}"] : []
                        : moved || !Moves(act) ? [$"made/{act}"] : [];
                    if (stage is not null && remembered.Contains(stage))
                        next.Made.Add($"{stage}/{move}");
                    Happen(next.At, tests);
                    list.Add((Place(next, NotBegun), tests));
                    open.Enqueue((next, NotBegun));
                }

                foreach (var test in Refusals(at.State))
                    list.Add((place, [test]));
            }

            foreach (var (next, begun) in Onward(at.State, at.Begun))
            {
                var tests = new List<string>();
                Happen(next.At, tests);
                list.Add((Place(next, begun), tests));
                open.Enqueue((next, begun));
            }
        }

        return edges;
    }

    private static string At(State before, State after) =>
        string.Join(' ', after.At.Where(each => before.At[each.Key] != each.Value).Select(each => $"{each.Key}={each.Value}"));

    private bool Moves(string act)
    {
        var move = act.StartsWith("move/", StringComparison.Ordinal) ? book.Box.Moves[Number(act)]
            : book.Stages.First(stage => stage.Id.Value == act[..act.LastIndexOf('/')]).Moves[Number(act)];
        return move.Changes.Any(change => named[change.Name.Value] is Part or Thing);
    }

    private static int Number(string act) => int.Parse(act[(act.LastIndexOf('/') + 1)..], System.Globalization.CultureInfo.InvariantCulture);

    // The first reaction of the book that changes anything, again and again.
    private void Happen(Dictionary<string, string> at, List<string> tests)
    {
        for (var still = false; !still;)
        {
            still = true;
            foreach (var (number, reaction) in book.Box.Reactions.Index().Where(reaction => All(at, reaction.Item.When)))
            {
                var after = Made(at, reaction.Changes, reaction.When);
                if (Text(after) == Text(at))
                    continue;
                Become(at, after);
                tests.Add($"seen/{number}");
                still = false;
                break;
            }
        }
    }

    // One test for each need that alone is in the way of a move, or of a free part, and one for each move that has any of them in its way.
    private IEnumerable<string> Refusals(State state)
    {
        foreach (var stage in book.Stages)
        {
            foreach (var (m, move) in stage.Moves.Index())
            {
                foreach (var test in Refusals(state, $"{stage.Id.Value}/{m}", move, Follows(state, stage)))
                    yield return test;
            }
        }

        foreach (var (m, move) in book.Box.Moves.Index())
        {
            foreach (var test in Refusals(state, $"move/{m}", move, true))
                yield return test;
        }

        foreach (var part in book.Box.Parts.Where(part => (part.Free || part.Turns) && !part.Needs.IsEmpty))
        {
            var elsewhere = part.Positions.Any(position => position != state.At[part.Id.Value]);
            var open = (part.Behind ?? []).All(condition => All(state, [condition]));
            foreach (var test in Tests(state, $"free/{part.Id.Value}", [.. part.Needs], [part.Id.Value], needs => elsewhere && open && All(state, needs)))
                yield return test;
        }
    }

    private IEnumerable<string> Refusals(State state, string name, Move move, bool follows)
    {
        var moved = move.Changes.Select(change => change.Name.Value).ToHashSet();
        if (!follows || !moved.Any(each => named[each] is Part or Thing))
            return [];
        return Tests(state, name, [.. move.Needs], moved, needs =>
            All(state, needs) && WouldMove()
            && move.Changes.All(c => c.Position.Value != Thing.UsedUp || state.At[c.Name.Value] is not (Thing.Hidden or Thing.UsedUp))
            && (move.FromOutside || CanReach(state.At, Made(state.At, move.Changes, needs))));

        // Where all that it moves is there already, trying it tells nothing.
        bool WouldMove()
        {
            var made = Made(state.At, move.Changes, move.Needs);
            return moved.Any(each => named[each] is Part or Thing && made[each] != state.At[each]);
        }
    }

    private IEnumerable<string> Tests(State state, string name, List<Condition> needs, HashSet<string> moved, Func<List<Condition>, bool> rest)
    {
        var locks = needs.FindAll(need => IsLock(need, moved));
        var onTheBox = locks.FindAll(need =>
            !(need is InPosition one && named[one.Name.Value] is Thing && one.Positions.All(position => position.Value == Thing.InHand)));
        locks = onTheBox.Count > 0 ? onTheBox : locks;
        foreach (var (number, one) in locks.Index())
        {
            if (!All(state, [one]) && rest(needs.FindAll(need => !ReferenceEquals(need, one))))
                yield return $"alone/{number}|{name}";
        }

        if (locks.Count > 1 && !All(state, locks) && rest(needs.FindAll(need => !locks.Contains(need))))
            yield return $"any/|{name}";
    }

    private bool IsLock(Condition need, HashSet<string> moved) => need switch
    {
        InPosition one => !moved.Contains(one.Name.Value) && named[one.Name.Value] is Part or Thing or Code { Lock: not null },
        AnyOf any => any.Alternatives.All(each => each.Any(one => IsLock(one, moved))) && !NamesAny(any, moved),
        _ => false,
    };

    private static bool NamesAny(Condition need, HashSet<string> moved) => need switch
    {
        InPosition one => moved.Contains(one.Name.Value),
        AnyOf any => any.Alternatives.Any(each => each.Any(one => NamesAny(one, moved))),
        _ => false,
    };
}
