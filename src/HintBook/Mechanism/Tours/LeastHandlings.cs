using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// How many handlings a walk has at the least. Whatever it does, each part comes to a position as often as it leaves it (the state equation; in planning:
/// Bonet, "An admissible heuristic for SAS+ planning obtained from the state equation", 2013), and comes at least once to where it must stand for a duty.
/// </summary>
internal sealed class LeastHandlings
{
    private readonly TourMachine machine;
    private readonly LinearBound programme = new();
    private readonly List<(int Variable, int From, int To, int Column)> flows = [];
    private readonly HashSet<(int Variable, ulong Positions)> entered = [];
    private readonly int[] acts;
    private readonly int[] rules;

    private LeastHandlings(TourMachine machine)
    {
        this.machine = machine;
        acts = [.. machine.Back.Acts.Select(_ => programme.Column(1))];
        rules = [.. machine.Back.Rules.Select(_ => programme.Column(0))];
    }

    /// <summary>The bound.</summary>
    /// <param name="machine">The box.</param>
    /// <param name="wanted">The duties that the walk does.</param>
    /// <param name="home">Whether it ends as shipped.</param>
    public static int Of(TourMachine machine, IReadOnlyList<int> wanted, bool home)
    {
        var counted = wanted.Count(duty => machine.Duties[duty] is not Duty.See);
        return Math.Max(counted, new LeastHandlings(machine).Bound(wanted, home));
    }

    private int Bound(IReadOnlyList<int> wanted, bool home)
    {
        foreach (var (a, act) in machine.Back.Acts.Index())
            Flow(acts[a], act.When, act.Effects, moves: act.Step.Kind == StepKind.FreeMove);
        foreach (var (r, rule) in machine.Back.Rules.Index())
            Flow(rules[r], rule.When, rule.Effects, moves: rule.Effects.Length == 1);
        foreach (var (v, variable) in machine.Back.Variables.Index())
        {
            for (var p = 0; p < variable.Positions.Length; p++)
                Balance(v, p, home);
        }

        foreach (var duty in wanted)
            Ask(machine.Duties[duty]);
        return programme.Least() + wanted.Count(duty => machine.Duties[duty] is Duty.Refuse);
    }

    private void Ask(Duty duty)
    {
        switch (duty)
        {
            case Duty.Make make:
                programme.AtLeast(1, [(acts[make.Act], 1)]);
                Enter(machine.Back.Acts[make.Act].When);
                break;
            case Duty.Stand stand:
                programme.AtLeast(1, machine.Back.Acts.Index().Where(act => act.Item.Puts(stand.Variable, stand.Position)).Select(act => (acts[act.Index], 1)));
                break;
            case Duty.See see:
                programme.AtLeast(1, [(rules[see.Rule], 1)]);
                Enter(machine.Back.Rules[see.Rule].When);
                break;
            case Duty.Refuse refuse:
                Enter(refuse.Others);
                if (refuse.Moves is [var moved])
                    Enter(moved.Variable, machine.Back.Variables[moved.Variable].All & moved.From & ~(1UL << moved.Position));
                if (refuse.Needs is [{ Literals: [var need] }])
                    Enter(need.Variable, machine.Back.Variables[need.Variable].All & ~need.Accepts);
                break;
        }
    }

    // Where something may come from several positions, how often it comes from each is a column of its own.
    private void Flow(int column, ImmutableArray<Clause> when, ImmutableArray<Effect> effects, bool moves)
    {
        foreach (var effect in effects)
        {
            var may = Asked(when, effect.Variable);
            var from = may & effect.From & ~(1UL << effect.Position);
            var stays = !moves && (may & ~from) != 0;
            int[] origins = [.. Enumerable.Range(0, machine.Back.Variables[effect.Variable].Positions.Length).Where(p => (from >> p & 1) != 0)];
            if (!stays && origins.Length == 1)
            {
                flows.Add((effect.Variable, origins[0], effect.Position, column));
                continue;
            }

            (int Column, int By)[] parts = [.. origins.Select(_ => (programme.Column(0), -1))];
            flows.AddRange(origins.Select((p, i) => (effect.Variable, p, effect.Position, parts[i].Column)));
            if (stays)
                programme.AtLeast(0, [(column, 1), .. parts]);
            else
                programme.Exactly(0, [(column, 1), .. parts]);
        }
    }

    private ulong Asked(ImmutableArray<Clause> when, int variable)
    {
        var any = new Literal(variable, ulong.MaxValue);
        var asked = when.Aggregate(0UL, (all, clause) => all | clause.Literals.FirstOrDefault(each => each.Variable == variable, any).Accepts);
        return machine.Back.Variables[variable].All & asked;
    }

    private void Balance(int variable, int position, bool home)
    {
        var terms = flows.Where(flow => flow.Variable == variable && flow.From != flow.To && (flow.From == position || flow.To == position))
            .Select(flow => (flow.Column, flow.To == position ? 1 : -1)).ToArray();
        var starts = machine.Start[variable] == position;
        if (terms.Length == 0)
            return;
        var asShipped = new Literal(variable, 1UL << machine.Start[variable]);
        if (home && machine.Back.Goal is [var shipped] && shipped.Literals.Contains(asShipped))
            programme.Exactly(0, terms);
        else
            programme.AtLeast(starts ? -1 : 0, terms);
    }

    private void Enter(ImmutableArray<Clause> when)
    {
        foreach (var variable in when.SelectMany(clause => clause.Literals).Select(literal => literal.Variable).Distinct())
            Enter(variable, Asked(when, variable));
    }

    private void Enter(int variable, ulong positions)
    {
        if ((positions >> machine.Start[variable] & 1) != 0 || !entered.Add((variable, positions)))
            return;
        programme.AtLeast(1, flows
            .Where(flow => flow.Variable == variable && (positions >> flow.To & 1) != 0 && (positions >> flow.From & 1) == 0)
            .Select(flow => (flow.Column, 1)));
    }
}
