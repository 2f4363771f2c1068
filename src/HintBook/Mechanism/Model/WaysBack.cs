using System.Collections.Immutable;

namespace HintBook.Mechanism.Model;

/// <summary>The acts that take a reversible move back.</summary>
internal static class WaysBack
{
    /// <summary>
    /// For each alternative of the needs: what the move changed stands where the move left it, the rest of the needs holds, and it goes
    /// back to where the needs had it; where they don't say, to its first position. What is known stays known. A move that uses a
    /// thing up, or that sets a part to its first position without saying from where, has no way back.
    /// </summary>
    public static IEnumerable<Act> Of(Step step, ImmutableArray<Clause> when, ImmutableArray<Effect> effects, IReadOnlyList<Variable> variables)
    {
        var moved = effects.Where(effect => !variables[effect.Variable].IsKnowledge).ToImmutableArray();
        if (moved.IsEmpty || moved.Any(effect => effect.Position == variables[effect.Variable].Gone))
            return [];
        var acts =
            from clause in when
            from origin in Origins(clause, moved, variables)
            let rest = clause.Literals.Where(literal => !moved.Any(effect => effect.Variable == literal.Variable))
            let stands = moved.Select(effect => new Literal(effect.Variable, 1UL << effect.Position))
            let needs = new Clause([.. rest.Concat(stands).OrderBy(literal => literal.Variable)])
            group needs by new Key(origin);
        return acts.Select(group => new Act(Named(step, group.Key.Origin, variables), [.. group], group.Key.Origin, -1));
    }

    private static Step Named(Step step, ImmutableArray<Effect> origin, IReadOnlyList<Variable> variables) => step with
    {
        Kind = StepKind.WayBack,
        Says = $"back: {step.Says}",
        Leaves = [.. origin.Select(effect => new Placed(variables[effect.Variable].Id, variables[effect.Variable].Positions[effect.Position]))],
    };

    private static IEnumerable<ImmutableArray<Effect>> Origins(Clause clause, ImmutableArray<Effect> moved, IReadOnlyList<Variable> variables)
    {
        IEnumerable<ImmutableArray<Effect>> origins = [[]];
        foreach (var effect in moved)
        {
            var stated = clause.Literals.Where(literal => literal.Variable == effect.Variable).Select(literal => literal.Accepts).ToArray();
            var from = stated.Length > 0 ? stated[0] : 1UL;
            var positions = Enumerable.Range(0, variables[effect.Variable].Positions.Length)
                .Where(p => (from >> p & 1) != 0 && p != effect.Position)
                .ToArray();
            if (positions.Length == 0 && stated.Length > 0)
                positions = [effect.Position];
            origins = origins.SelectMany(known => positions.Select(p => known.Add(new Effect(effect.Variable, p))));
        }

        return origins.Where(origin => !origin.SequenceEqual(moved)).Take(Clauses.Most);
    }

    private readonly record struct Key(ImmutableArray<Effect> Origin)
    {
        public bool Equals(Key other) => Origin.SequenceEqual(other.Origin);

        public override int GetHashCode() => Origin.Aggregate(0, HashCode.Combine);
    }
}
