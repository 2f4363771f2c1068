using System.Numerics;
using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>What makes a box hard to look through, and what would settle a question that was left open.</summary>
internal static class Hardness
{
    private const int MostNamed = 3;

    /// <summary>Help for a claim that isn't proved: what to do about the reason.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="why">The reason, as <see cref="Claim.NotProved"/> has it.</param>
    public static string Help(Machine machine, string why)
    {
        if (machine.RefusedHelp is { } refused)
            return refused;
        if (Speaks(why, "its reactions"))
            return "It will be settled once its reactions come to rest: mend those first (HB2120, HB2121).";
        if (Speaks(why, "can't be opened"))
            return "It will be settled once the box can be opened: mend that first (HB2201).";
        if (Speaks(why, "was stopped"))
            return "Let it run to its end.";
        var further = Speaks(why, "MiB") ? "“hintbook solve” and “hintbook reset” look further with “--memory”; "
            : Speaks(why, "seconds") ? "“hintbook solve” and “hintbook reset” look longer with “--time”; "
            : "";
        var parts = Parts(machine);
        var hard = parts.Length == 0 ? "" : $"What makes it hard is how freely {Words.List(parts)} can move. ";
        var less = $"{(further.Length == 0 ? "F" : "f")}ewer positions, or moves that ask for more, leave less to look at.";
        return $"{hard}{further}{less}";
    }

    // The reasons are made in Budget and Exploration. What stands in front of one says where it held.
    private static bool Speaks(string why, string of) => why.Contains(of, StringComparison.Ordinal);

    // Those with the most positions that something leads to and something leads away from again.
    private static string[] Parts(Machine machine)
    {
        var written = new ulong[machine.Variables.Length];
        foreach (var effect in machine.Acts.SelectMany(act => act.Effects).Concat(machine.Rules.SelectMany(rule => rule.Effects)))
            written[effect.Variable] |= 1UL << effect.Position;
        return
        [
            .. machine.Variables.Index()
                .Where(variable => variable.Item.Named is Part or Thing && BitOperations.PopCount(written[variable.Index]) > 1)
                .OrderByDescending(variable => BitOperations.PopCount(written[variable.Index])).ThenBy(variable => variable.Index)
                .Take(MostNamed).Select(variable => $"“{variable.Item.Id}”"),
        ];
    }
}
