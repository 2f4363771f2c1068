using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>What sort of thing is kept from the reader.</summary>
public enum SecretKind
{
    /// <summary>A part, thing, fact or code by its names.</summary>
    Name,

    /// <summary>What opens a lock.</summary>
    Answer,

    /// <summary>What opens the lock of one copy, or of several: nobody else's business, and no text that all owners read may say it.</summary>
    CopyAnswer,

    /// <summary>What a stage is called.</summary>
    Title,
}

/// <summary>Something that may be mentioned only where it is known.</summary>
/// <param name="Number">Its place among all secrets.</param>
/// <param name="Kind">What sort of thing it is.</param>
/// <param name="Id">The id of the part, thing, fact, code or stage.</param>
/// <param name="Spellings">Names, or the one answer or title.</param>
/// <param name="At">Where it is declared.</param>
/// <param name="Open">Whether it is no secret: it shows on the closed box.</param>
/// <param name="Serial">The first copy whose answer it is; null for what all copies have.</param>
public sealed record Secret(int Number, SecretKind Kind, string Id, ImmutableArray<string> Spellings, Span At, bool Open, string? Serial = null)
{
    /// <summary>Those of its spellings that stand in the language from which the book was translated.</summary>
    public ImmutableArray<string> Untranslated { get; init; } = [];

    /// <summary>Whether it is a thing that can be held, so that even an everyday word for it tells something.</summary>
    public bool IsHeld { get; init; }

    /// <summary>
    /// The clue from which an answer follows, as it stands in the box: to quote it tells no more than the box does. Empty where there is none.
    /// </summary>
    public string Clue { get; init; } = "";

    /// <summary>What findings call it.</summary>
    public string Called => Kind == SecretKind.Title ? $"the title “{Spellings[0]}”" : $"“{Spellings[0]}”";

    /// <summary>Every secret of a book, those that are none included: a known name may cover a secret one that is part of it.</summary>
    public static ImmutableArray<Secret> Collect(Book book)
    {
        var all = ImmutableArray.CreateBuilder<Secret>();
        var before = book.Source?.Box.Names.DistinctBy(named => named.Id.Value).ToDictionary(named => named.Id.Value, SpellingsOf) ?? [];
        var titles = book.Source?.Stages.Select(stage => stage.Title.At).ToHashSet() ?? [];
        foreach (var named in book.Box.Names.DistinctBy(named => named.Id.Value))
        {
            all.Add(new(all.Count, SecretKind.Name, named.Id.Value, SpellingsOf(named), named.Id.At, named.Seen)
            {
                Untranslated = before.GetValueOrDefault(named.Id.Value, []),
                IsHeld = named is Thing,
            });
        }

        foreach (var code in book.Box.Codes.DistinctBy(code => code.Id.Value).Where(code => code.Answer.Value.Length > 0))
            all.Add(new(all.Count, SecretKind.Answer, code.Id.Value, [code.Answer.Value], code.Answer.At, Open: false) { Clue = code.Clue?.Value ?? "" });
        foreach (var code in book.Box.Codes.DistinctBy(code => code.Id.Value).Where(code => code.AnswerByCopy is not null))
        {
            var own = from copy in book.Copies let answer = copy[code.AnswerByCopy!.Value.Value] where answer is not null select (copy, answer: answer.Value);
            foreach (var (copy, answer) in own.DistinctBy(one => one.answer.Value))
                all.Add(new(all.Count, SecretKind.CopyAnswer, code.Id.Value, [answer.Value], answer.At, Open: false, copy.Serial.Value));
        }

        foreach (var stage in book.Stages)
        {
            all.Add(new(all.Count, SecretKind.Title, stage.Id.Value, [stage.Title.Value], stage.Title.At, Open: false)
            {
                Untranslated = titles.Contains(stage.Title.At) ? [stage.Title.Value] : [],
            });
        }

        return all.ToImmutable();

        static ImmutableArray<string> SpellingsOf(Named named) => [named.Name, .. named.Also.Select(also => also.Value)];
    }
}
