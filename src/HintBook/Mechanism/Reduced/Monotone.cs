using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Reduced;

/// <summary>
/// Boxes that only gain: whatever an act, a reaction or the goal asks for stays so once it is so, as far as anything else is concerned, and no
/// two things are left in different positions. Then what is possible stays possible until it is made, so the relaxation is what really
/// happens, and nothing has to be searched.
/// </summary>
internal static class Monotone
{
    /// <summary>Whether a box only gains.</summary>
    /// <param name="machine">The machine, with its free parts anywhere; its reactions must not clash.</param>
    /// <param name="relaxed">Of that machine.</param>
    public static bool Only(Machine machine, DeleteRelaxation relaxed)
    {
        var writers = Writers(machine, relaxed);
        var idle = Idle(machine, relaxed, writers);
        foreach (var list in writers)
            list.RemoveAll(writer => writer.Event < machine.Acts.Length && idle.Contains(writer.Event));
        for (var v = 0; v < writers.Length; v++)
        {
            if (Clash(writers[v], machine.Variables[v].Gone))
                return false;
        }

        for (var e = 0; e <= relaxed.Events; e++)
        {
            if (relaxed.Met(e).Any(clause => !Stays(clause, e, writers)))
                return false;
        }

        return true;
    }

    private static List<(int Event, int Position)>[] Writers(Machine machine, DeleteRelaxation relaxed)
    {
        var writers = machine.Variables.Select(_ => new List<(int Event, int Position)>()).ToArray();
        for (var e = 0; e < relaxed.Events; e++)
        {
            if (!relaxed.Happens(e))
                continue;
            foreach (var effect in relaxed.EffectsOf(e))
                writers[effect.Variable].Add((e, effect.Position));
        }

        return writers;
    }

    // Puts back what only reactions move, and they do it again at once if they have done it: at rest nothing has changed.
    private static HashSet<int> Idle(Machine machine, DeleteRelaxation relaxed, List<(int Event, int Position)>[] writers)
    {
        if (machine.Rules.IsEmpty)
            return [];
        var watched = machine.Rules.SelectMany(rule => rule.When).SelectMany(clause => clause.Literals).Select(literal => literal.Variable).ToHashSet();
        return
        [
            .. Enumerable.Range(0, machine.Acts.Length).Where(a =>
                machine.Acts[a].Stage < 0
                && relaxed.Happens(a)
                && machine.Acts[a].Effects.All(effect => PutBack(a, effect))),
        ];

        bool PutBack(int act, Effect effect) =>
            effect.Position == machine.Start[effect.Variable]
            && !watched.Contains(effect.Variable)
            && writers[effect.Variable].TrueForAll(writer =>
                writer.Event == act
                || writer.Position == effect.Position
                || ForGood(writer, writers[effect.Variable]));

        bool ForGood((int Event, int Position) writer, List<(int Event, int Position)> all) =>
            writer.Event >= machine.Acts.Length && relaxed.Met(writer.Event).All(clause => Stays(clause, writer.Event, writers)) &&
            all.TrueForAll(other => other.Event < machine.Acts.Length || other.Position == writer.Position);
    }

    private static bool Clash(List<(int Event, int Position)> writers, int gone)
    {
        var left = writers.Where(writer => writer.Position != gone || gone < 0).ToList();
        return left.Exists(writer => writer.Position != left[0].Position && writer.Event != left[0].Event);
    }

    private static bool Stays(Clause clause, int e, List<(int Event, int Position)>[] writers)
    {
        foreach (var literal in clause.Literals)
        {
            foreach (var (other, position) in writers[literal.Variable])
            {
                if (other != e && !literal.Takes(position))
                    return false;
            }
        }

        return true;
    }
}
