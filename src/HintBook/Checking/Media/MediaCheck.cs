using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Photos.Films;
using HintBook.Reading.Folder;
using HintBook.Text;

namespace HintBook.Checking.Media;

/// <summary>Looks at a book's photos and films: each file is read once, and nothing is decoded.</summary>
internal static class MediaCheck
{
    /// <summary>How photos are developed.</summary>
    public static PhotoSettings Settings { get; } = PhotoSettings.Standard;

    /// <summary>What will be published of them, and what is to be said.</summary>
    /// <param name="book">The book.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="work">Counts the files that are read.</param>
    public static (BookMedia Media, ImmutableArray<Finding> Findings) Run(Book book, BookFolder folder, WorkLog? work)
    {
        var photos = book.AllPhotos.GroupBy(photo => photo.File.Value, StringComparer.Ordinal).OrderBy(same => same.Key, StringComparer.Ordinal)
            .AsParallel().AsOrdered()
            .Select(same => Look([.. same], book.Identity, folder, work))
            .ToArray();
        var films = FilmsOf(book).Select(film => Look(film, book, folder, work)).ToArray();
        return (
            new([.. photos.Select(photo => photo.Photo).OfType<BookPhoto>()], [.. films.Select(film => film.Film)]),
            [.. photos.SelectMany(photo => photo.Findings), .. films.SelectMany(film => film.Findings)]);
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
        var plan = PhotoPipeline.Plan(bytes, identity, Settings);
        findings.AddRange(shown.SelectMany(photo => PhotoFindings.Check(photo, plan, Settings)));
        return (plan is PlannedPhoto planned ? new(shown[0], planned) : null, findings);
    }

    private static IEnumerable<string> FilmsOf(Book book) =>
        book.Stages.Select(stage => stage.Clip?.File.Value).OfType<string>().Distinct().Order(StringComparer.Ordinal);

    private static (BookFilm Film, IEnumerable<Finding> Findings) Look(string file, Book book, BookFolder folder, WorkLog? work)
    {
        work?.Did(Work.ReadFilm, file);
        var (length, print) = ReadFilm(Path.Combine(folder.Root, file));
        var name = FilmPrint.NameOf(print, book.Identity);
        var captions = CaptionFiles.Find(folder, file).ToImmutableSortedDictionary(track => track.Language, track => track.File);
        var published = new PublishedFilm(
            $"films/{name}{Path.GetExtension(file).ToLowerInvariant()}",
            captions.ToImmutableSortedDictionary(track => track.Key, track => $"films/{name}.{track.Key}.vtt"));
        return (
            new(file, published, captions, Chapters.List(book, file, length)),
            FilmFindings.Check(book, file, length).Concat(captions.Values.SelectMany(track => CaptionFiles.FindingsOf(folder, track))));
    }

    private static (TimeSpan? Length, string Print) ReadFilm(string path)
    {
        using var film = File.OpenRead(path);
        var length = FilmLength.Read(film);
        return (length, FilmPrint.Of(film));
    }
}
