using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>Reactions that could disagree.</summary>
internal static class Clashes
{
    /// <summary>
    /// Whether one reaction may take away what another asks for, or leave something elsewhere than another does. Where there is no
    /// such pair, reactions always settle, and in one state: each changes a thing once, and the order is all the same.
    /// </summary>
    public static bool Any(Machine machine) =>
        machine.Rules.Any(one => machine.Rules.Any(other => one != other && one.Effects.Any(effect =>
            other.Effects.Any(e => e.Variable == effect.Variable && e.Position != effect.Position) ||
            other.When.SelectMany(clause => clause.Literals).Any(l => l.Variable == effect.Variable && !l.Takes(effect.Position)))));
}
