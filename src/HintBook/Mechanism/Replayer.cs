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

    private Replayer(Replayer other)
    {
        (book, stages, named, allowed, shipped) = (other.book, other.stages, other.named, other.allowed, other.shipped);
        positions = new(shipped);
    }

    /// <summary>Whether the box is solved now.</summary>
    public bool Solved => Hold(book.Goal);

    /// <summary>Whether every part and thing is where it was when the box left the maker; what is known doesn't matter.</summary>
    public bool Shipped => named.Values.All(n => n is Fact or Code || positions[n.Id.Value] == shipped[n.Id.Value]);

    /// <summary>The same box, as it left the maker.</summary>
    public Replayer Fresh() => new(this);

    /// <summary>Where everything is.</summary>
    public ImmutableSortedDictionary<string, string> Positions => positions.ToImmutableSortedDictionary();

    /// <summary>Whether one of a stage's moves is possible now.</summary>
    public bool IsOpen(string stage) =>
        stages.TryGetValue(stage, out var s) && Follows(s) && s.Moves.Any(move => Hold(move.Needs) && ThereToUse(move));

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

    private string? Make(Step step)
    {
        var stage = step.Stage is null ? null : stages.GetValueOrDefault(step.Stage);
        var move = stage is not null ? stage.Moves[step.Move] : step.Move >= 0 ? book.Box.Moves[step.Move] : null;
        if (stage is not null && step.Kind != StepKind.PutBack && !Follows(stage))
            return "a stage that comes before it isn't done";
        return step.Kind switch
        {
            StepKind.StageMove or StepKind.BookMove when move is not null => MakeMove(move, step),
            StepKind.FreeMove => MoveFreely(step),
            StepKind.WayBack when move is not null => TakeBack(move, step),
            StepKind.PutBack when move is not null => PutBack(move, step),
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
        foreach (var change in LastOfEach(move.Changes))
            Put(change.Key, change.Value);
        if (step.Stage is not null)
            made.Add((step.Stage, step.Move));
        React();
        return null;
    }

    private string? MoveFreely(Step step)
    {
        if (step.Leaves is not [var leaves] || book.Box.Parts.FirstOrDefault(p => p.Id.Value == leaves.Name) is not { Free: true } part)
            return "it isn't a free part";
        if (!part.Positions.Contains(leaves.Position) || !Hold(part.Needs))
            return "its needs don't hold";
        Put(leaves.Name, leaves.Position);
        React();
        return null;
    }

    private string? TakeBack(Move move, Step step)
    {
        var changed = LastOfEach(move.Changes).Where(c => named[c.Key] is Part or Thing).ToDictionary();
        if (!move.Reversible || !changed.Keys.Order().SequenceEqual(step.Leaves.Select(l => l.Name).Order()))
            return "it has no such way back";
        if (changed.Any(c => positions[c.Key] != c.Value || c.Value == Thing.UsedUp))
            return "things aren't as the move left them";
        foreach (var leaves in step.Leaves)
        {
            if (!Mentions(move.Needs, leaves.Name) && leaves.Position != allowed[leaves.Name][0])
                return "nothing says that it came from there";
            positions[leaves.Name] = leaves.Position;
        }

        if (!Hold(move.Needs))
            return "its needs don't hold";
        React();
        return null;
    }

    private string? PutBack(Move move, Step step)
    {
        if (move.Undo is not { } undo)
            return "it has no undo";
        var did = LastOfEach(move.Changes);
        var back = LastOfEach(undo.Changes);
        foreach (var thing in undo.PutBack.Where(t => named.ContainsKey(t.Value)))
            back[thing.Value] = allowed[thing.Value][0];
        if (!back.Select(b => new Placed(b.Key, b.Value)).Order(Comparer<Placed>.Create(ByName)).SequenceEqual(step.Leaves.Order(Comparer<Placed>.Create(ByName))))
            return "its undo says otherwise";
        if (back.Any(b => did.TryGetValue(b.Key, out var d) && positions[b.Key] != d && positions[b.Key] != b.Value))
            return "things aren't as the move left them";
        foreach (var (name, position) in back)
            positions[name] = position;
        React();
        return null;
    }

    private string? Replace(Step step)
    {
        if (step.Leaves is not [var leaves] || positions[leaves.Name] != Thing.UsedUp)
            return "it isn't used up";
        positions[leaves.Name] = allowed[leaves.Name][0];
        React();
        return null;
    }

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

    private bool Put(string name, string position)
    {
        if (positions[name] == position || (named[name] is Thing && positions[name] == Thing.UsedUp))
            return false;
        positions[name] = position;
        return true;
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
        var changed = false;
        foreach (var (name, position) in LastOfEach(reaction.Changes))
            changed |= Put(name, position);
        return changed;
    }

    private bool Follows(Stage stage) =>
        stage.After.All(id => stages.ContainsKey(id.Value) && IsDone(id.Value));

    private bool ThereToUse(Move move) =>
        LastOfEach(move.Changes).All(c => named[c.Key] is not Thing || c.Value != Thing.UsedUp || positions[c.Key] is not (Thing.Hidden or Thing.UsedUp));

    private bool Hold(ImmutableArray<Condition> conditions) => conditions.All(Holds);

    private bool Holds(Condition condition) => condition switch
    {
        InPosition need when named.TryGetValue(need.Name.Value, out var n) => need.Positions.IsEmpty
            ? n.Attained is { } attained && positions[need.Name.Value] == attained
            : need.Positions.Any(position => position.Value == positions[need.Name.Value]),
        AnyOf any => any.Alternatives.Any(Hold),
        _ => false,
    };

    private static bool Mentions(ImmutableArray<Condition> conditions, string name) => conditions.Any(condition => condition switch
    {
        InPosition need => need.Name.Value == name,
        AnyOf any => any.Alternatives.Any(alternative => Mentions(alternative, name)),
        _ => false,
    });

    private static int ByName(Placed left, Placed right) => string.CompareOrdinal(left.Name, right.Name);
}
