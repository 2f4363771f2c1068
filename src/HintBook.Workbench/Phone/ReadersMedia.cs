using System.Collections.Concurrent;
using System.Collections.Frozen;
using HintBook.Checking;
using HintBook.Checking.Media;
using HintBook.Photos;

namespace HintBook.Workbench.Phone;

/// <summary>
/// The pictures and films of one state of a book as readers get them: without what a camera wrote into them. A picture is developed when it is
/// asked for. Thread-safe.
/// </summary>
internal sealed class ReadersMedia
{
    // In photos: a few pages' worth, at most some 30 MB.
    private const int MostKept = 64;

    private readonly string root;
    private readonly FrozenDictionary<string, BookPhoto> photos;
    private readonly FrozenDictionary<string, BookFilm> films;
    private readonly ConcurrentDictionary<string, Lazy<PhotoResult>> developed = new(StringComparer.Ordinal);

    /// <summary>Finds the pictures and films of a book.</summary>
    public ReadersMedia(Examined book)
    {
        Book = book;
        root = book.Folder.Root;
        photos = (from photo in book.Media.Photos from file in photo.Plan.Picture.Files select (file.Path, photo))
            .DistinctBy(pair => pair.Path)
            .ToFrozenDictionary(pair => pair.Path, pair => pair.photo, StringComparer.Ordinal);
        films = (from film in book.Media.Films
                 from path in film.Published.Parts.Values.Select(part => part.Path).Append(film.Published.Path)
                 select (path, film))
            .DistinctBy(pair => pair.path)
            .ToFrozenDictionary(pair => pair.path, pair => pair.film, StringComparer.Ordinal);
    }

    /// <summary>The state of the book.</summary>
    public Examined Book { get; }

    /// <summary>A picture of the site; null if it has none of that path, or if the photo has changed since.</summary>
    /// <param name="path">Relative to the site.</param>
    /// <exception cref="IOException">The photo can't be read.</exception>
    public ReadOnlyMemory<byte>? Picture(string path)
    {
        if (!photos.TryGetValue(path, out var photo))
            return null;
        if (developed.Count >= MostKept)
            developed.Clear();
        var print = developed.GetOrAdd(photo.File.File.Value, name => new(() =>
            PhotoPipeline.Develop(File.ReadAllBytes(Path.Combine(root, name)), photo.Plan, PhotoSettings.Standard)));
        return print.Value is ResizedPhoto prints ? prints.Bytes[photo.Plan.Picture.Files.ToList().FindIndex(file => file.Path == path)] : null;
    }

    /// <summary>A film of the site; null if it has none of that path.</summary>
    /// <param name="path">Relative to the site.</param>
    /// <exception cref="IOException">The film can't be read.</exception>
    public Stream? Film(string path) => films.TryGetValue(path, out var film)
        ? new StrippedFilm(new(Path.Combine(root, film.File.Value), FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16, useAsync: true), film.Stripping)
        : null;
}
