using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// Which states an act may have come from: what it changed stood anywhere that its needs allow. There may be some among them
/// from which it does not lead there; whoever asks tries.
/// </summary>
internal sealed class Predecessors
{
    private const int Most = 4096;
    private readonly Machine machine;
    private readonly Layout layout;
    private readonly (ulong Mask, ulong Set)[] leaves;

    /// <summary>Prepares them.</summary>
    public Predecessors(Machine machine, Layout layout)
    {
        (this.machine, this.layout) = (machine, layout);
        leaves = [.. machine.Acts.Select(Leaves)];
    }

    /// <summary>The candidates, or null where there are too many or reactions may have had a hand in it.</summary>
    public HashSet<ulong>? Of(ulong state)
    {
        if (!machine.Rules.IsEmpty)
            return null;
        var found = new HashSet<ulong>();
        for (var a = 0; a < leaves.Length; a++)
        {
            if ((state & leaves[a].Mask) != leaves[a].Set)
                continue;
            foreach (var clause in machine.Acts[a].When)
            {
                if (!Come(machine.Acts[a], clause, 0, state, found) || found.Count > Most)
                    return null;
            }
        }

        return found;
    }

    // What an act may leave where it is is not asked for.
    private (ulong Mask, ulong Set) Leaves(Act act)
    {
        var (mask, set) = (default(Word64), default(Word64));
        foreach (var effect in act.Effects.Where(effect => (machine.Variables[effect.Variable].All & ~effect.From) == 0))
        {
            var field = layout.Fields[effect.Variable];
            mask = mask.With(field.Bit, field.Mask, field.Mask);
            set = set.With(field.Bit, field.Mask, effect.Position);
        }

        return (mask.Word, set.Word);
    }

    private bool Come(Act act, Clause clause, int effect, ulong origin, HashSet<ulong> found)
    {
        if (effect == act.Effects.Length)
        {
            if (Holds(clause, origin))
                found.Add(origin);
            return found.Count <= Most;
        }

        var (bit, mask) = layout.Fields[act.Effects[effect].Variable];
        for (var position = 0; position < machine.Variables[act.Effects[effect].Variable].Positions.Length; position++)
        {
            if (!Come(act, clause, effect + 1, new Word64(origin).With(bit, mask, position).Word, found))
                return false;
        }

        return true;
    }

    private bool Holds(Clause clause, ulong state)
    {
        foreach (var literal in clause.Literals)
        {
            if (!literal.Takes(layout.At(new Word64(state), literal.Variable)))
                return false;
        }

        return true;
    }
}
