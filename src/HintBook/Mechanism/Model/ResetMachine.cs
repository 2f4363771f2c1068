using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Model;

/// <summary>
/// The machine of putting back: all moves, free parts, ways back, what each <c>undo</c> says, and replacing what is used up for good. Its goal is
/// the shipped box, whatever is known, without what is never meant to go back.
/// </summary>
internal sealed class ResetMachine
{
    private readonly Book book;
    private readonly Machine machine;
    private readonly List<Variable> variables;
    private readonly Dictionary<string, int> numbers;
    private readonly Clauses clauses;
    private readonly Reach reach;

    private ResetMachine(Book book, Machine machine)
    {
        (this.book, this.machine, variables) = (book, machine, [.. machine.Variables]);
        numbers = machine.Variables.Select((v, i) => (v.Id, i)).DistinctBy(pair => pair.Id).ToDictionary(pair => pair.Id, pair => pair.i);
        clauses = new Clauses(numbers, variables);
        reach = new Reach(clauses, numbers, variables);
    }

    /// <summary>The machine, for a box that is shipped in some positions. Its first variables are those of the box, in the same order.</summary>
    public static Machine Build(Book book, Machine machine, int[] shipped) => new ResetMachine(book, machine).Build(shipped);

    /// <summary>A state of the box as a state of its machine of putting back, in which no undo has been begun.</summary>
    public static int[] StateOf(Machine back, int[] state) => [.. state, .. new int[back.Variables.Length - state.Length]];

    private Machine Build(int[] shipped)
    {
        var undos = Undos().ToList();
        var lists = new Begun(undos, variables);
        if (lists.Refused is { } why)
            return machine with { Refused = why };
        var acts = new List<Act>(machine.Acts.Select(act => act with { When = clauses.Both(act.When, lists.None), Stage = -1 }));
        foreach (var undo in undos)
            acts.AddRange(Acts(undo, lists));
        var mended = undos
            .SelectMany(undo => undo.Undo.Steps.SelectMany(step => step.PutBack).Select(NumberOf).OfType<int>().Where(undo.UsedUp.Contains))
            .ToHashSet();
        for (var v = 0; v < machine.Variables.Length; v++)
        {
            if (variables[v].Gone >= 0 && !mended.Contains(v))
                acts.Add(Replace(v, lists));
        }

        var exempt = undos.SelectMany(NotMeantToGoBack).ToHashSet();
        var wanted = Enumerable.Range(0, machine.Variables.Length).Where(v => !variables[v].IsKnowledge && !exempt.Contains(v))
            .Select(v => new Literal(v, 1UL << shipped[v]));
        return machine with
        {
            Variables = [.. variables],
            Start = [.. StateOf(machine with { Variables = [.. variables] }, [.. machine.Start])],
            Acts = [.. acts],
            StageActs = [],
            Goal = clauses.Both([new Clause([.. wanted])], lists.None),
            Refused = clauses.TooMany ? $"a list of needs multiplies out to more than {Clauses.Most} alternatives" : machine.Refused,
        };
    }

    // An undo of the whole stage is one, although each move has it.
    private IEnumerable<Whole> Undos()
    {
        foreach (var stage in book.Stages.DistinctBy(stage => stage.Id.Value))
        {
            var left = Left(stage.Moves);
            var seen = new HashSet<Undo>(ReferenceEqualityComparer.Instance);
            foreach (var (m, move) in stage.Moves.Index().Where(move => move.Item.Undo is { } undo && seen.Add(undo)))
            {
                var own = stage.Moves.Where(other => ReferenceEquals(other.Undo, move.Undo)).ToImmutableArray();
                yield return new Whole(move.Undo!, stage, m, move.Name.Value, left, UsedUpBy(stage.Moves), Moved(own));
            }
        }

        foreach (var (m, move) in book.Box.Moves.Index().Where(move => move.Item.Undo is not null))
            yield return new Whole(move.Undo!, null, m, move.Name.Value, Left([move]), UsedUpBy([move]), Moved([move]));
    }

    // Where some moves together leave things.
    private Dictionary<int, int> Left(ImmutableArray<Move> moves)
    {
        var left = new Dictionary<int, int>();
        foreach (var effect in moves.SelectMany(move => Compiler.Effects(move.Changes, move.Needs, numbers, variables)))
            left[effect.Variable] = effect.Position;
        return left;
    }

    private HashSet<int> UsedUpBy(ImmutableArray<Move> moves) =>
    [
        .. moves.SelectMany(move => Compiler.Effects(move.Changes, move.Needs, numbers, variables))
            .Where(effect => effect.Position == variables[effect.Variable].Gone)
            .Select(effect => effect.Variable),
    ];

    private HashSet<int> Moved(ImmutableArray<Move> moves) => [.. Left(moves).Keys.Where(v => !variables[v].IsKnowledge)];

    private IEnumerable<int> NotMeantToGoBack(Whole undo) =>
        undo.Undo.Never is null ? [] : undo.Moved.Except(undo.Undo.Steps.SelectMany(step => EffectsOf(step)).Select(effect => effect.Variable));

    private int? NumberOf(Located<string> name) => numbers.TryGetValue(name.Value, out var number) ? number : null;

    private ImmutableArray<Effect> EffectsOf(UndoStep step)
    {
        var effects = Compiler.Effects(step.Changes, step.Needs, numbers, variables).ToDictionary(effect => effect.Variable);
        foreach (var thing in step.PutBack.Select(NumberOf).OfType<int>())
            effects[thing] = new Effect(thing, 0);
        return [.. effects.Values.OrderBy(effect => effect.Variable)];
    }

    private IEnumerable<Act> Acts(Whole undo, Begun lists)
    {
        var steps = undo.Undo.Steps;
        var effects = steps.Select(EffectsOf).ToArray();
        if (!effects.Any(each => each.Length > 0))
            yield break;
        for (var k = 0; k < steps.Length; k++)
        {
            var when = reach.And(clauses.Both(clauses.Of(steps[k].Needs), [HeldToPutBack(undo, steps[k])]), effects[k]);
            var at = k == 0 ? clauses.Both(lists.None, [AsLeft(undo, effects)]) : lists.At(undo, k);
            yield return new Act(Named(undo, k, effects[k]), clauses.Both(at, when), [.. effects[k], .. lists.Next(undo, k)], -1);
        }
    }

    // Whatever it moves stands where all the moves together left it, or is back already, and what they told is known.
    private Clause AsLeft(Whole undo, ImmutableArray<Effect>[] effects)
    {
        var back = new Dictionary<int, int>();
        foreach (var effect in effects.SelectMany(each => each))
            back[effect.Variable] = effect.Position;
        return new Clause(
        [
            .. from left in undo.Left.OrderBy(left => left.Key)
               where back.ContainsKey(left.Key) || variables[left.Key].IsKnowledge
               select new Literal(left.Key, (1UL << left.Value) | (1UL << back.GetValueOrDefault(left.Key, left.Value))),
        ]);
    }

    private Clause HeldToPutBack(Whole undo, UndoStep step) => new(
    [
        .. from thing in step.PutBack.Select(NumberOf).OfType<int>().Distinct().Order()
           where variables[thing].Named is Thing
           let held = 1UL | (1UL << variables[thing].Positions.IndexOf(Thing.InHand))
           select new Literal(thing, undo.UsedUp.Contains(thing) ? held | (1UL << variables[thing].Gone) : held),
    ]);

    private Step Named(Whole undo, int part, ImmutableArray<Effect> effects)
    {
        var what = undo.Stage is null ? undo.Move : $"“{undo.Stage.Title.Value}”";
        return new Step
        {
            Kind = StepKind.PutBack,
            Says = undo.Undo.Steps[part].Says is { Length: > 0 } says ? $"undo {what}: {says}" : $"undo {what}",
            Stage = undo.Stage?.Id.Value,
            Move = undo.Number,
            Part = part,
            Leaves = [.. effects.Select(effect => new Placed(variables[effect.Variable].Id, variables[effect.Variable].Positions[effect.Position]))],
        };
    }

    private Act Replace(int v, Begun lists)
    {
        var variable = variables[v];
        var step = new Step { Kind = StepKind.Replace, Says = $"replace {variable.Named!.Name}", Leaves = [new Placed(variable.Id, variable.Positions[0])] };
        ImmutableArray<Effect> effects = [new Effect(v, 0)];
        return new Act(step, clauses.Both(lists.None, reach.And([new Clause([new Literal(v, 1UL << variable.Gone)])], effects)), effects, -1);
    }

    /// <summary>One undo as a whole, of a stage or of a move of <c>book.yaml</c>.</summary>
    /// <param name="Undo">What is written.</param>
    /// <param name="Stage">The stage, or null.</param>
    /// <param name="Number">The number of the first move that has it.</param>
    /// <param name="Move">The name of that move.</param>
    /// <param name="Left">Where all the moves of the stage together leave things.</param>
    /// <param name="UsedUp">What they use up.</param>
    /// <param name="Moved">What the moves that have this undo move.</param>
    private sealed record Whole(Undo Undo, Stage? Stage, int Number, string Move, Dictionary<int, int> Left, HashSet<int> UsedUp, HashSet<int> Moved);

    /// <summary>How far an undo of several steps has come: two variables more, one for which undo it is and one for the next step.</summary>
    private sealed class Begun
    {
        private readonly Dictionary<Whole, int> number = new(ReferenceEqualityComparer.Instance);
        private readonly int which;

        public Begun(List<Whole> undos, List<Variable> variables)
        {
            foreach (var undo in undos.Where(undo => undo.Undo.Steps.Length > 1))
                number[undo] = number.Count + 1;
            if (number.Count == 0)
                return;
            var longest = number.Keys.Max(undo => undo.Undo.Steps.Length);
            if (number.Count >= Machine.MostPositions || longest > Machine.MostPositions)
                Refused = $"{Machine.MostPositions - 1} undos of {Machine.MostPositions} steps are the most";
            which = variables.Count;
            variables.Add(new Variable("undo/which", [.. Enumerable.Range(0, number.Count + 1).Select(n => $"{n}")], null, -1));
            variables.Add(new Variable("undo/step", [.. Enumerable.Range(0, longest).Select(n => $"{n}")], null, -1));
            None = [new Clause([new Literal(which, 1)])];
        }

        /// <summary>Why there are too many, or null.</summary>
        public string? Refused { get; }

        /// <summary>That none has been begun.</summary>
        public ImmutableArray<Clause> None { get; } = Clauses.Always;

        /// <summary>That a step is next which isn't the first.</summary>
        public ImmutableArray<Clause> At(Whole undo, int step) => [new Clause([new Literal(which, 1UL << number[undo]), new Literal(which + 1, 1UL << step)])];

        /// <summary>What making a step changes.</summary>
        public ImmutableArray<Effect> Next(Whole undo, int step) => !number.TryGetValue(undo, out var n) ? []
            : step + 1 < undo.Undo.Steps.Length ? [new Effect(which, n), new Effect(which + 1, step + 1)]
            : [new Effect(which, 0), new Effect(which + 1, 0)];
    }
}
