using HintBook.Books;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>Finds what a draft left open: no owner may be given it for help.</summary>
internal static class DraftCheck
{
    public static readonly FindingCode OpenCode = new("HB1319", Severity.Error, "a text that is still to write");

    /// <summary>One finding for each place, in all languages of the book.</summary>
    public static IEnumerable<Finding> Run(Book book) =>
        from each in book.Translations.Prepend(book)
        from stage in each.Stages
        where each.Source is null || !each.Untranslated.Contains(stage)
        from place in stage.StillToWrite
        select OpenCode.At(
            place,
            $"Here stands “{Draft.Open}”, as a draft left it.",
            "Write your own words in its place; until then the book can't be published.");
}
