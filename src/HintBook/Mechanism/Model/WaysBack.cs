using System.Collections.Immutable;

namespace HintBook.Mechanism.Model;

/// <summary>The acts that take a reversible move back.</summary>
internal static class WaysBack
{
    /// <summary>
    /// What the move changed stands where the move left it, and goes back to any positions from which the needs hold; a part that the
    /// needs don't speak of goes to its first position. What is known stays known. A move that uses a thing up, or that sets a
    /// part to its first position without speaking of it in its needs, has no way back. A thing goes back only to where the move takes it from.
    /// </summary>
    /// <param name="step">The move.</param>
    /// <param name="when">Its needs.</param>
    /// <param name="effects">What it changes.</param>
    /// <param name="spoken">The names that its needs speak of.</param>
    /// <param name="variables">The variables by number.</param>
    public static IEnumerable<Act> Derive(
        Step step, ImmutableArray<Clause> when, ImmutableArray<Effect> effects, IReadOnlySet<string> spoken, IReadOnlyList<Variable> variables)
    {
        var moved = effects.Where(effect => !variables[effect.Variable].IsKnowledge).ToImmutableArray();
        if (moved.IsEmpty || moved.Any(effect => effect.Position == variables[effect.Variable].Gone))
            return [];
        var acts =
            from clause in when
            from origin in Origins(clause, moved, spoken, variables)
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

    private static IEnumerable<ImmutableArray<Effect>> Origins(
        Clause clause, ImmutableArray<Effect> moved, IReadOnlySet<string> spoken, IReadOnlyList<Variable> variables)
    {
        IEnumerable<ImmutableArray<Effect>> origins = [[]];
        foreach (var effect in moved)
        {
            var variable = variables[effect.Variable];
            var from = clause.Literals.FirstOrDefault(literal => literal.Variable == effect.Variable, new Literal(effect.Variable, variable.All));
            var positions = spoken.Contains(variable.Id)
                ? Enumerable.Range(0, variable.Positions.Length).Where(from.Takes)
                : Enumerable.Range(0, effect.Position == 0 ? 0 : 1);
            var left = positions.Where(p => p == effect.Position || effect.Applies(p)).ToArray();
            origins = origins.SelectMany(known => left.Select(p => known.Add(new Effect(effect.Variable, p))));
        }

        return origins.Where(origin => !origin.SequenceEqual(moved)).Take(Clauses.Most);
    }

    private readonly record struct Key(ImmutableArray<Effect> Origin)
    {
        public bool Equals(Key other) => Origin.SequenceEqual(other.Origin);

        public override int GetHashCode() => Origin.Aggregate(0, HashCode.Combine);
    }
}
