using System.Collections.Immutable;

namespace HintBook.Mechanism.Model;

/// <summary>What becomes of the acts, reactions and goal of a machine when two of its variables are exchanged.</summary>
internal sealed class Exchange
{
    private readonly Machine machine;
    private readonly Content[] acts;
    private readonly Dictionary<Content, int> loose = [];
    private readonly HashSet<Content> rules;
    private readonly Content goal;
    private readonly ILookup<int, int> mentioned;
    private readonly ILookup<int, Rule> mentionedByRules;

    /// <summary>Prepares it: one pass over the machine.</summary>
    public Exchange(Machine machine)
    {
        this.machine = machine;
        acts = [.. machine.Acts.Select(act => Of(act.When, act.Effects, 0, 0))];
        rules = [.. machine.Rules.Select(rule => Of(rule.When, rule.Effects, 0, 0))];
        goal = Of(machine.Goal, [], 0, 0);
        mentioned = Mentioned(acts.Length, a => machine.Acts[a].When, a => machine.Acts[a].Effects, a => a);
        mentionedByRules = Mentioned(machine.Rules.Length, r => machine.Rules[r].When, r => machine.Rules[r].Effects, r => machine.Rules[r]);
        for (var a = 0; a < acts.Length; a++)
        {
            if (machine.Acts[a].Stage < 0)
                loose.TryAdd(acts[a], a);
        }
    }

    /// <summary>Whether exchanging two maps the machine onto itself, and each move of a stage to itself. Their positions and starts are compared too.</summary>
    public bool Keeps(int one, int other) =>
        machine.Variables[one].Positions.Length == machine.Variables[other].Positions.Length
        && machine.Variables[one].Gone == machine.Variables[other].Gone
        && machine.Start[one] == machine.Start[other]
        && Moved(one, other).All(moved => moved.Image >= 0 && (machine.Acts[moved.Act].Stage < 0 || moved.Image == moved.Act))
        && mentionedByRules[one].Concat(mentionedByRules[other]).All(rule => rules.Contains(Of(rule.When, rule.Effects, one, other)))
        && Of(machine.Goal, [], one, other) == goal
        && machine.Behind.All(pair =>
            machine.Behind.TryGetValue(To(pair.Key, one, other), out var behind) && Of(pair.Value, [], one, other) == Of(behind, [], 0, 0));

    /// <summary>The acts that mention one of two variables, each with the act that it becomes: itself, or an act that is no stage's move, or -1 for none.</summary>
    public IEnumerable<(int Act, int Image)> Moved(int one, int other)
    {
        foreach (var act in mentioned[one].Concat(mentioned[other]).Distinct())
        {
            var image = Of(machine.Acts[act].When, machine.Acts[act].Effects, one, other);
            yield return (act, image == acts[act] ? act : loose.GetValueOrDefault(image, -1));
        }
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
