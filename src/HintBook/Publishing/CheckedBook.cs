using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Publishing;

/// <summary>A book with all that can be known of it without making anything.</summary>
/// <param name="Folder">The author's folder, or null if there is none.</param>
/// <param name="Book">The book as far as it could be read, or null.</param>
/// <param name="Survey">What is known of the box, or null while there are mistakes to mend first.</param>
/// <param name="Addresses">Where its pages live, or null without a book.</param>
/// <param name="Lock">What <c>addresses.lock</c> will say.</param>
/// <param name="Theme">How its pages look, or null without a book.</param>
/// <param name="Findings">Everything there is to say.</param>
public sealed record CheckedBook(
    BookFolder? Folder, Book? Book, Survey? Survey, Addresses? Addresses, AddressLock Lock, Theme? Theme, Findings Findings)
{
    /// <summary>Reads and checks a book. Photos are looked at, not developed; nothing is written.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="lastPublished">A folder with the <c>addresses.lock</c> of the last publish, for a book that can't keep its own; or null.</param>
    /// <param name="progress">Told how far the look into the mechanism has come.</param>
    /// <param name="stop">Ends that look; the rest of it is then not proved.</param>
    public static CheckedBook Of(
        string path, string? lastPublished = null, IProgress<SolveProgress>? progress = null, CancellationToken stop = default)
    {
        var (folder, book, read) = Reader.Read(path);
        if (folder is null || book is null)
            return new CheckedBook(folder, null, null, null, AddressLock.Nothing, null, read);

        var more = new List<Finding>();
        var (survey, surveyed) = Surveyor.Survey(book, whole: !read.AnyError, null, progress, stop);
        var leaks = survey is null ? [] : new[] { book }.Concat(book.Translations).SelectMany(each => Leaks.In(each, survey).All);
        var known = AddressStore.Read(folder, lastPublished, more);
        var (addresses, next, moved) = AddressPlan.Plan(book, known);
        var (theme, themed) = Theme.For(book, ThemeFolder.Read(folder, book.Theme.Value, more));
        return new CheckedBook(folder, book, survey, addresses, next, theme, read.And([.. surveyed.All, .. Proofs.Prove(book).Findings, .. leaks, .. more, .. moved.All, .. themed.All]));
    }

    /// <summary>Reads a book as far as its mechanism can be looked at: the files, and the names in them.</summary>
    /// <param name="path">The book's folder.</param>
    public static (Book? Book, Findings Findings) Named(string path)
    {
        var (_, book, read) = Reader.Read(path);
        return (book, book is null ? read : read.And(NameCheck.Run(book)));
    }

    /// <summary>The same with what a glance at the photos and films tells and what the pages would say of the prose.</summary>
    public CheckedBook WithPages()
    {
        if (Folder is null || Book is null || Survey is null || Addresses is null || Theme is null)
            return this;
        var more = new List<Finding>([.. PictureWork.Glance(Book, Folder), .. FilmWork.Glance(Book, Folder)]);
        var (_, pages) = Site.Build(new SitePlan { Book = Book, Survey = Survey, Addresses = Addresses }, Theme);
        return this with { Findings = Findings.And([.. more, .. pages.All]) };
    }
}
