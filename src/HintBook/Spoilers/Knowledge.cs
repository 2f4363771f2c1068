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
    private readonly Dictionary<string, int> names;
    private readonly Dictionary<string, int[]> whole;
    private readonly Dictionary<string, Secret> answers;
    private readonly Dictionary<string, Effects> effects;
    private readonly Survey survey;
    private readonly Dictionary<string, int[]> leftBehind = [];
    private readonly BitArray outside;

    public Knowledge(Book book, Survey survey, ImmutableArray<Secret> secrets)
    {
        (this.survey, this.secrets) = (survey, secrets);
        names = secrets.Where(secret => secret.Kind == SecretKind.Name).ToDictionary(secret => secret.Id, secret => secret.Number);
        answers = secrets.Where(secret => secret.Kind == SecretKind.Answer).ToDictionary(secret => secret.Id);
        whole = names.ToDictionary(name => name.Key, name => answers.TryGetValue(name.Key, out var answer) ? (int[])[name.Value, answer.Number] : [name.Value]);
        var declared = book.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value);
        effects = book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value, stage => Effects.Derive(stage, book, declared));
        outside = new BitArray(secrets.Length);
        foreach (var secret in secrets.Where(secret => secret.Open))
            outside[secret.Number] = true;
        foreach (var named in declared.Values.OfType<Thing>().Where(thing => thing.Starts == Thing.InHand))
            Know(outside, named.Id.Value);
        var first = survey.First.ToHashSet();
        foreach (var title in secrets.Where(secret => secret.Kind == SecretKind.Title && first.Contains(secret.Id)))
            outside[title.Number] = true;
    }

    /// <summary>What may be mentioned where anyone looks.</summary>
    public BitArray Outside => outside;

    /// <summary>What may be mentioned where everything has been told that all copies have alike.</summary>
    public BitArray OfAllCopies => new([.. secrets.Select(secret => secret.Kind != SecretKind.CopyAnswer)]);

    /// <summary>What a stage has to do with the names of the box.</summary>
    public Effects EffectsOf(string stage) => effects[stage];

    /// <summary>What may be mentioned in each tier of a stage, by <see cref="Tier"/>; of titles see <see cref="KnownTitles"/>.</summary>
    public BitArray[] Of(string stage)
    {
        var known = survey.Stages[stage];
        var own = effects[stage];

        var certain = new BitArray(outside);
        Know(certain, known.Gained);
        foreach (var placed in known.Attained)
            Name(certain, placed.Name);
        Know(certain, own.Surely);
        foreach (var before in known.CertainBefore)
            Set(certain, LeftBehind(before));

        var clue = new BitArray(certain);
        foreach (var id in own.Needs.Concat(own.Moves).Where(id => !own.Gives.Contains(id)).Concat(own.Gives.Where(answers.ContainsKey)))
            Name(clue, id);
        var answer = new BitArray(clue);
        Know(answer, own.Gives);
        Know(answer, own.Needs);
        Know(answer, own.SetsOff);
        return [outside, certain, certain, clue, answer];
    }

    /// <summary>Whether whoever reads the answer of a stage has met a name of the box, or meets it there.</summary>
    public bool IsMetBy(string stage, string name)
    {
        var (known, own) = (survey.Stages[stage], effects[stage]);
        return known.Gained.Contains(name)
            || new[] { own.Surely, own.Needs, own.Gives, own.SetsOff }.Any(names => names.Contains(name))
            || known.CertainBefore.Select(before => effects[before]).Any(before => before.Surely.Contains(name) || before.Gives.Contains(name));
    }

    // What everyone has met who has made all the moves of a stage.
    private int[] LeftBehind(string stage)
    {
        if (!leftBehind.TryGetValue(stage, out var numbers))
        {
            var known = new BitArray(secrets.Length);
            Know(known, effects[stage].Surely);
            Know(known, effects[stage].Moves);
            Know(known, effects[stage].Gives);
            leftBehind[stage] = numbers = [.. Enumerable.Range(0, known.Length).Where(number => known[number])];
        }

        return numbers;
    }

    private void Know(BitArray known, IEnumerable<string> ids)
    {
        foreach (var id in ids)
            Know(known, id);
    }

    private void Know(BitArray known, string id)
    {
        if (whole.TryGetValue(id, out var numbers))
            Set(known, numbers);
    }

    private void Name(BitArray known, string id)
    {
        if (names.TryGetValue(id, out var number))
            known[number] = true;
    }

    private static void Set(BitArray known, int[] numbers)
    {
        foreach (var number in numbers)
            known[number] = true;
    }

    /// <summary>The secret of a name, or null for a name that isn't declared.</summary>
    public Secret? Named(string id) => names.TryGetValue(id, out var number) ? secrets[number] : null;

    /// <summary>The answer of a code.</summary>
    public Secret? AnswerOf(string code) => answers.GetValueOrDefault(code);
}
