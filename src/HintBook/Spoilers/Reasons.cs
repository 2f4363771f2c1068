using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>Says where a secret becomes known, and why that isn't certain at a place.</summary>
internal sealed class Reasons(Book book, Survey survey, Knowledge knowledge)
{
    private readonly WaysAround around = new(book);

    /// <summary>Why a secret isn't known on a stage's page, or outside where there is none.</summary>
    public Reason Of(Secret secret, Stage? stage, Tier tier)
    {
        var givers = GiversOf(secret);
        ImmutableArray<Related> related =
        [
            .. givers.Take(1).Where(giver => giver != stage).Select(giver => new Related(giver.Title.At, "Here it becomes known.")),
        ];
        var maySeeIt = secret.Kind == SecretKind.Name && book.Box.Codes.All(code => code.Id.Value != secret.Id);
        var seen = maySeeIt ? ", or mark it “seen: true” if it shows on the closed box" : "";
        if (stage is null)
            return new($"This is read before anything is opened{Known(givers)}.", $"Say it in other words{seen}.", related);
        if (secret.Kind == SecretKind.Title)
            return new($"“{stage.Title.Value}” is read by some who haven't come that far.", "Say it in other words.", related);
        if (givers.Contains(stage))
        {
            var gives = knowledge.EffectsOf(stage.Id.Value).Gives.Contains(secret.Id);
            var texts = tier == Tier.Sign ? "its sign and the cautions beside it" : "the nudge";
            return tier == Tier.Clue || gives
                ? new(
                    secret.Kind == SecretKind.Answer
                        ? "It is this stage's own code, and only the answer may give it."
                        : "This stage gives it, and only the answer may say so.",
                    "Keep it for the answer, or say it in other words.",
                    related)
                : new(
                    $"It is met only in this stage, so {texts} may not name it yet.",
                    $"Keep it for the clue, or say it in other words{seen}.",
                    related);
        }

        var mend = $"Say it in other words{seen}.";
        if (givers.Length == 0)
            return new("No stage gives it or moves it, so nobody is sure to know it here.", mend, related) { IsThatNothingGivesIt = true };
        if (givers.All(giver => survey.Stages[giver.Id.Value].CertainBefore.Contains(stage.Id.Value)))
            return new($"It becomes known in “{givers[0].Title.Value}”, which comes later on every way.", mend, related);
        var titles = Words.List(givers.Select(giver => $"“{giver.Title.Value}”"), "or");
        return new($"It becomes known in {titles}, and “{stage.Title.Value}” {WayTo(stage, secret, givers)}", mend, related);
    }

    private string WayTo(Stage stage, Secret secret, ImmutableArray<Stage> givers) =>
        survey.First.Contains(stage.Id.Value) ? "is open from the start."
        : around.To(stage, secret, givers) is { IsEmpty: false } steps ? $"can be reached without that: {Words.List(steps, "then")}."
        : survey.Stages[stage.Id.Value].Exact ? "can be reached without that: another way leads there."
        : "may be reached without that, as far as could be proved.";

    private static string Known(ImmutableArray<Stage> givers) => givers.Length == 0 ? "" : $", and it becomes known in “{givers[0].Title.Value}”";

    private ImmutableArray<Stage> GiversOf(Secret secret)
    {
        if (secret.Kind == SecretKind.Title)
            return [.. book.Stages.Where(stage => stage.Id.Value == secret.Id)];
        ImmutableArray<Stage> gives = [.. book.Stages.Where(stage => knowledge.EffectsOf(stage.Id.Value).Gives.Contains(secret.Id))];
        return gives.IsEmpty ? [.. book.Stages.Where(stage => Meets(knowledge.EffectsOf(stage.Id.Value)))] : gives;

        bool Meets(Effects effects) => effects.Moves.Contains(secret.Id) || effects.Needs.Contains(secret.Id) || effects.SetsOff.Contains(secret.Id);
    }
}
