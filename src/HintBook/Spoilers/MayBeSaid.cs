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
public sealed record MayBeSaid(
    ImmutableArray<Secret> Secrets, ImmutableArray<SoughtSpelling> Sought, BitArray Outside, ImmutableDictionary<string, MayBeSaidOfStage> Stages)
{
    /// <summary>Derives the sets from what the search for leaks has made ready.</summary>
    internal static MayBeSaid Derive(
        Book book, Survey survey, ImmutableArray<Secret> secrets, Finders finders, Knowledge knowledge, KnownTitles titles, Allowances allowances)
    {
        var allowed = SetOf(allowances.Of(null), secrets);
        return new(
            secrets,
            [.. finders.Sought],
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
            var given = secrets.Where(secret => knowledge.EffectsOf(id).Gives.Contains(secret.Id)).Select(secret => secret.Number);
            return new(sign, clue, answer, survey.Stages[id].Exact ? null : SetOf(given, secrets));
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
public sealed record MayBeSaidOfStage(BitArray Sign, BitArray Clue, BitArray Answer, BitArray? Sure);
