using HintBook.Books;
using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What can be wrong with where dangers are told.</summary>
internal static class CautionFindings
{
    public static readonly FindingCode OnlyAtAStageCode = new("HB1701", Severity.Warning, "a danger of the whole box that is told only at a stage");

    /// <summary>Dangers that can hurt somebody before they have opened anything, and that the book tells only at a stage; each kind once.</summary>
    /// <param name="book">The book in its own language.</param>
    public static IEnumerable<Finding> OnlyAtAStage(Book book) =>
        from stage in book.Stages
        from caution in stage.Cautions
        where Cautions.BitesUnasked(caution.Kind) && !book.Cautions.Any(told => told.Kind == caution.Kind)
        group (stage, caution) by caution.Kind into alike
        select OnlyAtAStage(alike.First().caution, alike.First().stage);

    private static Finding OnlyAtAStage(Caution caution, Stage stage) => OnlyAtAStageCode.At(
        caution.At,
        $"“{Cautions.NameOf(caution.Kind)}” is told only at the stage “{stage.Title.Value}”, and it can hurt somebody who has opened nothing yet.",
        $"Tell it in book.yaml too, under “cautions”, with a note that gives nothing away or with none: {Cautions.NameOf(caution.Kind)}. "
            + "Then it stands on the front page and on the cards.");
}
