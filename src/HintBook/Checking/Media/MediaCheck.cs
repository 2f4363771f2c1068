using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Photos;
using HintBook.Photos.Drawings;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Checking.Media;

/// <summary>Looks at a book's photos and films, in all its languages: each file is read once, and nothing is decoded.</summary>
internal static class MediaCheck
{
    /// <summary>How photos are developed.</summary>
    public static PhotoSettings Settings { get; } = PhotoSettings.Standard;

    /// <summary>What will be published of them, and what is to be said.</summary>
    /// <param name="book">The book.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="cutsClips">Whether a publish cuts clips out of their films.</param>
    /// <param name="work">Counts the files that are read.</param>
    public static (BookMedia Media, ImmutableArray<Finding> Findings) Run(Book book, BookFolder folder, bool cutsClips, WorkLog? work)
    {
        Book[] languages = [book, .. book.Translations];
        var photos = languages.SelectMany(each => each.AllPhotos)
            .DistinctBy(photo => photo.File.At)
            .GroupBy(photo => photo.File.Value, StringComparer.Ordinal)
            .OrderBy(same => same.Key, StringComparer.Ordinal)
            .AsParallel().AsOrdered()
            .Select(same => Look([.. same], book.Identity, folder, work))
            .ToArray();
        var (films, ofFilms) = FilmCheck.Run(book, folder, cutsClips, work);
        return (
            new([.. photos.Select(photo => photo.Photo).OfType<BookPhoto>()], films),
            [.. photos.SelectMany(photo => photo.Findings), .. ofFilms]);
    }

    private static (BookPhoto? Photo, List<Finding> Findings) Look(Photo[] shown, string identity, BookFolder folder, WorkLog? work)
    {
        var file = shown[0].File;
        if (folder.SizeOf(file.Value) is { } size && size > Settings.MaxFileBytes)
            return (null, [.. PhotoFindings.Check(shown[0], new UnfitPhoto(new TooLarge(size)), Settings)]);
        var findings = new List<Finding>();
        work?.Did(Work.KeyPhoto, file.Value);
        if (folder.ReadBytes(file.Value, file.At, Settings.MaxFileBytes, findings) is not { } bytes)
            return (null, findings);
        // A mark may be drawn; its alternative text is the maker's name, and it is as sharp as its reader's screen.
        if (MarkPlan.IsDrawing(file.Value) && Array.TrueForAll(shown, photo => photo.Place == Place.Logo))
        {
            var plans = MarkPlan.Of(bytes, identity, Settings);
            findings.AddRange(plans.OfType<UnfitPhoto>().SelectMany(unfit => PhotoFindings.Check(shown[0], unfit, Settings)));
            return (plans is [PlannedPhoto drawn] ? new(shown[0], drawn) : null, findings);
        }

        var plan = PhotoPipeline.Plan(bytes, identity, Settings);
        findings.AddRange(shown.SelectMany(photo => PhotoFindings.Check(photo, plan, Settings)));
        return (plan is PlannedPhoto planned ? new(shown[0], planned) : null, findings);
    }
}
