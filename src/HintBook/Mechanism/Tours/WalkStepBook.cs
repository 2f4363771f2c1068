using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Mechanism.Tours;

/// <summary>What the book says of the steps of a walk.</summary>
/// <param name="book">The book, for one copy or for all.</param>
public sealed class WalkStepBook(Book book)
{
    private readonly Dictionary<string, Named> named = book.Box.Names.DistinctBy(each => each.Id.Value).ToDictionary(each => each.Id.Value);

    /// <summary>What has a name, or null.</summary>
    public Named? this[string id] => named.GetValueOrDefault(id);

    /// <summary>The move that a step makes or takes back; null for a free part and for what is replaced.</summary>
    public Move? MoveOf(Step step) => step.Move < 0 ? null : StageOf(step) is { } stage ? stage.Moves[step.Move] : book.Box.Moves[step.Move];

    /// <summary>The stage that a step belongs to, or null.</summary>
    public Stage? StageOf(Step step) => step.Stage is null ? null : book.Stages.FirstOrDefault(stage => stage.Id.Value == step.Stage);

    /// <summary>The codes that are set for a move and their answers; those that differ by copy only in a book of one copy.</summary>
    public ImmutableArray<Code> CodesOf(Step step) => step.Kind is StepKind.StageMove or StepKind.BookMove
        ?
        [
            .. Flat(MoveOf(step)?.Needs ?? []).Select(need => this[need.Name.Value]).OfType<Code>()
                .Where(code => code.Lock is not null && code.Answer.Value.Length > 0).Distinct(),
        ]
        : [];

    /// <summary>The cautions of a step's stage.</summary>
    public ImmutableArray<Caution> CautionsOf(Step step) => StageOf(step)?.Cautions ?? [];

    /// <summary>The names and positions of some conditions, alternatives too.</summary>
    public static IEnumerable<InPosition> Flat(IEnumerable<Condition> conditions) => conditions.SelectMany(condition => condition switch
    {
        InPosition one => [one],
        AnyOf any => Flat(any.Alternatives.SelectMany(each => each)),
        _ => [],
    });
}
