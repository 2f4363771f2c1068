using System.Collections.Immutable;
using HintBook.Mechanism.Model;

namespace HintBook.Mechanism.Answers;

/// <summary>
/// Brings a plan as near as it goes to the reverse of the opening, which is how a person would put a box back: two neighbours change places if what was
/// done later isn't put back first and both orders are possible and lead to the same state. What then only leads round in a circle is left out.
/// </summary>
internal static class ReverseOrder
{
    private const int MostSteps = 500;

    /// <summary>The plan in its new order.</summary>
    /// <param name="back">The machine of putting back.</param>
    /// <param name="plan">Its acts.</param>
    /// <param name="solved">Where the plan starts.</param>
    /// <param name="opened">The opening that led there.</param>
    public static List<int> Arrange(Machine back, List<int> plan, int[] solved, ImmutableArray<Step> opened)
    {
        if (plan.Count > MostSteps)
            return plan;
        var stepper = new Stepper(back);
        var acts = plan.ToArray();
        var times = Times(back, plan, opened);
        var states = new int[acts.Length + 1][];
        states[0] = solved;
        for (var i = 0; i < acts.Length; i++)
            states[i + 1] = stepper.After(acts[i], states[i])!;

        for (var i = 1; i < acts.Length; i++)
        {
            for (var j = i; j > 0 && times[j - 1] < times[j] && Swapped(j) is { } between; j--)
            {
                (acts[j - 1], acts[j], times[j - 1], times[j]) = (acts[j], acts[j - 1], times[j], times[j - 1]);
                states[j] = between;
            }
        }

        return WithoutCircles(acts, states);

        int[]? Swapped(int j) =>
            Stepper.Holds(back.Acts[acts[j]].When, states[j - 1])
            && stepper.After(acts[j], states[j - 1]) is { } between
            && Stepper.Holds(back.Acts[acts[j - 1]].When, between)
            && stepper.After(acts[j - 1], between) is { } end
            && end.AsSpan().SequenceEqual(states[j + 1])
                ? between
                : null;
    }

    private static List<int> WithoutCircles(int[] acts, int[][] states)
    {
        var kept = new List<int>();
        var at = new List<Positions> { new(states[0]) };
        for (var i = 0; i < acts.Length; i++)
        {
            kept.Add(acts[i]);
            at.Add(new(states[i + 1]));
            var before = at.FindIndex(at[^1].Equals);
            kept.RemoveRange(before, kept.Count - before);
            at.RemoveRange(before + 1, at.Count - before - 1);
        }

        return kept;
    }

    // When in the opening a stage was done. A new thing goes in before the stage is put back that gave the old one. Handling belongs to
    // what it makes ready: the next step of a stage.
    private static int[] Times(Machine back, List<int> plan, ImmutableArray<Step> opened)
    {
        var done = new Dictionary<string, int>();
        foreach (var (time, step) in opened.Index())
        {
            if (step.Stage is { } stage)
                done[stage] = 2 * time;
        }

        var times = new int[plan.Count];
        var next = -1;
        for (var i = plan.Count - 1; i >= 0; i--)
        {
            if (back.Acts[plan[i]].Step is { Kind: not StepKind.StageMove, Stage: { } stage })
                next = done.GetValueOrDefault(stage, -1);
            times[i] = back.Acts[plan[i]].Step is { Kind: StepKind.Replace } replace ? GivenAt(back, opened, replace.Leaves[0].Name) : next;
        }

        return times;
    }

    private static int GivenAt(Machine back, ImmutableArray<Step> opened, string thing) => opened.Index()
        .Where(step =>
            step.Item.Stage is { } id
            && back.Book.Stages.First(stage => stage.Id.Value == id).Moves[step.Item.Move].Changes.Any(change => change.Name.Value == thing))
        .Select(step => (2 * step.Index) + 1)
        .FirstOrDefault(-1);
}
