using System.Globalization;
using System.Text;
using HintBook.Mechanism.Model;

namespace HintBook.Tests.Mechanism;

/// <summary>Writes a box for a general-purpose model checker: one process, one step an act.</summary>
internal static class Promela
{
    /// <summary>The model of a box without reactions.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="watched">Whether a solved box is an error, which the checker then shows the shortest way to.</param>
    public static string Of(Machine machine, bool watched = false)
    {
        var text = new StringBuilder();
        for (var v = 0; v < machine.Variables.Length; v++)
            text.Append(CultureInfo.InvariantCulture, $"byte v{v} = {machine.Start[v]};\n");
        text.Append("active proctype box() {\ndo\n");
        foreach (var act in machine.Acts.Where(act => !act.When.IsEmpty && !act.Effects.IsEmpty))
        {
            var effects = string.Join("; ", act.Effects.Select(effect => Of(machine, effect)));
            text.Append(CultureInfo.InvariantCulture, $":: d_step {{ {Any(act.When.Select(clause => Of(machine, clause)))} -> {effects} }}\n");
        }

        if (watched && !machine.Goal.IsEmpty)
            text.Append(CultureInfo.InvariantCulture, $":: d_step {{ {Any(machine.Goal.Select(clause => Of(machine, clause)))} -> assert(false) }}\n");
        return text.Append(":: d_step { false -> skip }\nod\n}\n").ToString();
    }

    // From some positions an effect takes nothing away.
    private static string Of(Machine machine, Effect effect)
    {
        var stays = Enumerable.Range(0, machine.Variables[effect.Variable].Positions.Length).Where(p => !effect.Applies(p) && p != effect.Position).ToArray();
        var stay = string.Join(" || ", stays.Select(p => Invariant($"v{effect.Variable} == {p}")));
        return stays.Length == 0
            ? Invariant($"v{effect.Variable} = {effect.Position}")
            : Invariant($"v{effect.Variable} = ({stay} -> v{effect.Variable} : {effect.Position})");
    }

    private static string Of(Machine machine, Clause clause) =>
        clause.Literals.IsEmpty ? "true" : $"({string.Join(" && ", clause.Literals.Select(literal => Of(machine, literal)))})";

    private static string Of(Machine machine, Literal literal) => Any(
        from position in Enumerable.Range(0, machine.Variables[literal.Variable].Positions.Length)
        where literal.Takes(position)
        select Invariant($"v{literal.Variable} == {position}"));

    private static string Any(IEnumerable<string> alternatives) => $"({string.Join(" || ", alternatives)})";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
