using System.Collections.Immutable;
using System.Numerics;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Parts that need not be remembered: free parts, doors that open and shut, dials. Once such a part has been moved it can be put, without
/// moving anything but parts of the same kind, in any of the positions that it is ever moved to, and for ever. It gets one position
/// more, "anywhere", which every condition accepts that accepts one of those, and whatever moves it leads there.
/// </summary>
internal sealed class FreeParts
{
    // Rings that each need all smaller ones moved can be anywhere too, but each time that takes twice as long.
    private const int MostSteps = 256;
    private readonly Machine machine;
    private readonly Moves moves;
    private readonly IReadOnlySet<int> without;
    private readonly IReadOnlySet<int> remembered;
    private readonly Dictionary<int, int> order = [];
    private readonly Dictionary<int, ulong> places = [];
    private readonly Dictionary<int, long> steps = [];
    private readonly HashSet<int> forLater;

    /// <summary>Finds them.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="moves">What moves its variables.</param>
    /// <param name="remembered">Variables whose positions are asked about, which therefore must be remembered.</param>
    /// <param name="without">Acts that may not be there: a part is free only if it is so with them and without them.</param>
    public FreeParts(Machine machine, Moves moves, IReadOnlySet<int> remembered, IReadOnlySet<int> without)
    {
        (this.machine, this.moves, this.without, this.remembered) = (machine, moves, without, remembered);
        var open = Enumerable.Range(0, machine.Variables.Length)
            .Where(v =>
                !remembered.Contains(v)
                && moves.Of(v).Count > 0
                && !moves.MovedByRules(v)
                && machine.Variables[v].Positions.Length < Machine.MostPositions
                && moves.MayReactEarly(v))
            .ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var v in open.ToList())
            {
                if (Roams(v, NoActs) is not { } found || (Loses(v, without) && Roams(v, without) != found))
                    continue;
                var most = StepsToMove(v, found);
                if (most > MostSteps)
                    continue;
                open.Remove(v);
                places[v] = found;
                steps[v] = most;
                order[v] = order.Count;
                changed = true;
            }
        }

        forLater = [.. order.Keys.Where(NobodyNotices)];
        Reduced = order.Count == 0 ? machine : Freed();
    }

    /// <summary>The machine in which they may be anywhere; acts have the same numbers.</summary>
    public Machine Reduced { get; }

    /// <summary>No acts.</summary>
    public static IReadOnlySet<int> NoActs { get; } = new HashSet<int>();

    /// <summary>How many there are.</summary>
    public int Count => order.Count;

    /// <summary>Whether a variable is one of them.</summary>
    public bool Contains(int variable) => order.ContainsKey(variable);

    /// <summary>The place of one of them in an order in which each needs at most those before it to be moved.</summary>
    public int PlaceOf(int variable) => order[variable];

    /// <summary>All that moves one of them, but what may not be there.</summary>
    public IEnumerable<Edge> EdgesOf(int variable) => moves.Of(variable).Where(edge => !without.Contains(edge.Act));

    /// <summary>
    /// Whether moving one of them may take a stage's move that needn't have been made when the part was first moved: then what a stage needs done doesn't
    /// follow from what is certain before it.
    /// </summary>
    public bool MayNeedStages => order.Keys.Any(v =>
    {
        var stages = moves.Of(v).Where(edge => machine.Acts[edge.Act].Stage >= 0).Select(edge => edge.Act).Distinct().ToList();
        return stages.Count > 1
            || (stages.Count == 1 && moves.Of(v).Any(edge => edge.Act != stages[0] && (edge.From >> machine.Start[v] & 1) != 0));
    });

    /// <summary>Whether an act may be made whenever a part is to move: it harms nobody, and moves nothing beside that is asked about.</summary>
    public bool MayBeMade(Edge edge) => edge.Harmless && !edge.Beside.Any(remembered.Contains);

    /// <summary>Whether one of them needn't be moved before one of its positions is wanted.</summary>
    public bool CanWait(int variable) => forLater.Contains(variable);

    /// <summary>Where a part may be "anywhere": its position in the reduced machine.</summary>
    public int Anywhere(int variable) => machine.Variables[variable].Positions.Length;

    /// <summary>What some conditions are in the reduced machine.</summary>
    public ImmutableArray<Clause> Widened(ImmutableArray<Clause> when) => [.. when.Select(clause => new Clause([.. clause.Literals.Select(Widened)]))];

    /// <summary>What a condition is in the reduced machine.</summary>
    public Literal Widened(Literal literal) => places.TryGetValue(literal.Variable, out var anywhere) && (anywhere & literal.Accepts) != 0
        ? literal with { Accepts = literal.Accepts | (1UL << Anywhere(literal.Variable)) }
        : literal with { Accepts = literal.Accepts & machine.Variables[literal.Variable].All };

    /// <summary>Whether all of them would still be free, as they are, if some acts were never made.</summary>
    /// <param name="acts">The acts.</param>
    public bool AreFreeWithout(IReadOnlySet<int> acts) => acts.SelectMany(act => machine.Acts[act].Effects)
        .Select(effect => effect.Variable).Where(Contains).Distinct().All(v => Roams(v, acts) == places[v]);

    /// <summary>Whether all of them would still be free if one of them were never put in a position.</summary>
    public bool AreFreeWithout(int variable, int position) =>
        Roams(variable, NoActs, position) is not null
        && !order.Keys.Any(other => moves.Of(other).Any(edge => edge.Rest.Any(literal => literal.Variable == variable)));

    /// <summary>The real way that a way of the reduced machine stands for: free parts are moved as soon as something asks for their position.</summary>
    /// <param name="way">Acts of the reduced machine.</param>
    /// <param name="then">What must hold at the end beside.</param>
    public List<int> Real(IEnumerable<int> way, ImmutableArray<Clause> then) => order.Count == 0 ? [.. way] : new Carrying(this, machine).Out(way, then);

    /// <summary>
    /// A real way that makes the same acts, in a box that only gains, in an order that moves free parts seldom: whatever can be done as they stand
    /// is done first.
    /// </summary>
    /// <param name="acts">Acts of the reduced machine, in an order in which they can be made.</param>
    /// <param name="then">What must hold at the end beside.</param>
    public List<int> Gathered(IEnumerable<int> acts, ImmutableArray<Clause> then) => new Carrying(this, machine).Gathered([.. acts], then);

    // How many steps it takes at the most to bring one from anywhere to anywhere, others that are in the way included.
    private long StepsToMove(int variable, ulong anywhere) => (BitOperations.PopCount(anywhere) - 1) * moves.Of(variable).Where(MayBeMade)
        .Max(edge => 1 + edge.Rest.Sum(literal => steps.GetValueOrDefault(literal.Variable)));

    private bool Loses(int variable, IReadOnlySet<int> without) => without.Count > 0 && moves.Of(variable).Any(edge => without.Contains(edge.Act));

    // Where a variable can be whenever that is wanted once it has been moved; null if it isn't so.
    private ulong? Roams(int variable, IReadOnlySet<int> without, int never = -1)
    {
        var edges = moves.Of(variable).Where(edge => !without.Contains(edge.Act) && edge.To != never).ToList();
        var start = 1UL << machine.Start[variable];
        var (met, targets) = (start, 0UL);
        for (var before = 0UL; before != met;)
        {
            before = met;
            foreach (var edge in edges.Where(edge => (edge.From & before) != 0))
                (met, targets) = (met | (1UL << edge.To), targets | (1UL << edge.To));
        }

        if (BitOperations.PopCount(targets) < 2)
            return null;
        var alone = edges.FindAll(edge => MayBeMade(edge) && edge.Rest.All(literal => Lasts(literal, variable)));
        return new KnownWhere(machine, variable, targets, edges, alone).Connects() ? targets : null;
    }

    // Whether nobody notices if it isn't moved before one of its positions is wanted: what lets it move lasts, and no earlier one moves by it.
    private bool NobodyNotices(int variable) =>
        (places[variable] >> machine.Start[variable] & 1) != 0
        && moves.Of(variable).All(edge => MayBeMade(edge) && edge.Rest.All(literal => Lasts(literal, variable)))
        && !order.Any(other => other.Value < order[variable] && moves.Of(other.Key).Any(edge => edge.Rest.Any(literal => literal.Variable == variable)));

    // Whether what holds once holds for ever, those parts being put where they are wanted that were found to be free before.
    private bool Lasts(Literal literal, int variable) =>
        places.TryGetValue(literal.Variable, out var anywhere)
        && (!order.TryGetValue(variable, out var place) || order[literal.Variable] < place)
        ? (anywhere & literal.Accepts) != 0
        : (moves.Written[literal.Variable] & ~literal.Accepts) == 0;

    private Effect Freed(Effect effect) => !Contains(effect.Variable) ? effect : new Effect(
        effect.Variable,
        Anywhere(effect.Variable),
        effect.From & machine.Variables[effect.Variable].All & ~(1UL << effect.Position));

    private Machine Freed() => machine with
    {
        Variables =
        [
            .. machine.Variables.Select((variable, v) => Contains(v) ? variable with { Positions = variable.Positions.Add("anywhere") } : variable),
        ],
        Acts = [.. machine.Acts.Select(act => act with { When = Widened(act.When), Effects = [.. act.Effects.Select(Freed)] })],
        Rules = [.. machine.Rules.Select(rule => rule with { When = Widened(rule.When) })],
        Goal = Widened(machine.Goal),
    };
}
