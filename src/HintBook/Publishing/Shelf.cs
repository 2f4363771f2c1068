using System.Collections.Immutable;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Publishing.Unchanged;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>Several books as one site: each in a folder of its own, as it would stand alone, below a front page that leads to all.</summary>
public static class Shelf
{
    /// <summary>A book that stands elsewhere than its cards say.</summary>
    public static readonly FindingCode ElsewhereCode = new("HB7305", Severity.Warning, "a book on the shelf whose cards lead elsewhere");

    /// <summary>Books that ask for different languages of the page that leads to all of them.</summary>
    public static readonly FindingCode TwoLanguagesCode = new("HB7306", Severity.Warning, "books on the shelf ask for different languages");

    /// <summary>The folders of the books in a folder, in ordinal order; none where the folder is a book itself.</summary>
    public static ImmutableArray<string> BooksIn(string path) => File.Exists(Path.Combine(path, "book.yaml")) || !Directory.Exists(path)
        ? []
        : [.. Directory.EnumerateDirectories(path).Where(folder => File.Exists(Path.Combine(folder, "book.yaml"))).Order(StringComparer.Ordinal)];

    /// <summary>Publishes every book, and when all are good the shelf. A book that isn't keeps the shelf as it was.</summary>
    /// <param name="path">The folder of books.</param>
    /// <param name="options">As for one book; the output folder gets <c>site/</c>, the shelf, and <c>books/</c>, each book as it would
    /// stand alone, with its cards.</param>
    /// <param name="tell">Told how each book ended.</param>
    /// <param name="stop">Ends the work.</param>
    /// <returns>How the shelf ended: its report counts all books. Rejected without findings where one of the books was rejected.</returns>
    public static PublishOutcome Publish(
        string path,
        PublishOptions options,
        Action<string, PublishOutcome> tell,
        CancellationToken stop = default) => Pipeline.Guarded(() =>
    {
        using var place = OutputFolder.Open(options.OutputFor(path), path, options.Disk, stop);
        var last = LastPublish.Before(path, options, stop, isShelf: true);
        if (last.Find(place) is { } known)
        {
            foreach (var (name, told) in known.Books)
                tell(name, new Published(told));
            return new Published(known.Report);
        }

        var books = BooksIn(path).Select(book => (Name: Path.GetFileName(book), Outcome: PublishOne(book))).ToArray();
        if (books.Select(book => book.Outcome).OfType<Failed>().FirstOrDefault() is { } failed)
            return failed;
        if (!Array.TrueForAll(books, book => book.Outcome is Published))
            return new Rejected(Findings.None);

        var writer = new OutputWriter(place.Next, options.Disk, options.Say, stop);
        var shelved =
            (from each in books
             let published = each.Outcome as Published
             let book = published?.Book
             where book is not null
             select (each.Name, published.Report, Book: book)).ToArray();
        foreach (var (name, report, _) in shelved)
            CopySite(Path.Combine(report.Folder, "site"), name, writer);
        var onShelf = shelved.Select(each => new ShelvedBook($"{each.Name}/", each.Book.Book, each.Book.Media.Pictures)).ToArray();
        var own = ShelfPage.Build(onShelf, shelved[0].Book.Theme);
        writer.WriteAll("shelf", "site", own);
        place.Swap(["site"], writer.Made.Keys);
        var whole = shelved[0].Report with
        {
            Folder = place.Root,
            Book = string.Join(", ", onShelf.Select(book => book.Book.Title.Value)),
            Books = shelved.Length,
            IsShelf = true,
            Pages = shelved.Sum(book => book.Report.Pages) + own.Count(file => file.Path.EndsWith(".html", StringComparison.Ordinal)),
            Photos = shelved.Sum(book => book.Report.Photos),
            Clips = new(shelved.Sum(book => book.Report.Clips.All), shelved.Sum(book => book.Report.Clips.Now)),
            Developed = shelved.Sum(book => book.Report.Developed),
            SiteBytes = writer.Made.Values.Sum(),
            Findings = Findings.Of(
            [
                .. Elsewhere(onShelf), .. TwoLanguages(onShelf), .. EditionCheck.Run(shelved.Select(each => ($"{each.Name}/", each.Book))),
            ]),
        };
        last.Keep(new(whole, [.. shelved.Select(each => new BookOnShelf(each.Name, each.Report))]), place);
        return new Published(whole);

        PublishOutcome PublishOne(string book)
        {
            var name = Path.GetFileName(book);
            var outcome = Pipeline.PublishAnew(book, options with { Output = Path.Combine(place.Root, "books", name) }, stop);
            tell(name, outcome);
            return outcome;
        }
    }, stop);

    private static IEnumerable<Finding> Elsewhere(ShelvedBook[] books) =>
        from shelved in books
        from address in shelved.Book.Address is { } known ? new[] { known } : []
        where !address.Value.EndsWith("/" + shelved.Folder, StringComparison.Ordinal)
        select ElsewhereCode.At(
            address.At,
            $"On the shelf “{shelved.Book.Title}” stands in {shelved.Folder}, but its cards lead to {address.Value}.",
            HelpElsewhere(address.Value, shelved.Folder));

    // A card that is printed decides; before that the address may still be changed.
    private static string HelpElsewhere(string address, string folder)
    {
        var path = new Uri(address).AbsolutePath.Trim('/');
        var last = path[(path.LastIndexOf('/') + 1)..];
        var start = last.Length > 0 && address.EndsWith($"/{last}/", StringComparison.Ordinal) ? address[..^(last.Length + 1)] : address;
        return $"If no card is printed yet, write instead: {start}{folder}"
            + (last.Length > 0 ? $" If cards are printed, leave the address and rename the book's folder to “{last}”." : "");
    }

    private static IEnumerable<Finding> TwoLanguages(ShelvedBook[] books) =>
        from asked in ShelfPage.AskedFor(books).Skip(1)
        let taken = ShelfPage.LanguageOf(books)
        where asked.Value != taken.Value
        select TwoLanguagesCode.At(
            asked.At,
            $"This book asks for a shelf in “{asked}”, and one before it for a shelf in “{taken}”: the first is taken.",
            "Write the same “language” under “shelf” in each book, or in one alone.");

    private static void CopySite(string site, string name, OutputWriter writer)
    {
        foreach (var file in Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories))
            writer.Copy(file, Path.Combine("site", name, Path.GetRelativePath(site, file)));
    }
}
