using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;

namespace HintBook.Spoilers;

/// <summary>How far into a stage's page a name may not be mentioned.</summary>
public enum KnownFrom
{
    /// <summary>It may be mentioned anywhere on the page.</summary>
    Sign,

    /// <summary>Not before the clue.</summary>
    Clue,

    /// <summary>Not before the answer.</summary>
    Answer,

    /// <summary>Nowhere on the page.</summary>
    Never,
}

/// <summary>What a reader of a stage's page knows of one secret.</summary>
/// <param name="Secret">The secret.</param>
/// <param name="From">From where on it may be mentioned.</param>
/// <param name="Why">Why not before, with the way on which a reader wouldn't know it; null where it may be mentioned anywhere.</param>
public sealed record KnownHere(Secret Secret, KnownFrom From, string? Why)
{
    /// <summary>What every reader of a stage's page is certain to know, and what would be a spoiler there.</summary>
    /// <param name="book">The book.</param>
    /// <param name="survey">What is proved of its box.</param>
    /// <param name="may">What may be said where in it.</param>
    /// <param name="stage">The stage.</param>
    /// <returns>Every secret in the order of its number; none for a stage that no way leads to.</returns>
    public static ImmutableArray<KnownHere> On(Book book, Survey survey, MayBeSaid may, Stage stage)
    {
        if (!may.Stages.TryGetValue(stage.Id.Value, out var here))
            return [];
        var reasons = new Reasons(book, survey, new Knowledge(book, survey, may.Secrets));
        return
        [
            .. may.Secrets.Select(secret =>
            {
                var number = secret.Number;
                var from = here.Sign[number] ? KnownFrom.Sign : here.Clue[number] ? KnownFrom.Clue : here.Answer[number] ? KnownFrom.Answer : KnownFrom.Never;
                return new KnownHere(secret, from, from == KnownFrom.Sign ? null : reasons.Of(secret, stage, Tier.Nudge).Says);
            }),
        ];
    }
}
