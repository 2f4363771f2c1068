using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using HintBook.Books;
using HintBook.Checking.Media;
using HintBook.Ciphers;
using HintBook.Ciphers.Making;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Sittings;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>
/// From a folder to all that can be known of its book without making anything. Every verb starts here. The steps have no logic of
/// their own: each room does its part, and each result is handed on.
/// </summary>
public static class Check
{
    /// <summary>Checks a book. Photos are looked at, not developed; nothing is written.</summary>
    /// <param name="path">The book's folder.</param>
    /// <param name="options">What the check is given besides; null for nothing.</param>
    public static Checked Run(string path, CheckOptions? options = null)
    {
        var given = options ?? new();
        var ended = false;
        try
        {
            var (folder, book, read) = Made(Reader.Read(path, given.Results));
            var result = folder is null || book is null ? new Unreadable { Findings = read } : Examine(folder, book, read, given);
            ended = !given.Stop.IsCancellationRequested;
            return result;
        }
        finally
        {
            if (ended)
                given.Results?.EndRun();
            else
                given.Results?.Forget();
        }
    }

    /// <summary>Reads a book as far as its mechanism and its codes can be looked at: the files, and the names in them.</summary>
    /// <param name="path">The book's folder.</param>
    /// <returns>The book, null while there are errors to mend first, and the findings.</returns>
    public static (Book? Book, Findings Findings) Names(string path)
    {
        var (_, book, read) = Made(Reader.Read(path));
        var findings = book is null ? read : read.And(NameCheck.Run(book));
        return (findings.AnyError ? null : book, findings);
    }

    // Clues that the author leaves to the program are made before anything looks at the codes, and minutes are known before anything is said of time.
    private static ReadBook Made(ReadBook read)
    {
        if (read.Book is not { } written)
            return read;
        var (book, findings) = CluesOnPaper.In(written);
        return read with { Book = SatMinutes.In(book), Findings = read.Findings.And([.. findings, .. SittingNotes.In(book)]) };
    }

    private static Checked Examine(BookFolder folder, Book book, Findings read, CheckOptions given)
    {
        var more = new List<Finding>();
        var content = given.Results is null ? null : ContentOf(book, whole: !read.AnyError);
        (BookMedia Media, ImmutableArray<Finding> Findings)? looked = read.AnyError ? null : MediaCheck.Run(book, folder, given.CutsClips, given.Work);
        if (looked is { Media: var known })
            given.MediaKnown?.Invoke(book, folder, known);
        // The box and the codes know nothing of each other.
        var proving = Task.Run(() => ProofsOf(book, given));
        var (survey, surveyed) = SurveyOf(book, whole: !read.AnyError, content, given);
        var proofs = proving.GetAwaiter().GetResult();
        var kept = KeptAddresses.Read(folder, given.LastPublished, more);
        var (addresses, next, moved) = AddressPlan.Plan(book, kept);
        var (theme, themed) = Theme.For(book, ThemeFolder.Read(folder, book.Theme.Value, more));
        var sealing = SealingPlan.Of(book, folder, kept, given.Box, more);
        var findings = read.And([.. surveyed.All, .. proofs.Findings, .. more, .. moved.All, .. themed.All]);
        if (survey is null || looked is not (var media, var ofMedia))
            return new Faulty { Book = book, Examined = null, Findings = findings.And([.. DraftCheck.Run(book)]) };

        Book[] languages = [book, .. book.Translations];
        var spoilers = languages.AsParallel().AsOrdered().Select(each => Leaks.Begin(each, survey, given.Work)).ToArray();
        // Pages need to know what may be said where; what is said too early is looked for while they are made.
        var searching = Task.Run(() => spoilers.AsParallel().AsOrdered().SelectMany(each => each.Find().All).ToArray());
        var plan = new SitePlan
        {
            Book = book,
            Survey = survey,
            Addresses = addresses,
            Sought = [.. spoilers.Select(each => each.MayBeSaid.Sought)],
            Proofs = proofs,
            Pictures = media.Pictures,
            Films = media.PublishedFilms,
            Seal = sealing is not null && book.Id is { } id ? sealing.SignsOf(id.Value) : null,
            MechanismContent = content,
        };
        var (site, paged) = Site.Build(plan, theme, given.Results, given.Work);
        var examined = new Examined
        {
            Folder = folder,
            Book = book,
            Survey = survey,
            Proofs = proofs,
            MayBeSaid = [.. spoilers.Select(each => each.MayBeSaid)],
            Addresses = addresses,
            Kept = next,
            Theme = theme,
            Media = media,
            Site = site,
            Sealing = sealing,
        };
        findings = findings.And(
        [
            .. HeldBack.UntilItOpens(searching.GetAwaiter().GetResult(), book, survey), .. ofMedia, .. paged.All,
            .. GateCheck.Run(book, survey), .. RehearsalCheck.Run(book, opens: survey.Opens is not Claim.Refuted), .. DraftCheck.Run(book),
        ]);
        return findings.AnyError
            ? new Faulty { Book = book, Examined = examined, Findings = findings }
            : new Sound { Examined = examined, Findings = findings };
    }

    // The mechanism looks at book.yaml and at the keys of the stages; a change below the keys leaves all of it as it was, places included.
    private static string ContentOf(Book book, bool whole)
    {
        var keys = book.Stages.SelectMany(stage => new[] { stage.File.Path, FrontMatter.KeysOf(stage.File) });
        // Of a photo that isn't there, what it shows isn't read either.
        var photos = book.AllPhotos.Select(photo => photo.File.Value);
        // Those that come from sittings stand in no key.
        var minutes = string.Join(' ', book.Stages.Select(stage => stage.Minutes));
        return RunResults.KeyOf([$"{whole} {book.KnowsAllStages} {minutes}", book.File.Text, .. keys, .. photos]);
    }

    private static (Survey? Survey, Findings Findings) SurveyOf(Book book, bool whole, string? content, CheckOptions given)
    {
        return given.Results is { } results && content is not null ? results.Get("survey", content, Survey).Value : Survey().Value;

        StrongBox<(Survey?, Findings)> Survey() =>
            new(Surveyor.Survey(book, whole, null, given.Progress, given.Work, given.Stop));
    }

    // What is each copy's own stands in a file beside the book's.
    private static IEnumerable<string> ValuesOf(Book book) =>
        from copy in book.Copies
        from value in copy.Values
        from text in new[] { copy.Serial.Value, value.Name.Value, value.Value.Value }
        select text;

    private static Proofs ProofsOf(Book book, CheckOptions given) => given.Results is { } results
        ? results.Get("proofs", RunResults.KeyOf([book.File.Text, .. ValuesOf(book)]), () => Proofs.Prove(book, given.Work))
        : Proofs.Prove(book, given.Work);
}
