using System.Collections.Immutable;

namespace HintBook.Mechanism.Model;

/// <summary>What becomes of the acts, reactions and goal of a machine when two of its variables are exchanged.</summary>
internal sealed class Exchange
{
    private readonly Machine machine;
    private readonly Dictionary<Content, int> loose = [];
    private readonly HashSet<Content> rules;
    private readonly Content?[] stages;
    private readonly Lazy<Content> goal;
    private readonly ILookup<int, int> mentioned;
    private readonly ILookup<int, Rule> mentionedByRules;

    /// <summary>Prepares it: one pass over the machine.</summary>
    public Exchange(Machine machine)
    {
        this.machine = machine;
        rules = [.. machine.Rules.Select(rule => Of(rule.When, rule.Effects, 0, 0))];
        goal = new(() => Of(machine.Goal, [], 0, 0));
        stages = new Content?[machine.Acts.Length];
        mentioned = Mentioned(machine.Acts.Length, a => machine.Acts[a].When, a => machine.Acts[a].Effects, a => a);
        mentionedByRules = Mentioned(machine.Rules.Length, r => machine.Rules[r].When, r => machine.Rules[r].Effects, r => machine.Rules[r]);
        for (var a = 0; a < machine.Acts.Length; a++)
        {
            if (machine.Acts[a].Stage < 0)
                loose.TryAdd(Of(machine.Acts[a].When, machine.Acts[a].Effects, 0, 0), a);
        }
    }

    /// <summary>Whether exchanging two maps the machine onto itself, and each move of a stage to itself. Their positions and starts are compared too.</summary>
    public bool Keeps(int one, int other) =>
        machine.Variables[one].Positions.Length == machine.Variables[other].Positions.Length
        && machine.Variables[one].Gone == machine.Variables[other].Gone
        && machine.Start[one] == machine.Start[other]
        && Moved(one, other).All(moved => moved.Image >= 0)
        && mentionedByRules[one].Concat(mentionedByRules[other]).All(rule => rules.Contains(Of(rule.When, rule.Effects, one, other)))
        && (Same(machine.Goal, [], one, other) || Of(machine.Goal, [], one, other) == goal.Value)
        && machine.Behind.All(pair =>
            machine.Behind.TryGetValue(To(pair.Key, one, other), out var behind) && Of(pair.Value, [], one, other) == Of(behind, [], 0, 0));

    /// <summary>The acts that mention one of two variables, each with the act that it becomes, or -1 for none; a stage's move may only become itself.</summary>
    public IEnumerable<(int Act, int Image)> Moved(int one, int other)
    {
        foreach (var act in mentioned[one].Concat(mentioned[other]).Distinct())
        {
            var (when, effects) = (machine.Acts[act].When, machine.Acts[act].Effects);
            if (Same(when, effects, one, other))
                yield return (act, act);
            else if (machine.Acts[act].Stage < 0)
                yield return (act, loose.GetValueOrDefault(Of(when, effects, one, other), -1));
            else
                yield return (act, Of(when, effects, one, other) == (stages[act] ??= Of(when, effects, 0, 0)) ? act : -1);
        }
    }

    // Where each clause says the same of both it stays as it is; other clauses may still become each other.
    private bool Same(ImmutableArray<Clause> when, ImmutableArray<Effect> effects, int one, int other)
    {
        foreach (var clause in when)
        {
            var (asked, also) = (0UL, 0UL);
            foreach (var literal in clause.Literals)
            {
                var accepts = literal.Accepts & machine.Variables[literal.Variable].All;
                asked = literal.Variable == one ? accepts : asked;
                also = literal.Variable == other ? accepts : also;
            }

            if (asked != also)
                return false;
        }

        return effects.All(effect => effect.Variable != one && effect.Variable != other);
    }

    private static ILookup<int, T> Mentioned<T>(
        int count, Func<int, ImmutableArray<Clause>> when, Func<int, ImmutableArray<Effect>> effects, Func<int, T> of) => (
            from number in Enumerable.Range(0, count)
            let asked = when(number).SelectMany(clause => clause.Literals).Select(literal => literal.Variable)
            from variable in asked.Concat(effects(number).Select(effect => effect.Variable)).Distinct()
            select (variable, number)).ToLookup(pair => pair.variable, pair => of(pair.number));

    private static int To(int variable, int one, int other) => variable == one ? other : variable == other ? one : variable;

    // In the one form that doesn't depend on how it was written: literals by variable, clauses by their literals, each once.
    private Content Of(ImmutableArray<Clause> when, ImmutableArray<Effect> effects, int one, int other)
    {
        var clauses = when.Select(clause => clause.Literals
            .Select(literal => (Variable: To(literal.Variable, one, other), Accepts: literal.Accepts & machine.Variables[literal.Variable].All))
            .OrderBy(literal => literal.Variable).SelectMany(literal => new[] { (ulong)literal.Variable, literal.Accepts }).ToArray()).ToList();
        clauses.Sort((left, right) => left.AsSpan().SequenceCompareTo(right));
        var words = new List<ulong>();
        for (var c = 0; c < clauses.Count; c++)
        {
            if (c > 0 && clauses[c].AsSpan().SequenceEqual(clauses[c - 1]))
                continue;
            words.Add((ulong)clauses[c].Length);
            words.AddRange(clauses[c]);
        }

        words.Add(ulong.MaxValue);
        foreach (var effect in effects.OrderBy(effect => To(effect.Variable, one, other)))
            words.AddRange([(ulong)To(effect.Variable, one, other), (ulong)effect.Position, effect.From & machine.Variables[effect.Variable].All]);
        return new Content([.. words]);
    }

    private readonly record struct Content(ImmutableArray<ulong> Words)
    {
        public bool Equals(Content other) => Words.AsSpan().SequenceEqual(other.Words.AsSpan());

        public override int GetHashCode()
        {
            var hash = default(HashCode);
            foreach (var word in Words)
                hash.Add(word);
            return hash.ToHashCode();
        }
    }
}
