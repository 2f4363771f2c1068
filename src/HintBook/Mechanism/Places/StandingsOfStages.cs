using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism.Answers;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Places;

/// <summary>
/// Where a reader may stand, by what is proved of the stages alone, for boxes with too many states: every set of stages that may have been done, that
/// is every one with all that is certain before its members. What is certain there is what is proved before each of them, and a part that shows is as
/// it came, is so no more, or is either. So there may be places here that the box hasn't, and less is certain: that costs taps, and gives nothing away.
/// </summary>
internal sealed class StandingsOfStages
{
    private const int MostSets = 20_000;
    private readonly Machine machine;
    private readonly Attainable things;
    private readonly ImmutableArray<int> asked;
    private readonly Bits wanted;
    private readonly Bits[] certain;
    private readonly Bits[][] groups;
    private readonly Lazy<Bits[]> known;
    private readonly (int Stage, int Before)[] byBefore;
    private readonly Mover[] movers;
    private readonly HashSet<int> reacting;
    private readonly List<(int Stage, int Position)>[] moving;

    private StandingsOfStages(Machine machine, ImmutableDictionary<string, StageSurvey> survey)
    {
        (this.machine, things) = (machine, new Attainable(machine));
        reacting = [.. machine.Rules.SelectMany(rule => rule.Effects).Select(effect => effect.Variable)];
        moving = [.. machine.Variables.Select(_ => new List<(int, int)>())];
        foreach (var act in machine.Acts)
        {
            foreach (var effect in act.Effects)
                moving[effect.Variable].Add((act.Stage, effect.Position));
        }

        var stages = machine.Book.Stages;
        var numbers = stages.Index().DistinctBy(each => each.Item.Id.Value).ToDictionary(each => each.Item.Id.Value, each => each.Index);
        wanted = SetOf(stages.Index()
            .Where(each => each.Item is { Optional: false, RedHerring: false }
                && survey[each.Item.Id.Value].Reachable && !machine.StageActs[each.Index].IsEmpty)
            .Select(each => each.Index));
        var surveys = stages.Select(stage => survey[stage.Id.Value]).ToArray();
        certain = [.. surveys.Select(stage => SetOf(stage.CertainBefore.Select(id => numbers[id])).Both(wanted))];
        groups =
        [
            .. surveys.Select(stage => stage.OpensAfter
                .Select(group => SetOf(group.Select(id => numbers[id]))).Where(group => group.IsWithin(wanted)).ToArray()),
        ];
        var variables = machine.Variables.Index().DistinctBy(each => each.Item.Id)
            .ToDictionary(each => each.Item.Id, each => each.Index, StringComparer.Ordinal);
        known = new(() => [.. surveys.Select((stage, number) => KnownOnceDone(stage, number, variables))]);
        byBefore = [.. wanted.Members().Select(stage => (stage, certain[stage].Count())).OrderBy(each => each.Item2)];
        asked = [.. Enumerable.Range(0, machine.Variables.Length).Where(v => machine.Variables[v].Named is Part { Seen: true, Free: false, Turns: false })];
        movers = [.. asked.Select(MoverOf)];
    }

    /// <summary>The standings, or null where there are too many sets of stages.</summary>
    public static Standings? Read(Machine machine, ImmutableDictionary<string, StageSurvey> survey) => new StandingsOfStages(machine, survey).All();

    private Standings? All()
    {
        var seen = new HashSet<Bits>(Bits.ByContent) { new(certain.Length) };
        var order = new List<Bits>(seen);
        var nexts = new List<Bits>();
        for (var i = 0; i < order.Count; i++)
        {
            nexts.Add(NextOf(order[i]));
            foreach (var stage in nexts[i].Members())
            {
                var more = order[i].Copy();
                more[stage] = true;
                if (!seen.Add(more))
                    continue;
                if (seen.Count > MostSets)
                    return null;
                order.Add(more);
            }
        }

        // A solver passes one set of each size.
        var sizes = order.CountBy(done => done.Count()).ToDictionary();
        return new(
            things,
            asked,
            [
                .. from each in order.Zip(nexts)
                   let done = each.First
                   let next = each.Second
                   where !next.IsEmpty
                   select new Standing
                   {
                       Shows = [.. movers.Select(mover => mover.Shows(done, next))],
                       Next = next,
                       Known = KnownAt(done),
                       Weight = 1.0 / sizes[done.Count()],
                   },
            ],
            Exact: false);
    }

    private Bits NextOf(Bits done)
    {
        var next = new Bits(certain.Length);
        // Of a stage with more before it than is done not all of that is done.
        var most = done.Count();
        foreach (var (stage, before) in byBefore)
        {
            if (before > most)
                break;
            next[stage] = !done[stage] && certain[stage].IsWithin(done) && Array.TrueForAll(groups[stage], group => group.Overlaps(done));
        }

        return next;
    }

    private Bits KnownAt(Bits done)
    {
        var all = new Bits(things.Count);
        foreach (var stage in done.Members())
            all.Or(known.Value[stage]);
        return all;
    }

    private Bits KnownOnceDone(StageSurvey stage, int number, Dictionary<string, int> variables)
    {
        var attained = new Bits(things.Count);
        int[] lasting = [.. machine.StageActs[number].Where(act => machine.Acts[act].Effects.Any(effect => IsLasting(effect, number)))];
        if (lasting.Length == 0)
            return attained;
        foreach (var act in lasting)
            attained[act] = true;
        foreach (var placed in stage.Attained)
            Attain(placed.Name, placed.Position);
        foreach (var name in stage.Gained)
            Attain(name, variables.TryGetValue(name, out var v) ? machine.Variables[v].Named?.Attained : null);
        return attained;

        void Attain(string name, string? position)
        {
            if (position is not null && variables.TryGetValue(name, out var v) && machine.Variables[v].Positions.IndexOf(position) is >= 0 and var place)
                attained[things.Of(v, place)] = true;
        }
    }

    // Whether a state tells by itself that a stage was done: it alone moves something away from where that was at first, and nothing brings it back.
    private bool IsLasting(Effect effect, int stage) =>
        effect.Position != 0
        && !reacting.Contains(effect.Variable)
        && moving[effect.Variable].TrueForAll(other => other.Position != 0 && other.Stage == stage);

    private Bits SetOf(IEnumerable<int> numbers)
    {
        var set = new Bits(machine.StageActs.Length);
        foreach (var number in numbers)
            set[number] = true;
        return set;
    }

    private Mover MoverOf(int v)
    {
        var acts = machine.Acts.Where(act => act.Effects.Any(effect => effect.Variable == v && effect.Position != 0)).ToArray();
        var back = machine.Acts.Any(act => act.Effects.Any(effect => effect.Variable == v && effect.Position == 0));
        var rules = machine.Rules.Any(rule => rule.Effects.Any(effect => effect.Variable == v));
        var stages = SetOf(acts.Where(act => act.Stage >= 0 && wanted[act.Stage]).Select(act => act.Stage));
        return new(
            stages,
            SetOf(stages.Members().Where(stage => machine.StageActs[stage].Length > 1)),
            ByOthers: rules || Array.Exists(acts, act => act.Stage < 0 || !wanted[act.Stage]),
            Back: rules || back);
    }

    /// <summary>What moves a part.</summary>
    /// <param name="Stages">The stages that move it away from its first position.</param>
    /// <param name="InPieces">Those of them with several moves: the part may have been moved before the stage is done.</param>
    /// <param name="ByOthers">Whether anything else does.</param>
    /// <param name="Back">Whether anything brings it back.</param>
    private sealed record Mover(Bits Stages, Bits InPieces, bool ByOthers, bool Back)
    {
        public int Shows(Bits done, Bits next) => Stages.Overlaps(done)
            ? Back ? Standing.Unknown : Standing.Moved
            : ByOthers || InPieces.Overlaps(next) ? Standing.Unknown : 0;
    }
}
