using System.Globalization;
using System.Text;
using HintBook.Mechanism.Model;

namespace HintBook.Benchmarks.Mechanism;

/// <summary>Writes a box for a general-purpose model checker: one process, one step an act.</summary>
internal static class Promela
{
    /// <summary>The model of a box without reactions and without things that are used up.</summary>
    public static string Of(Machine machine)
    {
        var text = new StringBuilder();
        for (var v = 0; v < machine.Variables.Length; v++)
            text.Append(CultureInfo.InvariantCulture, $"byte v{v} = {machine.Start[v]};\n");
        text.Append("active proctype box() {\ndo\n");
        foreach (var act in machine.Acts)
        {
            var effects = string.Join("; ", act.Effects.Select(effect => Invariant($"v{effect.Variable} = {effect.Position}")));
            text.Append(CultureInfo.InvariantCulture, $":: d_step {{ ({string.Join(" || ", act.When.Select(clause => Of(machine, clause)))}) -> {effects} }}\n");
        }

        return text.Append("od\n}\n").ToString();
    }

    private static string Of(Machine machine, Clause clause) =>
        clause.Literals.IsEmpty ? "true" : $"({string.Join(" && ", clause.Literals.Select(literal => Of(machine, literal)))})";

    private static string Of(Machine machine, Literal literal) =>
        $"({string.Join(" || ", Enumerable.Range(0, machine.Variables[literal.Variable].Positions.Length).Where(literal.Takes).Select(p => Invariant($"v{literal.Variable} == {p}")))})";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
