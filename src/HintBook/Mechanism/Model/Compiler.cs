using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>Makes the machine of a book.</summary>
internal static class Compiler
{
    /// <summary>The machine of a book.</summary>
    /// <param name="book">The book; names that nothing declares are conditions that never hold and changes that do nothing.</param>
    /// <param name="marks">Which stages get a mark when a move of theirs has been made, beside those that an <c>after</c> asks for.</param>
    public static Machine Compile(Book book, Func<Stage, bool>? marks = null)
    {
        var variables = Declared(book).ToList();
        if (variables.Find(v => v.Positions.Length > Machine.MostPositions) is { } wide)
        {
            return Empty(
                book,
                $"{wide.Id} has {wide.Positions.Length} positions that are told apart, and {Machine.MostPositions} are the most",
                $"Leave out the positions of “{wide.Id}” that nothing depends on, or make two parts of it.");
        }

        var numbers = variables.Select((v, i) => (v.Id, i)).DistinctBy(pair => pair.Id).ToDictionary(pair => pair.Id, pair => pair.i);
        var clauses = new Clauses(numbers, variables);
        var reach = new Reach(clauses, numbers, variables);
        var done = Marks(book, variables, marks);
        var acts = new List<Act>();
        var stageActs = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach (var (stage, s) in book.Stages.Select((stage, s) => (stage, s)))
        {
            var after = After(book, stage, done);
            var own = ImmutableArray.CreateBuilder<int>();
            foreach (var (move, m) in stage.Moves.Select((move, m) => (move, m)))
            {
                own.Add(acts.Count);
                var step = new Step { Kind = StepKind.StageMove, Says = move.Name.Value, Stage = stage.Id.Value, Move = m };
                Add(move, step, after, s, done.TryGetValue((s, m), out var mark) ? [new Effect(mark, 1)] : []);
            }

            stageActs.Add(own.ToImmutable());
        }

        foreach (var (move, m) in book.Box.Moves.Select((move, m) => (move, m)))
            Add(move, new Step { Kind = StepKind.BookMove, Says = move.Name.Value, Move = m }, Clauses.Always, -1, []);
        foreach (var part in book.Box.Parts.Where(part => part.Free || part.Turns))
            acts.AddRange(FreeMoves(part, numbers[part.Id.Value], variables, clauses, reach));

        var rules = book.Box.Reactions
            .Select((reaction, number) => new Rule(number, clauses.Of(reaction.When), Effects(reaction.Changes, reaction.When, numbers, variables)))
            .ToImmutableArray();
        var goal = clauses.Of(book.Goal);
        var shown = book.Box.Parts.Where(part => part is { ShowsWhen.IsEmpty: false, Seen: false }).DistinctBy(part => part.Id.Value)
            .ToImmutableDictionary(part => numbers[part.Id.Value], part => clauses.Of(part.ShowsWhen));
        return clauses.TooMany
            ? Empty(
                book,
                $"a list of needs multiplies out to more than {Clauses.Most} alternatives",
                "Write alternatives of one part as “{ part: [ this, that ] }” instead of “any”, or split the move in two.")
            : new Machine
            {
                Book = book,
                Variables = [.. variables],
                Start = [.. new int[variables.Count]],
                Acts = [.. acts],
                Rules = rules,
                Goal = goal,
                StageActs = stageActs.ToImmutable(),
                Behind = reach.All(),
                ShowsWhen = shown,
            }.AtRest();

        void Add(Move move, Step step, ImmutableArray<Clause> after, int stage, IEnumerable<Effect> marked)
        {
            var effects = Effects(move.Changes, move.Needs, numbers, variables);
            var when = clauses.Both(clauses.Both(clauses.Of(move.Needs), after), UsedUpIsThere(effects, variables));
            acts.Add(new Act(step, move.FromOutside ? when : reach.And(when, effects), [.. effects, .. marked], stage));
            if (!move.Reversible)
                return;
            var back = WaysBack.Derive(step, when, effects, SpokenOf(move.Needs).ToHashSet(), variables);
            acts.AddRange(move.FromOutside ? back : back.Select(act => act with { When = reach.And(act.When, act.Effects) }));
        }
    }

    /// <summary>What a list of changes does: one effect a variable, the last one written.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="needs">What is asked for with them: a thing that is given is taken out of the slots that are named there.</param>
    /// <param name="numbers">The number of each declared name.</param>
    /// <param name="variables">The variables by number.</param>
    internal static ImmutableArray<Effect> Effects(
        ImmutableArray<Change> changes, ImmutableArray<Condition> needs, IReadOnlyDictionary<string, int> numbers, IReadOnlyList<Variable> variables)
    {
        var effects = new SortedDictionary<int, Effect>();
        foreach (var change in changes)
        {
            if (numbers.TryGetValue(change.Name.Value, out var number)
                && variables[number].Positions.IndexOf(change.Position.Value) is >= 0 and var position)
            {
                var from = change.Given ? TakenFrom(variables[number], needs) : ulong.MaxValue;
                effects[number] = new Effect(number, position, variables[number].NotGone & from);
            }
        }

        return [.. effects.Values];
    }

    private static ulong TakenFrom(Variable variable, ImmutableArray<Condition> needs)
    {
        if (variable.Named is not Thing thing)
            return ulong.MaxValue;
        var slots = SlotsNamed(thing.Id.Value, needs).Where(slot => thing.Fits.Any(fits => fits.Value == slot));
        return slots.Append(Thing.Hidden).Append(Thing.InHand).Aggregate(0UL, (from, position) => from | (1UL << variable.Positions.IndexOf(position)));
    }

    private static IEnumerable<string> SlotsNamed(string thing, ImmutableArray<Condition> conditions) => conditions.SelectMany(condition => condition switch
    {
        InPosition need when need.Name.Value == thing => need.Positions.Select(position => position.Value),
        AnyOf any => any.Alternatives.SelectMany(alternative => SlotsNamed(thing, alternative)),
        _ => [],
    });

    private static IEnumerable<string> SpokenOf(ImmutableArray<Condition> conditions) => conditions.SelectMany(condition => condition switch
    {
        InPosition need => [need.Name.Value],
        AnyOf any => any.Alternatives.SelectMany(SpokenOf),
        _ => [],
    });

    private static IEnumerable<Variable> Declared(Book book)
    {
        var apart = new ToldApart(book);
        return book.Box.Names.Select(named => new Variable(
            named.Id.Value, apart.Of(named), named, named is Thing ? named.Positions.IndexOf(Thing.UsedUp) : -1));
    }

    private static Dictionary<(int Stage, int Move), int> Marks(Book book, List<Variable> variables, Func<Stage, bool>? marks)
    {
        var asked = book.Stages.SelectMany(stage => stage.After).Select(id => id.Value).ToHashSet();
        var done = new Dictionary<(int, int), int>();
        for (var s = 0; s < book.Stages.Length; s++)
        {
            var stage = book.Stages[s];
            if (!asked.Contains(stage.Id.Value) && marks?.Invoke(stage) != true)
                continue;
            for (var m = 0; m < stage.Moves.Length; m++)
            {
                done[(s, m)] = variables.Count;
                variables.Add(new Variable($"{stage.Id.Value}/{m}", ["not made", "made"], null, -1));
            }
        }

        return done;
    }

    private static ImmutableArray<Clause> After(Book book, Stage stage, Dictionary<(int Stage, int Move), int> done)
    {
        if (stage.After.IsEmpty)
            return Clauses.Always;
        var literals = new SortedDictionary<int, Literal>();
        foreach (var id in stage.After)
        {
            var found = false;
            for (var s = 0; s < book.Stages.Length; s++)
            {
                if (book.Stages[s].Id.Value != id.Value)
                    continue;
                found = true;
                for (var m = 0; m < book.Stages[s].Moves.Length; m++)
                    literals[done[(s, m)]] = new Literal(done[(s, m)], 2);
            }

            if (!found)
                return [];
        }

        return [new Clause([.. literals.Values])];
    }

    // What is used up must be there: neither hidden still nor used up already.
    private static ImmutableArray<Clause> UsedUpIsThere(ImmutableArray<Effect> effects, List<Variable> variables)
    {
        var literals =
            from effect in effects
            let variable = variables[effect.Variable]
            where effect.Position == variable.Gone
            let all = variable.All
            select new Literal(effect.Variable, all & ~(1UL << variable.Gone) & ~(1UL << variable.Positions.IndexOf(Thing.Hidden)));
        return [new Clause([.. literals])];
    }

    private static IEnumerable<Act> FreeMoves(Part part, int number, List<Variable> variables, Clauses clauses, Reach reach)
    {
        var needs = reach.ToMove(clauses.Of(part.Needs), number);
        if (part.Turns && !part.Free)
            return Turns(part, number, variables[number], clauses, needs);
        return variables[number].Positions.Select((position, p) => new Act(
            new Step
            {
                Kind = StepKind.FreeMove,
                Says = $"{part.Name}: {position}",
                Leaves = [new Placed(part.Id.Value, position)],
            },
            needs,
            [new Effect(number, p)],
            -1));
    }

    // One step to each neighbour.
    private static IEnumerable<Act> Turns(Part part, int number, Variable variable, Clauses clauses, ImmutableArray<Clause> needs)
    {
        var count = variable.Positions.Length;
        for (var p = 0; p < count; p++)
        {
            var next = new[] { p - 1, p + 1 }.Where(to => part.Round ? count > 1 : to >= 0 && to < count).Select(to => (to + count) % count);
            foreach (var to in next.Distinct().Where(to => to != p))
            {
                var step = new Step
                {
                    Kind = StepKind.FreeMove,
                    Says = $"{part.Name}: {variable.Positions[to]}",
                    Leaves = [new Placed(variable.Id, variable.Positions[to])],
                };
                yield return new Act(step, clauses.Both(needs, [new Clause([new Literal(number, 1UL << p)])]), [new Effect(number, to)], -1);
            }
        }
    }

    private static Machine Empty(Book book, string why, string help) => new()
    {
        Book = book,
        Variables = [],
        Start = [],
        Acts = [],
        Rules = [],
        Goal = [],
        StageActs = [.. book.Stages.Select(_ => ImmutableArray<int>.Empty)],
        Refused = why,
        RefusedHelp = help,
    };
}
