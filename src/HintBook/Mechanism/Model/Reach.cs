using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>
/// What a hand must be able to get at: whoever moves a part, or moves a thing out of its hiding place or into it, needs all that it lies behind to hold,
/// in the state before the act or in the state that the act itself makes, reactions aside.
/// </summary>
/// <param name="clauses">Turns conditions into alternatives.</param>
/// <param name="numbers">The number of each declared name.</param>
/// <param name="variables">The variables by number.</param>
internal sealed class Reach(Clauses clauses, IReadOnlyDictionary<string, int> numbers, IReadOnlyList<Variable> variables)
{
    private readonly Dictionary<int, ImmutableArray<Clause>> known = [];

    /// <summary>Some needs together with what a hand must get at to make some changes.</summary>
    /// <param name="when">The needs.</param>
    /// <param name="effects">The changes.</param>
    public ImmutableArray<Clause> And(ImmutableArray<Clause> when, ImmutableArray<Effect> effects)
    {
        var needed = Clauses.Always;
        foreach (var effect in effects)
        {
            var behind = Behind(effect.Variable, []);
            if (behind is not [{ Literals.IsEmpty: true }])
            {
                var afterwards = behind.Select(clause => After(clause, effects)).OfType<Clause>();
                needed = Weakest(clauses.Both(needed, Weakest([.. Untouched(effect), .. behind, .. afterwards])));
            }
        }

        return clauses.Both(when, needed);
    }

    /// <summary>Some needs together with what a part lies behind, wherever it goes.</summary>
    /// <param name="when">The needs.</param>
    /// <param name="part">The number of the part, which is not among what it lies behind itself.</param>
    public ImmutableArray<Clause> ToMove(ImmutableArray<Clause> when, int part) => clauses.Both(when, Behind(part, []));

    /// <summary>What must hold for a hand to get at each thing and part that lies behind something.</summary>
    public ImmutableDictionary<int, ImmutableArray<Clause>> All() => Enumerable.Range(0, variables.Count)
        .Where(v => variables[v].Named?.Behind is { IsEmpty: false }).ToImmutableDictionary(v => v, v => Behind(v, []));

    // What something lies behind, and what those things lie behind that are named there. A circle has its own finding.
    private ImmutableArray<Clause> Behind(int variable, ImmutableHashSet<int> within)
    {
        if (variables[variable].Named?.Behind is not { IsEmpty: false } behind || within.Contains(variable))
            return Clauses.Always;
        if (!known.TryGetValue(variable, out var found))
            known[variable] = found = Weakest(All(behind, within.Add(variable)));
        return found;
    }

    private ImmutableArray<Clause> All(ImmutableArray<Condition> conditions, ImmutableHashSet<int> within)
    {
        var all = Clauses.Always;
        foreach (var condition in conditions)
        {
            all = clauses.Both(all, condition switch
            {
                AnyOf any => [.. any.Alternatives.SelectMany(alternative => All(alternative, within))],
                InPosition one when numbers.TryGetValue(one.Name.Value, out var number) => clauses.Both(clauses.Of([condition]), Behind(number, within)),
                _ => [],
            });
        }

        return all;
    }

    // Where the change moves no part, and no thing out of its hiding place or into it, there is nothing to get at.
    private ImmutableArray<Clause> Untouched(Effect effect)
    {
        var variable = variables[effect.Variable];
        var hidden = variable.Named is Thing ? 1UL << variable.Positions.IndexOf(Thing.Hidden) : 0;
        var same = variable.Named is not Thing ? 1UL << effect.Position
            : (hidden >> effect.Position & 1) != 0 ? hidden
            : ~hidden;
        var accepts = variable.All & (same | ~effect.From);
        return accepts == 0 ? [] : [accepts == variable.All ? new Clause([]) : new Clause([new Literal(effect.Variable, accepts)])];
    }

    // What must hold before some changes for a clause to hold after them; null where it can't.
    private Clause? After(Clause clause, ImmutableArray<Effect> effects)
    {
        var literals = ImmutableArray.CreateBuilder<Literal>();
        foreach (var literal in clause.Literals)
        {
            var accepts = literal.Accepts;
            foreach (var effect in effects.Where(effect => effect.Variable == literal.Variable))
                accepts = (accepts & ~effect.From) | (literal.Takes(effect.Position) ? effect.From : 0);
            accepts &= variables[literal.Variable].All;
            if (accepts == 0)
                return null;
            if (accepts != variables[literal.Variable].All)
                literals.Add(literal with { Accepts = accepts });
        }

        return new Clause(literals.ToImmutable());
    }

    // Without those that ask for all that another asks for.
    private static ImmutableArray<Clause> Weakest(ImmutableArray<Clause> alternatives)
    {
        var kept = new List<Clause>();
        foreach (var clause in alternatives.OrderBy(clause => clause.Literals.Length))
        {
            if (!kept.Exists(other => Implies(clause, other)))
                kept.Add(clause);
        }

        return [.. kept];
    }

    private static bool Implies(Clause clause, Clause other) => other.Literals.All(asked =>
        clause.Literals.Any(literal => literal.Variable == asked.Variable && (literal.Accepts & ~asked.Accepts) == 0));
}
