using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Pages;

namespace HintBook.Tests.Pages;

/// <summary>
/// Carries out what the reset page prints, line by line, on a box of its own. It reads the book's records itself and shares nothing with the
/// planner, the replayer or the page's builder.
/// </summary>
internal sealed class Hands
{
    private const int MostReactions = 10_000;
    private readonly Book book;
    private readonly Dictionary<string, Named> named;
    private readonly Dictionary<string, string> shipped;
    private readonly Dictionary<string, string> box;

    public Hands(Book book)
    {
        this.book = book;
        named = book.Box.Names.ToDictionary(each => each.Id.Value);
        box = named.ToDictionary(each => each.Key, each => each.Value.Positions[0]);
        Settle();
        shipped = new(box);
    }

    private Hands(Hands other) => (book, named, shipped, box) = (other.book, other.named, other.shipped, new(other.box));

    /// <summary>
    /// What goes wrong when the lines of a list are carried out on the box that the plan starts from; null if nothing does: whatever a line moves
    /// can be got at, after the lines of each step the box stands as the plan says, and at the end it is as it was shipped.
    /// </summary>
    public static string? CarryOut(Book book, ResetPlan plan, IEnumerable<ResetLine> printed)
    {
        var hands = new Hands(book);
        foreach (var step in plan.From)
            hands.Make(step);
        var planned = new Hands(hands);
        var lines = new Queue<ResetLine>(printed);
        foreach (var (i, step) in plan.Plan.Index())
        {
            if (planned.Refuses(step) is { } needs)
                return needs;
            planned.Make(step);
            // Of two turns of one part, one after the other, only the second has a line.
            if (i + 1 < plan.Plan.Length && IsTurnedOn(step, plan.Plan[i + 1]) && lines.TryPeek(out var next) && !ReferenceEquals(next.Step, step))
                continue;
            while (lines.TryPeek(out var line) && ReferenceEquals(line.Step, step))
            {
                if (hands.Do(lines.Dequeue()) is { } wrong)
                    return $"{step}: {wrong}";
            }

            if (hands.Differs(planned.box) is { } name)
                return $"after “{step}” {name} is {hands.box[name]}, not {planned.box[name]}";
        }

        return lines.Count > 0 ? $"{lines.Count} lines belong to no step" : hands.NotBack();
    }

    private static bool IsTurnedOn(Step step, Step next) =>
        step is { Kind: StepKind.FreeMove, Leaves: [var here] } && next is { Kind: StepKind.FreeMove, Leaves: [var there] } && here.Name == there.Name;

    /// <summary>The names of what moves with each line, reactions included.</summary>
    public static List<HashSet<string>> MovedBy(Book book, ResetPlan plan, IEnumerable<ResetLine> lines)
    {
        var hands = new Hands(book);
        foreach (var step in plan.From)
            hands.Make(step);
        var moved = new List<HashSet<string>>();
        foreach (var line in lines)
        {
            var before = new Dictionary<string, string>(hands.box);
            hands.Do(line);
            moved.Add([.. hands.box.Keys.Where(name => hands.box[name] != before[name])]);
        }

        return moved;
    }

    private string? Do(ResetLine line)
    {
        if (MoveOf(line.Step ?? throw new ArgumentException("a line without a step", nameof(line))) is { } move
            && line.Step.Kind is StepKind.StageMove or StepKind.BookMove)
        {
            if (!Hold(move.Needs))
                return "what the move needs isn't so";
            var changes = Changed(move.Changes, move.Needs);
            if (!move.FromOutside && OutOfReach(changes) is { } far)
                return $"nobody gets at {far}";
            Lay(changes);
            return null;
        }

        var moves = line.Labels.Concat(line.Named).ToDictionary(placed => placed.Name, placed => placed.Position);
        var outside = line.Step.Kind == StepKind.WayBack && MoveOf(line.Step) is { FromOutside: true };
        if (!outside && OutOfReach(moves) is { } name)
            return $"nobody gets at {name}";
        Lay(moves);
        return null;
    }

    // A step as the plan means it, without asking whether it may be made.
    private void Make(Step step)
    {
        switch (step.Kind)
        {
            case StepKind.StageMove or StepKind.BookMove when MoveOf(step) is { } move:
                Lay(Changed(move.Changes, move.Needs));
                break;
            case StepKind.PutBack when MoveOf(step)?.Undo?.Steps[step.Part] is { } undo:
                var back = undo.Changes.Where(change => box[change.Name.Value] != Thing.UsedUp)
                    .GroupBy(change => change.Name.Value)
                    .ToDictionary(each => each.Key, each => each.Last().Position.Value);
                foreach (var thing in undo.PutBack)
                    back[thing.Value] = named[thing.Value].Positions[0];
                Lay(back);
                break;
            default:
                Lay(step.Leaves.ToDictionary(placed => placed.Name, placed => placed.Position));
                break;
        }
    }

    private string? Refuses(Step step) => MoveOf(step) is { } move && !Hold(step.Kind switch
    {
        StepKind.PutBack => move.Undo!.Steps[step.Part].Needs,
        StepKind.WayBack => [],
        _ => move.Needs,
    })
        ? $"“{step}” needs what isn't so"
        : null;

    private Move? MoveOf(Step step) => step.Move < 0 ? null
        : step.Stage is { } stage ? book.Stages.First(each => each.Id.Value == stage).Moves[step.Move]
        : book.Box.Moves[step.Move];

    private void Lay(Dictionary<string, string> changes)
    {
        foreach (var (name, position) in changes)
            box[name] = position;
        Settle();
    }

    private void Settle()
    {
        for (var turns = 0; turns < MostReactions; turns++)
        {
            var next = book.Box.Reactions.Where(reaction => Hold(reaction.When))
                .Select(reaction => Changed(reaction.Changes, reaction.When))
                .FirstOrDefault(changes => changes.Any(change => box[change.Key] != change.Value));
            if (next is null)
                return;
            foreach (var (name, position) in next)
                box[name] = position;
        }
    }

    private Dictionary<string, string> Changed(ImmutableArray<Change> changes, ImmutableArray<Condition> needs)
    {
        var after = new Dictionary<string, string>();
        foreach (var group in changes.GroupBy(change => change.Name.Value))
        {
            var (name, last) = (group.Key, group.Last());
            var stays = named[name] is Thing
                && (box[name] == Thing.UsedUp || (last.Given && box[name] is not (Thing.Hidden or Thing.InHand) && !AsksFor(needs, name, box[name])));
            if (!stays)
                after[name] = last.Position.Value;
        }

        return after;
    }

    private static bool AsksFor(IEnumerable<Condition> conditions, string name, string position) => conditions.Any(condition => condition switch
    {
        InPosition one => one.Name.Value == name && one.Positions.Any(each => each.Value == position),
        AnyOf any => any.Alternatives.Any(all => AsksFor(all, name, position)),
        _ => false,
    });

    private string? OutOfReach(Dictionary<string, string> changes)
    {
        var after = new Dictionary<string, string>(box);
        foreach (var (name, position) in changes)
            after[name] = position;
        return changes.Keys
            .Where(name => box[name] != after[name])
            .Where(name => named[name] is Part || (named[name] is Thing && Thing.Hidden is var hidden && (box[name] == hidden || after[name] == hidden)))
            .FirstOrDefault(name => !LiesOpen(name, box, []) && !LiesOpen(name, after, []));
    }

    private bool LiesOpen(string name, Dictionary<string, string> at, string[] within) =>
        within.Contains(name) || named[name].Behind is not { } behind || behind.All(condition => LiesOpen(condition, at, [.. within, name]));

    private bool LiesOpen(Condition condition, Dictionary<string, string> at, string[] within) => condition switch
    {
        InPosition one => Holds(one, at) && LiesOpen(one.Name.Value, at, within),
        AnyOf any => any.Alternatives.Any(all => all.All(each => LiesOpen(each, at, within))),
        _ => false,
    };

    private bool Hold(IEnumerable<Condition> conditions) => conditions.All(condition => Holds(condition, box));

    private bool Holds(Condition condition, Dictionary<string, string> at) => condition switch
    {
        InPosition { Positions.IsEmpty: true } bare => at[bare.Name.Value] == named[bare.Name.Value].Attained,
        InPosition one => one.Positions.Any(position => position.Value == at[one.Name.Value]),
        AnyOf any => any.Alternatives.Any(all => all.All(each => Holds(each, at))),
        _ => false,
    };

    private string? Differs(Dictionary<string, string> other) => box.Keys.Order(StringComparer.Ordinal).FirstOrDefault(name => box[name] != other[name]);

    private string? NotBack()
    {
        var staying =
            from move in book.Stages.SelectMany(stage => stage.Moves).Concat(book.Box.Moves)
            let undo = move.Undo
            where undo?.Never is not null
            let back = undo.Steps.SelectMany(step => step.PutBack.Concat(step.Changes.Select(change => change.Name))).Select(name => name.Value)
            from name in move.Changes.Select(change => change.Name.Value).Except(back)
            select name;
        return box.Keys.Where(name => named[name] is Part or Thing && !staying.Contains(name))
            .Where(name => box[name] != shipped[name])
            .Select(name => $"{name} is {box[name]} at the end, not {shipped[name]}")
            .FirstOrDefault();
    }
}
