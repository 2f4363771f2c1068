using System.Collections;
using System.Collections.Immutable;
using HintBook.Mechanism;

namespace HintBook.Spoilers;

/// <summary>
/// Which titles of stages are no secret on which page: the stage's own, those that are certain before it, and those that everyone who is
/// there can open. Whoever reads the answer has done the stage as well. Works on numbers: thousands of stages have millions of pairs.
/// </summary>
internal sealed class KnownTitles
{
    private const int Nothing = -1;
    private readonly Survey survey;
    private readonly Dictionary<string, int> stages;
    private readonly int[] numbers;
    private readonly int[][][] opensAfter;

    /// <summary>Prepares the titles of a book.</summary>
    public KnownTitles(Survey survey, ImmutableArray<Secret> secrets)
    {
        this.survey = survey;
        var titles = secrets.Where(secret => secret.Kind == SecretKind.Title).DistinctBy(secret => secret.Id).ToArray();
        numbers = [.. titles.Select(title => title.Number)];
        stages = titles.Index().ToDictionary(title => title.Item.Id, title => title.Index);
        opensAfter = [.. titles.Select(title => survey.Stages[title.Id] is { Reachable: true } known ? GroupsOf(known) : [])];
    }

    /// <summary>Whether a title may stand on a stage's page.</summary>
    /// <param name="title">The stage whose title it is.</param>
    /// <param name="stage">The stage on whose page it stands.</param>
    /// <param name="tier">Where on the page.</param>
    public bool Knows(string title, string stage, Tier tier) =>
        title == stage || IsKnown(stages[title], Before(stage), tier == Tier.Answer ? stages[stage] : Nothing);

    /// <summary>Adds the titles that are no secret to whoever reads a stage's page.</summary>
    public void Let(BitArray known, string stage)
    {
        Let(known, Before(stage), Nothing);
        known[numbers[stages[stage]]] = true;
    }

    /// <summary>Adds the titles that are no secret to whoever has done a stage.</summary>
    public void LetDone(BitArray known, string stage) => Let(known, Before(stage), stages[stage]);

    private void Let(BitArray known, bool[] before, int done)
    {
        for (var title = 0; title < numbers.Length; title++)
            known[numbers[title]] |= IsKnown(title, before, done);
    }

    private bool IsKnown(int title, bool[] before, int done)
    {
        if (before[title])
            return true;
        foreach (var group in opensAfter[title])
        {
            var isMet = false;
            foreach (var stage in group)
                isMet |= stage == done || before[stage];
            if (!isMet)
                return false;
        }

        return opensAfter[title].Length > 0;
    }

    private bool[] Before(string stage)
    {
        var before = new bool[numbers.Length];
        foreach (var id in survey.Stages[stage].CertainBefore)
            before[stages[id]] = true;
        return before;
    }

    private int[][] GroupsOf(StageSurvey known) => [.. known.OpensAfter.Select(group => group.Select(id => stages[id]).ToArray())];
}
