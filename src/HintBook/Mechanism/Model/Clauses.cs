using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Model;

/// <summary>Turns conditions as written into alternatives of plain conjunctions.</summary>
/// <param name="numbers">The number of each declared name.</param>
/// <param name="variables">The declared names by number.</param>
internal sealed class Clauses(IReadOnlyDictionary<string, int> numbers, IReadOnlyList<Variable> variables)
{
    /// <summary>How many alternatives one list of conditions may multiply out to.</summary>
    public const int Most = 4096;

    /// <summary>The condition that always holds.</summary>
    public static ImmutableArray<Clause> Always { get; } = [new Clause([])];

    /// <summary>Whether some list had more than <see cref="Most"/> alternatives; what it gave then is of no use.</summary>
    public bool TooMany { get; private set; }

    /// <summary>The alternatives of a list of conditions, all of which must hold. None: it can never hold.</summary>
    public ImmutableArray<Clause> Of(ImmutableArray<Condition> conditions)
    {
        var alternatives = Always;
        foreach (var condition in conditions)
            alternatives = Both(alternatives, Of(condition));
        return alternatives;
    }

    /// <summary>The alternatives of two conditions that must both hold.</summary>
    public ImmutableArray<Clause> Both(ImmutableArray<Clause> left, ImmutableArray<Clause> right)
    {
        if (left is [{ Literals.IsEmpty: true }])
            return right;
        if (right is [{ Literals.IsEmpty: true }])
            return left;
        if ((long)left.Length * right.Length > Most)
        {
            TooMany = true;
            return left;
        }

        return [.. (from a in left from b in right select Join(a, b)).OfType<Clause>()];
    }

    /// <summary>A clause with one literal more, or null where the two contradict.</summary>
    public static Clause? Join(Clause left, Clause right)
    {
        var accepts = new SortedDictionary<int, ulong>();
        foreach (var literal in left.Literals.Concat(right.Literals))
        {
            accepts[literal.Variable] = accepts.GetValueOrDefault(literal.Variable, ulong.MaxValue) & literal.Accepts;
            if (accepts[literal.Variable] == 0)
                return null;
        }

        return new Clause([.. accepts.Select(pair => new Literal(pair.Key, pair.Value))]);
    }

    private ImmutableArray<Clause> Of(Condition condition) => condition switch
    {
        InPosition need => Of(need),
        AnyOf any => [.. any.Alternatives.SelectMany(alternative => Of(alternative))],
        _ => [],
    };

    private ImmutableArray<Clause> Of(InPosition need)
    {
        if (!numbers.TryGetValue(need.Name.Value, out var number))
            return [];
        var variable = variables[number];
        IEnumerable<string> wanted = need.Positions.IsEmpty
            ? (variable.Named?.Attained is { } attained ? [attained] : [])
            : need.Positions.Select(position => position.Value);
        var accepts = 0UL;
        foreach (var position in wanted.Select(name => variable.Positions.IndexOf(name)).Where(position => position >= 0))
            accepts |= 1UL << position;
        return accepts == 0 ? [] : [new Clause([new Literal(number, accepts)])];
    }
}
