using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Packed;

/// <summary>Reactions that could disagree.</summary>
internal static class ReactionConflicts
{
    /// <summary>
    /// Whether one reaction may take away what another asks for, or leave something elsewhere than another does. Where there is no
    /// such pair, reactions always settle, and in one state: each changes a thing once, and the order is all the same. Two that ask for
    /// different positions of something that no reaction moves don't count: after one move only one of them can happen.
    /// </summary>
    public static bool Any(Machine machine)
    {
        var moved = machine.Rules.SelectMany(rule => rule.Effects).Select(effect => effect.Variable).ToHashSet();
        return machine.Rules.Any(one => machine.Rules.Any(other => one != other && Hinders(one, other) && !Exclude(one, other, moved)));
    }

    private static bool Hinders(Rule one, Rule other) => one.Effects.Any(effect =>
        other.Effects.Any(e => e.Variable == effect.Variable && e.Position != effect.Position) ||
        other.When.SelectMany(clause => clause.Literals).Any(l => l.Variable == effect.Variable && !l.Takes(effect.Position)));

    private static bool Exclude(Rule one, Rule other, HashSet<int> moved) => one.When.All(mine => other.When.All(theirs =>
        mine.Literals.Any(l => !moved.Contains(l.Variable) && theirs.Literals.Any(other => other.Variable == l.Variable && (other.Accepts & l.Accepts) == 0))));
}
