using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism;

/// <summary>
/// Carries out a way step by step, straight from the book's records: a second opinion that shares nothing with the explorer. Every witness
/// is replayed before it is said.
/// </summary>
public sealed class Replayer
{
    private const int MostReactions = 1_000_000;
    private readonly Book book;
    private readonly Dictionary<string, Stage> stages;
    private readonly Dictionary<string, Named> named;
    private readonly Dictionary<string, ImmutableArray<string>> allowed;
    private readonly Dictionary<string, string> shipped;
    private readonly Dictionary<string, string> positions;
    private readonly HashSet<(string Stage, int Move)> made = [];
    private readonly Dictionary<string, string> byHand = [];
    private readonly HashSet<string> moved = [];
    private (Undo Undo, int Next)? begun;

    /// <summary>Takes the box as it left the maker.</summary>
    public Replayer(Book book)
    {
        this.book = book;
        stages = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);
        named = book.Box.Names.DistinctBy(n => n.Id.Value).ToDictionary(n => n.Id.Value);
        allowed = named.ToDictionary(pair => pair.Key, pair => pair.Value.Positions);
        positions = allowed.ToDictionary(pair => pair.Key, pair => pair.Value[0]);
        React();
        shipped = new(positions);
    }

    private Replayer(Replayer other, Dictionary<string, string> positions)
    {
        (book, stages, named, allowed, shipped) = (other.book, other.stages, other.named, other.allowed, other.shipped);
        this.positions = new(positions);
    }

    /// <summary>Whether the box is solved now.</summary>
    public bool Solved => Hold(book.Goal);

    /// <summary>
    /// Whether every part and thing is where it was when the box left the maker, but for what isn't meant to go back; what is known doesn't
    /// matter.
    /// </summary>
    public bool Shipped
    {
        get
        {
            var staying = StayingForGood().ToHashSet();
            return begun is null && named.Values.All(n => n is Fact or Code || staying.Contains(n.Id.Value) || positions[n.Id.Value] == shipped[n.Id.Value]);
        }
    }

    /// <summary>The same box, as it left the maker.</summary>
    public Replayer Fresh() => new(this, shipped);

    /// <summary>The same box as it stands now; what was done to it before is forgotten.</summary>
    public Replayer AsItStands() => new(this, positions);

    /// <summary>What hands moved in the last step, reactions aside: only what stands elsewhere than before.</summary>
    public IReadOnlyDictionary<string, string> ByHand => byHand;

    /// <summary>The names of what moved in the last step, by hand or by itself.</summary>
    public IReadOnlySet<string> Moved => moved;

    /// <summary>Whether everything is where it is in another box of this book.</summary>
    public bool StandsAs(Replayer other) => positions.All(pair => other.positions[pair.Key] == pair.Value);

    /// <summary>
    /// Moves some things at once if hands get at all of them; then the box reacts. Whether a move of the book does that isn't asked.
    /// </summary>
    /// <returns>Whether hands get at them; if not, nothing has moved.</returns>
    public bool Lay(IEnumerable<Placed> things)
    {
        Begin();
        var after = things.ToDictionary(placed => placed.Name, placed => placed.Position);
        if (!GetsAt(after))
            return false;
        Take(after);
        React();
        return true;
    }

    /// <summary>Where everything is.</summary>
    public ImmutableSortedDictionary<string, string> Positions => positions.ToImmutableSortedDictionary();

    /// <summary>Whether one of a stage's moves is possible now.</summary>
    public bool IsOpen(string stage) =>
        stages.TryGetValue(stage, out var s)
        && Follows(s)
        && s.Moves.Any(move =>
            Hold(move.Needs)
            && ThereToUse(move)
            && (move.FromOutside || GetsAt(After(move.Changes, move.Needs))));

    /// <summary>Whether something that a move may ask for holds now.</summary>
    public bool Stands(Condition condition) => Holds(condition, Now());

    /// <summary>Whether all moves of a stage have been made.</summary>
    public bool IsDone(string stage)
    {
        var moves = stages[stage].Moves;
        return Enumerable.Range(0, moves.Length).All(m => made.Contains((stage, m)));
    }

    /// <summary>Carries out some steps.</summary>
    /// <returns>Null if all of them were possible, otherwise why the first that wasn't is not.</returns>
    public string? Follow(IEnumerable<Step> steps)
    {
        foreach (var step in steps)
        {
            if (Make(step) is { } why)
                return $"{step.Says}: {why}";
        }

        return null;
    }

    private void Begin()
    {
        byHand.Clear();
        moved.Clear();
    }

    /// <summary>Carries out one step.</summary>
    /// <returns>Null if it was possible, otherwise why it isn't; nothing has moved then.</returns>
    public string? Make(Step step)
    {
        Begin();
        var stage = step.Stage is null ? null : stages.GetValueOrDefault(step.Stage);
        var move = stage is not null ? stage.Moves[step.Move] : step.Move >= 0 ? book.Box.Moves[step.Move] : null;
        if (begun is not null && step.Kind != StepKind.PutBack)
            return "an undo has been begun and isn't done";
        if (stage is not null && step.Kind != StepKind.PutBack && !Follows(stage))
            return "a stage that comes before it isn't done";
        return step.Kind switch
        {
            StepKind.StageMove or StepKind.BookMove when move is not null => MakeMove(move, step),
            StepKind.FreeMove => MoveFreely(step),
            StepKind.WayBack when move is not null => TakeBack(move, step),
            StepKind.PutBack when move is not null => PutBack(move, stage, step),
            StepKind.Replace => Replace(step),
            _ => "it isn't a move of this book",
        };
    }

    private string? MakeMove(Move move, Step step)
    {
        if (!Hold(move.Needs))
            return "its needs don't hold";
        if (!ThereToUse(move))
            return "what it uses up isn't there";
        var after = After(move.Changes, move.Needs);
        if (!move.FromOutside && !GetsAt(after))
            return "what it moves can't be got at";
        Take(after);
        if (step.Stage is not null)
            made.Add((step.Stage, step.Move));
        React();
        return null;
    }

    private string? MoveFreely(Step step)
    {
        if (step.Leaves is not [var leaves] || book.Box.Parts.FirstOrDefault(p => p.Id.Value == leaves.Name) is not { } part || !(part.Free || part.Turns))
            return "it isn't a free part";
        if (!part.Free)
            return Turn(part, leaves.Position);
        if (!part.Positions.Contains(leaves.Position) || !Hold(part.Needs))
            return "its needs don't hold";
        var after = new Dictionary<string, string> { [leaves.Name] = leaves.Position };
        if (!GetsAt(after))
            return "it can't be got at";
        Take(after);
        React();
        return null;
    }

    // Neighbour by neighbour, one way round or the other. What is passed on the way must be told apart by nothing.
    private string? Turn(Part part, string to)
    {
        var spoken = SpokenOf(part.Id.Value);
        string[][] ways = [.. new[] { 1, -1 }.Select(by => WayRound(part, by, to, spoken)).Where(way => way is [.., var last] && last == to)];
        if (ways.Length == 0)
            return "it isn't a neighbour";
        return Array.Exists(ways, way => TurnAlong(part, way)) ? null : "it can't be turned";
    }

    // From where the dial stands to the first position that is asked for or told apart from its neighbours.
    private string[] WayRound(Part part, int by, string to, HashSet<string> spoken)
    {
        var (dial, way) = (part.Positions, new List<string>());
        for (var at = dial.IndexOf(positions[part.Id.Value]) + by; way.Count < dial.Length; at += by)
        {
            if (!part.Round && (at < 0 || at >= dial.Length))
                break;
            at = (at + dial.Length) % dial.Length;
            way.Add(dial[at]);
            if (dial[at] == to || at == 0 || spoken.Contains(dial[at]))
                break;
        }

        return [.. way];
    }

    // Where the dial can't go on, everything is as it was before the first turn. If it has come to a position by then that nothing tells from the last
    // one, it is as good as there.
    private bool TurnAlong(Part part, string[] way)
    {
        var (id, before) = (part.Id.Value, new Dictionary<string, string>(positions));
        var isOneRun = !SpokenOf(id).Contains(way[^1]) && way[^1] != part.Positions[0];
        foreach (var (done, next) in way.Index())
        {
            var after = new Dictionary<string, string> { [id] = next };
            if (Hold(part.Needs) && GetsAt(after))
            {
                Take(after);
                React();
                continue;
            }

            if (isOneRun && done > 0)
            {
                Take(new() { [id] = way[^1] });
                return true;
            }

            foreach (var (name, position) in before)
                positions[name] = position;
            byHand.Clear();
            moved.Clear();
            return false;
        }

        return true;
    }

    private HashSet<string> SpokenOf(string name)
    {
        var moves = book.Box.Moves.Concat(book.Stages.SelectMany(stage => stage.Moves)).ToArray();
        var steps = moves.SelectMany(move => move.Undo is { } undo ? undo.Steps : []).ToArray();
        IEnumerable<Condition> conditions =
        [
            .. book.Goal, .. book.Box.Parts.SelectMany(part => part.Needs), .. book.Box.Names.SelectMany(each => each.Behind ?? []),
            .. book.Box.Reactions.SelectMany(reaction => reaction.When), .. moves.SelectMany(move => move.Needs), .. steps.SelectMany(step => step.Needs),
        ];
        var changes = moves.SelectMany(move => move.Changes)
            .Concat(book.Box.Reactions.SelectMany(reaction => reaction.Changes))
            .Concat(steps.SelectMany(step => step.Changes));
        return [.. Asked(conditions), .. changes.Where(change => change.Name.Value == name).Select(change => change.Position.Value)];

        IEnumerable<string> Asked(IEnumerable<Condition> of) => of.SelectMany(condition => condition switch
        {
            InPosition one when one.Name.Value == name => one.Positions.Select(position => position.Value),
            AnyOf any => any.Alternatives.SelectMany(alternative => Asked(alternative)),
            _ => [],
        });
    }

    private string? TakeBack(Move move, Step step)
    {
        var changed = LastOfEach(move.Changes).Where(c => named[c.Key] is Part or Thing).ToDictionary();
        if (!move.Reversible || !changed.Keys.Order().SequenceEqual(step.Leaves.Select(l => l.Name).Order()))
            return "it has no such way back";
        if (changed.Any(c => positions[c.Key] != c.Value || c.Value == Thing.UsedUp))
            return "things aren't as the move left them";
        var before = new Dictionary<string, string>();
        foreach (var leaves in step.Leaves)
        {
            if (!Mentions(move.Needs, leaves.Name) && leaves.Position != allowed[leaves.Name][0])
                return "nothing says that it came from there";
            before[leaves.Name] = leaves.Position;
        }

        if (!Hold(move.Needs, Now(before)))
            return "its needs don't hold";
        var again = After(move.Changes, move.Needs, before);
        if (step.Leaves.Any(leaves => leaves.Position != changed[leaves.Name] && !again.ContainsKey(leaves.Name)))
            return "the move doesn't take it from there";
        if (!move.FromOutside && !GetsAt(before))
            return "what it moves can't be got at";
        Take(before);
        React();
        return null;
    }

    private string? PutBack(Move move, Stage? stage, Step step)
    {
        if (move.Undo is not { } undo || step.Part >= undo.Steps.Length)
            return "it has no such undo";
        if (begun is { } open ? !ReferenceEquals(open.Undo, undo) || open.Next != step.Part : step.Part != 0)
            return "another step comes first";
        ImmutableArray<Move> moves = stage is null ? [move] : stage.Moves;
        if (step.Part == 0 && !AsLeft(moves, undo))
            return "things aren't as the move left them";
        var back = Back(undo.Steps[step.Part]);
        var byName = Comparer<Placed>.Create(ByName);
        var written = back.Select(b => new Placed(b.Key, b.Value)).Order(byName);
        if (!written.SequenceEqual(step.Leaves.Order(byName)))
            return "its undo says otherwise";
        if (!Hold(undo.Steps[step.Part].Needs))
            return "its needs don't hold";
        var after = new Dictionary<string, string>();
        foreach (var thing in undo.Steps[step.Part].PutBack.Select(t => t.Value).Where(named.ContainsKey))
        {
            var held = positions[thing] is Thing.InHand || positions[thing] == allowed[thing][0];
            if (!held && !(positions[thing] == Thing.UsedUp && moves.Any(m => LastOfEach(m.Changes).GetValueOrDefault(thing) == Thing.UsedUp)))
                return "what it puts back isn't in the hand";
            after[thing] = allowed[thing][0];
        }

        foreach (var (name, position) in back.Where(b => named[b.Key] is not Thing || positions[b.Key] != Thing.UsedUp))
            after[name] = position;
        if (!GetsAt(after))
            return "what it moves can't be got at";
        Take(after);
        begun = step.Part + 1 < undo.Steps.Length ? (undo, step.Part + 1) : null;
        React();
        return null;
    }

    private Dictionary<string, string> Back(UndoStep step)
    {
        var back = LastOfEach(step.Changes);
        foreach (var thing in step.PutBack.Where(t => named.ContainsKey(t.Value)))
            back[thing.Value] = allowed[thing.Value][0];
        return back;
    }

    // What the undo moves stands where all the moves together left it, or is back already; what they told is known.
    private bool AsLeft(ImmutableArray<Move> moves, Undo undo)
    {
        var back = new Dictionary<string, string>();
        foreach (var (name, position) in undo.Steps.SelectMany(Back))
            back[name] = position;
        var left = new Dictionary<string, string>();
        foreach (var (name, position) in moves.SelectMany(m => LastOfEach(m.Changes)))
            left[name] = position;
        return left.All(l => back.TryGetValue(l.Key, out var b)
            ? positions[l.Key] == l.Value || positions[l.Key] == b
            : named[l.Key] is Part or Thing || positions[l.Key] == l.Value);
    }

    // What an undo says isn't meant to go back: what its moves moved and it doesn't put back itself.
    private IEnumerable<string> StayingForGood() =>
        from moves in stages.Values.Select(stage => stage.Moves).Concat(book.Box.Moves.Select(move => ImmutableArray.Create(move)))
        from move in moves
        where move.Undo is { Never: not null }
        from name in LastOfEach(move.Changes).Keys
        where move.Undo?.Steps.Any(step => Back(step).ContainsKey(name)) == false
        select name;

    private string? Replace(Step step)
    {
        if (step.Leaves is not [var leaves] || positions[leaves.Name] != Thing.UsedUp)
            return "it isn't used up";
        var after = new Dictionary<string, string>(positions) { [leaves.Name] = allowed[leaves.Name][0] };
        if (!GetsAt(after))
            return "its place can't be got at";
        Take(after);
        React();
        return null;
    }

    private void Take(Dictionary<string, string> after)
    {
        foreach (var (name, position) in after.Where(each => positions[each.Key] != each.Value))
            byHand[name] = position;
        Settle(after);
    }

    private void Settle(Dictionary<string, string> after)
    {
        foreach (var (name, position) in after.Where(each => positions[each.Key] != each.Value))
        {
            positions[name] = position;
            moved.Add(name);
        }
    }

    // What some changes really change, now or if some things stood elsewhere.
    private Dictionary<string, string> After(ImmutableArray<Change> changes, ImmutableArray<Condition> needs, Dictionary<string, string>? elsewhere = null)
    {
        var (at, after) = (Now(elsewhere), new Dictionary<string, string>());
        foreach (var (name, position) in LastOfEach(changes))
        {
            if (at[name] == position || (named[name] is Thing thing && !MayBeMoved(thing, at[name], changes, needs)))
                continue;
            after[name] = position;
        }

        return after;
    }

    private static bool MayBeMoved(Thing thing, string at, ImmutableArray<Change> changes, ImmutableArray<Condition> needs) =>
        at != Thing.UsedUp && (!changes.Last(change => change.Name.Value == thing.Id.Value).Given || MayBeGiven(thing, at, needs));

    // From where it is hidden, or out of a slot that the needs name.
    private static bool MayBeGiven(Thing thing, string at, ImmutableArray<Condition> needs) =>
        at is Thing.Hidden or Thing.InHand || (thing.Fits.Any(slot => slot.Value == at) && Names(needs, thing.Id.Value, at));

    private static bool Names(ImmutableArray<Condition> conditions, string name, string position) => conditions.Any(condition => condition switch
    {
        InPosition need => need.Name.Value == name && need.Positions.Any(p => p.Value == position),
        AnyOf any => any.Alternatives.Any(alternative => Names(alternative, name, position)),
        _ => false,
    });

    // Whatever a hand moves, or takes from its hiding place or lays there, lies open now or in the state that the act itself makes.
    private bool GetsAt(Dictionary<string, string> after) =>
        after.Where(change => Touched(named[change.Key], change.Value))
            .All(change => LiesOpen(named[change.Key], Now(), []) || LiesOpen(named[change.Key], Now(after), []));

    private bool Touched(Named name, string to)
    {
        var from = positions[name.Id.Value];
        return from != to && (name is Part || (name is Thing && (from == Thing.Hidden || to == Thing.Hidden)));
    }

    private bool LiesOpen(Named name, View at, ImmutableHashSet<string> within) =>
        name.Behind is not { } behind || within.Contains(name.Id.Value) || behind.All(condition => LiesOpen(condition, at, within.Add(name.Id.Value)));

    private bool LiesOpen(Condition condition, View at, ImmutableHashSet<string> within) => condition switch
    {
        InPosition one => Holds(one, at) && LiesOpen(named[one.Name.Value], at, within),
        AnyOf any => any.Alternatives.Any(alternative => alternative.All(each => LiesOpen(each, at, within))),
        _ => false,
    };

    private Dictionary<string, string> LastOfEach(ImmutableArray<Change> changes)
    {
        var last = new Dictionary<string, string>();
        foreach (var change in changes)
        {
            if (allowed.TryGetValue(change.Name.Value, out var known) && known.Contains(change.Position.Value))
                last[change.Name.Value] = change.Position.Value;
        }

        return last;
    }

    private void React()
    {
        for (var turns = 0; turns < MostReactions && book.Box.Reactions.Any(Happens); turns++)
        {
        }
    }

    private bool Happens(Reaction reaction)
    {
        if (!Hold(reaction.When))
            return false;
        var after = After(reaction.Changes, reaction.When);
        if (after.Count == 0)
            return false;
        Settle(after);
        return true;
    }

    private bool Follows(Stage stage) =>
        stage.After.All(id => stages.ContainsKey(id.Value) && IsDone(id.Value));

    private bool ThereToUse(Move move) =>
        LastOfEach(move.Changes).All(c => named[c.Key] is not Thing || c.Value != Thing.UsedUp || positions[c.Key] is not (Thing.Hidden or Thing.UsedUp));

    private bool Hold(ImmutableArray<Condition> conditions) => Hold(conditions, Now());

    private bool Hold(ImmutableArray<Condition> conditions, View at) => conditions.All(condition => Holds(condition, at));

    private bool Holds(Condition condition, View at) => condition switch
    {
        InPosition need when named.TryGetValue(need.Name.Value, out var n) => need.Positions.IsEmpty
            ? n.Attained is { } attained && at[need.Name.Value] == attained
            : need.Positions.Any(position => position.Value == at[need.Name.Value]),
        AnyOf any => any.Alternatives.Any(alternative => Hold(alternative, at)),
        _ => false,
    };

    private static bool Mentions(ImmutableArray<Condition> conditions, string name) => conditions.Any(condition => condition switch
    {
        InPosition need => need.Name.Value == name,
        AnyOf any => any.Alternatives.Any(alternative => Mentions(alternative, name)),
        _ => false,
    });

    private View Now(Dictionary<string, string>? elsewhere = null) => new(positions, elsewhere);

    private static int ByName(Placed left, Placed right) => string.CompareOrdinal(left.Name, right.Name);

    /// <summary>Where everything is, some things standing elsewhere.</summary>
    private readonly record struct View(Dictionary<string, string> Positions, Dictionary<string, string>? Elsewhere)
    {
        public string this[string name] => Elsewhere is not null && Elsewhere.TryGetValue(name, out var position) ? position : Positions[name];
    }
}
