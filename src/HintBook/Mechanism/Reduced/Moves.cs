using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>One way to move one variable: an edge of its domain transition graph (Jonsson and Bäckström 1998; Helmert 2006).</summary>
/// <param name="Act">The act.</param>
/// <param name="From">Bit p stands for position p: from there it moves the variable.</param>
/// <param name="To">Where it moves it to, which is not among <paramref name="From"/>.</param>
/// <param name="Rest">What the act asks of other variables.</param>
/// <param name="Beside">What else the act moves.</param>
/// <param name="Harmless">
/// Whether nothing can be done any less for what the act moves beside, so that it may be made whenever the variable is to move. That says nothing of what
/// is asked about what it moves beside.
/// </param>
internal sealed record Edge(int Act, ulong From, int To, ImmutableArray<Literal> Rest, ImmutableArray<int> Beside, bool Harmless)
{
    /// <summary>Whether the act changes nothing else.</summary>
    public bool Alone => Beside.IsEmpty;
}

/// <summary>By variable: all the ways in which acts move it, and what its reactions may do. Made once for each machine.</summary>
internal sealed class Moves
{
    private readonly Machine machine;
    private readonly List<Edge>[] edges;
    private readonly ulong[] written;
    private readonly bool[] movedByRules;
    private readonly List<ulong>[] asked;
    private readonly bool[] harmless;
    private readonly List<int>[] rulesReading;

    /// <summary>Reads them off a machine.</summary>
    public Moves(Machine machine)
    {
        this.machine = machine;
        edges = [.. machine.Variables.Select(_ => new List<Edge>())];
        written = new ulong[machine.Variables.Length];
        movedByRules = new bool[machine.Variables.Length];
        asked = [.. machine.Variables.Select(_ => new List<ulong>())];
        rulesReading = [.. machine.Variables.Select(_ => new List<int>())];
        foreach (var (number, rule) in machine.Rules.Index())
        {
            foreach (var effect in rule.Effects)
                movedByRules[effect.Variable] = true;
            foreach (var v in rule.When.SelectMany(clause => clause.Literals).Select(literal => literal.Variable).Distinct())
                rulesReading[v].Add(number);
        }

        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            written[effect.Variable] |= 1UL << effect.Position;
        var all = machine.Acts.SelectMany(act => act.When).Concat(machine.Rules.SelectMany(rule => rule.When)).Concat(machine.Goal);
        foreach (var literal in all.SelectMany(clause => clause.Literals))
            asked[literal.Variable].Add(literal.Accepts);
        harmless = HarmlessRules();
        foreach (var (number, act) in machine.Acts.Index())
            Add(number, act);
    }

    /// <summary>All that moves a variable, acts in order.</summary>
    public IReadOnlyList<Edge> Of(int variable) => edges[variable];

    /// <summary>By variable: the positions that anything puts it in.</summary>
    public IReadOnlyList<ulong> Written => written;

    /// <summary>Whether reactions move a variable.</summary>
    public bool MovedByRules(int variable) => movedByRules[variable];

    /// <summary>
    /// Whether it does no harm if everything that happens by itself when a variable moves has happened already: nothing asks for anything else
    /// than what these reactions give, and nothing gives anything else.
    /// </summary>
    public bool MayReactEarly(int variable) => rulesReading[variable].TrueForAll(rule => harmless[rule]);

    private void Add(int number, Act act)
    {
        foreach (var effect in act.Effects)
        {
            var v = effect.Variable;
            var others = act.Effects.RemoveAll(other => other.Variable == v);
            var harms = !others.All(IsHarmless);
            ImmutableArray<int> beside = [.. others.Select(other => other.Variable)];
            foreach (var clause in act.When)
            {
                var own = clause.Literals.FirstOrDefault(literal => literal.Variable == v, new Literal(v, ulong.MaxValue));
                var from = own.Accepts & effect.From & machine.Variables[v].All & ~(1UL << effect.Position);
                var rest = clause.Literals.RemoveAll(literal => literal.Variable == v);
                if (from != 0)
                    edges[v].Add(new Edge(number, from, effect.Position, rest, beside, !harms));
            }
        }
    }

    // The greatest solution: a rule is harmless unless what it gives isn't, or sets off one that isn't.
    private bool[] HarmlessRules()
    {
        bool[] all = [.. machine.Rules.Select(rule => rule.Effects.All(HarmsNobody))];
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (number, rule) in machine.Rules.Index())
            {
                if (!all[number] || rule.Effects.All(effect => rulesReading[effect.Variable].TrueForAll(next => all[next])))
                    continue;
                all[number] = false;
                changed = true;
            }
        }

        return all;
    }

    private bool IsHarmless(Effect effect) => HarmsNobody(effect) && rulesReading[effect.Variable].TrueForAll(rule => harmless[rule]);

    // Nothing gives anything else, nothing asks for anything else, and it takes place wherever the variable is.
    private bool HarmsNobody(Effect effect) =>
        (written[effect.Variable] & ~(1UL << effect.Position)) == 0
        && machine.Variables[effect.Variable].Gone != effect.Position
        && !machine.Variables[effect.Variable].MayStay(effect)
        && !asked[effect.Variable].Exists(accepts => (accepts >> effect.Position & 1) == 0);
}
