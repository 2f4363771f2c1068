using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// What can be attained if nothing that was once so ever stopped being so (the delete relaxation: Bonet and Geffner 2001). What isn't
/// attained even then never is; whatever is found here explains why something can't be reached.
/// </summary>
internal sealed class Waiting
{
    private readonly Machine machine;
    private readonly ulong[] attained;

    /// <summary>Attains whatever can be, from the shipped box.</summary>
    public Waiting(Machine machine)
    {
        this.machine = machine;
        attained = machine.Start.Select(position => 1UL << position).ToArray();
        var all = machine.Acts.Select(act => (act.When, act.Effects)).Concat(machine.Rules.Select(rule => (rule.When, rule.Effects))).ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var effect in all.Where(one => Holds(one.When)).SelectMany(one => one.Effects))
            {
                changed |= (attained[effect.Variable] >> effect.Position & 1) == 0;
                attained[effect.Variable] |= 1UL << effect.Position;
            }
        }
    }

    /// <summary>By variable: the positions that it may come to have; no others ever.</summary>
    public IReadOnlyList<ulong> Attainable => attained;

    /// <summary>Whether one of some clauses may come to hold.</summary>
    public bool Holds(IEnumerable<Clause> when) => when.Any(clause => clause.Literals.All(Holds));

    /// <summary>
    /// The chain of what waits for what, from a condition that never holds down to something that nothing gives, or round a circle: each
    /// entry is a position that is asked for and the step that would give it, null where there is none. Empty if the condition may hold.
    /// </summary>
    public List<(Literal Asked, Step? Giver)> Chain(IReadOnlyCollection<Clause> when)
    {
        var chain = new List<(Literal, Step?)>();
        var seen = new HashSet<Literal>();
        while (!Holds(when))
        {
            var missing = when
                .Select(clause => clause.Literals.Where(literal => !Holds(literal)).ToArray())
                .OrderBy(literals => literals.Length)
                .FirstOrDefault();
            if (missing is null)
                break;
            var asked = missing[0];
            var givers = machine.Acts.Where(act => act.Effects.Any(e => e.Variable == asked.Variable && asked.Takes(e.Position)))
                .Select(act => (Step: (Step?)act.Step, act.When))
                .Concat(machine.Rules.Where(rule => rule.Effects.Any(e => e.Variable == asked.Variable && asked.Takes(e.Position)))
                    .Select(rule => (Step: (Step?)null, rule.When)))
                .OrderBy(giver => giver.When.IsEmpty ? int.MaxValue : giver.When.Min(clause => clause.Literals.Count(l => !Holds(l))))
                .ToList();
            chain.Add((asked, givers.Count > 0 ? givers[0].Step : null));
            if (givers.Count == 0 || !seen.Add(asked))
                break;
            when = givers[0].When;
        }

        return chain;
    }

    /// <summary>The chain as a sentence: <c>the drawer: open waits for the key: in-hand, which waits for the drawer: open again</c>.</summary>
    public string Explain(string what, IReadOnlyCollection<Clause> when)
    {
        var chain = Chain(when);
        if (chain.Count == 0)
            return $"{what} asks for things that are never so at the same time";
        var names = chain.Select(link => Say(link.Asked)).ToList();
        var said = $"{what} waits for {string.Join(", which waits for ", names)}";
        if (names[..^1].Contains(names[^1]))
            return $"{said} again: a circle";
        return chain[^1].Giver is null ? $"{said}, which nothing gives" : said;
    }

    private string Say(Literal literal)
    {
        var variable = machine.Variables[literal.Variable];
        if (variable.Named is null)
            return $"{variable.Id.Split('/')[0]} done";
        var wanted = variable.Positions.Where((_, p) => literal.Takes(p)).ToArray();
        return $"{variable.Id}: {string.Join(" or ", wanted)}";
    }

    private bool Holds(Literal literal) => (attained[literal.Variable] & literal.Accepts) != 0;
}
