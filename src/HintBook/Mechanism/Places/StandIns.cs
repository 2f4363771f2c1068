using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Mechanism.Places;

/// <summary>
/// A stage whose title or sign names something that isn't known yet can't be where a reader is led, though it is next. The nearest stages before
/// it stand in for it; so do those done last where only handling is left.
/// </summary>
/// <param name="standings">The box.</param>
/// <param name="survey">What is known of the stages.</param>
/// <param name="named">By stage: the variables that its title and sign name, and that don't show on the closed box.</param>
/// <param name="knownBy">By variable: what makes its name known.</param>
internal sealed class StandIns(
    Standings standings, ImmutableDictionary<string, StageSurvey> survey, Func<int, int[]> named, Bits[] knownBy)
{
    private readonly Model.Machine machine = standings.Things.Machine;

    /// <summary>Whether a stage's title and sign name nothing that isn't known in a place.</summary>
    public bool MayBeTold(Standing standing, int stage) => Array.TrueForAll(named(stage), v => standing.Known.Overlaps(knownBy[v]));

    /// <summary>Whether all moves of a stage are among what is certain.</summary>
    public bool IsDone(Bits certain, int stage) => machine.StageActs[stage] is { IsEmpty: false } acts && acts.All(act => certain[act]);

    /// <summary>The stages to which a reader may be led from a place; none where every one would tell too much.</summary>
    public Bits In(Standing standing)
    {
        var led = new Bits(machine.StageActs.Length);
        foreach (var stage in standing.Next.Members().Where(stage => MayBeTold(standing, stage)))
            led[stage] = true;
        if (!led.IsEmpty)
            return led;
        var (open, seen) = (new Queue<int>(standing.Next.IsEmpty ? DoneLast() : standing.Next.Members().SelectMany(Before)), new HashSet<int>());
        while (open.TryDequeue(out var stage))
        {
            if (!seen.Add(stage))
                continue;
            if (MayBeTold(standing, stage))
                led[stage] = true;
            foreach (var before in led[stage] ? [] : Before(stage))
                open.Enqueue(before);
        }

        return led;

        IEnumerable<int> DoneLast()
        {
            int[] done = [.. Enumerable.Range(0, led.Size).Where(stage => IsDone(standing.Known, stage))];
            var last = done.Select(LayerOf).DefaultIfEmpty().Max();
            return done.Where(stage => LayerOf(stage) == last);
        }
    }

    private int LayerOf(int stage) => survey[machine.Book.Stages[stage].Id.Value].Layer;

    private IEnumerable<int> Before(int stage) =>
        survey[machine.Book.Stages[stage].Id.Value].OpensAfter.SelectMany(group => group)
            .Select(id => machine.Book.Stages.Index().First(each => each.Item.Id.Value == id).Index);
}
