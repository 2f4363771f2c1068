using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// What is known to hold, and to hold for ever, once a variable stands in a position that it was moved to: what every edge there asks for or gives, and what was
/// known where the edge came from. The greatest solution, found by letting go of what some edge doesn't give.
/// </summary>
internal sealed class KnownWhere
{
    private readonly Machine machine;
    private readonly List<Edge> alone;
    private readonly List<Literal> lasting;
    private readonly Bits[] known;

    /// <summary>Finds it.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="variable">The variable.</param>
    /// <param name="targets">The positions that it is ever moved to.</param>
    /// <param name="edges">All that moves it.</param>
    /// <param name="alone">Those that change nothing else and ask only for what lasts.</param>
    public KnownWhere(Machine machine, int variable, ulong targets, List<Edge> edges, List<Edge> alone)
    {
        (this.machine, this.alone) = (machine, alone);
        lasting = [.. alone.SelectMany(edge => edge.Rest).Distinct().Where(literal => !literal.Takes(machine.Start[literal.Variable]))];
        known = [.. Enumerable.Range(0, machine.Variables[variable].Positions.Length).Select(_ => Bits.All(lasting.Count))];
        var given = edges.ConvertAll(Given);
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (e, edge) in edges.Index())
            {
                if ((edge.From >> machine.Start[variable] & 1) != 0)
                    changed |= known[edge.To].And(given[e]);
                for (var from = 0; from < known.Length; from++)
                {
                    if ((edge.From & targets & (1UL << from)) != 0)
                        changed |= known[edge.To].And(Both(given[e], known[from]));
                }
            }
        }
    }

    /// <summary>Where the variable can be moved, one edge after the other, from a position that it was moved to, whatever else is so.</summary>
    public ulong Reached(int from)
    {
        var reached = 1UL << from;
        for (var before = 0UL; before != reached;)
        {
            before = reached;
            foreach (var edge in alone)
            {
                for (var at = 0; at < known.Length && (reached >> edge.To & 1) == 0; at++)
                {
                    if ((edge.From & reached & (1UL << at)) != 0 && edge.Rest.All(literal => Holds(literal, known[from], known[at])))
                        reached |= 1UL << edge.To;
                }
            }
        }

        return reached;
    }

    private bool Holds(Literal literal, Bits one, Bits other) =>
        lasting.IndexOf(literal) is var number && (number < 0 || one[number] || other[number]);

    private static Bits Both(Bits one, Bits other)
    {
        if (one.Size == 0)
            return one;
        var both = one.Copy();
        both.Or(other);
        return both;
    }

    private Bits Given(Edge edge)
    {
        var given = new Bits(lasting.Count);
        for (var i = 0; i < lasting.Count; i++)
            given[i] = IsGiven(lasting[i], edge);
        return given;
    }

    private bool IsGiven(Literal literal, Edge after) =>
        after.Rest.Any(asked => asked.Variable == literal.Variable && (asked.Accepts & machine.Variables[asked.Variable].All & ~literal.Accepts) == 0)
        || machine.Acts[after.Act].Effects.Any(effect =>
            effect.Variable == literal.Variable && literal.Takes(effect.Position) && (machine.Variables[effect.Variable].All & ~effect.From) == 0);
}
