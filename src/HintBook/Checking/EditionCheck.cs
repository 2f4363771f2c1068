using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>Looks at the editions of one box on a shelf: an owner must come to the help for their own.</summary>
public static class EditionCheck
{
    private static readonly FindingCode OneCardCode = new("HB7307", Severity.Warning, "two editions answer one printed card");
    private static readonly FindingCode AlikeCode = new("HB7308", Severity.Warning, "two editions that can't be told apart");

    /// <summary>What an owner would stumble over.</summary>
    /// <param name="books">The books of a shelf, in its order.</param>
    public static IEnumerable<Finding> Run(IEnumerable<(string Folder, Examined Examined)> books) =>
        from box in books.Where(each => EditionOf(each.Examined.Book) is not null).GroupBy(each => EditionOf(each.Examined.Book), StringComparer.Ordinal)
        let editions = box.ToArray()
        from later in Enumerable.Range(1, editions.Length - 1)
        from earlier in Enumerable.Range(0, later)
        from finding in Between(editions[earlier], editions[later])
        select finding;

    private static IEnumerable<Finding> Between((string Folder, Examined Examined) earlier, (string Folder, Examined Examined) later)
    {
        var (one, other) = (earlier.Examined.Book, later.Examined.Book);
        var at = other.Shelf?.EditionOf?.At ?? other.File.Top;
        if (SitesOf(earlier.Examined).Intersect(SitesOf(later.Examined), StringComparer.Ordinal).FirstOrDefault() is { } site)
        {
            yield return OneCardCode.At(
                other.Address?.At ?? at,
                $"Cards of this edition and of the one in {earlier.Folder} lead to {site}: whoever scans one may read the help for the other box.",
                "Give the later edition an address of its own before its cards are printed, and leave that of the earlier one as it is.");
        }

        if (LineOf(one) is not { } line || LineOf(other) is not { } another || Same(line, another))
        {
            yield return AlikeCode.At(
                other.Shelf?.Line?.At ?? at,
                $"The page that asks “which box do you have?” doesn't say how this edition differs from the one in {earlier.Folder}.",
                "Under “shelf” write a “line” in each of them that says what shows on the closed box: “Brass hinges, and a clock on the front.”");
        }

        foreach (var serial in Editions.SerialsOf(other).Intersect(Editions.SerialsOf(one), StringComparer.Ordinal))
        {
            yield return AlikeCode.At(
                other.Copies.First(copy => copy.Serial.Value == serial).Serial.At,
                $"The serial “{serial}” is given to a box of this edition and to one of the edition in {earlier.Folder}.",
                "If one box was changed, take it out of the earlier edition; if there are two, give one of them another serial.");
        }
    }

    private static string? EditionOf(Book book) => book.Shelf?.EditionOf?.Value;

    private static string? LineOf(Book book) => book.Shelf?.Line?.Value;

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    // Where cards of a book lead, printed now or at any time before. What was only a proof lies in no box.
    private static IEnumerable<string> SitesOf(Examined book) => book.Kept.Sites.Concat(book.Book.MovedFrom)
        .Concat(book.Book.Address is { } address ? [address] : ImmutableArray<Located<string>>.Empty)
        .Select(site => site.Value).Distinct(StringComparer.Ordinal);
}
