using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// What can be attained if nothing that was once so ever stopped being so, in the order of attaining it, and of each thing what it came
/// from. Each literal is looked at once, so it takes no longer than reading the machine.
/// </summary>
internal sealed class DeleteRelaxation
{
    private const int Never = -2;
    private const int AtTheStart = -1;
    private readonly Machine machine;
    private readonly int[] firstPlace;
    private readonly int[] giver;
    private readonly int[] firstClause;
    private readonly int[] firstLiteral;
    private readonly int[] left;
    private readonly int[] metBy;
    private readonly int[] chosen;
    private readonly int[] rank;
    private readonly List<int> inOrder = [];
    private readonly ulong[] attained;
    private readonly List<(int Event, Effect Effect)> waiting = [];

    /// <summary>Attains whatever can be, from the shipped box.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="without">An act that is never made, or -1.</param>
    public DeleteRelaxation(Machine machine, int without = -1)
    {
        this.machine = machine;
        Events = machine.Acts.Length + machine.Rules.Length;
        firstPlace = Sums(machine.Variables.Length, v => machine.Variables[v].Positions.Length);
        giver = new int[firstPlace[^1]];
        Array.Fill(giver, Never);
        firstClause = Sums(Events + 1, e => WhenOf(e).Length);
        var clauses = Enumerable.Range(0, Events + 1).SelectMany(e => WhenOf(e)).ToArray();
        firstLiteral = Sums(clauses.Length, c => clauses[c].Literals.Length);
        left = [.. clauses.Select(clause => clause.Literals.Length)];
        metBy = new int[firstLiteral[^1]];
        Array.Fill(metBy, -1);
        chosen = new int[Events + 1];
        Array.Fill(chosen, -1);
        rank = [.. chosen];
        attained = new ulong[machine.Variables.Length];
        Spread(clauses, without);
    }

    /// <summary>How many acts and reactions there are; acts have the first numbers.</summary>
    public int Events { get; }

    /// <summary>The number that stands for the goal.</summary>
    public int Goal => Events;

    /// <summary>What an act or reaction asks for, or the goal.</summary>
    public ImmutableArray<Clause> WhenOf(int e) =>
        e < machine.Acts.Length ? machine.Acts[e].When : e < Events ? machine.Rules[e - machine.Acts.Length].When : machine.Goal;

    /// <summary>What an act or reaction changes.</summary>
    public ImmutableArray<Effect> EffectsOf(int e) =>
        e < machine.Acts.Length ? machine.Acts[e].Effects : e < Events ? machine.Rules[e - machine.Acts.Length].Effects : [];

    /// <summary>By variable: the positions that it may come to have; no others ever.</summary>
    public IReadOnlyList<ulong> Attained => attained;

    /// <summary>Whether an act, a reaction or the goal ever comes to hold.</summary>
    public bool Happens(int e) => rank[e] >= 0;

    /// <summary>Its place in the order of coming to hold, or -1.</summary>
    public int RankOf(int e) => rank[e];

    /// <summary>Those of its clauses that ever come to hold.</summary>
    public IEnumerable<Clause> Met(int e)
    {
        for (var c = firstClause[e]; c < firstClause[e + 1]; c++)
        {
            if (left[c] == 0)
                yield return WhenOf(e)[c - firstClause[e]];
        }
    }

    /// <summary>All acts that ever come to be possible, in an order in which each is possible when those before it have been made.</summary>
    public IEnumerable<int> Acts => inOrder.Where(e => e < machine.Acts.Length);

    /// <summary>
    /// The acts from which something that happens comes, in such an order; it is not among them itself.
    /// </summary>
    public List<int> PlanOf(int e)
    {
        var needed = new HashSet<int>();
        var open = new Stack<int>([e]);
        while (open.TryPop(out var at))
        {
            for (var l = firstLiteral[chosen[at]]; l < firstLiteral[chosen[at] + 1]; l++)
            {
                if (giver[metBy[l]] is >= 0 and var from && needed.Add(from))
                    open.Push(from);
            }
        }

        return [.. needed.Where(at => at < machine.Acts.Length).OrderBy(at => rank[at])];
    }

    private void Spread(Clause[] clauses, int without)
    {
        var eventOf = new int[clauses.Length];
        for (var e = 0; e <= Events; e++)
            Array.Fill(eventOf, e, firstClause[e], firstClause[e + 1] - firstClause[e]);
        var firstWatch = Watches(clauses, out var watches);
        var open = new Queue<(int Variable, int Position)>();
        for (var v = 0; v < machine.Variables.Length; v++)
            Attain(v, machine.Start[v], AtTheStart);
        for (var c = 0; c < clauses.Length; c++)
        {
            if (left[c] == 0)
                Hold(c);
        }

        while (open.TryDequeue(out var place))
        {
            for (var w = firstWatch[place.Variable]; w < firstWatch[place.Variable + 1]; w++)
            {
                var (c, l, accepts) = watches[w];
                if (metBy[l] >= 0 || (accepts >> place.Position & 1) == 0)
                    continue;
                metBy[l] = firstPlace[place.Variable] + place.Position;
                if (--left[c] == 0)
                    Hold(c);
            }
        }

        void Hold(int c)
        {
            var e = eventOf[c];
            if (e == without || rank[e] >= 0)
                return;
            chosen[e] = c;
            rank[e] = inOrder.Count;
            inOrder.Add(e);
            foreach (var effect in EffectsOf(e))
            {
                if ((attained[effect.Variable] & effect.From) != 0)
                    Attain(effect.Variable, effect.Position, e);
                else
                    waiting.Add((e, effect));
            }
        }

        void Attain(int variable, int position, int by)
        {
            ref var known = ref giver[firstPlace[variable] + position];
            if (known != Never)
                return;
            known = by;
            attained[variable] |= 1UL << position;
            open.Enqueue((variable, position));
            for (var w = waiting.Count - 1; w >= 0; w--)
            {
                var (later, effect) = waiting[w];
                if (effect.Variable != variable || !effect.Applies(position))
                    continue;
                waiting.RemoveAt(w);
                Attain(effect.Variable, effect.Position, later);
                w = waiting.Count;
            }
        }
    }

    private int[] Watches(Clause[] clauses, out (int Clause, int Literal, ulong Accepts)[] watches)
    {
        var counts = new int[machine.Variables.Length];
        foreach (var clause in clauses)
        {
            foreach (var literal in clause.Literals)
                counts[literal.Variable]++;
        }

        var first = Sums(counts.Length, v => counts[v]);
        var next = first.ToArray();
        watches = new (int, int, ulong)[first[^1]];
        for (var c = 0; c < clauses.Length; c++)
        {
            var l = firstLiteral[c];
            foreach (var literal in clauses[c].Literals)
                watches[next[literal.Variable]++] = (c, l++, literal.Accepts);
        }

        return first;
    }

    private static int[] Sums(int count, Func<int, int> of)
    {
        var sums = new int[count + 1];
        for (var i = 0; i < count; i++)
            sums[i + 1] = sums[i] + of(i);
        return sums;
    }
}
