using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>
/// Holds back what only follows from a box that can't be opened: a secret that becomes known in a stage which nobody reaches would be told as a leak
/// everywhere before it, and each of those would go by itself once the one cause is mended.
/// </summary>
internal static class HeldBack
{
    private static readonly ImmutableArray<string> Codes = ["HB3101", "HB3102", "HB3103"];

    /// <summary>The findings about secrets, without those that wait for the box to open.</summary>
    /// <param name="findings">What was found about secrets.</param>
    /// <param name="book">The book.</param>
    /// <param name="survey">What is proved of its box.</param>
    public static IEnumerable<Finding> UntilItOpens(IEnumerable<Finding> findings, Book book, Survey survey)
    {
        if (survey.Opens is not Claim.Refuted)
            return findings;
        var unreached = book.Translations.Prepend(book).SelectMany(each => each.Stages)
            .Where(stage => !survey.Stages[stage.Id.Value].Reachable)
            .Select(stage => stage.Title.At)
            .ToHashSet();
        return findings.Where(finding => !Codes.Contains(finding.Code.Id) || !Waits(finding));

        bool Waits(Finding finding) => finding.SaysNothingGivesIt || finding.Related.Any(related => unreached.Contains(related.At));
    }
}
