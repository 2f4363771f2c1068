using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Tours;
using HintBook.Pages;

namespace HintBook.Bench;

/// <summary>What a line of the test walk says, in the book's language.</summary>
internal sealed class WalkWords(Book book, ThemeWords words)
{
    private readonly WalkStepBook known = new(book);
    private readonly ResetWords reset = new(book, words);

    /// <summary>What is done, or tried.</summary>
    public string Says(WalkStep step)
    {
        var says = step.Step switch
        {
            { Kind: StepKind.FreeMove, Leaves: [var leaves] } => Said(leaves),
            { Kind: StepKind.StageMove or StepKind.BookMove } move => known.MoveOf(move)?.Name.Value ?? move.Says,
            var back when UndoSays(back) is { } undo => undo,
            var back => reset.Of(new ResetLine { Step = back, Labels = step.ByHand }),
        };
        return step.MustHold ? words.Say("print_walk_must_hold", ("move", says)) : Capital(says);
    }

    /// <summary>What else is to be known of it: a code, what isn't so, what the box does.</summary>
    public IEnumerable<string> Besides(WalkStep step)
    {
        if (step.MustHold)
            return step.Lacks.IsEmpty ? [] : [words.Say("print_walk_not_so", ("needs", string.Join(" · ", WalkStepBook.Flat(step.Lacks).Select(Asked))))];
        return
        [
            .. step.Step.Kind is StepKind.StageMove or StepKind.BookMove || UndoSays(step.Step) is not null ? ByHand(step) : [],
            .. known.CodesOf(step.Step).Select(code => $"{code.Name}: {code.Answer.Value}"),
            .. step.ByItself.IsEmpty ? Array.Empty<string>() : [words.Say("print_walk_itself", ("changes", string.Join(", ", step.ByItself.Select(Said))))],
        ];
    }

    private IEnumerable<string> ByHand(WalkStep step)
    {
        string[] moved = [.. step.ByHand.Where(IsTold).Select(Said)];
        return moved.Length == 0 ? [] : [string.Join(" · ", moved)];
    }

    // What is used up is gone, and of a thing without a place nothing is known but that it isn't to be seen.
    private bool IsTold(Placed placed) =>
        placed.Position != Thing.UsedUp && !(placed.Position == Thing.Hidden && known[placed.Name] is Thing { Place: null });

    /// <summary>What isn't tested.</summary>
    public string Of(LeftOut left) => left.Lacks.IsEmpty
        ? Capital(left.What)
        : $"{Capital(left.What)}. {words.Say("print_walk_not_so", ("needs", string.Join(" · ", WalkStepBook.Flat(left.Lacks).Select(Asked))))}";

    /// <summary>What people call something.</summary>
    public string NameOf(string id) => Capital(known[id]?.Name ?? id);

    private string? UndoSays(Step step) =>
        step.Kind == StepKind.PutBack && known.MoveOf(step)?.Undo is { } undo && step.Part < undo.Steps.Length ? undo.Steps[step.Part].Says : null;

    private string Asked(InPosition one) => known[one.Name.Value] switch
    {
        Code { Answer.Value: { Length: > 0 } answer } code => $"{code.Name} ({words.Say("print_walk_wrong", ("answer", answer))})",
        Code code => $"{code.Name} ({words["print_walk_wrong_any"]})",
        Thing thing when one.Positions.IsEmpty => $"{thing.Name}: {words["print_walk_in_hand"]}",
        _ => string.Join(" / ", one.Positions.Select(position => Said(new Placed(one.Name.Value, position.Value)))),
    };

    private string Said(Placed placed) => known[placed.Name] switch
    {
        Part part => $"{part.Name}: {part.Say(placed.Position)}",
        Thing thing when placed.Position == Thing.InHand => $"{thing.Name}: {words["print_walk_in_hand"]}",
        Thing { Place: { } place } thing when placed.Position == Thing.Hidden => $"{thing.Name}: {place}",
        var named => $"{named?.Name ?? placed.Name}: {placed.Position.Replace('-', ' ')}",
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
