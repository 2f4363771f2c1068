using System.Collections.Immutable;
using HintBook.Books;

namespace HintBook.Sittings;

/// <summary>The minutes of stages as sittings have them, where the author asks for that (<c>minutes: sittings</c>).</summary>
public static class SatMinutes
{
    /// <summary>
    /// The book with the middle of the times that were noted as the minutes of each stage; a stage of which too few were noted keeps the author's own.
    /// </summary>
    /// <param name="book">The book.</param>
    public static Book In(Book book)
    {
        if (book.MinutesFromSittings is null)
            return book;
        var minutes = StageSittings.Of(book).DistinctBy(each => each.Stage.Id.Value).ToDictionary(each => each.Stage.Id.Value, Of);
        // A stage that nobody translated is the same record in all languages, and stays so.
        var changed = new Dictionary<Stage, Stage>(ReferenceEqualityComparer.Instance);
        var own = book with { Stages = With(book.Stages) };
        return own with
        {
            Translations =
            [
                .. book.Translations.Select(each => each with
                {
                    Stages = With(each.Stages),
                    Source = each.Source is { } source ? source with { Stages = With(source.Stages) } : null,
                }),
            ],
        };

        ImmutableArray<Stage> With(ImmutableArray<Stage> stages) => [.. stages.Select(Changed)];

        Stage Changed(Stage stage)
        {
            if (!changed.TryGetValue(stage, out var known))
                changed[stage] = known = minutes[stage.Id.Value] is { } median ? stage with { Minutes = median } : stage;
            return known;
        }
    }

    /// <summary>The minutes that a stage has by its sittings, at least one; null where there are too few to say how sure they are.</summary>
    internal static int? Of(StageSittings stage) =>
        stage.Minutes is { Bounds: not null } minutes ? Math.Max(1, (int)Math.Round(minutes.Median, MidpointRounding.AwayFromZero)) : null;
}
