using System.Collections;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Spoilers;

/// <summary>The tiers of a stage, and the outside, as far as they differ in what may be mentioned.</summary>
internal enum Tier
{
    /// <summary>What anyone meets without opening anything: the front page, card fronts, addresses.</summary>
    Outside,

    /// <summary>A stage's title, its sign, and the cautions beside them.</summary>
    Sign,

    /// <summary>A push in the right direction.</summary>
    Nudge,

    /// <summary>What to look at and why.</summary>
    Clue,

    /// <summary>Everything of the stage.</summary>
    Answer,
}

/// <summary>
/// For every place the secrets that may be mentioned there: the table of the README. Certain before a stage is what the survey proves, and
/// what the moves of the stages that are certain before it need and do.
/// </summary>
internal sealed class Knowledge
{
    private readonly ImmutableArray<Secret> secrets;
    private readonly ILookup<string, Secret> byId;
    private readonly Dictionary<string, Secret> titles;
    private readonly Dictionary<string, Secret> answers;
    private readonly Dictionary<string, Effects> effects;
    private readonly Survey survey;
    private readonly BitArray outside;

    public Knowledge(Book book, Survey survey, ImmutableArray<Secret> secrets)
    {
        (this.survey, this.secrets) = (survey, secrets);
        byId = secrets.Where(secret => secret.Kind == SecretKind.Name).ToLookup(secret => secret.Id);
        titles = secrets.Where(secret => secret.Kind == SecretKind.Title).DistinctBy(secret => secret.Id).ToDictionary(secret => secret.Id);
        answers = secrets.Where(secret => secret.Kind == SecretKind.Answer).ToDictionary(secret => secret.Id);
        var names = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
        effects = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value, stage => Effects.Of(stage, book, names));
        outside = new BitArray(secrets.Length);
        foreach (var secret in secrets.Where(secret => secret.Open))
            outside[secret.Number] = true;
        foreach (var named in names.Values.OfType<Thing>().Where(thing => thing.Starts == Thing.InHand))
            Know(outside, named.Id.Value);
        foreach (var stage in survey.First.Where(titles.ContainsKey))
            outside[titles[stage].Number] = true;
    }

    /// <summary>What may be mentioned where anyone looks.</summary>
    public BitArray Outside => outside;

    /// <summary>What a stage has to do with the names of the box.</summary>
    public Effects EffectsOf(string stage) => effects[stage];

    /// <summary>What may be mentioned in each tier of a stage, by <see cref="Tier"/>.</summary>
    public BitArray[] Of(string stage)
    {
        var outlook = survey.Stages[stage];
        var own = effects[stage];

        var certain = new BitArray(outside);
        Know(certain, outlook.Gained);
        Know(certain, outlook.Attained.Select(placed => placed.Name).Where(name => !answers.ContainsKey(name)));
        Know(certain, own.Surely);
        foreach (var before in outlook.CertainBefore.Where(effects.ContainsKey).Select(id => effects[id]))
        {
            Know(certain, before.Surely);
            Know(certain, before.Moves);
            Know(certain, before.Gives);
        }

        KnowTitles(certain, [.. outlook.CertainBefore, stage], [.. outlook.CertainBefore]);
        var clue = new BitArray(certain);
        foreach (var id in own.Needs.Concat(own.Moves).Where(id => !own.Gives.Contains(id) || answers.ContainsKey(id)).Concat(own.Gives.Where(answers.ContainsKey)))
            Name(clue, id);
        var answer = new BitArray(clue);
        Know(answer, own.Gives);
        Know(answer, own.Needs);
        Know(answer, own.SetsOff);
        KnowTitles(answer, [stage], [.. outlook.CertainBefore, stage]);
        return [outside, certain, certain, clue, answer];
    }

    private void KnowTitles(BitArray known, IEnumerable<string> certain, HashSet<string> done)
    {
        foreach (var id in certain.Where(titles.ContainsKey))
            known[titles[id].Number] = true;
        foreach (var (id, title) in titles)
        {
            if (survey.Stages.GetValueOrDefault(id) is { Reachable: true, OpensAfter.IsEmpty: false } outlook && outlook.OpensAfter.All(group => group.Any(done.Contains)))
                known[title.Number] = true;
        }
    }

    private void Know(BitArray known, IEnumerable<string> ids)
    {
        foreach (var id in ids)
            Know(known, id);
    }

    private void Know(BitArray known, string id)
    {
        Name(known, id);
        if (answers.TryGetValue(id, out var answer))
            known[answer.Number] = true;
    }

    private void Name(BitArray known, string id)
    {
        foreach (var secret in byId[id])
            known[secret.Number] = true;
    }

    /// <summary>The secret of a name, or null for a name that isn't declared.</summary>
    public Secret? Named(string id) => byId[id].FirstOrDefault();

    /// <summary>The answer of a code.</summary>
    public Secret? AnswerOf(string code) => answers.GetValueOrDefault(code);

    /// <summary>How many secrets there are.</summary>
    public int Count => secrets.Length;
}
