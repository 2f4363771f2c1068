using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism;

/// <summary>A box in the hands of somebody who tries it: how it stands, what can be done now, and how it stands after that. Immutable.</summary>
public sealed class Rehearsal
{
    private readonly Machine machine;
    private readonly int[] state;
    private readonly ImmutableHashSet<(string Stage, int Move)> made;

    private Rehearsal(Machine machine, int[] state, ImmutableHashSet<(string Stage, int Move)> made)
    {
        this.machine = machine;
        this.state = state;
        this.made = made;
    }

    /// <summary>The last step; null at the beginning.</summary>
    public Step? Last { get; private init; }

    /// <summary>What the last step changed, reactions included; nothing at the beginning.</summary>
    public ImmutableArray<Placed> Changes { get; private init; } = [];

    /// <summary>Where everything that the book declares is.</summary>
    public ImmutableArray<Placed> Positions =>
        [.. machine.Variables.Index().Where(each => each.Item.Named is not null).Select(each => At(each.Index))];

    /// <summary>Whether the box is open.</summary>
    public bool Solved => Stepper.Holds(machine.Goal, state);

    /// <summary>The steps that can be made now, those of stages first, then in the order of the book.</summary>
    public ImmutableArray<Step> Possible =>
        [.. Makeable().Select(act => machine.Acts[act].Step).OrderBy(step => step.Kind == StepKind.StageMove ? 0 : 1)];

    /// <summary>The box as it left the maker; null, with the reason, for a box that is too large or whose reactions never end.</summary>
    /// <param name="book">The book.</param>
    public static (Rehearsal? Box, string? Why) Begin(Book book)
    {
        var compiled = Compiler.Compile(book);
        if (compiled.Refused is { } why)
            return (null, why);
        return new Stepper(compiled).Start() is { } start
            ? (new(compiled, start, []), null)
            : (null, "Its reactions never come to rest.");
    }

    /// <summary>Whether all moves of a stage have been made.</summary>
    /// <param name="stage">The stage.</param>
    public bool IsDone(Stage stage) => Enumerable.Range(0, stage.Moves.Length).All(move => made.Contains((stage.Id.Value, move)));

    /// <summary>The box after a step; null if the step can't be made now.</summary>
    /// <param name="key">Which one, as <see cref="KeyOf"/> names it.</param>
    public Rehearsal? After(string key)
    {
        foreach (var act in Makeable())
        {
            var step = machine.Acts[act].Step;
            if (KeyOf(step) != key || new Stepper(machine).After(act, state) is not { } next)
                continue;
            ImmutableArray<Placed> changes =
            [
                .. machine.Variables.Index()
                    .Where(each => each.Item.Named is not null && next[each.Index] != state[each.Index])
                    .Select(each => At(each.Index, next)),
            ];
            var now = step is { Kind: StepKind.StageMove, Stage: { } stage } ? made.Add((stage, step.Move)) : made;
            return new(machine, next, now) { Last = step, Changes = changes };
        }

        return null;
    }

    /// <summary>The steps that turn a part on until it is where it shall be; null where it can't be turned there.</summary>
    /// <param name="part">The part.</param>
    /// <param name="position">Where it shall be.</param>
    public ImmutableArray<string>? Turning(string part, string position)
    {
        var seen = new HashSet<string>();
        var ways = new Queue<(Rehearsal Box, ImmutableArray<string> Keys)>([(this, [])]);
        while (ways.TryDequeue(out var way))
        {
            var now = way.Box.Positions.First(placed => placed.Name == part).Position;
            if (now == position)
                return way.Keys;
            if (!seen.Add(now))
                continue;
            foreach (var step in way.Box.Possible.Where(step => step is { Kind: StepKind.FreeMove, Leaves: [var leaves] } && leaves.Name == part))
            {
                if (way.Box.After(KeyOf(step)) is { } next)
                    ways.Enqueue((next, way.Keys.Add(KeyOf(step))));
            }
        }

        return null;
    }

    /// <summary>A name for a step that stays the same while the book's other steps change.</summary>
    /// <param name="step">The step.</param>
    public static string KeyOf(Step step) =>
        $"{step.Kind}/{step.Stage}/{step.Move}/{step.Part}/{string.Join(',', step.Leaves.Select(leaves => $"{leaves.Name}={leaves.Position}"))}";

    private IEnumerable<int> Makeable() => Enumerable.Range(0, machine.Acts.Length).Where(act => Stepper.Holds(machine.Acts[act].When, state));

    private Placed At(int variable) => At(variable, state);

    private Placed At(int variable, int[] of) => new(machine.Variables[variable].Id, machine.Variables[variable].Positions[of[variable]]);
}
