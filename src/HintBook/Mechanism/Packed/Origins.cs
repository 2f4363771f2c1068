using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>
/// Which states an act may have come from: what it changed stood anywhere that its needs allow. There may be some among them
/// from which it does not lead there; whoever asks tries.
/// </summary>
internal sealed class Origins(Machine machine, Layout layout)
{
    private const int Most = 4096;

    /// <summary>The candidates, or null where there are too many or reactions may have had a hand in it.</summary>
    public HashSet<ulong>? Of(ulong state)
    {
        if (!machine.Rules.IsEmpty)
            return null;
        var found = new HashSet<ulong>();
        foreach (var act in machine.Acts.Where(act => act.Effects.All(effect => Stands(effect, state))))
        {
            foreach (var clause in act.When)
            {
                IEnumerable<ulong> origins = [state];
                foreach (var effect in act.Effects)
                {
                    var asked = clause.Literals.FirstOrDefault(literal => literal.Variable == effect.Variable, new Literal(effect.Variable, ulong.MaxValue));
                    var (bit, mask) = layout.Fields[effect.Variable];
                    var positions = Enumerable.Range(0, machine.Variables[effect.Variable].Positions.Length).Where(asked.Takes).ToList();
                    origins = origins.SelectMany(origin => positions.Select(position => new Word64(origin).With(bit, mask, position).Word));
                }

                found.UnionWith(origins.Take(Most + 1));
                if (found.Count > Most)
                    return null;
            }
        }

        return found;
    }

    // What is gone for good stays gone, whatever an act does.
    private bool Stands(Effect effect, ulong state)
    {
        var position = layout.At(new Word64(state), effect.Variable);
        return position == effect.Position || (position >= 0 && position == machine.Variables[effect.Variable].Gone);
    }
}
