using System.Numerics;
using HintBook.Books;

namespace HintBook.Tests.Mechanism;

/// <summary>
/// Every answer the long way round: states are texts in dictionaries, and everything that is asked is asked of all of them. It reads the
/// book's records itself and shares nothing with the mechanism.
/// </summary>
internal sealed partial class NaiveExplorer
{
    private readonly Book book;
    private readonly int most;
    private readonly bool toTheGoal;
    private readonly HashSet<string> remembered;
    private readonly Dictionary<string, Named> named;
    private readonly HashSet<(string Name, string Position)> inTheBook;
    private readonly Dictionary<string, State> states = [];
    private readonly List<State> order = [];
    private readonly List<(string Act, Func<State, bool> Possible, Action<State> Make, string? Stage, int Move)> acts = [];

    /// <summary>Explores a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="most">With more states than that it gives up.</param>
    /// <param name="toTheGoal">Ways end at the goal, and a state remembers only moves of stages that an <c>after</c> names; else all of them.</param>
    public NaiveExplorer(Book book, int most = int.MaxValue, bool toTheGoal = false)
    {
        (this.book, this.most, this.toTheGoal) = (book, most, toTheGoal);
        remembered = [.. (toTheGoal ? book.Stages.SelectMany(s => s.After) : book.Stages.Select(s => s.Id)).Select(id => id.Value)];
        inTheBook = PositionsIn(book);
        named = book.Box.Names.ToDictionary(n => n.Id.Value);
        foreach (var stage in book.Stages)
        {
            for (var m = 0; m < stage.Moves.Length; m++)
                AddMove(stage.Moves[m], $"{stage.Id.Value}/{m}", stage, m);
        }

        for (var m = 0; m < book.Box.Moves.Length; m++)
            AddMove(book.Box.Moves[m], $"move/{m}", null, m);
        foreach (var part in book.Box.Parts.Where(p => p.Free))
        {
            foreach (var position in part.Positions)
            {
                acts.Add((
                    $"free/{part.Id.Value}/{position}",
                    s => All(s, part.Needs) && CanReach(s.At, With(s.At, part.Id.Value, position)),
                    s => s.At[part.Id.Value] = position,
                    null,
                    -1));
            }
        }

        foreach (var dial in book.Box.Parts.Where(p => p.Turns))
            AddTurns(dial);
        Explore();
    }

    /// <summary>Reactions that loop or disagree in some state that is reached.</summary>
    public bool Unrest { get; private set; }

    /// <summary>More states than it was to look at; then nothing it says holds.</summary>
    public bool GaveUp { get; private set; }

    public int? Shortest => Depths(_ => true, (_, _) => true).Where(pair => Solved(pair.Key)).Select(pair => (int?)pair.Value).Min();

    public bool Reachable(string stage) => order.Exists(s => s.Next.Any(n => n.Stage == stage));

    public bool Possible(string? stage, int move) => order.Exists(s => s.Next.Any(n => n.Act == $"{stage ?? "move"}/{move}"));

    public int? ShortestDeadEnd()
    {
        if (!order.Exists(Solved))
            return null;
        var live = LiveStates();
        var depth = Depths(s => !Solved(s), (_, _) => true);
        return depth.Where(pair => !live.Contains(pair.Key)).Select(pair => (int?)pair.Value).Min();
    }

    /// <summary>The fewest moves to the goal with a stage not done; null if there is no such way.</summary>
    public int? ShortestWithout(string stage)
    {
        var moves = book.Stages.First(s => s.Id.Value == stage).Moves.Length;
        return Enumerable.Range(0, moves)
            .Select(m => Depths(_ => true, (_, act) => act != $"{stage}/{m}").Where(pair => Solved(pair.Key)).Select(pair => (int?)pair.Value).Min())
            .Min();
    }

    /// <summary>Whether an act comes on every way to where a stage is open, or to the goal for null.</summary>
    public bool ActIsCertain(string act, string? before)
    {
        var reached = Depths(_ => true, (_, a) => a != act);
        return !reached.Keys.Any(s => Ends(s, before));
    }

    public bool PositionIsCertain(string name, string position, string? before)
    {
        var reached = Depths(s => s.At[name] != position, (_, _) => true);
        return !reached.Keys.Any(s => s.At[name] != position && Ends(s, before));
    }

    public int Widest() => order.Max(s => s.Next.Select(n => n.Stage).OfType<string>().Distinct().Count(stage => !Done(s, stage)));

    /// <summary>All different orders of first completions on ways that end when the box is solved.</summary>
    public BigInteger? Orders(int most)
    {
        // Words are told apart by keeping, for each word, every state that it can have led to.
        var total = BigInteger.Zero;
        var layer = new Dictionary<string, HashSet<State>> { [""] = [order[0]] };
        while (layer.Count > 0)
        {
            if (layer.Count > most)
                return null;
            var next = new Dictionary<string, HashSet<State>>();
            foreach (var (word, from) in layer)
            {
                var closed = new HashSet<State>(from);
                var open = new Queue<State>(from);
                var solved = false;
                while (open.TryDequeue(out var state))
                {
                    if (Solved(state))
                    {
                        solved = true;
                        continue;
                    }

                    foreach (var (_, stage, to, _) in state.Next)
                    {
                        if (stage is not null && !Done(state, stage) && Done(to, stage))
                            (next.TryGetValue($"{word} {stage}", out var set) ? set : next[$"{word} {stage}"] = []).Add(to);
                        else if (closed.Add(to))
                            open.Enqueue(to);
                    }
                }

                if (solved)
                    total++;
            }

            layer = next;
        }

        return total;
    }

    private bool Ends(State state, string? before) => before is null ? Solved(state) : state.Next.Any(n => n.Stage == before);

    private bool Solved(State state) => All(state, book.Goal);

    private bool Done(State state, string stage) =>
        Enumerable.Range(0, book.Stages.First(s => s.Id.Value == stage).Moves.Length).All(m => state.Made.Contains($"{stage}/{m}"));

    private HashSet<State> LiveStates()
    {
        var live = order.Where(Solved).ToHashSet();
        while (order.Where(s => !live.Contains(s) && s.Next.Any(n => live.Contains(n.To))).ToList() is { Count: > 0 } more)
            live.UnionWith(more);
        return live;
    }

    private Dictionary<State, int> Depths(Func<State, bool> goesOn, Func<State, string, bool> may)
    {
        var depth = new Dictionary<State, int> { [order[0]] = 0 };
        var open = new PriorityQueue<State, int>([(order[0], 0)]);
        while (open.TryDequeue(out var state, out var at))
        {
            if (at > depth[state] || !goesOn(state))
                continue;
            foreach (var (act, _, to, steps) in state.Next)
            {
                if (!may(state, act) || (depth.TryGetValue(to, out var known) && known <= at + steps))
                    continue;
                depth[to] = at + steps;
                open.Enqueue(to, at + steps);
            }
        }

        return depth;
    }

    private void Explore()
    {
        var start = new State(named.ToDictionary(n => n.Key, n => n.Value.Positions[0]), []);
        if (!Settle(start))
            return;
        states[start.Key] = start;
        order.Add(start);
        for (var i = 0; i < order.Count && !Unrest; i++)
        {
            if (order.Count > most)
            {
                GaveUp = true;
                return;
            }

            var state = order[i];
            if (toTheGoal && Solved(state))
                continue;
            foreach (var (act, possible, make, stage, move) in acts.Where(a => a.Possible(state)))
            {
                var next = new State(new(state.At), [.. state.Made]);
                make(next);
                if (stage is not null && remembered.Contains(stage))
                    next.Made.Add($"{stage}/{move}");
                if (!Settle(next))
                    return;
                if (!states.TryGetValue(next.Key, out var known))
                {
                    states[next.Key] = known = next;
                    order.Add(next);
                }

                state.Next.Add((act, stage, known, Steps(act, state, known)));
            }
        }
    }

    // Every order of reactions is tried; all must come to rest in the same state.
    private bool Settle(State state)
    {
        var rests = new HashSet<string>();
        var seen = new Dictionary<string, Dictionary<string, string>> { [Text(state.At)] = state.At };
        var open = new Queue<Dictionary<string, string>>([state.At]);
        var arrows = new Dictionary<string, List<string>>();
        while (open.TryDequeue(out var at))
        {
            var after = new List<string>();
            foreach (var reaction in book.Box.Reactions.Where(r => All(at, r.When)))
            {
                var next = Made(at, reaction.Changes, reaction.When);
                var text = Text(next);
                if (text == Text(at))
                    continue;
                after.Add(text);
                if (seen.TryAdd(text, next))
                    open.Enqueue(next);
            }

            arrows[Text(at)] = after;
            if (after.Count == 0)
                rests.Add(Text(at));
        }

        if (rests.Count != 1 || HasCircle(arrows, Text(state.At), []))
        {
            Unrest = true;
            return false;
        }

        foreach (var (name, position) in seen[rests.Single()].ToList())
            state.At[name] = position;
        return true;
    }

    private static bool HasCircle(Dictionary<string, List<string>> arrows, string at, HashSet<string> on) =>
        !on.Add(at) || arrows[at].Exists(next => HasCircle(arrows, next, [.. on]));

    private void AddMove(Move move, string act, Stage? stage, int number)
    {
        acts.Add((
            act,
            s => Follows(s, stage)
                && All(s, move.Needs)
                && move.Changes.All(c => c.Position.Value != Thing.UsedUp || s.At[c.Name.Value] is not (Thing.Hidden or Thing.UsedUp))
                && (move.FromOutside || CanReach(s.At, Made(s.At, move.Changes, move.Needs))),
            s => Become(s.At, Made(s.At, move.Changes, move.Needs)),
            stage?.Id.Value,
            number));
        var moved = move.Changes.Where(c => named[c.Name.Value] is Part or Thing).ToList();
        if (!move.Reversible || moved.Count == 0 || moved.Exists(c => c.Position.Value == Thing.UsedUp))
            return;

        // Back to any arrangement of the moved parts from which the needs hold; parts that the needs don't speak of go to their first position.
        IEnumerable<Dictionary<string, string>> origins = [[]];
        foreach (var change in moved)
        {
            var name = change.Name.Value;
            var from = Speaks(move.Needs, name) ? named[name].Positions : [named[name].Positions[0]];
            origins = origins.SelectMany(o => from.Select(p => new Dictionary<string, string>(o) { [name] = p }));
        }

        foreach (var origin in origins.Where(o => moved.Exists(c => o[c.Name.Value] != c.Position.Value)))
        {
            acts.Add((
                $"{act}/back",
                s =>
                {
                    if (!Follows(s, stage) || moved.Exists(c => s.At[c.Name.Value] != c.Position.Value))
                        return false;
                    var was = new Dictionary<string, string>(s.At);
                    foreach (var (name, position) in origin)
                        was[name] = position;
                    var again = Made(was, move.Changes, move.Needs);
                    if (moved.Exists(c => again[c.Name.Value] != c.Position.Value) || !(move.FromOutside || CanReach(s.At, was)))
                        return false;
                    return All(was, move.Needs) && moved.TrueForAll(c => Speaks(move.Needs, c.Name.Value) || origin[c.Name.Value] != c.Position.Value);
                },
                s =>
                {
                    foreach (var (name, position) in origin)
                        s.At[name] = position;
                },
                null,
                -1));
        }
    }

    private bool Follows(State state, Stage? stage) => stage is null || stage.After.All(id => Done(state, id.Value));

    // Where everything is after some changes. A thing that is given comes from its hiding place, or out of a slot that the needs name.
    private Dictionary<string, string> Made(Dictionary<string, string> at, IEnumerable<Change> changes, IReadOnlyCollection<Condition> needs)
    {
        var after = new Dictionary<string, string>(at);
        foreach (var change in changes)
        {
            var (name, position) = (change.Name.Value, change.Position.Value);
            if (named[name] is Thing && (at[name] == Thing.UsedUp || (change.Given && at[name] != Thing.Hidden && !NamesSlot(needs, name, at[name]))))
                continue;
            after[name] = position;
        }

        return after;
    }

    private static bool NamesSlot(IEnumerable<Condition> conditions, string thing, string slot) => conditions.Any(c => c switch
    {
        InPosition need => need.Name.Value == thing && need.Positions.Any(p => p.Value == slot),
        AnyOf any => any.Alternatives.Any(a => NamesSlot(a, thing, slot)),
        _ => false,
    });

    // A hand that moves a part, or a thing out of hiding or into it, needs all that lies before it open, before the act or after it.
    private bool CanReach(Dictionary<string, string> before, Dictionary<string, string> after) => named.Values
        .Where(n => before[n.Id.Value] != after[n.Id.Value])
        .Where(n => n is Part || (n is Thing && (before[n.Id.Value] == Thing.Hidden || after[n.Id.Value] == Thing.Hidden)))
        .All(n => Open(n, before) || Open(n, after));

    private bool Open(Named n, Dictionary<string, string> at) => n.Behind is not { } behind || behind.All(c => Open(c, at));

    private bool Open(Condition condition, Dictionary<string, string> at) => condition is AnyOf any
        ? any.Alternatives.Any(a => a.All(c => Open(c, at)))
        : All(at, [condition]) && Open(named[((InPosition)condition).Name.Value], at);

    private static Dictionary<string, string> With(Dictionary<string, string> at, string name, string position) => new(at) { [name] = position };

    private static void Become(Dictionary<string, string> at, Dictionary<string, string> after)
    {
        foreach (var (name, position) in after)
            at[name] = position;
    }

    private bool All(State state, IEnumerable<Condition> conditions) => All(state.At, conditions);

    private bool All(Dictionary<string, string> at, IEnumerable<Condition> conditions) => conditions.All(c => c switch
    {
        InPosition { Positions.IsEmpty: true } need => at[need.Name.Value] == named[need.Name.Value].Attained,
        InPosition need => need.Positions.Any(p => p.Value == at[need.Name.Value]),
        AnyOf any => any.Alternatives.Any(a => All(at, a)),
        _ => throw new InvalidOperationException("a kind of condition that the tests don't know"),
    });

    private static bool Speaks(IEnumerable<Condition> conditions, string name) => conditions.Any(c => c switch
    {
        InPosition need => need.Name.Value == name,
        AnyOf any => any.Alternatives.Any(a => Speaks(a, name)),
        _ => false,
    });

    // A dictionary from which nothing is taken away, and its copies, keep the order in which names were put in: the book's.
    private static string Text(Dictionary<string, string> at) =>
        string.Join(' ', at.Select(p => $"{p.Key}={p.Value}"));

    /// <summary>A state with all that was ever made on the way: the long way round.</summary>
    private sealed class State(Dictionary<string, string> at, SortedSet<string> made)
    {
        public Dictionary<string, string> At { get; } = at;

        public SortedSet<string> Made { get; } = made;

        public List<(string Act, string? Stage, State To, int Steps)> Next { get; } = [];

        public string Key => $"{Text(At)} | {string.Join(' ', Made)}";
    }
}
