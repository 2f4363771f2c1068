using System.Numerics;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// What is known to hold, and to hold for ever, once a variable stands in a position that it was moved to: what every edge there asks for or gives,
/// and what was known where the edge came from. The greatest solution, found by letting go of what some edge doesn't give.
/// </summary>
internal sealed class KnownWhere
{
    private readonly Machine machine;
    private readonly List<Edge> alone;
    private readonly ulong targets;
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
        (this.machine, this.alone, this.targets) = (machine, alone, targets);
        lasting = [.. alone.SelectMany(edge => edge.Rest).Distinct().Where(literal => !literal.Takes(machine.Start[literal.Variable]))];
        known = [.. Enumerable.Range(0, machine.Variables[variable].Positions.Length).Select(_ => Bits.All(lasting.Count))];
        var given = edges.ConvertAll(Given);
        for (var changed = lasting.Count > 0; changed;)
        {
            changed = false;
            foreach (var (e, edge) in edges.Index())
            {
                if ((edge.From >> machine.Start[variable] & 1) != 0)
                    changed |= known[edge.To].And(given[e]);
                foreach (var from in Members(edge.From & targets))
                    changed |= known[edge.To].And(Both(given[e], known[from]));
            }
        }
    }

    /// <summary>Whether the variable can be moved from each of its targets to all of them, whatever else is so.</summary>
    public bool Connects()
    {
        var (next, before) = (new ulong[known.Length], new ulong[known.Length]);
        foreach (var edge in alone)
        {
            foreach (var at in Members(edge.From & targets).Where(at => edge.Rest.All(literal => Holds(literal, known[at], known[at]))))
            {
                next[at] |= 1UL << edge.To;
                before[edge.To] |= 1UL << at;
            }
        }

        var first = BitOperations.TrailingZeroCount(targets);
        return (All(next, first) && All(before, first)) || Members(targets).All(from => (targets & ~Reached(from)) == 0);
    }

    private bool All(ulong[] next, int from)
    {
        var (reached, open) = (1UL << from, 1UL << from);
        while (open != 0)
        {
            var at = BitOperations.TrailingZeroCount(open);
            open = (open & ~(1UL << at)) | (next[at] & ~reached);
            reached |= next[at];
        }

        return (targets & ~reached) == 0;
    }

    // What is known where it stands at first still holds wherever it goes from there.
    private ulong Reached(int from)
    {
        var reached = 1UL << from;
        for (var before = 0UL; before != reached;)
        {
            before = reached;
            foreach (var edge in alone)
            {
                if ((reached >> edge.To & 1) == 0
                    && Members(edge.From & reached).Any(at => edge.Rest.All(literal => Holds(literal, known[from], known[at]))))
                {
                    reached |= 1UL << edge.To;
                }
            }
        }

        return reached;
    }

    private static IEnumerable<int> Members(ulong positions)
    {
        for (; positions != 0; positions &= positions - 1)
            yield return BitOperations.TrailingZeroCount(positions);
    }

    private bool Holds(Literal literal, Bits one, Bits other) =>
        lasting.IndexOf(literal) is var number && (number < 0 || one[number] || other[number]);

    private static Bits Both(Bits one, Bits other)
    {
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
