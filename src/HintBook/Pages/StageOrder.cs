using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Mechanism.Answers;

namespace HintBook.Pages;

/// <summary>What comes before what: stages as numbers in the author's order, the same in every language of the site.</summary>
internal sealed class StageOrder
{
    private readonly string[] ids;
    private readonly FrozenDictionary<string, int> numbers;
    private readonly Bits[] before;
    private readonly int[][]?[] opensAfter;
    private readonly bool[] reachable;

    // By stage the only one of its first group, at which most stages are found closed; -1 where that group has several, or where there is none.
    private readonly int[] waitsFor;
    private readonly Lazy<ImmutableArray<int>[]> right;

    /// <summary>The order that a survey tells. What it names besides the stages of the book counts for nothing.</summary>
    /// <param name="plan">The site, in any language.</param>
    public StageOrder(SitePlan plan)
    {
        ids = [.. plan.Book.Stages.Select(stage => stage.Id.Value)];
        numbers = ids.Index().ToFrozenDictionary(each => each.Item, each => each.Index, StringComparer.Ordinal);
        var surveys = ids.Select(plan.Survey.Stages.GetValueOrDefault).ToArray();
        before = [.. surveys.Select(known => SetOf(known?.CertainBefore ?? []))];
        right = new(AllRightBefore);
        opensAfter = [.. surveys.Select(known => known?.OpensAfter.Select(group => NumbersOf(group).ToArray()).ToArray())];
        reachable = [.. surveys.Select(known => known is { Reachable: true })];
        waitsFor = [.. opensAfter.Select(groups => groups is [[var only], ..] ? only : -1)];
    }

    /// <summary>How many stages there are.</summary>
    public int Count => ids.Length;

    /// <summary>The id of a stage.</summary>
    public string this[int stage] => ids[stage];

    /// <summary>The number of a stage.</summary>
    public int Of(string id) => numbers[id];

    /// <summary>What was done on every way to a stage, and the stage itself.</summary>
    public Bits DoneWith(int stage)
    {
        var done = before[stage].Copy();
        done[stage] = true;
        return done;
    }

    /// <summary>
    /// What comes before a stage on every way, but not before another of these: all others come before one of them. So a book names
    /// each stage a few times, however long it is, and what comes before a stage is found by going from one to the next.
    /// </summary>
    public ImmutableArray<int> RightBefore(int stage) => right.Value[stage];

    /// <summary>Whether a stage is open once some others are done. A stage that isn't surveyed is.</summary>
    public bool OpensAfter(int stage, Bits done)
    {
        foreach (var group in opensAfter[stage] ?? [])
        {
            var isMet = false;
            foreach (var each in group)
                isMet |= done[each];
            if (!isMet)
                return false;
        }

        return true;
    }

    /// <summary>The stages that can be reached, aren't done and are open once some others are done: those behind a stage, then those before it.</summary>
    public IEnumerable<int> OpenFrom(int stage, Bits done)
    {
        for (var other = NextOpen(stage + 1, Count, done); other < Count; other = NextOpen(other + 1, Count, done))
            yield return other;
        for (var other = NextOpen(0, stage, done); other < stage; other = NextOpen(other + 1, stage, done))
            yield return other;
    }

    private int NextOpen(int from, int end, Bits done)
    {
        var at = from;
        while (at < end && ((waitsFor[at] >= 0 && !done[waitsFor[at]]) || !reachable[at] || done[at] || !OpensAfter(at, done)))
            at++;
        return at;
    }

    // What comes before another stage has less before it than that one: so the stages are gone through from those with most before them.
    private ImmutableArray<int>[] AllRightBefore()
    {
        var counts = before.Select(set => set.Count()).ToArray();
        var latest = Enumerable.Range(0, Count).OrderByDescending(stage => counts[stage]).ToArray();
        return [.. before.Select(RightIn)];

        ImmutableArray<int> RightIn(Bits all)
        {
            var (reached, found) = (new Bits(Count), new List<int>());
            foreach (var each in latest)
            {
                if (!all[each] || reached[each])
                    continue;
                found.Add(each);
                reached.Or(before[each]);
                reached[each] = true;
                if (all.IsWithin(reached))
                    break;
            }

            return [.. found.Order()];
        }
    }

    private IEnumerable<int> NumbersOf(IEnumerable<string> stages) =>
        stages.Select(each => numbers.GetValueOrDefault(each, -1)).Where(number => number >= 0);

    private Bits SetOf(IEnumerable<string> stages)
    {
        var set = new Bits(Count);
        foreach (var number in NumbersOf(stages))
            set[number] = true;
        return set;
    }
}
