using System.Collections;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Spoilers;

/// <summary>What may be said where, allowances included, and what is looked for: plain sets for whoever checks what was made of the book.</summary>
/// <param name="Secrets">Every secret, in the order of its number.</param>
/// <param name="Sought">The spellings that are looked for.</param>
/// <param name="Outside">The secrets that may be mentioned where anyone looks.</param>
/// <param name="Stages">The same for the pages of the stages that can be reached.</param>
internal sealed record MayBeSaid(
    ImmutableArray<Secret> Secrets, ImmutableArray<SoughtSpelling> Sought, BitArray Outside, ImmutableDictionary<string, MayBeSaidOfStage> Stages)
{
    public static MayBeSaid Derive(Book book, Survey survey)
    {
        var secrets = Secret.Collect(book);
        var finder = Finders.Build(book, secrets);
        var knowledge = new Knowledge(book, survey, secrets);
        var allowances = new Allowances(book, secrets);
        var allowed = SetOf(allowances.Of(null), secrets);
        var titles = new Titles(book, survey, secrets);
        return new(
            secrets,
            [.. finder.Looked],
            new BitArray(knowledge.Outside).Or(allowed),
            book.Stages.DistinctBy(stage => stage.Id.Value)
                .Where(stage => survey.Stages[stage.Id.Value].Reachable)
                .ToImmutableDictionary(stage => stage.Id.Value, OfStage));

        MayBeSaidOfStage OfStage(Stage stage)
        {
            var id = stage.Id.Value;
            var tiers = knowledge.Of(id);
            var own = SetOf(allowances.Of(id), secrets).Or(allowed);
            titles.Let(own, id);
            var (sign, clue, answer) = (tiers[(int)Tier.Sign].Or(own), tiers[(int)Tier.Clue].Or(own), tiers[(int)Tier.Answer].Or(own));
            titles.LetDone(answer, id);
            var sure = survey.Stages[id].Exact ? null : SetOf(secrets.Where(secret => knowledge.EffectsOf(id).Gives.Contains(secret.Id)).Select(secret => secret.Number), secrets);
            return new(sign, clue, answer, sure);
        }
    }

    private static BitArray SetOf(IEnumerable<int> numbers, ImmutableArray<Secret> secrets)
    {
        var set = new BitArray(secrets.Length);
        foreach (var number in numbers)
            set[number] = true;
        return set;
    }
}

/// <summary>What may be mentioned on a stage's page.</summary>
/// <param name="Sign">In its title, its sign and its nudge.</param>
/// <param name="Clue">In its clue.</param>
/// <param name="Answer">In its answer, and to whoever has done it.</param>
/// <param name="Sure">The secrets of which it is sure that they may not be mentioned where they aren't in these sets; null for all.</param>
internal sealed record MayBeSaidOfStage(BitArray Sign, BitArray Clue, BitArray Answer, BitArray? Sure);

/// <summary><see cref="Knowledge.KnowsTitle"/> for all pages at once: thousands of stages have millions of pairs.</summary>
internal sealed class Titles
{
    private readonly Survey survey;
    private readonly Dictionary<string, int> stages;
    private readonly int[] numbers;
    private readonly int[][][] opensAfter;

    public Titles(Book book, Survey survey, ImmutableArray<Secret> secrets)
    {
        this.survey = survey;
        var titles = secrets.Where(secret => secret.Kind == SecretKind.Title).DistinctBy(secret => secret.Id).ToArray();
        numbers = [.. titles.Select(title => title.Number)];
        stages = titles.Index().ToDictionary(title => title.Item.Id, title => title.Index);
        opensAfter = [.. titles.Select(title => survey.Stages[title.Id] is { Reachable: true } known ? GroupsOf(known) : [])];
    }

    /// <summary>Adds the titles that are no secret to whoever reads a stage's page.</summary>
    public void Let(BitArray known, string stage)
    {
        var before = new bool[numbers.Length];
        foreach (var id in survey.Stages[stage].CertainBefore)
            before[stages[id]] = true;
        for (var title = 0; title < numbers.Length; title++)
            known[numbers[title]] |= before[title] || (opensAfter[title].Length > 0 && Array.TrueForAll(opensAfter[title], group => Array.Exists(group, done => before[done])));
        known[numbers[stages[stage]]] = true;
    }

    /// <summary>Adds the titles of what opens for whoever has done a stage.</summary>
    public void LetDone(BitArray known, string stage)
    {
        var own = stages[stage];
        for (var title = 0; title < numbers.Length; title++)
        {
            if (Array.Exists(opensAfter[title], group => Array.IndexOf(group, own) >= 0)
                && Array.TrueForAll(opensAfter[title], group => Array.Exists(group, done => done == own || IsBefore(done, stage))))
                known[numbers[title]] = true;
        }
    }

    private bool IsBefore(int done, string stage) => survey.Stages[stage].CertainBefore.Any(id => stages[id] == done);

    private int[][] GroupsOf(StageSurvey known) => [.. known.OpensAfter.Select(group => group.Select(id => stages[id]).ToArray())];
}
