using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// The acts that at once bring a box nearer to how it is shipped, kept up to date from state to state: after an act only those are looked at again
/// that have to do with what it moved. Of a box with reactions none is known.
/// </summary>
internal sealed class LeadingActs
{
    private readonly Machine back;
    private readonly int[] ranked;
    private readonly ulong[] shipped;
    private readonly int[] state;

    // By variable the ranks of the acts that ask for it or move it.
    private readonly List<int>[] concerned;
    private readonly Bits leading;

    /// <summary>Looks at all acts once.</summary>
    /// <param name="back">The machine of putting back.</param>
    /// <param name="ranked">The acts in the order in which they are tried.</param>
    /// <param name="shipped">By variable the positions in which it is as shipped.</param>
    /// <param name="from">The first state.</param>
    public LeadingActs(Machine back, int[] ranked, ulong[] shipped, int[] from)
    {
        (this.back, this.ranked, this.shipped, state) = (back, ranked, shipped, [.. from]);
        leading = new Bits(ranked.Length);
        concerned = [.. back.Variables.Select(_ => new List<int>())];
        for (var v = 0; v < state.Length; v++)
            Wrong += IsWrong(v, state[v]);
        if (!back.Rules.IsEmpty)
            return;
        for (var rank = 0; rank < ranked.Length; rank++)
        {
            var act = back.Acts[ranked[rank]];
            foreach (var effect in act.Effects)
                concerned[effect.Variable].Add(rank);
            foreach (var clause in act.When)
            {
                foreach (var literal in clause.Literals)
                    concerned[literal.Variable].Add(rank);
            }

            leading[rank] = Leads(rank);
        }
    }

    /// <summary>How many variables aren't as shipped.</summary>
    public int Wrong { get; private set; }

    /// <summary>The state.</summary>
    public int[] State => state;

    /// <summary>The first act in the order that leads nearer by itself; -1 for none.</summary>
    public int First => leading.First is >= 0 and var rank ? ranked[rank] : -1;

    /// <summary>Makes an act that leads.</summary>
    public void Make(int act)
    {
        foreach (var effect in back.Acts[act].Effects)
        {
            if (effect.Applies(state[effect.Variable]))
                Put(effect.Variable, effect.Position);
        }

        foreach (var effect in back.Acts[act].Effects)
            LookAgain(effect.Variable);
    }

    /// <summary>Goes on from another state.</summary>
    public void GoOnFrom(int[] other)
    {
        var moved = new List<int>();
        for (var v = 0; v < state.Length; v++)
        {
            if (state[v] == other[v])
                continue;
            Put(v, other[v]);
            moved.Add(v);
        }

        moved.ForEach(LookAgain);
    }

    private void Put(int variable, int position)
    {
        Wrong += IsWrong(variable, position) - IsWrong(variable, state[variable]);
        state[variable] = position;
    }

    private void LookAgain(int variable)
    {
        foreach (var rank in concerned[variable])
            leading[rank] = Leads(rank);
    }

    private bool Leads(int rank)
    {
        var (act, more) = (back.Acts[ranked[rank]], 0);
        foreach (var effect in act.Effects)
        {
            if (effect.Applies(state[effect.Variable]))
                more += IsWrong(effect.Variable, effect.Position) - IsWrong(effect.Variable, state[effect.Variable]);
        }

        return more < 0 && Stepper.Holds(act.When, state);
    }

    private int IsWrong(int variable, int position) => (int)(~(shipped[variable] >> position) & 1);
}
