using HintBook.Books;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;
using HintBook.Text;

namespace HintBook.Mechanism.Answers;

/// <summary>Tells which reactions keep a box from coming to rest, by what they do and where they are written.</summary>
internal static class UnrestFindings
{
    private const int MostSteps = 10_000;

    /// <summary>The finding about one fault.</summary>
    /// <param name="machine">The machine that was explored.</param>
    /// <param name="fault">What was found there.</param>
    public static Finding Of(Machine machine, ReactionFault fault)
    {
        var (rules, positions) = fault.Kind == Rest.Loops ? Round(machine, fault) : Meeting(machine, fault);
        Reaction[] reactions = [.. rules.Select(rule => machine.Book.Box.Reactions[rule.Number])];
        string[] names = [.. reactions.Select(Asker.Describe)];
        var way = fault.Way.Count == 0
            ? "As the box is shipped"
            : $"After {SolutionFindings.Say([.. fault.Way.Select(act => machine.Acts[act].Step)])}";
        var state = string.Join(", ", Touched(rules)
            .Where(v => machine.Variables[v].Named is not null)
            .Select(v => $"{machine.Variables[v].Id}: {machine.Variables[v].Positions[positions[v]]}"));
        var (code, message, help) = fault.Kind == Rest.Loops
            ? (MechanismFindings.ReactionsLoop,
                names.Length == 1
                    ? $"{way} the box never comes to rest: {names[0]} sets itself off again and again ({state})."
                    : $"{way} the box never comes to rest: {Words.List(names)} set each other off again and again ({state}).",
                "Write into the “when” of one of them what really sets it off, so that it can't happen right after the other.")
            : (MechanismFindings.ReactionsDisagree,
                $"{way} it depends on which of {Words.List(names)} happens first where the box comes to rest ({state}).",
                "Let their “when” exclude each other: here both hold at once.");
        var others = reactions.Zip(names).Skip(1).Select(other => new Related(other.First.At, $"This is {other.Second}."));
        return code.At(reactions[0].At, message, help, [.. others]);
    }

    // The reactions of the circle, from the state in which it begins.
    private static (Rule[] Rules, int[] Positions) Round(Machine machine, ReactionFault fault)
    {
        var (state, met, made) = (fault.Positions, new Dictionary<Positions, int>(), new List<(Rule Rule, int[] Before)>());
        while (made.Count < MostSteps && met.TryAdd(new Positions(state), made.Count))
        {
            if (Ready(machine, state) is not [var first, ..])
                return Meeting(machine, fault);
            made.Add((first, state));
            state = After(first, state);
        }

        var start = met.GetValueOrDefault(new Positions(state));
        return ([.. made.Skip(start).Select(step => step.Rule).Distinct().OrderBy(rule => rule.Number)], made[start].Before);
    }

    // The first state in which several reactions can happen.
    private static (Rule[] Rules, int[] Positions) Meeting(Machine machine, ReactionFault fault)
    {
        var state = fault.Positions;
        for (var steps = 0; steps < MostSteps && Ready(machine, state) is [var only]; steps++)
            state = After(only, state);
        var ready = Ready(machine, state);
        return ready.Length > 0 ? (ready, state) : ([.. machine.Rules.Where(rule => fault.Rules.Contains(rule.Number))], fault.Positions);
    }

    private static IEnumerable<int> Touched(Rule[] rules) => rules
        .SelectMany(rule => rule.When.SelectMany(clause => clause.Literals).Select(literal => literal.Variable)
            .Concat(rule.Effects.Select(effect => effect.Variable)))
        .Distinct()
        .Order();

    private static Rule[] Ready(Machine machine, int[] state) =>
        [.. machine.Rules.Where(rule => Stepper.Holds(rule.When, state) && !After(rule, state).SequenceEqual(state))];

    private static int[] After(Rule rule, int[] state)
    {
        int[] next = [.. state];
        foreach (var effect in rule.Effects.Where(effect => effect.Applies(state[effect.Variable])))
            next[effect.Variable] = effect.Position;
        return next;
    }
}
