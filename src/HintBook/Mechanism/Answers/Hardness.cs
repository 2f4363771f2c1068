using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>What makes a box hard to look through, and what would settle a question that a limit left open.</summary>
internal static class Hardness
{
    private const int MostNamed = 3;

    /// <summary>Help for a claim that isn't proved: the parts that multiply the states, and what to do.</summary>
    public static string Help(Machine machine)
    {
        const string Settle = "“hintbook solve” and “hintbook reset” look further with “--memory”; "
            + "fewer positions, or moves that ask for more, leave less to look at.";
        var parts = Parts(machine);
        return parts.Length == 0 ? Settle : $"What makes it hard is how freely {Words.List(parts)} can move. {Settle}";
    }

    // Those with the most positions that something leads to and something leads away from again.
    private static string[] Parts(Machine machine)
    {
        var written = new ulong[machine.Variables.Length];
        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            written[effect.Variable] |= 1UL << effect.Position;
        return
        [
            .. machine.Variables.Index()
                .Where(variable => variable.Item.Named is Part or Thing && System.Numerics.BitOperations.PopCount(written[variable.Index]) > 1)
                .OrderByDescending(variable => System.Numerics.BitOperations.PopCount(written[variable.Index])).ThenBy(variable => variable.Index)
                .Take(MostNamed).Select(variable => $"“{variable.Item.Id}”"),
        ];
    }
}
